/** A practised interview: its story, and what the exercise answers to each question. */
import type { Value } from '../flow/answer.ts';
import { unitOf } from '../flow/calculations.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import type { Exercise } from '../flow/practice.ts';
import { hear } from './hear.ts';
import type { Button, Reply } from './message.ts';
import { answersOf, type Session } from './session.ts';

const FROM = "the exercise's";

/** Undefined in an interview of her own. */
function exerciseOf({ book, file }: CompiledFlow, { practice }: Session): Exercise | undefined {
  return practice === true ? book.exercises.get(file.id) : undefined;
}

/** What the exercise is about; nothing in an interview of her own. */
export function story(flow: CompiledFlow, session: Session): readonly Reply[] {
  const exercise = exerciseOf(flow, session);
  if (exercise === undefined) return [];
  const text = `Practice. ${exercise.story} Take the exercise's figures, or try others.`;
  return [{ reply: 'say', tone: 'explain', text }];
}

/** Said above the plan of an exercise. */
export const WORKED: Reply = {
  reply: 'say',
  tone: 'note',
  text: 'Practice: this is the worked answer. None of its figures is kept as yours.',
};

/** What the exercise answers here, as it is typed; undefined where it says nothing. */
function exercised(flow: CompiledFlow, session: Session, { id }: Stop): string | undefined {
  return exerciseOf(flow, session)?.answers.get(id)?.[unitOf(answersOf(session.log))];
}

/** The buttons of a question with the exercise's answer: marked where it is among them, else in place of what was likely. */
export function withExercise(
  flow: CompiledFlow,
  session: Session,
  stop: Stop,
  buttons: readonly Button[],
): readonly Button[] {
  const typed = exercised(flow, session, stop);
  if (typed === undefined) return buttons;
  const meant = meantBy(flow, session, stop, typed);
  const marked = buttons.map((button) =>
    meant.includes(button.send) ? { ...button, note: both(button.note) } : button,
  );
  const among = buttons.some(({ send }) => meant.includes(send));
  if (among) return marked;
  return [{ label: typed, send: typed, note: FROM }, ...buttons.filter(({ note }) => note === undefined)];
}

function both(note: string | undefined): string {
  return note === undefined ? FROM : `${FROM}; ${note}`;
}

/** What buttons of this question would send. */
function meantBy(flow: CompiledFlow, session: Session, stop: Stop, typed: string): string[] {
  const read = hear(flow.asked(stop, answersOf(session.log)), typed);
  return read.kind === 'heard' ? sentFor(stop, read.value) : [];
}

function sentFor({ question }: Stop, value: Value): string[] {
  const labels = (ids: readonly string[]) =>
    question.choices?.flatMap(({ id, label }) => (ids.includes(id) ? [label] : [])) ?? [];
  switch (value.kind) {
    case 'choice':
      return labels([value.choice]);
    case 'choices':
      return labels(value.choices);
    case 'size':
      return [value.label];
    default:
      return [];
  }
}
