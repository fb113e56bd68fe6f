/** A back neck raised, or a front neck lowered, by short rows, as a step of a plan. */
import type { Gauge } from './gauge.ts';
import { type NeckWedgeAsk, neckWedge } from './neck-wedge.ts';
import { type Instruction, type Part, phrase } from './plan.ts';
import { say } from './steps.ts';
import type { Impossible } from './ways.ts';
import { wedgePart } from './wedge-steps.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `counted`: how the centre of the back was found; `then`: what lies between the short rows and the neck edge. */
export function neckWedgePart(
  ask: NeckWedgeAsk,
  gauge: Gauge,
  counted: readonly WorkingLine[],
  then: readonly Instruction[],
): Part | Impossible {
  const after = quantity('rows from the neck edge', ask.after, 'rows');
  const place =
    ask.after === 0
      ? phrase(ask.direction === 'down' ? 'do: wedge at the neck edge' : 'do: wedge up to the neck edge')
      : phrase(
          ask.direction === 'down' ? 'do: wedge after the neck edge' : 'do: wedge before the neck edge',
          {
            rows: after,
          },
        );
  return wedgePart(
    neckWedge(ask),
    {
      piece: ask.worked === 'round' ? 'yoke' : 'back',
      where: phrase('where: back of the neck'),
      worked: ask.worked,
      before: [say(place)],
      after: then,
      notes: [
        phrase('note: neck rises behind'),
        ...(ask.worked === 'round' ? [phrase('note: round begins at the centre of the back')] : []),
      ],
      workings: [
        ...counted,
        ...(ask.after === 0
          ? []
          : [workOut('rows between the neck edge and the short rows', 'a', { a: after }, { unit: 'rows' })]),
      ],
    },
    gauge,
  );
}
