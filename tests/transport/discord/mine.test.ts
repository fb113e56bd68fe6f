/** What is kept of a person: shown, taken along, deleted, and how she likes to read. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Person } from '../../stand-in/person.ts';
import { type Circle, circle, command, nothingForbidden, pick, press, questionOf, read } from './circle.ts';

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

const owner = () => `discord:${anna.id}`;

/** One interview of hers with a measurement in it. */
async function measured(): Promise<void> {
  const { session } = here.desk.begin(owner(), 'sleeve', { unit: 'cm' });
  here.desk.say(owner(), session, { text: 'from the cuff, flat' });
}

describe('/fit my-data', () => {
  it('is seen by her alone, and says what is kept', async () => {
    await measured();
    const shown = await command(anna, 'fit my-data');
    expect(shown.isEphemeral).toBe(true);
    expect(read(shown)).toContain('Your answers in 1 interview');
  });

  it('hands everything over as a file', async () => {
    await measured();
    const shown = await press(anna, await command(anna, 'fit my-data'), 'Take it with me');
    const [file] = shown.files;
    const kept = JSON.parse(new TextDecoder().decode(file?.bytes));
    expect(kept).toMatchObject({
      schema: 'easewright export',
      owner: owner(),
      sessions: [{ flow: 'sleeve', log: [{ question: 'unit' }, { question: 'sleeve_made' }] }],
      bookmark: null,
    });
    expect(read(await press(anna, shown, 'Back'))).toContain('What is kept of you');
  });

  it('deletes everything after asking once more, and nothing of others', async () => {
    anna.goTo(anna.dm);
    await press(anna, await command(anna, 'fit start', { wish: 'sleeve' }), 'Inches');
    const berta = here.standIn.person('Berta');
    await press(berta, await command(berta, 'fit start', { wish: 'sleeve' }), 'Inches');
    const sure = await press(anna, await command(anna, 'fit my-data'), 'Delete everything');
    expect(here.desk.open(owner())).toHaveLength(1);
    const kept = await press(anna, sure, 'No, keep it');
    const again = await press(anna, kept, 'Delete everything');
    expect(read(await press(anna, again, 'Yes, delete everything'))).toContain('Everything is deleted.');
    expect(here.desk.open(owner())).toEqual([]);
    expect(here.kept.chat.bookmarkOf(owner())).toBeUndefined();
    expect(here.kept.store.preferencesOf(owner())).toEqual({ unit: null, terms: null });
    expect(here.desk.open(`discord:${berta.id}`)).toHaveLength(1);
  });

  it('keeps her unit and her terms for every later interview', async () => {
    const shown = await command(anna, 'fit my-data');
    await pick(anna, shown, 'Units', 'Inches');
    await pick(anna, shown, 'Terms', 'Terms: cast off, tension (UK)');
    expect(here.kept.store.preferencesOf(owner())).toEqual({ unit: 'in', terms: 'uk' });
    expect(questionOf(await command(anna, 'fit start', { wish: 'sleeve' }))).toBe('sleeve_made');
    const saved = await command(anna, 'fit my-data');
    const chosen = saved.selects.flatMap(({ options }) =>
      options.filter((o) => o.chosen).map((o) => o.label),
    );
    expect(chosen).toEqual(['Inches', 'Terms: cast off, tension (UK)']);
  });

  it('says everything in her terms from where she chose them, beside any question', async () => {
    const asked = await command(anna, 'fit start', { wish: 'swatch' });
    const said = await pick(anna, asked, 'More', 'Say it in UK terms: cast off, tension');
    expect(read(said)).toContain('From here on in UK terms');
    expect(here.kept.store.preferencesOf(owner()).terms).toBe('uk');
    expect(read(await command(anna, 'fit start', { wish: 'regauge' }))).toContain('Knit at another tension');
  });
});
