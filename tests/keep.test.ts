import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { drawingsFor } from '../src/drawings.ts';
import { keepBlank, keepFiles, keepNew } from '../src/keep.ts';
import { loadFlows } from '../src/library.ts';
import { picturesOf } from '../src/present/pictures.ts';
import type { KeepWish } from '../src/transport/contract.ts';
import { samplePlan } from '../tools/sample-garment.ts';
import { readPdf } from './present/read-pdf.ts';

const PRINTING = { dialect: 'us', paper: null, type: 'normal', date: '2025-03-01', unit: 'cm' } as const;
const PRINT = { paper: null, type: null } as const;
const plan = samplePlan();

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'easewright-keep-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const read = (name: string) => readPdf(new Uint8Array(readFileSync(join(folder, name))));
const wish = (file: string | null = null): KeepWish => ({ ...PRINT, keep: 'sheet', plan, file });

describe('a sheet that is kept', () => {
  it('is a new file in the folder, and a second one stands beside the first', async () => {
    for (const name of ['plan.pdf', 'plan-2.pdf', 'plan-3.pdf'])
      expect(await keepNew(wish(), folder, PRINTING)).toEqual({ kept: 'files', files: [join(folder, name)] });
    expect((await read('plan-2.pdf')).pages[0]?.lines[0]).toBe('Plan 1 March 2025');
  });

  it('never takes the place of a file that is there', async () => {
    writeFileSync(join(folder, 'mine.pdf'), 'mine');
    const kept = await keepNew(wish('mine.pdf'), folder, PRINTING);
    expect(kept).toMatchObject({
      kept: 'nothing',
      why: expect.stringContaining('mine.pdf is there already'),
    });
    expect(readFileSync(join(folder, 'mine.pdf'), 'utf8')).toBe('mine');
  });

  it('says so where it cannot be written', async () => {
    const kept = await keepNew(wish('nowhere/plan.pdf'), folder, PRINTING);
    expect(kept).toMatchObject({ kept: 'nothing', why: expect.stringContaining('(ENOENT)') });
  });

  it('gets its ending where the name has none', async () => {
    await keepNew(wish('garden'), folder, PRINTING);
    expect(readdirSync(folder)).toEqual(['garden.pdf']);
  });

  it('is on A4 for centimetres and on Letter for inches, where neither she nor the settings say otherwise', async () => {
    const width = async (name: string) => Math.round((await read(name)).pages[0]?.width ?? 0);
    const blank = (file: string) => ({ ...PRINT, keep: 'blank', blank: 'rows', file }) as const;
    await keepNew(blank('cm.pdf'), folder, PRINTING);
    await keepNew(blank('in.pdf'), folder, { ...PRINTING, unit: 'in' });
    await keepNew(blank('set.pdf'), folder, { ...PRINTING, unit: 'in', paper: 'A4' });
    await keepNew({ ...blank('said.pdf'), paper: 'Letter' }, folder, { ...PRINTING, paper: 'A4' });
    // 210 mm and 8½ in, in points.
    expect(await Promise.all(['cm.pdf', 'in.pdf', 'set.pdf', 'said.pdf'].map(width))).toEqual([
      595, 612, 595, 612,
    ]);
  });

  it('is longer in large type', async () => {
    await keepBlank('measuring', join(folder, 'normal.pdf'), PRINT, PRINTING);
    await keepBlank('measuring', join(folder, 'large.pdf'), { ...PRINT, type: 'large' }, PRINTING);
    expect((await read('large.pdf')).pages.length).toBeGreaterThan((await read('normal.pdf')).pages.length);
  });
});

describe('pictures that are kept', () => {
  it('are a file each, named after what they show, all new', async () => {
    const pictures = { ...PRINT, keep: 'pictures', plan, file: null } as const;
    await keepNew(pictures, folder, PRINTING);
    const names = picturesOf(plan, 'us').map(({ name }) => `plan-${name}.png`);
    expect(readdirSync(folder).sort()).toEqual(names.sort());
    const again = await keepNew(pictures, folder, PRINTING);
    expect(again.kept === 'files' && again.files[0]).toBe(join(folder, 'plan-2-schematic-body.png'));
    const body = PNG.sync.read(readFileSync(join(folder, 'plan-schematic-body.png')));
    expect(body.width).toBe(840);
  });

  it('are written anew by a script, which names its files itself', async () => {
    const file = join(folder, 'p.png');
    const first = await keepFiles(plan, { ...PRINT, picture: file }, PRINTING);
    expect(await keepFiles(plan, { ...PRINT, picture: file }, PRINTING)).toEqual(first);
  });
});

describe('what the terminal can draw', () => {
  const drawings = drawingsFor(loadFlows(), tmpdir(), () => PRINTING);

  it('are the pieces of a plan with every count and measurement, as wide as the window', async () => {
    for (const columns of [40, 66, 100]) {
      const drawn = await drawings.plan(plan, columns);
      expect(Math.max(...drawn.split('\n').map((line) => line.length))).toBeLessThanOrEqual(columns);
      for (const { after } of plan.pieces)
        for (const level of after.levels) expect(drawn).toContain(`${level.stitches} sts`);
    }
  });

  it('is where to measure, for every question whose how names a picture', async () => {
    const pictured = [...loadFlows().values()].flatMap(({ questions }) =>
      [...questions.keys()].filter(drawings.pictured),
    );
    expect(new Set(pictured).size).toBeGreaterThan(20);
    for (const id of new Set(pictured)) expect(await drawings.question(id, 60)).toMatch(/#|=|V/);
    expect(drawings.pictured('unit')).toBe(false);
    await expect(drawings.question('unit', 60)).rejects.toThrow("the question 'unit' has no picture");
  });

  it('are the sheets that are filled in by hand, each with its title', async () => {
    expect((await drawings.blanks()).map(({ title }) => title)).toContain('A wedge of short rows');
  });
});
