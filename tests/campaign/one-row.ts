/** Changes spread over one row, as between an edging and the fabric above it: the row is knitted as it is written. */

import { CHANGES, type Change, MADE_OF } from '../../src/fit/row.ts';
import { type Spread, type SpreadAsk, spread } from '../../src/fit/spread.ts';
import { ENDS } from '../../src/fit/stretches.ts';
import { stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { Sweater } from './sweaters.ts';

export function knitOneRow({ body, toss }: Sweater, count: number, findings: Findings): void {
  findings.at('one row');
  const by: Change = CHANGES[Math.floor(CHANGES.length * (toss[6] ?? 0))] ?? 'm1';
  const { takes, leaves } = MADE_OF[by];
  const most = Math.floor(count / Math.max(1, takes));
  const repeat = (toss[7] ?? 0) < 0.2 ? 4 : 1;
  const ask: SpreadAsk = {
    stitches: stitches(count),
    change: (leaves - takes) * Math.floor(most * 0.6 * (toss[8] ?? 0)) + ((toss[9] ?? 0) < 0.1 ? 1 : 0),
    worked: body.worked,
    ends: ENDS[Math.floor(3 * (toss[10] ?? 0))] ?? 'half',
    ...(body.worked === 'flat' ? { edge: stitches(Math.floor(3 * (toss[11] ?? 0))) } : {}),
    ...(repeat > 1 ? { repeat: stitches(repeat) } : {}),
  };
  const named = Math.sign(ask.change) === Math.sign(leaves - takes) ? { ...ask, by } : ask;
  const found = spread(named);
  findings.meet(`one row: ${found.kind}`);
  findings.workings(found.workings);
  const ways: readonly (readonly Spread[])[] =
    found.kind === 'spread' ? [[found]] : found.alternatives.map((way) => way.rows);
  for (const way of ways) {
    const needle = Needle.castOn(count, body.worked);
    for (const row of way) {
      findings.same(row.before, needle.count, 'stitches before the row');
      findings.knit(() => needle.written(row.row));
      findings.same(row.after, needle.count, 'stitches after the row');
      findings.must(even(row, repeat), `stretches ${row.stretches.join()} are uneven`);
      findings.workings(row.workings);
    }
  }
  if (found.kind === 'spread') findings.same(count + ask.change, found.after, 'stitches asked for');
}

/** Plain stretches between two changes differ by one at most; at whole repeats, by one repeat. */
function even(row: Spread, repeat: number): boolean {
  const inner = row.symmetry === 'seamless' ? row.stretches : row.stretches.slice(1, -1);
  return inner.length === 0 || Math.max(...inner) - Math.min(...inner) <= repeat;
}
