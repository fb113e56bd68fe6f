/** Heights along a piece turned into rows: each from the start of the piece, so that roundings never add up. */
import type { Gauge } from './gauge.ts';
import { type Cm, type Rows, rows } from './units.ts';
import type { Worked } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** A stretch between two heights, in rows, with its workings. */
export interface Stretch {
  readonly rows: Rows;
  readonly workings: readonly WorkingLine[];
}

/** Row at which a height lies: the nearest, or on flat pieces the nearest even one, so that a wrong-side row is last. */
export function rowAt(name: string, height: Cm, gauge: Gauge): WorkingLine {
  return workOut(
    `rows to the ${name}`,
    'a * b',
    {
      a: quantity(`${name}, from the start`, height, 'cm'),
      b: quantity('rows', gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: rounding(gauge.worked) } },
  );
}

/** Rows between two heights that have been turned into rows. */
export function stretch(label: string, from: WorkingLine | null, to: WorkingLine): Stretch {
  if (from === null) return { rows: rows(to.result.value), workings: [to] };
  const between = workOut(label, 'b - a', { b: to.result, a: from.result }, { unit: 'rows' });
  return { rows: rows(between.result.value), workings: [from, to, between] };
}

/** Plain rows wanted at one end of a section: a length's worth, rounded like every height. */
export function plainRows(name: string, length: Cm, gauge: Gauge): WorkingLine {
  return workOut(
    `plain rows ${name}`,
    'a * b',
    { a: quantity('plain stretch', length, 'cm'), b: quantity('rows', gauge.rows.perCm, 'rows/cm') },
    { unit: 'rows', rounding: { to: rounding(gauge.worked) } },
  );
}

function rounding(worked: Worked): 'whole' | 'even' {
  return worked === 'flat' ? 'even' : 'whole';
}
