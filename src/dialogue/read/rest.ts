/** What an answer holds beside its figures: whether that is harmless, doubtful, or about something else. */
import { type Token, wordAt } from './token.ts';
import { type Meaning, means } from './vocabulary.ts';

const HARMLESS_MARKS = new Set(['.', ',', ';', ':', '!', '?', '(', ')', '[', ']', '=', '~']);

/** Words that change nothing about a figure. A word in no list here is put back to the person. */
const FILLERS = new Set(
  (
    'i im am is its it was me my mine the a an of at in on to for with by from than have has get got and so please thanks ' +
    'thank you ok measure measures measured measurement comes out exactly total altogether all round around finished ' +
    "fit sized wide width long length tall high height deep depth circumference ease it's i'm i've would be should " +
    'want wanted make take need now left remain remaining remains cast co on pattern says body bust chest ' +
    'waist hip hips wrist neck head back front arm upper cross sleeve shoulder underarm hem cuff yoke swatch'
  ).split(' '),
);

/** What figures can count: a word of one of these that the question does not own speaks of something else. */
const COUNTED: readonly Meaning[] = [
  'inch',
  'cm',
  'mm',
  'foot',
  'metre',
  'needle',
  'stitch',
  'row',
  'stitches per inch',
  'rows per inch',
  'yard',
  'gram',
  'ounce',
  'ball',
  'times',
  'month',
  'year',
];

export type Verdict = 'clear' | 'extra words' | 'other kind' | 'not understood';

/** Judges the tokens that belong to no figure; words that mean one of `own` belong to the question. */
export function judgeRest(rest: readonly Token[], own: readonly Meaning[]): Verdict {
  let verdict: Verdict = 'clear';
  for (const [at, token] of rest.entries()) {
    if (token.is === 'number') return 'not understood';
    if (own.some((meaning) => means(token.text, meaning))) continue;
    if (token.is === 'mark') {
      if (isUnit(rest, at)) return 'other kind';
      if (!HARMLESS_MARKS.has(token.text)) return 'not understood';
    } else if (isUnit(rest, at) || !(FILLERS.has(token.text) || means(token.text, 'approximate'))) {
      if (COUNTED.some((meaning) => means(token.text, meaning))) return 'other kind';
      verdict = 'extra words';
    }
  }
  return verdict;
}

/** Whether a word or mark is a unit of length that stands apart from its figure; 'in' before a word is none. */
export function isUnit(tokens: readonly Token[], at: number): boolean {
  const word = tokens[at]?.text ?? '';
  if (word === 'in') return wordAt(tokens, at + 1) === '';
  return means(word, 'inch') || means(word, 'cm');
}
