/** Where an interview is picked: what may be begun, and what may be gone on with. */
import type { Offered, OpenInterview } from '../contract.ts';
import type { Bot, Place } from './bot.ts';
import { makeId } from './custom-id.ts';
import { interviewsOf, offered, practised } from './interviews.ts';
import { buttons, type Control, lists, type Page, page, text } from './page.ts';
import { asTyped } from './typed.ts';

/** Interviews that get a button of their own; all are found by `/fit go-on`. */
const MOST_OPEN = 3;

/** `likely`: the wishes that may be meant, instead of all. */
export function menuPage(
  bot: Bot,
  place: Place,
  said = '',
  likely: readonly Offered[] = offered(bot, place),
): Page {
  const { open } = interviewsOf(bot, place);
  const goOn = open.slice(0, MOST_OPEN).map(
    (one): Control => ({
      label: `Go on: ${wordOpen(one)}`,
      id: makeId('go on', one.session),
      style: 'first',
    }),
  );
  const wishes = likely.map(({ id, title, wish }) => ({ label: wish, value: id, about: title }));
  return page([
    ...(said === '' ? [] : [text(asTyped(said))]),
    text(
      '**What would you like to do?**\n-# One question at a time. Each answer is saved at once, and you may stop whenever you like. To try it first on figures that are given: /fit practise',
    ),
    ...buttons(goOn),
    ...(wishes.length === 0
      ? [
          text(
            'The hosts of this server offer nothing to begin here. In a direct message with me all is open.',
          ),
        ]
      : []),
    ...lists(wishes, { id: (list) => makeId('start', '', '', `${list}`), hint: 'Begin something new' }),
  ]);
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
