/**
 * Reads one shaping phrase as a pattern prints it: 'every 6th row 12 times', '1 foll 4th row', 'in jeder 4. und 6. Reihe',
 * 'every 12th row 7 (9, 0, 0) times'.
 */
import { askBack, type Expected, type Heard, heard, refused } from './heard.ts';
import { isRefused, LONGEST_ROW, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import { type PerSize, Phrase, type Shaping } from './shaping-phrase.ts';
import { rowText } from './sizes.ts';

export function readShaping(text: string): Heard<Shaping> {
  const expected: Expected = { what: 'how often the shaping comes', example: 'every 6th row 12 times' };
  const tokens = listen(text, expected, LONGEST_ROW);
  if (isRefused(tokens)) return tokens;
  const { draft, rest, twice, commaMissing } = new Phrase(tokens);
  if (!tokens.some((t) => t.is === 'number') && draft.every.length === 0 && draft.times === undefined) {
    return refused('no number', expected);
  }
  const verdict = judgeRest(
    rest.filter((t) => !PHRASE_WORDS.has(t.text)),
    ['stitch', 'row', 'times', 'every'],
  );
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (twice) return refused('several numbers', expected);
  const all = [...draft.every, draft.times ?? [], draft.stitches ?? []];
  if (draft.every.length === 0 && draft.times === undefined) return refused('not understood', expected);
  if (!all.flat().every((n) => n === null || Number.isInteger(n))) return refused('not whole', expected);
  if (!draft.every.flat().every((n) => n === null || n > 0)) return refused('out of range', expected);
  const sizes = new Set(all.map((row) => row.length).filter((n) => n > 1));
  if (sizes.size > 1) return refused('uneven rows', expected);
  const option = { value: draft, echo: echoShaping(draft) };
  if (commaMissing) return askBack('comma missing', option, `I read ${option.echo}. Is that right?`);
  return verdict === 'extra words' ? askBack('extra words', option) : heard(option.value, option.echo);
}

const PHRASE_WORDS = new Set(
  (
    'rep repeat dec decs decrease inc incs increase end ends side sides edge work worked then first st beidseitig ' +
    'zunehmen abnehmen zunahme abnahme . , ; rs ws tous'
  ).split(' '),
);

/** 'every 4th and 6th row in turn, 12 times more, 1 stitch each time'. */
function echoShaping({ every, times, more, stitches }: Shaping): string {
  const parts = [
    rowsText(every),
    times === undefined
      ? ''
      : `${perSize(times, String)} ${isOne(times) ? 'time' : 'times'}${more ? ' more' : ''}`,
    stitches === undefined
      ? ''
      : `${perSize(stitches, String)} ${isOne(stitches) ? 'stitch' : 'stitches'} each time`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}

function rowsText(every: readonly PerSize[]): string {
  const [first, second] = every;
  if (first === undefined) return '';
  if (second !== undefined) return `every ${perSize(first, nth)} and ${perSize(second, nth)} row in turn`;
  return isOne(first) ? 'every row' : `every ${perSize(first, nth)} row`;
}

function isOne(row: PerSize): boolean {
  return row.length === 1 && row[0] === 1;
}

function perSize(row: PerSize, show: (n: number) => string): string {
  return rowText(row.map((n) => (n === null ? '–' : show(n))));
}

function nth(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  const ending = teen ? 'th' : ({ 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th');
  return `${n}${ending}`;
}
