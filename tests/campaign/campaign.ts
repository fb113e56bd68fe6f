/** Runs campaigns and keeps account of what was met in them. */
import fc from 'fast-check';
import type { Session } from '../../src/dialogue/session.ts';
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';
import type { Budget } from './budget.ts';
import { knitGarment } from './garment.ts';
import { sweaters } from './sweaters.ts';
import { Walk } from './walk.ts';

const flows = loadFlows();

/** How often each kind of thing was met. Throws, with the smallest garment that shows it, where a figure does not hold. */
export function garmentCampaign({ runs, seed }: Budget): ReadonlyMap<string, number> {
  const met = new Map<string, number>();
  fc.assert(
    fc.property(sweaters, (sweater) => {
      const findings = knitGarment(sweater);
      for (const [what, times] of findings.met) met.set(what, (met.get(what) ?? 0) + times);
      if (findings.faults.length > 0) throw new Error(findings.faults.join('\n'));
    }),
    { numRuns: runs, seed },
  );
  return met;
}

/** Walks through these flows in turn, each from a seed of its own, which is named where a walk goes wrong. */
export function walkCampaign(
  { runs, seed }: Budget,
  walked: readonly CompiledFlow[] = [...flows.values()],
): ReadonlyMap<string, number> {
  const met = new Map<string, number>();
  let before: readonly Session[] = [];
  for (let i = 0; i < runs; i++) {
    const flow = walked[i % walked.length];
    if (flow === undefined) throw new Error('there is no flow to walk');
    const walk = new Walk(flow, before, flows);
    try {
      walk.go(seed + i, 30);
    } catch (error) {
      const said = walk.said.slice(-12).join('\n  ');
      throw new Error(
        `flow '${flow.file.id}', walk ${i} from seed ${seed}, after\n  ${said}\n${String(error)}`,
        { cause: error },
      );
    }
    // Without the interviews that it may take answers from itself, or all would be kept for ever.
    const { earlier: _, ...kept } = walk.session;
    before = [kept, ...before].slice(0, EARLIER);
    for (const [what, times] of walk.met) met.set(what, (met.get(what) ?? 0) + times);
  }
  return met;
}

/** Interviews from before that each walk may take answers from. */
const EARLIER = 4;
