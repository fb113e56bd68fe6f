/** One garment while it is knitted from its plan: where each piece begins, and what it is held against. */
import type { Plan } from '../../src/fit/plan.ts';
import type { Answers } from '../../src/flow/answer.ts';
import { Needle } from '../simulator/needle.ts';
import { type Bench, type OnNeedle, type Place, rowsOf } from './bench.ts';
import type { Findings } from './findings.ts';
import type { Printed } from './printed.ts';

/** What the plan tells of one garment while it is knitted. */
export interface Knitting {
  readonly plan: Plan;
  /** What the knitter answered. */
  readonly answers: Answers;
  readonly printed: Printed;
  readonly bench: Bench;
  readonly findings: Findings;
}

/** The needle of a piece; parted from the body, or begun with the pattern's count, where nothing was told of it yet. */
export function startOf(knitting: Knitting, place: Place, count: number, worked: 'flat' | 'round'): OnNeedle {
  const { bench, printed } = knitting;
  if (place === 'back' || place === 'front' || place === 'body') {
    const untold = bench.necks.has(place) && !bench.marks.has(place);
    if (bench.at(place) === undefined && bench.sure(place) && place !== 'body' && !untold)
      parted(knitting, place);
    // The pattern's own rows lie between, where they are not told.
    const there = bench.at(place);
    const told = place === 'body' ? there?.whole === true : bench.marks.has(place);
    if (there !== undefined && !told && there.needle.count !== count) bench.drop(place);
  }
  return bench.on(place, count, worked, printedCount(printed, place, count), `stitches of the ${place}`);
}

/** Of a piece that is not told from its beginning: at one of the places where the pattern counts it. */
function printedCount(printed: Printed, place: Place, count: number): number {
  const shoulder = (printed.cross - printed.neck) / 2;
  const of: Readonly<Record<Place, readonly number[]>> = {
    body: [printed.bust, printed.hem],
    back:
      printed.joined === 'set_in' || printed.joined === 'drop'
        ? [printed.back, printed.cross, printed.hem]
        : [count],
    front: [printed.back, printed.cross, printed.bust - printed.back],
    'first side': [shoulder],
    'last side': [shoulder],
    // A sleeve from its top is told after its cap, which has its count.
    sleeve: printed.sleeves.up ? [printed.upperArm] : [count],
    yoke: [count],
    darts: [count],
  };
  return of[place].find((one) => one === count) ?? of[place][0] ?? count;
}

/** Heights above the underarm are counted from here. */
export function markUnderarm(knitting: Knitting, place: Place): void {
  const { bench, printed } = knitting;
  if (bench.at(place) === undefined && (place === 'back' || place === 'front')) parted(knitting, place);
  const there = bench.at(place);
  bench.marks.set(place, there === undefined || !printed.body.up ? 0 : rowsOf(there));
}

/** In the round the back is the first half of the stitches, and the front the other. */
function parted({ bench, printed, findings }: Knitting, place: 'back' | 'front'): void {
  const body = bench.at('body');
  if (body === undefined || !body.whole || printed.body.worked === 'flat' || !printed.body.up) return;
  const { needle } = body;
  const half = printed.back;
  findings.same(printed.bust, needle.count, 'stitches of the body where it is parted');
  const all = Needle.join([needle], 'flat');
  const front = all.takeOff(half, all.count);
  bench.put(place, { needle: place === 'back' ? all : front, below: rowsOf(body), whole: body.whole });
}

export function beginWith(knitting: Knitting, count: number, place: Place, worked: 'flat' | 'round'): void {
  const { bench, printed, findings } = knitting;
  if (place === 'body') findings.same(count, printed.bust, 'stitches that the body begins with');
  const there = bench.at(place);

  const down = place === 'sleeve' ? !printed.sleeves.up : !printed.body.up;
  if (there !== undefined && (place === 'yoke' || !down))
    findings.same(count, there.needle.count, `stitches that the ${place} begins with`);
  else bench.put(place, { needle: Needle.castOn(count, worked), below: 0, whole: true });
}
