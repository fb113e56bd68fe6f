/** One size of a pattern at the knitter's gauge, as steps: the body's counts and the sleeve's. */
import type { Gauge } from './gauge.ts';
import type { Counted, Pattern, Rowed } from './pattern.ts';
import { piecesAround } from './pattern.ts';
import { type Finished, type Part, phrase, type Step } from './plan.ts';
import type { Regauged } from './regauge.ts';
import { finishedWidth, step } from './steps.ts';

const SLEEVE: ReadonlySet<Counted | Rowed> = new Set([
  'sleeve cast-on',
  'wrist',
  'upper arm',
  'cap top',
  'sleeve',
  'cap',
]);

/** Throws where the pattern does not have the size; see `regauge`. */
export function regaugePart(regauged: Regauged, pattern: Pattern, own: Gauge): Part {
  const steps = (['body', 'sleeve'] as const).flatMap((piece) => stepOf(piece, regauged, pattern));
  return { steps, finished: finishedOf(regauged, pattern, own), pieces: [] };
}

function stepOf(piece: 'body' | 'sleeve', regauged: Regauged, pattern: Pattern): Step[] {
  const mine = (of: Counted | Rowed) => SLEEVE.has(of) === (piece === 'sleeve');
  const counts = regauged.counts.filter((c) => mine(c.place));
  const rows = regauged.rows.filter((r) => mine(r.stretch));
  if (counts.length === 0 && rows.length === 0) return [];
  const armhole = piece === 'body' ? (regauged.size.armhole ?? null) : null;
  return [
    step(piece, phrase(piece === 'body' ? 'where: counts of the body' : 'where: counts of the sleeve'), {
      worked: piece === 'body' ? pattern.body : pattern.sleeves,
      instead: [
        {
          do: 'compare counts',
          counts: counts.map(({ workings: _, ...count }) => count),
          rows: rows.map(({ workings: _, ...row }) => row),
          armhole,
        },
      ],
      notes: [
        ...(piece === 'body' && piecesAround(pattern) === 2 ? [phrase('note: counts of the back')] : []),
        ...(piece === 'sleeve' ? [phrase('note: fit the cap anew')] : []),
        phrase('note: space between these counts'),
      ],
      workings: [
        ...[...counts, ...rows].flatMap((f) => f.workings),
        ...(armhole === null ? [] : regauged.armhole),
      ],
    }),
  ];
}

function finishedOf({ counts }: Regauged, pattern: Pattern, own: Gauge): Finished[] {
  return counts.flatMap(({ place, pattern: theirs, stitches }) => {
    if (place !== 'bust' && place !== 'upper arm') return [];
    const [pieces, edge] =
      place === 'bust'
        ? [piecesAround(pattern), pattern.body === 'flat' ? pattern.edge.body : 0]
        : [1 as const, pattern.edge.sleeves];
    return [finishedWidth(place, theirs, stitches, own, pieces, edge)];
  });
}
