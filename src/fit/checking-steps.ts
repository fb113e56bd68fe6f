/** The contradictions of a pattern as steps: what was compared, then one step for each. */
import type { Contradiction } from './contradiction.ts';
import { type Part, phrase, type Step } from './plan.ts';
import { say, step } from './steps.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** A row of figures that has more or fewer than there are sizes, and was left out. */
export interface UnevenRow {
  readonly name: string;
  readonly figures: number;
}

export interface Compared {
  readonly sizes: number;
  /** Names of the rows that were compared, as the questions name them. */
  readonly rows: readonly string[];
  readonly uneven: readonly UnevenRow[];
}

export function checkingPart(found: readonly Contradiction[], compared: Compared): Part {
  return { steps: [overview(compared), ...found.map(contradicting)], finished: [], pieces: [] };
}

function overview({ sizes, rows, uneven }: Compared): Step {
  const all = quantity('sizes of the pattern', sizes, 'times');
  const left = uneven.map(({ name, figures }) => {
    const row = quantity('figures in the row', figures, 'times');
    return {
      note: phrase('note: row left out', { row: name, figures: row, sizes: all }),
      line:
        figures > sizes
          ? workOut('figures too many', 'a - b', { a: row, b: all }, { unit: 'times' })
          : workOut('figures too few', 'b - a', { a: row, b: all }, { unit: 'times' }),
    };
  });
  const lines: WorkingLine[] = [
    workOut('sizes of the pattern', 'a', { a: all }, { unit: 'times' }),
    ...left.map((l) => l.line),
  ];
  return step('all', phrase('where: what was compared'), {
    instead: [say(phrase('do: compared', { rows: rows.join(', '), sizes: all }))],
    notes: [...left.map((l) => l.note), phrase('note: no contradiction is no fit')],
    workings: lines,
  });
}

function contradicting(found: Contradiction): Step {
  const { code, size, figures, wouldAgree, workings } = found;
  return step('all', size === undefined ? phrase('where: all sizes') : phrase('where: one size', { size }), {
    instead: [{ do: 'note contradiction', code, size: size ?? null, figures, wouldAgree }],
    workings,
  });
}
