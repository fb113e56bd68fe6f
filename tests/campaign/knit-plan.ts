/** Knits a part of a plan from nothing but its steps, and holds every figure of a step against what lies on the needle. */
import type { Gauge } from '../../src/fit/gauge.ts';
import type { Finished, Instruction, Part, Phrase, Step } from '../../src/fit/plan.ts';
import type { Quantity } from '../../src/fit/working.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';

export interface Fabric {
  readonly gauge: Gauge;
  /** Edge stitches of the piece, and how many such pieces go round. */
  readonly edge: number;
  readonly pieces: 1 | 2;
}

/** What came of it: the needle, and stitches and rows knitted after each step, by the step's place. */
export interface KnittedPart {
  readonly needle: Needle;
  readonly after: ReadonlyMap<string, { readonly stitches: number; readonly rows: number }>;
  /** A section could not be shaped: its step says why, and the needle stands before it. */
  readonly stopped: boolean;
}

/** Notes of a section that cannot be knitted as it is asked for. */
export const STOPPED: readonly string[] = [
  'note: cannot shape in these rows',
  'note: stitches do not divide',
];

/** `start`: stitches that are there already, where the piece goes on from another. */
export function knitPart(
  part: Part,
  fabric: Fabric,
  findings: Findings,
  start?: Needle,
): KnittedPart | undefined {
  const after = new Map<string, { stitches: number; rows: number }>();
  let needle: Needle | undefined;
  if (start !== undefined) {
    const begun = part.steps.flatMap((step) => step.instead).find((i) => i.do === 'begin with');
    findings.same(begun?.stitches, start.count, 'stitches that it begins with');
  }
  for (const step of part.steps) {
    stateFigures(step, findings);
    const instructions = step.instead.filter((i) => i.do !== 'say');
    const [first] = instructions;
    if (first?.do === 'begin with') needle = start ?? follow(first, needle, fabric, findings);
    if (step.notes.some((note) => STOPPED.includes(note.say)))
      return needle && { needle, after, stopped: true };
    if (instructions.length === 0) {
      findings.same('where: sleeve top', step.where.say, 'a step with nothing to do');
      measureTop(step, part, needle, fabric, findings);
      continue;
    }
    const before = needle?.log.length ?? 0;
    for (const instruction of instructions.slice(first?.do === 'begin with' ? 1 : 0))
      needle = follow(instruction, needle, fabric, findings);
    if (needle === undefined) return undefined;
    const knitted = { stitches: needle.count, rows: needle.log.length };
    after.set(step.where.say, knitted);
    measure(step, fabric, { ...knitted, section: knitted.rows - before }, findings);
  }
  return needle && { needle, after, stopped: false };
}

/** A sleeve knitted from its top begins with the count that its plan speaks of there. */
function measureTop(
  step: Step,
  part: Part,
  on: Needle | undefined,
  fabric: Fabric,
  findings: Findings,
): void {
  const begun = part.steps.flatMap((s) => s.instead).find((i) => i.do === 'begin with');
  const stitches = on?.count ?? begun?.stitches ?? 0;
  measure(step, fabric, { stitches, rows: 0, section: 0 }, findings);
}

function follow(
  instruction: Instruction,
  on: Needle | undefined,
  { gauge }: Fabric,
  findings: Findings,
): Needle | undefined {
  if (instruction.do === 'cast on' || instruction.do === 'begin with') {
    findings.must(on === undefined, `${instruction.do} where stitches are on the needle`);
    return Needle.castOn(instruction.stitches, gauge.worked);
  }
  if (!findings.must(on !== undefined, `${instruction.do} on an empty needle`) || on === undefined)
    return undefined;
  switch (instruction.do) {
    case 'work edging':
    case 'work plain':
      findings.same(instruction.stitches, on.count, `${instruction.do}, stitches`);
      if (instruction.length !== null)
        findings.near(instruction.length, instruction.rows / gauge.rows.perCm, `${instruction.do}, length`);
      return on.plain(instruction.rows);
    case 'shape':
      for (const fault of findings.knit(() => knitSection(on, instruction.spaced, gauge.worked)) ?? [])
        findings.must(false, fault);
      findings.workings(instruction.spaced.workings);
      findings.runs(instruction.spaced);
      return on;
    case 'bind off':
      findings.same(instruction.stitches, on.count, 'bind off');
      return on;
    default:
      findings.must(false, `nobody asked to ${instruction.do}`);
      return on;
  }
}

/** Every figure that a step's sentences name stands in its workings; what the pattern says is the pattern's. */
export function stateFigures(step: Step, findings: Findings): void {
  findings.workings(step.workings);
  const known = step.workings.flatMap((line) => [
    line.result,
    ...Object.values(line.given),
    // 'To the nearest multiple of 4' shows the 4.
    ...(line.rounding?.to === 'multiple' ? [{ value: line.rounding.multiple, unit: line.result.unit }] : []),
  ]);
  const said = [
    step.check,
    ...step.notes,
    ...step.instead.flatMap((i) => (i.do === 'say' ? [i.phrase] : [])),
  ];
  for (const phrase of said)
    for (const figure of figuresOf(phrase))
      findings.must(
        known.some((q) => q.unit === figure.unit && Math.abs(q.value - figure.value) < 1e-9),
        `'${phrase?.say}' names ${figure.value} ${figure.unit}, which no working shows`,
      );
}

export function figuresOf(phrase: Phrase | null): readonly Quantity[] {
  return Object.values(phrase?.with ?? {}).filter((gap) => typeof gap !== 'string');
}

/** What the tape shows at the end of a step. */
function measure(
  { check }: Step,
  { gauge, edge, pieces }: Fabric,
  knitted: { readonly stitches: number; readonly rows: number; readonly section: number },
  findings: Findings,
): void {
  if (check === null) return;
  const [figure] = figuresOf(check);
  if (!findings.must(figure !== undefined, `'${check.say}' names no figure`) || figure === undefined) return;
  const width = (knitted.stitches - edge) / gauge.stitches.perCm;
  switch (check.say) {
    case 'check: width':
      findings.near(figure.value, width, check.say);
      return;
    case 'check: width around':
    case 'check: width of both':
      findings.near(figure.value, pieces * width, check.say);
      return;
    case 'check: length so far':
      findings.near(figure.value, knitted.section / gauge.rows.perCm, check.say);
      return;
    case 'check: length in all':
      return;
    default:
      findings.must(false, `nobody knows how to do '${check.say}'`);
  }
}

/** A finished measurement against the count that lies behind it, and its range against two standard errors. */
export function finishedAs(
  part: Part,
  name: string,
  counted: { readonly of: 'stitches' | 'rows'; readonly count: number },
  { gauge, edge, pieces }: Fabric,
  findings: Findings,
): void {
  const finished = part.finished.find((f) => f.name === name);
  if (!findings.must(finished !== undefined, `no finished ${name}`) || finished === undefined) return;
  const rate = counted.of === 'stitches' ? gauge.stitches : gauge.rows;
  const length =
    counted.of === 'stitches' ? (pieces * (counted.count - edge)) / rate.perCm : counted.count / rate.perCm;
  findings.near(finished.range.expected, length, `finished ${name}`);
  ranged(finished, length, (2 * rate.se) / rate.perCm, findings);
}

function ranged(
  { name, range, workings }: Finished,
  length: number,
  share: number,
  findings: Findings,
): void {
  findings.near(range.low, length * (1 - share), `finished ${name}, at least`);
  findings.near(range.high, length * (1 + share), `finished ${name}, at most`);
  findings.workings(workings);
}
