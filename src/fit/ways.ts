/** What cannot be done as asked, with the ways that can, each worked out; or that there is none. */
import { type Cannot, type Instruction, type Part, type Phrase, phrase, type Step } from './plan.ts';
import { say, step } from './steps.ts';
import { type Quantity, type WorkingLine, workOut } from './working.ts';

/** A way that works, with the workings of every figure in it. */
export interface WorkedWay {
  readonly name: Phrase;
  readonly instead: readonly Instruction[];
  readonly workings: readonly WorkingLine[];
}

/** Nothing can be planned of it. */
export type Impossible = Omit<Cannot, 'unit'>;

/** A step that says why, and offers the ways to choose from; where there is none, nothing can be planned. */
export function otherwise(
  lies: Pick<Step, 'piece' | 'where' | 'worked'>,
  why: Phrase | readonly Phrase[],
  ways: readonly WorkedWay[],
  workings: readonly WorkingLine[],
  notes: readonly Phrase[] = [],
): Part | Impossible {
  const because = [why].flat();
  const [only, second] = ways;
  if (only === undefined) {
    return { kind: 'cannot', because, instead: [phrase('instead: change the figures')], workings };
  }
  const offer = say(phrase(second === undefined ? 'do: this way instead' : 'do: one of these instead'));
  return {
    steps: [
      step(lies.piece, lies.where, {
        worked: lies.worked,
        instead: [
          ...because.map(say),
          offer,
          { do: 'choose one', ways: ways.map(({ name, instead }) => ({ name, instead })) },
        ],
        notes,
        workings: [...workings, ...ways.flatMap((w) => w.workings)],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** The figures of a sentence as workings, where nothing but the engine's own finding stands behind them. */
export function statedAs(gaps: Readonly<Record<string, Quantity>>): WorkingLine[] {
  return Object.values(gaps).map((found) => workOut(found.name, 'a', { a: found }, { unit: found.unit }));
}
