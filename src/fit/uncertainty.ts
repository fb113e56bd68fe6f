/**
 * How sure a finished measurement is, and which figure it hangs on most. Each figure behind it has a standard error; what
 * comes through one figure adds up, what comes through different ones is independent and joins as the root of squares.
 * A range is two standard errors to either side: about 19 in 20 come out within it.
 */
import type { Gauge, Range, Rate } from './gauge.ts';
import { type Cm, cm } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Figures that a finished measurement can hang on. */
export const SOURCES = [
  'stitch gauge',
  'row gauge',
  'stitch gauge of the sleeves',
  'row gauge of the sleeves',
  'body measurement',
] as const;
export type Source = (typeof SOURCES)[number];

export interface Estimate {
  readonly name: string;
  readonly expected: Cm;
  /** How far one standard error of each figure moves the measurement; the sign tells which way. */
  readonly through: Partial<Readonly<Record<Source, Cm>>>;
  readonly workings: readonly WorkingLine[];
}

export interface Uncertain {
  readonly name: string;
  readonly range: Range;
  /** Share of each figure in the squared error, the greatest first; empty where nothing is unsure. */
  readonly hangs: readonly { readonly on: Source; readonly share: number }[];
  readonly workings: readonly WorkingLine[];
}

/** A width of so many stitches, or a length of so many rows. */
export function fromCount(name: string, count: number, rate: Rate, on: Source): Estimate {
  const unit = on.startsWith('stitch') ? 'stitches' : 'rows';
  const counted = quantity(unit, count, unit);
  const per = quantity(on, rate.perCm, `${unit}/cm`);
  const length = workOut(name, 'a / r', { a: counted, r: per }, { unit: 'cm' });
  const moves = workOut(
    `${name}, moved by one standard error of the ${on}`,
    'a * s / (r * r)',
    { a: counted, s: quantity('standard error', rate.se, `${unit}/cm`), r: per },
    { unit: 'cm' },
  );
  return {
    name,
    expected: cm(length.exact),
    // A gauge that is denser than it was read makes the fabric smaller.
    through: { [on]: cm(-moves.exact) },
    workings: [length, moves],
  };
}

/** A length that a tape decides while knitting, or a measurement of the body with its own error. */
export function fromTape(name: string, length: Cm, se: Cm, on: Source = 'body measurement'): Estimate {
  const line = workOut(name, 'a', { a: quantity(`${name}, measured`, length, 'cm') }, { unit: 'cm' });
  return { name, expected: length, through: se === 0 ? {} : { [on]: se }, workings: [line] };
}

/** A sloping edge of so many stitches over so many rows: the root of the sum of squares of width and height. */
export function fromSlope(name: string, stitches: number, rows: number, gauge: Gauge): Estimate {
  const across = fromCount(`width of the ${name}`, stitches, gauge.stitches, 'stitch gauge');
  const up = fromCount(`height of the ${name}`, rows, gauge.rows, 'row gauge');
  const length = Math.hypot(across.expected, up.expected);
  const part = (side: Estimate, on: Source) =>
    cm(length === 0 ? 0 : ((side.through[on] ?? 0) * side.expected) / length);
  const square = workOut(
    `square of the ${name}`,
    'a * a + b * b',
    { a: quantity(across.name, across.expected, 'cm'), b: quantity(up.name, up.expected, 'cm') },
    { unit: 'cm²' },
  );
  return {
    name,
    expected: cm(length),
    through: { 'stitch gauge': part(across, 'stitch gauge'), 'row gauge': part(up, 'row gauge') },
    workings: [...across.workings, ...up.workings, square],
  };
}

/** Sums and differences: `times` is −1 for what is taken off, as the body is in ease. */
export function together(
  name: string,
  parts: readonly { readonly of: Estimate; readonly times: number }[],
): Estimate {
  const given = Object.fromEntries(
    parts.flatMap(({ of, times }, i) => [
      [`a${i + 1}`, quantity(of.name, of.expected, 'cm')],
      [`n${i + 1}`, quantity('times', Math.abs(times), 'times')],
    ]),
  );
  const terms = parts.map(({ times }, i) => `${times < 0 ? '- ' : i === 0 ? '' : '+ '}n${i + 1} * a${i + 1}`);
  const sum = workOut(name, `0 ${terms[0]?.startsWith('-') ? '' : '+ '}${terms.join(' ')}`, given, {
    unit: 'cm',
  });
  const through = Object.fromEntries(
    SOURCES.flatMap((on) => {
      const moved = parts.reduce((total, { of, times }) => total + times * (of.through[on] ?? 0), 0);
      return moved === 0 ? [] : [[on, cm(moved)]];
    }),
  );
  return {
    name,
    expected: cm(sum.exact),
    through,
    workings: [...parts.flatMap((p) => p.of.workings), sum],
  };
}

/** The range of an estimate and what it hangs on. */
export function uncertainty(estimate: Estimate): Uncertain {
  const { name, expected } = estimate;
  const moved = SOURCES.flatMap((on) => {
    const by = estimate.through[on] ?? 0;
    return by === 0 ? [] : [{ on, by }];
  });
  const given = Object.fromEntries(
    moved.map(({ on, by }, i) => [`s${i + 1}`, quantity(`moved through the ${on}`, Math.abs(by), 'cm')]),
  );
  const squares = Object.keys(given).map((letter) => `${letter} * ${letter}`);
  const square = workOut(`square of one standard error of ${name}`, squares.join(' + ') || '0', given, {
    unit: 'cm²',
  });
  const error = 2 * Math.sqrt(square.exact);
  return {
    name,
    range: { low: cm(expected - error), expected, high: cm(expected + error) },
    hangs: moved
      .map(({ on, by }) => ({ on, share: (by * by) / square.exact }))
      .sort((a, b) => b.share - a.share),
    workings: [...estimate.workings, square],
  };
}
