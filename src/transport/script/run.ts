/**
 * An interview answered from a file: question ids to what a person would type. Goes through the same turns as a person
 * does. All refusals and all open questions are gathered, not only the first.
 */
import type { Reply, ReviewLine } from '../../dialogue/message.ts';
import { AT_THE_START, answersOf, type Session } from '../../dialogue/session.ts';
import { reviewLines } from '../../dialogue/show.ts';
import { standing } from '../../dialogue/standing.ts';
import { turn } from '../../dialogue/turn.ts';
import type { Outcome } from '../../fit/plan.ts';
import type { Dialect } from '../../fit/terms.ts';
import type { CompiledFlow } from '../../flow/compile.ts';

/** What is typed at each question, in turn: one text, or several where a reading is to be confirmed. */
export type Script = Readonly<Record<string, readonly string[]>>;

export interface Refusal {
  readonly question: string;
  readonly answer: string;
  readonly reason: string;
  readonly example: string;
}

export interface OpenQuestion {
  readonly question: string;
  readonly ask: string;
  readonly example: string;
}

export type ScriptResult =
  /** `answers`: what it starts from, in the order of the questions. */
  | { readonly result: 'outcome'; readonly outcome: Outcome; readonly answers: readonly ReviewLine[] }
  | { readonly result: 'refused'; readonly refused: readonly Refusal[] }
  | { readonly result: 'open'; readonly open: readonly OpenQuestion[] };

/** What it says is worded in these terms; answers may be in either. */
export function runScript(given: CompiledFlow, script: Script, terms: Dialect = 'us'): ScriptResult {
  const flow = given.inTerms(terms);
  const refused: Refusal[] = strangers(flow, script);
  const open: OpenQuestion[] = [];
  let session: Session = {
    id: 'script',
    owner: 'script',
    flow: flow.file.id,
    version: flow.file.version,
    log: [],
    place: AT_THE_START,
    terms,
  };
  for (let now = standing(flow, session); now.at === 'question'; now = standing(flow, session)) {
    const { id, question } = now.stop;
    const typed = script[id];
    if (typed === undefined) {
      open.push({ question: id, ask: question.ask, example: question.example });
      session = leaveOut(flow, session);
      continue;
    }
    const heard = say(flow, session, typed);
    if (isTaken(id, session, heard.session)) session = heard.session;
    else {
      refused.push({
        question: id,
        answer: typed.join(' / '),
        reason: reasonOf(heard.replies),
        example: question.example,
      });
      session = leaveOut(flow, session);
    }
  }
  if (refused.length > 0) return { result: 'refused', refused };
  if (open.length > 0) return { result: 'open', open };
  return {
    result: 'outcome',
    outcome: flow.outcome(answersOf(session.log)),
    answers: reviewLines(flow, session),
  };
}

function say(
  flow: CompiledFlow,
  session: Session,
  typed: readonly string[],
): { session: Session; replies: readonly Reply[] } {
  let now: { session: Session; replies: readonly Reply[] } = { session, replies: [] };
  for (const text of typed) now = turn(flow, now.session, { text }, 0);
  return now;
}

/** Words such as 'back' or 'cancel' are obeyed, but they are no answers. */
function isTaken(question: string, before: Session, after: Session): boolean {
  const added = after.log.slice(before.log.length);
  const { rest, revisiting, elsewhere } = after.place;
  return (
    added.every(({ line }) => line === 'answer') &&
    added.some((line) => line.line === 'answer' && line.question === question) &&
    rest === 'none' &&
    revisiting === null &&
    elsewhere === undefined
  );
}

/** Goes past a question so that the ones behind it are seen too. */
function leaveOut(flow: CompiledFlow, session: Session): Session {
  const clear = { ...session, place: { ...session.place, pending: null, rest: 'none' as const } };
  return turn(flow, clear, { text: 'skip' }, 0).session;
}

function strangers(flow: CompiledFlow, script: Script): Refusal[] {
  return Object.entries(script).flatMap(([id, typed]) =>
    flow.questions.has(id)
      ? []
      : [
          {
            question: id,
            answer: typed.join(' / '),
            reason: `The flow '${flow.file.id}' has no question of this id. It has: ${[...flow.questions.keys()].join(', ')}.`,
            example: [...flow.questions.keys()].join(', '),
          },
        ],
  );
}

/** How a reading is confirmed in a file: with a yes, or with the one that is meant. */
function toConfirm({ buttons }: Extract<Reply, { reply: 'check' }>): string {
  const sent = buttons.map((b) => b.send).filter((send) => send !== 'no');
  return `answer with a list: what you typed, then ${sent.map((s) => `"${s}"`).join(' or ')}`;
}

function reasonOf(replies: readonly Reply[]): string {
  const refusal = replies.find((r) => r.reply === 'say' && r.tone === 'refused');
  if (refusal?.reply === 'say') return refusal.text;
  const check = replies.find((r) => r.reply === 'check');
  if (check?.reply === 'check') return `${check.text} (${toConfirm(check)})`;
  return 'This was not taken for an answer.';
}
