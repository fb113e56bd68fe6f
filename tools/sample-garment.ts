/** The sample sweater with every alteration that can be drawn, from the engine itself: for the gallery and the tests of pictures. */
import { readFileSync } from 'node:fs';
import { type Armhole, armhole } from '../src/fit/armhole.ts';
import { bustDart } from '../src/fit/bust-dart.ts';
import { cap } from '../src/fit/cap.ts';
import { dropShoulder } from '../src/fit/drop-shoulder.ts';
import { ANY_COUNT, type Gauge, rateAsPrinted } from '../src/fit/gauge.ts';
import { hemWedge } from '../src/fit/hem-wedge.ts';
import { neck } from '../src/fit/neck.ts';
import type { Plan, Step } from '../src/fit/plan.ts';
import { type RaglanShape, raglan } from '../src/fit/raglan.ts';
import {
  neckOutline,
  raglanOutline,
  type ShapedPart,
  shapedCap,
  shapedDrop,
  yokeOutline,
} from '../src/fit/shaped.ts';
import { shoulderPart } from '../src/fit/shoulder-steps.ts';
import { cm, rows, stitches } from '../src/fit/units.ts';
import { frontDarts } from '../src/fit/vertical-dart-steps.ts';
import type { Direction, Worked } from '../src/fit/words.ts';
import { quantity, workOut } from '../src/fit/working.ts';
import { yoke } from '../src/fit/yoke.ts';
import { THREE_ROUNDS } from '../src/fit/yoke-scheme.ts';
import { loadFlows } from '../src/library.ts';
import { readScripts } from '../src/transport/script/files.ts';
import { runScript, type Script } from '../src/transport/script/run.ts';

const ANSWERS = new URL('./sample-answers.yaml', import.meta.url);

/** The plan for the sample sweater; `changed` are answers other than the file's. */
export function samplePlan(changed: Script = {}): Plan {
  const flow = loadFlows().get('whole');
  const [script] = readScripts(readFileSync(ANSWERS, 'utf8'), 'sample-answers.yaml');
  if (flow === undefined || script === undefined) throw new Error('the sample has no flow or no answers');
  const result = runScript(flow, { ...script, ...changed });
  if (result.result === 'outcome' && result.outcome.kind === 'plan') return result.outcome.plan;
  throw new Error(`the sample gives no plan: ${JSON.stringify(result)}`);
}

/** 22 stitches and 30 rows over 10 cm, as the sample's pattern is written. */
export function sampleGauge(worked: Worked): Gauge {
  const over10cm = (count: number) => rateAsPrinted({ count, span: cm(10), unit: 'cm' });
  return { stitches: over10cm(22), rows: over10cm(30), worked };
}

export const RATES = {
  stitchesPerCm: sampleGauge('flat').stitches.perCm,
  rowsPerCm: sampleGauge('flat').rows.perCm,
};

function made<T extends { readonly kind: string }, K extends T['kind']>(
  kind: K,
  found: T,
): Extract<T, { kind: K }> {
  if (found.kind !== kind) throw new Error(`the sample's ${kind} cannot be made: ${found.kind}`);
  return found as Extract<T, { kind: K }>;
}

export function sampleArmhole(): Armhole {
  const gauge = sampleGauge('flat');
  return made(
    'armhole',
    armhole({ bust: stitches(112), crossBack: stitches(86), depth: cm(20), gauge, bindOffs: [stitches(6)] }),
  );
}

export function sampleCap() {
  const shape = sampleArmhole();
  const of = (upperArm: number) =>
    made(
      'cap',
      cap({
        upperArm: stitches(upperArm),
        armhole: { front: shape.edge, back: shape.edge },
        depth: shape.depth,
        bindOff: stitches(6),
        gauge: sampleGauge('flat'),
      }),
    );
  return shapedCap(of(80), of(74), { front: shape, back: shape }, RATES);
}

export function sampleDrop() {
  const gauge = sampleGauge('flat');
  const of = (depth: number) =>
    made(
      'drop shoulder',
      dropShoulder({
        depth: cm(depth),
        back: cm(55),
        crossBack: cm(38),
        upperArm: cm(33),
        body: gauge,
        sleeve: gauge,
        rule: ANY_COUNT,
      }),
    );
  return shapedDrop(of(20), of(18), RATES);
}

export function sampleRaglanShape(): RaglanShape {
  return made(
    'raglan',
    raglan({
      direction: 'up',
      gauge: sampleGauge('round'),
      depth: cm(23),
      parts: {
        back: { underarm: stitches(98), neck: stitches(40) },
        front: { underarm: stitches(98), neck: stitches(36) },
        sleeve: { underarm: stitches(66), neck: stitches(14) },
      },
      carriers: 'every row',
      plain: rows(0),
      neckWanted: cm(47),
    }),
  );
}

export function sampleRaglan() {
  return { shape: 'raglan', gauge: RATES, after: raglanOutline(sampleRaglanShape()) } as const;
}

export function sampleYoke() {
  const shape = made(
    'yoke',
    yoke({
      direction: 'up',
      gauge: sampleGauge('round'),
      depth: cm(24),
      underarm: stitches(324),
      neck: stitches(96),
      scheme: THREE_ROUNDS,
    }),
  );
  return { shape: 'yoke', gauge: RATES, after: yokeOutline(shape) } as const;
}

export function sampleNeck() {
  const of = (width: number) =>
    neckOutline(
      made(
        'neck',
        neck({ stitches: stitches(86), width: cm(width), depth: cm(8), gauge: sampleGauge('flat') }),
      ),
    );
  return { shape: 'neck', gauge: RATES, after: of(19), before: of(17), slope: rows(0) } as const;
}

/** Both shoulders of the back with the neck between them, or one of the front with its armhole at that side. */
export function sampleShoulders(sides: 'both' | 'start' | 'end'): ShapedPart {
  const on = sides === 'both' ? { sides, neck: stitches(42) } : { sides };
  const part = shoulderPart(
    { how: 'bind-offs', direction: 'up', drop: cm(3), gauge: RATES, shoulder: stitches(22), on },
    sides === 'both' ? 'back' : 'front',
  );
  return shapedIn('kind' in part ? [] : part.steps);
}

/** The front widened for the bust by two darts that run up and down. */
export function sampleDarts(direction: Direction): ShapedPart {
  const over = workOut('rows', 'a', { a: quantity('rows', 30, 'rows') }, { unit: 'rows' });
  const darts = frontDarts(
    {
      extra: { from: 'width', width: cm(6) },
      gauge: RATES,
      front: stitches(110),
      bustSpan: cm(19),
      perRow: 4,
      carriers: 'every row',
      worked: 'round',
      direction,
      sides: null,
      edge: 0,
      widen: over,
      narrow: over,
    },
    sampleGauge('round'),
  );
  return shapedIn(darts.kind === 'darts' ? (direction === 'up' ? darts.before : darts.after) : []);
}

function shapedIn(steps: readonly Step[]): ShapedPart {
  const shaped = steps.find((step) => step.shaped !== null)?.shaped ?? null;
  if (shaped === null) throw new Error('the sample has no step that shapes');
  return shaped;
}

export function sampleDart() {
  const found = made(
    'bust dart',
    bustDart({
      depth: { from: 'lengths', front: cm(46), back: cm(42) },
      gauge: RATES,
      worked: 'flat',
      direction: 'up',
      sides: 'both',
      needle: stitches(112),
      front: { start: 0, stitches: stitches(112) },
      bustSpan: cm(19),
    }),
  );
  return found.wedge;
}

export function sampleHem() {
  return made(
    'wedge',
    hemWedge({
      depth: cm(5),
      gauge: RATES,
      worked: 'flat',
      direction: 'up',
      edging: rows(18),
      needle: stitches(112),
      over: { across: 'between the sides', start: 0, stitches: stitches(112) },
      middle: cm(8),
    }),
  );
}
