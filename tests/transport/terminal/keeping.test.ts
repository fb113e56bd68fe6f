import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { readPrint } from '../../../src/transport/terminal/keeping.ts';
import { runTerminal } from '../../../src/transport/terminal/terminal.ts';
import { samplePlan } from '../../../tools/sample-garment.ts';
import { fakeDesk, fakeDrawings, fakeWording } from './fake-desk.ts';

const plan = samplePlan();
/** From the first screen to a plan. */
const TO_PLAN = ['1', 'For me', 'hand', '16 cm', '8 cm', 'yes'];

async function run(lines: readonly string[], fake = fakeDrawings(), columns = 60) {
  const input = new PassThrough();
  const output = new PassThrough();
  const written = text(output);
  input.end(lines.map((line) => `${line}\n`).join(''));
  const { desk, heard } = fakeDesk({ kind: 'plan', plan });
  const given = { desk, drawings: fake.drawings, wording: fakeWording, owner: 'ada' };
  await runTerminal({ ...given, input, output, columns, interactive: false });
  output.end();
  return { written: await written, heard, wishes: fake.wishes };
}

describe('beside a plan', () => {
  it('stand the choices to draw it, and to keep a picture or a sheet', async () => {
    const { written } = await run(TO_PLAN);
    expect(written).toContain(
      '- Draw it [type draw]\n- Keep a picture [type keep picture]\n- Keep a sheet to print [type keep sheet]\n',
    );
    expect(written).toContain('keep sheet large to plan.pdf.');
  });

  it('is drawn as wide as the window, and the plan is not told again', async () => {
    const { written, heard } = await run([...TO_PLAN, 'draw', 'Draw it'], fakeDrawings(), 72);
    expect(written.match(/^-{72}$/gm)).toHaveLength(2);
    expect(written.match(/Cast on 40 stitches/g)).toHaveLength(1);
    expect(heard.at(-1)).toBe('review: yes');
  });

  it('is kept as it was wished, and she is told where', async () => {
    const { written, wishes } = await run([
      ...TO_PLAN,
      'keep sheet',
      'Keep a sheet to print',
      'keep sheet large, A4 to my sweater.pdf',
      'keep picture to body.png',
    ]);
    const usual = { paper: null, type: null, file: null };
    expect(wishes).toEqual([
      { ...usual, keep: 'sheet', plan },
      { ...usual, keep: 'sheet', plan },
      { paper: 'A4', type: 'large', file: 'my sweater.pdf', keep: 'sheet', plan },
      { ...usual, file: 'body.png', keep: 'pictures', plan },
    ]);
    expect(written.match(/^Kept: \/home\/ada\/plan\.pdf$/gm)).toHaveLength(4);
  });

  it('is not kept where words mean nothing, or where a file is there, and she is told why', async () => {
    const refused = fakeDrawings({ kept: 'nothing', why: 'plan.pdf is there already.' });
    const { written, wishes } = await run([...TO_PLAN, 'keep sheet huge', 'keep sheet to plan.pdf'], refused);
    expect(written).toContain('Say large, A4 or Letter, and to with the name of a file.');
    expect(written).toContain('Not kept: plan.pdf is there already.');
    expect(wishes).toHaveLength(1);
  });
});

describe('beside a question', () => {
  it('stands that it can be drawn, where a picture tells what to measure', async () => {
    const { written, heard } = await run(['1', 'For me', 'hand', 'draw', '16 cm'], fakeDrawings(), 44);
    expect(written).toContain(`wrist\n${'#'.repeat(44)}\n`);
    expect(heard.at(-1)).toBe('wrist: 16 cm');
    expect(written.replace(/\s+/g, ' ').match(/pause, help, draw\./g)).toHaveLength(2);
  });

  it('is no word of the terminal where there is no picture', async () => {
    expect((await run(['1', 'draw'])).heard).toEqual(['for_whom: draw']);
  });
});

describe('at the beginning', () => {
  it('are sheets to fill in by hand, which are picked by their title or their word', async () => {
    const { written, wishes } = await run(['sheets', 'a waist', 'MEASURING large', 'socks', 'back', 'leave']);
    expect(written).toContain('3. Sheets to print and fill in by hand: measurements, and\n   the sums\n');
    expect(wishes).toEqual([
      { paper: null, type: null, file: null, keep: 'blank', blank: 'waist' },
      { paper: null, type: 'large', file: null, keep: 'blank', blank: 'measuring' },
    ]);
    expect(written).toContain("There is no sheet 'socks'.");
    expect(written.match(/What would you like to do\?/g)).toHaveLength(2);
  });
});

describe('words about printing', () => {
  it.each([
    ['', { paper: null, type: null, file: null }],
    ['large', { paper: null, type: 'large', file: null }],
    ['Letter, large', { paper: 'Letter', type: 'large', file: null }],
    ['normal a4 to a letter.pdf', { paper: 'A4', type: 'normal', file: 'a letter.pdf' }],
    ['TO plan', { paper: null, type: null, file: 'plan' }],
    ['to', undefined],
    ['huge', undefined],
    ['plan.pdf', undefined],
  ])('are read, or not taken: %s', (words, print) => {
    expect(readPrint(words)).toEqual(print);
  });
});
