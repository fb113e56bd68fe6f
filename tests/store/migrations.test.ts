import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { MIGRATIONS } from '../../src/store/migrations.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { databases } from './folder.ts';

const newFile = databases();
const PROCESSES = 3;
const FILES = 20;

describe('migrations', () => {
  it('number the database by the steps that were taken', () => {
    const file = newFile();
    openStore(file).close();
    const db = new Database(file);
    expect(db.pragma('user_version', { simple: true })).toBe(MIGRATIONS.length);
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  });

  it('make strict tables only', () => {
    const file = newFile();
    openStore(file).close();
    const tables = new Database(file).pragma('table_list') as {
      schema: string;
      name: string;
      strict: number;
    }[];
    const ours = tables.filter((t) => t.schema === 'main' && !t.name.startsWith('sqlite_'));
    expect(ours.map((t) => t.name).sort()).toEqual([
      'bookmark',
      'forgetting',
      'gate',
      'host',
      'log',
      'preference',
      'session',
    ]);
    expect(ours.every((t) => t.strict === 1)).toBe(true);
  });

  it('take interviews of an earlier program for her own, and let none become practice later', () => {
    const file = newFile();
    const db = new Database(file);
    for (const step of MIGRATIONS.slice(0, 2)) db.exec(step);
    db.pragma('user_version = 2');
    const place = JSON.stringify({ revisiting: null, pending: null, confirmed: false, rest: 'none' });
    db.prepare(`INSERT INTO session VALUES ('s1', 'ada', 'sleeve', 1, 500, 0, 1, ?)`).run(place);
    db.close();
    const store = openStore(file);
    expect(store.load('s1')).toMatchObject({ id: 's1', flow: 'sleeve' });
    expect(store.load('s1')).not.toHaveProperty('practice');
    store.close();
    const later = new Database(file);
    expect(() => later.exec('UPDATE session SET practice = 1')).toThrow('only its place changes');
    later.close();
  });

  it('leave a database of a later program alone, and say so by name', () => {
    const file = newFile();
    openStore(file).close();
    const db = new Database(file);
    db.pragma('user_version = 999');
    expect(() => openStore(file)).toThrow(
      expect.objectContaining({ name: 'StoreTooNew', file, found: 999, known: MIGRATIONS.length }),
    );
    expect(db.pragma('user_version', { simple: true })).toBe(999);
  });

  it('are taken once where several processes open a new file at the same time', async () => {
    const folder = newFile();
    const start = `${Date.now() + 3000}`;
    const children = Array.from({ length: PROCESSES }, () =>
      spawn(process.execPath, ['--import', 'tsx', 'tests/store/open-child.ts', folder, start, `${FILES}`], {
        stdio: 'inherit',
      }),
    );
    const codes = await Promise.all(children.map(async (child) => (await once(child, 'exit'))[0]));
    expect(codes).toEqual(children.map(() => 0));
    for (let i = 0; i < FILES; i += 1) {
      expect(openStore(join(folder, `${i}.db`)).openOf('ada')).toHaveLength(PROCESSES);
    }
  });
});
