/**
 * Recognises what may be said in any answer box instead of an answer: 'back', 'why?', 'I don't know', 'inches'.
 * Only a whole answer is a command. A question's own choices come first: one of them may be called 'none' or 'no'.
 */
import type { Dialect } from '../../fit/terms.ts';
import type { LengthUnit } from '../../fit/units.ts';
import { LONGEST_ANSWER } from './listen.ts';
import { bare, phraseOf } from './phrase.ts';
import { yesOrNo } from './yes-no.ts';

/** Commands that say all by their name. */
export const PLAIN_COMMANDS = [
  'back',
  'why',
  'how',
  'do not know',
  'skip',
  'later',
  'pause',
  'start over',
  'cancel',
  'help',
  'review',
  'lessons',
  'yes',
  'no',
] as const;
export type PlainCommand = (typeof PLAIN_COMMANDS)[number];

export type Command =
  | { readonly command: PlainCommand }
  /** Without a unit where only 'units' was said. */
  | { readonly command: 'units'; readonly unit: LengthUnit | undefined }
  /** Without terms where only 'terms' was said. */
  | { readonly command: 'terms'; readonly terms: Dialect | undefined }
  /** `what`: the words after 'lesson'; empty for the lesson that belongs to the question. */
  | { readonly command: 'lesson'; readonly what: string }
  /** `what`: the words after 'change', in plain spelling; empty where none followed. */
  | { readonly command: 'change'; readonly what: string };

const PHRASES: Readonly<Record<Exclude<PlainCommand, 'yes' | 'no'>, readonly string[]>> = {
  back: [
    'back',
    'go back',
    'previous',
    'previous question',
    'one back',
    'step back',
    'undo',
    'zuruck',
    'retour',
  ],
  why: [
    'why',
    'why this',
    'why do you ask',
    'why do you ask this',
    'why do you want to know',
    'what for',
    "what's this for",
    'warum',
    'wieso',
    'pourquoi',
  ],
  how: [
    'how',
    'how to',
    'how do i measure',
    'how do i measure this',
    'how do i measure that',
    'how do i do that',
    'how do i do this',
    'show me',
    'show me how',
    'wie',
    'comment',
  ],
  'do not know': [
    "i don't know",
    "don't know",
    'i dont know',
    'dont know',
    'i do not know',
    'do not know',
    'dunno',
    'i dunno',
    'not sure',
    "i'm not sure",
    'im not sure',
    'unsure',
    'idk',
    'dk',
    'no idea',
    'no clue',
    'unknown',
    'not known',
    "can't say",
    'cant say',
    "can't tell",
    'who knows',
    'weiss nicht',
    'weiss ich nicht',
    'ich weiss nicht',
    'ich weiss es nicht',
    'keine ahnung',
    'je ne sais pas',
    'sais pas',
    'aucune idee',
    "i don't know that",
    "i don't know yet",
    "don't know yet",
    'not sure yet',
  ],
  skip: [
    'skip',
    'skip this',
    'skip it',
    'skip question',
    'skip this question',
    'pass',
    'leave out',
    'leave it out',
    'uberspringen',
    'passer',
  ],
  later: ['later', 'ask me later', 'ask later', 'not now', 'remind me later', 'spater', 'plus tard'],
  pause: [
    'pause',
    'stop',
    'quit',
    'exit',
    'bye',
    'break',
    'stop here',
    'stop for now',
    'continue tomorrow',
    'save and stop',
  ],
  'start over': [
    'start over',
    'restart',
    'start again',
    'begin again',
    'from beginning',
    'start from beginning',
    'reset',
    'neu anfangen',
    'recommencer',
  ],
  cancel: ['cancel', 'cancel this', 'abort', 'forget it', 'never mind', 'nevermind', 'abbrechen', 'annuler'],
  help: ['help', 'help me', 'what can i say', 'commands', 'hilfe', 'aide'],
  review: [
    'review',
    'summary',
    'overview',
    'show answers',
    'show my answers',
    'show all answers',
    'my answers',
    'answers',
  ],
  lessons: ['lessons', 'all lessons', 'list lessons', 'show lessons', 'show me lessons', 'which lessons'],
};

const BY_PHRASE: ReadonlyMap<string, PlainCommand> = new Map(
  Object.entries(PHRASES).flatMap(([command, phrases]) =>
    phrases.map((p) => [bare(p), command as PlainCommand] as const),
  ),
);

const UNITS: ReadonlyMap<string, LengthUnit> = new Map([
  ...['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters', 'zentimeter', 'metric'].map(
    (w) => [w, 'cm'] as const,
  ),
  ...['in', 'ins', 'inch', 'inches', 'imperial', 'zoll', 'pouces'].map((w) => [w, 'in'] as const),
]);
/** What may stand before a unit when it is asked for. */
const UNIT_LEAD = /^(?:(?:switch|change|set|use|show|units?|measure|work|to|in) )+(?=\p{L}+$)/u;
/** 'UK terms', 'in American English', 'use British words'. */
const TERMS =
  /^(?:(?:switch|change|set|use|show|in|to|speak) )*(?:(us|usa|american|uk|gb|british) )?(?:(?:knitting )?(?:terms|words|terminology)|english)$/u;
const SIDES: ReadonlyMap<string, Dialect> = new Map([
  ...['us', 'usa', 'american'].map((w) => [w, 'us'] as const),
  ...['uk', 'gb', 'british'].map((w) => [w, 'uk'] as const),
]);
/** 'Teach me', 'tell me more about ease', 'what is ease'. */
const LESSON =
  /^(?:lesson|learn|teach me|tell me more|(?=what (?:is|are|does) (?!this|that|it|my|your|next)\p{L}))(?: (?:about|on|of|here|this|that|it))*(?: ?(?:what (?:is|are|does) )?(.+?)(?: mean)?)?$/u;
const CHANGE = /^(?:change|edit|correct|fix|alter|amend|andern|modifier)(?: (.*))?$/;

/** The command that the whole answer is, or undefined: an answer with figures never is one, but after 'change'. */
export function readCommand(text: string): Command | undefined {
  if (text.length > LONGEST_ANSWER) return undefined;
  if (/^[\s?？]+$/.test(text) && text.trim() !== '') return { command: 'do not know' };
  const phrase = bare(phraseOf(text));
  if (phrase === '') return undefined;
  const known = BY_PHRASE.get(phrase);
  if (known !== undefined) return { command: known };
  if (phrase === 'unit' || phrase === 'units') return { command: 'units', unit: undefined };
  const unit = UNITS.get(phrase.replace(UNIT_LEAD, ''));
  if (unit !== undefined) return { command: 'units', unit };
  const terms = TERMS.exec(phrase);
  if (terms !== null) return { command: 'terms', terms: SIDES.get(terms[1] ?? '') };
  const lesson = LESSON.exec(phrase);
  if (lesson !== null) return { command: 'lesson', what: lesson[1] ?? '' };
  const change = CHANGE.exec(phrase);
  if (change !== null)
    return { command: 'change', what: (change[1] ?? '').replace(/^(?:my|answer to|answer) /, '') };
  const answer = yesOrNo(phrase);
  return answer === undefined ? undefined : { command: answer ? 'yes' : 'no' };
}
