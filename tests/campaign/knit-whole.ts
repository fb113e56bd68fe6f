/** Knits a whole plan from nothing but its steps, piece by piece, and holds it against the pattern's own counts. */
import type { Plan, Step } from '../../src/fit/plan.ts';
import type { Answers } from '../../src/flow/answer.ts';
import { Bench, type Place, rowsOf } from './bench.ts';
import { finishedBesidePattern, patternAsPrinted, sizeAsPrinted } from './beside-pattern.ts';
import { dartsBeside } from './darts-beside.ts';
import { drawnAsTold } from './drawn.ts';
import type { Findings } from './findings.ts';
import { follow } from './follow.ts';
import { wholeGarment } from './garment-checks.ts';
import { STOPPED, stateFigures } from './knit-plan.ts';
import { type Knitting, markUnderarm } from './knitting.ts';
import { joinsMeet } from './necks.ts';
import { figuresAsKnitted } from './noted.ts';
import { armholeRows, frontAfter } from './pattern-armhole.ts';
import type { Printed } from './printed.ts';
import { checked, figure, said } from './whole-checks.ts';
import { yarnAsTold } from './yarn-told.ts';

export function knitWhole(plan: Plan, answers: Answers, printed: Printed, findings: Findings): void {
  const knitting: Knitting = { plan, answers, printed, bench: new Bench(findings), findings };
  for (const step of plan.steps) {
    findings.at(`${step.piece}: ${step.where.say}`);
    findings.meet(step.where.say);
    stateFigures(step, findings);
    for (const one of step.instead) if (one.do === 'say') findings.meet(one.phrase.say);
    const place = placeOf(step);
    if (place !== null) findings.knit(() => knitStep(knitting, step, place));
  }
  wholeGarment(knitting);
  findings.at('darts beside the sides');
  dartsBeside(knitting);
  joinsMeet(knitting);
  drawnAsTold(knitting);
  yarnAsTold(knitting);
  figuresAsKnitted(knitting);
  sizeAsPrinted(knitting);
  finishedBesidePattern(knitting);
  patternAsPrinted(knitting);
}

function placeOf({ piece, worked, where, instead, notes }: Step): Place | null {
  const stopped = notes.some(({ say }) => STOPPED.includes(say));
  if (piece === 'all' || !(stopped || instead.some((one) => one.do !== 'say'))) return null;
  if (DARTS.has(where.say)) return 'darts';
  switch (piece) {
    case 'front':
      if (worked === 'round') return 'body';
      if (where.say === 'where: neck, the side on the needle' || where.say === 'where: shoulder at the left')
        return 'last side';
      if (where.say === 'where: neck, the other side' || where.say === 'where: shoulder at the right')
        return 'first side';
      return 'front';
    case 'body':
    case 'back':
    case 'sleeve':
    case 'yoke':
      return piece;
    default:
      return null;
  }
}

const UPPER: ReadonlySet<string> = new Set([
  'where: armhole',
  'where: armhole of the front',
  'where: back of the neck',
  'where: shoulders of the back',
  'where: shoulder at the right',
  'where: shoulder at the left',
]);
const ABOVE_UNDERARM: ReadonlySet<string> = new Set([
  ...UPPER,
  'where: front neck',
  'where: neck, the side on the needle',
  'where: neck, the other side',
]);
const NECKS: ReadonlySet<string> = new Set([
  'where: back of the neck',
  'where: shoulders of the back',
  'where: front neck',
]);
const ARMHOLES: ReadonlySet<string> = new Set(['where: armhole', 'where: armhole of the front']);
const DARTS: ReadonlySet<string> = new Set(['where: widen to the bust', 'where: narrow from the bust']);

function knitStep(knitting: Knitting, step: Step, place: Place): void {
  const { bench, printed } = knitting;
  // From the neck down each step above the underarm is told by itself.
  if (!printed.body.up && UPPER.has(step.where.say)) bench.drop(place);
  if (step.notes.some(({ say }) => STOPPED.includes(say))) {
    bench.leave(place);
    return;
  }
  // The pattern's own rows lie between a body and what is told above its armhole.
  if (NECKS.has(step.where.say) && !bench.marks.has(place) && !bench.necks.has(place)) bench.drop(place);
  if (NECKS.has(step.where.say)) bench.necks.add(place);
  if (step.where.say === 'where: front neck') aboveThePattern(knitting, step);
  if (ARMHOLES.has(step.where.say)) {
    if (bench.at(place)?.whole === false) bench.drop(place);
    markUnderarm(knitting, place);
  }
  const before = bench.at(place);
  const begins = step.instead.some((one) => one.do === 'begin with');
  const begun = before === undefined || begins ? 0 : rowsOf(before);
  const heights = before?.needle.heights;
  for (const instruction of step.instead) {
    if (instruction.do === 'say') said(knitting, instruction.phrase, step, place);
    else follow(knitting, instruction, step, place);
  }
  const on = bench.at(place);
  if (on?.whole === true && !ABOVE_UNDERARM.has(step.where.say)) {
    bench.lengths.set(place, rowsOf(on));
    if (on.below === 0 && on.needle.log.every(({ short }) => !short))
      bench.counts.set(place, on.needle.counts);
    else bench.counts.delete(place);
  }
  if (on !== undefined) bench.ends.push({ place, rows: rowsOf(on), count: on.needle.count });
  if (on !== undefined)
    bench.done.set(`${step.piece}: ${step.where.say}`, {
      rows: rowsOf(on),
      count: on.needle.count,
      grown: on.needle.heights.map((height, i) => height - (heights?.[i] ?? 0)),
    });
  if (on !== undefined && step.check !== null) checked(knitting, step, on, rowsOf(on) - begun);
  if (!printed.body.up && UPPER.has(step.where.say)) bench.drop(place);
}

/** Where the armholes are the pattern's own, the front is knitted up to its neck as the pattern prints it. */
function aboveThePattern({ plan, bench, printed, findings }: Knitting, { instead, notes }: Step): void {
  if (bench.marks.has('front') || !printed.body.up || printed.joined !== 'set_in') return;
  const [begins] = instead.flatMap((one) =>
    one.do === 'say' && one.phrase.say === 'do: neck begins before the shoulder' ? [one.phrase] : [],
  );
  if (begins === undefined || notes.some(({ say }) => say === 'note: armhole may go on beside the neck'))
    return;
  // Nor do both sides of an armhole lose as many where the pattern's counts leave an odd stitch to it.
  const odd = (printed.back - printed.cross) % 2 !== 0;
  if (odd || plan.assumed.some(({ question }) => ARMHOLE_FIGURES.has(question))) {
    bench.leave('front');
    return;
  }
  const rows = armholeRows(printed) - figure(begins, 'rows');
  findings.meet('a front neck above the armhole of the pattern');
  bench.put('front', { needle: frontAfter(printed, rows), below: 0, whole: false });
  bench.marks.set('front', 0);
}

const ARMHOLE_FIGURES: ReadonlySet<string> = new Set([
  'Pattern, underarm [bind-off]',
  'Pattern, armhole decreases',
  'Armhole beside the neck',
]);
