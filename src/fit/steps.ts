/** Pieces from which the steps of a plan are put together. */
import { type Gauge, rangeOf } from './gauge.ts';
import type { Piece } from './outline.ts';
import {
  type Finished,
  type Instruction,
  type Phrase,
  type PieceChange,
  phrase,
  type ShapedAt,
  type Step,
} from './plan.ts';
import type { Alternative, Spacing } from './spacing.ts';
import { type Cm, cm, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** A step with nothing said but where it lies; the rest is filled in. */
export function step(
  piece: Step['piece'],
  where: Phrase,
  parts: Partial<Omit<Step, 'piece' | 'where'>>,
): Step {
  return {
    piece,
    where,
    worked: null,
    pattern: null,
    instead: [],
    check: null,
    notes: [],
    workings: [],
    ...parts,
  };
}

export function say(said: Phrase): Instruction {
  return { do: 'say', phrase: said };
}

/** Width around of a count at the knitter's gauge, edge stitches left out. `pieces` of this count go round. */
export function widthLine(
  place: string,
  count: number,
  gauge: Gauge,
  edge: number,
  pieces: 1 | 2 = 1,
): WorkingLine {
  return workOut(
    `width at the ${place}`,
    edge === 0 ? (pieces === 1 ? 'a / b' : 'd * a / b') : pieces === 1 ? '(a - c) / b' : 'd * (a - c) / b',
    {
      ...(pieces === 1 ? {} : { d: quantity('pieces around', pieces, 'times') }),
      a: quantity('stitches', count, 'stitches'),
      ...(edge === 0 ? {} : { c: quantity('edge stitches', edge, 'stitches') }),
      b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
    },
    { unit: 'cm' },
  );
}

/** Height of so many rows at the knitter's gauge. */
export function heightLine(what: string, count: number, gauge: Gauge): WorkingLine {
  return workOut(
    what,
    'a / b',
    { a: quantity('rows', count, 'rows'), b: quantity('rows', gauge.rows.perCm, 'rows/cm') },
    { unit: 'cm' },
  );
}

export function checkWidth(line: WorkingLine, around: boolean): Phrase {
  return phrase(around ? 'check: width around' : 'check: width', { width: line.result });
}

/** The edging; nothing where it has no rows. */
export function edging(count: number, on: Stitches, depth: Cm): Instruction[] {
  return count === 0 ? [] : [{ do: 'work edging', rows: rows(count), length: depth, stitches: on }];
}

export function plain(count: number, on: Stitches, gauge: Gauge): Instruction {
  return {
    do: 'work plain',
    rows: rows(count),
    length: cm(count / gauge.rows.perCm),
    stitches: stitches(on),
  };
}

/** The shaping itself; or, where it cannot be done, nothing, and the reason with its ways out among the notes. */
export function shaping(
  spacing: Spacing,
  at: ShapedAt,
): { instead: Instruction[]; notes: Phrase[]; workings: WorkingLine[] } {
  if (spacing.kind === 'spaced')
    return { instead: [{ do: 'shape', spaced: spacing, at }], notes: [], workings: [] };
  const needed = spacing.kind === 'too few rows' ? spacing.needed : spacing.change;
  const room = spacing.kind === 'too few rows' ? spacing.available : spacing.perRow;
  const counts: WorkingLine = workOut(
    'what is lacking',
    'a - b',
    {
      a: quantity('shaping rows needed', needed, 'times'),
      b: quantity('rows that may carry them', room, 'times'),
    },
    { unit: 'times' },
  );
  return {
    instead: [],
    notes: [
      phrase('note: cannot shape in these rows', {
        needed: quantity('shaping rows', needed, 'times'),
        room: quantity('rows', room, 'times'),
      }),
      ...spacing.alternatives.map(wayOut),
    ],
    workings: [counts, ...spacing.alternatives.flatMap((a) => a.spaced.workings)],
  };
}

function wayOut({ way, spaced, width }: Alternative): Phrase {
  const gaps = {
    times: quantity('shaping rows', spaced.shaping.length, 'times'),
    change: quantity('stitches a shaping row', spaced.perRow, 'stitches'),
    rows: quantity('rows', spaced.rows, 'rows'),
    end: quantity('stitches at the end', spaced.to, 'stitches'),
    ...(width === undefined ? {} : { width: quantity('width', width, 'cm') }),
  };
  switch (way) {
    case 'more stitches a row':
      return phrase('note: way out, more stitches a row', gaps);
    case 'wrong-side rows too':
      return phrase('note: way out, wrong side too', gaps);
    case 'longer section':
      return phrase('note: way out, longer', gaps);
    case 'count within reach':
    case 'nearest count':
      return phrase('note: way out, count within reach', gaps);
    default:
      return way satisfies never;
  }
}

/** A finished width with the range that the swatch allows. */
export function finishedWidth(
  name: string,
  pattern: Cm | null,
  count: number,
  gauge: Gauge,
  pieces: 1 | 2,
  edge: number,
): Finished {
  const one = rangeOf(count - edge, gauge.stitches);
  return {
    name,
    pattern,
    range: { low: cm(one.low * pieces), expected: cm(one.expected * pieces), high: cm(one.high * pieces) },
  };
}

export function finishedLength(name: string, pattern: Cm | null, count: number, gauge: Gauge): Finished {
  return { name, pattern, range: rangeOf(count, gauge.rows) };
}

export function pieceChange(before: Piece | null, after: Piece, gauge: Gauge): PieceChange {
  return {
    before,
    after,
    gauge: { stitchesPerCm: gauge.stitches.perCm, rowsPerCm: gauge.rows.perCm, worked: gauge.worked },
  };
}
