/** A section's shaping as a ladder to climb: every shaping row with the plain rows before it and the count after it. */
import type { EdgeEvent } from '../../fit/edge-shaping.ts';
import type { EdgeSchedule, Instruction, RaglanLines, ShapedAt, Step } from '../../fit/plan.ts';
import { RAGLAN_PARTS, type RaglanRow } from '../../fit/raglan-shape.ts';
import type { Spaced } from '../../fit/spacing.ts';
import type { Worked } from '../../fit/words.ts';
import { wordEdgeRows, wordEdges } from '../edge-words.ts';
import { wordRaglan, wordRaglanRows } from '../raglan-words.ts';
import { wordSchedule, wordShaping } from '../shaping-words.ts';
import { inDialect } from '../terms.ts';
import type { View } from '../view.ts';
import { countedRows, rowWord, stepTitle } from './words.ts';

export interface Rung {
  /** Counted from 1, the first row of the section. */
  readonly row: number;
  readonly after: number;
  readonly plainBefore: number;
  /** What is done in this row, where rows differ in that: 'bind off 6 right'. */
  readonly note: string | null;
}

export interface StripFigures {
  readonly title: string;
  readonly worked: Worked;
  readonly from: number;
  /** In the order of knitting. */
  readonly rungs: readonly Rung[];
  /** Null where the ladder goes on in another part. */
  readonly plainAfter: number | null;
  readonly rows: number;
  /** The whole in knitters' words. */
  readonly words: string;
  readonly schedule: string;
}

/** One for each instruction of the step that shapes. */
export function stripsOf(step: Step, view: View): StripFigures[] {
  const worked = step.worked ?? 'flat';
  const title = stepTitle(step, view);
  return step.instead
    .flatMap((instruction) => stripOf(instruction, title, worked, view) ?? [])
    .filter((strip) => strip.rungs.length > 0);
}

function stripOf(
  instruction: Instruction,
  title: string,
  worked: Worked,
  view: View,
): StripFigures | undefined {
  switch (instruction.do) {
    case 'shape':
      return spacedStrip(title, instruction.spaced, instruction.at, worked);
    case 'shape edges':
      return edgeStrip(title, instruction.schedule, worked, view);
    case 'shape raglan':
      return raglanStrip(title, instruction.raglan, worked);
    default:
      return undefined;
  }
}

function spacedStrip(title: string, spaced: Spaced, at: ShapedAt, worked: Worked): StripFigures {
  const rows = spaced.shaping.map(({ row, after }) => ({ row, after, note: null }));
  return {
    ...ladder(rows, spaced),
    title,
    worked,
    words: wordShaping(spaced, at, worked),
    schedule: wordSchedule(spaced, worked),
  };
}

function edgeStrip(title: string, schedule: EdgeSchedule, worked: Worked, view: View): StripFigures {
  const shaped = [...new Set(schedule.events.map((e) => e.row))].map((row) => {
    const events = schedule.events.filter((e) => e.row === row);
    const note = inDialect(events.map((e) => wordEvent(e, schedule.at)).join(', '), view.dialect);
    return { row, after: events.at(-1)?.after ?? schedule.from, note };
  });
  return {
    ...ladder(shaped, schedule),
    title,
    worked,
    words: wordEdges(schedule, { ...view, worked }),
    schedule: wordEdgeRows(schedule),
  };
}

/** Where one edge alone is shaped, which it is stands above the ladder. */
function wordEvent({ by, change, edge }: EdgeEvent, at: EdgeSchedule['at']): string {
  const where = at !== 'both edges' ? '' : edge === 'both' ? ' at both' : ` ${edge}`;
  return `${by === 'bind off' ? '[bind off]' : by} ${Math.abs(change)}${where}`;
}

function raglanStrip(title: string, raglan: RaglanLines, worked: Worked): StripFigures {
  const rows = raglan.shaping.map((shaped) => ({ ...shaped, note: raglanNote(shaped) }));
  return {
    ...ladder(rows, raglan),
    title,
    worked,
    words: wordRaglan(raglan, worked)
      .map((w) => w.replace(/^\s*- /, ''))
      .join(' '),
    schedule: wordRaglanRows(raglan, worked),
  };
}

/** The parts that are shaped in this row. */
function raglanNote({ change }: RaglanRow): string {
  const shaped = RAGLAN_PARTS.filter((part) => change[part] !== 0);
  return shaped.length === RAGLAN_PARTS.length ? 'all parts' : shaped.join(', ');
}

type Ladder = Pick<StripFigures, 'from' | 'rungs' | 'plainAfter' | 'rows'>;

/** Notes that are alike on every rung are left out: the words above the ladder say it. */
function ladder(
  shaped: readonly Omit<Rung, 'plainBefore'>[],
  section: { readonly from: number; readonly rows: number },
): Ladder {
  const alike = new Set(shaped.map((s) => s.note)).size === 1;
  const rungs = shaped.map(({ row, after, note }, i) => ({
    row,
    after,
    plainBefore: row - (shaped[i - 1]?.row ?? 0) - 1,
    note: alike ? null : note,
  }));
  const { from, rows } = section;
  return { from, rows, rungs, plainAfter: rows - (shaped.at(-1)?.row ?? 0) };
}

/** The ladder in parts of at most so many rungs, about equally long; the first has the words of all. */
export function partsOf(strip: StripFigures, most: number): StripFigures[] {
  const count = Math.ceil(strip.rungs.length / most);
  if (count <= 1) return [strip];
  const each = Math.ceil(strip.rungs.length / count);
  return Array.from({ length: count }, (_, i) => {
    const rungs = strip.rungs.slice(i * each, (i + 1) * each);
    const before = strip.rungs[i * each - 1];
    const last = i === count - 1;
    const title = `${strip.title}, part ${i + 1} of ${count}`;
    const part = { ...strip, title, rungs, plainAfter: last ? strip.plainAfter : null };
    if (before === undefined) return part;
    const words = `Goes on after ${rowWord(strip.worked, 1)} ${before.row}.`;
    const schedule = `${rungs.map((r) => `${r.row} (${r.after})`).join(', ')}.`;
    return { ...part, from: before.after, words, schedule };
  });
}

export function endWords({ plainAfter }: StripFigures): string {
  if (plainAfter === null) return 'goes on';
  return plainAfter === 0 ? 'end' : `then ${plainAfter} plain`;
}

export function stripAlternative(strip: StripFigures): string {
  const from = `It begins with ${strip.from} stitches and has ${countedRows(strip.rows, strip.worked)}.`;
  return `${strip.title}. ${from} ${strip.words} ${strip.schedule}`;
}
