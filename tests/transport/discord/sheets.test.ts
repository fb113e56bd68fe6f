/** Sheets as files: those that are filled in by hand, and that of a plan, on the paper that is wanted. */
import { afterEach, describe, expect, it } from 'vitest';
import { draughtsman } from '../../../src/transport/discord/plan-files.ts';
import { samplePlan } from '../../../tools/sample-garment.ts';
import { readPdf } from '../../present/read-pdf.ts';
import type { Person } from '../../stand-in/person.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import { type Circle, circle, command, nothingForbidden, read } from './circle.ts';

let here: Circle;
let anna: Person;
const start = async (settings: Parameters<typeof circle>[0] = {}) => {
  here = await circle({ patienceMs: 30_000, ...settings });
  anna = here.standIn.person('Anna');
};
const NAMES = ['measuring.pdf', 'rows.pdf', 'stitches.pdf', 'waist.pdf', 'wedge.pdf'];
/** 8½ in, in points. */
const WIDTH_OF_LETTER = 612;

const readFile = (message: SeenMessage, name: string) =>
  readPdf(message.files.find((file) => file.name === name)?.bytes ?? new Uint8Array());
const widthOf = async (pdf: Uint8Array) => Math.round((await readPdf(pdf)).pages[0]?.width ?? 0);

describe('/fit sheets', () => {
  afterEach(async () => {
    nothingForbidden(here);
    await here.stop();
  });

  it('brings all that are filled in by hand, each under its title, for her alone', async () => {
    await start({ draw: true });
    const shown = await command(anna, 'fit sheets');
    expect(shown.isEphemeral).toBe(true);
    expect(shown.files.map(({ name }) => name)).toEqual(NAMES);
    expect(read(shown)).toContain('In centimetres, on A4, in normal type.');
    for (const name of NAMES) expect(read(shown)).toContain((await readFile(shown, name)).title);
  });

  it('prints in her unit, on its paper, and in the type that she names', async () => {
    await start({ draw: true });
    here.kept.store.prefer(`discord:${anna.id}`, { unit: 'in', terms: null });
    const normal = await readFile(await command(anna, 'fit sheets'), 'measuring.pdf');
    expect(Math.round(normal.pages[0]?.width ?? 0)).toBe(WIDTH_OF_LETTER);
    const shown = await command(anna, 'fit sheets', { unit: 'cm', paper: 'Letter', type: 'large' });
    expect(read(shown)).toContain('In centimetres, on Letter, in large type.');
    const large = await readFile(shown, 'measuring.pdf');
    expect(large.pages.length).toBeGreaterThan(normal.pages.length);
    expect(large.pages[0]?.lines.join('\n')).toContain('cm');
  });

  it('says so where nothing can be drawn', async () => {
    await start();
    expect(read(await command(anna, 'fit sheets'))).toContain('could not be drawn just now');
  });
});

it('the sheet of a plan is on the paper that the settings name', async () => {
  const draw = draughtsman({ paper: 'Letter', type: 'normal' }, (error) => {
    throw error;
  });
  const { sheet } = await draw.plan({ ...samplePlan(), unit: 'cm' }, 'Mine', 'us', 0);
  expect(await widthOf(new Uint8Array(sheet?.data as Uint8Array))).toBe(WIDTH_OF_LETTER);
});
