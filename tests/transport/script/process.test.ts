/** The program as it is built, run as its users run it. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { parsePlan } from '../../../src/fit/plan-schema.ts';
import { answerFiles } from './surroundings.ts';

const written = answerFiles();

const program = (args: readonly string[], input = '') =>
  spawnSync(process.execPath, ['dist/main.js', 'fit', ...args], { input, encoding: 'utf8' });

const ANSWERS =
  'spacing_from: 50\nspacing_to: 72\nspacing_rows: 84\nspacing_worked: flat\nspacing_plain: 0\n';

describe('node dist/main.js fit', () => {
  it('plans from a file, and ends with the exit code', () => {
    const { status, stdout, stderr } = program([
      '--flow',
      'spacing',
      '--answers',
      written('real.yaml', ANSWERS),
      '--json',
    ]);
    expect([status, stderr]).toEqual([0, '']);
    expect(parsePlan(JSON.parse(stdout)).flow).toBe('spacing');
  });

  it('plans from what is piped in, and from one line', () => {
    expect(program(['--flow', 'spacing', '--answers', '-'], ANSWERS).status).toBe(0);
    const { status, stdout } = program(['--flow', 'spacing', 'from=50', 'to=72', 'rows=84']);
    expect(status).toBe(0);
    expect(stdout).toContain('You end with 72 stitches.');
  });

  it('refuses with code 2, on the error stream', () => {
    const { status, stdout, stderr } = program(['--flow', 'spacing', 'from=many', 'to=72', 'rows=84']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain("from: 'many' was not taken.");
  });
});
