/** A book in the terms of one side of the sea: what is written as [gauge] in its texts is said as she says it. */
import { DIALECTS, type Dialect, inDialect } from '../fit/terms.ts';
import type { Lesson } from './lesson.ts';
import type { Book } from './load.ts';
import type { Choice, FlowFile, Question } from './schema.ts';

type Say = (text: string) => string;

/** The same book in these terms. Throws where a text uses a term that is not among them. */
export function inTerms({ flows, questions, home, lessons, exercises }: Book, dialect: Dialect): Book {
  const say: Say = (text) => inDialect(text, dialect);
  return {
    flows: mapped(flows, (flow) => flowIn(flow, say)),
    questions: mapped(questions, (question) => questionIn(question, say)),
    home,
    lessons: mapped(lessons, (lesson) => lessonIn(lesson, say)),
    exercises: mapped(exercises, ({ story, answers }) => ({ story: say(story), answers })),
  };
}

function mapped<T>(all: ReadonlyMap<string, T>, change: (one: T) => T): Map<string, T> {
  return new Map([...all].map(([id, one]) => [id, change(one)]));
}

function flowIn(flow: FlowFile, say: Say): FlowFile {
  return { ...flow, title: say(flow.title), wish: say(flow.wish), intro: say(flow.intro) };
}

/** A choice hears its label in every dialect: buttons of earlier messages send it as it was said there. */
function questionIn(question: Question, say: Say): Question {
  const { picture, unknown, choices } = question;
  return {
    ...question,
    short: say(question.short),
    ask: say(question.ask),
    why: say(question.why),
    how: say(question.how),
    ...(choices === undefined ? {} : { choices: choices.map((choice) => choiceIn(choice, say)) }),
    ...(picture === undefined ? {} : { picture: say(picture) }),
    unknown: 'waits' in unknown ? { waits: say(unknown.waits) } : { ...unknown, effect: say(unknown.effect) },
  };
}

function choiceIn(choice: Choice, say: Say): Choice {
  const everywhere = DIALECTS.map((dialect) => inDialect(choice.label, dialect));
  return { ...choice, label: say(choice.label), hear: [...new Set([...choice.hear, ...everywhere])] };
}

function lessonIn(lesson: Lesson, say: Say): Lesson {
  const { title, teaches, care } = lesson;
  return {
    ...lesson,
    title: say(title),
    teaches: teaches.map(say),
    ...(care === undefined ? {} : { care: say(care) }),
  };
}
