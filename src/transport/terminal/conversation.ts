/** The talk at a terminal: pick an interview, answer what is asked, leave when you like. The same for a window and a pipe. */
import type { Button, Reply } from '../../dialogue/message.ts';
import {
  type Desk,
  DeskRefused,
  type Drawings,
  type Offered,
  type OpenInterview,
  type Wording,
} from '../contract.ts';
import { DRAW, ofPlan } from './keeping.ts';
import { type Paragraph, paragraph, render } from './render.ts';
import { ANOTHER, LEAVE, meant, type Screen, screenOf } from './screen.ts';
import { pickSheets, SHEETS } from './sheets.ts';

/** What she may do at the beginning. */
export interface Entry {
  readonly label: string;
  /** Other words by which it may be called. */
  readonly names: readonly string[];
  readonly open: () => Promise<'leave' | 'another'>;
}

type Started = { readonly session: string; readonly replies: readonly Reply[] };

/** The person at the other end, by whichever way she reads and types. */
export interface Person {
  /** Shows a block of text. */
  readonly tell: (paragraphs: readonly Paragraph[]) => void;
  /** How wide a line of hers may be. */
  readonly columns: () => number;
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
  readonly drawings: Drawings;
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
    const entry = await person.pick(entriesFor(terms, person));
    if (entry === undefined || (await entry.open()) === 'leave') break;
  }
  person.part([FAREWELL]);
}

async function interview(terms: Terms, person: Person, start: () => Started): Promise<'leave' | 'another'> {
  const started = tried(person, start);
  if (started === undefined) return 'another';
  const { session } = started;
  let { replies } = started;
  for (;;) {
    for (const reply of replies) person.tell(render(reply, terms.wording));
    if (replies.some((r) => r.reply === 'rest' && r.how === 'paused')) return 'leave';
    const screen = drawable(screenOf(replies), terms.drawings);
    const text = await said(terms.drawings, person, screen);
    if (text === undefined) return 'leave';
    if (offers(screen, LEAVE, text)) return 'leave';
    if (offers(screen, ANOTHER, text)) return 'another';
    const message = screen.to === null ? { text } : { text, to: screen.to };
    replies = tried(person, () => terms.desk.say(terms.owner, session, message)) ?? replies;
  }
}

/** Where a picture tells what is to be measured, it can be drawn. */
function drawable(screen: Screen, drawings: Drawings): Screen {
  const pictured = screen.to !== null && screen.example !== null && drawings.pictured(screen.to);
  return pictured ? { ...screen, commands: [...screen.commands, DRAW.send] } : screen;
}

/** What she says to the desk. Drawings and files are made on the way. */
async function said(drawings: Drawings, person: Person, screen: Screen): Promise<string | undefined> {
  for (;;) {
    const typed = await person.answer(screen);
    if (typed === undefined) return undefined;
    const text = meant(screen, typed);
    const told = await drawn(drawings, screen, text, person.columns());
    if (told === undefined) return text;
    person.tell(told);
  }
}

async function drawn(
  drawings: Drawings,
  { plan, to, commands }: Screen,
  text: string,
  columns: number,
): Promise<Paragraph[] | undefined> {
  if (plan !== null) return ofPlan(drawings, plan, text, columns);
  const asked = text.trim().toLowerCase() === DRAW.send && commands.includes(DRAW.send);
  return asked && to !== null ? [paragraph(await drawings.question(to, columns))] : undefined;
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

function entriesFor(terms: Terms, person: Person): Entry[] {
  const { desk, owner, drawings } = terms;
  return [
    ...desk.open(owner).map(
      (open): Entry => ({
        label: wordOpen(open),
        names: ['continue', 'go on'],
        open: () =>
          interview(terms, person, () => ({
            session: open.session,
            replies: desk.resume(owner, open.session),
          })),
      }),
    ),
    ...desk.flows().map(
      (flow: Offered): Entry => ({
        label: flow.wish,
        names: [flow.id, flow.title],
        open: () => interview(terms, person, () => desk.begin(owner, flow.id)),
      }),
    ),
    { label: SHEETS, names: ['sheets'], open: () => pickSheets(drawings, person) },
  ];
}

function wordOpen({ flow, lastAt, answered }: OpenInterview): string {
  const date = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return `Go on: ${flow.title} (${date.format(lastAt)}, ${answered} answered)`;
}
