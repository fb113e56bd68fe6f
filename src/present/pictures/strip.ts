/**
 * The shaping strip: a ladder that is climbed while knitting. Each rung is a shaping row with a box to tick, its number
 * and the count after it; the plain rows lie between the rungs. The stepped edge shows where stitches come or go.
 */
import { area, box, type Drawing, line, named, point, rectangle, type Shape, text } from '../draw/drawing.ts';
import { wrapText } from '../draw/font.ts';
import { BODY, LEADING, MARGIN, PICTURE_WIDTH, SMALL, STRONG, TITLE } from './picture.ts';
import { endWords, partsOf, type Rung, type StripFigures } from './strip-figures.ts';
import { rowWord } from './words.ts';

/** With more rungs than this a second column is begun, and the columns grow together. */
const MOST_IN_ONE = 8;
/** From rung to rung; more where rungs carry notes. */
const PITCH = { plain: 34, noted: 60 } as const;
const BOX = 13;

/** Where things lie across a column. */
interface Column {
  readonly left: number;
  readonly stairs: number;
  readonly width: number;
}

export function drawStrip(strip: StripFigures): Drawing {
  const { title, words, below, header, pitch } = headOf(strip);
  const count = strip.rungs.length;
  const perColumn = count > MOST_IN_ONE ? Math.ceil(count / 2) : count;
  const foot = header + 16 + pitch * (perColumn + 1);
  const shapes = [
    ...title.map((t, i) => text(t, point(MARGIN, 26 + 21 * i), TITLE)),
    ...words.map((w, i) => text(w, point(MARGIN, below + 4 + LEADING * (i + 1)), SMALL)),
    text('read upwards ↑', point(MARGIN, header - LEADING), SMALL),
    ...(count > MOST_IN_ONE ? [0, 1] : [0]).flatMap((nth) =>
      ladder(strip, nth, { perColumn, pitch, header, foot }),
    ),
  ];
  return { width: PICTURE_WIDTH, height: foot + FOOT, shapes };
}

/** Below the ladder. */
const FOOT = 30;

/** The strip in parts of which none is drawn taller; a paper has an end. */
export function splitStrip(strip: StripFigures, tallest: number): StripFigures[] {
  // With room for the title that a part has.
  const { header, pitch } = headOf({ ...strip, title: `${strip.title}, part 9 of 9` });
  const perColumn = Math.floor((tallest - header - 16 - FOOT) / pitch) - 1;
  return partsOf(strip, 2 * Math.max(MOST_IN_ONE, perColumn));
}

/** Title and words in lines, and where they end. */
function headOf(strip: StripFigures) {
  const room = PICTURE_WIDTH - 2 * MARGIN;
  const title = wrapText(strip.title, room, TITLE.size, 'bold');
  const words = wrapText(strip.words, room, SMALL.size);
  const below = 26 + 21 * (title.length - 1);
  const pitch = strip.rungs.some((r) => r.note !== null) ? PITCH.noted : PITCH.plain;
  return { title, words, below, header: below + LEADING * words.length + 34 + LEADING, pitch };
}

/** What the columns have in common. */
interface Frame {
  readonly perColumn: number;
  readonly pitch: number;
  readonly header: number;
  readonly foot: number;
}

/** One column of rungs with a line at its foot and one at its head. */
function ladder(strip: StripFigures, nth: number, { perColumn, pitch, header, foot }: Frame): Shape[] {
  const one = strip.rungs.length <= MOST_IN_ONE;
  const noted = strip.rungs.some((r) => r.note !== null);
  const stairs = one ? 160 : noted ? 40 : 66;
  const column: Column = { left: MARGIN + nth * 202, stairs, width: one ? 392 : 190 };
  const rungs = strip.rungs.slice(nth * perColumn, (nth + 1) * perColumn);
  const y = (k: number) => foot - pitch * (k + 1);
  const x = numbersAt(column);
  const last = (nth + 1) * perColumn >= strip.rungs.length;
  const before = strip.rungs[nth * perColumn - 1]?.after ?? strip.from;
  return [
    ...steppedEdge(strip, rungs, column, y, foot),
    text(rowWord(strip.worked, 1), point(x, header), SMALL),
    text('then', point(column.left + column.width, header), { ...SMALL, anchor: 'end' }),
    text(`${nth === 0 ? 'start' : 'go on'}: ${before} sts`, point(x, foot + 14), SMALL),
    ...rungs.flatMap((rung, k) => rungShapes(rung, column, y(k))),
    ...(last ? [text(endWords(strip), point(x, y(rungs.length) + 16), SMALL)] : []),
  ];
}

function numbersAt({ left, stairs }: Column): number {
  return left + BOX + 8 + stairs + 10;
}

function rungShapes(rung: Rung, column: Column, y: number): Shape[] {
  const x = numbersAt(column);
  const right = column.left + column.width;
  return [
    named('tick', rectangle('ground', 'tick', box(column.left, y - BOX / 2, BOX, BOX))),
    text(String(rung.row), point(x, y + 5), { ...STRONG, name: 'row' }),
    text(`${rung.after} sts`, point(right, y + 5), { ...BODY, anchor: 'end', name: 'after' }),
    ...[rung.note, rung.plainBefore === 0 ? null : `${rung.plainBefore} plain`]
      .filter((words) => words !== null)
      .map((words, i) => text(words, point(x, y + 5 + LEADING * (i + 1)), SMALL)),
  ];
}

/** The edge of the fabric, one step at each rung; the width of a step is not to scale. */
function steppedEdge(
  strip: StripFigures,
  rungs: readonly Rung[],
  { left, stairs: room }: Column,
  y: (k: number) => number,
  foot: number,
): Shape[] {
  const step = (room - 14) / rungs.length;
  const grows = (strip.rungs.at(-1)?.after ?? 0) > strip.from;
  const start = left + BOX + 8;
  const at = (k: number) => start + 14 + step * (grows ? k : rungs.length - k);
  const head = y(rungs.length) + 10;
  const edge = [
    point(at(0), foot),
    ...rungs.flatMap((_, k) => [point(at(k), y(k)), point(at(k + 1), y(k))]),
    point(at(rungs.length), head),
  ];
  const fabric = [point(start, foot), ...edge, point(start, head)];
  return [area('fabric', null, fabric), named('edge', line('yours', ...edge))];
}
