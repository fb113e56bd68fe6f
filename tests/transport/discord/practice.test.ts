/** Practice in Discord: chosen by name or from a list, offered the exercise's answers, and never taken for a plan of hers. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Person } from '../../stand-in/person.ts';
import {
  type Circle,
  circle,
  command,
  nothingForbidden,
  pick,
  press,
  questionOf,
  read,
  sessionOf,
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

it('a chapter is found while she types, and begun with its story', async () => {
  expect(await anna.autocomplete('fit practise', { chapter: 'row with the ch' }, 'chapter')).toEqual([]);
  const found = await anna.autocomplete('fit practise', { chapter: 'stitches for a width' }, 'chapter');
  expect(found.map(({ value }) => value)).toEqual(['stitches']);
  const shown = await command(anna, 'fit practise', { chapter: 'stitches' });
  expect(read(shown)).toContain('Practice. The beekeeper knits our sample sweater');
  expect(read(shown)).toContain('Practice: Stitches for a width');
});

it('without a chapter, one is picked in a list', async () => {
  const list = await command(anna, 'fit practise');
  expect(read(list)).toContain('What would you like to practise?');
  expect(list.selects.flatMap(({ options }) => options.map(({ value }) => value))).toContain('whole');
  const begun = await pick(anna, list, 'Choose an exercise', 'Re-space a sleeve');
  expect(questionOf(await press(anna, begun, 'Centimetres'))).toBe('sleeve_made');
  expect(read(await command(anna, 'fit practise', { chapter: 'tea cosy' }))).toContain(
    "I find no exercise called 'tea cosy'.",
  );
});

it('ends with the worked answer and its sums, and is neither her plan nor counted among her interviews', async () => {
  let shown = await command(anna, 'fit practise', { chapter: 'stitches' });
  shown = await press(anna, shown, 'Centimetres');
  for (let left = 4; left > 0; left -= 1) {
    const exercise = shown.buttons.find(({ label }) => label.includes("the exercise's"));
    shown = await press(anna, shown, exercise?.label ?? '');
  }
  const plan = await press(anna, shown, 'Make my plan');
  expect(read(plan)).toContain('Practice: this is the worked answer. None of its figures is kept as yours.');
  expect(read(plan)).toContain('Workings (shown rounded');
  expect(read(await press(anna, plan, 'Work it yourself'))).toContain('sum 1, about');
  expect(typedBy(here, sessionOf(plan)).at(0)).toEqual(['unit', 'Centimetres']);
  expect(read(await command(anna, 'fit plan'))).toContain('You have no plan yet.');
  expect(read(await command(anna, 'fit my-data'))).toContain('Your answers in 0 interviews and 1 exercise,');
});

it('an exercise that is done is found again under its own name', async () => {
  const owner = `discord:${anna.id}`;
  const { session } = here.desk.practise(owner, 'spacing');
  for (const text of ['44', '74', '112', 'flat', '6', 'yes']) here.desk.say(owner, session, { text });
  const found = await anna.autocomplete('fit plan', { which: 'practice' }, 'which');
  expect(found.map(({ value }) => value)).toEqual([session]);
  const plan = await command(anna, 'fit plan', { which: session });
  expect(read(plan)).toContain('Practice: Space increases or decreases over rows');
  expect(read(plan)).toContain('this is the worked answer');
});
