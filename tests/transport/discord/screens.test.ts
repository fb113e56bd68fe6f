/** Every screen of every flow, held against the platform's rules. */
import { describe, expect, it } from 'vitest';
import type { Reply, ReviewLine } from '../../../src/dialogue/message.ts';
import { AT_THE_START, answersOf, type LogLine, type Session } from '../../../src/dialogue/session.ts';
import { show } from '../../../src/dialogue/show.ts';
import { standing } from '../../../src/dialogue/standing.ts';
import { turn } from '../../../src/dialogue/turn.ts';
import type { CompiledFlow } from '../../../src/flow/compile.ts';
import { answerForm } from '../../../src/transport/discord/form.ts';
import { FIRST_VIEW, type PlanPaper, planPage, planParts } from '../../../src/transport/discord/plan-page.ts';
import { answersPage, questionShown, screenPage, wordLabel } from '../../../src/transport/discord/screen.ts';
import { modal } from '../../stand-in/rules/modals.ts';
import { inspect } from '../../stand-in/rules/spot.ts';
import { flows } from './circle.ts';
import { platformFaults } from './platform-faults.ts';

const SESSION = 'A'.repeat(22);
const PAPER: PlanPaper = {
  dialect: 'us',
  drawn: { pictures: [], sheet: undefined },
  answers: () => [{ question: 'bust', label: 'Bust or chest', shown: '96.5 cm', assumed: false }],
  ways: { share: true, send: true },
};

const interview = ({ file }: CompiledFlow) => ({ session: SESSION, title: file.title, typing: true });

function begun({ file: { id, version } }: CompiledFlow, log: readonly LogLine[] = []): Session {
  return { id: SESSION, owner: 'ada', flow: id, version, log, place: AT_THE_START };
}

/** The replies at every question, answered as its example has it, and at the review. */
function screensOf(flow: CompiledFlow): { replies: readonly Reply[]; session: Session }[] {
  const screens = [];
  let session = begun(flow);
  for (let now = standing(flow, session); now.at === 'question'; now = standing(flow, session)) {
    screens.push({ replies: show(flow, session), session });
    const { example, id } =
      now.stop.question.kind === 'choices'
        ? { example: 'all', id: '' }
        : { ...now.stop.question, id: now.stop.id };
    const said = id === 'pattern' ? 'my own' : example;
    const next = turn(flow, session, { text: said }, 0);
    session = next.added.length > 0 ? next.session : turn(flow, session, { text: 'skip' }, 0).session;
  }
  return [...screens, { replies: show(flow, session), session }];
}

describe.each([...flows].map(([id, flow]) => [id, flow] as const))('the flow %s', (_, flow) => {
  const screens = screensOf(flow);

  it('has no screen that the platform refuses, and each says what typed words would answer', () => {
    for (const { replies, session } of screens) {
      expect(platformFaults(screenPage(replies, interview(flow)))).toEqual([]);
      const now = standing(flow, session);
      expect(questionShown(replies)).toBe(now.at === 'question' ? now.stop.id : now.at);
    }
    expect(screens.length).toBeGreaterThan(1);
  });

  it('has no screen that the platform refuses after why, how, help or a refused answer', () => {
    for (const { session } of screens) {
      for (const text of ['why', 'how', 'help', 'review', 'x'.repeat(300), '*'.repeat(2000)]) {
        const { replies } = turn(flow, session, { text }, 0);
        expect(platformFaults(screenPage(replies, interview(flow)))).toEqual([]);
      }
    }
  });

  it('opens a form for every question', () => {
    for (const [id, question] of flow.questions)
      expect(inspect(JSON.parse(JSON.stringify(answerForm(SESSION, id, question))), modal)).toEqual([]);
  });

  it('finds every answer again that is picked to be changed', () => {
    const last = screens.at(-1);
    if (last === undefined) throw new Error('there is no screen');
    for (const id of Object.keys(answersOf(last.session.log))) {
      const { session } = turn(flow, last.session, { text: `change ${id}` }, 0);
      expect(standing(flow, session)).toMatchObject({ at: 'question', stop: { id } });
    }
  });

  it('hears all its choices when they are picked together', () => {
    for (const { replies, session } of screens) {
      const ask = replies.find((reply) => reply.reply === 'ask' && reply.several);
      if (ask?.reply !== 'ask') continue;
      const text = ask.buttons.map(({ send }) => send).join(', ');
      const { added } = turn(flow, session, { text }, 0);
      expect(added).toMatchObject([
        { answer: { value: { choices: ask.buttons.map(() => expect.any(String)) } } },
      ]);
    }
  });

  it('has an outcome that fits, part by part: the plan, with its workings, and all its sums', () => {
    const log = screens.at(-1)?.session.log ?? [];
    const outcome = flow.outcome(answersOf(log));
    for (const shows of ['plan', 'workings', 'key'] as const) {
      for (let part = 1; part <= 40; part += 1) {
        const view = { ...FIRST_VIEW, part, shows };
        expect(platformFaults(planPage(outcome, view, 'Noted: 16 cm', interview(flow), PAPER))).toEqual([]);
      }
    }
  });
});

describe('a button', () => {
  it.each([
    [{ label: '6 in', send: '6 in' }, '6 in'],
    [{ label: '6 in', send: '6 in', note: 'a common depth' }, '6 in (a common depth)'],
    [
      {
        label: '6 in',
        send: '6 in',
        note: `a table's figure. ${'A survey of a great many people '.repeat(3)}`,
      },
      "6 in (a table's figure)",
    ],
    [{ label: 'x'.repeat(70), send: 'x', note: 'y'.repeat(20) }, `${'x'.repeat(70)} (${'y'.repeat(6)}…)`],
    [{ label: 'x'.repeat(90), send: 'x', note: 'y' }, 'x'.repeat(90)],
  ])('tells where its answer comes from, as far as there is room: %j', (button, label) => {
    expect(wordLabel(button)).toBe(label);
  });
});

describe('a review', () => {
  it('of the longest answers there can be still fits, and names every question', () => {
    const lines = Array.from(
      { length: 60 },
      (_, i): ReviewLine => ({
        question: `question_${i}`,
        label: `A question with the longest name, no. ${i}`,
        shown: '81 (86, 91, 97, 102, 107, 112, 117, 122, 127) cm, '.repeat(4),
        assumed: true,
      }),
    );
    const page = answersPage(lines, { session: SESSION, title: 'The whole way', typing: false });
    expect(platformFaults(page)).toEqual([]);
    const texts = page.parts.flatMap((part) => ('content' in part ? [part.content] : []));
    for (const { label } of lines) expect(texts.join('\n')).toContain(label);
  });

  it('of nothing says so', () => {
    expect(platformFaults(answersPage([], { session: SESSION, title: 'x', typing: false }))).toEqual([]);
  });
});

it('the longest plan, with one step longer than a message, is whole when its parts are put together', () => {
  const step = (n: number) =>
    `${n}. Body\n${`   You: knit ${n} rows plain, then turn. `.repeat(8).trimEnd()}`;
  const long = `5. ${'   - stitches = 86.4 cm × 2.2 = 190.08: 192 stitches\n'.repeat(200).trimEnd()}`;
  const plan = [...Array.from({ length: 60 }, (_, n) => step(n)), long].join('\n\n');
  const parts = planParts(plan);
  expect(parts.length).toBeGreaterThan(5);
  const plain = (text: string) => text.replace(/\*\*|\\(?=[^0-9A-Za-z\s])/g, '').replace(/\s+/g, ' ');
  expect(plain(parts.join(' '))).toBe(plain(plan));
});
