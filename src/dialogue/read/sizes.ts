/** Reads a row of figures, one a size: lengths with their unit, or whole numbers of stitches or rows. */
import { formatDecimal, type LengthUnit } from '../../fit/units.ts';
import {
  type AskBackReason,
  askBack,
  type Expected,
  type Heard,
  heard,
  type Option,
  refused,
  which,
} from './heard.ts';
import { isRefused, LONGEST_ROW, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import { type Cell, type SizeRow, sizeRow } from './size-row.ts';
import { agree, figure, type Length, lengthOf, otherUnit } from './tape.ts';

/** One entry a size, null where the pattern has none for it. */
export interface LengthRow {
  readonly lengths: readonly (Length | null)[];
  readonly labels: readonly string[] | undefined;
}

export interface CountRow {
  readonly counts: readonly (number | null)[];
  readonly labels: readonly string[] | undefined;
}

const LONGEST_CM = 1000;
const MOST_COUNTED = 9999;
/** More sizes than any pattern has, in one unit or two. */
const MOST_CELLS = 80;

export function readLengthRow(text: string, own: LengthUnit | undefined): Heard<LengthRow> {
  const expected: Expected = {
    what: 'one length for each size, as the pattern prints them',
    example: own === 'in' ? '34 (36, 38, 40) in' : '86 (91, 97, 102) cm',
  };
  const tokens = listen(text, expected, LONGEST_ROW);
  if (isRefused(tokens)) return tokens;
  const row = sizeRow(tokens, { of: 'lengths', pairsAreRanges: false });
  const fault = faultOf(row, expected);
  if (fault !== undefined) return fault;
  const read = inBothUnits(row, own) ?? inOneUnit(row, own);
  if (read === 'uneven') return refused('uneven rows', expected);
  const values = read.kind === 'which' ? read.options.map((o) => o.value) : [read.value];
  const isSound = values.every((v) => v.lengths.every((l) => l === null || (l.cm > 0 && l.cm <= LONGEST_CM)));
  if (!isSound) return refused('out of range', expected);
  return read.kind === 'heard' ? doubt(read, row, !isRising(read.value)) : read;
}

export function readStitchRow(text: string): Heard<CountRow> {
  return readCountRow(text, 'stitch', {
    what: 'one number of stitches for each size, as the pattern prints them',
    example: '84 (92, 100, 108) sts',
  });
}

export function readRowRow(text: string): Heard<CountRow> {
  return readCountRow(text, 'row', {
    what: 'one number of rows for each size, as the pattern prints them',
    example: '28 (30, 30, 32) rows',
  });
}

function readCountRow(text: string, noun: 'stitch' | 'row', expected: Expected): Heard<CountRow> {
  const tokens = listen(text, expected, LONGEST_ROW);
  if (isRefused(tokens)) return tokens;
  const row = sizeRow(tokens, { of: 'whole numbers', pairsAreRanges: false });
  const fault = faultOf(row, expected, noun);
  if (fault !== undefined) return fault;
  const counts = row.cells.map((c) => c.value);
  if (counts.some((c) => c !== null && !Number.isInteger(c))) return refused('not whole', expected);
  if (counts.some((c) => c !== null && c > MOST_COUNTED)) return refused('out of range', expected);
  const figures = counts.map((c) => (c === null ? '–' : formatDecimal(c, 0)));
  const echo = echoRow(figures, row.labels, noun === 'row' ? 'rows' : 'stitches');
  return doubt({ value: { counts, labels: row.labels }, echo }, row, false);
}

function faultOf(row: SizeRow, expected: Expected, noun?: 'stitch' | 'row') {
  const verdict = judgeRest(row.rest, noun === undefined ? [] : [noun]);
  if (!row.cells.some((c) => c.value !== null)) return refused('no number', expected);
  if (row.negative) return refused('negative', expected);
  if (row.cells.length > MOST_CELLS) return refused('too long', expected);
  if (row.labelsUneven) return refused('uneven rows', expected);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  return row.cells.some((c) => c.upTo !== undefined) ? refused('ranges', expected) : undefined;
}

/** Puts a row back whose separators, words or figures leave a doubt; words before and after a pasted row are none. */
function doubt<T>(option: Option<T>, row: SizeRow, isUnlikely: boolean): Heard<T> {
  const why = doubtOf(row, isUnlikely);
  if (why === undefined) return heard(option.value, option.echo);
  return askBack(why, option, `I read ${option.echo}. Is that right?`);
}

/** Words that make of two figures something else than two sizes: '218 to 164', 'size 11: 14'. */
const NO_SEPARATORS = new Set(['to', 'size', 'vs', 'instead', 'then']);

function doubtOf(row: SizeRow, isUnlikely: boolean): AskBackReason | undefined {
  if (row.commaMissing) return 'comma missing';
  if (row.commaUnclear) return 'comma unclear';
  if (row.cells.some((c) => c.spaceLost)) return 'space lost';
  const words = row.cells.length === 1 ? row.rest : row.between;
  if (row.cells.length > 1 && row.rest.some((t) => NO_SEPARATORS.has(t.text))) return 'extra words';
  if (judgeRest(words, ['stitch', 'row']) === 'extra words') return 'extra words';
  return isUnlikely ? 'unlikely' : undefined;
}

function inOneUnit(
  row: SizeRow,
  own: LengthUnit | undefined,
): Exclude<Heard<LengthRow>, { kind: 'refused' }> {
  const typed = row.cells.find((c) => c.unit !== undefined)?.unit ?? row.leadingUnit;
  const fraction = row.cells.some((c) => c.fraction);
  const unit = typed ?? (fraction ? 'in' : own);
  if (unit === undefined) {
    const options = (['in', 'cm'] as const).map((u) => optionOf(row, row.cells, u, own));
    return which('Inches or centimetres?', options);
  }
  const option = optionOf(row, row.cells, unit, own);
  if (typed === undefined && unit !== own)
    return askBack('unit missing', option, `Do you mean inches: ${option.echo}?`);
  return heard(option.value, option.echo);
}

/** A row that is printed in both units, in blocks or in pairs; undefined where there is but one unit. */
function inBothUnits(
  row: SizeRow,
  own: LengthUnit | undefined,
): Exclude<Heard<LengthRow>, { kind: 'refused' }> | 'uneven' | undefined {
  const units = new Set(row.cells.flatMap((c) => c.unit ?? []));
  if (units.size < 2) return undefined;
  const ways = [spread(row.cells, 'leftward'), spread(row.cells, 'rightward')].map((cells) =>
    (['in', 'cm'] as const).map((unit) =>
      optionOf(
        row,
        cells.filter((c) => c.unit === unit),
        unit,
        own,
      ),
    ),
  );
  const even = ways.filter(([a, b]) => a?.value.lengths.length === b?.value.lengths.length);
  const same = even.find(([a, b]) => a !== undefined && b !== undefined && rowsAgree(a.value, b.value));
  const [first] = same ?? [];
  if (same !== undefined && first !== undefined) {
    const taken =
      own === 'cm' || (own === undefined && row.cells[0]?.unit === 'cm') ? (same[1] ?? first) : first;
    return heard(taken.value, taken.echo);
  }
  return even[0] === undefined ? 'uneven' : which('The two units do not agree. Which row is right?', even[0]);
}

/** Gives each figure without a unit that of its neighbour: a unit behind a list reaches leftward, one in front rightward. */
function spread(cells: readonly Cell[], direction: 'leftward' | 'rightward'): readonly Cell[] {
  return cells.map((cell, i) => {
    const after = cells.slice(i).find((c) => c.unit !== undefined)?.unit;
    const before = cells.slice(0, i + 1).findLast((c) => c.unit !== undefined)?.unit;
    return { ...cell, unit: direction === 'leftward' ? (after ?? before) : (before ?? after) };
  });
}

function rowsAgree(a: LengthRow, b: LengthRow): boolean {
  return a.lengths.every((length, i) => {
    const other = b.lengths[i];
    if (length === null || other === null || other === undefined) return length === other;
    return agree(length, other);
  });
}

function isRising({ lengths }: LengthRow): boolean {
  const present = lengths.filter((l) => l !== null);
  return present.every((l, i) => i === 0 || l.cm >= (present[i - 1]?.cm ?? 0));
}

function optionOf(
  row: SizeRow,
  cells: readonly Cell[],
  unit: LengthUnit,
  own: LengthUnit | undefined,
): Option<LengthRow> {
  const lengths = cells.map((c) => (c.value === null ? null : lengthOf(c.value, c.unit ?? unit)));
  const labels = row.labels?.length === lengths.length ? row.labels : undefined;
  return { value: { lengths, labels }, echo: echoLengths({ lengths, labels }, unit, own ?? unit) };
}

function echoLengths({ lengths, labels }: LengthRow, typed: LengthUnit, own: LengthUnit): string {
  const figures = (unit: LengthUnit) => lengths.map((l) => (l === null ? '–' : figure(l, unit)));
  const echo = echoRow(figures(own), labels, own);
  return typed === own ? echo : `${echo}, typed as ${rowText(figures(typed))} ${otherUnit(own)}`;
}

/** '4 sizes: 81 (86, 91, 97) cm'; with labels '2 sizes: M 43, L 46 in'. */
function echoRow(figures: readonly string[], labels: readonly string[] | undefined, unit: string): string {
  const row = labels === undefined ? rowText(figures) : figures.map((f, i) => `${labels[i]} ${f}`).join(', ');
  return `${figures.length} ${figures.length === 1 ? 'size' : 'sizes'}: ${row} ${unit}`;
}

/** '34 (36, 38)', the way patterns print it. */
export function rowText([first = '', ...others]: readonly string[]): string {
  return others.length === 0 ? first : `${first} (${others.join(', ')})`;
}
