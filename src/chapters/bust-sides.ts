/** Darts that run up and down in a body that is told: where they begin, and what the front has there. */
import { countAfterRow } from '../fit/body-count.ts';
import type { BodyShaping } from '../fit/body-shaping.ts';
import { type Stitches, stitches } from '../fit/units.ts';
import type { ShapedSides } from '../fit/vertical-dart-sides.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Made } from './figures.ts';

interface DartRows {
  /** The bust point in rows below the underarm, and the waist in rows below the bust point; null where they reach no waist. */
  readonly below: WorkingLine;
  readonly toWaist: WorkingLine | null;
  readonly withShortRows: boolean;
}

/** Undefined where they would begin or end in the edging, or where the sides cannot be shaped. */
export function besideDarts(
  body: BodyShaping,
  made: Made,
  { below, toWaist, withShortRows }: DartRows,
): { readonly front: Stitches; readonly sides: ShapedSides | null } | undefined {
  const up = made.direction === 'up';
  const all = body.inAll.result.value;
  const begins = up ? beginsAfter(body.inAll, below, toWaist) : null;
  const [start, bust] = [begins?.result.value ?? 0, up ? all - below.result.value : below.result.value];
  const end = up ? all : below.result.value + (toWaist?.result.value ?? 0);
  const edging = body.sections.find(({ name }) => name === 'edging')?.stretch.rows ?? 0;
  if ((up && start < edging) || (!up && end > all - edging)) return undefined;
  const [first, there, fullest, last] = [0, start, bust, end].map((row) => frontAfter(body, made, row));
  if (first === undefined || there === undefined || fullest === undefined || last === undefined)
    return undefined;
  const straight = body.sections.every(({ from, to }) => from === to);
  return { front: there, sides: straight ? null : { begins, first, atBust: withShortRows ? null : fullest } };
}

function frontAfter(body: BodyShaping, made: Made, row: number): Stitches | undefined {
  const count = countAfterRow(body, row);
  return count === undefined ? undefined : frontOf(made, count).front;
}

function beginsAfter(inAll: WorkingLine, below: WorkingLine, toWaist: WorkingLine | null): WorkingLine {
  const given = {
    a: inAll.result,
    b: below.result,
    ...(toWaist === null ? {} : { c: toWaist.result }),
  };
  return workOut('rows before the darts', toWaist === null ? 'a - b' : 'a - b - c', given, { unit: 'rows' });
}

/** In the round the front is half of all; an odd stitch goes to the back. */
export function frontOf(made: Made, needle: Stitches) {
  if (made.worked === 'flat') return { front: needle, workings: [] };
  const half = workOut(
    'stitches of the front',
    'a / 2',
    { a: quantity('stitches all round', needle, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  return { front: stitches(half.result.value), workings: [half] };
}
