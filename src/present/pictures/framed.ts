/** A shape drawn to scale in a frame of title, facts, key and scale bar; the same facts make its words and characters. */
import { boundsOf, type Drawing, placed, point, type Shape, text } from '../draw/drawing.ts';
import { wrapText } from '../draw/font.ts';
import type { View } from '../view.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { type KeyEntry, keyOf, scaleBar } from './key.ts';
import { BODY, fileName, LEADING, MARGIN, PICTURE_WIDTH, type Picture, SMALL, TITLE } from './picture.ts';
import { spoken } from './words.ts';

export interface Framed {
  readonly title: string;
  /** In centimetres, y downwards; texts are added by the frame. */
  readonly shapes: readonly Shape[];
  readonly key: readonly KeyEntry[];
  /** One sentence a line, under the drawing. */
  readonly facts: readonly string[];
  /** What is drawn, in words. */
  readonly drawn: string;
  /** Names under parts of the drawing: where their middle lies, in centimetres. */
  readonly names: readonly { readonly words: string; readonly x: number }[];
}

const ROOM = { width: PICTURE_WIDTH - 2 * MARGIN, height: 320 } as const;
const MOST_PER_CM = 12;

export function framedPicture(framed: Framed, view: View): Picture {
  return {
    name: fileName(framed.title),
    kind: 'shape',
    title: framed.title,
    drawing: drawFramed(framed, view),
    alternative: spoken([`${framed.title}.`, framed.drawn, ...framed.facts].join(' ')),
    characters: (columns) => framedCharacters(framed, columns),
  };
}

function drawFramed({ title, shapes, key, facts, names }: Framed, view: View): Drawing {
  const titles = wrapText(title, ROOM.width, TITLE.size, 'bold');
  const top = 26 + 21 * titles.length;
  const bounds = boundsOf(shapes);
  const perCm = Math.min(ROOM.width / bounds.width, ROOM.height / bounds.height, MOST_PER_CM);
  const left = MARGIN + (ROOM.width - bounds.width * perCm) / 2;
  const low = top + bounds.height * perCm;
  const named = low + (names.length > 0 ? LEADING + 4 : 0);
  const lines = facts.flatMap((f) => wrapText(f, ROOM.width, BODY.size));
  const end = named + 14 + LEADING * lines.length;
  return {
    width: PICTURE_WIDTH,
    height: end + 28 + MARGIN,
    shapes: [
      ...titles.map((t, i) => text(t, point(MARGIN, 26 + 21 * i), TITLE)),
      ...placed(shapes, point(left - bounds.x * perCm, top - bounds.y * perCm), perCm),
      ...names.map((n) =>
        text(n.words, point(left + (n.x - bounds.x) * perCm, low + LEADING + 2), {
          ...SMALL,
          anchor: 'middle',
        }),
      ),
      ...lines.map((l, i) => text(l, point(MARGIN, named + 14 + LEADING * (i + 0.76)), BODY)),
      ...keyOf(key, point(MARGIN, end + 24)),
      ...scaleBar(perCm, view.unit, point(PICTURE_WIDTH - MARGIN - 120, end + 24), 80),
    ],
  };
}

/** The facts alone: such shapes say little in characters. */
function framedCharacters({ title, facts, drawn }: Framed, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  return sheetOfCharacters([
    wrapColumns(title, wide),
    wrapColumns(drawn, wide),
    facts.flatMap((f) => wrapColumns(`- ${f}`, wide)),
  ]);
}
