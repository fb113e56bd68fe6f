/** Where an interview is picked: what may be begun, and what may be gone on with. */
import { WISH_GROUPS } from '../../flow/schema.ts';
import type { Offered, OpenInterview } from '../contract.ts';
import { WISH_TITLES } from '../wish-titles.ts';
import type { Bot, Place } from './bot.ts';
import { makeId } from './custom-id.ts';
import { interviewsOf, offered, practised } from './interviews.ts';
import { buttons, type Choice, type Control, lists, type Page, page, text } from './page.ts';
import { asTyped } from './typed.ts';

/** Interviews that get a button of their own; all are found by `/fit go-on`. */
const MOST_OPEN = 3;

/** `likely`: the wishes that may be meant, instead of all. */
export function menuPage(bot: Bot, place: Place, said = '', likely?: readonly Offered[]): Page {
  const { open } = interviewsOf(bot, place);
  const goOn = open.slice(0, MOST_OPEN).map(
    (one): Control => ({
      label: `Go on: ${wordOpen(one)}`,
      id: makeId('go on', one.session),
      style: 'first',
    }),
  );
  const listed = likely === undefined ? grouped(offered(bot, place)) : [{ hint: 'Likely', wishes: likely }];
  return page([
    ...(said === '' ? [] : [text(asTyped(said))]),
    text(
      '**What would you like to do?**\n-# One question at a time. Each answer is saved at once, and you may stop whenever you like. To try it first on figures that are given: /fit practise',
    ),
    ...buttons(goOn),
    ...(listed.length === 0
      ? [
          text(
            'The hosts of this server offer nothing to begin here. In a direct message with me all is open.',
          ),
        ]
      : []),
    ...listed.flatMap(({ hint, wishes }) =>
      lists(wishes.map(toBegin), { id: (list) => makeId('start', '', '', `${hint} ${list}`), hint }),
    ),
  ]);
}

function toBegin({ id, title, wish }: Offered): Choice {
  return { label: wish, value: id, about: title };
}

/** What is wished most often first, then the rest by what it is about. */
function grouped(all: readonly Offered[]): { hint: string; wishes: readonly Offered[] }[] {
  const groups = WISH_GROUPS.map((group) => ({
    hint: WISH_TITLES[group],
    wishes: all.filter((one) => one.group === group && !one.common),
  }));
  const common = { hint: 'What is wished most often', wishes: all.filter((one) => one.common) };
  return [common, ...groups].filter(({ wishes }) => wishes.length > 0);
}

/** Where an exercise is picked. */
export function practicePage(bot: Bot, place: Place, said = ''): Page {
  const chapters = practised(bot, place).map(({ id, title, wish }) => ({
    label: title,
    value: id,
    about: wish,
  }));
  if (chapters.length === 0)
    return page([text('There is nothing to practise here. In a direct message with me all is open.')]);
  return page([
    ...(said === '' ? [] : [text(asTyped(said))]),
    text(
      '**What would you like to practise?**\n-# Every figure is given, and may be changed. At the end comes the worked answer, and you can work the sums yourself. None of it is kept as yours.',
    ),
    ...lists(chapters, { id: (list) => makeId('practise', '', '', `${list}`), hint: 'Choose an exercise' }),
  ]);
}

/** 'Practice: Re-space a sleeve (3 May 2026, 4 answered)'. */
export function wordOpen(open: OpenInterview): string {
  return `${titleOf(open)} (${DATE.format(open.lastAt)}, ${open.answered} answered)`;
}

/** The name of an interview; an exercise is called one. */
export function titleOf({ flow, practice }: Pick<OpenInterview, 'flow' | 'practice'>): string {
  return practice ? `Practice: ${flow.title}` : flow.title;
}

const DATE = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});
