/** What README.md shows is what the program says. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PermissionFlagsBits } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { loadFlows } from '../src/library.ts';
import { commandsFor } from '../src/transport/discord/commands.ts';
import { renewed } from '../tools/readme.ts';

const readme = readFileSync('README.md', 'utf8');

/** The first fenced block after a text. */
function blockAfter(text: string): string {
  const block = readme.slice(readme.indexOf(text)).match(/```\w*\n([\s\S]*?)\n```/)?.[1];
  if (block === undefined) throw new Error(`no block after "${text}"`);
  return block;
}

function planOf(flow: string, answers: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-readme-'));
  try {
    const file = join(folder, 'answers.yaml');
    writeFileSync(file, answers);
    const args = ['dist/main.js', 'fit', '--flow', flow, '--answers', file];
    return execFileSync(process.execPath, args, { encoding: 'utf8' });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('the README', () => {
  it('shows an interview that the program holds word for word', () => {
    expect(renewed(readme)).toBe(readme);
  });

  it('shows an interview that goes through to its plan, with every answer taken', () => {
    const talk = blockAfter('## What a short interview looks like');
    expect(talk).toMatch(/^1\. Body: Cast-on and hem$/m);
    expect(talk).toContain('It will measure:');
    expect(talk).not.toMatch(/Not taken|Please answer/);
  });

  it('has an example file of answers that gives a plan', () => {
    expect(planOf('sleeve', blockAfter('An answer file has'))).toMatch(/^1\. Sleeve/m);
  });

  it('names every command of the Discord bot, and the permissions by their number', () => {
    const names = commandsFor(loadFlows()).flatMap(({ name, options = [] }) =>
      name === 'fit' ? options.map((option) => `fit ${option.name}`) : [name],
    );
    expect(names.filter((name) => !readme.includes(`\`/${name}`))).toEqual([]);
    const { ViewChannel, SendMessages, SendMessagesInThreads, AttachFiles } = PermissionFlagsBits;
    expect(readme).toContain(`number ${ViewChannel | SendMessages | SendMessagesInThreads | AttachFiles}.`);
  });
});
