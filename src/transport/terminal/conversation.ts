/** The talk at a terminal: pick an interview, answer what is asked, leave when you like. The same for a window and a pipe. */
import type { Button, Reply } from '../../dialogue/message.ts';
import type { Elsewhere } from '../../dialogue/session.ts';
import { type Desk, DeskRefused, type Drawings, type Wording } from '../contract.ts';
import { chosen, type Deed, type Entry, type List } from './beginning.ts';
import { DRAW, ofPlan } from './keeping.ts';
import { type Paragraph, paragraph, render } from './render.ts';
import { ANOTHER, LEAVE, meant, type Screen, screenOf } from './screen.ts';
import { pickSheets } from './sheets.ts';

type Started = { readonly session: string; readonly replies: readonly Reply[] };

/** The person at the other end, by whichever way she reads and types. */
export interface Person {
  /** Shows a block of text. */
  readonly tell: (paragraphs: readonly Paragraph[]) => void;
  /** How wide a line of hers may be. */
  readonly columns: () => number;
  /** The entry that she picks, or what she says instead; undefined when she leaves. */
  readonly pick: (list: List) => Promise<Entry | string | undefined>;
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

/** What follows: she leaves, chooses again, or has said where she wants to go on. */
type Next = 'leave' | 'another' | Deed;

export async function converse(terms: Terms, person: Person): Promise<void> {
  person.tell(WELCOME);
  for (let next: Next = 'another'; next !== 'leave'; ) {
    const deed: Deed | undefined = next === 'another' ? await chosen(terms.desk, terms.owner, person) : next;
    next = deed === undefined ? 'leave' : await carryOut(terms, person, deed);
  }
  person.part([FAREWELL]);
}

function carryOut(terms: Terms, person: Person, deed: Deed): Promise<Next> {
  const { desk, owner, drawings } = terms;
  switch (deed.do) {
    case 'go on': {
      const { session } = deed;
      return interview(terms, person, () => ({ session, replies: desk.resume(owner, session) }));
    }
    case 'begin':
      return interview(terms, person, () => desk.begin(owner, deed.flow));
    case 'practise':
      return interview(terms, person, () => desk.practise(owner, deed.flow));
    case 'print':
      return pickSheets(drawings, person);
    default:
      return deed satisfies never;
  }
}

async function interview(terms: Terms, person: Person, start: () => Started): Promise<Next> {
  const started = tried(person, start);
  if (started === undefined) return 'another';
  const { session } = started;
  let { replies } = started;
  for (;;) {
    for (const reply of replies) person.tell(render(reply, terms.wording));
    const rest = replies.find((r) => r.reply === 'rest' && r.how === 'paused');
    if (rest?.reply === 'rest') return afterRest(rest.elsewhere);
    const screen = drawable(screenOf(replies), terms.drawings);
    const text = await said(terms.drawings, person, screen);
    if (text === undefined) return 'leave';
    if (offers(screen, LEAVE, text)) return 'leave';
    if (offers(screen, ANOTHER, text)) return 'another';
    const message = screen.to === null ? { text } : { text, to: screen.to };
    replies = tried(person, () => terms.desk.say(terms.owner, session, message)) ?? replies;
  }
}

/** Where she goes on from an interview that was laid down. */
function afterRest(elsewhere: Elsewhere | undefined): Next {
  if (elsewhere === undefined) return 'leave';
  return elsewhere.flow === null ? 'another' : { do: 'begin', flow: elsewhere.flow };
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
