/** A shaping line as steps: one for each way in which the trade's wording can be read. */
import { type Cannot, type Part, type Phrase, phrase, type Step } from './plan.ts';
import type { LineReading, ReadLine, UnreadLine } from './shaping-line.ts';
import { say, step } from './steps.ts';
import type { Stitches } from './units.ts';
import type { Worked } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export function readingPart(
  { readings }: ReadLine,
  start: Stitches | undefined,
  worked: Worked | null,
): Part {
  const sums = readings.filter((r) => r.check.kind === 'adds up');
  const only = readings.length > 1 && sums.length === 1 ? sums[0] : undefined;
  const steps = readings.map((reading) => stepOf(reading, start, worked, reading === only));
  return { steps, finished: [], pieces: [] };
}

function stepOf(
  reading: LineReading,
  start: Stitches | undefined,
  worked: Worked | null,
  only: boolean,
): Step {
  const { shaping, rows, first, counting, workings } = reading;
  const last = shaping.at(-1)?.row ?? 0;
  const plain = workOut(
    'plain rows at the end',
    'a - b',
    { a: quantity('rows', rows, 'rows'), b: quantity('last shaping row', last, 'rows') },
    { unit: 'rows' },
  );
  const ending = check(reading, start);
  return step('all', phrase(WHERE[first]), {
    worked,
    instead: [
      say(
        phrase('do: the line in numbers', {
          times: quantity('shaping rows', reading.times, 'times'),
          rows: quantity('rows', rows, 'rows'),
        }),
      ),
      {
        do: 'shape rows',
        rows,
        start: start ?? null,
        shaping: shaping.map(({ row, change, after }) => ({
          row,
          change: change ?? null,
          after: after ?? null,
        })),
      },
    ],
    notes: [
      ...(counting === 'as named' ? [] : [phrase(COUNTING[counting])]),
      ...(plain.exact > 0 ? [phrase('note: plain rows after the line', { rows: plain.result })] : []),
      ...ending.notes,
      ...(only ? [phrase('note: only this reading adds up')] : []),
    ],
    workings: [...workings, plain, ...ending.workings],
  });
}

const WHERE = {
  'as named': 'where: the line, row by row',
  'at the end of the interval': 'where: first row ends the interval',
  'on the next row': 'where: first row is the next',
} as const;

const COUNTING = {
  'after the first row': 'note: times after the first row',
  'with the first row': 'note: times with the first row',
} as const;

/** Whether the line ends with the count that the pattern states. */
function check(
  { check }: LineReading,
  start: Stitches | undefined,
): { notes: Phrase[]; workings: WorkingLine[] } {
  if (check.kind === 'not known' || start === undefined) return { notes: [], workings: [] };
  const before = quantity('stitches before the line', start, 'stitches');
  if (check.kind === 'adds up') {
    const end = quantity('stitches after the line', check.end, 'stitches');
    return { notes: [phrase('note: the line adds up', { start: before, end })], workings: [] };
  }
  const stated = quantity('stitches that the pattern states', check.stated, 'stitches');
  const reached = quantity('stitches after the line', check.reached, 'stitches');
  const would = workOut(
    'stitches before the line that would end as stated',
    'a + b - c',
    { a: before, b: stated, c: reached },
    { unit: 'stitches' },
  );
  return {
    notes: [
      phrase('note: the line does not add up', { start: before, reached, stated }),
      ...(would.exact > 0 ? [phrase('note: the line would add up from', { start: would.result })] : []),
    ],
    workings: [would],
  };
}

/** Why a line cannot be laid out, although its words are known. */
export function readingCannot({ reason }: UnreadLine): Omit<Cannot, 'unit'> {
  const [why, what] = cause(reason);
  return { kind: 'cannot', because: [phrase(why)], instead: [phrase(what)], workings: [] };
}

function cause(reason: UnreadLine['reason']) {
  switch (reason) {
    case 'count at the start is missing':
      return ['cannot: line needs the count before', 'instead: give the counts of the line'] as const;
    case 'stitches a row are missing':
      return ['cannot: line needs the stitches a row', 'instead: give the counts of the line'] as const;
    case 'count is never reached':
      return ['cannot: line never reaches its count', 'instead: read the line once more'] as const;
    case 'nothing to read':
    case 'word not known':
    case 'number without a meaning':
    case 'no rows named':
    case 'how often is missing':
    case 'count is shared by two lines':
    case 'rows run backward':
      return ['cannot: line cannot be read', 'instead: read the line once more'] as const;
    default:
      return reason satisfies never;
  }
}
