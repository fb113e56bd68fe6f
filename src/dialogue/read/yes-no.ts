/** Reads yes or no. */
import { type Expected, type Heard, heard, refused } from './heard.ts';
import { LONGEST_ANSWER } from './listen.ts';
import { bare, phraseOf } from './phrase.ts';

const YES = new Set(
  (
    'yes y yeah yep yup yea aye ja jep oui si ok okay k sure right correct true exactly indeed absolutely definitely ' +
    'course confirm confirmed genau richtig stimmt klar'
  ).split(' '),
);
const NO = new Set('no n nope nah nay nein non not false wrong incorrect never falsch'.split(' '));
/** Words that may stand beside a yes or no. */
const BESIDE = new Set("that's thats that is it of really quite das this at all du".split(' '));

const EXPECTED: Expected = { what: '‘yes’ or ‘no’', example: 'yes' };

/** 'Yes, that's right' and 'nope'; what holds a figure or other words is no plain yes or no. */
export function readYesNo(text: string): Heard<boolean> {
  if (text.length > LONGEST_ANSWER) return refused('too long', EXPECTED);
  const phrase = phraseOf(text);
  if (phrase === '') return refused('empty', EXPECTED);
  const answer = yesOrNo(phrase);
  if (answer === undefined) return refused('not understood', EXPECTED);
  return heard(answer, answer ? 'yes' : 'no');
}

/** What a phrase says; undefined where it says neither, or both ('not right' is no). */
export function yesOrNo(phrase: string): boolean | undefined {
  const words = bare(phrase)
    .split(' ')
    .filter((word) => !BESIDE.has(word));
  const [first, ...others] = words;
  if (first === undefined || !words.every((word) => YES.has(word) || NO.has(word))) return undefined;
  if (NO.has(first)) return others.every((word) => NO.has(word)) || first === 'not' ? false : undefined;
  return others.every((word) => YES.has(word)) ? true : undefined;
}
