/** A band picked up along an edge, as a step. */
import type { PickedUp } from './pickup.ts';
import { type Part, phrase } from './plan.ts';
import { step } from './steps.ts';
import type { Rows } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export function pickUpPart(picked: PickedUp, edgeRows: Rows): Part {
  const { stitches, ratio, between, runs, byRatio, edge } = picked;
  return {
    steps: [
      step('band', phrase('where: the band'), {
        worked: 'flat',
        instead: [{ do: 'pick up', stitches, rows: edgeRows, ratio, between, runs }],
        check: phrase('check: band as long as the edge', {
          edge: quantity('length of the edge', edge, 'cm'),
        }),
        notes: [
          ...(byRatio === stitches
            ? []
            : [phrase('note: the ratio alone', { count: quantity('by the ratio', byRatio, 'stitches') })]),
          phrase('note: sloping edges take more'),
          phrase('note: one in each bound-off stitch'),
        ],
        workings: [...picked.workings, ...runLines(picked, edgeRows)],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** How the exact count is shared out between the rows that are skipped, or the stitches that are added. */
function runLines({ stitches, between, runs }: PickedUp, edgeRows: Rows): WorkingLine[] {
  if (between === 'nothing') return [];
  const [count, rows] = [quantity('stitches', stitches, 'stitches'), quantity('rows', edgeRows, 'rows')];
  const skips = between === 'a row skipped';
  const breaks = workOut(
    skips ? 'rows skipped' : 'stitches between rows',
    skips ? 'b - a' : 'a - b',
    { a: count, b: rows },
    { unit: 'times' },
  );
  const shared = skips ? count : rows;
  const shorter = workOut(
    'a shorter stretch',
    'a / b',
    { a: shared, b: breaks.result },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const longer = workOut(
    'longer stretches',
    'a - b * c',
    { a: shared, b: shorter.result, c: breaks.result },
    { unit: 'times' },
  );
  const others = workOut(
    'shorter stretches',
    'a - b',
    { a: breaks.result, b: longer.result },
    { unit: 'times' },
  );
  const long = workOut(
    'a longer stretch',
    'a + b',
    { a: shorter.result, b: quantity('one more', 1, 'stitches') },
    { unit: 'stitches' },
  );
  return [breaks, shorter, longer, others, ...(runs.length > 1 || longer.exact > 0 ? [long] : [])];
}
