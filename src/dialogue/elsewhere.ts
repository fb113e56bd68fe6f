/**
 * Another chapter than the one at hand: offered where her words are no answer and surely mean a wish, or where she asks for
 * another. Until she says yes nothing changes; then this interview rests as it is, and the transport begins the other.
 */
import type { CompiledFlow } from '../flow/compile.ts';
import type { Book } from '../flow/load.ts';
import type { FlowFile } from '../flow/schema.ts';
import { readCommand } from './read/command.ts';
import { bare, phraseOf } from './read/phrase.ts';
import { again, at, done, note, type Scene, type Turn } from './scene.ts';
import type { Elsewhere } from './session.ts';
import { findWish } from './wish.ts';

const ANOTHER = new Set(
  [
    'another chapter',
    'other chapter',
    'different chapter',
    'new chapter',
    'change chapter',
    'another interview',
    'something else',
    'do something else',
    'I want something else',
    'something different',
  ].map((words) => bare(phraseOf(words))),
);
/** A word or two may as well be an answer that went wrong: 'size', 'body length'. */
const FEWEST_WORDS = 3;
/** In characters; who means a chapter says so shortly. */
const LONGEST = 200;

/** Whether she asks for another chapter without saying which. */
export function asksElsewhere(text: string): boolean {
  return text.length <= LONGEST && ANOTHER.has(bare(phraseOf(text)));
}

/** The chapter that these words surely mean; undefined where they may mean anything else, or this chapter has it too. */
export function meantElsewhere({ book, file }: CompiledFlow, text: string): Elsewhere | undefined {
  if (text.length > LONGEST) return undefined;
  const few = text.trim().split(/\s+/).length < FEWEST_WORDS;
  if (few && !namesIn(book).has(bare(phraseOf(text)))) return undefined;
  const found = findWish([...book.flows.values()], text);
  if (found.found !== 'one' || found.wish.id === file.id || holds(file, found.wish.id)) return undefined;
  return { flow: found.wish.id };
}

/** Titles and wishes of a book's chapters, put as what is typed is put; books are never changed. */
function namesIn(book: Book): ReadonlySet<string> {
  const chapters = [...book.flows.values()];
  const known =
    NAMES.get(book) ??
    new Set(chapters.flatMap(({ title, wish }) => [title, wish].map((name) => bare(phraseOf(name)))));
  NAMES.set(book, known);
  return known;
}

const NAMES = new WeakMap<Book, ReadonlySet<string>>();

function holds({ steps }: FlowFile, id: string): boolean {
  return steps.some((step) => 'include' in step && step.include === id);
}

/** Asks whether she would rather go there. */
export function offerElsewhere({ flow, session }: Scene, elsewhere: Elsewhere): Turn {
  return done(flow, at(session, { pending: null, elsewhere }), [], []);
}

/** Her yes or no to what was offered; undefined where she says something else, which is taken as if nothing was offered. */
export function decided(scene: Scene, elsewhere: Elsewhere): Turn | undefined {
  const { flow, session } = scene;
  switch (readCommand(scene.text)?.command) {
    case 'yes': {
      const text = `“${flow.file.title}” is paused. Everything you have answered is kept. Come back whenever you like.`;
      const rest = at(session, { rest: 'paused' });
      return { session: rest, added: [], replies: [{ reply: 'rest', how: 'paused', text, elsewhere }] };
    }
    case 'no':
    case 'back':
      return again(scene, [note('Then we go on here.')]);
    default:
      return undefined;
  }
}
