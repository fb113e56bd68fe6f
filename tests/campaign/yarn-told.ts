/** How much yarn a plan tells to buy, reckoned again from what was knitted and what the knitter answered. */
import type { Step } from '../../src/fit/plan.ts';
import type { Answers, Value } from '../../src/flow/answer.ts';
import type { RowRecord } from '../simulator/needle.ts';
import { measured } from './garment-checks.ts';
import type { Knitting } from './knitting.ts';
import { frontNeck, scheduleAt, stepAt } from './necks.ts';
import { figure } from './whole-checks.ts';

export function yarnAsTold(knitting: Knitting): void {
  const { plan, findings } = knitting;
  const step = stepAt(plan, 'where: the yarn');
  if (step === undefined) return;
  findings.at('the yarn');
  const needed = knitting.printed.lengths === null ? ofBalls(knitting) : ofSwatch(knitting, step);
  if (needed === undefined) {
    findings.meet('yarn: a figure is assumed');
    return;
  }
  findings.meet(`yarn by ${knitting.printed.lengths === null ? 'balls' : 'swatch'}`);
  const said = step.instead.flatMap((one) => (one.do === 'say' ? [one.phrase] : []));
  // A tenth is added, and whole balls are bought: common practice.
  const more = needed.amount * 1.1;
  for (const phrase of said) {
    if (phrase.say === 'do: yarn it takes bare' || phrase.say === 'do: yarn it takes')
      findings.near(figure(phrase, 'amount'), needed.amount, phrase.say);
    if (phrase.say === 'do: yarn it takes') findings.near(figure(phrase, 'more'), more, phrase.say);
    if (phrase.say !== 'do: balls to buy') continue;
    const balls = figure(phrase, 'balls') * (needed.ball ?? Number.NaN);
    findings.must(balls >= more - 1e-6, `${balls} in balls for ${more}`);
    findings.must(balls - (needed.ball ?? 0) < more, `a ball of ${needed.ball} too many for ${more}`);
  }
}

interface Needed {
  /** In grams, or in metres. */
  readonly amount: number;
  readonly ball: number | undefined;
}

function given<K extends Value['kind']>(
  answers: Answers,
  question: string,
  kind: K,
): Extract<Value, { kind: K }> | undefined {
  const answer = answers[question];
  if (answer?.given !== 'value' || answer.value.kind !== kind) return undefined;
  return answer.value as Extract<Value, { kind: K }>;
}

function ofBalls({ answers }: Knitting): Needed | undefined {
  const balls = given(answers, 'yarn_balls', 'number')?.count;
  const theirs = given(answers, 'yarn_band', 'yarn length')?.metres;
  const own = given(answers, 'yarn_own_band', 'yarn length')?.metres;
  return balls === undefined || theirs === undefined || own === undefined
    ? undefined
    : { amount: balls * theirs, ball: own };
}

/** Sections are reckoned as even; few thick rows change in steps. */
const UNEVEN = 0.02;

/** As much as the swatch weighs for its area: what was knitted, and what lies in the opening of the neck. */
function ofSwatch(knitting: Knitting, step: Step): Needed | undefined {
  const { answers, findings } = knitting;
  const grams = given(answers, 'yarn_swatch', 'yarn weight')?.grams;
  const wide = given(answers, 'yarn_swatch_width', 'length')?.cm;
  const high = given(answers, 'yarn_swatch_height', 'length')?.cm;
  if (grams === undefined || wide === undefined || high === undefined) return undefined;
  const area = step.workings.find(({ label }) => label === 'area in all')?.exact ?? Number.NaN;
  const knitted = knittedArea(knitting);
  if (knitted !== undefined) {
    findings.meet('yarn held against every stitch of a garment');
    const neck = knitted.neck / knitted.perSquareCm;
    const of = knitted.stitches / knitted.perSquareCm;
    findings.must(area >= of * (1 - UNEVEN), `${of} cm² are knitted, the yarn is reckoned for ${area} cm²`);
    if (knitted.all) {
      findings.meet('yarn held against all of a garment');
      findings.must(
        area <= (of + neck) * (1 + UNEVEN),
        `${of} cm² and a neck of ${neck} cm² are not ${area} cm²`,
      );
    }
  }
  const rough = roughArea(knitting);
  findings.must(Math.abs(area / rough - 1) < 0.25, `${area} cm² are far from ${rough} cm²`);
  return { amount: (area * grams) / (wide * high), ball: given(answers, 'yarn_ball', 'yarn weight')?.grams };
}

/** The body as a tube from hem to shoulder, and two sleeves as trapezia. */
function roughArea(knitting: Knitting): number {
  const { lengths, stitchesPerCm: perCm, edge, body, bust, upperArm, wrist } = knitting.printed;
  const around = ((body.worked === 'round' ? 1 : 2) * (bust - edge.body)) / perCm;
  const long =
    finished(knitting, 'body, lower edge to underarm', lengths?.body ?? Number.NaN) +
    finished(knitting, 'armhole depth', lengths?.armhole ?? Number.NaN);
  const arm = finished(knitting, 'upper arm', (upperArm - edge.sleeves) / perCm);
  const hand = finished(knitting, 'wrist', (wrist - edge.sleeves) / perCm);
  const sleeve = finished(knitting, 'sleeve, cuff to underarm', lengths?.sleeve ?? Number.NaN);
  return around * long + 2 * ((arm + hand) / 2) * sleeve + shortRows(knitting);
}

/** Each pair of short rows counted, from turn to turn, as a trapezium has them. */
function shortRows({ plan, printed }: Knitting): number {
  const wedges = plan.steps
    .flatMap((step) => step.instead)
    .flatMap((one) => (one.do === 'short rows' ? [one.wedge] : []));
  return wedges.reduce((sum, { rows, flat, steps, sides }) => {
    const base = flat + (sides === 'both' ? 2 : 1) * steps.reduce((all, one) => all + one, 0);
    return sum + (((flat + base) / 2) * rows) / (printed.stitchesPerCm * printed.rowsPerCm);
  }, 0);
}

/** Every stitch that was knitted, and those that lie in the neck's rectangle; undefined where a plan does not tell of the whole garment. */
function knittedArea({ plan, bench, printed }: Knitting) {
  const open = plan.steps.some((step) => step.instead.some((one) => one.do === 'choose one'));
  const flat = printed.body.worked === 'flat';
  const lower = bench.at(flat ? 'back' : 'body');
  const arm = scheduleAt(plan, 'where: sleeve cap');
  const neck = frontNeck(plan);
  if (open || lower?.whole !== true || arm === undefined || neck === undefined) return undefined;
  // Up to the underarm a front that is like the back is told with it.
  const alike =
    flat && !plan.steps.some((one) => one.piece === 'front' && one.instead.some((it) => it.do === 'cast on'));
  let stitches = alike ? workedIn(lower.needle.log.slice(0, bench.marks.get('back'))) : 0;
  for (const [needle, place] of bench.needles)
    if (place !== 'darts') stitches += (place === 'sleeve' ? 2 : 1) * workedIn(needle.log);
  return {
    stitches,
    neck: neck.stitches * (neck.rows + neck.slope),
    all:
      scheduleAt(plan, 'where: armhole') !== undefined &&
      bench.at('sleeve')?.whole === true &&
      // Beside darts up and down the front is knitted twice.
      ![...bench.needles.values()].includes('darts'),
    perSquareCm: printed.stitchesPerCm * printed.rowsPerCm,
  };
}

function workedIn(rows: readonly RowRecord[]): number {
  return rows.reduce((sum, row) => sum + row.worked, 0);
}

/** As it was knitted; where a plan does not tell that to its end, as it says; else the pattern's. */
function finished(knitting: Knitting, name: string, theirs: number): number {
  const stated = knitting.plan.finished.find((one) => one.name === name);
  return stated === undefined ? theirs : (measured(knitting, name) ?? stated.range.expected);
}
