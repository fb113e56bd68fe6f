/** The sample sweater with every alteration that can be drawn, from the engine itself: for the gallery and the tests of pictures. */
import { readFileSync } from 'node:fs';
import { type Armhole, armhole } from '../src/fit/armhole.ts';
import { bustDart } from '../src/fit/bust-dart.ts';
import { cap } from '../src/fit/cap.ts';
import { type Gauge, rateAsPrinted } from '../src/fit/gauge.ts';
import { hemWedge } from '../src/fit/hem-wedge.ts';
import { neck } from '../src/fit/neck.ts';
import type { Plan } from '../src/fit/plan.ts';
import { raglan } from '../src/fit/raglan.ts';
import { cm, rows, stitches } from '../src/fit/units.ts';
import type { Worked } from '../src/fit/words.ts';
import { yoke } from '../src/fit/yoke.ts';
import { THREE_ROUNDS } from '../src/fit/yoke-scheme.ts';
import { loadFlows } from '../src/library.ts';
import type { CapShown } from '../src/present/pictures/cap-picture.ts';
import type { NeckShown } from '../src/present/pictures/neck-picture.ts';
import type { RaglanShown } from '../src/present/pictures/raglan-picture.ts';
import type { YokeShown } from '../src/present/pictures/yoke-picture.ts';
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

export function sampleCap(): CapShown {
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
  return { cap: of(80), before: of(74), gauge: RATES, armhole: { front: shape, back: shape, gauge: RATES } };
}

export function sampleRaglan(): RaglanShown {
  const of = (depth: number) =>
    made(
      'raglan',
      raglan({
        direction: 'up',
        gauge: sampleGauge('round'),
        depth: cm(depth),
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
  return { raglan: of(23), before: of(21), gauge: RATES, worked: 'round' };
}

export function sampleYoke(): YokeShown {
  const of = (depth: number) =>
    made(
      'yoke',
      yoke({
        direction: 'up',
        gauge: sampleGauge('round'),
        depth: cm(depth),
        underarm: stitches(324),
        neck: stitches(96),
        scheme: THREE_ROUNDS,
      }),
    );
  return { yoke: of(24), before: of(22), gauge: RATES };
}

export function sampleNeck(): NeckShown {
  const of = (width: number) =>
    made(
      'neck',
      neck({ stitches: stitches(86), width: cm(width), depth: cm(8), gauge: sampleGauge('flat') }),
    );
  return { neck: of(19), before: of(17), gauge: RATES };
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
