/** Necks as they were knitted, and the counts at which the body, the sleeves and the yoke of a garment meet. */
import type { EdgeSchedule, Instruction, Plan, Step } from '../../src/fit/plan.ts';
import type { Knitting } from './knitting.ts';

type Edge = 'right' | 'left';

const ODD: readonly string[] = ['note: odd body under a raglan', 'note: odd body below a raglan'];

/** A front that was divided: stitches of its neck, rows from the dividing row to the shoulder, and those of the slope. */
export interface KnittedNeck {
  readonly stitches: number;
  readonly rows: number;
  /** Two rows a step; none where the shoulders are not sloped. */
  readonly slope: number;
  readonly centre: number;
  readonly last: EdgeSchedule;
  /** Stitches of each shoulder. */
  readonly shoulders: readonly [first: number, last: number];
}

export function told(plan: Plan, where: string): readonly Instruction[] {
  return plan.steps.filter((step) => step.where.say === where).flatMap((step) => step.instead);
}

export function scheduleAt(plan: Plan, where: string): EdgeSchedule | undefined {
  const [schedule] = told(plan, where).flatMap((one) => (one.do === 'shape edges' ? [one.schedule] : []));
  return schedule;
}

/** Undefined where no front is divided. */
export function frontNeck(plan: Plan): KnittedNeck | undefined {
  const [divided] = told(plan, 'where: front neck').flatMap((one) => (one.do === 'divide' ? [one] : []));
  const last = scheduleAt(plan, 'where: neck, the side on the needle');
  const first = scheduleAt(plan, 'where: neck, the other side');
  if (divided === undefined || last === undefined || first === undefined) return undefined;
  return {
    // The side that a right-side row knits last has its neck at the right.
    stitches: divided.bindOff + lostAt(last, 'right') + lostAt(first, 'left'),
    rows: last.rows,
    slope: slopeOf(told(plan, 'where: shoulder at the right')),
    centre: divided.bindOff,
    last,
    shoulders: [first.to, last.to],
  };
}

export function lostAt({ events }: EdgeSchedule, edge: Edge): number {
  return -events
    .filter((event) => event.edge === edge || event.edge === 'both')
    .reduce((sum, { change }) => sum + change, 0);
}

/** Rows of a shoulder's slope: a turn fewer than there are steps, since the last step runs to the neck. */
export function slopeOf(instructions: readonly Instruction[]): number {
  for (const one of instructions) {
    if (one.do === 'short rows') return one.wedge.rows + 2;
    if (one.do === 'shape edges') return 2 * one.schedule.events.filter(({ edge }) => edge !== 'left').length;
  }
  return 0;
}

/** Stitches of a yoke at its neck and at its underarm, as its first and last round have them. */
export function yokeEnds(plan: Plan, up: boolean): { neck: number; underarm: number } | undefined {
  const instructions = [...told(plan, 'where: raglan lines'), ...told(plan, 'where: yoke round')];
  const [begun] = instructions.flatMap((one) => (one.do === 'begin with' ? [one.stitches] : []));
  const ended = instructions
    .flatMap((one) => {
      if (one.do === 'work row') return [one.after];
      return one.do === 'shape raglan' ? [one.raglan.to] : [];
    })
    .at(-1);
  if (begun === undefined || ended === undefined) return undefined;
  return up ? { neck: ended, underarm: begun } : { neck: begun, underarm: ended };
}

/** What the pattern sets aside at each underarm is set aside still, whatever became of the sleeves. */
export function joinsMeet(knitting: Knitting): void {
  const { plan, answers, printed, bench, findings } = knitting;
  const ends = yokeEnds(plan, printed.body.up);
  if (ends === undefined) return;
  findings.at('yoke, body and sleeves');
  const body = bodyAtUnderarm(knitting);
  const sleeve = sleeveAtUnderarm(knitting);
  const [raglan] = told(plan, 'where: raglan lines').flatMap((one) =>
    one.do === 'shape raglan' ? [one.raglan] : [],
  );
  if (raglan !== undefined) {
    const part = (of: 'back' | 'front' | 'sleeve') => raglan.lines[of][printed.body.up ? 'from' : 'to'];
    if (sleeve !== undefined && bench.sure('sleeve'))
      aside(knitting, 'p_sleeve_yoke', printed.upperArm, sleeve, part('sleeve'), 'of a sleeve');
    if (body !== undefined) {
      aside(knitting, 'p_back_yoke', printed.back, printed.back, part('back'), 'of the back');
      findings.same(part('back'), part('front'), 'back and front where the yoke begins');
      // Both underarms take as many stitches: one that is over is spoken of.
      const odd = stepAt(plan, 'where: raglan lines')?.notes.some(({ say }) => ODD.includes(say)) ?? false;
      if (answers.p_bust?.given === 'value')
        findings.same(odd, (body - 2 * part('back')) % 2 === 1, 'a stitch over in front');
    }
    return;
  }
  const all = (one: number) => printed.bust + 2 * one;
  if (sleeve !== undefined && bench.sure('sleeve'))
    aside(knitting, 'p_yoke_underarm', all(printed.upperArm), all(sleeve), ends.underarm, 'of all');
}

function aside(
  { answers, findings }: Knitting,
  question: string,
  theirs: number,
  mine: number,
  yoke: number,
  whose: string,
): void {
  const answer = answers[question];
  if (answer?.given !== 'value' || answer.value.kind !== 'stitches') return;
  findings.meet(`stitches set aside ${whose}`);
  findings.same(mine - yoke, theirs - answer.value.count, `stitches set aside at the underarm ${whose}`);
}

function bodyAtUnderarm({ bench, printed, findings }: Knitting): number | undefined {
  const on = bench.at(printed.body.worked === 'round' ? 'body' : 'back');
  if (on === undefined || !on.whole) return undefined;
  if (printed.body.up) findings.same(printed.bust, on.needle.count, 'stitches of the body at the underarm');
  return printed.bust;
}

export function sleeveAtUnderarm({ plan, bench, printed }: Knitting): number | undefined {
  if (printed.sleeves.up) return bench.done.get('sleeve: where: cuff to underarm')?.count;
  const [begun] = told(plan, 'where: underarm to cuff').flatMap((one) =>
    one.do === 'begin with' ? [one.stitches] : [],
  );
  return begun;
}

/** The step of that name, where there is one. */
export function stepAt(plan: Plan, where: string): Step | undefined {
  return plan.steps.find((step) => step.where.say === where);
}
