/** Knits edge events on a needle, row by row; a bind-off at the edge where its row does not begin throws. */
import { Needle } from './needle.ts';

interface Event {
  readonly row: number;
  readonly edge: 'right' | 'left' | 'both';
  readonly by: 'bind off' | 'decrease' | 'increase';
  readonly change: number;
  readonly after: number;
}

/** A flat needle after so many rows of a section that begins with `count` stitches; every stated count is checked. */
export function knitEdges(count: number, events: readonly Event[], rows: number): Needle {
  const needle = Needle.castOn(count, 'flat');
  for (let row = 1; row <= rows; row++)
    knitRow(
      needle,
      events.filter((event) => event.row === row),
    );
  if (events.some((event) => event.row > rows || event.row < 1))
    throw new Error('an event lies outside the section');
  return needle;
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
  else if (off.length > 0) throw new Error('a row that binds off shapes nothing else here');
  else needle.shaped({ start: at('right', shaped), end: at('left', shaped) });
  const last = events.at(-1);
  if (last !== undefined && last.after !== needle.count)
    throw new Error(`row ${last.row} states ${last.after} stitches, the needle holds ${needle.count}`);
}

function at(edge: 'right' | 'left', events: readonly Event[]): number {
  return events
    .filter((event) => event.edge === edge || event.edge === 'both')
    .reduce((sum, event) => sum + event.change, 0);
}
