/** The pieces of a page before they have their place: paragraphs of lines, each line with its shapes from its own top left. */
import {
  box,
  type Drawing,
  line,
  named,
  placed,
  point,
  rectangle,
  type Shape,
  type TextLook,
  text,
} from '../draw/drawing.ts';
import { ASCENT, textWidth, type Weight, wrapText } from '../draw/font.ts';
import type { TypeSize } from './paper.ts';
import type { Role } from './sheet.ts';

export interface Line {
  readonly height: number;
  readonly shapes: readonly Shape[];
}

export interface Paragraph {
  readonly role: Role;
  readonly lines: readonly Line[];
  /** Room before the next one. */
  readonly after: number;
  readonly alternative?: string;
  /** Never broken over two pages. */
  readonly whole?: true;
}

/** The sizes of a sheet's type, in points, and the width that its lines have. */
export interface Setting {
  readonly width: number;
  readonly title: number;
  readonly heading: number;
  readonly body: number;
  readonly small: number;
  /** A drawing's own units to the point. */
  readonly drawing: number;
}

export function settingFor(type: TypeSize, width: number): Setting {
  return type === 'normal'
    ? { width, title: 20, heading: 12.5, body: 10.5, small: 9.5, drawing: 0.75 }
    : { width, title: 26, heading: 18.5, body: 16, small: 14.5, drawing: 1.15 };
}

/** Line height in sizes of the type. */
const LEADING = 1.38;

export function textLine(words: string, look: TextLook, indent = 0): Line {
  const height = look.size * LEADING;
  return { height, shapes: [text(words, point(indent, baseline(look.size)), look)] };
}

function baseline(size: number): number {
  return size * ((LEADING - 1) / 2 + ASCENT - 0.06);
}

export function heading(role: 'H1' | 'H2', words: string, setting: Setting): Paragraph {
  const size = role === 'H1' ? setting.title : setting.heading;
  const lines = wrapText(words, setting.width, size, 'bold').map((w) =>
    textLine(w, { size, weight: 'bold' }),
  );
  return { role, lines, after: size * 0.3 };
}

export interface Indented {
  /** Bold words before the text: 'You:'. */
  readonly label?: string;
  readonly indent?: number;
  /** A mark in the indentation: a bullet. */
  readonly mark?: string;
  readonly size?: number;
  readonly ink?: TextLook['ink'];
}

/** A paragraph with its label in bold, wrapped beside its indentation. */
export function paragraph(words: string, setting: Setting, look: Indented = {}): Paragraph {
  const { label = '', indent = 0, mark, size = setting.body, ink = 'text' } = look;
  const lead = label === '' ? 0 : textWidth(`${label} `, size, 'bold');
  const wrapped = wrapAfter(held(words), lead, setting.width - indent, size);
  const lines = wrapped.map((w, i): Line => {
    const first = i === 0;
    const line = textLine(w, { size, ink }, indent + (first ? lead : 0));
    const extra = [
      ...(first && label !== '' ? textLine(label, { size, weight: 'bold', ink }, indent).shapes : []),
      ...(first && mark !== undefined ? textLine(mark, { size, ink }, indent - size).shapes : []),
    ];
    return { ...line, shapes: [...extra, ...line.shapes] };
  });
  return { role: 'P', lines, after: size * 0.35 };
}

/** A number stays with its unit, and a row with the count after it. */
function held(words: string): string {
  return words.replace(/(\d[⅛¼⅜½⅝¾⅞]?) (?=\(|cm\b|in\b|sts\b|stitch|row|round)/g, '$1\u00a0');
}

/** Wraps a text whose first line is shorter by `lead`. */
function wrapAfter(words: string, lead: number, width: number, size: number): string[] {
  const [first = ''] = wrapText(words, width - lead, size);
  const rest = words.slice(first.length).trimStart();
  return rest === '' ? [first] : [first, ...wrapText(rest, width, size)];
}

/** A heading with a box to tick before it. */
export function tickHeading(words: string, setting: Setting): Paragraph {
  const side = setting.heading;
  const indent = side * 1.5;
  const size = setting.heading;
  const lines = wrapText(words, setting.width - indent, size, 'bold').map((w) =>
    textLine(w, { size, weight: 'bold' }, indent),
  );
  const [first, ...rest] = lines;
  if (first === undefined) return { role: 'H2', lines: [], after: 0 };
  const tick = named('tick', rectangle(null, 'tick', box(0.6, (first.height - side) / 2, side, side)));
  return { role: 'H2', lines: [{ ...first, shapes: [tick, ...first.shapes] }, ...rest], after: size * 0.3 };
}

/** A picture as large as its setting says, or as fits into the height. */
export function figure(drawing: Drawing, alternative: string, setting: Setting, most: number): Paragraph {
  const k = Math.min(setting.drawing, setting.width / drawing.width, most / drawing.height);
  const height = drawing.height * k;
  const shapes = placed(drawing.shapes, point(0, 0), k);
  return { role: 'Figure', lines: [{ height, shapes }], after: 0, alternative };
}

export interface Cell {
  readonly words: string;
  readonly weight?: Weight;
}

/** One row of a table; `columns` are the left edges, as shares of the width. A cell too long for its column is wrapped. */
export function row(
  cells: readonly Cell[],
  columns: readonly number[],
  setting: Setting,
  ruled: boolean,
): Paragraph {
  const size = setting.body;
  const gap = size * 0.6;
  const wrapped = cells.map(({ words, weight = 'regular' }, i) => {
    const left = (columns[i] ?? 0) * setting.width;
    const right = (columns[i + 1] ?? 1) * setting.width;
    return wrapText(words, right - left - gap, size, weight).map((w) => ({ w, left, weight }));
  });
  const height = size * LEADING;
  const most = Math.max(...wrapped.map((c) => c.length));
  const shapes = wrapped.flatMap((lines) =>
    lines.map(({ w, left, weight }, n) =>
      text(w, point(left, baseline(size) + n * height), { size, weight }),
    ),
  );
  const low = most * height + 3;
  const rule = ruled ? [line('frame', point(0, low), point(setting.width, low))] : [];
  return { role: 'P', lines: [{ height: low + 2, shapes: [...shapes, ...rule] }], after: 0 };
}

/** Lines to write on side by side, each with its label before it and its share of the width. */
export function toWrite(labels: Readonly<Record<string, number>>, { width, body: size }: Setting): Line {
  const height = size * 2.2;
  const low = height - size * 0.5;
  let from = 0;
  const shapes = Object.entries(labels).flatMap(([label, share]) => {
    const left = from;
    from += share * width;
    const begins = left + textWidth(label, size) + 4;
    return [
      text(label, point(left, low - 2), { size }),
      named('blank', line('frame', point(begins, low), point(from - size, low))),
    ];
  });
  return { height, shapes };
}
