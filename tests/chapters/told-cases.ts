/** The cases of `told/`: `blend/in the round.txt` is a case of the flow `blend`. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Outcome } from '../../src/fit/plan.ts';
import { outcomeOf } from './scripted.ts';

export const FOLDER = new URL('told/', import.meta.url);
export const DASHES = '----------';

export interface Case {
  readonly name: string;
  readonly flow: string;
  /** As it stands in the file: `wrist: 16 cm`, a line each. */
  readonly answers: readonly string[];
  readonly told: readonly string[];
}

export const CASES: readonly Case[] = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.txt'))
  .sort()
  .map((name) => {
    const [answers = '', told = ''] = readFileSync(new URL(name, FOLDER), 'utf8').split(`${DASHES}\n`);
    const lines = (text: string) => text.split('\n').filter((line) => line !== '');
    return { name, flow: name.split('/')[0] ?? '', answers: lines(answers), told: lines(told) };
  });

export function outcomeOfCase({ flow, answers }: Case): Outcome {
  const typed = answers.map((line): [string, string] => {
    const [question = '', ...rest] = line.split(': ');
    return [question, rest.join(': ')];
  });
  return outcomeOf(flow, Object.fromEntries(typed));
}
