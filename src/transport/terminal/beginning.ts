/** Where she says what she would like to do: by a number, by a name, or in words of her own. */
import { findWish } from '../../dialogue/wish.ts';
import { WISH_GROUPS } from '../../flow/schema.ts';
import type { Desk, Offered, OpenInterview } from '../contract.ts';
import { WISH_TITLES } from '../wish-titles.ts';
import type { Person } from './conversation.ts';
import { paragraph } from './render.ts';
import { LEAVE } from './screen.ts';
import { SHEETS } from './sheets.ts';

/** What she has chosen to do. */
export type Deed =
  | { readonly do: 'go on'; readonly session: string }
  | { readonly do: 'begin' | 'practise'; readonly flow: string }
  | { readonly do: 'print' };

/** One line of a list: it leads to a deed, or to a further list. */
export interface Entry {
  readonly label: string;
  /** Other words by which it may be called. */
  readonly names: readonly string[];
  readonly leads: Deed | List;
}

export interface List {
  readonly title: string;
  readonly entries: readonly Entry[];
}

/** What she wants to do; undefined where she leaves. */
export async function chosen(desk: Desk, owner: string, person: Person): Promise<Deed | undefined> {
  const first = firstList(desk, owner);
  const flows = desk.flows(owner);
  const all = [...first.entries, ...flows.map(toBegin)];
  let list = first;
  for (;;) {
    const picked = await person.pick(list);
    if (picked === undefined || is(LEAVE.send, picked)) return undefined;
    const entry = typeof picked === 'string' ? named([...list.entries, ...all], picked) : picked;
    const leads = entry?.leads ?? (typeof picked === 'string' ? likeliest(flows, picked, first) : first);
    if ('do' in leads) return leads;
    if (entry === undefined && leads === first) person.tell([paragraph(NOT_UNDERSTOOD, 'refused')]);
    list = leads;
  }
}

const NOT_UNDERSTOOD =
  'I do not know what to do about that. Say it in other words, such as "my sleeves are too tight", or take one of these.';

/** Open interviews, what is wished most often, and the rest in groups. */
function firstList(desk: Desk, owner: string): List {
  const flows = desk.flows(owner);
  const first: { title: string; entries: Entry[] } = { title: 'What would you like to do?', entries: [] };
  const back: Entry = { label: 'Back to the beginning', names: ['back'], leads: first };
  first.entries.push(
    ...desk.open(owner).map(toGoOn),
    ...flows.filter(({ common }) => common).map(toBegin),
    ...toPractise(flows, back),
    ...groupsOf(flows, toBegin, back),
    { label: SHEETS, names: ['sheets'], leads: { do: 'print' } },
  );
  return first;
}

function toBegin({ id, title, wish }: Offered): Entry {
  return { label: wish, names: [id, title], leads: { do: 'begin', flow: id } };
}

const PRACTISE = 'Practise: every figure is given, and the worked answer shown';

/** The chapters that have an exercise: what is wished most often, and the rest in groups; nothing where none has. */
function toPractise(flows: readonly Offered[], back: Entry): Entry[] {
  const exercises = flows.filter(({ exercise }) => exercise);
  if (exercises.length === 0) return [];
  const common = exercises.filter((flow) => flow.common).map(toExercise);
  const entries = [...common, ...groupsOf(exercises, toExercise, back), back];
  const leads = { title: 'What would you like to practise?', entries };
  return [{ label: `${PRACTISE} …`, names: [PRACTISE, 'practise', 'practice'], leads }];
}

function toExercise({ id, title }: Offered): Entry {
  return { label: title, names: [id], leads: { do: 'practise', flow: id } };
}

/** A list for each group of what is wished less often. */
function groupsOf(flows: readonly Offered[], to: (flow: Offered) => Entry, back: Entry): Entry[] {
  return WISH_GROUPS.flatMap((group): Entry[] => {
    const entries = flows.filter((flow) => flow.group === group && !flow.common).map(to);
    const title = WISH_TITLES[group];
    return entries.length === 0
      ? []
      : [{ label: `${title} …`, names: [title], leads: { title, entries: [...entries, back] } }];
  });
}

function toGoOn({ session, flow, lastAt, answered, practice }: OpenInterview): Entry {
  const date = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return {
    label: `Go on: ${practice ? 'Practice, ' : ''}${flow.title} (${date.format(lastAt)}, ${answered} answered)`,
    names: ['continue', 'go on'],
    leads: { do: 'go on', session },
  };
}

function named(entries: readonly Entry[], typed: string): Entry | undefined {
  return entries.find(({ label, names }) => [label, ...names].some((name) => is(name, typed)));
}

function is(name: string, picked: string | Entry): boolean {
  return typeof picked === 'string' && name.toLowerCase() === picked.trim().toLowerCase();
}

/** What her words may mean, to be confirmed; the first list where they tell nothing. */
function likeliest(flows: readonly Offered[], said: string, first: List): List {
  const found = findWish(flows, said);
  const none: Entry = {
    label: 'None of these: show me the list',
    names: ['none', 'no', 'back'],
    leads: first,
  };
  switch (found.found) {
    case 'one': {
      const entry = toBegin(found.wish);
      return {
        title: 'I take it that you want this:',
        entries: [{ ...entry, names: [...entry.names, 'yes'] }, none],
      };
    }
    case 'several':
      return { title: 'Do you mean one of these?', entries: [...found.wishes.map(toBegin), none] };
    case 'none':
      return first;
    default:
      return found satisfies never;
  }
}
