/**
 * What a control carries with it: what it does, and for which interview and question. So a press means the same after a
 * restart, and an old one is known for what it is. Written as `1a|session|question|what`.
 */
import { createHash } from 'node:crypto';
import { CUSTOM_ID } from './limits.ts';

/** Letters are never given to another act: messages with them stay in chats for years. */
const LETTERS = {
  answer: 'a',
  type: 't',
  form: 'f',
  more: 'm',
  change: 'c',
  'go on': 'g',
  plan: 'p',
  share: 's',
  send: 'd',
  start: 'n',
  practise: 'e',
  mine: 'x',
  host: 'h',
} as const;
export type Act = keyof typeof LETTERS;

export interface Carried {
  readonly act: Act;
  readonly session: string;
  readonly question: string;
  readonly what: What;
}

/** Words that a control stands for; as a digest where they are too long to be carried. */
export type What = { readonly words: string } | { readonly digest: string };

const VERSION = '1';
const ACTS: ReadonlyMap<string, Act> = new Map(
  Object.entries(LETTERS).map(([act, letter]) => [letter, act as Act]),
);

export function makeId(act: Act, session = '', question = '', words = ''): string {
  const head = `${VERSION}${LETTERS[act]}|${session}|${question}|`;
  const whole = `${head}=${words}`;
  const id = whole.length <= CUSTOM_ID ? whole : `${head}#${digestOf(words)}`;
  if (id.length > CUSTOM_ID) throw new Error(`'${session}' and '${question}' leave no room in a control`);
  return id;
}

/** Undefined for a control that is not of this version. */
export function readId(id: string): Carried | undefined {
  const [, letter = '', session = '', question = '', kind, what = ''] =
    /^1(.)\|([^|]*)\|([^|]*)\|([=#])(.*)$/s.exec(id) ?? [];
  const act = ACTS.get(letter);
  if (act === undefined) return undefined;
  return { act, session, question, what: kind === '=' ? { words: what } : { digest: what } };
}

/** The words meant, where they are carried or are among these. */
export function wordsOf(what: What, among: () => readonly string[]): string | undefined {
  return 'words' in what ? what.words : among().find((words) => digestOf(words) === what.digest);
}

function digestOf(words: string): string {
  return createHash('sha256').update(words).digest('base64url').slice(0, 12);
}
