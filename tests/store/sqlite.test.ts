import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AT_THE_START, type LogLine } from '../../src/dialogue/session.ts';
import type { Measurement } from '../../src/fit/words.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { LogMismatch } from '../../src/store/trouble.ts';
import { databases } from './folder.ts';
import { anyLine, anyPlace, choiceLine, lengthLine, session } from './samples.ts';

const newFile = databases();
const BUST = lengthLine('bust', 96.5, 1000);
const WRIST = lengthLine('wrist', 16, 2000);
const ELBOW = lengthLine('elbow', 27.5, 3000);

function storeWith(...lines: LogLine[]) {
  const file = newFile();
  const store = openStore(file);
  store.create(session('s1'), 500);
  store.append('s1', 0, lines, AT_THE_START);
  return { file, store };
}

describe('a session', () => {
  it('is found again as it was kept, by another process too', () => {
    const { file, store } = storeWith(BUST, WRIST);
    const expected = { ...session('s1'), log: [BUST, WRIST] };
    expect(store.load('s1')).toEqual(expected);
    expect(openStore(file).load('s1')).toEqual(expected);
  });

  it('is undefined where none of that name was kept', () => {
    expect(storeWith().store.load('s2')).toBeUndefined();
  });

  it('keeps the lines that it begins with', () => {
    const store = openStore(newFile());
    store.create(session('s1', 'ada', [BUST]), 500);
    expect(store.load('s1')?.log).toEqual([BUST]);
  });

  it('reads back every line and place that can be written', () => {
    const store = openStore(newFile());
    let made = 0;
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 5 }), anyPlace, (lines, place) => {
        made += 1;
        const id = `s${made}`;
        store.create(session(id), 0);
        store.append(id, 0, lines, place);
        expect(store.load(id)).toEqual({ ...session(id), log: lines, place });
      }),
      { numRuns: 150 },
    );
  });
});

describe('the log', () => {
  it('takes a line once, however often it is appended', () => {
    const { store } = storeWith(BUST, WRIST);
    store.append('s1', 0, [BUST, WRIST], AT_THE_START);
    store.append('s1', 1, [WRIST], AT_THE_START);
    store.append('s1', 1, [WRIST, ELBOW], AT_THE_START);
    expect(store.load('s1')?.log).toEqual([BUST, WRIST, ELBOW]);
  });

  it('leaves the place alone when a late double of an append arrives', () => {
    const { store } = storeWith(BUST);
    store.append('s1', 1, [WRIST], { ...AT_THE_START, confirmed: true });
    store.append('s1', 0, [BUST], AT_THE_START);
    expect(store.load('s1')?.place.confirmed).toBe(true);
  });

  it('refuses a line that would leave a gap, and keeps the place', () => {
    const { store } = storeWith(BUST);
    const append = () => store.append('s1', 2, [ELBOW], { ...AT_THE_START, confirmed: true });
    expect(append).toThrow(LogMismatch);
    expect(append).toThrow(expect.objectContaining({ kind: 'gap', session: 's1', number: 2, stored: 1 }));
    expect(store.load('s1')).toEqual({ ...session('s1'), log: [BUST] });
  });

  it('refuses a line that differs from the one stored, and keeps none of its companions', () => {
    const { store } = storeWith(BUST, WRIST);
    const append = () => store.append('s1', 1, [ELBOW, WRIST], AT_THE_START);
    expect(append).toThrow(expect.objectContaining({ kind: 'conflict', number: 1, stored: 2 }));
    expect(store.load('s1')?.log).toEqual([BUST, WRIST]);
  });

  it('refuses a place that was thought out before somebody else added a line', () => {
    const { store } = storeWith(BUST, WRIST);
    expect(() => store.append('s1', 1, [], AT_THE_START)).toThrow(
      expect.objectContaining({ kind: 'conflict', number: 1 }),
    );
  });

  it.each([
    ['changes a line', "UPDATE log SET line = '{}' WHERE number = 0"],
    ['deletes a line', 'DELETE FROM log WHERE number = 1'],
    ['deletes all lines', 'DELETE FROM log'],
    [
      'puts another line in its place',
      "INSERT OR REPLACE INTO log (session, number, format, line) VALUES ('s1', 0, 1, '{}')",
    ],
    ['leaves a gap', "INSERT INTO log (session, number, format, line) VALUES ('s1', 3, 1, '{}')"],
    ['gives the session to another owner', "UPDATE session SET owner = 'bea'"],
    ['deletes the session under its log', 'DELETE FROM session'],
  ])('is kept by the database itself from a program that %s', (_, sql) => {
    const { file, store } = storeWith(BUST, WRIST);
    const other = new Database(file);
    expect(() => other.exec(sql)).toThrow(/constraint|only added to|added to at its end|only its place/i);
    other.close();
    expect(store.load('s1')?.log).toEqual([BUST, WRIST]);
  });
});

describe('open sessions', () => {
  it('are those of the owner that were answered and not cancelled, newest first', () => {
    const { store } = storeWith(BUST);
    store.create(session('untouched', 'ada', [choiceLine('unit', 'cm', 600)]), 600);
    store.create(session('cancelled'), 700);
    store.append('cancelled', 0, [WRIST], { ...AT_THE_START, rest: 'cancelled' });
    store.create(session('paused'), 800);
    store.append('paused', 0, [ELBOW], { ...AT_THE_START, rest: 'paused' });
    store.create(session('hers', 'bea'), 900);
    store.append('hers', 0, [ELBOW], AT_THE_START);
    expect(store.openOf('ada').map((open) => [open.session.id, open.lastAt])).toEqual([
      ['paused', 3000],
      ['s1', 1000],
    ]);
  });
});

describe('body measurements', () => {
  const questions = new Map<string, Measurement>([
    ['bust', 'bust'],
    ['wrist', 'wrist'],
  ]);

  it('are the latest lengths over all interviews, with their dates', () => {
    const { store } = storeWith(BUST, WRIST, ELBOW);
    store.create(session('s2'), 4000);
    store.append(
      's2',
      0,
      [lengthLine('bust', 97, 5000), choiceLine('wrist', 'no length', 6000)],
      AT_THE_START,
    );
    store.create(session('hers', 'bea'), 7000);
    store.append('hers', 0, [lengthLine('bust', 120, 8000)], AT_THE_START);
    expect([...store.measuredOf('ada', questions)]).toEqual([
      ['bust', { cm: 97, typed: { value: 97, unit: 'cm' }, at: 5000 }],
      ['wrist', { cm: 16, typed: { value: 16, unit: 'cm' }, at: 2000 }],
    ]);
  });
});

describe('practice', () => {
  it('is kept as practice, gives no measurement of hers, and is told of in the export', () => {
    const { store } = storeWith(BUST);
    store.create({ ...session('s2'), practice: true }, 4000);
    store.append('s2', 0, [lengthLine('bust', 120, 5000)], AT_THE_START);
    expect(store.load('s2')).toMatchObject({ practice: true, log: [{ question: 'bust' }] });
    expect(store.load('s1')).not.toHaveProperty('practice');
    expect(store.openOf('ada').map((open) => [open.session.id, open.session.practice])).toEqual([
      ['s2', true],
      ['s1', undefined],
    ]);
    expect(store.measuredOf('ada', new Map([['bust', 'bust']])).get('bust')?.cm).toBe(96.5);
    expect(store.exportOf('ada').sessions.map((s) => s.practice)).toEqual([undefined, true]);
  });
});

describe('preferences', () => {
  it('are unknown until said, and each owner has her own', () => {
    const { store } = storeWith();
    store.prefer('ada', { unit: 'in', terms: null });
    store.prefer('ada', { unit: 'in', terms: 'uk' });
    expect(store.preferencesOf('ada')).toEqual({ unit: 'in', terms: 'uk' });
    expect(store.preferencesOf('bea')).toEqual({ unit: null, terms: null });
  });
});

describe('the export', () => {
  it('holds everything of the owner, nothing of others, and survives as JSON', () => {
    const { store } = storeWith(BUST, WRIST);
    store.prefer('ada', { unit: 'cm', terms: 'uk' });
    store.create(session('hers', 'bea'), 900);
    const { owner: _, ...kept } = session('s1');
    const expected = {
      schema: 'easewright export',
      version: 1,
      owner: 'ada',
      preferences: { unit: 'cm', terms: 'uk' },
      sessions: [{ ...kept, log: [BUST, WRIST], begun: 500 }],
    };
    expect(store.exportOf('ada')).toEqual(expected);
    expect(JSON.parse(JSON.stringify(store.exportOf('ada')))).toEqual(expected);
  });
});

describe('forgetting', () => {
  it('deletes everything of the owner and nothing of others', () => {
    const { store } = storeWith(BUST, WRIST);
    store.prefer('ada', { unit: 'cm', terms: 'uk' });
    store.create(session('hers', 'bea'), 900);
    store.append('hers', 0, [ELBOW], AT_THE_START);
    store.forget('ada');
    expect(store.exportOf('ada')).toMatchObject({ preferences: { unit: null, terms: null }, sessions: [] });
    expect(store.load('s1')).toBeUndefined();
    expect(store.load('hers')?.log).toEqual([ELBOW]);
    store.forget('ada');
  });

  it('leaves no trace of what was typed in any file of the folder', () => {
    const file = newFile();
    const store = openStore(file);
    const secret = 'a-word-that-is-nowhere-else';
    const lines = Array.from({ length: 60 }, (_, i) => choiceLine(`question ${i}`, secret, i));
    store.create(session('s1', 'ada-herself'), 0);
    store.append('s1', 0, lines, AT_THE_START);
    const traces = () =>
      [file, `${file}-wal`].map((f) => {
        const text = readFileSync(f, 'latin1');
        return text.includes(secret) || text.includes('ada-herself');
      });
    expect(traces()).toContain(true);
    store.forget('ada-herself');
    expect(traces()).toEqual([false, false]);
  });

  it('protects the log again afterwards', () => {
    const { file, store } = storeWith(BUST);
    store.forget('bea');
    const other = new Database(file);
    expect(() => other.exec('DELETE FROM log')).toThrow('only added to');
    other.close();
  });
});

describe('the file', () => {
  it('and its folder can be read by the user of the process alone', () => {
    const file = join(newFile(), 'folder', 'easewright.db');
    openStore(file).create(session('s1'), 0);
    const mode = (path: string) => statSync(path).mode & 0o777;
    expect(mode(join(file, '..'))).toBe(0o700);
    for (const f of [file, `${file}-wal`, `${file}-shm`]) expect(mode(f)).toBe(0o600);
  });
});
