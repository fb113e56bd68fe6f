/**
 * How wide letters are, read from the font files themselves, so that a label's room is known before it is drawn.
 * DejaVu Sans Condensed, under the open licence that comes with it (Bitstream Vera and Arev, changes in the public
 * domain). Kerning is left out: it only draws letters together, so no text comes out wider than told here.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

export const WEIGHTS = ['regular', 'bold'] as const;
export type Weight = (typeof WEIGHTS)[number];

export const FONT_FAMILY = 'DejaVu Sans Condensed';

const FILES: Readonly<Record<Weight, string>> = {
  regular: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  bold: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf',
};

/** The path of the face's file where it is installed. */
export function fontFile(weight: Weight): string {
  return createRequire(import.meta.url).resolve(FILES[weight]);
}

/** Above and below the baseline, in sizes of the type: as far as any letter of a Latin text reaches. */
export const ASCENT = 0.93;
export const DESCENT = 0.24;

interface Face {
  readonly unitsPerEm: number;
  readonly advanceOf: (codePoint: number) => number | undefined;
}

const faces = new Map<Weight, Face>();

function faceOf(weight: Weight): Face {
  let face = faces.get(weight);
  if (face === undefined) {
    face = readFace(readFileSync(fontFile(weight)));
    faces.set(weight, face);
  }
  return face;
}

/** The width of a text of one line, in the unit of its size. */
export function textWidth(text: string, size: number, weight: Weight = 'regular'): number {
  const { unitsPerEm, advanceOf } = faceOf(weight);
  let units = 0;
  for (const letter of text) units += advanceOf(letter.codePointAt(0) ?? 0) ?? 0;
  return (units * size) / unitsPerEm;
}

/** The text without what the font cannot draw: pictures of emotions, foreign scripts, control characters. */
export function drawable(text: string): string {
  const { advanceOf } = faceOf('regular');
  const kept = [...text.normalize('NFC')].filter((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return code >= 32 && (advanceOf(code) ?? 0) > 0;
  });
  return kept.join('').replace(/\s+/g, ' ').trim();
}

/** The text, or as much of it as fits into `width` with an ellipsis. */
export function shortened(text: string, width: number, size: number, weight: Weight = 'regular'): string {
  if (textWidth(text, size, weight) <= width) return text;
  let kept = [...text];
  while (kept.length > 0 && textWidth(`${kept.join('')}…`, size, weight) > width) kept = kept.slice(0, -1);
  return `${kept.join('').trimEnd()}…`;
}

/** A space, but not that between a figure and its unit. */
const BREAKS = /(?<!\d) | (?!(?:sts?|stitch(?:es)?|rows?|rounds?|times|cm|in|m|g)\b)/;

/**
 * Lines of at most `width`, broken at spaces, between a figure and its unit only where both are wider together; a single word
 * that is wider is broken between letters.
 */
export function wrapText(text: string, width: number, size: number, weight: Weight = 'regular'): string[] {
  const lines: string[] = [];
  const blank = textWidth(' ', size, weight);
  let [line, long] = ['', 0];
  const words = text.split(BREAKS).flatMap((w) => (textWidth(w, size, weight) > width ? w.split(' ') : [w]));
  for (const word of words.flatMap((w) => broken(w, width, size, weight))) {
    const wide = textWidth(word, size, weight);
    if (line !== '' && long + blank + wide > width) {
      lines.push(line);
      [line, long] = [word, wide];
    } else if (line === '') [line, long] = [word, wide];
    else [line, long] = [`${line} ${word}`, long + blank + wide];
  }
  return [...lines, line];
}

function broken(word: string, width: number, size: number, weight: Weight): string[] {
  if (textWidth(word, size, weight) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && textWidth(part + letter, size, weight) > width) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
}

/** Reads a TrueType file's `head`, `hhea`, `hmtx` and its Unicode `cmap` of format 4 (OpenType specification 1.9). */
function readFace(file: Buffer): Face {
  const table = tablesOf(file);
  const [head, hhea, hmtx] = [table('head'), table('hhea'), table('hmtx')];
  const measured = file.readUInt16BE(hhea + 34);
  const glyphOf = readCharacterMap(file, table('cmap'));
  const known = new Map<number, number | undefined>();
  function read(codePoint: number): number | undefined {
    const glyph = glyphOf(codePoint);
    // Glyphs past the last measured one are as wide as it.
    return glyph === 0 ? undefined : file.readUInt16BE(hmtx + 4 * Math.min(glyph, measured - 1));
  }
  return {
    unitsPerEm: file.readUInt16BE(head + 18),
    advanceOf: (codePoint) => {
      if (!known.has(codePoint)) known.set(codePoint, read(codePoint));
      return known.get(codePoint);
    },
  };
}

function tablesOf(file: Buffer): (tag: string) => number {
  const offsets = new Map<string, number>();
  for (let i = 0; i < file.readUInt16BE(4); i++) {
    const entry = 12 + 16 * i;
    offsets.set(file.toString('latin1', entry, entry + 4), file.readUInt32BE(entry + 8));
  }
  return (tag) => {
    const offset = offsets.get(tag);
    if (offset === undefined) throw new Error(`the font has no table '${tag}'`);
    return offset;
  };
}

/** From a code point to its glyph; 0 where the font has none. */
function readCharacterMap(file: Buffer, cmap: number): (codePoint: number) => number {
  const at = subtable(file, cmap);
  const segments = file.readUInt16BE(at + 6) / 2;
  const [ends, starts] = [at + 14, at + 16 + 2 * segments];
  const [deltas, ranges] = [starts + 2 * segments, starts + 4 * segments];
  return (codePoint) => {
    for (let i = 0; i < segments && codePoint <= 0xffff; i++) {
      if (codePoint > file.readUInt16BE(ends + 2 * i)) continue;
      const start = file.readUInt16BE(starts + 2 * i);
      if (codePoint < start) return 0;
      const delta = file.readUInt16BE(deltas + 2 * i);
      const range = file.readUInt16BE(ranges + 2 * i);
      if (range === 0) return (codePoint + delta) & 0xffff;
      const glyph = file.readUInt16BE(ranges + 2 * i + range + 2 * (codePoint - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
    return 0;
  };
}

function subtable(file: Buffer, cmap: number): number {
  for (let i = 0; i < file.readUInt16BE(cmap + 2); i++) {
    const offset = cmap + file.readUInt32BE(cmap + 8 + 8 * i);
    if (file.readUInt16BE(offset) === 4) return offset;
  }
  throw new Error('the font has no character map of format 4');
}
