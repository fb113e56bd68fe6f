/**
 * Gaining or losing width by the needle alone: the pattern's counts, another gauge. It changes every other measurement
 * in the same proportion, and rows with it; lengths that the pattern gives in centimetres stay.
 */
import { finishedLength, rowCount } from './contradiction.ts';
import { type Pattern, type PatternSize, ROWED, type Rowed } from './pattern.ts';
import { type Cm, cm, type PerCm, perCm } from './units.ts';
import type { Region } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Beyond a tenth more or fewer stitches, about two needle sizes, the fabric is another one (common practice). */
export const SAME_FABRIC_WITHIN = 0.1;

export interface NeedleWay {
  /** Stitches to a centimetre at which the pattern's own counts give the width. */
  readonly gauge: PerCm;
  /** Every measurement that follows, the one wanted first. */
  readonly widths: readonly { readonly region: Region; readonly printed: Cm; readonly becomes: Cm }[];
  /** Lengths that the pattern counts in rows, if the rows widen as the stitches do, which is to be swatched. */
  readonly lengths: readonly { readonly stretch: Rowed; readonly printed: Cm; readonly becomes: Cm }[];
  readonly fabric: 'much the same' | 'looser' | 'denser';
  readonly workings: readonly WorkingLine[];
}

const WIDTHS: readonly Region[] = ['bust', 'waist', 'hip', 'cross back', 'neck', 'upper arm', 'wrist'];

/** What it takes to make one width of a size another by gauge alone. Throws where the size does not state the width. */
export function needleWay(pattern: Pattern, size: PatternSize, region: Region, wanted: Cm): NeedleWay {
  const printed = size.finished[region];
  if (printed === undefined) throw new RangeError(`size ${size.label} states no ${region}`);
  const { count, span } = pattern.gauge.stitches;
  const gauge = workOut(
    'stitches to a centimetre that give the width',
    'a * b / c',
    {
      a: quantity('gauge of the pattern', count / span, 'stitches/cm'),
      b: finishedLength(region, printed),
      c: quantity(`${region} wanted`, wanted, 'cm'),
    },
    { unit: 'stitches/cm' },
  );
  const scale = (label: string, length: Cm) =>
    workOut(
      label,
      'a * b / c',
      {
        a: quantity(`${label}, pattern`, length, 'cm'),
        b: quantity(`${region} wanted`, wanted, 'cm'),
        c: finishedLength(region, printed),
      },
      { unit: 'cm' },
    );
  const widths = WIDTHS.flatMap((r) => {
    const width = size.finished[r];
    return width === undefined ? [] : [{ region: r, printed: width, line: scale(r, width) }];
  });
  const lengths = ROWED.flatMap((stretch) => {
    const rows = size.rows?.[stretch];
    if (rows === undefined) return [];
    const length = workOut(
      `length of the ${stretch}, pattern`,
      'a * b / c',
      {
        a: rowCount(stretch, rows),
        b: quantity('span of the row gauge', pattern.gauge.rows.span, 'cm'),
        c: quantity('rows of the gauge', pattern.gauge.rows.count, 'rows'),
      },
      { unit: 'cm' },
    );
    return [{ stretch, length, line: scale(`length of the ${stretch}`, cm(length.exact)) }];
  });
  const ratio = wanted / printed;
  return {
    gauge: perCm(gauge.exact),
    widths: widths.map(({ line, ...w }) => ({ ...w, becomes: cm(line.exact) })),
    lengths: lengths.map((l) => ({
      stretch: l.stretch,
      printed: cm(l.length.exact),
      becomes: cm(l.line.exact),
    })),
    fabric: fabricAt(1 / ratio),
    workings: [gauge, ...widths.map((w) => w.line), ...lengths.flatMap((l) => [l.length, l.line])],
  };
}

/** `density`: stitches to a centimetre as a share of the pattern's. */
function fabricAt(density: number): NeedleWay['fabric'] {
  if (Math.abs(density - 1) <= SAME_FABRIC_WITHIN + 1e-9) return 'much the same';
  return density < 1 ? 'looser' : 'denser';
}
