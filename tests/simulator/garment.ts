/** Knits a plan's section as it is written: its rows, its shaping rows, its counts. Knows the published plan, not the engine. */
import type { Needle, Worked } from './needle.ts';

/** A spaced section as a plan states it. */
export interface StatedSection {
  readonly rows: number;
  readonly from: number;
  readonly to: number;
  readonly perRow: number;
  readonly shaping: readonly { readonly row: number; readonly after: number }[];
}

/** Knits on over a section; `lines` are stitches between which 4-stitch rounds are shaped: two side lines, evenly apart. */
export function knitSection(needle: Needle, section: StatedSection, worked: Worked): string[] {
  const faults: string[] = [];
  if (needle.count !== section.from) faults.push(`begins with ${needle.count}, not ${section.from}`);
  const shaped = new Map(section.shaping.map((s) => [s.row, s.after]));
  let before = section.from;
  for (let row = 1; row <= section.rows; row += 1) {
    const after = shaped.get(row);
    if (after === undefined) {
      needle.plain(1);
      continue;
    }
    const change = after - before;
    if (Math.abs(change) !== section.perRow) faults.push(`row ${row} changes ${change}`);
    shapeRow(needle, change, worked);
    if (needle.count !== after) faults.push(`row ${row} leaves ${needle.count}, not ${after}`);
    before = after;
  }
  if (needle.count !== section.to) faults.push(`ends with ${needle.count}, not ${section.to}`);
  return faults;
}

/** Half of the change at either end of a flat row; in the round a quarter on each side of two lines, or a half beside one. */
function shapeRow(needle: Needle, change: number, worked: Worked): void {
  if (worked === 'flat') {
    needle.shaped({ start: change / 2, end: change / 2 });
  } else if (change % 4 === 0) {
    needle.shaped({ at: fourPlaces(needle.count).map((before) => ({ before, change: change / 4 })) });
  } else {
    needle.shaped({
      at: [
        { before: 2, change: change / 2 },
        { before: needle.count - 4, change: change / 2 },
      ],
    });
  }
}

/** On either side of two lines half a round apart; on few stitches, as under a child's arm, simply a quarter apart. */
function fourPlaces(count: number): readonly number[] {
  const half = Math.floor(count / 2);
  if (count < 24) return [0, 1, 2, 3].map((nth) => Math.floor((nth * count) / 4));
  return [2, half - 4, half + 4, count - 4];
}
