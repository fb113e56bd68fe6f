/** A stitch count for a width, with its neighbours and how surely it measures that. */
import { countFor } from './count.ts';
import type { CountRule, Rate } from './gauge.ts';
import { type Part, phrase } from './plan.ts';
import { finishedWidth, say, step, widthLine } from './steps.ts';
import type { Cm } from './units.ts';
import { quantity } from './working.ts';

/** The nearest count of the rule for a width; widths exclude the edge stitches. */
export function stitchesPart(width: Cm, rate: Rate, rule: Omit<CountRule, 'parity'>): Part {
  const gauge = { stitches: rate };
  const counted = countFor('cast-on', width, gauge, { ...rule, parity: 'any' });
  const measures = widthLine('cast-on', counted.stitches, gauge, rule.edge);
  return {
    steps: [
      step('all', phrase('where: the width'), {
        instead: [
          say(
            phrase('do: stitches for the width', {
              count: quantity('stitches', counted.stitches, 'stitches'),
              width: measures.result,
            }),
          ),
        ],
        check: phrase(rule.edge === 0 ? 'check: it measures' : 'check: width', { width: measures.result }),
        notes: counted.neighbours,
        workings: [...counted.workings, measures],
      }),
    ],
    finished: [finishedWidth('cast-on', null, counted.stitches, gauge, 1, rule.edge)],
    pieces: [],
  };
}
