/** A hem that hangs lower at the back, as a step of a plan. */
import type { Gauge } from './gauge.ts';
import { type HemAsk, hemWedge } from './hem-wedge.ts';
import { type Part, phrase } from './plan.ts';
import { heightLine, say } from './steps.ts';
import type { Impossible } from './ways.ts';
import { type WedgePlace, wedgePart } from './wedge-steps.ts';
import { quantity, type WorkingLine } from './working.ts';

/**
 * `counted`: how the rows of the edging and the stitches of the back were found. Laid in the body, the short rows come
 * where their step stands.
 */
export function hemPart(
  ask: HemAsk,
  gauge: Gauge,
  counted: readonly WorkingLine[],
  lies: 'alone' | 'in the body',
): Part | Impossible {
  const edging = say(
    phrase(ask.direction === 'up' ? 'do: wedge after the edging' : 'do: wedge before the edging', {
      rows: quantity('rows of the edging', ask.edging, 'rows'),
    }),
  );
  const round = ask.over.across === 'all round';
  const place: WedgePlace = {
    piece: ask.worked === 'round' ? 'body' : 'back',
    where: phrase(round ? 'where: hem all round' : 'where: hem across the back'),
    worked: ask.worked,
    before: lies === 'alone' ? [edging] : [],
    after: [],
    notes: [
      ...(ask.worked === 'flat'
        ? []
        : [
            phrase(
              round ? 'note: round begins at the centre of the back' : 'note: round begins before the back',
            ),
          ]),
      ...(round ? [] : [phrase('note: front keeps its length')]),
    ],
    workings: [...counted, heightLine('depth of the edging', ask.edging, gauge)],
  };
  return wedgePart(hemWedge(ask), place, gauge);
}
