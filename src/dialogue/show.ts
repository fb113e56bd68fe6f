/** What is shown where an interview stands: the question, the review, or the outcome. */
import type { Outcome } from '../fit/plan.ts';
import type { Sum } from '../fit/sum.ts';
import type { Dialect } from '../fit/terms.ts';
import { formatLength, type LengthUnit } from '../fit/units.ts';
import type { Answer, Answers } from '../flow/answer.ts';
import { unitOf } from '../flow/calculations.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import { DATE, earlierButtons } from './earlier.ts';
import { exampleFor } from './example.ts';
import { couldBeKept } from './hear.ts';
import type { Button, Reply, ReviewLine } from './message.ts';
import { story, WORKED, withExercise } from './practice.ts';
import { answersOf, type Elsewhere, type Session } from './session.ts';
import { showAnswer, showValue } from './shown.ts';
import { askedStops, screenOf, standing } from './standing.ts';
import { type OpenSum, sumLines, sumsIn, tallyOf } from './sums.ts';

const BACK: Button = { label: 'Back', send: 'back' };
const WHY: Button = { label: 'Why do you ask?', send: 'why' };
const HOW: Button = { label: 'How do I find it?', send: 'how' };
const UNKNOWN: Button = { label: "I don't know", send: "I don't know" };
const PAUSE: Button = { label: 'Pause', send: 'pause' };
const PLAN: Button = { label: 'Make my plan', send: 'yes' };
const WORKINGS: Button = { label: 'Show the workings', send: 'workings' };
const KEY: Button = { label: 'All the sums on one page', send: 'key' };
const REVIEW: Button = { label: 'Change an answer', send: 'review' };
const SUMS: Button = { label: 'Work it yourself', send: 'work it yourself' };
const SHOW_PLAN: Button = { label: 'Show the plan', send: 'plan' };
const SUM_HELP: readonly Button[] = [
  { label: 'Hint', send: 'hint' },
  { label: 'Show me', send: 'show me' },
  { label: 'Next sum', send: 'next' },
  { label: 'Stop', send: 'stop' },
];

/** The same when an interview begins or is taken up again: an exercise tells its story. */
export function takeUp(given: CompiledFlow, session: Session): readonly Reply[] {
  const flow = given.inTerms(session.terms ?? 'us');
  const telling = standing(flow, session).at === 'question' ? story(flow, session) : [];
  return [...telling, ...show(flow, session)];
}

/** The replies that put a person where she stands, in her terms. */
export function show(given: CompiledFlow, session: Session): readonly Reply[] {
  const flow = given.inTerms(session.terms ?? 'us');
  const now = standing(flow, session);
  const { elsewhere } = session.place;
  if (elsewhere !== undefined && now.at !== 'cancelled')
    return [elsewhereCheck(flow, elsewhere, screenOf(now))];
  switch (now.at) {
    case 'question':
      return session.place.pending?.question === now.stop.id
        ? [pendingCheck(session)]
        : [ask(flow, session, now.stop)];
    case 'review':
      return [review(flow, session)];
    case 'sum':
      return [askSum(now, session.terms ?? 'us')];
    case 'outcome':
      return session.practice === true ? [WORKED, worked(flow, session)] : [outcome(flow, session)];
    case 'cancelled':
      return [
        {
          reply: 'rest',
          how: 'cancelled',
          text: 'This interview was cancelled. Your answers are kept; say "start over" to begin it afresh.',
        },
      ];
    default:
      return now satisfies never;
  }
}

function outcome(flow: CompiledFlow, session: Session): Reply {
  const made = flow.outcome(answersOf(session.log));
  return { reply: 'outcome', outcome: made, buttons: [WORKINGS, KEY, ...sumsButton(made), REVIEW] };
}

/** An exercise ends with its workings, and with the sums to be tried. */
function worked(flow: CompiledFlow, { log }: Session): Reply {
  const made = flow.outcome(answersOf(log));
  return { reply: 'outcome', outcome: made, workings: true, buttons: [KEY, ...sumsButton(made), REVIEW] };
}

/** Where there is a sum to work. */
function sumsButton(made: Outcome): Button[] {
  return sumsIn(made).length === 0 ? [] : [SUMS];
}

function askSum({ id, sum, progress }: OpenSum, terms: Dialect): Reply {
  return { reply: 'sum', question: id, sum, terms, progress, example: exampleOf(sum), help: SUM_HELP };
}

const EXAMPLES = { cm: ['38.5 cm', '52 cm'], in: ['15.5 in', '20.5 in'], counts: ['84', '36'] } as const;

/** A figure as it may be typed, which is not the one that is asked for. */
export function exampleOf({ read, unit }: Sum): string {
  const { value, unit: of } = read.result;
  const [one, other] = of === 'cm' ? EXAMPLES[unit] : EXAMPLES.counts;
  return Math.abs(Number.parseFloat(one) - value) < 1 ? other : one;
}

/** How it went with the sums of the present plan. */
export function showTally({ log }: Session): Reply {
  return { reply: 'tally', tally: tallyOf(sumLines(log) ?? []), buttons: [SHOW_PLAN, SUMS, REVIEW] };
}

/** The outcome again, with how every figure came about. */
export function showWorkings(flow: CompiledFlow, session: Session): Reply {
  return {
    reply: 'outcome',
    outcome: flow.outcome(answersOf(session.log)),
    workings: true,
    buttons: [REVIEW],
  };
}

/** The answers and every working, numbered, in place of the plan. */
export function showKey(flow: CompiledFlow, session: Session): Reply {
  const made = flow.outcome(answersOf(session.log));
  return {
    reply: 'outcome',
    outcome: made,
    key: reviewLines(flow, session),
    buttons: [SHOW_PLAN, ...sumsButton(made), REVIEW],
  };
}

function ask(flow: CompiledFlow, session: Session, stop: Stop): Reply {
  const { question } = stop;
  const answers = answersOf(session.log);
  const asked = askedStops(flow, answers);
  const at = asked.findIndex((s) => s.id === stop.id);
  const open = asked.filter((s) => answers[s.id] === undefined && s.id !== stop.id);
  return {
    reply: 'ask',
    question: stop.id,
    text: question.ask,
    progress: { number: at + 1, toGo: open.length },
    buttons: withExercise(flow, session, stop, [
      ...choiceButtons(stop),
      ...earlierButtons(flow, session, stop),
      ...likely(flow, stop, session),
    ]),
    several: question.kind === 'choices',
    example: exampleFor(question, unitOf(answers)),
    help: [...(at > 0 ? [BACK] : []), WHY, HOW, ...lessonButton(flow, stop), UNKNOWN, PAUSE],
  };
}

function lessonButton({ book }: CompiledFlow, { question }: Stop): Button[] {
  const lesson = book.lessons.get(question.lesson ?? '');
  return lesson === undefined ? [] : [{ label: `Lesson: ${lesson.title}`, send: 'lesson' }];
}

function choiceButtons({ question }: Stop): Button[] {
  return question.choices?.map((c) => ({ label: c.label, send: c.label })) ?? [];
}

/** The present answer of a question that is asked again, and the likely answers. */
function likely(flow: CompiledFlow, stop: Stop, session: Session): Button[] {
  const answers = answersOf(session.log);
  const unit = unitOf(answers);
  const { question } = stop;
  const present = answers[stop.id];
  const kept = present === undefined ? [] : keepButton(flow, stop, answers, present);
  const saved = savedButton(stop, session, unit);
  const offered = flow.asked(stop, answers).offered();
  const standIn =
    question.kind === 'length' && offered.length === 0 ? flow.standIn(question, answers) : undefined;
  const suggestions = standIn === undefined ? offered : [standIn];
  const buttons = suggestions.map(({ value, from }) => {
    const shown = showValue(question, value, unit);
    return { label: shown, send: value.kind === 'size' ? value.label : shown, note: from };
  });
  return [...kept, ...saved, ...buttons];
}

/** The present answer, where it could be given again; a figure read in another size says so. */
function keepButton(flow: CompiledFlow, stop: Stop, answers: Answers, present: Answer): Button[] {
  if (!couldBeKept(flow.asked(stop, answers), present)) return [];
  const label = `Keep: ${showAnswer(stop.question, present, unitOf(answers))}`;
  const was = flow.fits(stop, answers) || present.given !== 'value' ? undefined : present.size;
  return [{ label, send: 'keep', ...(was === undefined ? {} : { note: `read for size ${was}` }) }];
}

/** A measurement that was given in an earlier interview, with its date. */
function savedButton({ question }: Stop, { measured }: Session, unit: LengthUnit): Button[] {
  const saved = question.measurement === undefined ? undefined : measured?.get(question.measurement);
  if (saved === undefined) return [];
  const shown = formatLength(saved.cm, unit);
  return [
    {
      label: shown,
      send: `${saved.typed.value} ${saved.typed.unit}`,
      note: `measured ${DATE.format(saved.at)}`,
    },
  ];
}

function pendingCheck({ place }: Session): Reply {
  const pending = place.pending;
  if (pending === null) throw new Error('nothing is pending');
  return {
    reply: 'check',
    question: pending.question,
    text: pending.text,
    buttons: [
      ...pending.options.map((o, i) => optionButton(o.label, pending.yesNo && i === 0)),
      { label: pending.yesNo ? 'No, I will type it again' : 'None of these', send: 'no' },
    ],
  };
}

/** What is asked where another chapter is offered; `screen` is what she looks at otherwise. */
function elsewhereCheck({ book, file }: CompiledFlow, { flow }: Elsewhere, screen: string): Reply {
  const other = book.flows.get(flow ?? '');
  const begin = other === undefined ? 'Show me what else there is' : `Begin: ${other.title}`;
  const asked =
    other === undefined ? 'Would you rather do something else?' : `Do you mean this: ${other.wish}?`;
  return {
    reply: 'check',
    question: screen,
    text: `${asked} Everything you have answered here is kept, and “${file.title}” waits for you.`,
    buttons: [
      { label: begin, send: 'yes' },
      { label: 'No, go on here', send: 'no' },
    ],
  };
}

function optionButton(label: string, yes: boolean): Button {
  return yes ? { label: `Yes: ${label}`, send: 'yes' } : { label, send: label };
}

function review(flow: CompiledFlow, session: Session): Reply {
  return { reply: 'review', lines: reviewLines(flow, session), buttons: [PLAN, BACK, PAUSE] };
}

/** What is answered so far, in the order of the questions. */
export function reviewLines(flow: CompiledFlow, session: Session): readonly ReviewLine[] {
  const answers = answersOf(session.log);
  const unit = unitOf(answers);
  return askedStops(flow, answers).flatMap((stop): ReviewLine[] => {
    const answer = answers[stop.id];
    if (answer === undefined) return [];
    const standIn = answer.given === 'value' ? undefined : flow.standIn(stop.question, answers);
    const stands = standIn === undefined ? '' : `; ${showValue(stop.question, standIn.value, unit)} is used`;
    return [
      {
        question: stop.id,
        label: stop.question.short,
        shown: `${showAnswer(stop.question, answer, unit)}${stands}`,
        assumed: answer.given !== 'value',
      },
    ];
  });
}
