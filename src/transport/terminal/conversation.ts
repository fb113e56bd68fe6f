/** The talk at a terminal: pick an interview, answer what is asked, leave when you like. The same for a window and a pipe. */
import type { Button, Reply } from '../../dialogue/message.ts';
import { type Desk, DeskRefused, type Offered, type OpenInterview, type Wording } from '../contract.ts';
import { type Paragraph, paragraph, render } from './render.ts';
import { ANOTHER, LEAVE, type Screen, screenOf } from './screen.ts';

/** An interview that may be gone on with or begun. */
export interface Entry {
  readonly label: string;
  /** Other words by which it may be called. */
  readonly names: readonly string[];
  readonly start: () => { readonly session: string; readonly replies: readonly Reply[] };
}

/** The person at the other end, by whichever way she reads and types. */
export interface Person {
  /** Shows a block of text. */
  readonly tell: (paragraphs: readonly Paragraph[]) => void;
  /** The entry that she picks; undefined when she leaves. */
  readonly pick: (entries: readonly Entry[]) => Promise<Entry | undefined>;
  /** What she says; undefined when she leaves. */
  readonly answer: (screen: Screen) => Promise<string | undefined>;
  /** Shows the last block, and lets go of the input. */
  readonly part: (paragraphs: readonly Paragraph[]) => void;
}

export interface Terms {
  readonly desk: Desk;
  readonly wording: Wording;
  readonly owner: string;
}

const WELCOME = [
  paragraph('Easewright', 'title'),
  paragraph('One question at a time. Each answer is saved at once, and you may stop whenever you like.'),
];
const FAREWELL = paragraph('Everything you have answered is saved. To go on: npm start');

export async function converse(terms: Terms, person: Person): Promise<void> {
  person.tell(WELCOME);
  for (;;) {
    const entry = await person.pick(entriesFor(terms));
    const next = entry === undefined ? 'leave' : await interview(terms, person, entry);
    if (next === 'leave') break;
  }
  person.part([FAREWELL]);
}

async function interview(terms: Terms, person: Person, entry: Entry): Promise<'leave' | 'another'> {
  const started = tried(person, entry.start);
  if (started === undefined) return 'another';
  const { session } = started;
  let { replies } = started;
  for (;;) {
    for (const reply of replies) person.tell(render(reply, terms.wording));
    if (replies.some((r) => r.reply === 'rest' && r.how === 'paused')) return 'leave';
    const screen = screenOf(replies);
    const typed = await person.answer(screen);
    if (typed === undefined) return 'leave';
    const text = meant(screen, typed);
    if (offers(screen, LEAVE, text)) return 'leave';
    if (offers(screen, ANOTHER, text)) return 'another';
    const message = screen.to === null ? { text } : { text, to: screen.to };
    replies = tried(person, () => terms.desk.say(terms.owner, session, message)) ?? replies;
  }
}

/** Whoever types what stands on a button has pressed it. */
function meant({ buttons }: Screen, typed: string): string {
  const said = typed.trim().toLowerCase();
  return (
    buttons.find(({ label, send }) => [label, send].some((word) => word.toLowerCase() === said))?.send ??
    typed
  );
}

/** A word of the terminal's own counts only where it is offered. */
function offers(screen: Screen, button: Button, text: string): boolean {
  return text === button.send && screen.buttons.includes(button);
}

/** Undefined where nothing could be stored; she is told, and may try again. */
function tried<T>(person: Person, work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof DeskRefused) || error.reason !== 'not stored') throw error;
    const why = error.cause instanceof Error ? `${error.cause.message}.` : '';
    person.tell([
      paragraph(`This could not be saved. ${why} Everything before it is safe. Please try again.`, 'refused'),
    ]);
    return undefined;
  }
}

function entriesFor({ desk, owner }: Terms): Entry[] {
  return [
    ...desk.open(owner).map((open) => ({
      label: wordOpen(open),
      names: ['continue', 'go on'],
      start: () => ({ session: open.session, replies: desk.resume(owner, open.session) }),
    })),
    ...desk.flows().map((flow: Offered) => ({
      label: flow.wish,
      names: [flow.id, flow.title],
      start: () => desk.begin(owner, flow.id),
    })),
  ];
}

function wordOpen({ flow, lastAt, answered }: OpenInterview): string {
  const date = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return `Go on: ${flow.title} (${date.format(lastAt)}, ${answered} answered)`;
}
