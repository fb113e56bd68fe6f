import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { runTerminal } from '../../../src/transport/terminal/terminal.ts';
import { fakeDesk, fakeDrawings, fakeWording } from './fake-desk.ts';

/** Runs a terminal on these lines, and gives all that it wrote. */
async function run(
  lines: readonly string[],
  { columns = 80, fake = fakeDesk(), tty = false } = {},
): Promise<string> {
  const input = Object.assign(new PassThrough(), { isTTY: tty });
  const output = new PassThrough();
  const written = text(output);
  input.end(lines.map((line) => `${line}\n`).join(''));
  const { desk } = fake;
  const { drawings } = fakeDrawings();
  const given = { desk, drawings, wording: fakeWording, owner: 'ada' };
  await runTerminal({ ...given, input, output, columns, interactive: false });
  output.end();
  return written;
}

const WHOLE = [
  '1',
  'For me',
  'hand',
  '16 cm',
  'about 16',
  'yes',
  'change wrist',
  '17 cm',
  'yes',
  'another',
  'leave',
];

describe('a terminal without a window', () => {
  it('holds a whole interview, a line an answer', async () => {
    const transcript = join(import.meta.dirname, 'whole-interview.txt');
    expect(await run(WHOLE, { columns: 60 })).toBe(readFileSync(transcript, 'utf8'));
  });

  it.each([20, 40, 80, 100])(
    'writes no escape code, and no line wider than its window of %i columns',
    async (columns) => {
      const written = await run(WHOLE, { columns });
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what must not be there.
      expect(written).not.toMatch(/[\x00-\x09\x0b-\x1f\x7f-\x9f]/);
      const lines = written.split('\n').filter((line) => !line.startsWith('> '));
      expect(lines.filter((line) => [...line].length > columns)).toEqual([]);
    },
  );

  it('takes what stands on a button for what the button sends', async () => {
    const fake = fakeDesk();
    const lines = WHOLE.with(-2, 'Another Interview').toSpliced(-2, 0, 'change an answer', 'yes');
    expect(await run(lines, { fake })).toContain('> Another Interview\n\nWhat would you like to do?');
    expect(fake.heard).toContain('outcome: review');
  });

  it('pauses where the input ends, and says how to go on', async () => {
    const fake = fakeDesk();
    expect(await run(['1', 'For me'], { fake })).toMatch(
      /\n\nEverything you have answered is saved. To go on: npm start\n\n$/,
    );
    expect(await run([], { fake })).toContain('\n1. Go on: A wristlet (3 May 2025, 1 answered)\n');
  });

  it('goes on with an open interview where it stood', async () => {
    const fake = fakeDesk();
    await run(['1', 'For me'], { fake });
    expect(await run(['continue'], { fake })).toContain(
      '\nQuestion 2, about 1 to go\nWhich edges shall be ribbed?\n',
    );
  });

  it('leaves when she pauses, though more lines follow', async () => {
    const fake = fakeDesk();
    expect(await run(['1', 'pause', 'For me'], { fake })).toContain('Paused. All is kept.\n\nEverything');
    expect(fake.heard).toEqual(['for_whom: pause']);
  });

  it('takes an interview by its number, its name or its wish, and asks again for anything else', async () => {
    for (const name of ['1', 'WRISTLET', 'a wristlet', 'I want a wristlet that fits']) {
      expect(await run([name])).toContain('Question 1, about 2 to go');
    }
    for (const name of ['0', '4', '']) {
      expect(await run([name])).toContain('Please type a number from 1 to 3.');
    }
    expect(await run(['socks'])).toContain('I do not know what to do about that.');
  });

  it('tells the desk which question each line answers', async () => {
    const fake = fakeDesk();
    await run(WHOLE, { fake });
    expect(fake.heard).toEqual([
      'for_whom: For me',
      'edges: hand',
      'wrist: 16 cm',
      'long: about 16',
      'long: yes',
      'review: change wrist',
      'wrist: 17 cm',
      'review: yes',
    ]);
  });

  it('says so when an answer could not be saved, and takes it again', async () => {
    const fake = fakeDesk();
    fake.breaks(1);
    const written = await run(['1', 'For me', 'For me'], { fake });
    expect(written).toContain(
      'This could not be saved. The disk is full. Everything before it is safe. Please\ntry again.\n\nQuestion 1,',
    );
    expect(written).toContain('Noted: For me\n\nQuestion 2,');
  });

  it('does not repeat what she sees herself type', async () => {
    expect(await run(['1', 'For me'])).toContain('> For me\n');
    expect(await run(['1', 'For me'], { tty: true })).not.toContain('> For me\n');
  });
});
