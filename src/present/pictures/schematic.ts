/**
 * The schematic of a piece, to scale as it lies flat: the pattern's outline dashed, the knitter's own solid over it,
 * and beside it a column with the count and width at each level and the rows between them.
 *
 *   title, length
 *     ________ ......... underarm  220 sts       the column is settled so that no label lies on another;
 *    |        |           99.2 cm around         each is led to its level
 *     \      /            51 rounds, 16.9 cm
 *   key, scale bar
 */
import type { Level, Piece } from '../../fit/outline.ts';
import type { PieceChange, TurnedWedge } from '../../fit/plan.ts';
import {
  area,
  boundsOf,
  type Drawing,
  line,
  named,
  type Point,
  placed,
  point,
  type Shape,
  text,
} from '../draw/drawing.ts';
import { settle } from '../draw/settle.ts';
import type { View } from '../view.ts';
import { keyOf, scaleBar } from './key.ts';
import { BODY, LEADING, MARGIN, PICTURE_WIDTH, SMALL, STRONG, TITLE } from './picture.ts';
import { flatWidth, type LevelFigures, type PieceFigures, rowsOf } from './piece-figures.ts';
import type { Scale } from './scale.ts';
import { lengthWords, levelWords, liesFlat, sectionWords } from './schematic-words.ts';
import { wedgeOnPiece } from './wedge-on-piece.ts';
import { pieceTitle } from './words.ts';

/** The column of labels begins here; the piece has the room to the left of it. */
const COLUMN = 238;
/** Where a leader bends from its level towards its label. */
const BEND = COLUMN - 26;
const ROOM = { width: BEND - 8 - MARGIN, height: 400 } as const;
/** No drawing has more units to the centimetre: a narrow band stays a band. */
const MOST_PER_CM = 12;
const TOP = 84;

export function drawSchematic(figures: PieceFigures, wedges: readonly TurnedWedge[], view: View): Drawing {
  const { change } = figures;
  const scale = scaleOf(change);
  const laid = wedges.flatMap((wedge) => wedgeOnPiece(wedge, change, scale));
  const body = [
    ...outlines(change, scale),
    ...darts(change, scale),
    ...laid,
    ...column(figures, scale, view),
  ];
  const bounds = boundsOf(body);
  const moved = placed(body, point(0, TOP - bounds.y));
  const low = TOP + bounds.height + 34;
  const shapes = [...heading(figures, view), ...moved, ...key(change, laid.length > 0, scale, low, view)];
  return { width: PICTURE_WIDTH, height: low + MARGIN, shapes };
}

function scaleOf(change: PieceChange): Scale {
  const { before, after, gauge } = change;
  const pieces = before === null ? [after] : [before, after];
  const widest = Math.max(...pieces.flatMap((p) => p.levels.map((l) => flatWidth(l.stitches, change))));
  const longest = Math.max(...pieces.map(rowsOf)) / gauge.rowsPerCm;
  const perCm = Math.min(ROOM.width / Math.max(widest, 1), ROOM.height / Math.max(longest, 1), MOST_PER_CM);
  const perRow = perCm / gauge.rowsPerCm;
  const up = after.direction === 'up';
  return { perCm, middle: MARGIN + ROOM.width / 2, y: (row) => (up ? -row : row) * perRow };
}

function outlines(change: PieceChange, scale: Scale): Shape[] {
  const { before, after } = change;
  const yours = outline(after, change, scale);
  return [
    area('fabric', null, yours),
    ...after.levels.slice(1, -1).map((l) => across(l, change, scale)),
    ...(before === null ? [] : [named('pattern', area(null, 'pattern', outline(before, change, scale)))]),
    named('yours', area(null, 'yours', yours)),
  ];
}

/** Its dart lines, or in the round those of front or back, on either side of the middle. */
function darts({ darts: points = [], gauge }: PieceChange, scale: Scale): Shape[] {
  if (points.length === 0) return [];
  return [-1, 1].map((side) => {
    const x = (stitches: number) => scale.middle + (side * stitches * scale.perCm) / gauge.stitchesPerCm;
    return named('dart line', line('second', ...points.map((p) => point(x(p.fromMiddle), scale.y(p.row)))));
  });
}

/** A level seen across the piece. */
function across(level: Level, change: PieceChange, scale: Scale): Shape {
  const half = (flatWidth(level.stitches, change) * scale.perCm) / 2;
  const y = scale.y(level.row);
  return line('leader', point(scale.middle - half, y), point(scale.middle + half, y));
}

function outline(piece: Piece, change: PieceChange, scale: Scale): Point[] {
  const side = (sign: 1 | -1) =>
    piece.levels.map((l) =>
      point(scale.middle + (sign * flatWidth(l.stitches, change) * scale.perCm) / 2, scale.y(l.row)),
    );
  return [...side(1), ...side(-1).reverse()];
}

/** Labels of the levels, and between them the rows from one to the next, each with its leader. */
function column(figures: PieceFigures, scale: Scale, view: View): Shape[] {
  const { levels, sections, change } = figures;
  const entries = levels.flatMap((level, i) => {
    const middle = scale.y(level.row + level.plain / 2);
    const next = levels[i + 1];
    const entry = { middle, lines: labelOf(level, figures, view), edge: edgeOf(level, figures, scale) };
    if (next === undefined || sections[i]?.rows === 0) return [entry];
    const between = (scale.y(level.row + level.plain) + scale.y(next.row)) / 2;
    const words = sections[i] === undefined ? '' : sectionWords(sections[i], change.gauge.worked, view);
    return [entry, { middle: between, lines: [text(`↕ ${words}`, point(0, 0), SMALL)], edge: null }];
  });
  const downwards = change.after.direction === 'up' ? entries.reverse() : entries;
  const wanted = downwards.map((e) => ({ middle: e.middle, length: LEADING * e.lines.length }));
  const middles = settle(wanted, 5);
  return downwards.flatMap((entry, i) => {
    const top = (middles[i] ?? 0) - (LEADING * entry.lines.length) / 2;
    const lines = entry.lines.flatMap((l, k) => placed([l], point(COLUMN, top + LEADING * (k + 0.76))));
    return [...(entry.edge === null ? [] : [leader(entry.edge, top + LEADING / 2)]), ...lines];
  });
}

/** To the middle of the label's first line. */
function leader(edge: Point, y: number): Shape {
  return line('leader', edge, point(BEND, edge.y), point(COLUMN - 5, y));
}

/** The right end of a level, where its leader begins. */
function edgeOf(level: LevelFigures, { change }: PieceFigures, scale: Scale): Point {
  const half = (flatWidth(level.stitches, change) * scale.perCm) / 2;
  return point(scale.middle + half, scale.y(level.row + level.plain / 2));
}

function labelOf(level: LevelFigures, { change }: PieceFigures, view: View): Shape[] {
  const words = levelWords(level, change.gauge.worked, view);
  const at = point(0, 0);
  const ink = level.changed ? ('yours' as const) : ('text' as const);
  return [
    text(words.count, at, { ...STRONG, ink, name: `count at ${level.name}` }),
    text(words.width, at, { ...BODY, ink, name: `width at ${level.name}` }),
    ...(words.plain === null ? [] : [text(words.plain, at, SMALL)]),
    ...(words.pattern === null
      ? []
      : [text(words.pattern, at, { ...SMALL, ink: level.changed ? 'pattern' : 'quiet' })]),
  ];
}

function heading(figures: PieceFigures, view: View): Shape[] {
  const { name, worked } = figures.change.after;
  return [
    text(pieceTitle(name, worked), point(MARGIN, 26), TITLE),
    text(lengthWords(figures, view), point(MARGIN, 46), SMALL),
    text(`Drawn to scale ${liesFlat(worked)}`, point(MARGIN, 46 + LEADING), SMALL),
  ];
}

function key(change: PieceChange, wedged: boolean, scale: Scale, y: number, view: View): Shape[] {
  const entries = [
    { line: 'yours' as const, words: 'yours' },
    ...(change.before === null ? [] : [{ line: 'pattern' as const, words: 'the pattern' }]),
    ...(wedged ? [{ line: 'second' as const, words: 'short rows' }] : []),
    ...(change.darts === undefined ? [] : [{ line: 'second' as const, words: 'dart lines' }]),
  ];
  return [
    ...keyOf(entries, point(MARGIN, y)),
    ...scaleBar(scale.perCm, view.unit, point(PICTURE_WIDTH - MARGIN, y), entries.length > 2 ? 60 : 112),
  ];
}
