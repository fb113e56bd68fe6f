/** What is known from earlier interviews and can be taken along with one press: wearer, pattern, swatch, part of a plan. */
import { unitOf } from '../flow/calculations.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import type { About, Question } from '../flow/schema.ts';
import type { Button } from './message.ts';
import { answersOf, type LogLine, type Session } from './session.ts';
import { showAnswer } from './shown.ts';
import { askedStops } from './standing.ts';

type AnswerLine = Extract<LogLine, { line: 'answer' }>;

/** Answers that belong together: of one wearer, pattern, swatch, or part of a plan. */
export interface Earlier {
  readonly about: About;
  /** The words of the button; no two are alike. */
  readonly label: string;
  readonly lines: readonly AnswerLine[];
}

/** A body measurement is about the wearer. */
export function aboutOf({ about, measurement }: Question): About | undefined {
  return measurement === undefined ? about : 'wearer';
}

/** A date as it is shown to people. */
export const DATE = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});

/** Fewer answers than this are given sooner than they are taken along. */
const LEAST = 2;
/** Answers that a button names. */
const NAMED = 2;

/**
 * What can be taken along at this question: it must answer this one, and another that is asked as things stand. With them
 * goes what it knows for questions that may still be asked.
 */
export function earlierAt(flow: CompiledFlow, session: Session, stop: Stop): readonly Earlier[] {
  if (aboutOf(stop.question) === undefined) return [];
  const answers = answersOf(session.log);
  const asked = new Set(askedStops(flow, answers).map(({ id }) => id));
  return (session.earlier?.() ?? []).flatMap((one): Earlier[] => {
    const lines = one.lines.filter(({ question }) => answers[question] === undefined);
    const now = lines.filter(({ question }) => asked.has(question));
    const answersThis = now.some(({ question }) => question === stop.id);
    return answersThis && now.length >= LEAST ? [{ ...one, lines }] : [];
  });
}

export function earlierButtons(flow: CompiledFlow, session: Session, stop: Stop): Button[] {
  return earlierAt(flow, session, stop).map(({ label, lines }) => {
    // Figures tell one wearer or pattern from another sooner than choices do.
    const figures = lines.filter(({ answer }) => answer.given === 'value' && answer.value.kind !== 'choice');
    const named = worded(flow, session, (figures.length > 0 ? figures : lines).slice(0, NAMED));
    const more = lines.length - named.length;
    return { label, send: label, note: `${named.join(', ')}${more > 0 ? `, and ${more} more` : ''}` };
  });
}

/** The answers in words, each after the name of its question. */
export function worded(flow: CompiledFlow, session: Session, lines: readonly AnswerLine[]): string[] {
  const unit = unitOf(answersOf(session.log));
  return lines.flatMap(({ question: id, answer }) => {
    const question = flow.questions.get(id);
    if (question === undefined) return [];
    return [`${question.short.toLowerCase()} ${showAnswer(question, answer, unit)}`];
  });
}
