/** Reads ages, one or a row of them, as ranges: '0-6 mo', '3 years', '(1-2) 4-6 (8-10) 12 yrs'. */
import { askBack, type Expected, type Heard, heard, refused } from './heard.ts';
import { isRefused, LONGEST_ROW, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import { sizeRow } from './size-row.ts';
import { rowText } from './sizes.ts';
import type { Token } from './token.ts';
import { means } from './vocabulary.ts';

/** From `from` to `to`, both inclusive and the same where one age was typed. */
export interface AgeRange {
  readonly from: number;
  readonly to: number;
}

export interface Ages {
  readonly unit: 'months' | 'years';
  readonly ages: readonly AgeRange[];
}

const OLDEST = { months: 36, years: 120 } as const;

export function readAges(text: string): Heard<Ages> {
  const expected: Expected = { what: 'an age in months or years', example: '4-6 years' };
  const tokens = listen(text, expected, LONGEST_ROW);
  if (isRefused(tokens)) return tokens;
  const units = unitsIn(tokens);
  const row = sizeRow(tokens.filter((t) => !isAgeUnit(t)).flatMap(asRange), {
    of: 'whole numbers',
    pairsAreRanges: true,
  });
  const verdict = judgeRest(row.rest, []);
  if (row.cells.length === 0) return refused('no number', expected);
  if (row.negative) return refused('negative', expected);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (units.length > 1) return refused('several numbers', expected);
  const ages = row.cells.flatMap(({ value, upTo }) =>
    value === null ? [] : [{ from: value, to: upTo ?? value }],
  );
  const unit = units[0] ?? 'years';
  const isSound =
    ages.length === row.cells.length && ages.every((a) => a.from <= a.to && a.to <= OLDEST[unit]);
  if (!isSound) return refused('out of range', expected);
  const echo = `${rowText(ages.map((a) => (a.from === a.to ? `${a.from}` : `${a.from}–${a.to}`)))} ${unit}`;
  const option = { value: { unit, ages }, echo };
  if (units.length === 0) return askBack('unit missing', option);
  if (row.commaMissing) return askBack('comma missing', option);
  return verdict === 'extra words' ? askBack('extra words', option) : heard(option.value, option.echo);
}

/** '7/8 years' are two ages, no fraction. */
function asRange(token: Token): readonly Token[] {
  const [, from, to] = token.is === 'number' ? (/^(\d+)\/(\d+)$/.exec(token.text) ?? []) : [];
  if (token.is !== 'number' || from === undefined || to === undefined) return [token];
  const age = (text: string): Token => ({ ...token, text, value: Number(text), fraction: false });
  return [age(from), { is: 'mark', text: '-', spaced: false }, age(to)];
}

function isAgeUnit({ is, text }: Token): boolean {
  return (
    is === 'word' &&
    (means(text, 'month') || means(text, 'year') || ['old', 'age', 'ages', 'aged'].includes(text))
  );
}

function unitsIn(tokens: readonly Token[]): readonly Ages['unit'][] {
  const words = tokens.filter((t) => t.is === 'word').map((t) => t.text);
  return [
    ...(words.some((w) => means(w, 'month')) ? (['months'] as const) : []),
    ...(words.some((w) => means(w, 'year')) ? (['years'] as const) : []),
  ];
}
