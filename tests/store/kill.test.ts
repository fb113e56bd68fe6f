import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../src/store/sqlite.ts';
import { databases } from './folder.ts';
import { lengthLine, session } from './samples.ts';

const newFile = databases();
const ROUNDS = 10;

/** Runs the child until it has acknowledged `answers` lines, kills it, and gives the number of the last acknowledged. */
async function killAfter(answers: number, file: string): Promise<number> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/store/kill-child.ts', file], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const exit = once(child, 'exit');
  let seen = 0;
  let last = -1;
  for await (const line of createInterface({ input: child.stdout })) {
    last = Number(line);
    seen += 1;
    if (seen === answers) child.kill('SIGKILL');
  }
  expect(await exit).toEqual([null, 'SIGKILL']);
  return last;
}

describe('a process that is killed while answers come in', () => {
  it('has kept every answer that it acknowledged, and at most the one under way beside', {
    timeout: 240_000,
  }, async () => {
    const file = newFile();
    openStore(file).create(session('knitter'), 0);
    for (let round = 1; round <= ROUNDS; round += 1) {
      const acknowledged = (await killAfter(round, file)) + 1;
      const store = openStore(file);
      const kept = store.load('knitter');
      const lines = kept?.log ?? [];
      expect(lines.length).toBeGreaterThanOrEqual(acknowledged);
      expect(lines.length).toBeLessThanOrEqual(acknowledged + 1);
      expect(lines).toEqual(lines.map((_, n) => lengthLine(`question ${n}`, n, n)));
      expect(kept?.place.revisiting).toBe(`question ${lines.length - 1}`);
      store.close();
    }
    expect(new Database(file).pragma('integrity_check', { simple: true })).toBe('ok');
  });
});
