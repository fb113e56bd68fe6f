/** What others see of a plan, held against every flow: answered with figures of a body that stand nowhere else. */
import { describe, expect, it } from 'vitest';
import { AT_THE_START, answersOf, type Session } from '../../src/dialogue/session.ts';
import { standing } from '../../src/dialogue/standing.ts';
import { turn } from '../../src/dialogue/turn.ts';
import type { Outcome } from '../../src/fit/plan.ts';
import type { Measurement } from '../../src/fit/words.ts';
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';
import { garmentOnly } from '../../src/present/garment-only.ts';
import { outcomeText, planText } from '../../src/present/plan-text.ts';

/** Made up for this test: a body with a fuller bust, no figure of which is a round one. */
const BODY: Readonly<Record<Measurement, string>> = {
  bust: '103.7',
  'upper bust': '93.3',
  waist: '84.9',
  hip: '106.3',
  'upper arm': '33.3',
  wrist: '16.7',
  neck: '37.3',
  head: '56.7',
  'cross back': '36.7',
  'bust span': '20.3',
  'armhole depth': '19.7',
  'back length': '42.7',
  'front length': '47.3',
  'arm length': '44.3',
  height: '166.7',
};
const EVERYTHING = { dialect: 'us', workings: true } as const;

/** Answers every question: body figures from above, everything else as its example has it. */
function answered(flow: CompiledFlow, given: Readonly<Record<string, string>>): Outcome {
  const { id, version } = flow.file;
  let session: Session = { id, owner: 'x', flow: id, version, log: [], place: AT_THE_START };
  for (let now = standing(flow, session); now.at === 'question'; now = standing(flow, session)) {
    const { measurement, example } = now.stop.question;
    const text = given[now.stop.id] ?? (measurement === undefined ? example : `${BODY[measurement]} cm`);
    const before = session.log.length;
    const say = (said: string) => {
      session = turn(flow, session, { text: said }, 0).session;
    };
    say(text);
    if (session.log.length === before) say('yes');
    if (session.log.length === before) say('skip');
  }
  return flow.outcome(answersOf(session.log));
}

/** The figures of the body, of those that the flow asks for, that a text holds. */
function bodyIn(text: string, { questions }: CompiledFlow): string[] {
  const asked = [...questions.values()].flatMap(({ measurement }) =>
    measurement === undefined ? [] : [BODY[measurement]],
  );
  return (text.match(/\d+(?:\.\d+)?/g) ?? []).filter((number) => asked.includes(number));
}

const flows = [...loadFlows().values()];
const BODY_TOLD = ['body', 'ease', 'size', 'whole', 'sleeve', 'waist'];

describe('a plan without its body', () => {
  it.each(flows.map((flow) => [flow.file.id, flow] as const))(
    'holds no measurement of it: %s',
    (id, flow) => {
      const given = { pattern: 'my own', wishes: 'all', fit: 'very close', sizes_bust: '90 (100, 110) cm' };
      const outcome = answered(flow, given);
      if (outcome.kind !== 'plan') return expect(BODY_TOLD).not.toContain(id);
      if (BODY_TOLD.includes(id)) expect(bodyIn(outcomeText(outcome, EVERYTHING), flow)).not.toEqual([]);
      expect(bodyIn(planText(garmentOnly(outcome.plan), EVERYTHING), flow)).toEqual([]);
    },
  );

  it('keeps what is knitted: counts, rows, finished measurements and their workings', () => {
    const outcome = answered(flowOf('sleeve'), {});
    if (outcome.kind !== 'plan') throw new Error('the sleeve is not planned');
    const shown = garmentOnly(outcome.plan);
    expect(shown.finished.map(({ range }) => range)).toEqual(outcome.plan.finished.map(({ range }) => range));
    expect(shown.pieces).toEqual(outcome.plan.pieces);
    expect(shown.steps.map(({ instead }) => instead)).toEqual(
      outcome.plan.steps.map(({ instead }) => instead),
    );
    const text = planText(shown, EVERYTHING);
    expect(text).toContain('width at the wrist');
    expect(text).not.toContain('of the body');
  });

  it('has no step where nothing but the body was noted', () => {
    const outcome = answered(flowOf('body'), {});
    expect(outcome.kind === 'plan' && garmentOnly(outcome.plan).steps).toEqual([]);
  });

  it('says that a figure stood in, not which: a table tells the size of a body', () => {
    const unknown = { hip: "I don't know", cross_back: "I don't know" };
    const outcome = answered(flowOf('body'), unknown);
    if (outcome.kind !== 'plan') throw new Error('the body is not noted');
    expect(outcome.plan.assumed.map(({ used }) => used)).toEqual([
      expect.stringMatching(/^\d+(\.\d)? cm /),
      expect.stringMatching(/^\d+(\.\d)? cm /),
    ]);
    expect(garmentOnly(outcome.plan).assumed.map(({ used }) => used)).toEqual(['a stand-in', 'a stand-in']);
  });
});

function flowOf(id: string): CompiledFlow {
  const flow = flows.find(({ file }) => file.id === id);
  if (flow === undefined) throw new Error(`there is no flow '${id}'`);
  return flow;
}
