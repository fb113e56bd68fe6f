/** The commands: what is registered, when, and what each brings. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { lessonsOf } from '../../../src/flow/compile.ts';
import { commandsFor } from '../../../src/transport/discord/commands.ts';
import { areRegistered, register, restFor } from '../../../src/transport/discord/registering.ts';
import { NotPossible } from '../../stand-in/given.ts';
import type { Person } from '../../stand-in/person.ts';
import { commandList } from '../../stand-in/rules/commands.ts';
import { inspect } from '../../stand-in/rules/spot.ts';
import {
  type Circle,
  circle,
  command,
  flows,
  nothingForbidden,
  pick,
  press,
  questionOf,
  read,
  sessionOf,
  typedBy,
} from './circle.ts';

const PUT = 'PUT /applications/:app/commands';

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

describe('the list of commands', () => {
  it('is few, and keeps to the platform’s rules', () => {
    const commands = commandsFor(flows);
    expect(commands.map(({ name }) => name)).toEqual(['fit', 'sums', 'host']);
    expect(inspect(JSON.parse(JSON.stringify(commands)), commandList('global'))).toEqual([]);
  });

  it('has a command for a chapter only where that chapter is there', () => {
    const names = (all: typeof flows) => commandsFor(all)[0]?.options?.map(({ name }) => name);
    expect(names(flows)).toContain('recheck');
    expect(names(flows)).toContain('measure');
    const fewer = new Map([...flows].filter(([id]) => id === 'body'));
    expect(names(fewer)).toEqual(['start', 'go-on', 'plan', 'lesson', 'sheets', 'my-data', 'help']);
    expect(commandsFor(fewer).map(({ name }) => name)).toEqual(['fit', 'host']);
  });

  it('is registered once, and again only where it changed', async () => {
    const { standIn } = here;
    const rest = restFor(standIn.api, standIn.token);
    expect(standIn.record.to(PUT)).toHaveLength(1);
    expect(await register(rest, standIn.appId, commandsFor(flows))).toBe('unchanged');
    expect(standIn.record.to(PUT)).toHaveLength(1);
    const [fit, ...others] = commandsFor(flows);
    if (fit === undefined) throw new Error('there is no /fit');
    const changed = [{ ...fit, description: 'Another description.' }, ...others];
    expect(await areRegistered(rest, standIn.appId, changed)).toBe(false);
    expect(await register(rest, standIn.appId, changed)).toBe('registered');
    expect(await areRegistered(rest, standIn.appId, changed)).toBe(true);
    expect(await areRegistered(rest, standIn.appId, changed.toReversed())).toBe(true);
  });

  it('can be added to a server or to oneself, and used in servers, direct messages and groups', async () => {
    const berta = here.standIn.person('Berta');
    const group = here.standIn.world.privateChannel([anna.account, berta.account]);
    anna.goTo(group);
    await expect(anna.command('fit help')).rejects.toThrow(NotPossible);
    anna.account.hasApp = true;
    expect(read(await command(anna, 'fit help'))).toContain('/fit start');
    const shown = await command(anna, 'fit start', { wish: 'spacing' });
    expect(questionOf(await press(anna, shown, "I don't know"))).toBe('spacing_to');
    expect(berta.goTo(group).sees()).toEqual([]);
    await expect(anna.command('host')).rejects.toThrow(NotPossible);
  });
});

describe('/fit start', () => {
  it('completes wishes as they are typed, and patterns', async () => {
    const wishes = await anna.autocomplete('fit start', { wish: 'sleeves tight' }, 'wish');
    expect(wishes).toEqual([{ name: expect.stringContaining('My sleeves are too tight'), value: 'sleeve' }]);
    expect((await anna.autocomplete('fit start', { wish: '' }, 'wish')).length).toBeGreaterThan(8);
    const patterns = await anna.autocomplete('fit start', { pattern: 'round' }, 'pattern');
    expect(patterns).toEqual([{ name: 'Pennywhin, in the round', value: 'Pennywhin, in the round' }]);
  });

  it('takes a wish that was typed and not picked', async () => {
    expect(questionOf(await command(anna, 'fit start', { wish: 'Re-space a sleeve' }))).toBe('unit');
    const shown = await command(anna, 'fit start', { wish: 'knit a boat' });
    expect(read(shown)).toContain("I do not know what to do about 'knit a boat'.");
    expect(shown.selects.flatMap(({ options }) => options)).toHaveLength(flows.size);
  });

  it('finds a wish in words of her own, or asks which of the likeliest she means', async () => {
    const one = 'help, my gauge is off, I get 17 stitches and the pattern wants 20';
    expect((await command(anna, 'fit start', { wish: one })).text).toContain('question');
    const typed = await anna.autocomplete('fit start', { wish: 'sleevs to tite' }, 'wish');
    expect(typed[0]).toEqual({ name: expect.stringContaining('My sleeves are too tight'), value: 'sleeve' });
    const several = await command(anna, 'fit start', { wish: 'it does not fit' });
    expect(read(several)).toContain('Do you mean one of these?');
    expect(several.selects.flatMap(({ options }) => options).length).toBeLessThanOrEqual(3);
  });

  it('without a wish offers all of them, and what waits to be gone on with', async () => {
    const menu = await command(anna, 'fit start');
    const begun = await pick(
      anna,
      menu,
      'What is wished most often',
      'My sleeves are too tight, too loose, too long or too short',
    );
    await press(anna, begun, 'Inches');
    const later = await command(anna, 'fit start');
    const goOn = later.buttons.find(({ label }) => label.startsWith('Go on: Re-space a sleeve'));
    expect(questionOf(await press(anna, later, goOn?.label ?? ''))).toBe('sleeve_made');
  });

  it('does not ask for a pattern that was named', async () => {
    const shown = await command(anna, 'fit start', { wish: 'whole', pattern: 'Pennywhin, in pieces' });
    expect(questionOf(await press(anna, shown, 'Inches'))).toBe('swatch_made');
  });
});

describe('/fit go-on', () => {
  it('shows the open question of the last interview, or of one by its name', async () => {
    const sleeve = await command(anna, 'fit start', { wish: 'sleeve' });
    await press(anna, sleeve, 'Inches');
    const spacing = await command(anna, 'fit start', { wish: 'spacing' });
    await press(anna, spacing, "I don't know");
    anna.loseEphemerals();
    expect(questionOf(await command(anna, 'fit go-on'))).toBe('spacing_to');
    const [choice] = await anna.autocomplete('fit go-on', { interview: 'sleeve' }, 'interview');
    expect(choice?.name).toMatch(/^Re-space a sleeve \(.*, 1 answered\)$/);
    const again = await command(anna, 'fit go-on', { interview: `${choice?.value}` });
    expect(sessionOf(again)).toBe(sessionOf(sleeve));
    expect(questionOf(again)).toBe('sleeve_made');
  });

  it('says so where nothing waits, and offers to begin', async () => {
    const shown = await command(anna, 'fit go-on');
    expect(read(shown)).toContain('No interview of yours waits for an answer.');
    expect(shown.selects.flatMap(({ options }) => options)).toHaveLength(flows.size);
    expect(await anna.autocomplete('fit go-on', { interview: '' }, 'interview')).toEqual([]);
    const berta = here.standIn.person('Berta');
    await press(berta, await command(berta, 'fit start', { wish: 'sleeve' }), 'Inches');
    expect(read(await command(anna, 'fit go-on'))).toContain('No interview of yours');
  });
});

it('/fit recheck begins the chapter for knitting that is on the needles', async () => {
  const shown = await command(anna, 'fit recheck');
  expect(questionOf(await press(anna, shown, 'Centimetres'))).toBe('recheck_piece');
});

it('/fit measure asks for one measurement, and offers the last one with its date', async () => {
  const first = await command(anna, 'fit measure', { what: 'Upper arm', table: "Women's" });
  const asked = await press(anna, first, 'Centimetres');
  expect(questionOf(asked)).toBe('upper_arm');
  const session = sessionOf(asked);
  here.desk.say(`discord:${anna.id}`, session, { text: '31 cm' });
  const again = await command(anna, 'fit measure', { what: 'Upper arm', table: "Women's" });
  const saved = again.buttons.find(({ label }) => label.startsWith('31 cm (measured '));
  const review = await press(anna, again, saved?.label ?? '');
  const plan = await press(anna, review, 'Make my plan');
  expect(read(plan)).toContain('upper arm: 31 cm');
  expect(typedBy(here, sessionOf(again)).at(-1)).toEqual(['upper_arm', '31 cm']);
});

it('/fit lesson shows each lesson whole, in her own terms, and leaves an interview where it stands', async () => {
  const first = await command(anna, 'fit start', { wish: 'sleeve' });
  for (const { lesson, title } of lessonsOf(flows, 'us').values())
    expect(read(await command(anna, 'fit lesson', { about: lesson }))).toContain(title);
  const gauge = () => command(anna, 'fit lesson', { about: 'gauge' });
  expect(read(await gauge())).toContain('Gauge is how many stitches and rows');
  expect(questionOf(await press(anna, first, 'Inches'))).toBe('sleeve_made');
  await pick(anna, await command(anna, 'fit my-data'), 'Terms', 'Terms: cast off, tension (UK)');
  expect(read(await gauge())).toContain('Tension is how many stitches and rows');
});

it('a question shows the lesson that belongs to it at a press', async () => {
  const second = await press(anna, await command(anna, 'fit start', { wish: 'sleeve' }), 'Inches');
  const shown = await press(anna, second, 'Lesson: How sweaters are made');
  expect(read(shown)).toContain('Round yoke: body and sleeves are joined in one ring');
  expect(questionOf(shown)).toBe('sleeve_made');
});

it('/fit help names every command, and what typed words can do', async () => {
  const shown = read(await command(anna, 'fit help'));
  for (const { name } of commandsFor(flows)[0]?.options ?? []) expect(shown).toContain(`/fit ${name}`);
  expect(shown).toContain('/sums');
});
