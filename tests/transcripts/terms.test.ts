/** The terms of both sides of the sea, by choice: kept from one interview to the next, and both understood in any answer. */
import { describe, expect, it } from 'vitest';
import { openDesk } from '../../src/desk.ts';
import type { Reply } from '../../src/dialogue/message.ts';
import { readCommand } from '../../src/dialogue/read/command.ts';
import { loadFlows } from '../../src/library.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { sumQuestion, sumSaid } from '../../src/present/sum-text.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { runScript } from '../../src/transport/script/run.ts';
import { WHOLE } from '../dialogue/whole.ts';
import { databases } from '../store/folder.ts';

const newFile = databases();
const flows = loadFlows();
/** As the one side says it and the other does not. */
const US = /\b(?:gauge|bind off|binds off|binding off|bound off|bind-offs?|stockinette)\b/i;
const UK = /\b(?:tension|casts? off|casting off|cast-offs?|stocking stitch)\b/i;

function knitter() {
  const store = openStore(newFile(), 50);
  let made = 0;
  const newId = () => `${++made}`;
  const desk = openDesk({ flows, store, clock: () => 1000, newId, unit: 'cm', terms: 'us' });
  return { store, desk };
}

const read = (replies: readonly Reply[]) => replies.map((r) => ('text' in r ? r.text : r.reply)).join('\n');

describe('a knitter from the United Kingdom', () => {
  it('says so once, at any question, and reads her own terms from then on', () => {
    const { desk, store } = knitter();
    const { session, replies } = desk.begin('ada', 'regauge');
    expect(read(replies)).toBe('Which pattern are you knitting?');
    desk.say('ada', session, { text: 'sample in pieces' });
    expect(read(desk.resume('ada', session))).toMatch(/^What is your gauge/);
    const changed = read(desk.say('ada', session, { text: 'UK terms' }));
    expect(changed).toBe(
      'From here on in UK terms, such as tension and cast off.\nWhat is your tension on a washed swatch? Stitches and rows over a length.',
    );
    expect(read(desk.say('ada', session, { text: 'why' }))).not.toMatch(US);
    expect(read(desk.say('ada', session, { text: 'lesson' }))).toContain('Tension is how many stitches');
    expect(store.preferencesOf('ada').terms).toBe('uk');
    expect(desk.flows('ada').find(({ id }) => id === 'swatch')?.wish).toBe('Is my tension right?');
    expect(desk.flows('bea').find(({ id }) => id === 'swatch')?.wish).toBe('Is my gauge right?');
    expect(read(desk.begin('ada', 'recheck').replies)).not.toMatch(US);
    expect(read(desk.say('ada', session, { text: 'in American English' }))).toContain('What is your gauge');
  });

  it('presses a button of before she said so, and is understood', () => {
    const { desk } = knitter();
    const { session } = desk.begin('ada', 'shoulder');
    for (const text of ['flat', '22 sts and 30 rows to 10 cm', '24', '38'])
      desk.say('ada', session, { text });
    desk.say('ada', session, { text: 'use UK terms' });
    expect(read(desk.resume('ada', session))).toContain('casting off in steps');
    expect(read(desk.say('ada', session, { text: 'Bind off in steps', to: 'shoulder_how' }))).toContain(
      'Cast off in steps',
    );
  });

  it('is answered in the terms of where she is, until she has chosen', () => {
    const { desk } = knitter();
    const { session, replies } = desk.begin('ada', 'swatch', { swatch_made: 'flat' }, 'uk');
    expect(read(replies)).not.toMatch(US);
    desk.say('ada', session, { text: 'US terms' }, 'uk');
    expect(desk.flows('ada', 'uk').find(({ id }) => id === 'swatch')?.wish).toBe('Is my gauge right?');
  });

  it.each([
    ['UK terms', 'uk'],
    ['uk knitting terms', 'uk'],
    ['use British words', 'uk'],
    ['in British English', 'uk'],
    ['switch to US terms', 'us'],
    ['American terms', 'us'],
    ['terms', undefined],
  ])('is heard to ask for terms where she says “%s”', (said, terms) => {
    expect(readCommand(said)).toEqual({ command: 'terms', terms });
  });

  it.each(['tension', 'gauge', '22 sts in us', 'us', 'cast off'])('is not where she says “%s”', (said) => {
    expect(readCommand(said)?.command).not.toBe('terms');
  });
});

describe('every text of the interviews', () => {
  const texts = (terms: 'us' | 'uk') =>
    [...flows.values()].flatMap((flow) => {
      const { file, questions } = flow.inTerms(terms);
      const asked = [...questions.values()].flatMap(
        ({ short, ask, why, how, picture = '', unknown, choices = [] }) => [
          short,
          ask,
          why,
          how,
          picture,
          'waits' in unknown ? unknown.waits : unknown.effect,
          ...choices.map(({ label }) => label),
        ],
      );
      return [file.title, file.wish, file.intro, ...asked];
    });

  /** The one that names both on purpose, for patterns come from both sides. */
  const BOTH = 'Look for the word gauge or tension near the start of the pattern.';

  it.each([
    ['us', UK],
    ['uk', US],
  ] as const)('is in %s terms alone, without a mark', (terms, others) => {
    const said = texts(terms).filter((text) => text !== BOTH);
    expect(said.filter((text) => others.test(text))).toEqual([]);
    expect(said.filter((text) => /\[|\]/.test(text))).toEqual([]);
  });
});

describe('every plan', () => {
  const scripts: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
    ['whole', Object.fromEntries(WHOLE)],
    [
      'whole',
      {
        unit: 'cm',
        pattern: 'Pennywhin, in pieces',
        swatch_stitches: '22 sts over 10 cm',
        swatch_rows: '30 rows over 10 cm',
        bust: '96.5 cm',
        upper_bust: '91 cm',
        size: '4',
        wishes: 'all',
        waist: '80 cm',
        yarn_swatch: '9 g',
        yarn_swatch_width: '15 cm',
        yarn_swatch_height: '15 cm',
        yarn_ball: '50 g',
        shoulder_how: 'bind off',
        armhole_wanted: '22 cm',
        neck_width: '18 cm',
      },
    ],
    [
      'regauge',
      { unit: 'in', pattern: 'sample', regauge_gauge: '20 sts and 28 rows = 4"', regauge_size: '4' },
    ],
  ];

  const madeOf = (flow: string, typed: Readonly<Record<string, string>>) => {
    const compiled = flows.get(flow)?.inTerms('uk');
    if (compiled === undefined) throw new Error(`there is no flow '${flow}'`);
    const all = [...compiled.questions.keys()].map((id) => [id, [typed[id] ?? "I don't know"]] as const);
    const run = runScript(compiled, Object.fromEntries(all));
    if (run.result !== 'outcome' || run.outcome.kind !== 'plan')
      throw new Error(JSON.stringify(run).slice(0, 500));
    return run.outcome;
  };

  it.each(scripts)('of %s is in her terms, with its workings', (flow, typed) => {
    const text = outcomeText(madeOf(flow, typed), { dialect: 'uk', workings: true });
    expect(text.split('\n').filter((line) => US.test(line))).toEqual([]);
    expect(text).toMatch(UK);
  });

  it('asks for its sums in her terms', () => {
    const { desk } = knitter();
    const { session } = desk.begin('ada', 'regauge', { pattern: 'sample', unit: 'in' }, 'uk');
    for (const text of ['20 sts and 28 rows = 4"', '4', 'yes']) desk.say('ada', session, { text }, 'uk');
    const seen: string[] = [];
    let replies = desk.say('ada', session, { text: 'work it yourself' }, 'uk');
    for (let i = 0; i < 100 && replies.at(-1)?.reply === 'sum'; i++) {
      for (const reply of replies) {
        if (reply.reply === 'sum') seen.push(sumQuestion(reply.sum, reply.terms));
        if (reply.reply === 'sum said') seen.push(sumSaid(reply.sum, reply.said, reply.terms));
      }
      replies = desk.say('ada', session, { text: 'show me' }, 'uk');
    }
    expect(seen.length).toBeGreaterThan(2);
    expect(seen.filter((text) => US.test(text))).toEqual([]);
    expect(seen.join('\n')).toMatch(/tension of the pattern/);
  });
});
