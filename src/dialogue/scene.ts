/** A turn in the making: the flow, the session as it is, what was said; and how a turn is brought to its end. */
import { type Answer, type AnswerKind, valueGiven } from '../flow/answer.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import type { Reply } from './message.ts';
import { answersOf, type LogLine, type Session } from './session.ts';
import { show } from './show.ts';
import { askedStops, type Standing } from './standing.ts';

export interface Turn {
  readonly session: Session;
  /** Lines that this turn added to the log. */
  readonly added: readonly LogLine[];
  readonly replies: readonly Reply[];
}

export interface Scene {
  readonly flow: CompiledFlow;
  readonly session: Session;
  readonly at: Standing;
  readonly text: string;
  readonly now: number;
}

interface Accepting {
  readonly place?: Partial<Session['place']>;
  /** Answers to other questions that were typed in the same breath. */
  readonly also?: readonly { readonly question: string; readonly answer: Answer }[];
}

/** Puts an answer into the log, says what was understood, and which earlier answers it opens again. */
export function accept(
  scene: Scene,
  question: string,
  answer: Answer,
  echo: string,
  { place = { revisiting: null, pending: null }, also = [] }: Accepting = {},
): Turn {
  const { flow, session, now, text } = scene;
  if (!flow.questions.has(question)) return again(scene, [note('That cannot be set in this interview.')]);
  const lines = [{ question, answer }, ...also].map(
    (given): LogLine => ({ line: 'answer', ...given, typed: text, at: now }),
  );
  const next: Session = {
    ...session,
    log: [...session.log, ...lines],
    place: { ...session.place, ...place },
  };
  const opened = newlyOpen(flow, session, next, question);
  const asksAgain =
    opened.length === 0 ? [] : [note(`That changes what fits, so I ask again: ${opened.join(', ')}.`)];
  const stale = ofSizeBefore(flow, session, next, question);
  const lookAgain =
    stale.length === 0
      ? []
      : [
          note(
            `These figures were of the size before: ${stale.join('; ')}. Read them in the pattern again. To change one, say "change" and its name.`,
          ),
        ];
  return done(flow, next, lines, [{ reply: 'say', tone: 'heard', text: echo }, ...asksAgain, ...lookAgain]);
}

/** Where the size was changed: what she had given of the pattern in the size before, which is asked after the size. */
function ofSizeBefore(flow: CompiledFlow, before: Session, after: Session, answered: string): string[] {
  const [was, is] = [before, after].map(({ log }) => valueGiven(answersOf(log), answered, 'size')?.label);
  if (was === undefined || is === undefined || was === is) return [];
  const answers = answersOf(after.log);
  const stops = askedStops(flow, answers);
  const later = stops.slice(stops.findIndex(({ id }) => id === answered) + 1);
  return later
    .filter(
      ({ id, question: { about, kind } }) => about === 'pattern' && OF_A_SIZE.has(kind) && given(answers[id]),
    )
    .map(({ question }) => question.short);
}

const OF_A_SIZE: ReadonlySet<AnswerKind> = new Set(['stitches', 'rows', 'length']);

function given(answer: Answer | undefined): boolean {
  return answer?.given === 'value';
}

/** Questions that had a fitting answer before this turn and have none now. */
function newlyOpen(flow: CompiledFlow, before: Session, after: Session, answered: string): string[] {
  const answers = answersOf(after.log);
  const earlier = answersOf(before.log);
  return askedStops(flow, answers).flatMap((stop) => {
    const answer = answers[stop.id];
    if (answer === undefined || stop.id === answered || earlier[stop.id] === undefined) return [];
    return flow.fits(stop, answers) ? [] : [stop.question.short];
  });
}

export function isAt(scene: Scene, stop: Stop): boolean {
  return scene.at.at === 'question' && scene.at.stop.id === stop.id;
}

export function nothingToAnswer(scene: Scene): Turn {
  const text =
    scene.at.at === 'review'
      ? 'Everything is answered. Say "yes" for the plan, or "change" and what, such as "change bust".'
      : 'Nothing is asked just now. Say "review" to see your answers.';
  return again(scene, [note(text)]);
}

export function note(text: string): Reply {
  return { reply: 'say', tone: 'note', text };
}

export function explained(text: string): Reply {
  return { reply: 'say', tone: 'explain', text };
}

export function at(session: Session, place: Partial<Session['place']>): Session {
  return { ...session, place: { ...session.place, ...place } };
}

/** The same screen once more, after these replies. */
export function again(scene: Scene, replies: readonly Reply[]): Turn {
  return done(scene.flow, scene.session, [], replies);
}

export function done(
  flow: CompiledFlow,
  session: Session,
  added: readonly LogLine[],
  replies: readonly Reply[],
): Turn {
  return { session, added, replies: [...replies, ...show(flow, session)] };
}
