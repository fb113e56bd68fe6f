/** Yarn as a step: how much to buy, or how many rows the rest gives. */
import { type Part, type Phrase, phrase } from './plan.ts';
import { say, step } from './steps.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import { amount, type BallUnknown, type YarnNeed } from './yarn.ts';
import type { RowsLeft } from './yarn-left.ts';

/** How much to buy; without a ball, how much it takes. */
export function yarnPart(
  need: YarnNeed | BallUnknown,
  rough: readonly WorkingLine[],
  notes: readonly Phrase[],
): Part {
  const { estimate } = need;
  const about = amount('yarn for the fabric', estimate);
  const told =
    need.kind === 'need'
      ? [
          say(
            phrase('do: yarn it takes', {
              amount: about,
              more: amount('yarn with the margin', need.withMargin),
            }),
          ),
          say(phrase('do: balls to buy', { balls: quantity('balls', need.balls, 'times') })),
        ]
      : [say(phrase('do: yarn it takes bare', { amount: about }))];
  return {
    steps: [
      step('all', phrase('where: the yarn'), {
        instead: told,
        notes: [
          ...notes,
          ...(need.kind === 'need' ? [phrase('note: margin of yarn')] : []),
          phrase('note: same dye lot'),
        ],
        workings: [...rough, ...need.workings],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** Whether so many rows can still be had; `perRow` is what one row takes, in grams. */
export function rowsLeftPart(
  left: RowsLeft,
  wanted: number,
  perRow: WorkingLine,
): { part: Part; lasts: boolean } {
  const [had, asked] = [quantity('rows to work', left.rows, 'rows'), quantity('rows wanted', wanted, 'rows')];
  const lasts = left.rows >= wanted;
  const difference = lasts
    ? workOut('rows over', 'a - b', { a: had, b: asked }, { unit: 'rows' })
    : workOut('rows short', 'b - a', { a: had, b: asked }, { unit: 'rows' });
  const more = workOut('yarn for them', 'a * b', { a: difference.result, b: perRow.result }, { unit: 'g' });
  const verdict = lasts
    ? phrase('do: it lasts', { wanted: asked, over: difference.result })
    : phrase('do: it runs short', { wanted: asked, short: difference.result, amount: more.result });
  return {
    lasts,
    part: {
      steps: [
        step('all', phrase('where: the yarn'), {
          instead: [say(phrase('do: rows that it gives', { rows: had })), say(verdict)],
          notes: [phrase('note: a row kept back'), phrase('note: wider rows take more')],
          workings: [perRow, ...left.workings, difference, ...(lasts ? [] : [more])],
        }),
      ],
      finished: [],
      pieces: [],
    },
  };
}
