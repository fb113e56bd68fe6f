/** The cap of a set-in sleeve whose upper arm has another count than the pattern's, fitted to the pattern's armhole. */
import { armhole } from '../fit/armhole.ts';
import { type CannotCap, cap } from '../fit/cap.ts';
import type { FittedCap } from '../fit/cap-steps.ts';
import { piecesAround } from '../fit/pattern.ts';
import { shapedCap } from '../fit/shaped.ts';
import { type Stitches, stitches } from '../fit/units.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { sampleSize } from './figures.ts';
import type { Ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';

/** Undefined where the pattern's armhole is not known: of a knitter's own pattern the sleeve chapter does not ask for it. */
export function capFor(book: Ledger, upperArm: Stitches): FittedCap | CannotCap | undefined {
  const sample = sampleSize(book);
  const gauge = ownGauge(book, 'flat');
  if (sample === undefined || gauge === undefined || sample.pattern.construction !== 'set-in')
    return undefined;
  const { counts, finished, armhole: shaping } = sample.size;
  const { bust, 'cross back': crossBack } = counts;
  const depth = finished['armhole depth'];
  if (bust === undefined || crossBack === undefined || depth === undefined || shaping === undefined)
    return undefined;
  const back = armhole({
    bust: stitches(piecesAround(sample.pattern) === 1 ? bust / 2 : bust),
    crossBack,
    depth,
    gauge,
    bindOffs: [shaping.boundOff],
  });
  if (back.kind !== 'armhole') return undefined;
  const edges = { front: back.edge, back: back.edge };
  const of = (count: Stitches) =>
    cap({ upperArm: count, armhole: edges, depth: back.depth, bindOff: shaping.boundOff, gauge });
  const found = of(upperArm);
  if (found.kind !== 'cap') return found;
  const before = counts['upper arm'] === undefined ? undefined : of(counts['upper arm']);
  const known = before?.kind === 'cap' ? before : null;
  const shaped = shapedCap(found, known, { front: back, back }, ratesOf(gauge));
  return { kind: 'fitted cap', cap: found, shaped };
}
