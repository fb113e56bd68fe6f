/** What a plan draws, held against what its rows are told to be: a picture that differs from them misleads the hands. */
import type { EdgeEvent } from '../../src/fit/edge-shaping.ts';
import type { PhraseName } from '../../src/fit/phrases.ts';
import type { PieceChange, Step } from '../../src/fit/plan.ts';
import type { ShapedCap, ShapedDrop, ShapedPart, SpacedOutline } from '../../src/fit/shaped.ts';
import { edgeOf } from '../simulator/edges.ts';
import type { Knitting } from './knitting.ts';
import { frontNeck, scheduleAt, slopeOf, told } from './necks.ts';
import { figure } from './whole-checks.ts';

export function drawnAsTold(knitting: Knitting): void {
  const { plan, findings } = knitting;
  for (const step of plan.steps) {
    if (step.shaped === null) continue;
    findings.at(`drawn: ${step.where.say}`);
    findings.meet(`drawn: ${step.shaped.shape}`);
    atOwnGauge(knitting, step.shaped.gauge);
    shapeAsTold(knitting, step, step.shaped);
  }
  for (const piece of plan.pieces) pieceAsTold(knitting, piece);
}

function atOwnGauge({ printed, findings }: Knitting, gauge: ShapedPart['gauge']): void {
  findings.near(gauge.stitchesPerCm, printed.stitchesPerCm, 'stitches to a centimetre in the drawing');
  findings.near(gauge.rowsPerCm, printed.rowsPerCm, 'rows to a centimetre in the drawing');
}

function shapeAsTold(knitting: Knitting, step: Step, shaped: ShapedPart): void {
  switch (shaped.shape) {
    case 'cap':
      capAsTold(knitting, step, shaped);
      return;
    case 'neck':
      neckAsTold(knitting, shaped);
      return;
    case 'drop shoulder':
      dropAsTold(knitting, shaped);
      return;
    case 'raglan':
      raglanAsTold(knitting, shaped.after);
      return;
    case 'yoke':
      yokeAsTold(knitting, shaped.after);
      return;
    case 'stepped shoulders':
      shouldersAsTold(knitting, step, shaped.after);
      return;
    case 'front darts': {
      const [spaced] = step.instead.flatMap((one) => (one.do === 'shape' ? [one.spaced] : []));
      knitting.findings.same(outline(shaped.after.spaced), spaced && outline(spaced), 'rows of the darts');
      return;
    }
    default:
      shaped satisfies never;
  }
}

const eventsIn = (events: readonly EdgeEvent[]) =>
  events.map(({ row, edge, by, change }) => `${row} ${edge} ${by} ${change}`).join(', ');

const outline = ({ rows, from, to, shaping }: SpacedOutline) =>
  [rows, from, to, ...shaping.map(({ row, after }) => `${row}:${after}`)].join(' ');

function edge({ printed }: Knitting, events: readonly EdgeEvent[], rows: number): number {
  return edgeOf(events, rows, printed.stitchesPerCm, printed.rowsPerCm);
}

function capAsTold(knitting: Knitting, step: Step, { after, before, armhole }: ShapedCap): void {
  const { plan, printed, findings } = knitting;
  const { stitchesPerCm, rowsPerCm } = printed;
  const schedule = step.instead.flatMap((one) => (one.do === 'shape edges' ? [one.schedule] : []))[0];
  const off = step.instead.flatMap((one) => (one.do === 'bind off' ? [one.stitches] : []))[0];
  findings.same(after.upperArm, schedule?.from, 'stitches where the cap begins');
  findings.same(after.rows, schedule?.rows, 'rows of the cap');
  findings.same(after.top, off, 'top of the cap');
  findings.same(after.top, schedule?.to, 'stitches left for the top of the cap');
  findings.same(eventsIn(after.events), eventsIn(schedule?.events ?? []), 'edges of the cap');
  for (const cap of before === null ? [after] : [after, before]) {
    findings.near(cap.height, cap.rows / rowsPerCm, 'height of a cap');
    findings.near(
      cap.edge,
      2 * edge(knitting, cap.events, cap.rows) + cap.top / stitchesPerCm,
      'edge of a cap',
    );
  }
  for (const side of ['front', 'back'] as const) {
    const { events, rows, edge: length } = armhole[side];
    findings.near(length, edge(knitting, events, rows), `armhole edge of the ${side}`);
    const where = side === 'front' ? 'where: armhole of the front' : 'where: armhole';
    const shaped = scheduleAt(plan, where);
    if (shaped === undefined) continue;
    findings.meet(`drawn armhole of the ${side} held against its rows`);
    // The front is told up to its neck, the back up to what the short rows of its neck take.
    const below = events.filter(({ row }) => row <= shaped.rows);
    findings.same(eventsIn(below), eventsIn(shaped.events), `armhole of the ${side}`);
  }
}

function neckAsTold(knitting: Knitting, { after, before, slope }: Extract<ShapedPart, { shape: 'neck' }>) {
  const { plan, printed, findings } = knitting;
  const { stitchesPerCm, rowsPerCm } = printed;
  const knitted = frontNeck(plan);
  if (knitted === undefined) return;
  findings.same(after.stitches, knitted.stitches, 'stitches of the neck');
  findings.same(after.centre, knitted.centre, 'centre of the neck');
  findings.same(after.rows, knitted.rows, 'rows of the neck');
  findings.same(slope, slopeOf(told(plan, 'where: shoulder at the right')), 'rows of the slope');
  findings.same(after.shoulder, knitted.shoulders[0], 'stitches of the first shoulder');
  findings.same(after.shoulder, knitted.shoulders[1], 'stitches of the last shoulder');
  const { events } = knitted.last;
  const right = events.flatMap((event) =>
    event.edge === 'left' ? [] : [{ ...event, edge: 'right' as const }],
  );
  findings.same(eventsIn(after.events), eventsIn(right), 'edge of the neck');
  const steps = right.filter(({ by }) => by === 'bind off').map(({ change }) => -change);
  findings.same(after.steps.join(), steps.join(), 'steps of the neck');
  for (const neck of before === null ? [after] : [after, before]) {
    findings.near(neck.width, neck.stitches / stitchesPerCm, 'width of a neck');
    findings.near(neck.depth, neck.rows / rowsPerCm, 'depth of a neck');
    const sides = 2 * edge(knitting, neck.events, neck.rows);
    findings.near(neck.edge, neck.centre / stitchesPerCm + sides, 'edge of a neck');
  }
}

function dropAsTold(knitting: Knitting, { after, before, back, overhang }: ShapedDrop): void {
  const { plan, printed, findings } = knitting;
  const { stitchesPerCm, rowsPerCm } = printed;
  const says = (where: 'where: straight armhole' | 'where: sleeve top to the armhole', say: PhraseName) =>
    told(plan, where).flatMap((one) => (one.do === 'say' && one.phrase.say === say ? [one.phrase] : []))[0];
  const marked = says('where: straight armhole', 'do: mark the underarm');
  const ended = says('where: sleeve top to the armhole', 'do: sleeve top has');
  const shortened = says('where: sleeve top to the armhole', 'do: shorten the sleeve by the overhang');
  const lengthened = says('where: sleeve top to the armhole', 'do: lengthen the sleeve to the shoulder');
  const over = shortened ? figure(shortened, 'overhang') : lengthened && -figure(lengthened, 'short');
  if (marked === undefined || ended === undefined || over === undefined) {
    findings.must(false, 'a dropped shoulder is drawn and not told');
    return;
  }
  findings.same(after.armholeRows, figure(marked, 'rows'), 'rows of the drawn armhole');
  findings.near(after.depth, figure(marked, 'height'), 'depth of the drawn armhole');
  findings.same(after.top, figure(ended, 'top'), 'stitches of the drawn top of the sleeve');
  findings.near(after.topWidth, figure(ended, 'width'), 'width of the drawn top of the sleeve');
  findings.near(overhang, over, 'overhang of the drawn shoulder');
  findings.must(overhang < back / 2, `a shoulder that hangs ${overhang} cm over of a back of ${back} cm`);
  for (const one of before === null ? [after] : [after, before]) {
    findings.near(one.depth, one.armholeRows / rowsPerCm, 'depth of an armhole');
    // A stitch more or less for an even count, beside its edge stitches.
    const off = Math.abs(one.topWidth - 2 * one.depth) * stitchesPerCm;
    findings.must(off <= 1 + 1e-6, `the drawn sleeve top is ${off} stitches off twice its armhole`);
    const edge = one.top - one.topWidth * stitchesPerCm;
    findings.must(
      [0, printed.edge.sleeves].some((n) => Math.abs(edge - n) < 1e-6),
      `${edge} edge stitches at the drawn top of the sleeve`,
    );
  }
}

function raglanAsTold(knitting: Knitting, after: Extract<ShapedPart, { shape: 'raglan' }>['after']): void {
  const { plan, printed, findings } = knitting;
  const { stitchesPerCm, rowsPerCm } = printed;
  const [lines] = told(plan, 'where: raglan lines').flatMap((one) =>
    one.do === 'shape raglan' ? [one.raglan] : [],
  );
  if (lines === undefined) return;
  findings.same(after.direction, lines.direction, 'direction of the raglan');
  findings.same(after.rows, lines.rows, 'rows of the raglan');
  findings.near(after.depth, lines.rows / rowsPerCm, 'depth of the raglan');
  for (const part of ['back', 'front', 'sleeve'] as const) {
    const { spaced, edge: length } = after.parts[part];
    findings.same(outline(spaced), outline(lines.lines[part]), `${part} of the raglan`);
    let [along, below] = [0, 0];
    for (const { row } of spaced.shaping) {
      along += Math.hypot(1 / stitchesPerCm, (row - 1 - below) / rowsPerCm);
      below = row - 1;
    }
    findings.near(length, along + (lines.rows - below) / rowsPerCm, `raglan edge of the ${part}`);
  }
  const neck = printed.body.up ? lines.to : lines.from;
  findings.same(after.neck.stitches, neck, 'stitches at the neck');
  findings.near(after.neck.around, neck / stitchesPerCm, 'neck around');
}

interface Round {
  readonly count: number;
  readonly shaped: boolean;
}

/** The rounds one by one, each with the count after it. */
function roundsOf(knitting: Knitting): readonly Round[] {
  return told(knitting.plan, 'where: yoke round').flatMap((one): Round[] => {
    if (one.do === 'work plain')
      return Array.from({ length: one.rows }, () => ({ count: one.stitches, shaped: false }));
    return one.do === 'work row' ? [{ count: one.after, shaped: true }] : [];
  });
}

function yokeAsTold(knitting: Knitting, after: Extract<ShapedPart, { shape: 'yoke' }>['after']): void {
  const { plan, printed, findings } = knitting;
  const rounds = roundsOf(knitting);
  const [begun] = told(plan, 'where: yoke round').flatMap((one) =>
    one.do === 'begin with' ? [one.stitches] : [],
  );
  findings.same(after.direction, printed.body.up ? 'up' : 'down', 'direction of the yoke');
  findings.same(after.rows, rounds.length, 'rounds of the yoke');
  findings.near(after.depth, rounds.length / printed.rowsPerCm, 'depth of the yoke');
  const shaping = rounds.flatMap(({ count, shaped }, i) =>
    shaped ? [`${i + 1}: ${i === 0 ? begun : rounds[i - 1]?.count} to ${count}`] : [],
  );
  findings.same(
    after.shaping.map(({ round, before, after: left }) => `${round}: ${before} to ${left}`).join(),
    shaping.join(),
    'shaping rounds of the yoke',
  );
  const neck = printed.body.up ? rounds.at(-1)?.count : begun;
  findings.near(after.neckAround, (neck ?? 0) / printed.stitchesPerCm, 'neck around');
  const heights = after.plateaus.reduce((sum, { height }) => sum + height, 0);
  findings.near(heights, after.depth, 'stretches of the yoke in all');
  findings.same(
    after.plateaus.flatMap(({ stitches, rounds: many }) => Array<number>(many).fill(stitches)).join(),
    rounds.map(({ count }) => count).join(),
    'stretches of the yoke',
  );
}

function shouldersAsTold(
  { printed, findings }: Knitting,
  step: Step,
  after: Extract<ShapedPart, { shape: 'stepped shoulders' }>['after'],
): void {
  const schedule = step.instead.flatMap((one) => (one.do === 'shape edges' ? [one.schedule] : []))[0];
  const events = schedule?.events ?? [];
  findings.same(after.from, schedule?.from, 'stitches where the shoulders begin');
  findings.same(eventsIn(after.events), eventsIn(events), 'steps of the shoulders');
  const side = events.some(({ edge: at }) => at === 'right') ? 'right' : 'left';
  const steps = events.filter(({ edge: at }) => at === side).map(({ change }) => -change);
  findings.same(after.steps.join(), steps.join(), 'steps of one shoulder');
  findings.same(
    after.shoulder,
    steps.reduce((sum, one) => sum + one, 0),
    'stitches of a shoulder',
  );
  findings.same(after.rows, 2 * steps.length, 'rows of the slope');
  findings.near(after.drop, after.rows / printed.rowsPerCm, 'drop of the shoulders');
}

/** Every level of an outline is where a step of that piece ends, with that many rows and stitches. */
function pieceAsTold(
  { printed, bench, findings }: Knitting,
  { after, gauge, edge: seam }: PieceChange,
): void {
  findings.at(`drawn: ${after.name}`);
  const sleeve = after.name === 'sleeve';
  findings.near(gauge.stitchesPerCm, printed.stitchesPerCm, 'stitches to a centimetre in the outline');
  findings.near(gauge.rowsPerCm, printed.rowsPerCm, 'rows to a centimetre in the outline');
  const made = sleeve ? printed.sleeves : printed.body;
  findings.same(gauge.worked, made.worked, 'how the outlined piece is knitted');
  findings.same(after.direction, made.up ? 'up' : 'down', 'direction of the outlined piece');
  findings.same(seam, sleeve ? printed.edge.sleeves : printed.edge.body, 'edge stitches of the outline');
  const place = sleeve ? 'sleeve' : after.name === 'body' ? 'body' : 'back';
  if (!bench.sure(place)) return;
  const ends = bench.ends
    .filter((end) => end.place === place)
    .map(({ rows, count }) => `${rows} rows, ${count} stitches`);
  for (const { name, row, stitches } of after.levels.slice(1)) {
    findings.meet('drawn level held against its rows');
    findings.must(
      ends.includes(`${row} rows, ${stitches} stitches`),
      `outline at the ${name}: row ${row}, ${stitches} stitches; steps end at ${ends.join('; ')}`,
    );
  }
}
