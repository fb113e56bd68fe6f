/** Puts parts together to a plan, with what stood in, what waits, and the cautions that apply. */
import type { Gauge } from '../fit/gauge.ts';
import { hangsMostOn } from '../fit/hangs.ts';
import { type Outcome, type Part, type Phrase, phrase, type Step } from '../fit/plan.ts';
import { quantity } from '../fit/working.ts';
import type { Altered } from './alterations.ts';
import { tableOf } from './body-known.ts';
import type { Ledger } from './ledger.ts';

/** The outcome of a calculation. Without any step there is no plan, and the figures that are missing are named. */
export function planOf(book: Ledger, summary: readonly Phrase[], parts: readonly Part[]): Outcome {
  const steps = parts.flatMap((p) => p.steps);
  const finished = parts.flatMap((p) => p.finished);
  const { unit, flow } = book.sheet;
  if (steps.length === 0) return missing(book);
  return {
    kind: 'plan',
    plan: {
      schema: 'easewright plan',
      version: 1,
      flow,
      unit,
      summary: [...summary, ...hangsMostOn(finished)],
      steps,
      finished,
      pieces: parts.flatMap((p) => p.pieces),
      assumed: book.assumed,
      waiting: book.waiting,
      cautions: cautions(book, steps.some(isKnitted)),
    },
  };
}

export function missing(book: Ledger): Outcome {
  return {
    kind: 'cannot',
    unit: book.sheet.unit,
    because: [
      phrase('cannot: figures missing'),
      ...book.waiting.map((w) => phrase('cannot: waits', { what: w })),
    ],
    instead: [phrase('instead: answer the open questions')],
    workings: [],
  };
}

/** The outcome of one alteration alone. */
export function outcomeOf(book: Ledger, altered: Altered, summary: readonly Phrase[]): Outcome {
  if (altered === undefined) return missing(book);
  if ('kind' in altered) return { ...altered, unit: book.sheet.unit };
  return planOf(book, summary, [altered]);
}

/** An alteration among others: where it cannot be made, a step says why. */
export function partOf(altered: Altered, piece: Step['piece'], where: Phrase): Part[] {
  if (altered === undefined) return [];
  if (!('kind' in altered)) return [altered];
  const notes = [...altered.because, ...altered.instead];
  return [
    {
      steps: [
        {
          piece,
          where,
          worked: null,
          pattern: null,
          instead: [],
          check: null,
          notes,
          shaped: null,
          workings: altered.workings,
        },
      ],
      finished: [],
      pieces: [],
    },
  ];
}

export function gaugeSummary(gauge: Gauge): Phrase {
  return phrase('summary: gauge', {
    stitches: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
    rows: quantity('rows', gauge.rows.perCm, 'rows/cm'),
  });
}

/** Whether it tells hands to knit a garment: not a single row, a band, or figures alone. */
function isKnitted({ piece, instead }: Step): boolean {
  return piece !== 'all' && piece !== 'band' && instead.some((i) => i.do !== 'say');
}

/** Cautions as the trade gives them; said once, where they apply. */
function cautions(book: Ledger, knits: boolean): Phrase[] {
  const table = tableOf(book.sheet);
  return [
    ...(knits ? [phrase('care: hands')] : []),
    ...(table === 'children' || table === 'babies' ? [phrase('care: small children')] : []),
    ...(table === 'babies' ? [phrase('care: cot')] : []),
    ...(knits ? [phrase('care: skin')] : []),
  ];
}
