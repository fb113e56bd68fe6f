/**
 * A body in two pieces that differ: darts in the back take the whole waist, the front is knitted as if there were none.
 *
 *   waist wanted − width of the front in that row = width of the back
 */
import { countAfterRow } from './body-count.ts';
import {
  type BodyAsk,
  type BodyCannot,
  type BodyShaping,
  bodyOutside,
  perBodyRow,
  shapeBody,
  type WaistAsk,
} from './body-shaping.ts';
import { rowAt } from './heights.ts';
import type { Piece } from './outline.ts';
import { widthLine } from './steps.ts';
import { cm, type Stitches, stitches as stitchesOf } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Of flat pieces. */
export type PiecesAsk = BodyAsk & { readonly waist: WaistAsk };

export interface BodyPieces {
  readonly kind: 'pieces';
  readonly back: BodyShaping;
  readonly front: BodyShaping;
  readonly atWaist: FrontAtWaist;
}

/** The front in the row at the height of the waist. */
export interface FrontAtWaist {
  readonly stitches: Stitches;
  readonly width: WorkingLine;
  /** From the height of the waist to the width that is left to the back. */
  readonly workings: readonly WorkingLine[];
}

/** A section of one of the pieces has fewer rows that may carry shaping than it needs. */
export interface PiecesTooShort {
  readonly kind: 'cannot';
  readonly why: 'too few rows';
  readonly needed: number;
  readonly available: number;
}

/** Back and front have the same rows; the front keeps the pattern's counts, its hem moved by one where it is odd. */
export function shapePieces(ask: PiecesAsk): BodyPieces | BodyCannot | PiecesTooShort {
  const outside = bodyOutside(ask);
  if (outside !== undefined) return outside;
  const front = shapeBody({ ...ask, lines: 'sides', waist: null, hemMoves: true });
  if (front.kind === 'cannot') return front;
  const narrow = tooShort(front);
  if (narrow !== undefined) return narrow;
  const atWaist = frontAtWaist(ask, front);
  const width = cm(atWaist.width.result.value);
  const back = shapeBody({ ...ask, lines: 'back darts', waist: { ...ask.waist, front: width } });
  if (back.kind === 'cannot') return back;
  const { before, after } = front;
  return (
    tooShort(back) ?? {
      kind: 'pieces',
      back,
      front: { ...front, before: ofFront(before), after: ofFront(after) },
      atWaist,
    }
  );
}

function ofFront(piece: Piece): Piece {
  return { ...piece, name: 'front' };
}

function tooShort({ sections }: BodyShaping): PiecesTooShort | undefined {
  for (const { spacing } of sections)
    if (spacing?.kind === 'too few rows')
      return { kind: 'cannot', why: 'too few rows', needed: spacing.needed, available: spacing.available };
  return undefined;
}

/** Throws where the waist lies outside the piece. */
function frontAtWaist(
  { gauge, edge, direction, length, waist }: PiecesAsk,
  front: BodyShaping,
): FrontAtWaist {
  const height = direction === 'up' ? cm(length - waist.belowUnderarm) : waist.belowUnderarm;
  const row = rowAt('waist', height, gauge);
  const counted = stitchesIn(row, front);
  const stitches = stitchesOf(counted.result.value);
  const width = widthLine('waist of the front', stitches, gauge, edge);
  const left = workOut(
    'width at the waist that is left to the back',
    'a - b',
    { a: quantity('finished waist', waist.around, 'cm'), b: width.result },
    { unit: 'cm' },
  );
  return { stitches, width, workings: [row, counted, width, left] };
}

function stitchesIn(row: WorkingLine, front: BodyShaping): WorkingLine {
  const first = front.sections[0]?.from;
  const there = countAfterRow(front, row.result.value);
  if (first === undefined || there === undefined) throw new RangeError('the waist lies outside the front');
  const perRow = perBodyRow(front.ask.gauge);
  const given = {
    a: quantity('stitches of the front at its first row', first, 'stitches'),
    b: quantity('stitches a shaping row', perRow, 'stitches'),
    c: quantity('shaping rows of the front up to the waist', Math.abs(there - first) / perRow, 'times'),
  };
  const straight = front.sections.every(({ from, to }) => from === to);
  return straight
    ? workOut(COUNTED, 'a', { a: given.a }, { unit: 'stitches' })
    : workOut(COUNTED, there < first ? 'a - b * c' : 'a + b * c', given, { unit: 'stitches' });
}

const COUNTED = 'stitches of the front at the waist';
