/** A band's stitches and its buttonholes, in words. */
import type { Instruction } from '../fit/plan.ts';

type PickUp = Extract<Instruction, { do: 'pick up' }>;
type Buttonholes = Extract<Instruction, { do: 'place buttonholes' }>;

/** 'Pick up 71 stitches along 88 rows, about 4 in every 5 rows. (Pick up 5, one in each row, then skip a row) 3 times; …' */
export function wordPickUp({ stitches, rows, ratio, between, runs }: PickUp): string[] {
  const whole = `Pick up ${stitches} stitches along ${rows} rows`;
  if (between === 'nothing') return [`${whole}, one in each row.`];
  const about =
    ratio.rows === 1
      ? `about ${ratio.stitches} in every row`
      : `about ${ratio.stitches} in every ${ratio.rows} rows`;
  const then = between === 'a row skipped' ? 'then skip a row' : 'then one more between two rows';
  const spread = runs.map(({ pick, times }) => {
    const pickWords = pick === 0 ? then.replace('then ', '') : `pick up ${pick}, one in each row, ${then}`;
    return `(${pickWords}) ${times === 1 ? 'once' : `${times} times`}`;
  });
  return [`${whole}, ${about}.`, `Spread them so: ${spread.join('; ')}.`];
}

/** 'Buttonholes over stitches 4 to 6, 18 to 20 and 32 to 34.' */
export function wordButtonholes({ unit, holes }: Buttonholes): string[] {
  const places = holes.map(({ from, to }) => (from === to ? String(from) : `${from} to ${to}`));
  const one = unit === 'stitches' ? 'stitch' : 'row';
  const word = holes.length === 1 && holes[0]?.from === holes[0]?.to ? one : unit;
  const last = places.at(-1) ?? '';
  const listed = places.length < 2 ? last : `${places.slice(0, -1).join(', ')} and ${last}`;
  return [
    `Work the ${holes.length === 1 ? 'buttonhole' : 'buttonholes'} over ${word} ${listed}, counted from the end where you begin.`,
  ];
}
