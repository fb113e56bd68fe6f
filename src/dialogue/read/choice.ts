/** Reads one of several choices, or some of them: by words, by the beginning of a word, or by its number in the list. */
import {
  askBack,
  type Expected,
  type Heard,
  heard,
  type Option,
  type Refused,
  refused,
  which,
} from './heard.ts';
import { isRefused, LONGEST_ANSWER, listen } from './listen.ts';
import { bare, phraseOf } from './phrase.ts';
import { editDistance } from './spelling.ts';

export interface Choice {
  readonly id: string;
  readonly label: string;
  /** Other words for it. */
  readonly hear: readonly string[];
}

/** The id of the choice that was meant; its label is the echo. At least one choice is given. */
export function readChoice(text: string, choices: readonly Choice[]): Heard<string> {
  if (text.length > LONGEST_ANSWER) return refused('too long', expectedOf(choices));
  const phrase = phraseOf(text);
  if (phrase === '') return refused('empty', expectedOf(choices));
  const numbered = byNumber(text, choices);
  for (const match of [exactly, beginning, within]) {
    const found = choices.filter((choice) => match(phrase, choice));
    if (match === beginning && numbered !== undefined) return heardChoice(numbered);
    const [only, another] = found;
    if (only !== undefined && another === undefined) return heardChoice(only);
    if (only !== undefined) return which('Which of these do you mean?', found.map(optionOf));
  }
  return nearly(phrase, choices) ?? refusedChoice(choices);
}

function heardChoice(choice: Choice): Heard<string> {
  return heard(choice.id, choice.label);
}

function optionOf(choice: Choice): Option<string> {
  return { value: choice.id, echo: choice.label };
}

/** The names of each choice in plain spelling, worked out once: an answer is compared with all of them. */
const NAMES = new WeakMap<Choice, readonly string[]>();

function namesOf(choice: Choice): readonly string[] {
  const known = NAMES.get(choice);
  if (known !== undefined) return known;
  const names = [choice.label, ...choice.hear].map(phraseOf).filter((name) => name !== '');
  NAMES.set(choice, names);
  return names;
}

function exactly(phrase: string, choice: Choice): boolean {
  return namesOf(choice).some((name) => name === phrase || name === bare(phrase));
}

/** 'rag' for 'Raglan'; a figure only whole: '3' does not begin '34'. */
function beginning(phrase: string, choice: Choice): boolean {
  const isStart = (start: string, name: string) =>
    start !== '' && name.startsWith(start) && !/^\d\d/.test(`${start.at(-1)}${name.slice(start.length)}`);
  return namesOf(choice).some((name) => isStart(phrase, name) || isStart(bare(phrase), name));
}

/** Every word of the answer is a word of the choice's name: 'yoke' for 'round yoke'. */
function within(phrase: string, choice: Choice): boolean {
  const words = bare(phrase).split(' ');
  return namesOf(choice).some((name) => words.every((word) => name.split(' ').includes(word)));
}

/** '2', '#2', 'option two'. Where names themselves begin with a figure (sizes), a number is a name. */
function byNumber(text: string, choices: readonly Choice[]): Choice | undefined {
  if (choices.some((choice) => namesOf(choice).some((name) => /^\p{N}/u.test(name)))) return undefined;
  const tokens = listen(text, expectedOf(choices));
  if (isRefused(tokens)) return undefined;
  const numbers = tokens.filter((t) => t.is === 'number');
  const others = tokens.filter((t) => t.is !== 'number').map((t) => t.text);
  const [number, another] = numbers;
  if (number === undefined || another !== undefined || !others.every((word) => NUMBER_BESIDE.has(word)))
    return undefined;
  return choices[number.value - 1];
}

const NUMBER_BESIDE = new Set(['#', '.', ')', '(', 'no', 'nr', 'number', 'option', 'choice', 'the']);
const NEGATIONS = /\b(?:not|no|neither|except|without|don't|dont|nicht|kein|keine|pas|sans)\b/;

/** A name within a longer answer, or one with a typing slip: put back, never taken as it is. */
function nearly(phrase: string, choices: readonly Choice[]): Heard<string> | undefined {
  if (NEGATIONS.test(phrase)) return undefined;
  const named = choices.filter((choice) =>
    namesOf(choice).some((name) => ` ${phrase} `.includes(` ${name} `)),
  );
  const slipped = choices.filter((choice) => namesOf(choice).some((name) => isSlip(bare(phrase), name)));
  const [found, why] = named.length > 0 ? [named, 'extra words' as const] : [slipped, 'spelling' as const];
  const [only, another] = found;
  if (only === undefined) return undefined;
  if (another !== undefined) return which('Which of these do you mean?', found.map(optionOf));
  return askBack(why, optionOf(only));
}

/** One wrong letter in a word of four or more, two in one of eight or more. */
function isSlip(typed: string, name: string): boolean {
  if (typed.length < 4 || Math.abs(typed.length - name.length) > 2) return false;
  return editDistance(typed, name) <= (typed.length >= 8 ? 2 : 1);
}

function expectedOf(choices: readonly Choice[]): Expected {
  const labels = choices.map((choice) => `‘${choice.label}’`);
  const what =
    labels.length < 2 ? labels.join('') : `one of ${labels.slice(0, -1).join(', ')} or ${labels.at(-1)}`;
  return { what, example: choices[0]?.label ?? '' };
}

function refusedChoice(choices: readonly Choice[]): Refused {
  return refused('no such choice', expectedOf(choices));
}

const ALL = new Set([
  'all',
  'all of them',
  'everything',
  'every one',
  'alle',
  'alles',
  'tout',
  'toutes',
  'tous',
]);
const NONE = new Set([
  'none',
  'none of them',
  'nothing',
  'no',
  'neither',
  'keine',
  'nichts',
  'aucun',
  'aucune',
  'rien',
]);
const SEPARATOR = /[,;&+/\n]|\b(?:and|und|et|plus)\b/;

/** The ids of all choices that were meant, in the order of the list; 'none' gives an empty one. */
export function readChoices(text: string, choices: readonly Choice[]): Heard<readonly string[]> {
  if (text.length > LONGEST_ANSWER) return refused('too long', expectedOf(choices));
  const whole = choices.filter((choice) => exactly(phraseOf(text), choice));
  if (whole.length === 1) return someOf(whole, choices);
  const phrase = bare(phraseOf(text));
  if (ALL.has(phrase) || (phrase === 'both' && choices.length === 2)) return someOf(choices, choices);
  if (NONE.has(phrase)) return heard([], 'none');
  const pieces = piecesOf(text);
  if (pieces.length === 0) return refused('empty', expectedOf(choices));
  const read = pieces.map((piece) => readChoice(piece, choices));
  const bad = read.find((r) => r.kind === 'refused');
  if (bad !== undefined) return bad;
  return together(read, choices);
}

function piecesOf(text: string): readonly string[] {
  const lowered = text.toLowerCase();
  const pieces = /^[\d\s]+$/.test(text) ? text.split(/\s+/) : lowered.split(SEPARATOR);
  return pieces.filter((piece) => phraseOf(piece) !== '');
}

/** Puts the pieces together: a doubtful one makes the whole doubtful, one with several readings gives several wholes. */
function together(read: readonly Heard<string>[], choices: readonly Choice[]): Heard<readonly string[]> {
  const sure = read.flatMap((r) => (r.kind === 'heard' || r.kind === 'ask back' ? [r.value] : []));
  const open = read.flatMap((r) => (r.kind === 'which' ? [r] : []));
  const [first, second] = open;
  const chosen = (ids: readonly string[]) => choices.filter((choice) => ids.includes(choice.id));
  if (second !== undefined) return refusedChoice(choices);
  if (first !== undefined) {
    const options = first.options.map((o) => listOf(chosen([...sure, o.value])));
    return which(first.question, options);
  }
  const doubtful = read.find((r) => r.kind === 'ask back');
  if (doubtful?.kind === 'ask back') return askBack(doubtful.why, listOf(chosen(sure)));
  return someOf(chosen(sure), choices);
}

function someOf(some: readonly Choice[], choices: readonly Choice[]): Heard<readonly string[]> {
  const { value, echo } = listOf(choices.filter((choice) => some.includes(choice)));
  return heard(value, echo);
}

function listOf(choices: readonly Choice[]): Option<readonly string[]> {
  return { value: choices.map((c) => c.id), echo: choices.map((c) => c.label).join(', ') };
}
