import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { BLANKS, blankSheet, picturesOf, render, sheetOf } from '../../src/present/pictures.ts';
import { stepText } from '../../src/present/plan-text.ts';
import type { BlankOptions } from '../../src/present/sheets/blank-sheets.ts';
import { blankWorking } from '../../src/present/sheets/blank-working.ts';
import { PAPERS, TYPE_SIZES } from '../../src/present/sheets/paper.ts';
import type { PlanSheetOptions } from '../../src/present/sheets/plan-sheet.ts';
import { drawingOf, type Sheet, wordDate } from '../../src/present/sheets/sheet.ts';
import { SUMS, sumLines } from '../../src/present/sheets/sums.ts';
import { wordWorking } from '../../src/present/workings-text.ts';
import { samplePlan } from '../../tools/sample-garment.ts';
import { garments } from './garments.ts';
import { faultsOf, textsOf } from './geometry.ts';
import { readPdf } from './read-pdf.ts';

const OPTIONS = {
  project: 'Birthday sweater',
  date: '2025-03-01',
  paper: 'A4',
  type: 'normal',
  dialect: 'us',
  unit: 'cm',
} as const;

const pdf = (sheet: Sheet) => render({ make: 'pdf', sheet });
const plan = samplePlan();

function plainText(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

describe('the plan as a sheet', async () => {
  const sheet = sheetOf(plan, OPTIONS);
  const read = await readPdf(await pdf(sheet));
  const tags = read.pages.flatMap((p) => p.tags);
  const whole = plainText(tags.map((t) => t.text).join(' '));

  it('has the name of the project, the date, and page x of y on every page', () => {
    expect(read.title).toBe('Plan: Birthday sweater');
    expect(read.pages.length).toBe(sheet.pages.length);
    read.pages.forEach((page, i) => {
      expect(page.lines[0]).toBe('Birthday sweater: Plan 1 March 2025');
      expect(page.lines.at(-1)).toBe(`page ${i + 1} of ${read.pages.length}`);
    });
  });

  it('is of the size of the paper', () => {
    for (const { width, height } of read.pages) {
      // ISO 216: A4 is 210 by 297 mm; a point is 1/72 in.
      expect(width).toBeCloseTo((210 / 25.4) * 72, 1);
      expect(height).toBeCloseTo((297 / 25.4) * 72, 1);
    }
  });

  it('has every step under its heading, word for word as the text of the plan', () => {
    plan.steps.forEach((step, i) => {
      const voice = { unit: plan.unit, dialect: 'us' as const, worked: step.worked };
      const text = stepText(step, i + 1, voice, { dialect: 'us', workings: false });
      const [title = '', ...lines] = text.split('\n   ');
      expect(tags).toContainEqual(expect.objectContaining({ role: 'H2', text: title }));
      for (const said of lines) expect(whole).toContain(plainText(said.replace(/^- /, '')));
    });
  });

  it('has every line of the workings, cautions and measurements', () => {
    for (const step of plan.steps) {
      const voice = { unit: plan.unit, dialect: 'us' as const, worked: step.worked };
      for (const line of step.workings) expect(whole).toContain(plainText(wordWorking(line, voice)));
    }
    expect(whole).toContain('Rest hands, wrists and shoulders often on long work.');
    expect(tags.map((t) => t.text)).toEqual(
      expect.arrayContaining(['It will measure', 'Take care', 'Pictures', 'Workings']),
    );
  });

  it('prints the answers before the numbered workings where they are wished for, and nowhere else', async () => {
    const from = [{ label: 'Bust or chest', shown: '96.5 cm', assumed: false }];
    const keyed = await readPdf(await pdf(sheetOf(plan, { ...OPTIONS, from })));
    const said = keyed.pages.flatMap((p) => p.tags.map((t) => plainText(t.text)));
    const at = said.indexOf('It starts from');
    expect(said.slice(at - 2, at + 2)).toEqual([
      'Workings',
      'Numbers are shown rounded; they were worked with the whole figures.',
      'It starts from',
      '• Bust or chest: 96.5 cm',
    ]);
    expect(said.filter((words) => words.startsWith('(1) '))).toHaveLength(1);
    expect(whole).not.toContain('It starts from');
    expect(whole).toMatch(/Lines? \d.* used here too\./);
  });

  it('has a figure for every piece and every shaping, each with its words', () => {
    const figures = tags.filter((t) => t.role === 'Figure');
    // Body, sleeve, sizes, and three sections that are shaped, at the least.
    expect(figures.length).toBeGreaterThanOrEqual(Math.max(6, picturesOf(plan, 'us').length));
    for (const { alternative } of figures) expect(alternative.length).toBeGreaterThan(60);
    expect(figures[0]?.alternative).toContain('Waist: 196 stitches');
  });

  it('is the same to the byte when it is made again', async () => {
    const [one, two] = await Promise.all([pdf(sheet), pdf(sheetOf(plan, OPTIONS))]);
    expect(Buffer.from(one).equals(Buffer.from(two))).toBe(true);
    const later = await pdf(sheetOf(plan, { ...OPTIONS, date: '2025-03-02' }));
    expect(Buffer.from(one).equals(Buffer.from(later))).toBe(false);
  });

  it('names no project where none was named, and prints what can be printed of its name', async () => {
    const none = await readPdf(await pdf(sheetOf(plan, { ...OPTIONS, project: '' })));
    expect(none.pages[0]?.lines[0]).toBe('Plan 1 March 2025');
    const odd = await readPdf(await pdf(sheetOf(plan, { ...OPTIONS, project: 'For Łucja 🎂' })));
    expect(odd.pages[0]?.lines[0]).toBe('For Łucja: Plan 1 March 2025');
  });

  it('speaks the terms of the United Kingdom to who asked for them', async () => {
    const uk = await readPdf(await pdf(sheetOf(plan, { ...OPTIONS, dialect: 'uk' })));
    const parts = uk.pages.flatMap((p) => p.tags.map((t) => `${t.text} ${t.alternative}`));
    const said = parts.slice(0, parts.indexOf('Workings '));
    expect(said.filter((words) => words.includes('your tension')).length).toBeGreaterThan(0);
    expect(said.filter((words) => words.includes('gauge'))).toEqual([]);
  });
});

/** Pages on which a line of a step stands alone: under its repeated heading, or under its first one. */
function widows(sheet: Sheet): string[] {
  return sheet.pages.flatMap((page, i) => {
    const body = page.parts.filter((p) => p.role !== 'Artifact');
    const alone: string[] = [];
    const last = body.at(-1);
    if (last?.role === 'H1' || last?.role === 'H2') alone.push(`page ${i + 1} ends with a heading`);
    const continued =
      body[0]?.shapes.some((s) => s.shape === 'text' && s.text.endsWith('(continued)')) === true;
    if (continued) {
      const next = body.findIndex((p, k) => k > 0 && p.role !== 'P');
      const lines = body
        .slice(1, next === -1 ? undefined : next)
        .flatMap((p) => p.shapes.filter((s) => s.shape === 'text'));
      const rows = new Set(lines.map((s) => (s.shape === 'text' ? s.y.toFixed(1) : '')));
      if (rows.size < 2) alone.push(`page ${i + 1} goes on with one line`);
    }
    return alone;
  });
}

describe('every sheet', () => {
  const makers: [string, (o: PlanSheetOptions & BlankOptions) => Sheet][] = [
    ['plan', (o) => sheetOf(plan, o)],
    ...BLANKS.map((blank): [string, (o: BlankOptions) => Sheet] => [blank, (o) => blankSheet(blank, o)]),
  ];
  const cases = makers.flatMap(([name, make]) =>
    (['A4', 'Letter'] as const).flatMap((paper) =>
      TYPE_SIZES.map((type) => ({
        name,
        paper,
        type,
        sheet: make({ ...OPTIONS, paper, type }),
      })),
    ),
  );

  it.each(cases)(
    'has everything in its place, and no line left alone: $name, $paper, $type type',
    ({ sheet, paper }) => {
      for (const page of sheet.pages) {
        expect([page.width, page.height]).toEqual([PAPERS[paper].width, PAPERS[paper].height]);
        expect(faultsOf(drawingOf(page))).toEqual([]);
      }
      expect(widows(sheet)).toEqual([]);
    },
  );

  it('has no letter below 9 points, and in large type none below 14 outside of pictures', () => {
    const smallest = (type: 'normal' | 'large') =>
      Math.min(
        ...sheetOf(plan, { ...OPTIONS, type }).pages.flatMap((p) =>
          p.parts
            .filter((part) => part.role !== 'Figure')
            .flatMap((part) => part.shapes.flatMap((s) => (s.shape === 'text' ? [s.size] : []))),
        ),
      );
    expect(smallest('normal')).toBeGreaterThanOrEqual(9);
    expect(smallest('large')).toBeGreaterThanOrEqual(14);
  });

  it('holds for random garments', () => {
    fc.assert(
      fc.property(
        garments,
        fc.constantFrom('A4', 'Letter'),
        fc.constantFrom(...TYPE_SIZES),
        (random, paper, type) => {
          const sheet = sheetOf(random, { ...OPTIONS, paper, type });
          expect(sheet.pages.flatMap((page) => faultsOf(drawingOf(page)))).toEqual([]);
          expect(widows(sheet)).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('breaks a step that is longer than a page and repeats its heading', () => {
    const [step] = plan.steps;
    if (step === undefined) throw new Error('no step');
    const long: Plan = { ...plan, steps: [{ ...step, notes: Array(60).fill(step.notes[0]) }] };
    const sheet = sheetOf(long, OPTIONS);
    const headings = sheet.pages
      .flatMap((p) => textsOf(drawingOf(p)))
      .filter((t) => t.text === '1. Your fabric (continued)');
    expect(headings.length).toBeGreaterThanOrEqual(1);
    expect(widows(sheet)).toEqual([]);
    expect(sheet.pages.flatMap((page) => faultsOf(drawingOf(page)))).toEqual([]);
  });
});

describe('the measuring sheet', async () => {
  const read = await readPdf(await pdf(blankSheet('measuring', { ...OPTIONS, unit: 'in' })));
  const said = read.pages.flatMap((p) => p.lines).join(' ');

  it('has every measurement with where it is taken, in the unit of the tape', () => {
    for (const name of [
      'Bust or chest',
      'Waist',
      'Cross back',
      'Underarm to wrist',
      'Sleeve length',
      'Body length',
    ])
      expect(said).toContain(name);
    expect(said).toContain('The tape circles the wrist over the bone.');
    expect(said).toContain('write both in inches');
    expect(said).toMatch(/first in second in/);
  });

  it('leaves the day open, as it is copied and filled in on another', () => {
    expect(said).toContain('Of whom: Date:');
    expect(said).not.toContain('2025');
  });

  it('has 21 measurements on three pages', () => {
    const sheet = blankSheet('measuring', OPTIONS);
    const blanks = sheet.pages.flatMap((p) => drawingOf(p).shapes).filter((s) => s.name === 'blank');
    expect([blanks.length, sheet.pages.length]).toEqual([2 * 21 + 2, 3]);
  });
});

describe('a sheet for a sum', () => {
  const sums = BLANKS.flatMap((blank) => (blank === 'measuring' ? [] : [blank]));

  it.each(sums.map((blank, i) => ({ blank, sum: SUMS[i] ?? blank })))(
    'has the lines of the workings in their order: $blank',
    async ({ blank, sum }) => {
      const read = await readPdf(await pdf(blankSheet(blank, OPTIONS)));
      const tags = read.pages.flatMap((p) => p.tags);
      const { title, lines } = sumLines(sum as (typeof SUMS)[number]);
      const text = plainText(tags.map((t) => t.text).join(' '));
      let at = text.indexOf(plainText(title));
      expect(at).toBeGreaterThanOrEqual(0);
      expect(lines.length).toBeGreaterThanOrEqual(3);
      for (const line of new Set(lines.map((l) => blankWorking(l, 'cm')))) {
        const next = text.indexOf(plainText(line), at);
        expect(next, line).toBeGreaterThanOrEqual(at);
        at = next;
      }
    },
  );

  it('has both intervals where they differ', () => {
    const labels = sumLines('rows over a length').lines.map((l) => l.label);
    expect(labels).toEqual(expect.arrayContaining(['a shorter interval', 'a longer interval']));
  });

  it.each(sums)('speaks of no centimetre to who measures in inches: %s', (blank) => {
    const said = blankSheet(blank, { ...OPTIONS, unit: 'in' }).pages.flatMap((p) => textsOf(drawingOf(p)));
    for (const { text } of said)
      expect(plainText(text).replace('2.5 cm (1 in)', '')).not.toMatch(/\bcm\b|centimet/);
  });

  it('is there as often as it fits on a page, never broken over two', () => {
    const sheet = blankSheet('stitches', OPTIONS);
    const starts = sheet.pages.flatMap((p) => textsOf(drawingOf(p))).filter((t) => t.text === 'Of what:');
    expect([sheet.pages.length, starts.length]).toEqual([1, 3]);
    for (const page of blankSheet('wedge', { ...OPTIONS, type: 'large' }).pages) {
      const [heading, first] = page.parts.filter((p) => p.role !== 'Artifact');
      if (heading?.role !== 'H2') continue;
      expect(first?.shapes.find((s) => s.shape === 'text')).toMatchObject({ weight: 'bold' });
    }
  });

  it.each(SUMS)('leaves no number filled in but those of the rule itself: %s', (sum) => {
    for (const line of sumLines(sum).lines) {
      const constants = [...line.formula.matchAll(/\b\d+(?:\.\d+)?\b/g)].map((m) => m[0]);
      const rule = line.rounding?.to === 'multiple' ? [String(line.rounding.multiple)] : [];
      const printed =
        blankWorking(line, 'cm')
          .replace(/turn \d+/g, '')
          .match(/\d+(?:\.\d+)?/g) ?? [];
      expect(printed.filter((n) => ![...constants, ...rule].includes(n))).toEqual([]);
    }
  });

  it('asks for nothing that was not worked out before or is given to begin with', () => {
    for (const sum of SUMS) {
      const { lines } = sumLines(sum);
      lines.forEach((line, i) => {
        const later = lines.slice(i).map((l) => l.result.name);
        for (const given of Object.values(line.given)) {
          const before = lines.slice(0, i).some((l) => l.result.name === given.name);
          expect(before || !later.includes(given.name), `${sum}: ${line.label} needs ${given.name}`).toBe(
            true,
          );
        }
      });
    }
  });
});

describe('a date', () => {
  it('is written so that no country reads it otherwise', () => {
    expect(wordDate('2025-03-01')).toBe('1 March 2025');
    expect(() => wordDate('01/03/2025')).toThrow('2025-03-01');
    expect(() => wordDate('2025-13-41')).toThrow(RangeError);
  });
});
