/** Sheets to fill in by hand: measurements with where each is taken, and the sums in the order in which they are worked. */
import type { LengthUnit } from '../../fit/units.ts';
import { MEASUREMENTS } from '../../fit/words.ts';
import { line, named, placed, point, type Shape, text } from '../draw/drawing.ts';
import { textWidth, wrapText } from '../draw/font.ts';
import { GARMENT_LENGTHS } from '../measuring/garment-places.ts';
import { measuringThumb } from '../measuring/measuring.ts';
import { capital } from '../pictures/words.ts';
import { blankWorking } from './blank-working.ts';
import { layOut, lineWidth, type Section } from './pages.ts';
import { heading, type Paragraph, paragraph, type Setting, settingFor, toWrite } from './paragraph.ts';
import type { Sheet, SheetOptions } from './sheet.ts';
import { SUMS, sumLines } from './sums.ts';

export interface BlankOptions extends SheetOptions {
  readonly unit: LengthUnit;
}

/** One entry a measurement: its figure, where the tape lies, and lines for two takings. */
export function measuringSheet(options: BlankOptions): Sheet {
  const setting = settingFor(options.type, lineWidth(options));
  const all = [...MEASUREMENTS, ...GARMENT_LENGTHS];
  const opening: Section = {
    heading: [heading('H1', 'Measurements', setting)],
    continued: [],
    paragraphs: [
      paragraph(
        `Measure twice, on two days if you can, and write both in ${UNIT_WORDS[options.unit]}. A table's figure can stand in for what you leave open.`,
        setting,
      ),
      { role: 'P', lines: [toWrite('Of whom:', setting, 0, setting.width * 0.48)], after: setting.body },
    ],
  };
  const entries = all.map(
    (measured): Section => ({
      heading: [],
      continued: [],
      paragraphs: [entry(measured, options.unit, setting)],
    }),
  );
  return sheetOf('Measurements', [opening, ...entries], setting, options);
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
  const height = Math.max(most, blanks + body) + body;
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

/** One page or more for each sum, with lines to fill in. */
export function sumsSheet(options: BlankOptions): Sheet {
  const setting = settingFor(options.type, lineWidth(options));
  const sections = SUMS.map((sum): Section => {
    const { title, about, lines } = sumLines(sum);
    return {
      heading: [heading('H1', title, setting)],
      continued: [heading('H2', `${title} (continued)`, setting)],
      paragraphs: [
        paragraph(about, setting),
        ...unique(lines.map((l) => `${capital(l.label)}\n${blankWorking(l, options.unit)}`)).map((words) =>
          sumParagraph(words, setting),
        ),
      ],
      newPage: true,
    };
  });
  return sheetOf('Sums', sections, setting, options);
}

function unique(lines: readonly string[]): string[] {
  return [...new Set(lines)];
}

/** The label in bold, and under it the sum with room to write between its lines. */
function sumParagraph(words: string, setting: Setting): Paragraph {
  const [label = '', sum = ''] = words.split('\n');
  const head = paragraph('', setting, { label });
  const wrapped = paragraph(sum, setting, { indent: setting.body });
  const roomy = wrapped.lines.map((l) => ({
    height: l.height * 1.25,
    shapes: placed(l.shapes, point(0, l.height * 0.25)),
  }));
  return { role: 'P', lines: [...head.lines, ...roomy], after: setting.body * 0.7 };
}

function sheetOf(
  title: string,
  sections: readonly Section[],
  setting: Setting,
  options: SheetOptions,
): Sheet {
  return { title, date: options.date, pages: layOut(title, sections, setting, options) };
}
