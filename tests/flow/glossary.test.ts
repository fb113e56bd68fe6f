/** Terms that a knitter meets first when she alters a pattern: each is explained where a chapter first uses it. */
import { describe, expect, it } from 'vitest';
import { wordLesson } from '../../src/dialogue/lessons.ts';
import type { CompiledFlow } from '../../src/flow/compile.ts';
import type { Question } from '../../src/flow/schema.ts';
import { loadFlows } from '../../src/library.ts';

interface Term {
  readonly term: RegExp;
  /** The words that explain it: in the same text, or in the lesson that belongs to the question. */
  readonly explained: RegExp;
}

const TERMS: readonly Term[] = [
  { term: /\bgauge\b/i, explained: /gauge is how many stitches and rows/i },
  {
    term: /\bswatch\b/i,
    explained:
      /a swatch is a square|swatch, your sample square|a square swatch|lay the swatch flat|also swatch/i,
  },
  { term: /\bease\b/i, explained: /ease is what the sweater measures|the ease, which is how much more/i },
  { term: /\bshort rows?\b/i, explained: /a short row is turned before its end/i },
  { term: /\braglan\b/i, explained: /raglan(?::| has) (?:four )?slanting lines/i },
  { term: /\byokes?\b/i, explained: /round yoke: body and sleeves are joined in one ring/i },
  { term: /\bset[- ]in\b/i, explained: /set-in sleeve: the body has an armhole/i },
  { term: /\bdrop shoulders?\b/i, explained: /drop shoulder: the body is straight/i },
  { term: /\bcaps?\b/i, explained: /a cap, a curved top/i },
  {
    term: /\bdarts\b/i,
    explained: /darts that run up and down add width|makes room for the bust|darts are lines within/i,
  },
  { term: /\bwedge\b/i, explained: /more rows than the others: a wedge/i },
  { term: /\bschematic\b/i, explained: /schematic, (?:the|a) drawing with measurements/i },
  { term: /\bmultiple\b/i, explained: /"multiple of 4 plus 1" is a count/i },
  { term: /\bstockinette\b/i, explained: /stockinette, the plain smooth fabric/i },
  { term: /\bblocking\b/i, explained: /blocking is to wet a piece/i },
];

const flows = [...loadFlows().values()];

/** What is read with a question, its lesson apart. */
function read({ short, ask, why, how, choices = [] }: Question): string {
  return [short, ask, ...choices.map(({ label }) => label), why, how].join('\n');
}

function lessonOf({ book }: CompiledFlow, { lesson }: Question): string {
  const found = book.lessons.get(lesson ?? '');
  return found === undefined ? '' : wordLesson(found);
}

describe('a trade term', () => {
  it.each(flows.map((flow) => [flow.file.title, flow] as const))(
    'is explained at its first use, or in the lesson linked there: %s',
    (_, flow) => {
      const unexplained = TERMS.flatMap(({ term, explained }) => {
        const stop = flow.stops.find(({ question }) => term.test(read(question)));
        if (stop === undefined) return [];
        const told = `${read(stop.question)}\n${lessonOf(flow, stop.question)}`;
        return explained.test(told) ? [] : [`${term} at ${stop.id}`];
      });
      expect(unexplained).toEqual([]);
    },
  );

  it('is explained somewhere, each of them', () => {
    const all = flows.flatMap((flow) =>
      flow.stops.map(({ question }) => read(question) + lessonOf(flow, question)),
    );
    expect(TERMS.filter(({ explained }) => !all.some((text) => explained.test(text)))).toEqual([]);
  });
});
