/** The desk: joins the dialogue with the store. Every turn is stored, durably, before its replies are given out. */
import { hear } from './dialogue/hear.ts';
import { AT_THE_START, answersOf, type LogLine, type Session } from './dialogue/session.ts';
import { takeUp } from './dialogue/show.ts';
import { screenOf, standing } from './dialogue/standing.ts';
import { turn } from './dialogue/turn.ts';
import { earlierFor } from './earlier.ts';
import type { Dialect } from './fit/terms.ts';
import type { LengthUnit } from './fit/units.ts';
import { valueGiven } from './flow/answer.ts';
import type { CompiledFlow, Flows } from './flow/compile.ts';
import type { Store } from './store/store.ts';
import { LogMismatch } from './store/trouble.ts';
import { type Desk, DeskRefused, type Offered } from './transport/contract.ts';

export interface DeskParts {
  readonly flows: Flows;
  readonly store: Store;
  /** Milliseconds since 1970. */
  readonly clock: () => number;
  /** A new name for a session, which nobody can guess. */
  readonly newId: () => string;
  /** The unit for those who have chosen none; null: they are asked. */
  readonly unit: LengthUnit | null;
  /** The terms for those who have chosen none. */
  readonly terms: Dialect;
}

/** Its verbs throw DeskRefused where they did nothing. */
export function openDesk({ flows, store, clock, newId, unit, terms }: DeskParts): Desk {
  function flowOf(id: string): CompiledFlow {
    const flow = flows.get(id);
    if (flow === undefined) throw new DeskRefused('no such flow');
    return flow;
  }

  const termsOf = (owner: string, usual = terms): Dialect => store.preferencesOf(owner).terms ?? usual;
  const measurements = new Map(
    [...flows.values()].flatMap(({ questions }) =>
      [...questions].flatMap(([id, { measurement }]) =>
        measurement === undefined ? [] : [[id, measurement] as const],
      ),
    ),
  );
  const measuredOf = (owner: string) => store.measuredOf(owner, measurements);

  function sessionOf(owner: string, id: string, usual?: Dialect): Session {
    const session = store.load(id);
    if (session === undefined) throw new DeskRefused('no such interview');
    if (session.owner !== owner) throw new DeskRefused('of another owner');
    return known(session, usual);
  }

  /** In her terms, with what she has said in her other interviews: of herself and to herself alone, never in practice. */
  function known(mine: Session, usual?: Dialect): Session {
    const { id, owner, practice } = mine;
    const session = { ...mine, terms: termsOf(owner, usual) };
    if (practice === true) return session;
    const others = () =>
      store
        .openOf(owner)
        .flatMap((open) => (open.session.id === id || open.session.practice === true ? [] : [open.session]));
    const earlier = once(() => earlierFor(flowOf(session.flow), others(), flows));
    return { ...session, measured: measuredOf(owner), earlier };
  }

  function begun(
    owner: string,
    id: string,
    given: Readonly<Record<string, string>>,
    practice: Pick<Session, 'practice'>,
    usual: Dialect | undefined,
  ): ReturnType<Desk['begin']> {
    const flow = flowOf(id);
    const now = clock();
    const own = store.preferencesOf(owner).unit;
    const start = { ...(unit === null ? {} : { unit }), ...given, ...(own === null ? {} : { unit: own }) };
    const log = givenLines(flow, start, now);
    const { version } = flow.file;
    const session = { id: newId(), owner, flow: id, version, log, place: AT_THE_START, ...practice };
    storing(() => store.create(session, now));
    return { session: session.id, replies: takeUp(flow, known(session, usual)) };
  }

  return {
    flows: (owner, usual = terms) => {
      const said = owner === undefined ? usual : termsOf(owner, usual);
      return [...flows.values()].map((flow) => offered(flow, said));
    },

    open: (owner, usual) =>
      store.openOf(owner).flatMap(({ session, lastAt }) => {
        const flow = flows.get(session.flow);
        if (flow === undefined) return [];
        const answered = Object.keys(answersOf(session.log)).length;
        const practice = session.practice === true;
        const said = offered(flow, termsOf(owner, usual));
        return [{ session: session.id, flow: said, lastAt, answered, practice }];
      }),

    begin: (owner, flow, given = {}, usual) => begun(owner, flow, given, {}, usual),

    practise: (owner, flow, given = {}, usual) => {
      if (!flowOf(flow).book.exercises.has(flow)) throw new DeskRefused('no such flow');
      return begun(owner, flow, given, { practice: true }, usual);
    },

    resume: (owner, id, usual) => {
      const session = sessionOf(owner, id, usual);
      return takeUp(flowOf(session.flow), session);
    },

    say: (owner, id, message, usual) => {
      let session = sessionOf(owner, id, usual);
      const flow = flowOf(session.flow);
      // What is said answers the question that stands now. Where another message comes first, the turn is taken again
      // from there, and finds that the question was answered already.
      const said = { ...message, to: message.to ?? screenOf(standing(flow, session)) };
      for (;;) {
        const next = turn(flow, session, said, clock());
        if (kept(store, session, next)) return next.replies;
        session = sessionOf(owner, id, usual);
      }
    },
  };
}

function once<T>(work: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: work() };
    return made.value;
  };
}

function offered(flow: CompiledFlow, terms: Dialect): Offered {
  const { book, file } = flow.inTerms(terms);
  const { id, title, wish, hear: said, group, common } = file;
  return { id, title, wish, hear: said, group, common, exercise: book.exercises.has(id) };
}

/** Answers from the start. A question that the flow does not have, or an answer that it cannot read, leaves no line. */
function givenLines(flow: CompiledFlow, given: Readonly<Record<string, string>>, at: number): LogLine[] {
  return Object.entries(given).flatMap(([question, typed]): LogLine[] => {
    const stop = flow.stops.find(({ id }) => id === question);
    const read = stop === undefined ? undefined : hear(flow.asked(stop, {}), typed);
    if (read?.kind !== 'heard') return [];
    return [{ line: 'answer', question, answer: { given: 'value', value: read.value }, typed, at }];
  });
}

/** Stores a turn; false where another message to the same session was stored meanwhile. */
function kept(store: Store, before: Session, { session, added }: ReturnType<typeof turn>): boolean {
  if (added.length === 0 && session.place === before.place) return true;
  try {
    storing(() => {
      // First: where it fails nothing of the turn is kept, and where only the append fails no answer is lost by it.
      keepReading(store, before, session, added);
      store.append(session.id, before.log.length, added, session.place);
    });
    return true;
  } catch (error) {
    if (error instanceof LogMismatch) return false;
    throw error;
  }
}

/** The unit and the terms in which she chose to read. */
function keepReading(store: Store, before: Session, after: Session, added: readonly LogLine[]): void {
  const { owner } = before;
  const preferences = store.preferencesOf(owner);
  const said = valueGiven(answersOf(added), 'unit', 'choice')?.choice;
  const unit = said === 'cm' || said === 'in' ? said : preferences.unit;
  const terms = after.terms === before.terms ? preferences.terms : (after.terms ?? null);
  if (unit !== preferences.unit || terms !== preferences.terms)
    store.prefer(owner, { ...preferences, unit, terms });
}

function storing(work: () => void): void {
  try {
    work();
  } catch (error) {
    throw error instanceof LogMismatch ? error : new DeskRefused('not stored', error);
  }
}
