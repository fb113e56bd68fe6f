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

/** Whether so many rows can still be had; `perRow` is what one row takes. */
export function rowsLeftPart(
  left: RowsLeft,
  wanted: number,
  perRow: WorkingLine,
): { part: Part; lasts: boolean } {
  const lasts = left.bindsOff && left.rows >= wanted;
  const { told, workings } = lasts ? rowsOver(left, wanted) : rowsShort(left, wanted, perRow);
  return {
    lasts,
    part: {
      steps: [
        step('all', phrase('where: the yarn'), {
          instead: told.map(say),
          notes: [
            phrase('note: rows kept back'),
            phrase('note: weigh again near the end'),
            phrase('note: wider rows take more'),
          ],
          workings: [perRow, ...left.workings, ...workings],
        }),
      ],
      finished: [],
      pieces: [],
    },
  };
}

interface Verdict {
  readonly told: readonly Phrase[];
  readonly workings: readonly WorkingLine[];
}

function rowsOver(left: RowsLeft, wanted: number): Verdict {
  const { had, kept, asked } = rowsOf(left, wanted);
  const over = workOut('rows over', 'a - b', { a: had, b: asked }, { unit: 'rows' });
  const told = [
    phrase('do: rows that it gives', { rows: had, kept }),
    phrase('do: it lasts', { wanted: asked, over: over.result }),
  ];
  return { told, workings: [over] };
}

/** What is lacking is what all rows and the bind-off take, less all that is left: part of a row is of use too. */
function rowsShort(left: RowsLeft, wanted: number, perRow: WorkingLine): Verdict {
  const { had, kept, asked } = rowsOf(left, wanted);
  const lacking = workOut(
    'yarn lacking',
    '(b + k) * r - l',
    { b: asked, k: kept, r: perRow.result, l: amount('yarn left', left.left) },
    { unit: left.left.unit },
  );
  const lacks = { wanted: asked, amount: lacking.result };
  if (!left.bindsOff)
    return { told: [phrase('do: less than is kept back', { kept, ...lacks })], workings: [lacking] };
  const short = workOut('rows short', 'b - a', { a: had, b: asked }, { unit: 'rows' });
  const told = [
    phrase('do: rows that it gives', { rows: had, kept }),
    phrase('do: it runs short', { short: short.result, ...lacks }),
  ];
  return { told, workings: [short, lacking] };
}

function rowsOf({ rows, keep }: RowsLeft, wanted: number) {
  return {
    had: quantity('rows to work', rows, 'rows'),
    kept: quantity('rows kept back', keep, 'rows'),
    asked: quantity('rows wanted', wanted, 'rows'),
  };
}
