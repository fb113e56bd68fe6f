/**
 * A flow as an XState machine. One state a question, and one that leads to the first question that waits: one that is to
 * be asked and has no answer that still fits. So the state of an interview is a function of its answers alone:
 *
 *   next ─▶ the first question that waits ── ANSWER ─▶ next
 *   next ─▶ review, where none waits ── CONFIRM ─▶ plan, or cannot
 */
import { assign, initialTransition, type SnapshotFrom, setup } from 'xstate';
import type { Outcome } from '../fit/plan.ts';
import type { Dialect } from '../fit/terms.ts';
import { type Answer, type AnswerKind, type Answers, valueGiven } from './answer.ts';
import { type Calculations, type Sheet, type Suggestion, unitOf } from './calculations.ts';
import { both, holds, type Taken } from './condition.ts';
import { inTerms } from './in-terms.ts';
import type { Lessons } from './lesson.ts';
import type { Book } from './load.ts';
import type { Condition, FlowFile, Question } from './schema.ts';

/** One place in a flow where a question may be asked. */
export interface Stop {
  /** The name of its state. */
  readonly state: string;
  readonly id: string;
  readonly question: Question;
  readonly when: Condition | undefined;
}

/** A question as things stand: with the answers in force, and the likely answers that it offers. */
export interface Asked {
  readonly id: string;
  readonly question: Question;
  readonly answers: Answers;
  /** The size that was chosen before, where this asks for a figure that a pattern prints for each of its sizes. */
  readonly size: string | undefined;
  readonly offered: () => readonly Suggestion[];
}

/** Whether an answer given earlier still fits the question as things stand. */
export type Fits = (asked: Asked, answer: Answer) => boolean;

export interface Interview {
  readonly answers: Answers;
  /** A question that is asked again although it has an answer. */
  readonly revisiting: string | null;
}

export type InterviewEvent =
  | { readonly type: 'ANSWER'; readonly question: string; readonly answer: Answer }
  | { readonly type: 'REVISIT'; readonly question: string }
  | { readonly type: 'CONFIRM' }
  | { readonly type: 'CANCEL' };

export interface CompiledFlow {
  readonly file: FlowFile;
  /** The book in which it stands, with the other flows and the lessons. */
  readonly book: Book;
  /** The same flow in these terms. */
  readonly inTerms: (dialect: Dialect) => CompiledFlow;
  readonly stops: readonly Stop[];
  readonly questions: ReadonlyMap<string, Question>;
  readonly machine: Machine;
  /** The state into which these answers bring the machine: the first question without a fitting one, or the review. */
  readonly replayed: (answers: Answers) => SnapshotFrom<Machine>;
  /** The answers to questions that are asked as things stand; others are kept but have no say. */
  readonly inForce: (answers: Answers) => Answers;
  readonly outcome: (answers: Answers) => Outcome;
  readonly asked: (stop: Stop, answers: Answers) => Asked;
  /** Whether the question at this stop is to be asked at all. */
  readonly asks: (stop: Stop, answers: Answers) => boolean;
  /** Whether the question has an answer that fits as things stand. */
  readonly fits: (stop: Stop, answers: Answers) => boolean;
  /** What stands in for an unknown answer; undefined where nothing does. */
  readonly standIn: (question: Question, answers: Answers) => Suggestion | undefined;
}

type Machine = ReturnType<typeof machineFor>;

export type Flows = ReadonlyMap<string, CompiledFlow>;

/** The lessons of the flows' book, in these terms; none where there is no flow. */
export function lessonsOf(flows: Flows, dialect: Dialect): Lessons {
  const [flow] = flows.values();
  return flow?.inTerms(dialect).book.lessons ?? new Map();
}

/** Every flow of the book, in the order in which they are offered, in US terms. */
export function compileBook(book: Book, calculations: Calculations, fits: Fits): Flows {
  const made = new Map<Dialect, Flows>();
  const compiledIn = (dialect: Dialect): Flows => {
    const said = inTerms(book, dialect);
    const files = [...said.flows.values()].sort((a, b) => a.place - b.place);
    const sibling = (id: string) => (other: Dialect) => {
      const flow = (made.get(other) ?? compiledIn(other)).get(id);
      if (flow === undefined) throw new Error(`'${id}' is in the book in one dialect only`);
      return flow;
    };
    const flows = new Map(
      files.map((file) => [file.id, compileFlow(file, said, calculations, fits, sibling(file.id))]),
    );
    made.set(dialect, flows);
    return flows;
  };
  return compiledIn('us');
}

function compileFlow(
  file: FlowFile,
  book: Book,
  calculations: Calculations,
  fits: Fits,
  sibling: CompiledFlow['inTerms'],
): CompiledFlow {
  const stops = flatten(file, book, undefined).map((stop, i) => ({ ...stop, state: `${i + 1} ${stop.id}` }));
  const questions = new Map(stops.map((s) => [s.id, s.question]));
  const result = calculations.results[file.result];
  if (result === undefined)
    throw new Error(`'${file.result}' passed the check of names but is not in the table`);
  const sheetOf = (answers: Answers): Sheet => ({
    answers,
    questions,
    unit: unitOf(answers),
    flow: file.id,
  });
  const takenFrom = (answers: Answers): Taken => {
    return (id) => {
      const unknown = questions.get(id)?.unknown;
      if (unknown === undefined || !('use' in unknown)) return undefined;
      return calculations.suggestions[unknown.use]?.(sheetOf({ ...answers }))[0]?.value;
    };
  };
  const inForce = once((answers: Answers) => answersInForce(stops, answers, takenFrom));
  const sheet = (answers: Answers): Sheet => sheetOf(inForce(answers));
  const outcome = once((answers: Answers) => result(sheet(answers)));
  const suggestions = once((_: Answers) => new Map<string, readonly Suggestion[]>());
  const suggest = (name: string, answers: Answers): readonly Suggestion[] => {
    const made = suggestions(answers);
    const known = made.get(name) ?? calculations.suggestions[name]?.(sheet(answers)) ?? [];
    made.set(name, known);
    return known;
  };
  const asked = (stop: Stop, answers: Answers): Asked => {
    const { id, question } = stop;
    return {
      id,
      question,
      answers: inForce(answers),
      size: sizeOf(stops, stop, inForce(answers)),
      offered: () => (question.offer === undefined ? [] : suggest(question.offer, answers)),
    };
  };
  const fitting = (stop: Stop, answers: Answers): boolean => {
    const answer = answers[stop.id];
    return answer !== undefined && fits(asked(stop, answers), answer);
  };
  // Made when it is first needed: most runs need one flow of all.
  let machine: Machine | undefined;
  const machineNow = (): Machine => {
    machine ??= machineFor(file.id, stops, passes, outcome);
    return machine;
  };
  const asks = (stop: Stop, answers: Answers): boolean =>
    isAsked(stop, inForce(answers), takenFrom(inForce(answers)));
  const passes = (stop: Stop, { answers, revisiting }: Interview): boolean =>
    !asks(stop, answers) || (revisiting !== stop.id && fitting(stop, answers));
  return {
    file,
    book,
    inTerms: sibling,
    stops,
    questions,
    inForce,
    outcome,
    asked,
    asks,
    fits: fitting,
    standIn: (question, answers) =>
      'use' in question.unknown ? suggest(question.unknown.use, answers)[0] : undefined,
    get machine() {
      return machineNow();
    },
    replayed: once((answers) => initialTransition(machineNow(), { answers })[0]),
  };
}

/** The same function, worked once for each set of answers: sets of answers are never changed, only replaced. */
function once<T>(work: (answers: Answers) => T): (answers: Answers) => T {
  const made = new WeakMap<Answers, { readonly value: T }>();
  return (answers) => {
    const known = made.get(answers) ?? { value: work(answers) };
    made.set(answers, known);
    return known.value;
  };
}

function flatten(file: FlowFile, book: Book, when: Condition | undefined): Omit<Stop, 'state'>[] {
  return file.steps.flatMap((step) => {
    const condition = both(when, step.when);
    if ('include' in step) {
      const included = book.flows.get(step.include);
      return included === undefined ? [] : flatten(included, book, condition);
    }
    const question = book.questions.get(step.ask);
    return question === undefined ? [] : [{ id: step.ask, question, when: condition }];
  });
}

/** Kinds of figure that differ from size to size. */
const OF_A_SIZE: ReadonlySet<AnswerKind> = new Set(['stitches', 'rows', 'length']);

/** The size in which the pattern's figure is read that is asked for here, where one has been chosen. */
function sizeOf(stops: readonly Stop[], { state, question }: Stop, answers: Answers): string | undefined {
  const chosen = (id: string) => valueGiven(answers, id, 'size')?.label;
  if (question.of_size !== undefined) return chosen(question.of_size);
  if (question.about !== 'pattern' || !OF_A_SIZE.has(question.kind)) return undefined;
  const here = stops.findIndex((stop) => stop.state === state);
  return stops
    .slice(0, here)
    .map(({ id }) => chosen(id))
    .findLast((size) => size !== undefined);
}

function isAsked({ when }: Stop, answers: Answers, taken: Taken): boolean {
  return when === undefined || holds(when, answers, taken);
}

function answersInForce(
  stops: readonly Stop[],
  answers: Answers,
  takenFrom: (inForce: Answers) => Taken,
): Answers {
  const kept: Record<string, Answer> = {};
  for (const stop of stops) {
    const answer = answers[stop.id];
    if (answer !== undefined && isAsked(stop, kept, takenFrom(kept))) kept[stop.id] = answer;
  }
  return kept;
}

function machineFor(
  id: string,
  stops: readonly Stop[],
  passes: (stop: Stop, interview: Interview) => boolean,
  outcome: (answers: Answers) => Outcome,
) {
  const base = setup({
    types: {
      context: {} as Interview,
      events: {} as InterviewEvent,
      input: {} as { answers: Answers },
    },
    guards: {
      passes: ({ context }, params: { stop: Stop }) => passes(params.stop, context),
      waits: ({ context }, params: { stop: Stop }) => !passes(params.stop, context),

      answersThis: ({ event }, params: { question: string }) =>
        event.type === 'ANSWER' && event.question === params.question,
      revisits: ({ event, context }, params: { question: string }) =>
        event.type === 'REVISIT' &&
        event.question === params.question &&
        context.answers[params.question] !== undefined,
      canBeMade: ({ context }) => outcome(context.answers).kind === 'plan',
    },
    actions: {
      accept: assign(({ context, event }) =>
        event.type === 'ANSWER'
          ? { answers: { ...context.answers, [event.question]: event.answer }, revisiting: null }
          : {},
      ),
      revisit: assign(({ event }) => (event.type === 'REVISIT' ? { revisiting: event.question } : {})),
    },
  });
  const asking = Object.fromEntries(
    stops.map((stop) => [
      stop.state,
      {
        always: { guard: { type: 'passes' as const, params: { stop } }, target: 'next' },
        on: {
          ANSWER: {
            guard: { type: 'answersThis' as const, params: { question: stop.id } },
            actions: 'accept' as const,
            target: 'next',
          },
        },
      },
    ]),
  );
  return base.createMachine({
    id,
    context: ({ input }) => ({ answers: input.answers, revisiting: null }),
    initial: 'next',
    on: {
      REVISIT: stops.map((stop) => ({
        guard: { type: 'revisits' as const, params: { question: stop.id } },
        actions: 'revisit' as const,
        target: `.${stop.state}`,
      })),
      CANCEL: '.cancelled',
    },
    states: {
      next: {
        always: [
          ...stops.map((stop) => ({
            guard: { type: 'waits' as const, params: { stop } },
            target: stop.state,
          })),
          { target: 'review' },
        ],
      },
      ...asking,
      review: { on: { CONFIRM: [{ guard: 'canBeMade', target: 'plan' }, { target: 'cannot' }] } },
      plan: {},
      cannot: {},
      cancelled: { type: 'final' },
    },
  });
}
