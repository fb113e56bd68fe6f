/** Pictures and sheets as files: drawn in another thread, so that nobody waits for another's picture. */
import { createHash } from 'node:crypto';
import type { Plan } from '../../fit/plan.ts';
import {
  measuredBy,
  measuringPicture,
  type Picture,
  picturesOf,
  render,
  sheetOf,
} from '../../present/pictures.ts';
import type { Dialect } from '../../present/terms.ts';
import type { PageFile } from './page.ts';

/** What is drawn of a plan. */
export interface Drawn {
  readonly pictures: readonly PageFile[];
  readonly sheet: PageFile | undefined;
}

/** Draws; what cannot be drawn is left out, as everything that it says stands in the text. */
export interface Draughtsman {
  readonly plan: (plan: Plan, title: string, dialect: Dialect, now: number) => Promise<Drawn>;
  /** Where the tape lies; undefined where no picture tells it. */
  readonly measuring: (id: string, measurement: string | undefined) => Promise<PageFile | undefined>;
}

/** Pixels for a unit of a drawing: sharp on a phone. */
const SCALE = 2;
/** Plans whose files are kept, for those who turn their pages. */
const KEPT = 30;

/** `failed` hears of what could not be drawn. */
export function draughtsman(failed: (error: unknown) => void): Draughtsman {
  const plans = new Map<string, Promise<Drawn>>();
  const measuring = new Map<string, Promise<PageFile | undefined>>();
  const drawn = (picture: Picture) =>
    png(picture).catch((error: unknown) => {
      failed(error);
      return undefined;
    });
  return {
    plan: (plan, title, dialect, now) => {
      const key = createHash('sha256')
        .update(JSON.stringify([plan, title, dialect]))
        .digest('base64url');
      const made = plans.get(key) ?? drawPlan(plan, title, dialect, now, drawn, failed);
      plans.delete(key);
      plans.set(key, made);
      for (const old of [...plans.keys()].slice(0, -KEPT)) plans.delete(old);
      return made;
    },
    measuring: (id, measurement) => {
      const measured = measuredBy({ id, measurement });
      if (measured === undefined) return Promise.resolve(undefined);
      const made = measuring.get(measured) ?? drawn(measuringPicture(measured));
      measuring.set(measured, made);
      return made;
    },
  };
}

async function drawPlan(
  plan: Plan,
  title: string,
  dialect: Dialect,
  now: number,
  drawn: (picture: Picture) => Promise<PageFile | undefined>,
  failed: (error: unknown) => void,
): Promise<Drawn> {
  const pictures = await Promise.all(picturesOf(plan, dialect).map(drawn));
  const sheet = await pdf(plan, title, dialect, now).catch((error: unknown) => {
    failed(error);
    return undefined;
  });
  return { pictures: pictures.flatMap((file) => (file === undefined ? [] : [file])), sheet };
}

async function png({ name, drawing, alternative }: Picture): Promise<PageFile> {
  const data = await render({ make: 'png', drawing, theme: 'light', scale: SCALE });
  return { name: `${name}.png`, data, alternative };
}

async function pdf(plan: Plan, title: string, dialect: Dialect, now: number): Promise<PageFile> {
  const date = new Date(now).toISOString().slice(0, 10);
  const paper = plan.unit === 'in' ? 'Letter' : 'A4';
  const sheet = sheetOf(plan, { project: title, date, paper, type: 'normal', dialect });
  return { name: 'plan.pdf', data: await render({ make: 'pdf', sheet }), alternative: '' };
}
