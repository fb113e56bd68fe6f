/**
 * Buttonholes along a band, counted in its rows (or in its stitches where the band is picked up): the gaps between them
 * are equal within one. All figures are counts from the band's beginning, so that a tape never comes into it.
 *
 *   |<- first ->|hole|<- gap ->|hole|<- gap ->|hole|<- last ->|
 */
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface ButtonAsk {
  /** Rows of a band knitted along, or stitches of one picked up. */
  readonly unit: 'rows' | 'stitches';
  readonly length: number;
  readonly buttons: number;
  /** Rows (or stitches) before the first buttonhole and after the last. */
  readonly first: number;
  readonly last: number;
  /** Rows (or stitches) that one buttonhole takes. */
  readonly hole: number;
}

export interface ButtonsPlaced {
  readonly kind: 'placed';
  /** First and last row (or stitch) of each buttonhole, counted from 1. */
  readonly holes: readonly { readonly from: number; readonly to: number }[];
  readonly gaps: readonly number[];
  readonly workings: readonly WorkingLine[];
}

/** The band is too short for so many. */
export interface NoRoom {
  readonly kind: 'no room';
  /** Most buttons that leave one row (or stitch) between two; 0 where not even one goes in. */
  readonly most: number;
  readonly needed: number;
  readonly workings: readonly WorkingLine[];
}

/** Throws where there is no button, or a figure is not a whole number. */
export function placeButtons(ask: ButtonAsk): ButtonsPlaced | NoRoom {
  const { length, buttons, first, last, hole } = ask;
  if (![length, buttons, first, last, hole].every(Number.isSafeInteger) || buttons < 1 || hole < 1)
    throw new RangeError('buttons, holes and rows are counted in whole numbers from 1');
  const free = workOut(
    `${ask.unit} free between the buttonholes`,
    'a - b - c - n * h',
    {
      a: quantity(`${ask.unit} of the band`, length, ask.unit),
      b: quantity(`${ask.unit} before the first`, first, ask.unit),
      c: quantity(`${ask.unit} after the last`, last, ask.unit),
      n: quantity('buttonholes', buttons, 'times'),
      h: quantity(`${ask.unit} of one buttonhole`, hole, ask.unit),
    },
    { unit: ask.unit },
  );
  const gaps = buttons - 1;
  if (free.exact < gaps) {
    const most = Math.max(0, Math.floor((length - first - last + 1) / (hole + 1)));
    const needed = first + last + buttons * hole + gaps;
    return { kind: 'no room', most, needed, workings: [free] };
  }
  return { kind: 'placed', ...lay(ask, free) };
}

function lay({ unit, buttons, first, hole }: ButtonAsk, free: WorkingLine) {
  const count = buttons - 1;
  const gap = workOut(
    'a shorter gap',
    'a / b',
    { a: free.result, b: quantity('gaps', count, 'times') },
    { unit, rounding: { to: 'whole down' } },
  );
  const longer = workOut(
    'gaps one longer',
    'a - b * c',
    { a: free.result, b: gap.result, c: quantity('gaps', count, 'times') },
    { unit: 'times' },
  );
  if (count === 0) return { holes: [{ from: first + 1, to: first + hole }], gaps: [], workings: [free] };
  const gaps = Array.from({ length: count }, (_, i) => gap.result.value + extra(i, count, longer.exact));
  let at = first;
  const holes = [0, ...gaps].map((before) => {
    const from = at + before + 1;
    at = from + hole - 1;
    return { from, to: at };
  });
  return { holes, gaps, workings: [free, gap, longer] };
}

/** 1 for the gaps that are longer, spread evenly among the others. */
function extra(i: number, gaps: number, longer: number): number {
  return Math.floor(((i + 1) * longer) / gaps) - Math.floor((i * longer) / gaps);
}
