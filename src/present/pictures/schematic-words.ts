/** What a schematic says, in the words of its labels and as its text alternative. */
import { formatLength } from '../../fit/units.ts';
import type { Worked } from '../../fit/words.ts';
import type { View } from '../view.ts';
import type { LevelFigures, PieceFigures, SectionFigures } from './piece-figures.ts';
import { capital, countedRows, pieceTitle, spoken } from './words.ts';

export interface LevelWords {
  /** 'waist: 196 sts'. */
  readonly count: string;
  /** '88.4 cm around'. */
  readonly width: string;
  /** 'for 7 rounds', where the level is a stretch. */
  readonly plain: string | null;
  /** 'pattern: 220 sts, 99.2 cm'; null where no pattern outline is known. */
  readonly pattern: string | null;
}

export function levelWords(level: LevelFigures, worked: Worked, { unit }: View): LevelWords {
  const { pattern } = level;
  return {
    count: `${level.name}: ${level.stitches} sts`,
    width: `${formatLength(level.width, unit)} ${worked === 'round' ? 'around' : 'wide'}`,
    plain: level.plain === 0 ? null : `for ${countedRows(level.plain, worked)}`,
    pattern:
      pattern === null
        ? null
        : pattern === 'none'
          ? 'not in the pattern'
          : level.changed
            ? `pattern: ${pattern.stitches} sts, ${formatLength(pattern.width, unit)}`
            : 'as in the pattern',
  };
}

export function sectionWords({ rows, length }: SectionFigures, worked: Worked, { unit }: View): string {
  return `${countedRows(rows, worked)}, ${formatLength(length, unit)}`;
}

/** '40 cm long, 121 rounds; the pattern has 115'. */
export function lengthWords({ length, rows, patternRows, change }: PieceFigures, { unit }: View): string {
  const yours = `${formatLength(length, unit)} long, ${countedRows(rows, change.gauge.worked)}`;
  if (patternRows === null) return yours;
  return patternRows === rows ? `${yours}, as in the pattern` : `${yours}; the pattern has ${patternRows}`;
}

/** How the drawn width goes with the width that is stated. */
export function liesFlat(worked: Worked): string {
  return worked === 'round'
    ? 'as it lies flat, half of what goes around'
    : 'as it lies flat, between its edge stitches';
}

/** 'Two dart lines run from the top of the hem to the underarm.' */
function dartWords({ levels, change: { darts } }: PieceFigures): string[] {
  const [first, last] = [darts?.[0], darts?.at(-1)].map((at) =>
    levels.find(({ row, plain }) => at?.row === row || at?.row === row + plain),
  );
  if (first === undefined || last === undefined) return [];
  return [`Two dart lines run from the ${first.name} to the ${last.name}.`];
}

/** The text alternative: level by level in the order of knitting. */
export function schematicAlternative(figures: PieceFigures, view: View): string {
  const { after, gauge } = figures.change;
  const parts = figures.levels.flatMap((level, i) => {
    const words = levelWords(level, gauge.worked, view);
    const said = [words.count, words.width, words.plain, words.pattern];
    const next = figures.sections[i];
    return [
      `${capital(said.filter((w) => w !== null).join(', '))}.`,
      ...(next === undefined || next.rows === 0 ? [] : [`Then ${sectionWords(next, gauge.worked, view)}.`]),
    ];
  });
  const order = after.direction === 'up' ? 'From the lower edge up:' : 'From the top down:';
  return spoken(
    [
      `${pieceTitle(after.name, after.worked)}.`,
      `${capital(lengthWords(figures, view))}.`,
      `Drawn to scale ${liesFlat(gauge.worked)}.`,
      ...dartWords(figures),
      order,
      ...parts,
    ].join(' '),
  );
}
