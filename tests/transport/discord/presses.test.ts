/** Presses that come too late, twice, from somebody else, or from another time. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../../src/chapters/index.ts';
import { fits } from '../../../src/dialogue/hear.ts';
import { compileBook, type Flows } from '../../../src/flow/compile.ts';
import { loadBook } from '../../../src/flow/load.ts';
import { readFlowTexts } from '../../../src/library.ts';
import { messageOf, modalOf } from '../../stand-in/answer.ts';
import type { Person } from '../../stand-in/person.ts';
import {
  type Circle,
  circle,
  command,
  nothingForbidden,
  press,
  questionOf,
  read,
  sessionOf,
  type,
  typedBy,
} from './circle.ts';

let here: Circle;
let anna: Person;
beforeEach(async () => {
  here = await circle();
  anna = here.standIn.person('Anna');
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const LATE = { evenIfGone: true } as const;

/** Her sleeve, at its second question, in inches. */
async function atSleeve() {
  const first = await command(anna, 'fit start', { wish: 'sleeve' });
  return { first, second: await press(anna, first, 'Inches') };
}

/** The flows of a later version: `change` is made to the text of one file and of the exercises; what it empties is gone. */
function later(file: string, change: (text: string) => string): Flows {
  const texts = readFlowTexts().flatMap((one) => {
    const changes = one.file === `flows/${file}.yaml` || one.file.startsWith('flows/practice/');
    const text = changes ? change(one.text) : one.text;
    return text === '' ? [] : [{ file: one.file, text }];
  });
  return compileBook(loadBook(texts, CALCULATIONS), CALCULATIONS, fits);
}

describe('a press', () => {
  it('on an old question changes nothing, says what was answered, and shows the present one', async () => {
    const { first, second } = await atSleeve();
    await press(anna, second, 'From the cuff, flat');
    const shown = messageOf(await anna.press(first, 'Centimetres', LATE));
    expect(read(shown)).toContain('That was answered already: Unit, Inches.');
    expect(questionOf(shown)).toBe('gauge');
    expect(typedBy(here, sessionOf(first)).map(([, typed]) => typed)).toEqual([
      'Inches',
      'From the cuff, flat',
    ]);
  });

  it('by another person is not taken; she is told so alone, and the message stays as it is', async () => {
    const { second } = await atSleeve();
    const berta = here.standIn.person('Berta');
    const told = messageOf(await berta.press(second, 'From the cuff, flat', LATE));
    expect(read(told)).toContain("another knitter's interview");
    expect(told.isEphemeral).toBe(true);
    expect(anna.now(second)?.version).toBe(second.version);
    expect(anna.sees().map((message) => message.id)).toEqual([second.id]);
    expect(typedBy(here, sessionOf(second))).toHaveLength(1);
  });

  it('twice is one answer', async () => {
    const { second } = await atSleeve();
    const answers = await Promise.all([
      anna.press(second, 'From the cuff, flat', LATE),
      anna.press(second, 'From the cuff, flat', LATE),
    ]);
    expect(answers.map((answer) => questionOf(messageOf(answer)))).toEqual(['gauge', 'gauge']);
    expect(typedBy(here, sessionOf(second))).toHaveLength(2);
  });

  it('that is delivered twice is heard once', async () => {
    const { second } = await atSleeve();
    here.standIn.faults.onEvent('INTERACTION_CREATE', { kind: 'twice' });
    const shown = await press(anna, second, 'From the cuff, flat');
    expect(read(shown)).not.toContain('answered already');
    const later = await press(anna, shown, 'Why do you ask?');
    expect(later.version).toBe(shown.version + 1);
    expect(typedBy(here, sessionOf(second))).toHaveLength(2);
  });

  it('after a restart is taken as before', async () => {
    const { second } = await atSleeve();
    await here.restart();
    expect(questionOf(await press(anna, second, 'From the cuff, flat'))).toBe('gauge');
    expect(typedBy(here, sessionOf(second))).toHaveLength(2);
  });

  it('on a button of another version is answered with how to go on', async () => {
    const { second } = await atSleeve();
    const told = messageOf(await anna.press(second, 'sleeve:17', LATE));
    expect(read(told)).toContain('/fit go-on');
    expect(told.isEphemeral).toBe(true);
    expect(questionOf(await command(anna, 'fit go-on'))).toBe('sleeve_made');
  });

  it('in an interview that is deleted says so, and its buttons go', async () => {
    const { second } = await atSleeve();
    here.kept.store.forget(`discord:${anna.id}`);
    const shown = await press(anna, second, 'From the cuff, flat');
    expect(read(shown)).toContain('no longer kept');
    expect(shown.buttons).toEqual([]);
  });
});

describe('after an upgrade of the flow', () => {
  it('a press means what its label says, where that is still a choice', async () => {
    const { second } = await atSleeve();
    await here.restart(
      later('sleeve', (text) => text.replace('ask: How does the pattern knit', 'ask: How do you knit')),
    );
    expect(questionOf(await press(anna, second, 'From the cuff, flat'))).toBe('gauge');
  });

  it('a choice that is gone is not taken, and the question is asked anew with its new choices', async () => {
    const { second } = await atSleeve();
    await here.restart(
      later('sleeve', (text) => text.replace("label: 'From the cuff, flat'", "label: 'Cuff first, turned'")),
    );
    const shown = await press(anna, second, 'From the cuff, flat');
    expect(questionOf(shown)).toBe('sleeve_made');
    expect(typedBy(here, sessionOf(second))).toHaveLength(1);
    const again = await type(anna, shown, 'none of these');
    expect(again.buttons.map(({ label }) => label)).toContain('Cuff first, turned');
    expect(typedBy(here, sessionOf(second))).toHaveLength(1);
  });

  it('a question that is gone is no longer open, and the interview goes on at one that is', async () => {
    const first = await command(anna, 'fit start', { wish: 'spacing' });
    await here.restart(later('spacing', (text) => text.replaceAll('spacing_from', 'spacing_begin')));
    const shown = await press(anna, first, "I don't know");
    expect(read(shown)).toContain('no longer open');
    expect(questionOf(shown)).toBe('spacing_begin');
    expect(typedBy(here, sessionOf(first))).toEqual([]);
  });

  it('a chapter that is gone is said to be gone, and its buttons go', async () => {
    const { second } = await atSleeve();
    const only = new Map([...later('sleeve', (text) => text)].filter(([id]) => id !== 'sleeve'));
    await here.restart(only);
    const shown = await press(anna, second, 'From the cuff, flat');
    expect(read(shown)).toContain('no longer offered');
    expect(shown.buttons).toEqual([]);
    expect(typedBy(here, sessionOf(second))).toEqual([['unit', 'Inches']]);
  });
});

describe('a form', () => {
  it('sent off twice is one answer', async () => {
    const { second } = await atSleeve();
    const form = modalOf(await anna.press(second, 'Type my answer'));
    await anna.submit(form, { answer: 'from the cuff, flat' });
    const shown = messageOf(await anna.submit(form, { answer: 'from the cuff, flat' }));
    expect(read(shown)).toContain('That was answered already');
    expect(questionOf(shown)).toBe('gauge');
    expect(typedBy(here, sessionOf(second))).toHaveLength(2);
  });

  it('that was closed, and opened again, is taken', async () => {
    const { second } = await atSleeve();
    await anna.press(second, 'Type my answer');
    expect(questionOf(await type(anna, second, 'from the cuff, flat'))).toBe('gauge');
  });

  it('that was open while the question was answered otherwise keeps the first answer', async () => {
    const { second } = await atSleeve();
    const form = modalOf(await anna.press(second, 'Type my answer'));
    await press(anna, second, 'From the cuff, flat');
    const shown = messageOf(await anna.submit(form, { answer: 'from the shoulder, flat' }));
    expect(read(shown)).toContain('That was answered already: Sleeve knitted, From the cuff, flat.');
    expect(typedBy(here, sessionOf(second)).map(([, typed]) => typed)).toEqual([
      'Inches',
      'From the cuff, flat',
    ]);
  });
});
