/** Checks on a drawing as a value, before anything is rasterised. Each returns what is wrong, in words. */
import * as fontkit from 'fontkit';
import { CM_PER } from '../../src/fit/units.ts';
import type { Box, Drawing, PathShape, Point, TextShape } from '../../src/present/draw/drawing.ts';
import { fontFile, type Weight } from '../../src/present/draw/font.ts';
import { readLength } from './read-length.ts';

export function textsOf({ shapes }: Drawing): TextShape[] {
  return shapes.flatMap((s) => (s.shape === 'text' ? [s] : []));
}

export function pathsOf({ shapes }: Drawing): PathShape[] {
  return shapes.flatMap((s) => (s.shape === 'path' ? [s] : []));
}

export function pathNamed(drawing: Drawing, name: string): PathShape {
  const found = pathsOf(drawing).find((p) => p.name === name);
  if (found === undefined) throw new Error(`nothing is drawn by the name of '${name}'`);
  return found;
}

export function textNamed(drawing: Drawing, name: string): TextShape {
  const found = textsOf(drawing).find((t) => t.name === name);
  if (found === undefined) throw new Error(`no text has the name '${name}'`);
  return found;
}

/** Units of the drawing for a centimetre, from its own scale bar. */
export function scaleOf(drawing: Drawing): number {
  const words = textNamed(drawing, 'scale').text;
  const [from, to] = pathNamed(drawing, 'scale bar').points;
  return ((to?.x ?? 0) - (from?.x ?? 0)) / (readLength(words) * CM_PER[words.endsWith(' in') ? 'in' : 'cm']);
}

/** All texts but that of the scale bar, which no words repeat. */
export function saidIn(drawing: Drawing): string[] {
  return textsOf(drawing)
    .filter((t) => t.name !== 'scale')
    .map((t) => t.text);
}

/** Numbers as they are printed, with a decimal point or a fraction of a tape. */
export function numbersIn(text: string): string[] {
  return text.match(/\d+(?:\.\d+)?[⅛¼⅜½⅝¾⅞]?|[⅛¼⅜½⅝¾⅞]/g) ?? [];
}

/** All that must hold for every drawing. */
export function faultsOf(drawing: Drawing): string[] {
  return [...outside(drawing), ...overlapping(drawing), ...struckThrough(drawing), ...tooWide(drawing)];
}

function outside(drawing: Drawing): string[] {
  const { width, height } = drawing;
  const within = ({ x, y }: Point) => x >= 0 && y >= 0 && x <= width && y <= height;
  const lines = pathsOf(drawing)
    .filter((p) => !p.points.every(within))
    .map((p) => `the line '${p.name ?? p.line}' leaves the page`);
  const texts = textsOf(drawing)
    .filter(({ box: b }) => !within(b) || !within({ x: b.x + b.width, y: b.y + b.height }))
    .map((t) => `'${t.text}' leaves the page`);
  return [...lines, ...texts];
}

/** What the letters themselves take of a text's box: capitals rise 0.73 of the size, tails fall 0.24. */
function inkOf({ box, y, size }: TextShape): Box {
  return { x: box.x, width: box.width, y: y - 0.73 * size, height: 0.97 * size };
}

function overlapping(drawing: Drawing): string[] {
  const inks = textsOf(drawing)
    .map((t) => ({ text: t.text, ...inkOf(t) }))
    .sort((a, b) => a.y - b.y);
  return inks.flatMap((a, i) => {
    const found: string[] = [];
    for (const b of inks.slice(i + 1)) {
      if (b.y >= a.y + a.height) break;
      if (b.x < a.x + a.width && a.x < b.x + b.width) found.push(`'${a.text}' lies upon '${b.text}'`);
    }
    return found;
  });
}

/** A line through a text. Marks on a tape and stitches carry no texts, and a text may stand in an area of its own. */
function struckThrough(drawing: Drawing): string[] {
  const inks = textsOf(drawing).map((t) => ({ text: t.text, ...inkOf(t) }));
  return pathsOf(drawing)
    .filter((p) => p.line !== null && p.line !== 'marks')
    .flatMap((p) => {
      const points = p.closed ? [...p.points, ...p.points.slice(0, 1)] : p.points;
      return inks
        .filter((ink) => points.some((to, i) => i > 0 && crosses(points[i - 1] ?? to, to, ink)))
        .map((ink) => `the line '${p.name ?? p.line}' goes through '${ink.text}'`);
    });
}

/** Whether a segment comes into a box: the part of it within the box's slabs is not empty (Liang and Barsky, 1984). */
function crosses(from: Point, to: Point, b: Box): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [enter, leave] = [0, 1];
  const slabs = [
    [-dx, from.x - b.x],
    [dx, b.x + b.width - from.x],
    [-dy, from.y - b.y],
    [dy, b.y + b.height - from.y],
  ] as const;
  for (const [p, q] of slabs) {
    if (p === 0 && q <= 0) return false;
    if (p < 0) enter = Math.max(enter, q / p);
    if (p > 0) leave = Math.min(leave, q / p);
  }
  return enter < leave;
}

const fonts = new Map<Weight, fontkit.Font>();
const advances = new Map<string, number>();

function fontOf(weight: Weight): fontkit.Font {
  let font = fonts.get(weight);
  if (font === undefined) {
    const opened = fontkit.openSync(fontFile(weight));
    if (!('glyphForCodePoint' in opened)) throw new Error('the file holds several fonts');
    font = opened;
    fonts.set(weight, font);
  }
  return font;
}

/** Width by another reader of the same font. */
export function measured(text: string, size: number, weight: Weight): number {
  const font = fontOf(weight);
  let units = 0;
  for (const letter of text) {
    const key = `${weight}${letter}`;
    let advance = advances.get(key);
    if (advance === undefined) {
      const glyph = font.glyphForCodePoint(letter.codePointAt(0) ?? 0);
      if (glyph.id === 0) throw new Error(`the font has no '${letter}'`);
      advance = glyph.advanceWidth;
      advances.set(key, advance);
    }
    units += advance;
  }
  return (units * size) / font.unitsPerEm;
}

/** The width with kerning and ligatures, as it is rasterised. */
export function laidOut(text: string, size: number, weight: Weight): number {
  const font = fontOf(weight);
  return (font.layout(text).advanceWidth * size) / font.unitsPerEm;
}

function tooWide(drawing: Drawing): string[] {
  return textsOf(drawing)
    .filter((t) => measured(t.text, t.size, t.weight) > t.box.width + 1e-6)
    .map((t) => `'${t.text}' is wider than its box`);
}
