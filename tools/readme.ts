/** Renews the interview shown in README.md: types its `> ` lines into the built program and puts down what it says. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const README = 'README.md';
const TALK = /(?<=## What a short interview looks like\n[^#]*?\n```\n)[\s\S]*?(?=\n```)/;

/** The text of the README with the interview as `dist/main.js` holds it now. Throws where there is none to renew. */
export function renewed(readme: string): string {
  const talk = TALK.exec(readme)?.[0];
  if (talk === undefined) throw new Error('no interview found in the README');
  const typed = talk.split('\n').flatMap((line) => (line.startsWith('> ') ? [`${line.slice(2)}\n`] : []));
  const said = held(typed.join(''));
  const from = said.search(/^> /m);
  return readme.replace(TALK, () => said.slice(from).trim());
}

function held(typed: string): string {
  const data = mkdtempSync(join(tmpdir(), 'easewright-readme-'));
  try {
    const env = { PATH: process.env.PATH, EASEWRIGHT_DATA: data };
    return execFileSync(process.execPath, ['dist/main.js'], { input: typed, encoding: 'utf8', env });
  } finally {
    rmSync(data, { recursive: true });
  }
}

if (process.argv[1]?.endsWith('readme.ts')) writeFileSync(README, renewed(readFileSync(README, 'utf8')));
