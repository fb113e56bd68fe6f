/** The `fit` command run in this process, with what it writes. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import type { Plan } from '../../../src/fit/plan.ts';
import { loadFlows } from '../../../src/library.ts';
import { keyText } from '../../../src/present/key-text.ts';
import { outcomeText } from '../../../src/present/plan-text.ts';
import { runCommand } from '../../../src/transport/script/command.ts';
import type { BlankWish } from '../../../src/transport/script/print-options.ts';

const flows = loadFlows();

/** Writes files of answers into a folder that is removed when the tests of one file are over; each call gives a path. */
export function answerFiles(): (name: string, text: string) => string {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-script-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  return (name, text) => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  };
}

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly error: string;
  readonly kept: readonly { readonly plan: Plan; readonly files: unknown }[];
  readonly blanks: readonly BlankWish[];
}

export async function run(...args: readonly string[]): Promise<Ran> {
  let [out, error] = ['', ''];
  const kept: { plan: Plan; files: unknown }[] = [];
  const blanks: BlankWish[] = [];
  const code = await runCommand(args, {
    flows,
    wording: (outcome, workings, key) =>
      key === undefined ? outcomeText(outcome, { dialect: 'us', workings }) : keyText(outcome, key, 'us'),
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    keep: async (plan, { picture, sheet, paper, type, from }) => {
      kept.push({ plan, files: { picture, sheet, paper, type, ...(from === undefined ? {} : { from }) } });
      return [picture, sheet].filter((file) => file !== undefined);
    },
    keepBlank: async (wish) => {
      blanks.push(wish);
      return [wish.file];
    },
  });
  return { code, out, error, kept, blanks };
}
