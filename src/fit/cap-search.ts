/**
 * The search for a sleeve cap whose edge is as long as the armhole's. Plain numbers, no allocation in its inner loop.
 *
 *          ____ top ____            bound off in the last row
 *       __╱              ╲__        fast: `step` stitches at each edge in every two rows
 *      │                    │       slow: one stitch at each edge on right-side rows, further apart
 *     ╱                      ╲      fast
 *   _╱                        ╲_    bound off as at the body's underarm
 *
 * For every division between fast and slow there is one number of rows that comes nearest; all divisions are tried.
 */

/** Stitches that a fast step takes at each edge in two rows: a decrease, or a bind-off of two or three. */
export const FAST_STEPS = [1, 2, 3] as const;
export type FastStep = (typeof FAST_STEPS)[number];

/** Rows from the last step to the final bind-off: the row of the last change, and the one back. */
export const ROWS_AT_TOP = 2;

export interface CapFigures {
  readonly upperArm: number;
  readonly bindOff: number;
  /** Counts that the top may have, the best liked first. */
  readonly tops: readonly number[];
  readonly stitchesPerCm: number;
  readonly rowsPerCm: number;
  /** Length that the edge is to have, in centimetres. */
  readonly wanted: number;
  /** The cap may not grow taller. */
  readonly mostRows: number;
}

export interface CapShape {
  readonly step: FastStep;
  /** Fast steps below and above the slow stretch. */
  readonly low: number;
  readonly high: number;
  /** Slow decreases at each edge, and the even number of rows in which they lie. */
  readonly slow: number;
  readonly slowRows: number;
  readonly top: number;
  readonly rows: number;
  /** Length of the whole edge in centimetres. */
  readonly edge: number;
}

export interface CapSearch {
  /** The first in order of liking whose edge agrees within one row's height. */
  readonly agreeing: CapShape | null;
  /** Of all caps that can be knitted within the rows. */
  readonly nearest: CapShape | null;
  readonly shortestEdge: number;
  readonly longestEdge: number;
}

/**
 * Liked best: between a third and two thirds of the shaping fast; then the gentlest step; then the top nearest to its
 * usual width; then the nearest edge.
 */
export function searchCap(figures: CapFigures): CapSearch {
  const found = { agreeing: null as CapShape | null, nearest: null as CapShape | null };
  let [shortestEdge, longestEdge] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const tolerance = 1 / figures.rowsPerCm;
  for (const middling of [true, false]) {
    for (const step of FAST_STEPS) {
      for (const top of figures.tops) {
        const best = bestDivision(figures, step, top, middling);
        if (best === null) continue;
        shortestEdge = Math.min(shortestEdge, best.shortestEdge);
        longestEdge = Math.max(longestEdge, best.longestEdge);
        if (found.nearest === null || off(figures, best.shape) < off(figures, found.nearest))
          found.nearest = best.shape;
        if (off(figures, best.shape) <= tolerance + 1e-9)
          return { agreeing: best.shape, nearest: best.shape, shortestEdge, longestEdge };
      }
    }
  }
  return { ...found, shortestEdge, longestEdge };
}

/** How far the edge is from the one wanted, in centimetres. */
function off(figures: CapFigures, shape: CapShape): number {
  return Math.abs(shape.edge - figures.wanted);
}

interface Division {
  readonly shape: CapShape;
  readonly shortestEdge: number;
  readonly longestEdge: number;
}

/** The nearest edge over all divisions between fast and slow; `middling` keeps to those with both in good measure. */
function bestDivision(figures: CapFigures, step: FastStep, top: number, middling: boolean): Division | null {
  const loss = (figures.upperArm - 2 * figures.bindOff - top) / 2;
  const [least, most] = middling ? [loss / 3, (2 * loss) / 3] : [2 * step, loss - 1];
  const slowest = step === 1 ? 2 : 1;
  let best: { fast: number; pairs: number; edge: number } | null = null;
  let [shortestEdge, longestEdge] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let fast = Math.max(2, Math.ceil(least / step)); fast * step <= Math.min(most, loss - 1); fast += 1) {
    const slow = loss - fast * step;
    const [fewest, mostPairs] = [slowest * slow, (figures.mostRows - ROWS_AT_TOP) / 2 - fast];
    if (mostPairs < fewest) continue;
    const around = fixedEdge(figures, step, top, fast);
    const ideal = pairsFor(figures, slow, (figures.wanted - around) / 2);
    const pairs = Math.min(mostPairs, Math.max(fewest, ideal));
    const edge = around + 2 * slowEdge(figures, slow, pairs);
    if (best === null || Math.abs(edge - figures.wanted) < Math.abs(best.edge - figures.wanted))
      best = { fast, pairs, edge };
    shortestEdge = Math.min(shortestEdge, around + 2 * slowEdge(figures, slow, fewest));
    longestEdge = Math.max(longestEdge, around + 2 * slowEdge(figures, slow, mostPairs));
  }
  if (best === null) return null;
  return { shape: shapeOf(step, top, loss, best), shortestEdge, longestEdge };
}

function shapeOf(
  step: FastStep,
  top: number,
  loss: number,
  { fast, pairs, edge }: { fast: number; pairs: number; edge: number },
): CapShape {
  const low = Math.floor(fast / 2);
  return {
    step,
    low,
    high: fast - low,
    slow: loss - fast * step,
    slowRows: 2 * pairs,
    top,
    rows: ROWS_AT_TOP + 2 * fast + 2 * pairs,
    edge,
  };
}

/** All of the edge but its slow stretches. */
function fixedEdge(f: CapFigures, step: number, top: number, fast: number): number {
  const side = f.bindOff / f.stitchesPerCm + fast * slope(f, step, 2) + ROWS_AT_TOP / f.rowsPerCm;
  return 2 * side + top / f.stitchesPerCm;
}

/** The length of one slow stretch: its intervals differ by at most two rows. */
function slowEdge(f: CapFigures, times: number, pairs: number): number {
  const short = Math.floor(pairs / times);
  const longer = pairs - short * times;
  return (times - longer) * slope(f, 1, 2 * short) + longer * slope(f, 1, 2 * short + 2);
}

/** Pairs of rows for a slow stretch of a given length, to the nearest. */
function pairsFor(f: CapFigures, times: number, length: number): number {
  const flat = 1 / f.stitchesPerCm;
  const each = length / times;
  if (each <= flat) return 0;
  const short = Math.floor((f.rowsPerCm * Math.sqrt(each * each - flat * flat)) / 2);
  const [shorter, longer] = [slope(f, 1, 2 * short), slope(f, 1, 2 * short + 2)];
  return short * times + Math.round((length - times * shorter) / (longer - shorter));
}

function slope(f: CapFigures, across: number, up: number): number {
  const [a, b] = [across / f.stitchesPerCm, up / f.rowsPerCm];
  return Math.sqrt(a * a + b * b);
}
