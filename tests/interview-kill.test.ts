/** The real program, killed after each answer of the longest interview in turn, and started again. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { answersOf } from '../src/dialogue/session.ts';
import { openStore } from '../src/store/sqlite.ts';
import { WHOLE } from './dialogue/whole.ts';

/** Starts the program, types the lines, and kills it once it has said this often what it understood. */
async function killedAfter(data: string, lines: readonly string[]): Promise<void> {
  const program = spawn(process.execPath, ['dist/main.js'], {
    env: { ...process.env, EASEWRIGHT_DATA: data },
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const exit = once(program, 'exit');
  program.stdin.write(`${lines.join('\n')}\n`);
  let shown = '';
  for await (const chunk of program.stdout) {
    shown += String(chunk);
    if (shown.includes('Noted:')) program.kill('SIGKILL');
  }
  expect(await exit).toEqual([null, 'SIGKILL']);
}

it('finds every accepted answer again, and goes on at the next question', { timeout: 240_000 }, async () => {
  const data = mkdtempSync(join(tmpdir(), 'easewright-kill-'));
  try {
    for (const [i, [, typed]] of WHOLE.entries()) {
      await killedAfter(data, [i === 0 ? 'whole' : 'continue', typed]);
      const store = openStore(join(data, 'easewright.sqlite'));
      const open = store.openOf('terminal');
      expect(open).toHaveLength(1);
      expect(Object.keys(answersOf(open[0]?.session.log ?? []))).toEqual(
        WHOLE.slice(0, i + 1).map(([id]) => id),
      );
      expect(open[0]?.session.log).toHaveLength(i + 1);
      store.close();
    }
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
});
