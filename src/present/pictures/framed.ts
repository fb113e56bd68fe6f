/** A shape to scale in a frame of title, facts, key and scale bar; the same facts make its words and characters. */
import { type Drawing, point, text } from '../draw/drawing.ts';
import { wrapText } from '../draw/font.ts';
import type { View } from '../view.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { type KeyEntry, keyOf, scaleBar } from './key.ts';
import { BODY, fileName, LEADING, MARGIN, PICTURE_WIDTH, type Picture, TITLE } from './picture.ts';
import { inCharacters, keyInCharacters } from './shape-characters.ts';
import { layToScale, type ToScale } from './to-scale.ts';
import { spoken } from './words.ts';

export interface Framed extends ToScale {
  readonly title: string;
  readonly key: readonly KeyEntry[];
  /** One sentence a line, under the drawing. */
  readonly facts: readonly string[];
  /** What is drawn, in words. */
  readonly drawn: string;
}

export function framedPicture(framed: Framed, view: View): Picture {
  return {
    name: fileName(`shape ${framed.title}`),
    kind: 'shape',
    title: framed.title,
    drawing: drawFramed(framed, view),
    alternative: spoken([`${framed.title}.`, framed.drawn, ...framed.facts].join(' ')),
    characters: (columns) => framedCharacters(framed, columns),
  };
}

const ROOM = PICTURE_WIDTH - 2 * MARGIN;

function drawFramed(framed: Framed, view: View): Drawing {
  const { title, key, facts } = framed;
  const titles = wrapText(title, ROOM, TITLE.size, 'bold');
  const laid = layToScale(framed, 26 + 21 * titles.length);
  const lines = facts.flatMap((f) => wrapText(f, ROOM, BODY.size));
  const end = laid.low + 14 + LEADING * lines.length;
  return {
    width: PICTURE_WIDTH,
    height: end + 28 + MARGIN,
    shapes: [
      ...titles.map((t, i) => text(t, point(MARGIN, 26 + 21 * i), TITLE)),
      ...laid.shapes,
      ...lines.map((l, i) => text(l, point(MARGIN, laid.low + 14 + LEADING * (i + 0.76)), BODY)),
      ...keyOf(key, point(MARGIN, end + 24)),
      ...scaleBar(laid.perCm, view.unit, point(PICTURE_WIDTH - MARGIN, end + 24), 80),
    ],
  };
}

function framedCharacters(framed: Framed, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  const { title, facts, drawn, key } = framed;
  return sheetOfCharacters([
    [...wrapColumns(title, wide), ...wrapColumns(drawn, wide)],
    inCharacters(framed, wide),
    wrapColumns(keyInCharacters(key), wide),
    facts.flatMap((f) => wrapColumns(f, wide - 2).map((l, i) => `${i === 0 ? '- ' : '  '}${l}`)),
  ]);
}
