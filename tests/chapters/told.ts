/** A plan as its bare facts, a line each: what is done where, what is noted beside it, and each sum with its outcome. */

import type { Piece } from '../../src/fit/outline.ts';
import type { Cannot, Instruction, Outcome, Phrase, Plan, Step } from '../../src/fit/plan.ts';
import type { Quantity, WorkingLine } from '../../src/fit/working.ts';

/** Three decimals: a hundredth of a millimetre. */
function number(value: number): string {
  return `${Math.round(value * 1000) / 1000}`;
}

function figure(q: Quantity | string): string {
  return typeof q === 'string' ? q : `${number(q.value)} ${q.unit}`;
}

function sentence({ say, with: gaps }: Phrase): string {
  const filled = Object.values(gaps).map(figure).join(', ');
  return filled === '' ? say : `${say} (${filled})`;
}

/** Sums of spacing, which each shaping line brings along, and which its own tests hold. */
const OF_SPACING =
  /^(?:stitches to (?:lose|gain)|shaping rows|rows from the first interval|(?:pairs of )?rows to a shorter|(?:longer|shorter) intervals|a (?:longer|shorter) interval|plain rows (?:after|before)|first shaping row)/;

/** What is worked out, each once; a line that holds no sum but spacing's is left out. */
function sums(workings: readonly WorkingLine[]): string[] {
  const labels = workings.filter((w) => !OF_SPACING.test(w.label.replace(/^[a-z]+: /, '')));
  const told = labels.map(({ label, result }) => `${label} = ${figure(result)}`);
  return [...new Set(told)].map((line) => `  = ${line}`);
}

function stepTold({ piece, worked, where, pattern, instead, check, notes, workings }: Step): string[] {
  return [
    `${piece}${worked === null ? '' : `, ${worked}`}: ${sentence(where)}`,
    ...(pattern === null ? [] : [`  as printed: ${sentence(pattern)}`]),
    ...instead.map((i) => `  do: ${instructionTold(i)}`),
    ...(check === null ? [] : [`  ${sentence(check)}`]),
    ...notes.map((n) => `  ${sentence(n)}`),
    ...sums(workings),
  ];
}

/** Row by row from cast-on: `body, round, up: cast-on 0 (220), …`. */
function pieceTold({ name, worked, direction, levels }: Piece): string {
  const heights = levels.map((l) => `${l.name} ${l.row} (${l.stitches})`);
  return `${name}, ${worked}, ${direction}: ${heights.join(', ')}`;
}

function planTold({ steps, finished, pieces }: Pick<Plan, 'steps' | 'finished' | 'pieces'>): string[] {
  return [
    ...steps.flatMap(stepTold),
    ...finished.flatMap(({ name, pattern, range, hangsOn, workings }) => [
      `finished ${name}: ${number(range.low)} to ${number(range.high)} cm, ` +
        `in the pattern ${pattern === null ? 'not told' : number(pattern)}, hangs on ${hangsOn ?? 'nothing'}`,
      ...sums(workings),
    ]),
    ...pieces.flatMap(({ before, after, edge }) => [
      ...(before === null ? [] : [`piece before: ${pieceTold(before)}`]),
      `piece: ${pieceTold(after)}, seams ${edge}`,
    ]),
  ];
}

function cannotTold({ because, instead, workings }: Omit<Cannot, 'unit'>): string[] {
  return [...because.map(sentence), ...instead.map(sentence), ...sums(workings)];
}

export function outcomeTold(outcome: Outcome): string[] {
  return outcome.kind === 'plan' ? planTold(outcome.plan) : cannotTold(outcome);
}

function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' ? Math.round(value * 1000) / 1000 : value;
}

function instructionTold(i: Instruction): string {
  switch (i.do) {
    case 'say':
      return sentence(i.phrase);
    case 'cast on':
    case 'begin with':
    case 'bind off':
      return `${i.do} ${i.stitches}`;
    case 'work edging':
    case 'work plain':
      return `${i.do} ${i.rows} rows, ${number(i.length)} cm, on ${i.stitches}`;
    case 'shape':
      return `shape ${i.at}, ${i.spaced.from} to ${i.spaced.to} in ${i.spaced.rows} rows: ${i.spaced.shaping.map((s) => s.row).join(' ')}`;
    case 'shape edges': {
      const { at, from, to, rows, events } = i.schedule;
      return `shape ${at}, ${from} to ${to} in ${rows} rows: ${events.map((e) => `${e.row} (${e.after})`).join(' ')}`;
    }
    case 'divide':
      return `divide ${i.first}, ${i.bindOff} off, ${i.last}`;
    case 'short rows':
      return `short rows: ${i.wedge.turns.map((t) => `${t.row} ${t.stitches}`).join(', ')}`;
    case 'shape raglan':
      return `raglan ${i.raglan.direction}, ${i.raglan.from} to ${i.raglan.to} in ${i.raglan.rows} rows: ${i.raglan.shaping.map((s) => `${s.row} (${s.after})`).join(' ')}`;
    case 'choose one':
      return `choose one: ${i.ways.map((way) => [sentence(way.name), ...way.instead.map(instructionTold)].join(' / ')).join(' | ')}`;
    case 'work row':
      return `work row, ${i.before} to ${i.after}`;
    default:
      return `${i.do} ${JSON.stringify(i, rounded)}`;
  }
}
