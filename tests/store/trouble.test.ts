import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { AT_THE_START } from '../../src/dialogue/session.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { named, StoredUnreadable, StoreTrouble } from '../../src/store/trouble.ts';
import { databases } from './folder.ts';
import { lengthLine, session } from './samples.ts';

const newFile = databases();
const BUST = lengthLine('bust', 96.5, 1000);

function thrownBy(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
}

describe('trouble of the world outside has a name and its facts', () => {
  it('when another process holds the database too long; nothing is kept, and the next try succeeds', () => {
    const file = newFile();
    const store = openStore(file, 50);
    store.create(session('s1'), 0);
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    const error = thrownBy(() => store.append('s1', 0, [BUST], AT_THE_START));
    expect(error).toBeInstanceOf(StoreTrouble);
    expect(error).toMatchObject({ trouble: 'locked', file, during: 'append', code: 'SQLITE_BUSY' });
    other.exec('ROLLBACK');
    expect(store.load('s1')?.log).toEqual([]);
    store.append('s1', 0, [BUST], AT_THE_START);
    expect(store.load('s1')?.log).toEqual([BUST]);
  });

  it('when the file is no database', () => {
    const file = newFile();
    writeFileSync(file, 'a shopping list: wool, needles, tea. '.repeat(400));
    expect(thrownBy(() => openStore(file))).toMatchObject({
      name: 'StoreTrouble',
      trouble: 'corrupt',
      during: 'open',
      code: 'SQLITE_NOTADB',
    });
  });

  it('when a page of the database is damaged', () => {
    const file = newFile();
    const store = openStore(file);
    store.create(session('s1'), 0);
    store.close();
    const db = new Database(file);
    db.unsafeMode();
    db.pragma('writable_schema = ON');
    const { rootpage } = db
      .prepare<[], { rootpage: number }>("SELECT rootpage FROM sqlite_schema WHERE name = 'session'")
      .get() ?? { rootpage: 0 };
    db.close();
    const bytes = Buffer.from(new Database(file).serialize());
    bytes.fill(0xff, (rootpage - 1) * 4096, rootpage * 4096);
    const damaged = newFile();
    writeFileSync(damaged, bytes);
    expect(thrownBy(() => openStore(damaged).load('s1'))).toMatchObject({
      trouble: 'corrupt',
      during: 'load',
    });
  });

  it('when the folder is a file, or the file a folder', () => {
    const file = newFile();
    writeFileSync(file, '');
    const under = thrownBy(() => openStore(join(file, 'easewright.db')));
    expect(under).toMatchObject({ name: 'StoreTrouble', trouble: 'cannot open', during: 'open' });
    const folder = newFile();
    mkdirSync(folder);
    expect(thrownBy(() => openStore(folder))).toMatchObject({ trouble: 'cannot open', code: 'EISDIR' });
  });

  it('when the disk is full: SQLite says so when the pages allowed are used up', () => {
    const file = newFile();
    const db = new Database(file);
    db.exec('CREATE TABLE wool (name TEXT)');
    db.pragma('max_page_count = 2');
    const error = thrownBy(() => db.prepare('INSERT INTO wool VALUES (?)').run('w'.repeat(50_000)));
    expect(named(error, file, 'append')).toMatchObject({ trouble: 'disk full', code: 'SQLITE_FULL' });
    db.close();
  });

  it('when the database may only be read', () => {
    const file = newFile();
    openStore(file).close();
    const db = new Database(file, { readonly: true });
    const error = thrownBy(() => db.exec("INSERT INTO preference (owner) VALUES ('ada')"));
    expect(named(error, file, 'prefer')).toMatchObject({ trouble: 'read-only', code: 'SQLITE_READONLY' });
    db.close();
  });
});

describe('a mistake of the program', () => {
  it('is passed on as it is', () => {
    const mistake = new TypeError('no such verb');
    expect(named(mistake, 'a file', 'append')).toBe(mistake);
  });
});

describe('stored values that cannot be read', () => {
  function storeWithLine(format: number, line: string) {
    const file = newFile();
    const store = openStore(file);
    store.create(session('s1'), 0);
    const db = new Database(file);
    db.prepare("INSERT INTO log (session, number, format, line) VALUES ('s1', 0, ?, ?)").run(format, line);
    db.close();
    return store;
  }

  it.each([
    ['of a later format', 2, '{"line":"answer"}', 'its format 2 is not known'],
    ['of another shape', 1, '{"line":"answer","question":"bust","at":1}', 'answer'],
    [
      'with a value of no kind',
      1,
      '{"line":"answer","question":"bust","typed":"","at":1,"answer":{"given":"value","value":{"kind":"colour"}}}',
      'kind',
    ],
  ])('a line %s is named with its place, not guessed at', (_, format, line, why) => {
    const error = thrownBy(() => storeWithLine(format, line).load('s1'));
    expect(error).toBeInstanceOf(StoredUnreadable);
    expect(error).toMatchObject({ where: 'line 0 of s1', message: expect.stringContaining(why) });
  });

  it('a place is taken to be the start: no answer is lost by it', () => {
    const file = newFile();
    const store = openStore(file);
    store.create(session('s1', 'ada', [BUST]), 0);
    const db = new Database(file);
    db.exec(`UPDATE session SET place = '{"door":"open"}'`);
    expect(store.load('s1')).toEqual({ ...session('s1'), log: [BUST] });
    db.exec('UPDATE session SET place_format = 2');
    expect(store.load('s1')?.place).toEqual(AT_THE_START);
    db.close();
  });
});
