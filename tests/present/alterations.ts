/** One plan of each alteration that has a picture to scale, and the whole way with every wish: for the tests and the gallery. */
import type { Plan } from '../../src/fit/plan.ts';
import { loadFlows } from '../../src/library.ts';
import { runScript } from '../../src/transport/script/run.ts';
import { everyWish } from '../dialogue/every-wish.ts';

type Typed = Readonly<Record<string, string>>;

const flows = loadFlows();

function planFrom(id: string, typed: Typed): Plan {
  const flow = flows.get(id);
  if (flow === undefined) throw new Error(`there is no flow '${id}'`);
  const run = runScript(flow, Object.fromEntries(Object.entries(typed).map(([k, v]) => [k, [v]])));
  if (run.result === 'outcome' && run.outcome.kind === 'plan') return run.outcome.plan;
  throw new Error(`no plan of '${id}': ${JSON.stringify(run)}`);
}

const COMMON: Typed = {
  unit: 'cm',
  gauge: '22 sts and 30 rows to 10 cm',
  body_made: 'from the hem, in the round',
};

const ARMHOLE: Typed = {
  unit: 'cm',
  gauge: '22 sts and 30 rows to 10 cm',
  armhole_top: 'set in',
  p_armhole: '20 cm',
  armhole_wanted: '22 cm',
  p_neck_depth: '8 cm',
  p_back: '112',
  p_cross: '84',
  p_bind_off: '6',
  p_upper_arm: '74',
};

const DROP: Typed = {
  unit: 'cm',
  gauge: '22 sts and 30 rows to 10 cm',
  armhole_top: 'drop shoulder',
  p_armhole: '18 cm',
  armhole_wanted: '21.3 cm',
  p_neck_depth: '8 cm',
  back_width: '55 cm',
  cross_back: '38 cm',
  upper_arm: '30 cm',
  fit: 'classic',
};

const RAGLAN: Typed = {
  ...COMMON,
  yoke_depth: '24 cm',
  p_back_yoke: '98',
  p_sleeve_yoke: '70',
  p_back_neck: '34',
  p_front_neck: '34',
  p_sleeve_neck: '14',
  neck_around: '44 cm',
};

const YOKE: Typed = {
  ...COMMON,
  yoke_depth: '24 cm',
  p_yoke_underarm: '324',
  p_yoke_neck: '96',
  yoke_rounds: 'three',
  yoke_repeat: '1',
};

const FRONT_NECK: Typed = {
  unit: 'cm',
  neck_how: 'shaped on the front',
  gauge: '20 sts and 28 rows to 10 cm',
  p_cross: '72',
  p_neck_stitches: '28',
  p_neck_depth: '8 cm',
  neck_shape: 'round',
  neck_width: '15 cm',
  neck_depth: '10 cm',
};

const BACK_NECK: Typed = {
  ...COMMON,
  body_made: 'from the neck, in the round',
  neck_needle: '120',
  neck_raise: '4 cm',
  neck_middle: '18 cm',
  neck_base: '40 cm',
  neck_after: '0',
};

const SHOULDER: Typed = {
  ...COMMON,
  p_shoulder: '23',
  p_back_neck: '40',
  shoulder_how: 'short rows',
  shoulder_drop: '3 cm',
};

const BUST: Typed = {
  ...COMMON,
  p_bust: '220',
  bust: '104 cm',
  upper_bust: '93 cm',
  front_length: '47.2 cm',
  back_length: '42 cm',
  bust_fabric: 'plain',
  bust_span: '21 cm',
  bust_below_underarm: '6 cm',
};

const HEM: Typed = {
  ...COMMON,
  p_hem_stitches: '220',
  p_hem: '5 cm',
  hem_drop: '4 cm',
  hem_over: 'across the back',
  hem_middle: '17 cm',
};

/** Every wish on the sample sweater in the round. */
const WHOLE: Typed = {
  ...everyWish({
    stitches: 22,
    rows: 30,
    bust: 96.5,
    longer: 0,
    pattern: 'Pennywhin, in the round',
    unit: 'cm',
  }),
  size: '4',
};

/** By what is altered. */
export const ALTERATIONS: Readonly<Record<string, () => Plan>> = {
  'a deeper armhole': () => planFrom('armhole', ARMHOLE),
  'a dropped shoulder': () => planFrom('armhole', DROP),
  'raglan lines': () => planFrom('raglan', RAGLAN),
  'raglan lines from the neck': () =>
    planFrom('raglan', { ...RAGLAN, unit: 'in', body_made: 'from the neck, in the round' }),
  'a round yoke': () => planFrom('yoke', YOKE),
  'a round yoke from the neck': () =>
    planFrom('yoke', { ...YOKE, body_made: 'from the neck, in the round', yoke_rounds: 'five' }),
  'a front neck': () => planFrom('front_neck', FRONT_NECK),
  'a V neck': () => planFrom('front_neck', { ...FRONT_NECK, neck_shape: 'v neck', neck_depth: '20 cm' }),
  'a raised back neck': () => planFrom('back_neck', BACK_NECK),
  'shoulders by short rows': () => planFrom('shoulder', SHOULDER),
  'shoulders bound off': () =>
    planFrom('shoulder', { ...SHOULDER, shoulder_how: 'bind off', body_made: 'from the hem, in pieces' }),
  'a dart by short rows': () => planFrom('bust', { ...BUST, bust_shaping: 'short rows' }),
  'darts that run up and down': () =>
    planFrom('bust', {
      ...BUST,
      bust_shaping: 'vertical darts',
      bust_extra: '6 cm',
      bust_above_waist: '15 cm',
    }),
  'a hem lower at the back': () => planFrom('hem', HEM),
  'a hem all round': () => planFrom('hem', { ...HEM, hem_over: 'all round' }),
  'every wish': () => planFrom('whole', WHOLE),
  'every wish in pieces': () => {
    const { hem_over: _, ...rest } = WHOLE;
    return planFrom('whole', { ...rest, pattern: 'Pennywhin, in pieces', shoulder_how: 'bind off' });
  },
};
