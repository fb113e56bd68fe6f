/** The longest plan: of random knitters who change everything, every part of it held against the platform's rules. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Plan } from '../../../src/fit/plan.ts';
import { picturesOf } from '../../../src/present/pictures.ts';
import { outcomeText } from '../../../src/present/plan-text.ts';
import type { PageFile } from '../../../src/transport/discord/page.ts';
import { type PlanPaper, planPage, planParts } from '../../../src/transport/discord/plan-page.ts';
import { runScript } from '../../../src/transport/script/run.ts';
import { everyWish, type Knitter } from '../../dialogue/every-wish.ts';
import { flows, unmarked } from './circle.ts';
import { platformFaults } from './platform-faults.ts';

/** From slight to stout, from thick to fine. */
const knitters: fc.Arbitrary<Knitter> = fc.record({
  stitches: fc.integer({ min: 14, max: 40 }),
  rows: fc.integer({ min: 20, max: 56 }),
  bust: fc.integer({ min: 80, max: 130 }),
  longer: fc.integer({ min: -4, max: 8 }),
  pattern: fc.constantFrom('Pennywhin, in the round', 'Pennywhin, in pieces'),
  unit: fc.constantFrom('cm', 'in'),
});
const MANY = 5;

function planOf(knitter: Knitter): Plan {
  const flow = flows.get('whole');
  if (flow === undefined) throw new Error('there is no whole way');
  // Where a figure is unusual for the rest of the body she stands by it.
  const typed = Object.entries(everyWish(knitter)).map(([id, said]) => [id, [said, 'yes']]);
  const ran = runScript(flow, Object.fromEntries(typed));
  if (ran.result !== 'outcome' || ran.outcome.kind !== 'plan') throw new Error(JSON.stringify(ran));
  return ran.outcome.plan;
}

/** As many pictures as are drawn of it, without the drawing. */
function paperFor(plan: Plan): PlanPaper {
  const pictures = picturesOf(plan, 'uk').map(
    ({ name, alternative }): PageFile => ({ name: `${name}.png`, data: 'drawn', alternative }),
  );
  const sheet: PageFile = { name: 'plan.pdf', data: 'printed', alternative: '' };
  return { dialect: 'uk', drawn: { pictures, sheet }, answers: () => [], ways: { share: true, send: true } };
}

const INTERVIEW = { session: 'A'.repeat(22), title: 'The whole way', typing: true };

it('of those who change everything fits the platform in each of its parts, which hold all of its text and pictures', () => {
  const plans = fc.sample(knitters, { numRuns: MANY, seed: 20_261_125 }).map(planOf);
  for (const shows of ['plan', 'workings'] as const) {
    const textOf = (plan: Plan) =>
      outcomeText({ kind: 'plan', plan }, { dialect: 'uk', workings: shows === 'workings' });
    const longest = plans.reduce((a, b) => (textOf(b).length > textOf(a).length ? b : a));
    const paper = paperFor(longest);
    const parts = planParts(textOf(longest));
    expect(parts.length).toBeGreaterThan(4);
    const lines = (text: string) => text.split(/\n+/).filter((line) => line !== '');
    expect(lines(unmarked(parts.join('\n')))).toEqual(lines(textOf(longest)));
    const pages = parts.map((_, n) =>
      planPage({ kind: 'plan', plan: longest }, { part: n + 1, shows }, 'Kept.', INTERVIEW, paper),
    );
    expect(pages.flatMap(platformFaults)).toEqual([]);
    const names = pages.flatMap(({ files }) => files.map(({ name }) => name));
    expect(names.toSorted()).toEqual(
      [...paper.drawn.pictures.map(({ name }) => name), 'plan.pdf', 'plan.txt'].toSorted(),
    );
  }
});
