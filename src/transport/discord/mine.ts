/** What is kept of a person: taken along, deleted, and how she likes to read. */
import type { LengthUnit } from '../../fit/units.ts';
import { DIALECTS, type Dialect } from '../../present/terms.ts';
import type { Bot, Place, Shown } from './bot.ts';
import { makeId } from './custom-id.ts';
import { buttons, lists, type Page, page, shownFile, text } from './page.ts';

/** What the buttons and lists of the page do. */
const DO = {
  take: 'take',
  delete: 'delete',
  sure: 'delete all',
  back: 'back',
  unit: 'unit',
  terms: 'terms',
} as const;

const TERMS: Readonly<Record<Dialect, string>> = {
  us: 'Terms: bind off, gauge (US)',
  uk: 'Terms: cast off, tension (UK)',
};
const UNITS: Readonly<Record<LengthUnit, string>> = { cm: 'Centimetres', in: 'Inches' };

export function minePage({ parts }: Bot, { owner }: Place, said = ''): Page {
  const { unit, terms } = parts.people.preferencesOf(owner);
  const open = parts.desk.open(owner);
  const counted = (practice: boolean, one: string) => {
    const count = open.filter((interview) => interview.practice === practice).length;
    return count === 1 ? `1 ${one}` : `${count} ${one}s`;
  };
  const exercises = open.some(({ practice }) => practice) ? ` and ${counted(true, 'exercise')}` : '';
  const chosen = <T extends string>(words: Readonly<Record<T, string>>, now: T | null) =>
    (Object.entries(words) as [T, string][]).map(([value, label]) => ({
      label,
      value,
      chosen: value === now,
    }));
  const list = (what: string, hint: string) => ({ id: () => makeId('mine', '', '', what), hint });
  return page([
    ...(said === '' ? [] : [text(said)]),
    text(
      `**What is kept of you**\nYour answers in ${counted(false, 'interview')}${exercises}, with the measurements in them, and how you like to read. Your name is not kept, only the number by which Discord knows you.`,
    ),
    ...lists(chosen(UNITS, unit), list(DO.unit, 'Units: asked at the first question')),
    ...lists(chosen(TERMS, terms), list(DO.terms, 'Terms: as is usual here')),
    ...buttons([
      { label: 'Take it with me', id: makeId('mine', '', '', DO.take) },
      { label: 'Delete everything', id: makeId('mine', '', '', DO.delete), style: 'careful' },
    ]),
  ]);
}

/** What a press on the page does; `picked` is what was chosen in a list. */
export function mineDone(bot: Bot, place: Place, what: string, picked: string | undefined): Shown {
  const { people } = bot.parts;
  const { owner } = place;
  const preferences = people.preferencesOf(owner);
  switch (what) {
    case DO.take:
      return { page: takePage(people.exportOf(owner)) };
    case DO.delete:
      return { page: surePage() };
    case DO.sure:
      people.forget(owner);
      return { page: minePage(bot, place, 'Everything is deleted.') };
    case DO.unit:
      if (picked === 'cm' || picked === 'in') people.prefer(owner, { ...preferences, unit: picked });
      return { page: minePage(bot, place, 'Saved. It holds from the next interview on.') };
    case DO.terms: {
      const terms = DIALECTS.find((dialect) => dialect === picked);
      if (terms !== undefined) people.prefer(owner, { ...preferences, terms });
      return { page: minePage(bot, place, 'Saved.') };
    }
    default:
      return { page: minePage(bot, place) };
  }
}

function takePage(kept: unknown): Page {
  const name = 'easewright-my-data.json';
  const file = { name, data: `${JSON.stringify(kept, null, 2)}\n`, alternative: '' };
  return page(
    [
      text('Everything that is kept of you, as a file that programs can read.'),
      shownFile(name),
      ...buttons([{ label: 'Back', id: makeId('mine', '', '', DO.back) }]),
    ],
    [file],
  );
}

function surePage(): Page {
  return page([
    text('Delete everything? All your interviews, plans and measurements go, and cannot be brought back.'),
    ...buttons([
      { label: 'Yes, delete everything', id: makeId('mine', '', '', DO.sure), style: 'careful' },
      { label: 'No, keep it', id: makeId('mine', '', '', DO.back) },
    ]),
  ]);
}
