/** Rows that a pattern states, told as a length at its gauge and back into rows at another. */
import { type Pattern, type PatternSize, ROWED, type Rowed } from './pattern.ts';
import { type Cm, cm, type PerCm, perCm, type Rows, rows } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface RowFigure {
  readonly stretch: Rowed;
  readonly pattern: Rows;
  /** What the pattern's rows measure at its own gauge. */
  readonly length: Cm;
  /** Rows that make this length at the other gauge. */
  readonly rows: Rows;
  /** What the pattern's rows would measure at the other gauge. */
  readonly lengthUnchanged: Cm;
  readonly workings: readonly WorkingLine[];
}

/** A number of rows at one gauge as a length, and the length as rows at another. */
export function retell(
  name: string,
  printed: Rows,
  gauge: { readonly pattern: PerCm; readonly own: PerCm },
  to: 'whole' | 'even',
): Omit<RowFigure, 'stretch'> {
  const a = quantity(`rows of the ${name}, pattern`, printed, 'rows');
  const length = workOut(
    `length of the ${name}`,
    'a / c',
    { a, c: quantity('gauge of the pattern', gauge.pattern, 'rows/cm') },
    { unit: 'cm' },
  );
  const b = quantity('own gauge', gauge.own, 'rows/cm');
  const back = workOut(
    `rows of the ${name}`,
    'a * b',
    { a: length.result, b },
    { unit: 'rows', rounding: { to } },
  );
  const unchanged = workOut(`length of the ${name}, rows unchanged`, 'a / b', { a, b }, { unit: 'cm' });
  return {
    pattern: printed,
    length: cm(length.exact),
    rows: rows(back.result.value),
    lengthUnchanged: cm(unchanged.exact),
    workings: [length, back, unchanged],
  };
}

/** All rows that a size states. Pieces knitted flat keep an even number; armholes and caps are flat even of a body in the round. */
export function regaugedRows(pattern: Pattern, size: PatternSize, own: PerCm): readonly RowFigure[] {
  const { count, span } = pattern.gauge.rows;
  const gauge = { pattern: perCm(count / span), own };
  return ROWED.flatMap((stretch) => {
    const printed = size.rows?.[stretch];
    if (printed === undefined) return [];
    const worked = { body: pattern.body, sleeve: pattern.sleeves, armhole: 'flat', cap: 'flat' }[stretch];
    return [{ stretch, ...retell(stretch, printed, gauge, worked === 'flat' ? 'even' : 'whole') }];
  });
}
