/** The `fit` command run in this process, with what it writes. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import type { Plan } from '../../../src/fit/plan.ts';
import type { Dialect } from '../../../src/fit/terms.ts';
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
  readonly blanks: readonly (BlankWish & { readonly terms: Dialect })[];
}

export async function run(...args: readonly string[]): Promise<Ran> {
  let [out, error] = ['', ''];
  const kept: { plan: Plan; files: unknown }[] = [];
  const blanks: (BlankWish & { terms: Dialect })[] = [];
  const code = await runCommand(args, {
    flows,
    wordingIn: (dialect) => (outcome, workings, key) =>
      key === undefined ? outcomeText(outcome, { dialect, workings }) : keyText(outcome, key, dialect),
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    keep: async (plan, { picture, sheet, paper, type, terms, from }) => {
      kept.push({
        plan,
        files: { picture, sheet, paper, type, terms, ...(from === undefined ? {} : { from }) },
      });
      return [picture, sheet].filter((file) => file !== undefined);
    },
    keepBlank: async (wish, terms) => {
      blanks.push({ ...wish, terms });
      return [wish.file];
    },
  });
  return { code, out, error, kept, blanks };
}
