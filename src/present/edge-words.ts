/** Shaping at the edges of a section in knitters' words, with every shaping row and the count after it. */
import { type EdgeRun, edgeRuns } from '../fit/edge-runs.ts';
import type { EdgeSchedule, Instruction } from '../fit/plan.ts';
import { ordinal } from './shaping-words.ts';
import { inDialect } from './terms.ts';
import type { Voice } from './wording.ts';

/** 'Bind off 6 stitches at the beginning of rows 1 and 2. Decrease 1 stitch at each edge in row 3 and …' */
export function wordEdges({ events, rows, to, at }: EdgeSchedule, voice: Voice): string {
  const said = edgeRuns(events).map((run) => `${wordRun(run, at)}.`);
  const last = events.at(-1)?.row ?? 0;
  const work = said.length === 0 ? 'Work' : 'Then work';
  const straight = last < rows ? [`${work} straight until row ${rows} is done.`] : [];
  return inDialect(
    [...said, ...straight, to === 0 ? 'No stitch is left.' : `You end with ${to} stitches.`].join(' '),
    voice.dialect,
  );
}

/** 'Row 1 (right side): work 30 stitches, bind off 12, work 30 more. In the same row decrease 1 at each edge.' */
export function wordDivided(
  { first, bindOff, last, atEdges }: Extract<Instruction, { do: 'divide' }>,
  voice: Voice,
): string {
  const middle =
    bindOff === 0
      ? `work ${first} stitches and let them wait, then work the last ${last}.`
      : `work ${first} stitches, [bind off] the next ${bindOff === 1 ? 'one' : bindOff}, and work the last ${last}.`;
  const edges =
    atEdges === 0
      ? ''
      : ` In the same row decrease ${atEdges} of them at each armhole edge: ${first - atEdges} remain on each side.`;
  return inDialect(`Row 1 (right side): ${middle}${edges}`, voice.dialect);
}

/** 'Rows that shape, with the count after each: 1 (94), 2 (88) …' */
export function wordEdgeRows({ events }: EdgeSchedule): string {
  return `Rows that shape, with the count after each: ${events.map((e) => `${e.row} (${e.after})`).join(', ')}.`;
}

function wordRun(run: EdgeRun, at: EdgeSchedule['at']): string {
  const count = `${run.stitches} ${run.stitches === 1 ? 'stitch' : 'stitches'}`;
  if (run.by === 'bind off') return `[Bind off] ${count} ${beginnings(run, at)}`;
  const verb = run.by === 'decrease' ? 'Decrease' : 'Increase';
  const where =
    run.edge === 'both' ? 'at each edge' : `at the ${at === 'both edges' ? `${run.edge} edge` : at}`;
  const rows = run.times === 1 ? `in row ${run.first}` : series(run);
  return `${verb} ${count} ${where} ${rows}`;
}

/** 'in row 7 and in every 2nd row after it up to row 15: 5 times in all' */
function series({ first, last, every, times }: EdgeRun): string {
  if (times === 2) return `in rows ${first} and ${last}`;
  if (every === 1) return `in every row from row ${first} to row ${last}: ${times} times in all`;
  return `in row ${first} and in every ${ordinal(every)} row after it up to row ${last}: ${times} times in all`;
}

/** A bind-off lies where its row begins. */
function beginnings(run: EdgeRun, at: EdgeSchedule['at']): string {
  const { first, last, every, times } = run;
  if (run.edge === 'both') {
    return times === 1
      ? `at the beginning of row ${first} and of row ${last}`
      : `at the beginning of each row from row ${first} to row ${last}`;
  }
  const edge = at === 'both edges' ? '' : `at the ${at}, `;
  if (times === 2) return `${edge}where rows ${first} and ${last} begin`;
  return times === 1
    ? `${edge}where row ${first} begins`
    : `${edge}where row ${first} begins and in every ${ordinal(every)} row after it up to row ${last}: ${times} times in all`;
}
