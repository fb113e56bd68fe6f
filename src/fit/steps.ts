/** Pieces from which the steps of a plan are put together. */
import { type Gauge, type Rate, rangeAround } from './gauge.ts';
import type { Piece } from './outline.ts';
import type { PhraseName } from './phrases.ts';
import {
  type Finished,
  type Instruction,
  type Phrase,
  type PieceChange,
  PLACES,
  phrase,
  type ShapedAt,
  type Step,
} from './plan.ts';
import type { Alternative, NoMultiple, Spaced, Spacing, TooFewRows } from './spacing.ts';
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
    shaped: null,
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
  gauge: Pick<Gauge, 'stitches'>,
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

/** What the pattern does between two counts: it changes, or goes straight on. */
export function fromTo(from: Stitches, to: Stitches): Phrase {
  const [a, b] = [quantity('stitches', from, 'stitches'), quantity('stitches', to, 'stitches')];
  return from === to
    ? phrase('pattern: straight on a count', { count: a })
    : phrase('pattern: from a count to a count', { from: a, to: b });
}

/** The edging; nothing where it has no rows. */
export function edging(count: number, on: Stitches, gauge: Gauge): Instruction[] {
  const length = cm(count / gauge.rows.perCm);
  return count === 0 ? [] : [{ do: 'work edging', rows: rows(count), length, stitches: on }];
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
  gauge: Gauge,
  edge: number,
): { instead: Instruction[]; notes: Phrase[]; workings: readonly WorkingLine[] } {
  if (spacing.kind === 'spaced') {
    const instead: Instruction[] = [{ do: 'shape', spaced: spacing, at }];
    return { instead, notes: [], workings: shapeLines(spacing, at) };
  }
  const { why, ways, workings } = noSpacing(spacing, (count) =>
    widthLine('end of the section', count, gauge, edge),
  );
  return { instead: [], notes: [why, ...ways], workings };
}

/** Why a section cannot be shaped as asked, and the ways out, with their widths where a gauge is known. */
export function noSpacing(
  spacing: NoMultiple | TooFewRows,
  width: ((count: Stitches) => WorkingLine) | null,
): { why: Phrase; ways: Phrase[]; workings: WorkingLine[] } {
  const why = spacing.kind === 'too few rows' ? tooFew(spacing) : undivided(spacing);
  const ways = spacing.alternatives.map((a) => wayOut(a, width));
  return {
    why: why.note,
    ways: ways.map((w) => w.note),
    workings: [why.working, ...ways.flatMap((w) => w.workings)],
  };
}

/** The workings of a shape instruction. */
export function shapeLines(spaced: Spaced, at: ShapedAt): WorkingLine[] {
  return [...spaced.workings, ...atEachPlace(spaced, at)];
}

/** Where the spacing's own sums stand elsewhere. */
export function atEachPlace(spaced: Spaced, at: ShapedAt): WorkingLine[] {
  if (spaced.shaping.length === 0) return [];
  const given = {
    a: quantity('stitches a shaping row', spaced.perRow, 'stitches'),
    b: quantity('places where it shapes', PLACES[at], 'times'),
  };
  return [workOut('stitches at each place', 'a / b', given, { unit: 'stitches' })];
}

function tooFew({ needed, available }: TooFewRows): { note: Phrase; working: WorkingLine } {
  const given = {
    a: quantity('shaping rows needed', needed, 'times'),
    b: quantity('rows that may carry them', available, 'times'),
  };
  const note = phrase('note: cannot shape in these rows', { needed: given.a, room: given.b });
  return { note, working: workOut('rows that are lacking', 'a - b', given, { unit: 'times' }) };
}

function undivided({ change, perRow }: NoMultiple): { note: Phrase; working: WorkingLine } {
  const given = {
    a: quantity('stitches to change', change, 'stitches'),
    b: quantity('stitches a shaping row', perRow, 'stitches'),
  };
  const note = phrase('note: stitches do not divide', { change: given.a, perRow: given.b });
  return { note, working: workOut('shaping rows that this would need', 'a / b', given, { unit: 'ratio' }) };
}

function wayOut(
  { way, spaced }: Alternative,
  widthOf: ((count: Stitches) => WorkingLine) | null,
): { note: Phrase; workings: WorkingLine[] } {
  const width = widthOf?.(spaced.to);
  const gaps = {
    times: quantity('shaping rows', spaced.shaping.length, 'times'),
    change: quantity('stitches a shaping row', spaced.perRow, 'stitches'),
    rows: quantity('rows', spaced.rows, 'rows'),
    end: quantity('stitches at the end', spaced.to, 'stitches'),
  };
  if (width === undefined) return { note: phrase(WAYS_OUT[way].bare, gaps), workings: [...spaced.workings] };
  return {
    note: phrase(WAYS_OUT[way].wide, { ...gaps, width: width.result }),
    workings: [width, ...spaced.workings],
  };
}

const COUNT_ALONE = {
  wide: 'note: way out, count within reach',
  bare: 'note: way out, count alone',
} as const;

/** By whether the width of the count at the end is known. */
const WAYS_OUT: Readonly<Record<Alternative['way'], Readonly<Record<'wide' | 'bare', PhraseName>>>> = {
  'more stitches a row': both('note: way out, more stitches a row'),
  'wrong-side rows too': both('note: way out, wrong side too'),
  'longer section': both('note: way out, longer'),
  'count within reach': COUNT_ALONE,
  'nearest count': COUNT_ALONE,
};

function both(name: PhraseName) {
  return { wide: name, bare: name };
}

/** A finished width around, with the range that the swatch allows. `pieces` of this count go round. */
export function finishedWidth(
  name: string,
  theirs: number | null,
  count: number,
  gauge: Pick<Gauge, 'stitches'>,
  pieces: 1 | 2,
  edge: number,
): Finished {
  const width = widthLine(name, count, gauge, edge, pieces);
  const pattern =
    theirs === null ? null : widthLine(`${name} of the pattern's count`, theirs, gauge, edge, pieces);
  return finishedFrom(name, width, { rate: gauge.stitches, hangsOn: 'stitch gauge', worked: null }, pattern);
}

/** A finished length; `theirs` is the pattern's own. */
export function finishedLength(name: string, theirs: Cm | null, count: number, gauge: Gauge): Finished {
  const pattern =
    theirs === null
      ? null
      : workOut(`${name}, as printed`, 'a', { a: quantity('length', theirs, 'cm') }, { unit: 'cm' });
  const counted = { rate: gauge.rows, hangsOn: 'row gauge', worked: gauge.worked } as const;
  return finishedFrom(name, heightLine(name, count, gauge), counted, pattern);
}

/** From the width that is worked out; `pattern` is the pattern's own. */
export function finishedFrom(
  name: string,
  expected: WorkingLine,
  { rate, hangsOn, worked }: Pick<Finished, 'hangsOn' | 'worked'> & { readonly rate: Rate },
  pattern: WorkingLine | null,
): Finished {
  const range = rangeAround(cm(expected.result.value), rate);
  const error = quantity('two standard errors', range.high - range.expected, 'cm');
  const given = { a: expected.result, b: error };
  const low = workOut(`${name}, at least`, 'a - b', given, { unit: 'cm' });
  const high = workOut(`${name}, at most`, 'a + b', given, { unit: 'cm' });
  const sure = range.low === range.high;
  return {
    name,
    pattern: pattern === null ? null : cm(pattern.result.value),
    range,
    hangsOn: sure ? null : hangsOn,
    worked,
    workings: [expected, ...(sure ? [] : [low, high]), ...(pattern === null ? [] : [pattern])],
  };
}

export function pieceChange(before: Piece | null, after: Piece, gauge: Gauge, edge: number): PieceChange {
  return {
    before,
    after,
    gauge: { stitchesPerCm: gauge.stitches.perCm, rowsPerCm: gauge.rows.perCm, worked: gauge.worked },
    edge,
  };
}
