/** What holds of a garment once its whole plan is knitted: its pieces meet, and it measures what the plan promises. */
import type { Finished, Instruction } from '../../src/fit/plan.ts';
import { valueGiven } from '../../src/flow/answer.ts';
import { edgeOf } from '../simulator/edges.ts';
import type { Knitting } from './knitting.ts';
import { frontNeck, yokeEnds } from './necks.ts';
import { armholeRows as printedRows } from './pattern-armhole.ts';
import { figure } from './whole-checks.ts';

export function wholeGarment(knitting: Knitting): void {
  const { plan, findings } = knitting;
  findings.at('finished');
  for (const one of plan.finished) finishedAs(knitting, one);
  findings.at('shoulders');
  shouldersMeet(knitting);
  findings.at('sleeve and armhole');
  sleeveFits(knitting);
  findings.at('what is open');
  openIsSaid(knitting);
}

/** A measurement from the counts and rows on the needles. Undefined where they are not told to the end. */
export function measured(knitting: Knitting, name: string): number | undefined {
  const { plan, printed, bench } = knitting;
  const { body, edge, stitchesPerCm, rowsPerCm } = printed;
  const pieces = body.worked === 'round' ? 1 : 2;
  const around = (count: number | undefined) =>
    count === undefined ? undefined : (pieces * (count - edge.body)) / stitchesPerCm;
  const arm = (count: number | undefined) =>
    count === undefined ? undefined : (count - edge.sleeves) / stitchesPerCm;
  const high = (rows: number | undefined) => (rows === undefined ? undefined : rows / rowsPerCm);
  const piece = body.worked === 'round' ? 'body' : 'back';
  const after = (step: string) => bench.done.get(step);
  const { up } = printed.sleeves;
  if (name === 'sleeve, cuff to underarm' && !bench.sure('sleeve') && !up) return undefined;
  switch (name) {
    case 'bust':
      return around(printed.bust);
    case 'waist':
      return around(after(`${piece}: where: at the waist`)?.count);
    case 'lower edge':
      return around(after(`${piece}: where: ${body.up ? 'cast-on and hem' : 'last edging'}`)?.count);
    case 'body, lower edge to underarm':
      return bench.sure(piece) ? high(bench.lengths.get(piece)) : undefined;
    case 'wrist':
      return arm(after(`sleeve: where: ${up ? 'cast-on and cuff' : 'last edging'}`)?.count);
    case 'upper arm':
      return arm(
        up ? after('sleeve: where: cuff to underarm')?.count : began(plan, 'where: underarm to cuff'),
      );
    case 'sleeve, cuff to underarm':
      return high(after(`sleeve: where: ${up ? 'cuff to underarm' : 'last edging'}`)?.rows);
    case 'armhole depth':
      return high(armholeRows(knitting, 'back'));
    case 'height of the cap':
      return high(edgesOf(plan, 'where: sleeve cap')?.rows);
    case 'front neck width': {
      const neck = frontNeck(plan);
      return neck && neck.stitches / stitchesPerCm;
    }
    case 'front neck depth': {
      const neck = frontNeck(plan);
      return neck && (neck.rows + neck.slope) / rowsPerCm;
    }
    case 'neck around': {
      const ends = yokeEnds(plan, body.up);
      return ends && ends.neck / stitchesPerCm;
    }
    case 'yoke depth':
      return high(after('yoke: where: raglan lines')?.rows ?? after('yoke: where: yoke round')?.rows);
    default:
      return undefined;
  }
}

function finishedAs(knitting: Knitting, { name, range, workings }: Finished): void {
  const { findings } = knitting;
  findings.workings(workings);
  const found = measured(knitting, name);
  if (found === undefined) findings.meet(`finished ${name}: not told to the end`);
  else findings.near(range.expected, found, name);
}

type Plan = Knitting['plan'];

function instructionsAt(plan: Plan, where: string): readonly Instruction[] {
  return plan.steps.filter((step) => step.where.say === where).flatMap((step) => step.instead);
}

function began(plan: Plan, where: string): number | undefined {
  const [begun] = instructionsAt(plan, where).flatMap((one) =>
    one.do === 'begin with' ? [one.stitches] : [],
  );
  return begun;
}

function edgesOf(plan: Plan, where: string) {
  const [schedule] = instructionsAt(plan, where).flatMap((one) =>
    one.do === 'shape edges' ? [one.schedule] : [],
  );
  return schedule;
}

/** Rows from the underarm to the shoulder; undefined where they are not told to the end. */
export function armholeRows(
  { bench, printed }: Knitting,
  piece: 'back' | 'front',
  side?: string,
): number | undefined {
  const told = (where: string) => bench.done.get(`${piece}: ${where}`)?.rows;
  const mark = bench.marks.get(piece);
  const top =
    piece === 'back'
      ? ((printed.body.up ? told('where: back of the neck') : undefined) ?? told('where: armhole'))
      : side === undefined
        ? told('where: armhole of the front')
        : told(side);
  return mark === undefined || top === undefined || !bench.sure(piece) ? undefined : top - mark;
}

/** Back and front are as high at the shoulders, both are sloped alike, and each front shoulder has the back's stitches. */
function shouldersMeet(knitting: Knitting): void {
  const { plan, printed, bench, findings } = knitting;
  const back = armholeRows(knitting, 'back');
  for (const side of ['where: neck, the side on the needle', 'where: neck, the other side']) {
    const front = armholeRows(knitting, 'front', side);
    if (printed.body.up && back !== undefined && front !== undefined) {
      findings.meet('back and front knitted to the shoulders');
      findings.same(back, front, `rows to the shoulder, ${side}`);
    }
    const own = !plan.steps.some(({ where }) => where.say === 'where: armhole of the front');
    if (printed.body.up && own && front !== undefined)
      findings.same(printedRows(printed), front, `rows to the shoulder of the pattern, ${side}`);
  }
  const both = bench.done.get('back: where: shoulders of the back')?.grown;
  const right = bench.done.get('front: where: shoulder at the right')?.grown;
  const left = bench.done.get('front: where: shoulder at the left')?.grown;
  if (both === undefined || right === undefined || left === undefined || right.length === 0) return;
  // A back raised at its neck is higher there than the front; what it gains is its own.
  if (plan.steps.some((step) => step.where.say === 'where: back of the neck')) return;
  findings.meet('front shoulders held against the back');
  findings.same(
    slope(right).join(),
    slope(both.slice(0, right.length)).join(),
    'right shoulder, front and back',
  );
  const across = [...both].reverse();
  findings.same(
    slope([...left].reverse()).join(),
    slope(across.slice(0, left.length)).join(),
    'left shoulder',
  );
}

/** Heights from the armhole edge inward, counted from the outermost stitch. */
function slope(heights: readonly number[]): number[] {
  return heights.map((height) => height - (heights[0] ?? 0));
}

function sleeveFits(knitting: Knitting): void {
  const { plan, printed, bench, findings } = knitting;
  const arm = measured(knitting, 'upper arm');
  const top = instructionsAt(plan, 'where: sleeve top to the armhole').flatMap((one) =>
    one.do === 'say' && one.phrase.say === 'do: sleeve top has' ? [figure(one.phrase, 'width')] : [],
  );
  if (arm !== undefined && top[0] !== undefined) {
    findings.meet('a dropped sleeve held against its armhole');
    findings.near(top[0], arm, 'width of the sleeve top');
  }
  const cap = edgesOf(plan, 'where: sleeve cap');
  const rows = armholeRows(knitting, 'back');
  const of = (where: string) => edgesOf(plan, where);
  const [back, front] = [of('where: armhole'), of('where: armhole of the front')];
  if (
    cap === undefined ||
    back === undefined ||
    front === undefined ||
    rows === undefined ||
    !bench.sure('sleeve')
  )
    return;
  findings.meet('a cap held against the armholes');
  const edge = (events: typeof back.events, high: number) =>
    edgeOf(events, high, printed.stitchesPerCm, printed.rowsPerCm);
  const holes = edge(back.events, rows) + edge(back.events, rows);
  const capped = 2 * edge(cap.events, cap.rows) + cap.to / printed.stitchesPerCm;
  findings.must(
    Math.abs(capped - holes) <= 1 / printed.rowsPerCm + 1e-9,
    `the cap's edge is ${capped} cm, the armholes' ${holes} cm`,
  );
}

/** What is told beside an armhole or a cap whose way is still to be chosen says so. */
function openIsSaid({ plan, answers, findings }: Knitting): void {
  const chosen = (where: string) =>
    plan.steps.some(
      (step) => step.where.say === where && step.instead.some((one) => one.do === 'choose one'),
    );
  if (!valueGiven(answers, 'wishes', 'choices')?.choices.includes('top')) return;
  if (!['where: armhole', 'where: armhole of the front', 'where: sleeve cap'].some(chosen)) return;
  for (const { where, notes, instead } of plan.steps) {
    if (!OPENED.has(where.say) || instead.length === 0) continue;
    findings.meet('told beside an open armhole');
    findings.must(
      notes.some(({ say }) => say === 'note: armhole is open'),
      `${where.say} does not say that the armhole is open`,
    );
  }
}

const OPENED: ReadonlySet<string> = new Set(['where: front neck', 'where: back of the neck']);
