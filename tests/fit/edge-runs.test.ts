/** Shaping at edges as a knitter says it: 'decrease at both edges, then on every 2nd row twice more'. */
import { describe, expect, it } from 'vitest';
import { edgeRuns, explainRuns } from '../../src/fit/edge-runs.ts';
import type { Edge, EdgeEvent } from '../../src/fit/edge-shaping.ts';
import { rows, stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

function event(row: number, by: EdgeEvent['by'], edge: Edge, change: number): EdgeEvent {
  return { row: rows(row), by, edge, change, after: stitches(50) };
}
const off = (row: number, edge: Edge, count: number) => event(row, 'bind off', edge, -count);
const dec = (row: number, edge: Edge = 'both', count = 1) => event(row, 'decrease', edge, -count);

/** `both 6, 1 time, row 1 to 2`. */
const said = (events: readonly EdgeEvent[]) =>
  edgeRuns(events).map(
    (run) =>
      `${run.by} ${run.stitches} ${run.edge}, ${run.times} times every ${run.every}, row ${run.first} to ${run.last}`,
  );

describe('shaping at edges', () => {
  it.each<[string, readonly EdgeEvent[], readonly string[]]>([
    [
      'an armhole: six off where two rows begin, then a stitch on three right-side rows',
      [off(1, 'right', 6), off(2, 'left', 6), dec(3), dec(5), dec(7)],
      ['bind off 6 both, 1 times every 0, row 1 to 2', 'decrease 1 both, 3 times every 2, row 3 to 7'],
    ],
    [
      'shoulders in steps: eight off at either edge twice, then seven',
      [
        off(1, 'right', 8),
        off(2, 'left', 8),
        off(3, 'right', 8),
        off(4, 'left', 8),
        off(5, 'right', 7),
        off(6, 'left', 7),
      ],
      ['bind off 8 both, 2 times every 2, row 1 to 4', 'bind off 7 both, 1 times every 0, row 5 to 6'],
    ],
    [
      'one shoulder alone, at one edge',
      [off(1, 'right', 8), off(3, 'right', 8), off(5, 'right', 7)],
      ['bind off 8 right, 2 times every 2, row 1 to 3', 'bind off 7 right, 1 times every 0, row 5 to 5'],
    ],
    [
      'its like on the other side',
      [off(2, 'left', 8), off(4, 'left', 8)],
      ['bind off 8 left, 2 times every 2, row 2 to 4'],
    ],
    [
      'another interval is another run',
      [dec(3), dec(5), dec(9), dec(13)],
      ['decrease 1 both, 2 times every 2, row 3 to 5', 'decrease 1 both, 2 times every 4, row 9 to 13'],
    ],
    [
      'so are more stitches, another edge, another way',
      [dec(1), dec(3, 'both', 2), dec(5, 'right', 2), off(7, 'right', 2)],
      [
        'decrease 1 both, 1 times every 0, row 1 to 1',
        'decrease 2 both, 1 times every 0, row 3 to 3',
        'decrease 2 right, 1 times every 0, row 5 to 5',
        'bind off 2 right, 1 times every 0, row 7 to 7',
      ],
    ],
    [
      'bind-offs at either edge with plain rows between are said one by one',
      [off(1, 'right', 4), off(2, 'left', 4), off(5, 'right', 4), off(6, 'left', 4)],
      ['bind off 4 both, 1 times every 0, row 1 to 2', 'bind off 4 both, 1 times every 0, row 5 to 6'],
    ],
  ])('%s', (_, events, expected) => {
    expect(said(events)).toEqual(expected);
  });

  it.each<[string, readonly EdgeEvent[]]>([
    ['where they differ', [off(1, 'right', 6), off(2, 'left', 5)]],
    ['where rows lie between', [off(1, 'right', 6), off(4, 'left', 6)]],
    ['where the left edge comes first', [off(1, 'left', 6), off(2, 'right', 6)]],
    ['where one is a decrease', [off(1, 'right', 6), dec(2, 'left', 6)]],
    ['where the other is one', [dec(1, 'right', 6), off(2, 'left', 6)]],
    ['where both are decreases', [dec(1, 'right', 6), dec(2, 'left', 6)]],
  ])('two edges are not said as one %s', (_, events) => {
    expect(edgeRuns(events).map((run) => run.edge)).toEqual(events.map((e) => e.edge));
  });

  it('are counted by their first row, their last and the rows between', () => {
    const events = [
      off(1, 'right', 8),
      off(2, 'left', 8),
      off(3, 'right', 8),
      off(4, 'left', 8),
      dec(5),
      dec(9),
      dec(13),
      dec(14, 'right'),
    ];
    expect(told(explainRuns(events))).toEqual([
      'shapings from row 1 to row 4: (a - b) / c + 1 = 2 times',
      'shapings from row 5 to row 13: (a - b) / c + 1 = 3 times',
    ]);
    expect(told(explainRuns([off(2, 'left', 8), off(4, 'left', 8)]))).toEqual([
      'shapings from row 2 to row 4: (a - b) / c + 1 = 2 times',
    ]);
  });
});
