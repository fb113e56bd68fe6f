/** The subcommands of `/fit`, each worked to what it shows. */
import type { ChatInputCommandInteraction } from 'discord.js';
import { listLessons, wordLesson } from '../../dialogue/lessons.ts';
import { findWish } from '../../dialogue/wish.ts';
import { lessonsOf } from '../../flow/compile.ts';
import { Aside, type Bot, dialectFor, type Place, type Shown } from './bot.ts';
import { LESSON, MEASURE, PATTERN, RECHECK } from './commands.ts';
import { named } from './completing.ts';
import { helpPage } from './help.ts';
import { begin, goOn, interviewsOf, offered, practise, practised } from './interviews.ts';
import { menuPage, practicePage, titleOf } from './menu.ts';
import { minePage } from './mine.ts';
import { note, type Page } from './page.ts';
import { sheetsPage } from './sheets.ts';
import { asTyped } from './typed.ts';

export function fitCommand(bot: Bot, place: Place, i: ChatInputCommandInteraction): Shown | Promise<Shown> {
  const option = (name: string) => i.options.getString(name) ?? '';
  const name = i.options.getSubcommand();
  switch (name) {
    case 'start':
      return start(bot, place, option('wish'), option('pattern'));
    case 'go-on':
      return goOnWith(bot, place, option('interview'));
    case 'recheck':
      return startFlow(bot, place, RECHECK);
    case 'measure':
      return startFlow(bot, place, MEASURE.flow, {
        [MEASURE.what]: option('what'),
        [MEASURE.table]: option('table'),
      });
    case 'plan':
      return planAgain(bot, place, option('which'));
    case 'practise':
      return practiseNamed(bot, place, option('chapter'));
    case 'lesson':
      return { page: lessonPage(bot, place, option(LESSON)) };
    case 'sheets':
      return sheetsPage(bot, place, option).then((page) => ({ page }));
    case 'my-data':
      return { page: minePage(bot, place) };
    case 'help':
      return { page: helpPage(bot.parts.flows) };
    default:
      throw new Aside(
        'This command is from another version. In a minute your list of commands is fresh: /fit help',
      );
  }
}

/** The lesson; where it is no longer there, the list of those that are. */
function lessonPage(bot: Bot, place: Place, id: string): Page {
  const lessons = lessonsOf(bot.parts.flows, dialectFor(bot, place));
  const lesson = lessons.get(id);
  return note(asTyped(lesson === undefined ? listLessons(lessons) : wordLesson(lesson)));
}

function start(bot: Bot, place: Place, wish: string, pattern: string): Shown | Promise<Shown> {
  if (wish === '') return { page: menuPage(bot, place) };
  const here = offered(bot, place);
  const found = findWish(here, wish);
  switch (found.found) {
    case 'one':
      return startFlow(bot, place, found.wish.id, { [PATTERN]: pattern });
    case 'several':
      return { page: menuPage(bot, place, 'Do you mean one of these?', found.wishes) };
    case 'none':
      return { page: menuPage(bot, place, `I do not know what to do about '${wish}'.`) };
    default:
      return found satisfies never;
  }
}

/** The exercise that is called so; without a name, the list of them. */
export function practiseNamed(bot: Bot, place: Place, wanted: string): Shown | Promise<Shown> {
  if (wanted === '') return { page: practicePage(bot, place) };
  const here = practised(bot, place);
  const chapter = named(
    here.map(({ id, title, wish }) => ({ value: id, names: [title, wish] })),
    wanted,
  );
  if (chapter !== undefined) return practise(bot, place, chapter);
  return { page: practicePage(bot, place, `I find no exercise called '${wanted}'.`) };
}

/** Begins a flow that is offered where she is. Answers that are empty are asked. */
export function startFlow(
  bot: Bot,
  place: Place,
  flow: string,
  given: Readonly<Record<string, string>> = {},
): Shown | Promise<Shown> {
  if (bot.parts.flows.has(flow) && !offered(bot, place).some(({ id }) => id === flow)) {
    const said =
      'The hosts of this server offer other chapters here. In a direct message with me all are open.';
    return { page: menuPage(bot, place, said) };
  }
  const known = Object.entries(given).filter(([, typed]) => typed !== '');
  return begin(bot, place, flow, Object.fromEntries(known));
}

function goOnWith(bot: Bot, place: Place, wanted: string): Shown | Promise<Shown> {
  const { open, plans } = interviewsOf(bot, place);
  const all = [...open, ...plans];
  const session =
    wanted === ''
      ? open[0]?.session
      : named(
          all.map((one) => ({ value: one.session, names: [titleOf(one)] })),
          wanted,
        );
  if (session !== undefined) return goOn(bot, place, session);
  const said =
    wanted === '' ? 'No interview of yours waits for an answer.' : `I find no interview called '${wanted}'.`;
  return { page: menuPage(bot, place, said) };
}

function planAgain(bot: Bot, place: Place, wanted: string): Shown | Promise<Shown> {
  const { plans } = interviewsOf(bot, place);
  const session =
    wanted === ''
      ? plans.find(({ practice }) => !practice)?.session
      : named(
          plans.map((one) => ({ value: one.session, names: [titleOf(one)] })),
          wanted,
        );
  if (session !== undefined) return goOn(bot, place, session);
  return {
    page: menuPage(
      bot,
      place,
      wanted === '' ? 'You have no plan yet.' : `I find no plan called '${wanted}'.`,
    ),
  };
}
