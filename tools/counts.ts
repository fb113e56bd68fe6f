/** Prints how many questions each wish asks, of a new knitter and of one who comes back, and whether that keeps to its limit. */
import { aboutOf } from '../src/dialogue/earlier.ts';
import type { Answer, Answers, Value } from '../src/flow/answer.ts';
import type { CompiledFlow, Flows, Stop } from '../src/flow/compile.ts';
import type { About } from '../src/flow/schema.ts';
import { loadFlows } from '../src/library.ts';
import { longestWay } from '../tests/flow/longest.ts';
import { answersTo } from '../tests/flow/telling.ts';

/** Questions at most; null where none is set. */
interface Limits {
  readonly fresh: number | null;
  readonly returning: number | null;
}

interface Wish {
  readonly wish: string;
  readonly flow: string;
  /** Answers that make the wish. */
  readonly says: Answers;
  readonly limits: Limits;
}

export interface Counted extends Wish {
  readonly fresh: number;
  /** Her unit is known, and her measurements are taken along; in a recheck so is the part of her plan. */
  readonly returning: number;
  /** Pattern and swatch are taken along too. */
  readonly sameProject: number;
}

/** Our own limits. A chapter may ask 14 questions; these are held to fewer, and those of a knitter who comes back too. */
const CHAPTER: Limits = { fresh: 14, returning: null };
const ONE_SUM: Limits = { fresh: 5, returning: 5 };
const ONE_ALTERATION: Limits = { fresh: 14, returning: 8 };
const OF_CHAPTERS: Readonly<Record<string, Limits>> = {
  spread: ONE_SUM,
  spacing: ONE_SUM,
  stitches: ONE_SUM,
  sleeve: ONE_ALTERATION,
  waist: ONE_ALTERATION,
  length: ONE_ALTERATION,
  hem: ONE_ALTERATION,
  front_neck: ONE_ALTERATION,
  back_neck: ONE_ALTERATION,
  recheck: { fresh: 10, returning: 6 },
};

const THREE = ['sleeve', 'length', 'waist'];

/** The whole way by what is changed. Of a pattern of her own each figure must be typed once, then it is taken along. */
function wholeWays(flow: CompiledFlow): Wish[] {
  const every = flow.questions.get('wishes')?.choices?.map(({ id }) => id) ?? [];
  const way = (wish: string, pattern: string, wishes: readonly string[], limits: Limits): Wish => ({
    wish: `The whole way: ${wish}`,
    flow: flow.file.id,
    says: {
      pattern: given({ kind: 'choice', choice: pattern }),
      wishes: given({ kind: 'choices', choices: wishes }),
    },
    limits,
  });
  return [
    way('sample in the round, three changes', 'sample_round', THREE, { fresh: 40, returning: 20 }),
    way('sample in pieces, three changes', 'sample_pieces', THREE, { fresh: 40, returning: 20 }),
    way('sample in the round, every change', 'sample_round', every, { fresh: 40, returning: null }),
    way('sample in pieces, every change', 'sample_pieces', every, { fresh: 40, returning: null }),
    way('her own pattern, three changes', 'own', THREE, { fresh: 40, returning: null }),
  ];
}

/** Every chapter and the ways through all of them, by their longest way. */
export function countQuestions(flows: Flows): Counted[] {
  const wishes = [...flows.values()].flatMap((flow): Wish[] => {
    const { id, title } = flow.file;
    if (id === 'whole') return wholeWays(flow);
    return [{ wish: title, flow: id, says: {}, limits: OF_CHAPTERS[id] ?? CHAPTER }];
  });
  return wishes.map((wish) => {
    const flow = flows.get(wish.flow);
    if (flow === undefined) throw new Error(`there is no flow '${wish.flow}'`);
    const { says } = wish;
    const known = flow.questions.has('unit') ? { unit: given({ kind: 'choice', choice: 'cm' }) } : {};
    const asked = (abouts: readonly About[]) =>
      longestWay(flow, { known, says, brings: (stop) => brought(flow, abouts, says, stop) }).length;
    return {
      ...wish,
      fresh: longestWay(flow, { known: {}, says }).length,
      returning: asked(['wearer', 'plan']),
      sameProject: asked(['wearer', 'plan', 'pattern', 'swatch']),
    };
  });
}

export function keepsTo({ fresh, returning, limits }: Counted): boolean {
  return fresh <= (limits.fresh ?? fresh) && returning <= (limits.returning ?? returning);
}

/** What is taken along at this question: an answer to every question that is about the same. */
function brought(flow: CompiledFlow, abouts: readonly About[], says: Answers, { question }: Stop): Answers {
  const about = aboutOf(question);
  if (about === undefined || !abouts.includes(about)) return {};
  const along: Record<string, Answer> = {};
  for (const stop of flow.stops) {
    if (aboutOf(stop.question) !== about) continue;
    const answer = says[stop.id] ?? answersTo(flow, stop, along)[0];
    if (answer !== undefined) along[stop.id] = answer;
  }
  return along;
}

function given(value: Value) {
  return { given: 'value', value } as const;
}

function table(counted: readonly Counted[]): string {
  const width = Math.max(...counted.map(({ wish }) => wish.length)) + 2;
  const cell = (n: number, limit: number | null = null) =>
    `${n}${limit === null ? '' : ` of ${limit}`}`.padEnd(14);
  const lines = counted.map(
    (row) =>
      `${row.wish.padEnd(width)}${cell(row.fresh, row.limits.fresh)}${cell(row.returning, row.limits.returning)}${cell(row.sameProject)}${keepsTo(row) ? '' : 'TOO MANY'}`,
  );
  const head = `${'Questions of the longest way'.padEnd(width)}${'new'.padEnd(14)}${'returning'.padEnd(14)}same pattern`;
  return [head, ...lines.map((line) => line.trimEnd())].join('\n');
}

if (process.argv[1]?.endsWith('counts.ts')) {
  const counted = countQuestions(loadFlows());
  process.stdout.write(`${table(counted)}\n`);
  process.exitCode = counted.every(keepsTo) ? 0 : 1;
}
