/** The pattern's figures for the size that is followed: from the sample sweater, or as the knitter reads them out. */
import type { Pattern, PatternSize } from '../fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../fit/sample.ts';
import type { Cm, Stitches } from '../fit/units.ts';
import type { Direction, Worked } from '../fit/words.ts';
import { type Ledger, take, takeChoice, takeLength, takeStitches } from './ledger.ts';

export interface Made {
  readonly worked: Worked;
  readonly direction: Direction;
}

export interface BodyFigures extends Made {
  readonly edge: number;
  readonly hem: Stitches;
  readonly bust: Stitches;
  readonly length: Cm;
  readonly edging: Cm;
}

export interface SleeveFigures extends Made {
  readonly edge: number;
  readonly wrist: Stitches;
  readonly upperArm: Stitches;
  /** Null where the pattern's own length was not asked for. */
  readonly length: Cm | null;
  readonly cuff: Cm;
}

/** Edge stitches of a flat piece that its seams swallow: one at each edge, common practice of the trade. */
export const SEAM_STITCHES = 2;

export function samplePattern(book: Ledger): Pattern | undefined {
  const choice = takeChoice(book, 'pattern');
  if (choice === 'sample_round') return SAMPLE_ROUND;
  return choice === 'sample_pieces' ? SAMPLE_PIECES : undefined;
}

export function sampleSize(book: Ledger): { pattern: Pattern; size: PatternSize } | undefined {
  const pattern = samplePattern(book);
  const label = take(book, 'size', 'size')?.label;
  const size = pattern?.sizes.find((s) => s.label === label);
  return pattern === undefined || size === undefined ? undefined : { pattern, size };
}

export function bodyFigures(book: Ledger): BodyFigures | undefined {
  const sample = sampleSize(book);
  if (sample !== undefined) return bodyOfSample(sample);
  const made = madeOf(takeChoice(book, 'body_made'));
  const bust = takeStitches(book, 'p_bust');
  const length = takeLength(book, 'p_body_length');
  const edging = takeLength(book, 'p_hem');
  if (made === undefined || bust === undefined || length === undefined || edging === undefined)
    return undefined;
  const hem = takeStitches(book, 'p_hem_stitches') ?? bust;
  return { ...made, edge: edgeOf(book, made), hem, bust, length, edging };
}

function bodyOfSample({ pattern, size }: { pattern: Pattern; size: PatternSize }): BodyFigures | undefined {
  const { bust, 'body cast-on': hem } = size.counts;
  const length = size.finished['body length'];
  if (bust === undefined || hem === undefined || length === undefined) return undefined;
  return {
    worked: pattern.body,
    direction: pattern.direction,
    edge: pattern.edge.body,
    hem,
    bust,
    length,
    edging: pattern.edging.hem,
  };
}

export function sleeveFigures(book: Ledger): SleeveFigures | undefined {
  const sample = sampleSize(book);
  if (sample !== undefined) return sleeveOfSample(sample);
  const made = madeOf(takeChoice(book, 'sleeve_made'));
  const wrist = takeStitches(book, 'p_wrist');
  const upperArm = takeStitches(book, 'p_upper_arm');
  const cuff = takeLength(book, 'p_cuff');
  if (made === undefined || wrist === undefined || upperArm === undefined || cuff === undefined)
    return undefined;
  return { ...made, edge: edgeOf(book, made), wrist, upperArm, length: null, cuff };
}

function sleeveOfSample({
  pattern,
  size,
}: {
  pattern: Pattern;
  size: PatternSize;
}): SleeveFigures | undefined {
  const { wrist, 'upper arm': upperArm } = size.counts;
  const length = size.finished['sleeve length'] ?? null;
  if (wrist === undefined || upperArm === undefined) return undefined;
  return {
    worked: pattern.sleeves,
    direction: pattern.direction,
    edge: pattern.edge.sleeves,
    wrist,
    upperArm,
    length,
    cuff: pattern.edging.cuff,
  };
}

const MADE: Readonly<Record<string, Made>> = {
  up_round: { worked: 'round', direction: 'up' },
  up_flat: { worked: 'flat', direction: 'up' },
  down_round: { worked: 'round', direction: 'down' },
  down_flat: { worked: 'flat', direction: 'down' },
};

export function madeOf(choice: string | undefined): Made | undefined {
  return choice === undefined ? undefined : MADE[choice];
}

/** A flat piece of the knitter's own pattern: the edge stitches are not asked for, and are entered as assumed. */
export function edgeOf(book: Ledger, made: Pick<Made, 'worked'>): number {
  if (made.worked === 'round') return 0;
  const question = 'Edge stitches';
  if (!book.assumed.some((a) => a.question === question)) {
    book.assumed.push({
      question,
      used: `${SEAM_STITCHES} stitches a piece`,
      effect: 'One stitch at each edge goes into the seam. Without seams the piece comes out wider by them.',
    });
  }
  return SEAM_STITCHES;
}
