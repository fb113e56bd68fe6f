/** Pictures and sheets as files: drawn in another thread, so that nobody waits for another's picture. */
import { createHash } from 'node:crypto';
import type { Plan } from '../../fit/plan.ts';
import type { LengthUnit } from '../../fit/units.ts';
import {
  BLANKS,
  type Blank,
  blankSheet,
  blankTitle,
  measuredBy,
  measuringPicture,
  type Picture,
  picturesOf,
  render,
} from '../../present/pictures.ts';
import { type Paper, type TypeSize, usualPaper } from '../../present/sheets/paper.ts';
import type { Dialect } from '../../present/terms.ts';
import type { PageFile } from './page.ts';

/** What is drawn of a plan. */
export interface Drawn {
  readonly pictures: readonly PageFile[];
  readonly sheet: PageFile | undefined;
}

/** A sheet to fill in by hand. */
export interface BlankFile {
  readonly title: string;
  readonly file: PageFile;
}

/** On which paper and in which type sheets are printed; `paper` null: as is usual with the unit. */
export interface Printing {
  readonly paper: Paper | null;
  readonly type: TypeSize;
}

/** Draws; what cannot be drawn is left out, as everything that it says stands in the text. */
export interface Draughtsman {
  readonly plan: (plan: Plan, title: string, dialect: Dialect, now: number) => Promise<Drawn>;
  /** Where the tape lies; undefined where no picture tells it. */
  readonly measuring: (id: string, measurement: string | undefined) => Promise<PageFile | undefined>;
  readonly blanks: (unit: LengthUnit, print: Printing, now: number) => Promise<readonly BlankFile[]>;
}

/** Pixels for a unit of a drawing: sharp on a phone. */
const SCALE = 2;
/** Plans whose files are kept, for those who turn their pages. */
const KEPT = 30;

/** `failed` hears of what could not be drawn; `print` holds for the sheets of plans. */
export function draughtsman(print: Printing, failed: (error: unknown) => void): Draughtsman {
  const plans = new Map<string, Promise<Drawn>>();
  const measuring = new Map<string, Promise<PageFile | undefined>>();
  const blanks = new Map<string, Promise<PageFile | undefined>>();
  /** What could not be drawn is tried anew the next time. */
  const drawn = (made: Promise<PageFile>) =>
    made.catch((error: unknown) => {
      for (const kept of [plans, measuring, blanks]) kept.clear();
      failed(error);
      return undefined;
    });
  return {
    plan: (plan, title, dialect, now) => {
      const key = createHash('sha256')
        .update(JSON.stringify([plan, title, dialect]))
        .digest('base64url');
      const made = plans.get(key) ?? drawPlan(plan, { title, dialect, print, now }, drawn);
      plans.delete(key);
      plans.set(key, made);
      for (const old of [...plans.keys()].slice(0, -KEPT)) plans.delete(old);
      return made;
    },
    measuring: (id, measurement) => {
      const measured = measuredBy({ id, measurement });
      if (measured === undefined) return Promise.resolve(undefined);
      const made = measuring.get(measured) ?? drawn(png(measuringPicture(measured)));
      measuring.set(measured, made);
      return made;
    },
    blanks: async (unit, asked, now) => {
      const files = BLANKS.map((blank) => {
        const key = `${blank} ${unit} ${asked.paper} ${asked.type}`;
        const made = blanks.get(key) ?? drawn(blankPdf(blank, unit, asked, now));
        blanks.set(key, made);
        return made;
      });
      const all = await Promise.all(files);
      return BLANKS.flatMap((blank, n) => {
        const file = all[n];
        return file === undefined ? [] : [{ title: blankTitle(blank), file }];
      });
    },
  };
}

/** How a plan is drawn. */
interface PlanDrawing {
  readonly title: string;
  readonly dialect: Dialect;
  readonly print: Printing;
  readonly now: number;
}

async function drawPlan(
  plan: Plan,
  how: PlanDrawing,
  drawn: (made: Promise<PageFile>) => Promise<PageFile | undefined>,
): Promise<Drawn> {
  const pictures = await Promise.all(picturesOf(plan, how.dialect).map((picture) => drawn(png(picture))));
  const sheet = await drawn(planPdf(plan, how));
  return { pictures: pictures.flatMap((file) => (file === undefined ? [] : [file])), sheet };
}

async function png({ name, drawing, alternative }: Picture): Promise<PageFile> {
  const data = await render({ make: 'png', drawing, theme: 'light', scale: SCALE });
  return { name: `${name}.png`, data, alternative };
}

async function planPdf(plan: Plan, { title, dialect, print, now }: PlanDrawing): Promise<PageFile> {
  const options = { project: title, date: dateOf(now), dialect, ...printed(print, plan.unit) };
  return { name: 'plan.pdf', data: await render({ make: 'plan sheet', plan, options }), alternative: '' };
}

async function blankPdf(blank: Blank, unit: LengthUnit, print: Printing, now: number): Promise<PageFile> {
  const sheet = blankSheet(blank, { unit, date: dateOf(now), ...printed(print, unit) });
  return { name: `${blank}.pdf`, data: await render({ make: 'pdf', sheet }), alternative: '' };
}

function printed({ paper, type }: Printing, unit: LengthUnit): { paper: Paper; type: TypeSize } {
  return { paper: paper ?? usualPaper(unit), type };
}

/** ISO 8601. */
function dateOf(now: number): string {
  return new Date(now).toISOString().slice(0, 10);
}
