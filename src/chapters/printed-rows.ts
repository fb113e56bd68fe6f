/** A pattern's rows of figures, one for each size, joined to its sizes. */
import type { UnevenRow } from '../fit/checking-steps.ts';
import type { Counted, PatternSize } from '../fit/pattern.ts';
import { type Cm, type Stitches, stitches } from '../fit/units.ts';
import type { Region } from '../fit/words.ts';
import { type Ledger, take } from './ledger.ts';

/** Which question asks for which row. */
export interface RowsAsked {
  readonly counts: readonly (readonly [question: string, place: Counted])[];
  readonly lengths: readonly (readonly [question: string, region: Region])[];
}

export interface PrintedRows {
  readonly sizes: readonly PatternSize[];
  /** The rows that were joined, by the names of their questions. */
  readonly names: readonly string[];
  /** Rows with more or fewer figures than there are sizes: left out. */
  readonly uneven: readonly UnevenRow[];
}

/** The sizes are those of the row of finished busts; without it there are none. */
export function printedRows(book: Ledger, asked: RowsAsked): PrintedRows {
  const busts = take(book, 'sizes_bust', 'sizes');
  if (busts === undefined) return { sizes: [], names: [], uneven: [] };
  const labels = busts.lengths.map((_, i) => busts.labels?.[i] ?? String(i + 1));
  const lengths = asked.lengths.map(([id, region]) =>
    row(book, id, region, take(book, id, 'sizes')?.lengths),
  );
  const counts = asked.counts.map(([id, place]) => row(book, id, place, take(book, id, 'counts')?.counts));
  const even = <R>({ figures }: Row<R>) => figures.length === labels.length;
  const given = [...lengths, ...counts].filter((r) => r.figures.length > 0);
  return {
    sizes: labels.map((label, i) => ({
      label,
      finished: Object.fromEntries(
        lengths.filter(even).flatMap(({ of, figures }): [Region, Cm][] => {
          const length = figures[i];
          return length === null || length === undefined ? [] : [[of, length]];
        }),
      ),
      counts: Object.fromEntries(
        counts.filter(even).flatMap(({ of, figures }): [Counted, Stitches][] => {
          const count = figures[i];
          return count === null || count === undefined ? [] : [[of, stitches(count)]];
        }),
      ),
    })),
    names: given.filter(even).map((r) => r.name),
    uneven: given.filter((r) => !even(r)).map((r) => ({ name: r.name, figures: r.figures.length })),
  };
}

interface Row<Of, Figure = unknown> {
  readonly of: Of;
  readonly name: string;
  readonly figures: readonly Figure[];
}

function row<Of, Figure>(
  { sheet }: Ledger,
  question: string,
  of: Of,
  figures: readonly Figure[] = [],
): Row<Of, Figure> {
  const short = sheet.questions.get(question)?.short ?? question;
  return { of, name: short.replace(/, all sizes$/, ''), figures };
}
