/** Free words to the wish that is meant: 'help, I have 17 stitches, not 20' to another gauge. */
import { editDistance } from './read/spelling.ts';
import { wordsOfWish } from './wish-words.ts';

/** What may be wished: a flow by its name, in a knitter's words, and in other ways to say it. */
export interface Wish {
  readonly id: string;
  readonly title: string;
  readonly wish: string;
  readonly hear: readonly string[];
}

/** `one`: surely this; `several`: the likeliest first, at most three; `none`: nothing that was said tells a wish. */
export type FoundWish<T> =
  | { readonly found: 'one'; readonly wish: T }
  | { readonly found: 'several'; readonly wishes: readonly T[] }
  | { readonly found: 'none' };

/** Likeness from which a wish is sure where it is so far ahead of the next, and from which it is worth offering. */
const SURE = 0.62;
const AHEAD = 0.12;
const LIKELY = 0.2;
/** The likeliest are offered where none is sure. */
const OFFERED = 3;
/** More is not read, in characters. */
const LONGEST = 300;

/** The wish that is meant, or the likeliest. */
export function findWish<T extends Wish>(wishes: readonly T[], said: string): FoundWish<T> {
  const named = wishes.find(({ id, title, wish }) =>
    [id, title, wish].some((name) => name.toLowerCase() === said.trim().toLowerCase()),
  );
  if (named !== undefined) return { found: 'one', wish: named };
  const ranked = rankWishes(wishes, said);
  const [first, second] = ranked;
  if (first === undefined) return { found: 'none' };
  const sure = first.likeness >= SURE && first.likeness - (second?.likeness ?? 0) >= AHEAD;
  if (sure) return { found: 'one', wish: first.wish };
  return { found: 'several', wishes: ranked.slice(0, OFFERED).map(({ wish }) => wish) };
}

/** Every wish that shares enough of the words, the likeliest first. */
export function rankWishes<T extends Wish>(
  wishes: readonly T[],
  said: string,
): readonly { readonly wish: T; readonly likeness: number }[] {
  const known = wishes.map((wish) => ({ wish, phrases: phrasesOf(wish) }));
  const weigh = weights(known.map(({ phrases }) => phrases));
  const words = understood(wordsOfWish(said.slice(0, LONGEST)), weigh);
  if (words.size === 0) return [];
  return known
    .map(({ wish, phrases }) => ({ wish, likeness: likeness(words, phrases, weigh) }))
    .filter((one) => one.likeness >= LIKELY)
    .sort((a, b) => b.likeness - a.likeness);
}

type Words = ReadonlySet<string>;
/** How much a word tells: the more, the fewer wishes have it. */
type Weights = ReadonlyMap<string, number>;

/** The words of each phrase, worked out once: flows say them, not people. */
const PHRASES = new Map<string, Words>();

function phrasesOf({ title, wish, hear, id }: Wish): Words[] {
  return [wish, title, id.replaceAll('_', ' '), ...hear].map((phrase) => {
    const known = PHRASES.get(phrase) ?? wordsOfWish(phrase);
    PHRASES.set(phrase, known);
    return known;
  });
}

function weights(all: readonly (readonly Words[])[]): Weights {
  const having = new Map<string, number>();
  for (const phrases of all)
    for (const word of new Set(phrases.flatMap((words) => [...words])))
      having.set(word, (having.get(word) ?? 0) + 1);
  return new Map([...having].map(([word, count]) => [word, Math.log(1 + all.length / count)]));
}

/** The words that some wish knows; a typing slip counts as the word it is nearest to. */
function understood(words: Words, weigh: Weights): Words {
  const known = [...words].flatMap((word) => {
    if (weigh.has(word)) return [word];
    const near = [...weigh.keys()].find((other) => isSlip(word, other));
    return near === undefined ? [] : [near];
  });
  return new Set(known);
}

function isSlip(word: string, other: string): boolean {
  const longest = Math.max(word.length, other.length);
  const sameLetters = [...word].sort().join('') === [...other].sort().join('');
  if (longest < (sameLetters ? 4 : 5) || Math.abs(word.length - other.length) > 1 || word[0] !== other[0])
    return false;
  return editDistance(word, other) <= (longest >= 8 || sameLetters ? 2 : 1);
}

/** 0 to 1: mostly how well the nearest phrase agrees, partly how much of what was said the wish knows at all. */
function likeness(said: Words, phrases: readonly Words[], weigh: Weights): number {
  const weight = (words: Iterable<string>) =>
    [...words].reduce((sum, word) => sum + (weigh.get(word) ?? 0), 0);
  const whole = weight(said);
  const agrees = phrases.map((phrase) => {
    const common = weight([...said].filter((word) => phrase.has(word)));
    return common === 0 ? 0 : (2 * common) / (whole + weight(phrase));
  });
  const own = new Set(phrases.flatMap((phrase) => [...phrase]));
  const covered = weight([...said].filter((word) => own.has(word))) / whole;
  return 0.75 * Math.max(0, ...agrees) + 0.25 * covered;
}
