/** A turn in the making: the flow, the session as it is, what was said; and how a turn is brought to its end. */
import type { Answer } from '../flow/answer.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import { couldBeKept } from './hear.ts';
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
    ({ question: id, answer: given }): LogLine => ({
      line: 'answer',
      question: id,
      answer: read(scene, id, given),
      typed: text,
      at: now,
    }),
  );
  const { refused: _, ...free } = session.place;
  const next: Session = { ...session, log: [...session.log, ...lines], place: { ...free, ...place } };
  const opened = newlyOpen(flow, session, next, question);
  return done(flow, next, lines, [
    { reply: 'say', tone: 'heard', text: echo },
    ...askedAgain(flow, next, opened),
  ]);
}

/** A figure that a pattern prints for each of its sizes keeps the size in which it was read. */
function read({ flow, session }: Scene, question: string, answer: Answer): Answer {
  if (answer.given !== 'value') return answer;
  const answers = answersOf(session.log);
  const stop = askedStops(flow, answers).find(({ id }) => id === question);
  const size = stop === undefined ? undefined : flow.asked(stop, answers).size;
  return size === undefined ? answer : { ...answer, size };
}

function askedAgain(flow: CompiledFlow, { log }: Session, opened: readonly Stop[]): Reply[] {
  const answers = answersOf(log);
  const ofSizeBefore = opened.filter((stop) => {
    const answer = answers[stop.id];
    return answer !== undefined && couldBeKept(flow.asked(stop, answers), answer);
  });
  const others = opened.filter((stop) => !ofSizeBefore.includes(stop));
  const named = (stops: readonly Stop[]) => stops.map(({ question }) => question.short).join('; ');
  return [
    ...(others.length === 0 ? [] : [note(`That changes what fits, so I ask again: ${named(others)}.`)]),
    ...(ofSizeBefore.length === 0
      ? []
      : [note(`These figures were of the size before, so I ask again: ${named(ofSizeBefore)}.`)]),
  ];
}

/** Questions that had a fitting answer before this turn and have none now. */
function newlyOpen(flow: CompiledFlow, before: Session, after: Session, answered: string): Stop[] {
  const answers = answersOf(after.log);
  const earlier = answersOf(before.log);
  return askedStops(flow, answers).filter(
    (stop) =>
      answers[stop.id] !== undefined &&
      stop.id !== answered &&
      earlier[stop.id] !== undefined &&
      !flow.fits(stop, answers),
  );
}

/** From so many answers on that could not be taken, the ways past the question are named. */
const MANY = 3;
const WAYS_PAST =
  'Say "how" to see what is meant, "I don\'t know" to go on without it, or "help" for all that you can say.';

/** The question stays, and why the answer could not be taken is said with an example. */
export function refuse(scene: Scene, question: string, why: string): Turn {
  const { refused } = scene.session.place;
  const times = refused?.question === question ? refused.times + 1 : 1;
  const session = at(scene.session, { pending: null, refused: { question, times } });
  const text = times < MANY ? why : `${why}\n${WAYS_PAST}`;
  return again({ ...scene, session }, [{ reply: 'say', tone: 'refused', text }]);
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
