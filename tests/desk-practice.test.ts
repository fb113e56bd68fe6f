/** What the desk keeps of practice, and what it never takes for hers. */
import { describe, expect, it } from 'vitest';
import { openDesk } from '../src/desk.ts';
import type { Reply } from '../src/dialogue/message.ts';
import { loadFlows } from '../src/library.ts';
import { openStore } from '../src/store/sqlite.ts';
import { databases } from './store/folder.ts';
import { wristlet } from './wristlet.ts';

const newFile = databases();
const flows = loadFlows();

function deskOn() {
  const store = openStore(newFile(), 50);
  let [now, made] = [Date.UTC(2026, 4, 3), 0];
  const clock = () => ++now;
  const newId = () => `s${++made}`;
  return { store, desk: openDesk({ flows, store, clock, newId, unit: 'cm', terms: 'us' }) };
}

const notesOf = (replies: readonly Reply[]) =>
  replies.flatMap((r) => (r.reply === 'ask' ? r.buttons.map(({ label, note }) => `${label}: ${note}`) : []));

/** Takes the exercise of measuring around the bust up to its second measurement. */
function practiseSize({ desk }: ReturnType<typeof deskOn>) {
  const { session } = desk.practise('ada', 'size');
  let replies: readonly Reply[] = [];
  for (const text of ['Pennywhin, in the round', '21 sts and 28 rows to 10 cm', 'women', '96 cm'])
    replies = desk.say('ada', session, { text });
  return { session, replies };
}

describe('practice', () => {
  it('begins with its story, and offers the exercise’s answers with their source', () => {
    const { desk } = deskOn();
    const { replies } = desk.practise('ada', 'sleeve');
    expect(replies[0]).toMatchObject({ reply: 'say', tone: 'explain' });
    expect(replies[0]).toHaveProperty(
      'text',
      expect.stringMatching(/^Practice\. The beekeeper .* or try others\.$/),
    );
    expect(notesOf(replies)).toContain("From the cuff, flat: the exercise's");
  });

  it('never keeps a measurement as hers, nor offers it in an interview of her own', () => {
    const here = deskOn();
    expect(notesOf(practiseSize(here).replies)).toEqual(["92 cm: the exercise's"]);
    const own = here.desk.begin('ada', 'size').session;
    const seen: string[] = [];
    let replies: readonly Reply[] = here.desk.resume('ada', own);
    for (const text of ['Pennywhin, in the round', '21 sts and 28 rows to 10 cm', 'women']) {
      seen.push(...notesOf(replies));
      replies = here.desk.say('ada', own, { text });
    }
    expect(replies.at(-1)).toMatchObject({ reply: 'ask', question: 'bust' });
    expect(notesOf(replies)).toEqual([]);
    expect(seen.filter((button) => /^Same |measured|exercise/.test(button))).toEqual([]);
    expect(here.store.measuredOf('ada', new Map([['bust', 'bust']])).size).toBe(0);
  });

  it('does not offer what she measured on herself', () => {
    const here = deskOn();
    const own = here.desk.begin('ada', 'size').session;
    for (const text of ['Pennywhin, in the round', '21 sts and 28 rows to 10 cm', 'women', '101 cm', '93 cm'])
      here.desk.say('ada', own, { text });
    expect(notesOf(practiseSize(here).replies)).toEqual(["92 cm: the exercise's"]);
    expect(here.store.measuredOf('ada', new Map([['bust', 'bust']])).get('bust')?.cm).toBe(101);
  });

  it('is told apart from interviews of her own where those are listed, and in what she takes along', () => {
    const here = deskOn();
    const { session } = practiseSize(here);
    const own = here.desk.begin('ada', 'spacing').session;
    here.desk.say('ada', own, { text: '50' });
    expect(here.desk.open('ada').map((open) => [open.session, open.practice])).toEqual([
      [own, false],
      [session, true],
    ]);
    const kept = JSON.parse(JSON.stringify(here.store.exportOf('ada').sessions));
    expect(kept.map((s: { practice?: boolean }) => s.practice)).toEqual([true, undefined]);
  });

  it('follows her where she differs, and goes on with the exercise', () => {
    const here = deskOn();
    const { session } = practiseSize(here);
    const replies = here.desk.say('ada', session, { text: '94 cm' });
    expect(replies[0]).toMatchObject({ reply: 'say', tone: 'heard' });
    expect(notesOf(replies)).toContain("Classic: 5 to 10 cm (2 to 4 in): the exercise's");
    expect(here.store.load(session)?.log.at(-1)).toMatchObject({ question: 'upper_bust', typed: '94 cm' });
  });

  it('is refused for a flow that has no exercise', () => {
    const { store } = deskOn();
    const desk = openDesk({
      flows: wristlet(),
      store,
      clock: () => 1,
      newId: () => 'x',
      unit: null,
      terms: 'us',
    });
    expect(() => desk.practise('ada', 'wristlet')).toThrow('no such flow');
    expect(() => desk.practise('ada', 'nothing')).toThrow('no such flow');
    expect(store.load('x')).toBeUndefined();
  });
});
