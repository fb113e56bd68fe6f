import { PassThrough } from 'node:stream';
import { stripVTControlCharacters } from 'node:util';
import { describe, expect, it } from 'vitest';
import { runTerminal } from '../../../src/transport/terminal/terminal.ts';
import { fakeDesk, fakeDrawings, fakeWording } from './fake-desk.ts';

const ENTER = '\r';
const DOWN = '\x1b[B';
const CTRL_C = '\x03';
const CTRL_D = '\x04';
const ESCAPE = '\x1b';
const FAREWELL = 'Everything you have answered is saved. To go on: npm start';

/** A window of 80 columns with a person before it. */
function openWindow() {
  const input = new PassThrough();
  const output = Object.assign(new PassThrough(), { columns: 80, rows: 40 });
  const { desk, heard, breaks } = fakeDesk();
  let written = '';
  output.on('data', (chunk: Buffer) => {
    written += chunk.toString();
  });
  const { drawings } = fakeDrawings();
  const given = { desk, drawings, wording: fakeWording, owner: 'ada' };
  const ended = runTerminal({ ...given, input, output, interactive: true });
  let read = 0;
  /** Waits until a text is shown that was not waited for before. */
  async function sees(text: string): Promise<void> {
    for (;;) {
      const at = stripVTControlCharacters(written).indexOf(text, read);
      if (at >= 0) {
        read = at + text.length;
        return;
      }
      await new Promise((again) => setTimeout(again, 5));
    }
  }
  return { heard, breaks, ended, sees, press: (keys: string) => input.write(keys) };
}

/** The same, at the first question. */
async function atFirstQuestion() {
  const window = openWindow();
  await window.sees('What would you like to do?');
  window.press(ENTER);
  await window.sees('Type an answer or a command');
  return window;
}

/** The same, at the question for a length without choices. */
async function atLastQuestion() {
  const window = await atFirstQuestion();
  window.press(`For me${ENTER}`);
  await window.sees('Mark with Space');
  window.press(`hand${ENTER}`);
  await window.sees('How wide is the wrist');
  await window.sees('Choose, or type');
  window.press(ENTER);
  await window.sees('How long shall it be?');
  await window.sees('Your answer');
  return window;
}

describe('a terminal with a window', () => {
  it('takes a choice by the arrow keys', async () => {
    const { press, sees, heard } = await atFirstQuestion();
    press(DOWN);
    press(ENTER);
    await sees('Noted: For somebody else');
    expect(heard).toEqual(['for_whom: For somebody else']);
  });

  it('takes typing where it offers a list, whichever letter it begins with', async () => {
    for (const words of ['how', 'k2', 'j', 'why', '5½ in', 'ärmel']) {
      const { press, sees, heard } = await atFirstQuestion();
      for (const letter of words) press(letter);
      await sees('Your answer');
      press(ENTER);
      await sees('Question');
      expect(heard).toEqual([`for_whom: ${words}`]);
    }
  });

  it('takes several marked choices', async () => {
    const { press, sees, heard } = await atFirstQuestion();
    press(ENTER);
    await sees('Mark with Space');
    for (const key of [' ', DOWN, ' ', ENTER]) press(key);
    await sees('Noted: The hand, The arm');
    expect(heard).toEqual(['for_whom: For me', 'edges: The hand, The arm']);
  });

  it('takes lines that are pasted together as one answer', async () => {
    const overList = await atFirstQuestion();
    overList.press('34 (36, 38,\r40, 42)\r');
    await overList.sees('Noted:');
    expect(overList.heard).toEqual(['for_whom: 34 (36, 38, 40, 42)']);
    const overLine = await atLastQuestion();
    overLine.press('34 (36, 38,\r40, 42)\r');
    await overLine.sees('Noted: 34');
    expect(overLine.heard.at(-1)).toBe('long: 34 (36, 38, 40, 42)');
  });

  it('changes one line of the page of answers', async () => {
    const { press, sees, heard } = await atLastQuestion();
    press(`8 cm${ENTER}`);
    await sees('Change one of these answers');
    for (const key of [DOWN, DOWN, ENTER]) press(key);
    await sees('Which one?');
    for (const key of [DOWN, DOWN, ENTER]) press(key);
    await sees('How wide is the wrist');
    expect(heard.at(-1)).toBe('review: change Wrist');
  });

  it('shows the plan, and goes from there to another interview', async () => {
    const { press, sees, heard } = await atLastQuestion();
    press(`8 cm${ENTER}`);
    await sees('Make my plan');
    press(ENTER);
    await sees('Cast on 40 stitches.');
    await sees('Another interview');
    for (const key of [DOWN, ENTER]) press(key);
    await sees('Go on: A wristlet (3 May 2025, 4 answered)');
    expect(heard.at(-1)).toBe('review: yes');
  });

  it.each([
    ['Ctrl-C', CTRL_C],
    ['Ctrl-D', CTRL_D],
  ])(
    'leaves by %s from a list, from a line and from the beginning, and says how to go on',
    async (_, key) => {
      for (const window of [await atFirstQuestion(), await atLastQuestion()]) {
        window.press(key);
        await window.sees(FAREWELL);
        await window.ended;
      }
      const window = openWindow();
      await window.sees('Leave');
      window.press(key);
      await window.ended;
    },
  );

  it('does not leave by Escape', async () => {
    const { press, sees, heard } = await atLastQuestion();
    press(ESCAPE);
    // A lone Escape is told from the beginning of an arrow key by the pause that follows it.
    await new Promise((later) => setTimeout(later, 700));
    press(`8 cm${ENTER}`);
    await sees('Noted: 8 cm');
    expect(heard.at(-1)).toBe('long: 8 cm');
  });

  it('ends when she pauses', async () => {
    const { press, sees, ended } = await atFirstQuestion();
    press(`pause${ENTER}`);
    await sees('Paused. All is kept.');
    await sees(FAREWELL);
    await ended;
  });

  it('offers the same question again when an answer could not be saved', async () => {
    const { press, sees, breaks } = await atFirstQuestion();
    breaks(1);
    press(ENTER);
    await sees('This could not be saved. The disk is full.');
    await sees('For whom is the wristlet?');
  });
});
