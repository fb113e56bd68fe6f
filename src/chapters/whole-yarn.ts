/** The yarn for a garment that is planned: from its own pieces and a swatch, or from the pattern's amount. */
import {
  type Fabric,
  fabricArea,
  type ShortRows,
  stitchesOfEdges,
  stitchesOfPiece,
  stitchesOfSpacing,
} from '../fit/fabric.ts';
import { type Gauge, rowsFor } from '../fit/gauge.ts';
import type { Piece } from '../fit/outline.ts';
import { type Pattern, type PatternSize, piecesAround } from '../fit/pattern.ts';
import { type Part, type Phrase, phrase } from '../fit/plan.ts';
import type { ShapedCap, ShapedPart } from '../fit/shaped.ts';
import type { Cm, Stitches } from '../fit/units.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { yarnPart } from '../fit/yarn-steps.ts';
import { capFor } from './cap-of.ts';
import { sampleSize } from './figures.ts';
import type { Ledger } from './ledger.ts';
import { hasChoice } from './open-ways.ts';
import { ownGauge } from './own-gauge.ts';
import { backOf } from './upper-figures.ts';
import { needFromSwatch, needOfBalls } from './yarn.ts';

/** Of the sample all pieces are known; of another pattern the amount that it prints is. */
export function yarnOfGarment(book: Ledger, garment: readonly Part[]): Part[] {
  const sample = sampleSize(book);
  if (sample === undefined) {
    const need = needOfBalls(book);
    return need === undefined ? [] : [yarnPart(need, [], [phrase('note: yarn of the pattern as printed')])];
  }
  const [lower, upper] = [belowUnderarm(book, garment, sample), aboveUnderarm(book, garment, sample)];
  if (lower === undefined || upper === undefined) return [];
  const area = fabricArea([...lower, ...upper.fabrics], shortRowsOf(garment));
  const need = needFromSwatch(book, area.area);
  return need === undefined ? [] : [yarnPart(need, area.workings, [upper.note])];
}

function shortRowsOf(garment: readonly Part[]): readonly ShortRows[] {
  return garment
    .flatMap((part) => part.steps)
    .flatMap((step) => step.instead)
    .flatMap((one) => (one.do === 'short rows' ? [one.wedge] : []));
}

interface Sample {
  readonly pattern: Pattern;
  readonly size: PatternSize;
}

/** Body and sleeves up to the underarms: as they are planned, and what is not as the sample prints it. */
function belowUnderarm(
  book: Ledger,
  garment: readonly Part[],
  { pattern, size }: Sample,
): readonly Fabric[] | undefined {
  const [ofBody, flat] = [ownGauge(book, pattern.body), ownGauge(book, 'flat')];
  const { bust, wrist, 'upper arm': upperArm } = size.counts;
  const { 'body length': bodyLength, 'sleeve length': sleeveLength } = size.finished;
  if (ofBody === undefined || flat === undefined) return undefined;
  if (bust === undefined || wrist === undefined || upperArm === undefined) return undefined;
  if (bodyLength === undefined || sleeveLength === undefined) return undefined;
  const drawn = (sleeves: boolean): Piece | undefined =>
    garment.flatMap(({ pieces }) => pieces).find(({ after }) => (after.name === 'sleeve') === sleeves)?.after;
  const [body, sleeve] = [drawn(false), drawn(true)];
  const { hem, cuff } = pattern.edging;
  const ofSleeve = sleeve ? stitchesOfPiece(sleeve) : asPrinted(wrist, upperArm, cuff, sleeveLength, flat);
  return [
    fabric(
      'body',
      piecesAround(pattern),
      body ? stitchesOfPiece(body) : asPrinted(bust, bust, hem, bodyLength, ofBody),
      ofBody,
    ),
    fabric('sleeve', 2, ofSleeve, flat),
    ...(body ? frontDarts(garment, body) : []),
  ];
}

/** Stitches of all rows from the lower edge up: straight in its edging, and even from there to the underarm. */
function asPrinted(low: Stitches, high: Stitches, edging: Cm, length: Cm, { rows }: Gauge): number {
  const all = rowsFor(length, rows.perCm);
  const straight = Math.min(all, rowsFor(edging, rows.perCm));
  return low * straight + ((low + high) / 2) * (all - straight);
}

/** What the front has more than its sides: while darts that run up and down widen it, or from its lower edge on. */
function frontDarts(garment: readonly Part[], { levels }: Piece): readonly Fabric[] {
  const rows = levels.at(-1)?.row ?? 0;
  return shapedIn(garment, 'front darts').map(({ after: { spaced }, gauge }, i) => {
    const { from, to } = spaced;
    // Where nothing widens it before, it is begun as wide.
    const begun = i === 0 && from > to ? (from - to) * (rows - spaced.rows) : 0;
    const stitches = stitchesOfSpacing(spaced) - Math.min(from, to) * spaced.rows + begun;
    return { name: 'darts', pieces: 1, stitches, gauge };
  });
}

interface Upper {
  readonly fabrics: readonly Fabric[];
  readonly note: Phrase;
}

/**
 * The pattern's own where they are not told. At a gauge at which these have no cap the body goes on straight: what the
 * armholes take away makes the caps.
 */
function aboveUnderarm(book: Ledger, garment: readonly Part[], { size }: Sample): Upper | undefined {
  const [gauge, back] = [ownGauge(book, 'flat'), backOf(book)];
  const { 'armhole depth': depth } = size.finished;
  const { 'upper arm': upperArm } = size.counts;
  if (gauge === undefined || back === undefined || depth === undefined || upperArm === undefined)
    return undefined;
  const [told] = shapedIn(garment, 'cap');
  const cap = told ?? capPrinted(book, upperArm);
  if (cap === undefined) {
    const straight = back * rowsFor(depth, gauge.rows.perCm, 'even');
    return {
      fabrics: [fabric('body from the underarm', 2, straight, gauge)],
      note: phrase('note: tops are reckoned straight'),
    };
  }
  const { front, back: ofBack } = cap.armhole;
  return {
    fabrics: [
      ...shoulders(garment),
      fabric('front from the underarm', 1, stitchesOfEdges(back, front), gauge),
      fabric('back from the underarm', 1, stitchesOfEdges(back, ofBack), gauge),
      fabric('sleeve cap', 2, stitchesOfEdges(cap.after.upperArm, cap.after), gauge),
    ],
    note: phrase(
      told === undefined && garment.some(hasChoice)
        ? 'note: tops are reckoned as printed'
        : 'note: area of the pieces',
    ),
  };
}

/** Bound off in steps, they rise above the armholes; those of short rows are counted with these. */
function shoulders(garment: readonly Part[]): readonly Fabric[] {
  return shapedIn(garment, 'stepped shoulders').map(({ after, gauge }) => ({
    name: 'shoulders',
    pieces: 1,
    stitches: stitchesOfEdges(after.from, {
      rows: after.events.at(-1)?.row ?? after.rows,
      events: after.events,
    }),
    gauge,
  }));
}

/** What its steps shape of one kind, in the order of knitting. */
function shapedIn<K extends ShapedPart['shape']>(garment: readonly Part[], kind: K) {
  return garment
    .flatMap(({ steps }) => steps)
    .flatMap(({ shaped }) => (shaped?.shape === kind ? [shaped as Extract<ShapedPart, { shape: K }>] : []));
}

function capPrinted(book: Ledger, upperArm: Stitches): ShapedCap | undefined {
  const found = capFor(book, upperArm);
  return found?.kind === 'fitted cap' ? found.shaped : undefined;
}

function fabric(name: Fabric['name'], pieces: 1 | 2, stitches: number, gauge: Gauge): Fabric {
  return { name, pieces, stitches, gauge: ratesOf(gauge) };
}
