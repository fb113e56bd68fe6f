/** Sheets to print and fill in by hand, all of them in one message. */
import { LENGTH_UNITS, type LengthUnit } from '../../fit/units.ts';
import { PAPER_NAMES, TYPE_SIZES, usualPaper } from '../../present/sheets/paper.ts';
import { Aside, type Bot, type Place, unitFor } from './bot.ts';
import { type Page, page, shownFile, text } from './page.ts';
import type { Printing } from './plan-files.ts';

/** The options of the command, each with the words that it takes. */
export const SHEET_OPTIONS = {
  unit: { description: 'The unit to measure in', words: LENGTH_UNITS },
  paper: { description: 'The paper in your printer', words: PAPER_NAMES },
  type: { description: 'The size of the print', words: TYPE_SIZES },
} as const;

const UNITS: Readonly<Record<LengthUnit, string>> = { cm: 'centimetres', in: 'inches' };

/** `said` gives the word of an option, or '' where it is left out. */
export async function sheetsPage(bot: Bot, place: Place, said: (option: string) => string): Promise<Page> {
  const { draw, defaults, clock } = bot.parts;
  const named = <T extends string>(option: string, words: readonly T[]) =>
    words.find((word) => word === said(option));
  const unit = named('unit', LENGTH_UNITS) ?? unitFor(bot, place) ?? 'cm';
  const print: Printing = {
    paper: named('paper', PAPER_NAMES) ?? defaults.print.paper ?? usualPaper(unit),
    type: named('type', TYPE_SIZES) ?? defaults.print.type,
  };
  const sheets = await draw.blanks(unit, print, clock());
  if (sheets.length === 0)
    throw new Aside('The sheets could not be drawn just now. Please try again in a minute.');
  return page(
    [
      text(
        `**Sheets to print and fill in by hand**\n-# In ${UNITS[unit]}, on ${print.paper}, in ${print.type} type. Another unit, paper or type: choose it in the options of /fit sheets`,
      ),
      ...sheets.flatMap(({ title, file }) => [text(title), shownFile(file.name)]),
    ],
    sheets.map(({ file }) => file),
  );
}
