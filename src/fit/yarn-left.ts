/** Whether the yarn that is left lasts: for the rest of a garment, or row by row at its end. */

import { quantity, type WorkingLine, workOut } from './working.ts';
import { amount, type YarnAmount, type YarnUnit } from './yarn.ts';

export interface YarnLeftAsk {
  /** What is left, and what the area knitted so far has taken, in one unit. */
  readonly unit: YarnUnit;
  readonly left: number;
  readonly used: { readonly amount: number; readonly area: number };
  /** Area still to knit, in square centimetres. */
  readonly rest: number;
  readonly margin: number;
}

/** It lasts, margin included; so much is over. */
export interface Lasts {
  readonly kind: 'lasts';
  readonly needed: YarnAmount;
  readonly over: YarnAmount;
  readonly workings: readonly WorkingLine[];
}

/** It does not: so much more is wanted, or so much less area can be knitted. */
export interface RunsShort {
  readonly kind: 'runs short';
  readonly needed: YarnAmount;
  readonly short: YarnAmount;
  /** Area that the yarn left is enough for, margin included. */
  readonly enoughFor: number;
  readonly workings: readonly WorkingLine[];
}

/** Throws where nothing has been knitted yet: then a swatch tells. */
export function yarnLeft(ask: YarnLeftAsk): Lasts | RunsShort {
  if (!(ask.used.area > 0 && ask.used.amount > 0))
    throw new RangeError('nothing is knitted yet that could tell how much the rest takes');
  const { unit } = ask;
  const given = {
    u: amount('yarn used so far', { value: ask.used.amount, unit }),
    k: quantity('area knitted so far', ask.used.area, 'cm²'),
    m: quantity('margin', ask.margin, 'ratio'),
  };
  const needed = workOut(
    'yarn for the rest, with the margin',
    'r * u / k * (1 + m)',
    { ...given, r: quantity('area still to knit', ask.rest, 'cm²') },
    { unit },
  );
  const left = amount('yarn left', { value: ask.left, unit });
  const need = { value: needed.exact, unit };
  if (ask.left >= needed.exact) {
    const over = workOut('yarn over', 'a - b', { a: left, b: needed.result }, { unit });
    return { kind: 'lasts', needed: need, over: { value: over.exact, unit }, workings: [needed, over] };
  }
  const short = workOut('yarn short', 'b - a', { a: left, b: needed.result }, { unit });
  const enough = workOut(
    'area that the yarn left is enough for',
    'a / (1 + m) * k / u',
    { ...given, a: left },
    { unit: 'cm²' },
  );
  return {
    kind: 'runs short',
    needed: need,
    short: { value: short.exact, unit },
    enoughFor: enough.exact,
    workings: [needed, short, enough],
  };
}

export interface RowsLeft {
  readonly left: YarnAmount;
  /** Whole rows that can be worked after what is kept back; never fewer than none. */
  readonly rows: number;
  readonly keep: number;
  /** Whether there is as much as is kept back. */
  readonly bindsOff: boolean;
  readonly workings: readonly WorkingLine[];
}

/** Rows that the last of the yarn gives, so many kept back for the bind-off and for rows that grow. */
export function rowsLeft(unit: YarnUnit, left: number, perRow: number, keep: number): RowsLeft {
  if (!(perRow > 0)) throw new RangeError(`a row takes more than ${perRow} ${unit}`);
  const whole = workOut(
    'rows in the yarn left',
    'a / b',
    { a: amount('yarn left', { value: left, unit }), b: amount('one row', { value: perRow, unit }) },
    { unit: 'rows', rounding: { to: 'whole down' } },
  );
  const bindsOff = whole.result.value >= keep;
  const given = { left: { value: left, unit }, keep, bindsOff };
  if (!bindsOff) return { ...given, rows: 0, workings: [whole] };
  const rows = workOut(
    'rows to work',
    'a - k',
    { a: whole.result, k: quantity('rows kept back', keep, 'rows') },
    { unit: 'rows' },
  );
  return { ...given, rows: rows.exact, workings: [whole, rows] };
}
