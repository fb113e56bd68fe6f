/** What a random knitter answers to the questions of the whole way, each drawn so that most of them go together. */
import { cm } from '../../src/fit/units.ts';
import { type Answer, type Answers, type Value, valueGiven } from '../../src/flow/answer.ts';
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { armholeRows, decreaseRows } from './pattern-armhole.ts';
import { type Printed, printedFor } from './printed.ts';
import { type Draws, drawsOf, type Wearer } from './wearers.ts';

/** Question by question, as the interview asks them; those that are not asked are not answered. */
export function answersOf(wearer: Wearer, flow: CompiledFlow): Answers {
  const draws = drawsOf(wearer.toss);
  const told = { wearer, printed: printedFor(wearer), draws };
  let answers: Answers = {};
  for (const stop of flow.stops) {
    if (answers[stop.id] !== undefined || !flow.asks(stop, answers)) continue;
    const say = SAID[stop.id];
    if (say === undefined) throw new Error(`nobody has an answer to '${stop.id}'`);
    const value = say({ ...told, answers });
    const sure = !draws.often(wearer.unsure) || SETTLED.has(stop.id);
    const answer: Answer = value === null || !sure ? { given: 'unknown' } : { given: 'value', value };
    answers = { ...answers, [stop.id]: answer };
  }
  return answers;
}

/** How the garment is made is known, and the swatch at as many places as were counted. */
const SETTLED = new Set([
  'unit',
  'pattern',
  'body_made',
  'sleeve_made',
  'checking_joined',
  'wishes',
  'size',
  'swatch_stitches',
  'swatch_stitches_2',
  'swatch_stitches_3',
  'swatch_rows',
  'swatch_rows_2',
]);

interface Known {
  readonly wearer: Wearer;
  readonly printed: Printed;
  readonly draws: Draws;
  /** To the questions before. */
  readonly answers: Answers;
}
/** Null: it is not known. */
type Say = (known: Known) => Value | null;

const choice =
  (of: (known: Known) => string): Say =>
  (known) => ({ kind: 'choice', choice: of(known) });
const length =
  (of: (known: Known) => number, least = 0.1): Say =>
  (known) => {
    const value = Math.max(least, Math.round(10 * of(known)) / 10);
    return { kind: 'length', cm: cm(value), typed: { value, unit: 'cm' } };
  };
const stitches =
  (of: (known: Known) => number): Say =>
  (known) => ({ kind: 'stitches', count: of(known) });

/** A drawn share of a count, as a width at the knitter's gauge. */
const share =
  (of: (printed: Printed) => number, least: number, most: number) =>
  ({ printed, draws }: Known) =>
    (of(printed) / printed.stitchesPerCm) * draws.between(least, most);
const around = ({ bust, body }: Printed) => (body.worked === 'round' ? bust : 2 * bust);
const bodyLength = ({ wearer, printed }: Known) =>
  wearer.pattern === 'own' ? 30 + wearer.bust / 8 : 100 / printed.rowsPerCm;

const made = ({ worked, up }: Printed['body']) => `${up ? 'up' : 'down'}_${worked}`;

const SAID: Readonly<Record<string, Say>> = {
  unit: choice(({ wearer }) => wearer.unit),
  pattern: choice(({ wearer }) => wearer.pattern),
  swatch_made: choice(({ draws }) => draws.one(['round', 'flat'])),
  swatch_washed: choice(() => 'washed'),
  swatch_stitches: ({ wearer }) => place(wearer, 0),
  swatch_stitches_2: ({ wearer }) => place(wearer, 1),
  swatch_stitches_3: ({ wearer }) => place(wearer, 2),
  swatch_rows: ({ wearer: { rows } }) =>
    rows[0] === undefined ? null : { kind: 'row gauge', rows: rows[0] },
  swatch_rows_2: ({ wearer: { rows } }) =>
    rows[1] === undefined ? null : { kind: 'row gauge', rows: rows[1] },
  pattern_gauge: ({ wearer: { stitches, rows } }) =>
    stitches[0] === undefined || rows[0] === undefined
      ? null
      : { kind: 'gauge', stitches: stitches[0], rows: rows[0] },
  body_made: choice(({ printed }) => made(printed.body)),
  sizes_bust: (known) => {
    const one = share(around, 1, 1)(known);
    return { kind: 'sizes', lengths: [cm(one * 0.92), cm(one), cm(one * 1.08)], unit: 'cm', labels: null };
  },
  table: choice(({ draws }) => draws.one(['women', 'men', 'children', 'babies'])),
  bust: length(share(around, 0.88, 1.04)),
  upper_bust: length(share(around, 0.82, 0.98)),
  fit: choice(({ draws }) => draws.one(['very_close', 'close', 'classic', 'loose', 'oversized'])),
  size: ({ wearer }) => ({ kind: 'size', label: wearer.pattern === 'own' ? '2' : `${wearer.size + 1}` }),
  wishes: ({ wearer }) => ({ kind: 'choices', choices: wearer.wishes }),
  checking_joined: choice(({ wearer }) => wearer.joined),
  sleeve_made: choice(({ printed }) => made(printed.sleeves)),
  upper_arm: length(share((p) => p.upperArm, 0.75, 1.1)),
  wrist: length(share((p) => p.wrist, 0.7, 1.05)),
  sleeve_length: length(({ draws, printed }) => printed.depth * draws.between(1.2, 2.6) + 3),
  p_wrist: stitches(({ printed }) => printed.wrist),
  p_upper_arm: stitches(({ printed }) => printed.upperArm),
  p_cuff: length(({ draws }) => draws.length(0, 7), 0),
  p_body_length: length((known) => bodyLength(known) * known.draws.between(0.9, 1.1)),
  body_length: length((known) => bodyLength(known) * known.draws.between(0.8, 1.2)),
  p_bust: stitches(({ printed }) => printed.bust),
  p_hem: length(({ draws }) => draws.length(0, 7), 0),
  waist: length(share(around, 0.65, 1.02)),
  waist_ease: ({ draws }) => {
    const value = draws.length(-2, 12);
    return { kind: 'ease', cm: cm(value), typed: { value, unit: 'cm' } };
  },
  underarm_to_waist: length((known) => bodyLength(known) * known.draws.between(0.3, 0.65)),
  p_hem_stitches: stitches(({ printed }) => printed.hem),
  front_length: length(({ draws }) => 42 + draws.between(0, 7)),
  back_length: length(({ draws }) => 41 + draws.between(-2, 2)),
  bust_fabric: choice(({ draws }) => draws.one(['plain', 'patterned'])),
  bust_shaping: choice(({ draws }) =>
    draws.one(['short_rows', 'short_rows', 'vertical_darts', 'both', 'front_stitches', 'none']),
  ),
  bust_span: length(share(around, 0.15, 0.22)),
  bust_below_underarm: length(({ draws }) => draws.between(0, 9), 0),
  bust_extra: length(({ draws }) => draws.between(0.5, 10)),
  bust_above_waist: length(({ draws }) => draws.between(5, 18)),
  hem_drop: length(({ draws }) => draws.between(0.5, 9)),
  hem_over: choice(({ draws }) => draws.one(['back', 'all_round'])),
  hem_middle: length(share((p) => p.back, 0, 0.7)),
  armhole_top: choice(({ wearer }) => (wearer.joined === 'drop' ? 'drop' : 'set_in')),
  p_armhole: length(({ printed }) => printed.depth),
  armhole_wanted: length(({ printed, draws }) => printed.depth * draws.between(0.8, 1.3)),
  p_neck_depth: length(({ printed, draws }) => printed.depth * draws.between(0.2, 0.5)),
  back_width: length(share((p) => p.back, 1, 1)),
  cross_back: length(share((p) => p.back, 0.7, 0.95)),
  p_back: stitches(({ printed }) => printed.back),
  p_cross: stitches(({ printed }) => printed.cross),
  p_bind_off: stitches(({ printed }) => printed.boundOff),
  yoke_depth: length(({ printed, draws }) => printed.depth * draws.between(0.8, 1.4)),
  p_back_yoke: stitches(({ printed }) => Math.max(4, printed.back - 2 * printed.underarm)),
  p_sleeve_yoke: stitches(({ printed: p }) => Math.max(4, p.upperArm - p.edge.sleeves - p.underarm)),
  p_back_neck: stitches(({ printed }) => printed.neck),
  p_front_neck: stitches(({ printed, draws }) => Math.max(1, printed.neck - 2 * draws.whole(0, 3))),
  p_sleeve_neck: stitches(({ printed: p, draws }) => {
    const near = Math.max(2, Math.round((p.upperArm - p.underarm) * draws.between(0.05, 0.3)));
    return (p.upperArm - p.edge.sleeves - p.underarm - near) % 2 === 0 ? near : near + 1;
  }),
  neck_around: length(
    share((p) => p.neck, 2.2, 3.2),
    20,
  ),
  p_yoke_underarm: stitches(
    ({ printed: p }) =>
      p.bust + 2 * (p.upperArm - p.edge.sleeves) - 4 * Math.min(p.underarm, p.upperArm - p.edge.sleeves - 2),
  ),
  p_yoke_neck: stitches(({ printed: p, draws }) =>
    Math.max(8, Math.round((p.bust + p.upperArm) * draws.between(0.25, 0.45))),
  ),
  yoke_rounds: choice(({ draws }) =>
    draws.one(['three', 'three_later', 'own', 'four_even', 'five_even', 'six_even', 'eight_even']),
  ),
  yoke_own_depth: () => ({ kind: 'rows', count: 60 }),
  yoke_own_rounds: () => ({ kind: 'counts', counts: [14, 31, 52], labels: null }),
  yoke_own_counts: ({ answers }) => {
    const of = (id: string) => valueGiven(answers, id, 'stitches')?.count ?? 100;
    const ends = [of('p_yoke_underarm'), of('p_yoke_neck')];
    const up = valueGiven(answers, 'body_made', 'choice')?.choice.startsWith('up') === true;
    const [from = 0, to = 0] = up ? ends : ends.reverse();
    const after = (share: number) => from + Math.round(share * (to - from));
    return { kind: 'counts', counts: [after(0.2), after(0.7), to], labels: null };
  },
  yoke_repeat: ({ draws }) => ({ kind: 'multiple', multiple: draws.one([1, 1, 1, 4, 6]), plus: 0 }),
  neck_shape: choice(({ draws }) => draws.one(['round', 'round', 'v'])),
  neck_how: choice(() => 'shaped'),
  neck_needle: stitches(({ printed }) => 2 * printed.neck + 2),
  neck_lower: length(({ draws }) => draws.between(0.3, 5)),
  neck_middle: length(share((p) => p.neck, 0.2, 1.1)),
  neck_base: length(
    share((p) => p.cross, 0.4, 1.1),
    2,
  ),
  neck_after: ({ draws }) => ({ kind: 'rows', count: draws.whole(0, 6) }),
  p_neck_stitches: stitches(({ printed }) => printed.neck),
  neck_width: length(share((p) => p.cross, 0.25, 0.6)),
  neck_depth: length(({ printed, draws }) => printed.depth * draws.between(0.15, 0.95), 1),
  neck_beside: choice((known) => (known.draws.often(0.5) && straightBeside(known) ? 'straight' : 'shaped')),
  p_armhole_pace: choice(({ printed }) => `every_${printed.pace}`),
  p_shoulder: stitches(({ printed }) => (printed.cross - printed.neck) / 2),
  shoulder_how: choice(({ draws }) => draws.one(['short_rows', 'bind_offs'])),
  shoulder_drop: length(({ draws }) => draws.between(0.3, 5)),
  neck_raise: length(({ draws }) => draws.between(0.3, 5)),
  yarn_swatch: ({ draws }) => ({ kind: 'yarn weight', grams: draws.length(3, 20), typed: 'g' }),
  yarn_swatch_width: length(({ draws }) => draws.between(10, 20)),
  yarn_swatch_height: length(({ draws }) => draws.between(10, 20)),
  yarn_ball: ({ draws }) => ({ kind: 'yarn weight', grams: draws.one([25, 50, 100]), typed: 'g' }),
  yarn_balls: ({ draws }) => ({ kind: 'number', count: draws.whole(3, 20) }),
  yarn_band: ({ draws }) => ({ kind: 'yarn length', metres: draws.whole(60, 220), typed: 'm' }),
  yarn_own_band: ({ draws }) => ({ kind: 'yarn length', metres: draws.whole(60, 220), typed: 'm' }),
};

function place({ stitches }: Wearer, nth: number): Value | null {
  const counted = stitches[nth];
  return counted === undefined ? null : { kind: 'stitch gauge', stitches: counted };
}

/** Whether all decreases of the pattern's armhole lie below the neck that is wanted. */
function straightBeside({ printed, answers }: Known): boolean {
  const deep = valueGiven(answers, 'neck_depth', 'length')?.cm;
  const last = decreaseRows(printed).at(-1) ?? 2;
  return deep !== undefined && armholeRows(printed) - Math.ceil(deep * printed.rowsPerCm) - 1 >= last;
}
