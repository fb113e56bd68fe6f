/** Knits edge events on a needle, row by row; a bind-off at the edge where its row does not begin throws. */
import { Needle } from './needle.ts';

export interface Event {
  readonly row: number;
  readonly edge: 'right' | 'left' | 'both';
  readonly by: 'bind off' | 'decrease' | 'increase';
  readonly change: number;
  readonly after: number;
}

/** A flat needle after so many rows of a section that begins with `count` stitches; every stated count is checked. */
export function knitEdges(count: number, events: readonly Event[], rows: number): Needle {
  return knitEdgesOn(Needle.castOn(count, 'flat'), events, rows);
}

/** The same on a needle that holds a piece already, with a right-side row to come. */
export function knitEdgesOn(needle: Needle, events: readonly Event[], rows: number): Needle {
  for (let row = 1; row <= rows; row++)
    knitRow(
      needle,
      events.filter((event) => event.row === row),
    );
  if (events.some((event) => event.row > rows || event.row < 1))
    throw new Error('an event lies outside the section');
  return needle;
}

/** The right edge from corner to corner, in centimetres, by plain geometry. */
export function edgeOf(
  events: readonly Event[],
  rows: number,
  stitchesPerCm: number,
  rowsPerCm: number,
): number {
  let [length, below] = [0, 0];
  for (const event of events.filter((e) => e.edge !== 'left')) {
    length += Math.hypot(event.change / stitchesPerCm, (event.row - 1 - below) / rowsPerCm);
    below = event.row - 1;
  }
  return length + (rows - below) / rowsPerCm;
}

function knitRow(needle: Needle, events: readonly Event[]): void {
  const { side } = needle.next;
  const begins = side === 'right side' ? 'right' : 'left';
  const off = events.filter((event) => event.by === 'bind off');
  const shaped = events.filter((event) => event.by !== 'bind off');
  for (const event of off) {
    if (event.edge !== begins) throw new Error(`a ${side} row cannot bind off at its ${event.edge} edge`);
    needle.bindOff(-event.change);
  }
  if (shaped.length === 0) needle.finish();
  else if (off.length > 0) decreasedAtTheEnd(needle, begins, shaped);
  else needle.shaped({ start: at('right', shaped), end: at('left', shaped) });
  const last = events.at(-1);
  if (last !== undefined && last.after !== needle.count)
    throw new Error(`row ${last.row} states ${last.after} stitches, the needle holds ${needle.count}`);
}

/** After a bind-off where the row begins, a decrease where it ends. */
function decreasedAtTheEnd(
  needle: Needle,
  begins: 'right' | 'left',
  [event, ...more]: readonly Event[],
): void {
  if (event === undefined || more.length > 0 || event.edge === begins || event.edge === 'both')
    throw new Error('a row that binds off shapes nothing else but its other end');
  if (event.change !== -1) throw new Error(`${event.change} stitches at the end of a row`);
  needle
    .knit(needle.count - 2)
    .change(2, 1)
    .finish();
}

function at(edge: 'right' | 'left', events: readonly Event[]): number {
  return events
    .filter((event) => event.edge === edge || event.edge === 'both')
    .reduce((sum, event) => sum + event.change, 0);
}
