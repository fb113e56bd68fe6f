/** Reads a whole number of stitches or rows: '84', '84 sts', '84 Maschen', '28 rnds'. */
import { formatDecimal, type Rows, rows, type Stitches, stitches } from '../../fit/units.ts';
import { askBack, type Expected, type Heard, heard, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { soleNumber } from './number.ts';

/** More than any garment has, in a row or from end to end. */
const MOST = 9999;

export function readStitches(text: string): Heard<Stitches> {
  return readCount(text, { what: 'a number of stitches', example: '84 stitches' }, 'stitch', stitches);
}

export function readRows(text: string): Heard<Rows> {
  return readCount(text, { what: 'a number of rows', example: '28 rows' }, 'row', rows);
}

/** A whole number of anything, with or without a word for what is counted. */
export function readWhole(text: string, example: string): Heard<number> {
  const expected: Expected = { what: 'a whole number', example };
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const sole = soleNumber(
    tokens.filter((t) => !BUTTONS.has(t.text)),
    ['stitch', 'row', 'ball', 'times'],
  );
  if (sole.kind === 'refused') return refused(sole.reason, expected);
  if (sole.kind === 'two') {
    return which(
      'I read two numbers. Which one is it?',
      sole.values.map((value) => ({ value, echo: formatDecimal(value, 3) })),
    );
  }
  const { value } = sole;
  if (value < 0) return refused('negative', expected);
  if (!Number.isInteger(value)) return refused('not whole', expected);
  if (value > MOST) return refused('out of range', expected);
  const option = { value, echo: String(value) };
  return sole.extraWords ? askBack('extra words', option) : heard(option.value, option.echo);
}

const BUTTONS = new Set(['button', 'buttons', 'buttonhole', 'buttonholes', 'hole', 'holes']);

function readCount<T extends number>(
  text: string,
  expected: Expected,
  noun: 'stitch' | 'row',
  brand: (value: number) => T,
): Heard<T> {
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const sole = soleNumber(tokens, [noun, 'needle']);
  if (sole.kind === 'refused') return refused(sole.reason, expected);
  const broken = sole.kind === 'one' && /^\d{1,3}[.,]\d{3}$/.test(sole.text);
  // '1,234' stitches can only be 1234.
  const values = sole.kind === 'two' ? sole.values : [broken ? Math.round(sole.value * 1000) : sole.value];
  if (values.some((v) => v < 0)) return refused('negative', expected);
  if (values.some((v) => !Number.isInteger(v))) return refused('not whole', expected);
  if (values.some((v) => v > MOST)) return refused('out of range', expected);
  const [option, other] = values.map((v) => ({ value: brand(v), echo: counted(v, noun) }));
  if (option === undefined) return refused('no number', expected);
  if (other !== undefined) return which('I read two numbers. Which one is it?', [option, other]);
  if (broken) return askBack('comma unclear', option);
  if (sole.kind === 'one' && sole.extraWords) return askBack('extra words', option);
  return heard(option.value, option.echo);
}

const NOUNS = { stitch: ['stitch', 'stitches'], row: ['row', 'rows'] } as const;

/** '1 stitch', '84 stitches', '30.5 rows'. */
export function counted(count: number, noun: keyof typeof NOUNS): string {
  return `${formatDecimal(count, 3)} ${NOUNS[noun][count === 1 ? 0 : 1]}`;
}
