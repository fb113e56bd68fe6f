/** The workings of a wedge: its rows, the division of its base, and the place of every turn. */
import { type Base, slopeOf, type WedgeAsk } from './wedge-base.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

/** From the depth to the rows, the turns on each side, and the depth that these rows give. */
export function explainRows(
  ask: WedgeAsk,
): readonly [rows: WorkingLine, turns: WorkingLine, depth: WorkingLine] {
  const rate = quantity('rows', ask.gauge.rowsPerCm, 'rows/cm');
  const depth = quantity('depth', ask.depth, 'cm');
  const even = { unit: 'rows', rounding: { to: 'even' } } as const;
  const short = workOut('short rows', 'a * b', { a: depth, b: rate }, even);
  const turns = workOut('turns on each sloped side', 'a / 2', { a: short.result }, { unit: 'times' });
  return [short, turns, workOut('depth as knitted', 'a / b', { a: short.result, b: rate }, { unit: 'cm' })];
}

/** How many turns the base holds when every step is one stitch. */
export function explainMost(ask: WedgeAsk): readonly WorkingLine[] {
  const base = explainSlope(ask);
  const ends = quantity('steps beyond the turns at the ends', slopeOf(ask).endSteps, 'times');
  const given = { a: base.slope.result, b: ends };
  return [...Object.values(base), workOut('most turns on each side', 'a + 1 - b', given, { unit: 'times' })];
}

/** The division of the base, and each turn counted from its marker. */
export function explainTurns(ask: WedgeAsk, base: Base): readonly WorkingLine[] {
  const [, turns] = explainRows(ask);
  const { base: whole, slope, middle } = explainSlope(ask);
  const ends = quantity('steps beyond the turns at the ends', base.endSteps, 'times');
  const pieces = workOut(
    'steps on each sloped side',
    'a - 1 + b',
    { a: turns.result, b: ends },
    { unit: 'times' },
  );
  const distances = explainDistances(ask, base);
  const halves = ask.counted === 'from the centre' ? explainFromCentre(ask, distances) : [];
  const steps = base.steps.length === 0 ? [] : explainSteps(slope.result, pieces.result);
  return [whole, slope, middle, pieces, ...steps, ...distances, ...halves];
}

function explainSlope(ask: WedgeAsk) {
  const both = ask.sides === 'both';
  const stitches = { unit: 'stitches' } as const;
  const span = quantity('stitches between the markers', ask.span.stitches, 'stitches');
  const inset = quantity('stitches from a marker to the wedge', ask.inset, 'stitches');
  const flat = quantity('stitches that get the full depth', ask.flat, 'stitches');
  const base = workOut('stitches of the base', both ? 'a - 2 * b' : 'a - b', { a: span, b: inset }, stitches);
  const slope = both
    ? workOut('sloped stitches on each side', '(a - b) / 2', { a: base.result, b: flat }, halved)
    : workOut('sloped stitches', 'a - b', { a: base.result, b: flat }, stitches);
  const given = { a: base.result, b: slope.result };
  const middle = workOut('stitches beyond the slopes', both ? 'a - 2 * b' : 'a - b', given, stitches);
  return { base, slope, middle };
}

const halved = { unit: 'stitches', rounding: { to: 'whole down' } } as const;

function explainSteps(slope: Quantity, pieces: Quantity): WorkingLine[] {
  const short = workOut('stitches of a shorter step', 'a / b', { a: slope, b: pieces }, halved);
  const given = { a: slope, b: short.result, c: pieces };
  const longer = workOut('longer steps', 'a - b * c', given, { unit: 'times' });
  const shorter = workOut('shorter steps', 'a - b', { a: pieces, b: longer.result }, { unit: 'times' });
  const long = workOut('stitches of a longer step', 'a + 1', { a: short.result }, { unit: 'stitches' });
  return [short, longer, shorter, ...(longer.result.value > 0 ? [long] : [])];
}

/** From the side marker, outermost turn first. */
function explainDistances(ask: WedgeAsk, base: Base): WorkingLine[] {
  const lines: WorkingLine[] = [];
  base.distances.forEach((distance, i) => {
    const before = base.distances[i - 1];
    const from =
      lines.at(-1)?.result ?? quantity('stitches from the marker to the wedge', ask.inset, 'stitches');
    const step = quantity('step', distance - (before ?? 0), 'stitches');
    const label = `turn ${i + 1} from outside, stitches from the side`;
    lines.push(workOut(label, 'a + b', { a: from, b: step }, { unit: 'stitches' }));
  });
  return lines;
}

/** An odd stitch in the middle lies on the end side of the centre marker. */
function explainFromCentre(ask: WedgeAsk, distances: readonly WorkingLine[]): WorkingLine[] {
  const span = quantity('stitches between the outer ends', ask.span.stitches, 'stitches');
  const start = workOut('stitches before the centre marker', 'a / 2', { a: span }, halved);
  const end = workOut(
    'stitches after the centre marker',
    'a - b',
    { a: span, b: start.result },
    { unit: 'stitches' },
  );
  const past = (half: WorkingLine, line: WorkingLine) =>
    workOut(
      line.label.replace('from the side', `past the centre (${half === start ? 'start' : 'end'} side)`),
      'a - b',
      { a: half.result, b: line.result },
      { unit: 'stitches' },
    );
  return [start, end, ...distances.flatMap((line) => [past(end, line), past(start, line)])];
}
