/**
 * Paragraphs laid on pages. A section stays on one page where it fits on one; a longer one is broken so that no line
 * stands alone on either page, and its heading is repeated with 'continued'. Every page has a head and 'page x of y'.
 */
import { line, placed, point, type Shape, text } from '../draw/drawing.ts';
import { shortened, textWidth } from '../draw/font.ts';
import { PAPERS, type Paper } from './paper.ts';
import type { Line, Paragraph, Setting } from './paragraph.ts';
import type { Page, Part } from './sheet.ts';

/** What stands at the top of every page: at the left, and at the right. */
export interface Head {
  readonly title: string;
  /** In words; nothing where the sheet is to be copied and filled in on any day. */
  readonly date: string;
}

export interface Section {
  /** At its beginning, and where it goes on on another page. */
  readonly heading: readonly Paragraph[];
  readonly continued: readonly Paragraph[];
  readonly paragraphs: readonly Paragraph[];
  readonly newPage?: boolean;
}

const SIDE = 48;
/** Of the first line on the page, and of the lowest line's end. */
const [HIGH, LOW] = [74, 56] as const;

/** The width of lines on the paper. */
export function lineWidth(paper: Paper): number {
  return PAPERS[paper].width - 2 * SIDE;
}

/** The height between head and foot. */
export function pageRoom(paper: Paper): number {
  return PAPERS[paper].height - HIGH - LOW;
}

/** Fewest lines of a broken paragraph on either page. */
const LEAST = 2;

/** Pages before they are numbered. */
type Laid = readonly (readonly Part[])[];

/** Every page with the head, and 'page x of y'. */
export function numbered(laid: Laid, head: Head, setting: Setting, paper: Paper): Page[] {
  return laid.map((parts, i) => framed(parts, i + 1, laid.length, head, setting, paper));
}

/** `room`: the height that may be used on each page. */
export function layOut(
  sections: readonly Section[],
  setting: Setting,
  paper: Paper,
  room: number = pageRoom(paper),
): Laid {
  const pages: Part[][] = [[]];
  let used = 0;

  function put(paragraph: Paragraph, lines: readonly Line[] = paragraph.lines): void {
    let y = HIGH + used;
    const shapes = lines.flatMap((l) => {
      const at = point(SIDE, y);
      y += l.height;
      return placed(l.shapes, at);
    });
    pages.at(-1)?.push({ ...partOf(paragraph), shapes });
    used += heightOf(lines) + paragraph.after;
  }

  function turnPage(): void {
    pages.push([]);
    used = 0;
  }

  function putAcross({ heading, continued, paragraphs }: Section): void {
    if (used > 0 && used + heightOfAll(heading) + beginning(paragraphs) > room) turnPage();
    for (const p of heading) put(p);
    paragraphs.forEach((p, i) => {
      const rest = paragraphs.slice(i + 1);
      if (i > 0 && wouldBeLeftAlone(p, rest, room - used)) goOn(continued);
      let lines = p.lines;
      while (used + heightOf(lines) > room + 1e-6) {
        const fits = p.whole === true ? 0 : fitting(lines, room - used);
        if (fits > 0) put(p, lines.slice(0, fits));
        lines = lines.slice(fits);
        const before = used;
        goOn(continued);
        if (used >= before && fits === 0) break;
      }
      put(p, lines);
    });
  }

  function goOn(continued: readonly Paragraph[]): void {
    turnPage();
    for (const p of continued) put(p);
  }

  for (const section of sections) {
    const height = heightOfAll(section.heading) + heightOfAll(section.paragraphs);
    if (section.newPage === true && used > 0) turnPage();
    else if (used > 0 && used + height > room && height <= room) turnPage();
    putAcross(section);
    used += setting.body * 0.8;
  }
  return pages;
}

/** On no more pages, but each about as full as the others, so that the last one does not stand nearly empty. */
export function layOutEvenly(sections: readonly Section[], setting: Setting, paper: Paper): Laid {
  let laid = layOut(sections, setting, paper);
  const least = pageRoom(paper) / 2;
  for (let room = pageRoom(paper) - setting.body; laid.length > 1 && room > least; room -= setting.body) {
    const closer = layOut(sections, setting, paper, room);
    if (closer.length > laid.length) break;
    laid = closer;
  }
  return laid;
}

/** How many lines go on this page, so that neither page has fewer than two of a broken paragraph. */
function fitting(lines: readonly Line[], room: number): number {
  let [count, height] = [0, 0];
  for (const l of lines) {
    height += l.height;
    if (height > room) break;
    count += 1;
  }
  const kept = Math.min(count, lines.length - LEAST);
  return kept >= LEAST ? kept : 0;
}

/** The least that may stand below a heading: two lines, or a paragraph that is too short to be broken. */
function beginning([first, ...rest]: readonly Paragraph[]): number {
  if (first === undefined) return 0;
  if (first.whole !== true && first.lines.length >= 2 * LEAST) return heightOf(first.lines.slice(0, LEAST));
  const whole = heightOf(first.lines);
  return first.lines.length >= LEAST ? whole : whole + first.after + beginning(rest);
}

/** Whether the one line after this paragraph would come to stand alone on the next page. */
function wouldBeLeftAlone(p: Paragraph, rest: readonly Paragraph[], room: number): boolean {
  const lines = rest.reduce((sum, r) => sum + r.lines.length, 0);
  const both = heightOf(p.lines) + p.after + heightOfAll(rest);
  return lines > 0 && lines < LEAST && heightOf(p.lines) <= room && both > room;
}

function heightOf(lines: readonly Line[]): number {
  return lines.reduce((sum, l) => sum + l.height, 0);
}

/** Of all of them with the room after each. */
export function heightOfAll(paragraphs: readonly Paragraph[]): number {
  return paragraphs.reduce((sum, p) => sum + heightOf(p.lines) + p.after, 0);
}

function partOf({ role, alternative }: Paragraph): Omit<Part, 'shapes'> {
  return alternative === undefined ? { role } : { role, alternative };
}

function framed(
  parts: readonly Part[],
  number: number,
  of: number,
  head: Head,
  setting: Setting,
  paper: Paper,
): Page {
  const { width, height } = PAPERS[paper];
  const shapes = headAndFoot(number, of, head, setting, paper);
  return { width, height, parts: [...parts, { role: 'Artifact', shapes }] };
}

function headAndFoot(
  number: number,
  of: number,
  { title, date }: Head,
  { small: size }: Setting,
  paper: Paper,
): Shape[] {
  const { width, height } = PAPERS[paper];
  const right = width - SIDE;
  const room = right - SIDE - textWidth(date, size) - 12;
  return [
    text(shortened(title, room, size, 'bold'), point(SIDE, 44), { size, weight: 'bold' }),
    ...(date === '' ? [] : [text(date, point(right, 44), { size, anchor: 'end', ink: 'quiet' })]),
    line('frame', point(SIDE, 52), point(right, 52)),
    text(`page ${number} of ${of}`, point(right, height - 32), { size, anchor: 'end', ink: 'quiet' }),
  ];
}
