/** What a plan says of the pattern itself: its size at the knitter's gauge, and its figures beside the finished ones. */
import type { Knitting } from './knitting.ts';
import { figure } from './whole-checks.ts';

/** The size that is followed, beside the others: as its own counts come out at the knitter's gauge. */
export function sizeAsPrinted({ plan, printed, findings }: Knitting): void {
  const [summary] = plan.summary.filter(({ say }) => say === 'summary: size and bust');
  if (summary === undefined || printed.lengths === null) return;
  const { stitchesPerCm: perCm, edge } = printed;
  const around = ((printed.body.worked === 'round' ? 1 : 2) * (printed.bust - edge.body)) / perCm;
  const own: Readonly<Record<string, number>> = {
    bust: around,
    'upper arm': (printed.upperArm - edge.sleeves) / perCm,
    wrist: (printed.wrist - edge.sleeves) / perCm,
  };
  findings.at('the size');
  findings.near(figure(summary, 'bust'), around, 'bust of the summary');
  const sizes = plan.steps
    .flatMap(({ instead }) => instead)
    .flatMap((one) => (one.do === 'compare sizes' ? one.sizes : []));
  for (const { label, regions } of sizes)
    for (const { region, knitted, wanted, difference } of regions) {
      findings.near(difference, knitted - wanted, `${region} less what is wanted`);
      const mine = label === summary.with.size ? own[region] : undefined;
      if (mine === undefined) continue;
      findings.meet('figure held: compared size');
      findings.near(knitted, mine, `${region} of the size that is followed`);
    }
}

/** Beside each finished measurement stands what the pattern's own count gives at the knitter's gauge, or its own length. */
export function finishedBesidePattern({ plan, answers, printed, findings }: Knitting): void {
  findings.at('finished, beside the pattern');
  const { stitchesPerCm: perCm, edge, lengths } = printed;
  const pieces = printed.body.worked === 'round' ? 1 : 2;
  const around = (count: number) => (pieces * (count - edge.body)) / perCm;
  const arm = (count: number) => (count - edge.sleeves) / perCm;
  const theirs: Readonly<Record<string, number | undefined>> = {
    bust: around(printed.bust),
    'lower edge': around(printed.hem),
    'upper arm': arm(printed.upperArm),
    wrist: arm(printed.wrist),
    'armhole depth': lengths?.armhole,
    'body, lower edge to underarm': lengths?.body,
    'sleeve, cuff to underarm': lengths?.sleeve,
  };
  for (const { name, pattern } of plan.finished) {
    const mine = theirs[name];
    const question = ASKED[name];
    // Of a pattern of her own, what she does not know is not held here.
    const known = lengths !== null || (question !== undefined && answers[question]?.given === 'value');
    if (pattern === null || mine === undefined || !known) continue;
    findings.meet('figure held: the pattern beside the finished');
    findings.near(pattern, mine, `${name} of the pattern`);
  }
}

const ASKED: Readonly<Record<string, string>> = {
  bust: 'p_bust',
  'lower edge': 'p_hem_stitches',
  'upper arm': 'p_upper_arm',
  wrist: 'p_wrist',
};

/** What stands at a step as the pattern's own, from its counts and lengths. */
export function patternAsPrinted({ plan, answers, printed, findings }: Knitting): void {
  const { stitchesPerCm: perCm, rowsPerCm, lengths } = printed;
  // Where she does not know it, the body is taken as straight, and the plan says so.
  const known = lengths !== null || answers.p_hem_stitches?.given === 'value';
  const hem = known ? printed.hem : printed.bust;
  for (const step of plan.steps) {
    const { pattern } = step;
    if (pattern === null) continue;
    findings.at(`the pattern at ${step.where.say}`);
    const sleeve = step.piece === 'sleeve';
    const made = sleeve ? printed.sleeves : printed.body;
    const ends = sleeve ? [printed.wrist, printed.upperArm] : [hem, printed.bust];
    const [from, to] = made.up ? ends : [...ends].reverse();
    const own: Readonly<Record<string, Readonly<Record<string, number | undefined>>>> = {
      'pattern: cast on': { count: sleeve ? printed.wrist : hem },
      'pattern: from a count to a count': { from, to },
      'pattern: straight on a count': { count: from === to ? from : undefined },
      'pattern: upper arm': { count: printed.upperArm },
      'pattern: armhole': {
        depth: lengths?.armhole,
        rows: pattern.with.depth === undefined ? undefined : evenly(figure(pattern, 'depth') * rowsPerCm),
      },
      'pattern: front neck': { width: printed.neck / perCm },
    };
    for (const [name, value] of Object.entries(own[pattern.say] ?? {})) {
      if (value === undefined) continue;
      findings.meet(`figure held: ${pattern.say}`);
      findings.near(figure(pattern, name), value, `${pattern.say}: ${name}`);
    }
  }
}

/** The nearest even number of rows, and of two the larger. */
function evenly(exact: number): number {
  return 2 * Math.floor(exact / 2 + 0.5 + 1e-9);
}
