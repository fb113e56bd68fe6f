/**
 * The body from hem to underarm: its length, and waist shaping put into it. Knitted up or down, round or in pieces.
 *
 *   up:  cast-on ─edging─ hem ──to waist──▶ waist ─plain─ waist ──to underarm──▶ underarm
 */
import { type Counted, countFor } from './count.ts';
import type { Gauge } from './gauge.ts';
import { plainRows, rowAt, type Stretch, stretch } from './heights.ts';
import { level, type Piece, piece } from './outline.ts';
import { type Carriers, type Spacing, space } from './spacing.ts';
import { type Cm, cm, rows, type Stitches } from './units.ts';
import type { Direction, LevelName } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Common practice of the trade: an inch of plain fabric at the waist, and an inch below the underarm. */
export const PLAIN_AT_WAIST: Cm = cm(2.54);
export const PLAIN_BELOW_UNDERARM: Cm = cm(2.54);

/** At both sides, on two dart lines of front and back each, or on two of the back alone. */
export type BodyLines = 'sides' | 'darts' | 'back darts';

export interface BodyAsk {
  readonly gauge: Gauge;
  readonly direction: Direction;
  /** Edge stitches of one flat piece; 0 in the round. */
  readonly edge: number;
  /** The pattern's own figures in the size that is followed: counts of the whole round, or of one flat piece. */
  readonly pattern: {
    readonly hem: Stitches;
    readonly bust: Stitches;
    readonly length: Cm;
    readonly edging: Cm;
  };
  /** Underarm to lower edge, finished. */
  readonly length: Cm;
  readonly waist: WaistAsk | null;
  /** Where its stitches are lost and gained; at the sides where nothing is said. */
  readonly lines?: BodyLines;
  /** Finished width around at the lower edge, where it is to differ from the pattern's. */
  readonly hip: Cm | null;
  /** Whether the hem's count may move so that the change to the bust can be shaped, though there be no waist. */
  readonly hemMoves?: boolean;
}

export interface WaistAsk {
  readonly around: Cm;
  readonly belowUnderarm: Cm;
  /** Width of the front there, where darts in the back of pieces take what is left of it. */
  readonly front?: Cm;
}

/** One section of the body, from one level to the next in the order of knitting. */
export interface BodySection {
  readonly name: 'edging' | 'plain' | 'hem and waist' | 'waist' | 'waist and underarm';
  readonly stretch: Stretch;
  readonly from: Stitches;
  readonly to: Stitches;
  /** Null where the section is knitted straight. */
  readonly spacing: Spacing | null;
  /** What lies of it between short rows: all of it, what comes before them, or the rest. */
  readonly part: 'all' | 'before' | 'rest';
  readonly workings: readonly WorkingLine[];
}

export interface BodyShaping {
  readonly kind: 'body';
  readonly ask: BodyAsk;
  readonly before: Piece;
  readonly after: Piece;
  readonly sections: readonly BodySection[];
  readonly hem: Counted | null;
  readonly waist: Counted | null;
  /** The hem's count where it had to move so that the shaping comes out: a multiple of what a shaping row changes. */
  readonly hemMoved: boolean;
  readonly inAll: WorkingLine;
}

/** Why the body cannot be drawn at all. */
export interface BodyCannot {
  readonly kind: 'cannot';
  readonly why: 'waist outside the body' | 'edging longer than the piece' | 'darts meet';
  /** The one wanted, or the pattern's own where that is too short for the edging. */
  readonly length: Cm;
  readonly edging: Cm;
  readonly waistAt: Cm | null;
}

/** Stitches that one shaping row changes: two at each side or dart line in the round, two on a flat piece and four in its darts. */
export function perBodyRow(gauge: Gauge, lines: BodyLines = 'sides'): 2 | 4 | 8 {
  if (gauge.worked === 'flat') return lines === 'sides' ? 2 : 4;
  return lines === 'darts' ? 8 : 4;
}

/** From a side, or the seam of a flat piece, to its dart line: a quarter of front or back (common practice). */
export function toDartLine(count: Stitches, { gauge, edge }: Pick<BodyAsk, 'gauge' | 'edge'>): WorkingLine {
  const a = quantity('stitches where the darts begin', count, 'stitches');
  const b = quantity('edge stitches', edge, 'stitches');
  return gauge.worked === 'round'
    ? workOut('stitches from a side to its dart line', 'a / 8', { a }, WHOLE)
    : workOut('stitches from a seam to its dart line', '(a - b) / 4', { a, b }, WHOLE);
}

const WHOLE = { unit: 'stitches', rounding: { to: 'whole' } } as const;
/** Fewer stitches beside a dart are none. */
const LEFT_BESIDE_DART = 2;

/**
 * Draws the body anew with its wanted length and waist; where the pattern changes its count, that is spaced anew too.
 * Sections that cannot be shaped say so within.
 */
export function shapeBody(ask: BodyAsk): BodyShaping | BodyCannot {
  const impossible = bodyOutside(ask);
  if (impossible !== undefined) return impossible;
  const { gauge, pattern } = ask;
  const per = perBodyRow(gauge, ask.lines);
  const share = gauge.worked === 'round' ? 1 : 2;
  const rule = {
    multiple: per,
    plus: (((pattern.bust - ask.edge) % per) + per) % per,
    edge: ask.edge,
    parity: 'any' as const,
  };
  const waist = ask.waist === null ? null : countFor('waist', waistOfPiece(ask, ask.waist), gauge, rule);
  const moves = (waist !== null || ask.hemMoves === true) && pattern.hem % per !== pattern.bust % per;
  const hip = ask.hip ?? (moves ? widthNow(pattern.hem, ask) : null);
  const hem = hip === null ? null : countFor('lower edge', cm(hip / share), gauge, rule);
  const counts = { hem: hem?.stitches ?? pattern.hem, waist: waist?.stitches ?? null, bust: pattern.bust };
  if (dartsMeet(ask, counts)) return { ...facts(ask), why: 'darts meet' };
  const { marks, sections, inAll } = divide(ask, counts);
  return {
    kind: 'body',
    ask,
    before: outline(ask, [
      ['underarm', pattern.length, pattern.bust],
      ['hem', pattern.edging, pattern.hem],
      ['cast-on', cm(0), pattern.hem],
    ]),
    after: fromSections(ask, marks, sections),
    sections,
    hem,
    waist,
    hemMoved: ask.hip === null && hem !== null && hem.stitches !== pattern.hem,
    inAll,
  };
}

/** Throws where the back's darts are to take what a front leaves that is not told. */
function waistOfPiece({ gauge, lines }: BodyAsk, { around, front }: WaistAsk): Cm {
  if (gauge.worked === 'round') return around;
  if (lines !== 'back darts') return cm(around / 2);
  if (front === undefined) throw new RangeError('darts in the back of pieces need the width of the front');
  return cm(around - front);
}

/** Whether edging, waist and underarm leave no room between them. */
export function bodyOutside(ask: BodyAsk): BodyCannot | undefined {
  const { edging, waistAt, ...rest } = facts(ask);
  const shortest = cm(Math.min(ask.length, ask.pattern.length));
  if (shortest <= edging)
    return { ...rest, edging, waistAt, length: shortest, why: 'edging longer than the piece' };
  if (waistAt === null || ask.waist === null) return undefined;
  const half = PLAIN_AT_WAIST / 2;
  const fits = waistAt - half > edging && ask.waist.belowUnderarm - half > PLAIN_BELOW_UNDERARM;
  return fits ? undefined : { ...rest, edging, waistAt, why: 'waist outside the body' };
}

function facts({ waist, length, pattern }: BodyAsk): Omit<BodyCannot, 'why'> {
  const waistAt = waist === null ? null : cm(length - waist.belowUnderarm);
  return { kind: 'cannot', length, edging: pattern.edging, waistAt };
}

/** Each dart takes as many stitches on either side of its line as there are shaping rows. */
function dartsMeet(ask: BodyAsk, { hem, waist, bust }: Counts): boolean {
  const { lines = 'sides', gauge } = ask;
  if (lines === 'sides' || waist === null) return false;
  return [hem, bust].some((count) => {
    const times = (count - waist) / perBodyRow(gauge, lines);
    return times > toDartLine(count, ask).result.value - LEFT_BESIDE_DART;
  });
}

interface Counts {
  readonly hem: Stitches;
  readonly waist: Stitches | null;
  readonly bust: Stitches;
}

/** Finished width around of a count as it stands, edge stitches left out. */
function widthNow(count: Stitches, ask: BodyAsk): Cm {
  const share = ask.gauge.worked === 'round' ? 1 : 2;
  return cm((share * (count - ask.edge)) / ask.gauge.stitches.perCm);
}

interface Mark {
  readonly height: Cm;
  readonly stitches: Stitches;
  readonly level: LevelName;
}

function divide(ask: BodyAsk, counts: Counts) {
  const marks = marksOf(ask, counts);
  const lines = marks.map((mark, i) =>
    i === 0 ? null : rowAt(heightName(mark, marks[i - 1]), mark.height, ask.gauge),
  );
  const sections = marks.slice(1).map((to, i): BodySection => {
    const from = marks[i] as Mark;
    const between = stretch(`rows of this section`, lines[i] ?? null, lines[i + 1] as WorkingLine);
    const name = nameOf(from, to);
    if (name === 'edging' || from.stitches === to.stitches) {
      return {
        name,
        stretch: between,
        from: from.stitches,
        to: to.stitches,
        spacing: null,
        part: 'all',
        workings: between.workings,
      };
    }
    return { ...spaced(ask, between, from, to), name, part: 'all' };
  });
  return { marks, sections, inAll: lines.at(-1) as WorkingLine };
}

/** Levels with their heights from the start, in the order of knitting. */
function marksOf(ask: BodyAsk, counts: Counts): Mark[] {
  const { length, waist } = ask;
  const edge: Mark[] = [
    { height: cm(0), stitches: counts.hem, level: 'cast-on' },
    { height: ask.pattern.edging, stitches: counts.hem, level: 'hem' },
  ];
  const middle = waist === null ? 0 : length - waist.belowUnderarm;
  const plain = PLAIN_AT_WAIST / 2;
  const around: Mark[] =
    counts.waist === null
      ? []
      : [middle - plain, middle + plain].map((h) => ({
          height: cm(h),
          stitches: counts.waist as Stitches,
          level: 'waist',
        }));
  const up: Mark[] = [...edge, ...around, { height: length, stitches: counts.bust, level: 'underarm' }];
  if (ask.direction === 'up') return up;
  return up.reverse().map((m) => ({ ...m, height: cm(length - m.height) }));
}

function heightName({ level: at }: Mark, before: Mark | undefined): string {
  if (at === 'waist')
    return before?.level === 'waist' ? 'end of the plain waist' : 'start of the plain waist';
  if (at === 'hem') return 'edging';
  return at === 'underarm' ? 'underarm' : 'lower edge';
}

function nameOf(from: Mark, to: Mark): BodySection['name'] {
  const levels = [from.level, to.level];
  if (levels.every((l) => l === 'waist')) return 'waist';
  if (levels.includes('waist')) return levels.includes('underarm') ? 'waist and underarm' : 'hem and waist';
  return levels.includes('cast-on') ? 'edging' : 'plain';
}

function spaced(ask: BodyAsk, between: Stretch, from: Mark, to: Mark): Omit<BodySection, 'name' | 'part'> {
  const plain = plainBesideUnderarm(ask.gauge);
  const [first, last] = [from.level === 'underarm', to.level === 'underarm'];
  const spacing = space({
    rows: between.rows,
    from: from.stitches,
    to: to.stitches,
    perRow: perBodyRow(ask.gauge, ask.lines),
    carriers: carriersOf(ask.gauge),
    lead: rows(first ? plain.result.value : 0),
    trail: rows(last ? plain.result.value : 0),
    order: 'grouped',
    stitchesPerCm: ask.gauge.stitches.perCm,
  });
  return {
    stretch: between,
    from: from.stitches,
    to: to.stitches,
    spacing,
    workings: [...between.workings, ...(first || last ? [plain] : [])],
  };
}

/** Rows beside the underarm on which nothing is shaped. */
export function plainBesideUnderarm(gauge: Gauge): WorkingLine {
  return plainRows('beside the underarm', PLAIN_BELOW_UNDERARM, gauge);
}

/** Sections of a flat piece begin with a right-side row and have an even number of rows: odd rows are right-side rows. */
export function carriersOf(gauge: Gauge): Carriers {
  return gauge.worked === 'flat' ? 'odd rows' : 'every row';
}

function fromSections(ask: BodyAsk, marks: readonly Mark[], sections: readonly BodySection[]): Piece {
  let row = 0;
  const levels = marks.map((mark, i) => {
    row += sections[i - 1]?.stretch.rows ?? 0;
    return level(shownLevel(mark.level, ask), row, mark.stitches);
  });
  return piece(ask.gauge.worked === 'round' ? 'body' : 'back', ask.gauge.worked, ask.direction, levels);
}

/** The pattern's own outline at the knitter's gauge, from levels listed from the underarm down. */
function outline(ask: BodyAsk, fromTop: readonly (readonly [LevelName, Cm, Stitches])[]): Piece {
  const length = ask.pattern.length;
  const marks = fromTop.map(([name, height, count]) => {
    const at = ask.direction === 'up' ? height : cm(length - height);
    const row = at === 0 ? 0 : rowAt(name, at, ask.gauge).result.value;
    return level(shownLevel(name, ask), row, count);
  });
  const ordered = ask.direction === 'up' ? marks.reverse() : marks;
  return piece(ask.gauge.worked === 'round' ? 'body' : 'back', ask.gauge.worked, ask.direction, ordered);
}

/** Knitted down, the lower edge is where the hem ends, not where the piece is cast on. */
function shownLevel(name: LevelName, ask: BodyAsk): LevelName {
  return ask.direction === 'down' && name === 'cast-on' ? 'hem' : name;
}
