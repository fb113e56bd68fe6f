/** What a piece measures at each of its levels at the gauge that it really has, against what was planned. */
import { type Gauge, type Range, rangeOf } from './gauge.ts';
import type { Level, Piece } from './outline.ts';
import { type Cm, cm } from './units.ts';
import type { LevelName } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/**
 * How far a measurement may be off before it is worth mending (common practice): a fortieth of a width, which is 2.5 cm
 * on a bust of 100 cm and half a centimetre on a narrow wrist; half an inch on a length.
 */
export const TOLERANCE = { shareOfWidth: 1 / 40, leastWidth: cm(0.5), length: cm(1.27) };

export interface Measure {
  readonly level: LevelName;
  /** Width of this piece without its edge stitches, or length from the start of the piece. */
  readonly of: 'width' | 'length';
  readonly planned: Cm;
  readonly expected: Range;
  /** Expected less planned. */
  readonly off: Cm;
  readonly within: boolean;
  /** The whole range is on one side: within what is allowed, or beyond it. Else a longer count would tell. */
  readonly sure: boolean;
  /** The level has been knitted: its count and its row can no longer change. */
  readonly knitted: boolean;
}

/** A level as it was planned, and as it is or will be knitted. */
export interface Placed {
  readonly planned: Level;
  readonly row: number;
  readonly stitches: number;
  readonly knitted: boolean;
}

/** Rows that are knitted beyond the last level belong to it: it ends where they end. */
export function placed(piece: Piece, now: number): readonly Placed[] {
  return piece.levels.map((planned, i) => ({
    planned,
    row: i === piece.levels.length - 1 ? Math.max(planned.row, now) : planned.row,
    stitches: planned.stitches,
    knitted: planned.row <= now,
  }));
}

/** Width and length at each level. The planned figures are the piece's own counts at the gauge it was planned with. */
export function measuresOf(
  levels: readonly Placed[],
  planned: Gauge,
  real: Gauge,
  edge: number,
): readonly Measure[] {
  return levels.flatMap((level) => {
    const width = cm((level.planned.stitches - edge) / planned.stitches.perCm);
    const length = cm(level.planned.row / planned.rows.perCm);
    const broad = rangeOf(level.stitches - edge, real.stitches);
    const allowed = Math.max(TOLERANCE.leastWidth, width * TOLERANCE.shareOfWidth);
    const measures = [measure(level, 'width', width, broad, allowed)];
    if (level.planned.row > 0)
      measures.push(measure(level, 'length', length, rangeOf(level.row, real.rows), TOLERANCE.length));
    return measures;
  });
}

function measure(level: Placed, of: Measure['of'], planned: Cm, expected: Range, allowed: number): Measure {
  const off = cm(expected.expected - planned);
  const inside = (value: number) => Math.abs(value - planned) <= allowed + 1e-9;
  const within = inside(expected.expected);
  const [low, high] = [inside(expected.low), inside(expected.high)];
  const oneSide = expected.low > planned || expected.high < planned;
  const sure = within ? low && high : !low && !high && oneSide;
  return { level: level.planned.name, of, planned, expected, off, within, sure, knitted: level.knitted };
}

/** How each measure came about, the real gauge first. */
export function measureWorkings(
  levels: readonly Placed[],
  planned: Gauge,
  real: Gauge,
  edge: number,
): readonly WorkingLine[] {
  const rates = [rate('stitches', real), rate('rows', real)] as const;
  return [
    ...rates,
    ...levels.flatMap((level) => {
      const name = level.planned.name;
      const wide = (label: string, count: number, per: number) =>
        workOut(
          label,
          edge === 0 ? 'a / c' : '(a - b) / c',
          {
            a: quantity(`stitches at the ${name}`, count, 'stitches'),
            ...(edge === 0 ? {} : { b: quantity('edge stitches', edge, 'stitches') }),
            c: quantity('stitches', per, 'stitches/cm'),
          },
          { unit: 'cm' },
        );
      const long = (label: string, row: number, per: number) =>
        workOut(
          label,
          'a / b',
          { a: quantity(`rows to the ${name}`, row, 'rows'), b: quantity('rows', per, 'rows/cm') },
          { unit: 'cm' },
        );
      const across = wide(
        `width at the ${name}, at the gauge as knitted`,
        level.stitches,
        real.stitches.perCm,
      );
      const widths = [
        wide(`width at the ${name}, planned`, level.planned.stitches, planned.stitches.perCm),
        across,
        giveOrTake(`width at the ${name}, give or take`, across, 'stitches', real),
      ];
      if (level.planned.row === 0) return widths;
      const up = long(`length to the ${name}, at the gauge as knitted`, level.row, real.rows.perCm);
      return [
        ...widths,
        long(`length to the ${name}, planned`, level.planned.row, planned.rows.perCm),
        up,
        giveOrTake(`length to the ${name}, give or take`, up, 'rows', real),
      ];
    }),
  ];
}

/** Half the range: two standard errors of the gauge, as a share of the length. */
function giveOrTake(label: string, length: WorkingLine, of: 'stitches' | 'rows', real: Gauge): WorkingLine {
  return workOut(
    label,
    '2 * a * s / r',
    {
      a: length.result,
      s: quantity('standard error of the gauge', real[of].se, `${of}/cm`),
      r: quantity(of, real[of].perCm, `${of}/cm`),
    },
    { unit: 'cm' },
  );
}

function rate(of: 'stitches' | 'rows', real: Gauge): WorkingLine {
  const { counts } = real[of];
  const total = counts.reduce((sum, c) => sum + c.count, 0);
  const span = counts.reduce((sum, c) => sum + c.span, 0);
  return workOut(
    `${of} to a centimetre, as knitted`,
    'a / b',
    { a: quantity(`${of} counted`, total, of), b: quantity(`over`, span, 'cm') },
    { unit: `${of}/cm` },
  );
}
