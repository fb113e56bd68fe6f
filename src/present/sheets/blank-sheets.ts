/** Sheets to fill in by hand: measurements with where each is taken, and the sums in the order in which they are worked. */
import type { LengthUnit } from '../../fit/units.ts';
import { MEASUREMENTS } from '../../fit/words.ts';
import { line, named, placed, point, type Shape, text } from '../draw/drawing.ts';
import { textWidth, wrapText } from '../draw/font.ts';
import { GARMENT_LENGTHS } from '../measuring/garment-places.ts';
import { measuringThumb } from '../measuring/measuring.ts';
import { capital } from '../pictures/words.ts';
import { blankWorking } from './blank-working.ts';
import type { Blank } from './blanks.ts';
import { heightOfAll, layOutEvenly, lineWidth, numbered, pageRoom, type Section } from './pages.ts';
import { heading, type Paragraph, paragraph, type Setting, settingFor, toWrite } from './paragraph.ts';
import type { Sheet, SheetOptions } from './sheet.ts';
import { type Sum, sumLines } from './sums.ts';

export interface BlankOptions extends Omit<SheetOptions, 'project'> {
  readonly unit: LengthUnit;
}

const SUM_OF: Readonly<Record<Exclude<Blank, 'measuring'>, Sum>> = {
  rows: 'rows over a length',
  stitches: 'stitches over a width',
  waist: 'waist',
  wedge: 'wedge',
};

export function blankTitle(blank: Blank): string {
  return blank === 'measuring' ? MEASUREMENTS_TITLE : sumLines(SUM_OF[blank]).title;
}

export function blankSheet(blank: Blank, options: BlankOptions): Sheet {
  return blank === 'measuring' ? measuringSheet(options) : sumSheet(SUM_OF[blank], options);
}

const MEASUREMENTS_TITLE = 'Measurements';

/** One entry a measurement: its figure, where the tape lies, and lines for two takings. */
export function measuringSheet(options: BlankOptions): Sheet {
  const setting = settingFor(options.type, lineWidth(options.paper));
  const all = [...MEASUREMENTS, ...GARMENT_LENGTHS];
  const opening: Section = {
    heading: [heading('H1', MEASUREMENTS_TITLE, setting)],
    continued: [],
    paragraphs: [
      paragraph(
        `Measure twice, on two days if you can, and write both in ${UNIT_WORDS[options.unit]}. A table's figure can stand in for what you leave open.`,
        setting,
      ),
      lineToWrite({ 'Of whom:': 0.6, 'Date:': 0.4 }, setting),
    ],
  };
  const entries = all.map(
    (measured): Section => ({
      heading: [],
      continued: [],
      paragraphs: [entry(measured, options.unit, setting)],
    }),
  );
  return sheetOf(MEASUREMENTS_TITLE, [opening, ...entries], setting, options);
}

function lineToWrite(labels: Readonly<Record<string, number>>, setting: Setting): Paragraph {
  return { role: 'P', lines: [toWrite(labels, setting)], after: setting.body };
}

const UNIT_WORDS: Readonly<Record<LengthUnit, string>> = { cm: 'centimetres', in: 'inches' };

function entry(
  measured: Parameters<typeof measuringThumb>[0],
  unit: LengthUnit,
  setting: Setting,
): Paragraph {
  const { title, drawing, alternative } = measuringThumb(measured);
  const { body, heading: size } = setting;
  const most = body * 7;
  const k = Math.min(most / drawing.height, most / drawing.width);
  const left = most + body;
  const lines = wrapText(alternative, setting.width - left, body);
  const y = (n: number) => size + n * body * 1.4;
  const blanks = y(lines.length + 1.6);
  const height = Math.max(most, blanks + body);
  const shapes: Shape[] = [
    ...placed(drawing.shapes, point((most - drawing.width * k) / 2, 0), k),
    text(title, point(left, size), { size, weight: 'bold' }),
    ...lines.map((l, i) => text(l, point(left, y(i + 1.1)), { size: body })),
    ...blank('first', unit, left, blanks, setting),
    ...blank('second', unit, left + (setting.width - left) / 2, blanks, setting),
  ];
  return { role: 'P', lines: [{ height, shapes }], after: 0 };
}

/** 'first ________ cm'. */
function blank(label: string, unit: LengthUnit, x: number, y: number, { width, body }: Setting): Shape[] {
  const from = x + textWidth(label, body) + 5;
  const to = x + width * 0.26;
  return [
    text(label, point(x, y), { size: body, ink: 'quiet' }),
    named('blank', line('frame', point(from, y + 3), point(to, y + 3))),
    text(unit, point(to + 4, y), { size: body }),
  ];
}

/** One sum with lines to fill in, as often as it fits on a page. */
function sumSheet(sum: Sum, options: BlankOptions): Sheet {
  const setting = settingFor(options.type, lineWidth(options.paper));
  const { title, about, lines } = sumLines(sum);
  const words = new Set(lines.map((l) => `${capital(l.label)}\n${blankWorking(l, options.unit)}`));
  const head = [heading('H1', title, setting), paragraph(about, setting)];
  const sums = [...words].map((w) => sumParagraph(w, setting));
  const once = [lineToWrite({ 'Of what:': 0.6, 'Date:': 0.4 }, setting), ...sums];
  const again = [between(setting), ...once];
  const room = pageRoom(options.paper) - heightOfAll(head) - heightOfAll(once);
  const more = Math.max(0, Math.floor(room / heightOfAll(again)));
  const section: Section = {
    heading: head,
    continued: [heading('H2', `${title} (continued)`, setting)],
    paragraphs: [...once, ...Array.from({ length: more }, () => again).flat()],
  };
  return sheetOf(title, [section], setting, options);
}

/** A line across, with room above and below it. */
function between({ body, width }: Setting): Paragraph {
  const height = body * 2.4;
  const y = height / 2;
  return { role: 'P', lines: [{ height, shapes: [line('frame', point(0, y), point(width, y))] }], after: 0 };
}

/** The label in bold, and under it the sum with room to write between its lines. */
function sumParagraph(words: string, setting: Setting): Paragraph {
  const [label = '', sum = ''] = words.split('\n');
  const head = paragraph('', setting, { label });
  // A blank stays with its unit.
  const wrapped = paragraph(sum.replace(/_ (?=[a-z])/g, '_\u00a0'), setting, { indent: setting.body });
  const roomy = wrapped.lines.map((l) => ({
    height: l.height * 1.25,
    shapes: placed(l.shapes, point(0, l.height * 0.25)),
  }));
  return { role: 'P', lines: [...head.lines, ...roomy], after: setting.body * 0.7, whole: true };
}

function sheetOf(
  title: string,
  sections: readonly Section[],
  setting: Setting,
  { date, paper }: BlankOptions,
): Sheet {
  const laid = layOutEvenly(sections, setting, paper);
  return { title, date, pages: numbered(laid, { title, date: '' }, setting, paper) };
}
