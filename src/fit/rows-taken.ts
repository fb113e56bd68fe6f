/** Rows by which short rows lengthen what lies beside them, so that what follows can be counted on. */
import type { Gauge } from './gauge.ts';
import { type Instruction, type Part, phrase, type Step, type Way } from './plan.ts';
import { heightLine, plain, say } from './steps.ts';
import type { Stitches } from './units.ts';

/**
 * The short rows, where they take so many rows of the rest; undefined where they take others. Of several ways those
 * remain that take as many; a way that takes fewer is filled up with plain rows.
 */
export function takingRows(part: Part, own: number, gauge: Gauge): Part | undefined {
  const steps = part.steps.map((step) => stepTaking(step, own, gauge));
  return steps.every((step) => step !== undefined) ? { ...part, steps } : undefined;
}

function stepTaking(step: Step, own: number, gauge: Gauge): Step | undefined {
  const choice = step.instead.find((one) => one.do === 'choose one');
  if (choice === undefined) return rowsOf(step.instead) === own ? step : undefined;
  const [first] = choice.ways.flatMap(({ instead }) => needlesOf(instead));
  if (first === undefined) return undefined;
  const fitting = choice.ways.flatMap((way) => {
    const lacking = own - rowsOf(way.instead);
    return lacking < 0 ? [] : [{ lacking, way: lacking === 0 ? way : filledUp(way, lacking, first, gauge) }];
  });
  if (fitting.length === 0) return undefined;
  const ways = fitting.map(({ way }) => way);
  const heights = [...new Set(fitting.map(({ lacking }) => lacking))]
    .filter((lacking) => lacking > 0)
    .map((lacking) => heightLine('height of the plain rows', lacking, gauge));
  return {
    ...step,
    instead: step.instead.map((one) => offered(one, ways)),
    workings: [...step.workings, ...heights],
  };
}

function filledUp(way: Way, lacking: number, needle: Stitches, gauge: Gauge): Way {
  return { ...way, instead: [...way.instead, plain(lacking, needle, gauge)] };
}

function offered(instruction: Instruction, ways: readonly Way[]): Instruction {
  if (instruction.do === 'choose one') return { ...instruction, ways };
  const several = instruction.do === 'say' && instruction.phrase.say === 'do: one of these instead';
  return several && ways.length === 1 ? say(phrase('do: this way instead')) : instruction;
}

function rowsOf(instructions: readonly Instruction[]): number {
  return instructions.reduce((sum, one) => sum + rowsOfOne(one), 0);
}

function rowsOfOne(instruction: Instruction): number {
  if (instruction.do === 'work plain') return instruction.rows;
  if (instruction.do !== 'short rows') return 0;
  const { closing, firstRow } = instruction.wedge;
  return closing.ordinaryRows + (firstRow === 'wrong side' ? 1 : 0);
}

function needlesOf(instructions: readonly Instruction[]) {
  return instructions.flatMap((one) => (one.do === 'short rows' ? [one.wedge.needle] : []));
}
