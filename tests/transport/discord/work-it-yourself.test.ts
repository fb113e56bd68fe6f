/** The sums of a plan, worked by herself: from a button of the plan, by the form, and back to the plan. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Person } from '../../stand-in/person.ts';
import { type Circle, circle, command, nothingForbidden, press, read, type } from './circle.ts';

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

/** 22 stitches to gain, two in a shaping row: 11 shaping rows. */
async function planned() {
  const owner = `discord:${anna.id}`;
  const { session } = here.desk.begin(owner, 'spacing');
  for (const text of ['50', '72', '84', 'back and forth, at both edges', '0', 'yes'])
    here.desk.say(owner, session, { text });
  return command(anna, 'fit plan');
}

it('asks each sum, says where a figure parts from the workings, and ends with the plan', async () => {
  const first = await press(anna, await planned(), 'Work it yourself');
  expect(read(first)).toContain('sum 1, about');
  const second = await type(anna, first, '22 stitches');
  expect(read(second)).toContain('Right: stitches to gain');
  const slipped = await type(anna, second, '22');
  expect(read(slipped)).toContain('There are two sides to it.');
  const hinted = await press(anna, slipped, 'Hint');
  expect(read(hinted)).toContain('Shaping rows = stitches to gain ÷ stitches a shaping row.');
  const third = await press(anna, hinted, 'Show me');
  expect(read(third)).toContain('This is how it goes: shaping rows');
  const ended = await press(anna, third, 'Stop');
  expect(read(ended)).toContain('1 of 2 right at once and 1 shown.');
  expect(read(await press(anna, ended, 'Show the plan'))).toContain('You end with 72 stitches.');
});

it('goes on with the sum where she left it', async () => {
  const first = await press(anna, await planned(), 'Work it yourself');
  await type(anna, first, '22');
  expect(read(await command(anna, 'fit go-on'))).toContain('Shaping rows: what do you get?');
});
