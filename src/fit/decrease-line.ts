/** A line of decreases on a flat piece: right-side rows alone where they are enough, else wrong-side rows too. */
import { capacity, type Spaced, type SpacingAsk, space } from './spacing.ts';
import { type Rows, rows, type Stitches } from './units.ts';

export interface DecreaseLineAsk {
  readonly from: Stitches;
  readonly to: Stitches;
  /** 1 at one edge, 2 at both. */
  readonly perRow: 1 | 2;
  /** Even number of rows that may be used; the first is a right-side row. */
  readonly room: number;
  /** On every right-side row, then straight; or evenly over all the room. */
  readonly pace: 'quick' | 'spread';
}

/** Throws where there are more decreases than rows. */
export function decreaseLine({ from, to, perRow, room, pace }: DecreaseLineAsk): Spaced {
  const times = (from - to) / perRow;
  const ask: SpacingAsk = {
    rows: rows(pace === 'quick' ? Math.min(2 * times, room) : room),
    from,
    to,
    perRow,
    carriers: 'odd rows',
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
  };
  const spaced = space(
    capacity(ask) >= times
      ? ask
      : {
          ...ask,
          ...(pace === 'quick' ? { rows: afterWrongSides(times, room) } : {}),
          carriers: 'every row',
        },
  );
  if (spaced.kind !== 'spaced') throw new RangeError(`${times} decreases do not fit into ${room} rows`);
  return spaced;
}

/** One row fewer than the room, so that the rows after the quick ones shape on right-side rows; all where each is needed. */
function afterWrongSides(times: number, room: number): Rows {
  return rows(times < room ? room - 1 : room);
}
