/** Follows one instruction of a plan on the needle of its piece; of several ways it tries each. */
import type { Instruction, Step } from '../../src/fit/plan.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { Bench, copied, type Place } from './bench.ts';
import { aside, asideOf, divide, edges, raglan, shortRows } from './knit-edges.ts';
import { beginWith, type Knitting, startOf } from './knitting.ts';

export function follow(
  knitting: Knitting,
  instruction: Exclude<Instruction, { do: 'say' }>,
  step: Step,
  place: Place,
): void {
  const { bench, findings } = knitting;
  const worked = step.worked ?? 'flat';
  findings.meet(instruction.do);
  switch (instruction.do) {
    case 'cast on':
      findings.must(bench.at(place) === undefined, 'cast on where stitches are on the needle');
      bench.put(place, { needle: Needle.castOn(instruction.stitches, worked), below: 0, whole: true });
      return;
    case 'begin with':
      beginWith(knitting, instruction.stitches, place, worked);
      return;
    case 'work edging':
    case 'work plain': {
      const on = startOf(knitting, place, instruction.stitches, worked);
      findings.near(
        instruction.length,
        instruction.rows / knitting.printed.rowsPerCm,
        `${instruction.do}, length`,
      );
      on.needle.plain(instruction.rows);
      return;
    }
    case 'shape':
      shape(knitting, instruction, place, worked);
      return;
    case 'bind off': {
      const on = bench.at(place);
      // After a choice that is left to the knitter the count on the needle is not known.
      if (on !== undefined || bench.sure(place))
        findings.same(instruction.stitches, on?.needle.count, 'bind off');
      return;
    }
    case 'short rows': {
      const { wedge } = instruction;
      if (aside(knitting, place, wedge)) return;
      const on = startOf(knitting, place, wedge.needle, worked);
      if (worked === 'flat' && wedge.firstRow === 'right side')
        findings.same('right side', on.needle.next.side, 'the side on which short rows begin');
      shortRows(knitting, on, wedge);
      return;
    }
    case 'shape edges': {
      edges(knitting, instruction.schedule, place);
      return;
    }
    case 'divide':
      divide(knitting, instruction, place);
      return;
    case 'work row': {
      const on = startOf(knitting, place, instruction.before, worked);
      on.needle.written(instruction.row);
      findings.same(instruction.after, on.needle.count, 'stitches after a written row');
      return;
    }
    case 'shape raglan':
      raglan(knitting, instruction.raglan, worked);
      return;
    case 'choose one':
      choose(knitting, instruction.ways, step, place);
      return;
    default:
      findings.must(false, `nobody asked to ${instruction.do}`);
  }
}

function shape(
  knitting: Knitting,
  { spaced, at }: Extract<Instruction, { do: 'shape' }>,
  place: Place,
  worked: 'flat' | 'round',
): void {
  const { bench, findings } = knitting;
  const on = startOf(knitting, place, spaced.from, place === 'darts' ? 'flat' : worked);
  if (place === 'darts') bench.dartFront = Math.min(bench.dartFront ?? spaced.from, spaced.from, spaced.to);
  findings.runs(spaced);
  findings.workings(spaced.workings);
  // The stitches of darts lie between those of the body: only their rows and counts are knitted here.
  const way = place === 'darts' ? 'round' : worked;
  findings.must(at !== 'one edge', 'a piece shaped at one edge');
  for (const fault of knitSection(on.needle, spaced, way)) findings.must(false, fault);
}

/**
 * Each way is knitted on stitches like these. Short rows leave the stitches as they are, so that the first way is gone
 * on with; after any other, what follows rests on the way that is chosen, which is not known.
 */
function choose(
  knitting: Knitting,
  ways: Extract<Instruction, { do: 'choose one' }>['ways'],
  step: Step,
  place: Place,
): void {
  const { bench, findings } = knitting;
  const worked = step.worked ?? 'flat';
  const goesOn = ways.every(({ instead }) => instead.every(({ do: what }) => BESIDE_STITCHES.has(what)));
  const [wedge] = ways.flatMap(({ instead }) =>
    instead.flatMap((one) => (one.do === 'short rows' ? [one.wedge] : [])),
  );
  const added = wedge === undefined ? 0 : asideOf(knitting, wedge);
  const before =
    goesOn && wedge !== undefined ? startOf(knitting, place, wedge.needle - added, worked) : undefined;
  for (const { name, instead } of ways) {
    findings.meet(name.say);
    const tried = new Bench(findings);
    for (const one of PARTED) tried.leave(one);
    if (before !== undefined && wedge !== undefined)
      tried.put(
        place,
        added === 0 ? copied(before, worked) : { ...before, needle: Needle.castOn(wedge.needle, worked) },
      );
    else tried.leave(place);
    for (const one of instead)
      if (one.do !== 'say') follow({ ...knitting, bench: tried }, one, step, placeIn(one, tried, place));
  }
  const [first] = ways;
  if (before === undefined || first === undefined) bench.leave(place);
  else if (added > 0) before.needle.plain(rowsTaken(first.instead));
  else for (const one of first.instead) if (one.do !== 'say') follow(knitting, one, step, place);
}

const PARTED = ['body', 'back', 'front'] as const;

function rowsTaken(instructions: readonly Instruction[]): number {
  return instructions.reduce((sum, one) => {
    if (one.do === 'work plain') return sum + one.rows;
    return one.do === 'short rows'
      ? sum + one.wedge.closing.ordinaryRows + (one.wedge.firstRow === 'wrong side' ? 1 : 0)
      : sum;
  }, 0);
}

const BESIDE_STITCHES: ReadonlySet<Instruction['do']> = new Set(['say', 'short rows', 'work plain']);

/** A front that was divided goes on with the side on the needle, then with the other. */
function placeIn(instruction: Instruction, bench: Bench, place: Place): Place {
  if (place !== 'front' || instruction.do !== 'shape edges' || instruction.schedule.at !== 'neck edge')
    return place;
  const last = bench.at('last side');
  return last !== undefined && last.needle.log.length === 0 ? 'last side' : 'first side';
}
