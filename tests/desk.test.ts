import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openDesk } from '../src/desk.ts';
import type { Reply } from '../src/dialogue/message.ts';
import type { LengthUnit } from '../src/fit/units.ts';
import { loadFlows } from '../src/library.ts';
import { openStore } from '../src/store/sqlite.ts';
import type { Store } from '../src/store/store.ts';
import { databases } from './store/folder.ts';
import { wristlet } from './wristlet.ts';

const newFile = databases();

interface Made {
  readonly file?: string;
  readonly store?: Store;
  readonly unit?: LengthUnit | null;
}

/** A desk whose clock strikes once a call, on a file of its own or on one that another desk uses too. */
function deskOn({ file = newFile(), store = openStore(file, 50), unit = null }: Made = {}) {
  let [now, made] = [1000, 0];
  const clock = () => {
    now += 1;
    return now;
  };
  const newId = () => {
    made += 1;
    return `${file} ${made}`;
  };
  return { file, store, desk: openDesk({ flows: wristlet(), store, clock, newId, unit, terms: 'us' }) };
}

/** What a person reads: what was said, and the question she stands at. */
function read(replies: readonly Reply[]): string[] {
  return replies.map((r) => {
    if (r.reply === 'say') return r.text;
    return r.reply === 'ask' || r.reply === 'check' ? `? ${r.text}` : r.reply;
  });
}

const WRIST = '? How wide is your wrist around?';
const LONG = '? How long shall the wristlet be?';

describe('the desk', () => {
  it('offers its flows', () => {
    expect(deskOn().desk.flows()).toEqual([
      {
        id: 'wristlet',
        title: 'A wristlet',
        wish: 'I want a wristlet that fits',
        hear: [],
        group: 'sums',
        common: false,
        exercise: false,
      },
    ]);
  });

  it('begins an interview, and keeps each answer before it goes on', () => {
    const { desk, store } = deskOn();
    const { session, replies } = desk.begin('ada', 'wristlet');
    expect(read(replies)).toEqual(['? Do you measure in centimetres or in inches?']);
    desk.say('ada', session, { text: 'cm' });
    expect(read(desk.say('ada', session, { text: '16 cm' })).at(-1)).toBe(LONG);
    expect(store.load(session)?.log).toMatchObject([
      { question: 'unit', typed: 'cm' },
      { question: 'wrist', typed: '16 cm', answer: { value: { cm: 16 } } },
    ]);
  });

  it('takes an interview up where it stood, in another process, with its date and the number answered', () => {
    const { file, desk } = deskOn();
    const { session } = desk.begin('ada', 'wristlet');
    desk.say('ada', session, { text: 'cm' });
    desk.say('ada', session, { text: '16 cm' });
    const later = deskOn({ file }).desk;
    expect(later.open('ada')).toEqual([
      { session, flow: desk.flows()[0], lastAt: expect.any(Number), answered: 2, practice: false },
    ]);
    expect(later.open('bea')).toEqual([]);
    expect(read(later.resume('ada', session))).toEqual([LONG]);
  });

  it('refuses the interview of another owner, one that is not there, and a flow that is not there', () => {
    const { desk, store } = deskOn();
    const { session } = desk.begin('ada', 'wristlet');
    const refusal = (reason: string) => expect.objectContaining({ name: 'DeskRefused', reason });
    expect(() => desk.say('bea', session, { text: 'cm' })).toThrow(refusal('of another owner'));
    expect(() => desk.resume('bea', session)).toThrow(refusal('of another owner'));
    expect(() => desk.resume('ada', 'elsewhere')).toThrow(refusal('no such interview'));
    expect(() => desk.begin('ada', 'socks')).toThrow(refusal('no such flow'));
    expect(store.load(session)?.log).toEqual([]);
  });

  it('does not offer to go on with an interview whose flow is gone', () => {
    const { desk, store } = deskOn();
    const { session } = desk.begin('ada', 'wristlet');
    desk.say('ada', session, { text: 'cm' });
    const none = openDesk({
      flows: new Map(),
      store,
      clock: () => 0,
      newId: () => 'x',
      unit: null,
      terms: 'us',
    });
    expect(none.open('ada')).toEqual([]);
    expect(() => none.resume('ada', session)).toThrow('no such flow');
  });
});

describe('the unit', () => {
  it('is asked once in a life', () => {
    const { desk } = deskOn();
    const first = desk.begin('ada', 'wristlet');
    desk.say('ada', first.session, { text: 'inches' });
    expect(read(desk.begin('ada', 'wristlet').replies)).toEqual([WRIST]);
    expect(read(desk.begin('bea', 'wristlet').replies)).not.toEqual([WRIST]);
  });

  it('is the one of the settings for those who have chosen none; an interview not yet answered is not open', () => {
    const { desk, store } = deskOn({ unit: 'in' });
    const { session, replies } = desk.begin('ada', 'wristlet');
    expect(read(replies)).toEqual([WRIST]);
    expect(store.load(session)?.log).toMatchObject([{ question: 'unit', typed: 'in' }]);
    expect(desk.open('ada')).toEqual([]);
    expect(store.preferencesOf('ada').unit).toBeNull();
  });
});

describe('what is answered from the start', () => {
  it('is not asked; a unit of her own goes before a given one', () => {
    const { desk, store } = deskOn();
    expect(read(desk.begin('ada', 'wristlet', { unit: 'in', wrist: '6 in' }).replies)).toEqual([LONG]);
    store.prefer('ada', { unit: 'cm', terms: null });
    const { session } = desk.begin('ada', 'wristlet', { unit: 'in' });
    expect(store.load(session)?.log).toMatchObject([{ question: 'unit', typed: 'cm' }]);
    expect(desk.open('ada')).toEqual([]);
  });

  it('is asked all the same where the flow has no such question, or cannot read the answer', () => {
    const { desk, store } = deskOn({ unit: 'cm' });
    const { session, replies } = desk.begin('ada', 'wristlet', { wrist: 'wide', elbow: '27 cm' });
    expect(read(replies)).toEqual([WRIST]);
    expect(store.load(session)?.log).toMatchObject([{ question: 'unit' }]);
  });
});

describe('two messages at once', () => {
  /** A desk that is overtaken: just before its next append, `other` says something to the same interview. */
  function overtaken(text: string) {
    const { file, store, desk: other } = deskOn();
    let session = '';
    let overtakes = false;
    const late = deskOn({
      file,
      store: {
        ...bound(store),
        append: (...args) => {
          if (overtakes) {
            overtakes = false;
            other.say('ada', session, { text });
          }
          store.append(...args);
        },
      },
    }).desk;
    session = other.begin('ada', 'wristlet').session;
    other.say('ada', session, { text: 'cm' });
    overtakes = true;
    return { late, session, store };
  }

  function bound(store: Store): Store {
    return {
      create: (...a) => store.create(...a),
      load: (...a) => store.load(...a),
      append: (...a) => store.append(...a),
      openOf: (...a) => store.openOf(...a),
      measuredOf: (...a) => store.measuredOf(...a),
      preferencesOf: (...a) => store.preferencesOf(...a),
      prefer: (...a) => store.prefer(...a),
      exportOf: (...a) => store.exportOf(...a),
      forget: (...a) => store.forget(...a),
      close: () => store.close(),
    };
  }

  it.each([
    ['the same answer, from a double tap', '16 cm'],
    ['another answer', '17 cm'],
  ])(
    'keep the first; the second, %s, finds the question answered and is not taken for the next one',
    (_, text) => {
      const { late, session, store } = overtaken('16 cm');
      expect(read(late.say('ada', session, { text }))).toEqual([
        'That was answered already: Wrist, 16 cm. To change it, say "change wrist".',
        LONG,
      ]);
      expect(store.load(session)?.log.map((l) => l.line === 'answer' && l.typed)).toEqual(['cm', '16 cm']);
    },
  );

  it('are both kept where the first leaves the question open', () => {
    const { late, session, store } = overtaken('inches');
    late.say('ada', session, { text: '16 cm' });
    expect(store.load(session)?.log).toMatchObject([
      { question: 'unit' },
      { question: 'unit' },
      { question: 'wrist' },
    ]);
  });
});

describe('when an answer cannot be stored', () => {
  it('nothing is said to be kept; the failure is named; the same answer is taken when the trouble is over', () => {
    const { file, store, desk } = deskOn();
    const { session } = desk.begin('ada', 'wristlet');
    desk.say('ada', session, { text: 'cm' });
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    expect(() => desk.say('ada', session, { text: '16 cm' })).toThrow(
      expect.objectContaining({
        name: 'DeskRefused',
        reason: 'not stored',
        cause: expect.objectContaining({ name: 'StoreTrouble', trouble: 'locked' }),
      }),
    );
    expect(read(desk.say('ada', session, { text: 'why' })).at(-1)).toBe(WRIST);
    other.exec('ROLLBACK');
    expect(store.load(session)?.log).toHaveLength(1);
    expect(read(desk.say('ada', session, { text: '16 cm' })).at(-1)).toBe(LONG);
    expect(store.load(session)?.log).toHaveLength(2);
  });
});

describe('measurements of an earlier interview', () => {
  it('are offered again with their date, and taken only when she picks them', () => {
    const store = openStore(newFile(), 50);
    const day = Date.UTC(2026, 4, 3);
    let made = 0;
    const desk = openDesk({
      flows: loadFlows(),
      store,
      clock: () => day,
      newId: () => `s${made++}`,
      unit: 'cm',
      terms: 'us',
    });
    const first = desk.begin('ada', 'body').session;
    for (const text of ['women', '38 in']) desk.say('ada', first, { text });
    const second = desk.begin('ada', 'body').session;
    const ask = desk.say('ada', second, { text: 'women' }).at(-1);
    expect(ask).toMatchObject({
      question: 'bust',
      buttons: [{ label: '96.5 cm', send: '38 in', note: 'measured 3 May 2026' }],
    });
    expect(desk.begin('eve', 'body').replies).not.toMatchObject([
      { buttons: [{ note: 'measured 3 May 2026' }] },
    ]);
    desk.say('ada', second, { text: '38 in' });
    expect(store.load(second)?.log.at(-1)).toMatchObject({
      question: 'bust',
      answer: { value: { cm: 38 * 2.54 } },
    });
  });
});
