/** Interviews: begun, gone on with, answered; each turn shown as one message. */
import type { Message, Reply } from '../../dialogue/message.ts';
import { type Bot, dialectFor, type Place, type Shown } from './bot.ts';
import { hostOf, offers } from './host.ts';
import { FIRST_VIEW, type PlanPaper, type PlanView, planPage } from './plan-page.ts';
import { type Interview, questionShown, saidText, screenPage } from './screen.ts';

/** Puts replies on a page, with what her next typed words would answer. */
export function shownReplies(
  bot: Bot,
  place: Place,
  session: string,
  replies: readonly Reply[],
  view: PlanView = FIRST_VIEW,
): Shown {
  const interview = interviewOf(bot, place, session);
  const last = replies.findLast((reply) => reply.reply !== 'say');
  const page =
    last?.reply === 'outcome'
      ? planPage(last.outcome, view, saidText(replies), interview, paperFor(bot, place))
      : screenPage(replies, interview);
  return { page, session, question: questionShown(replies) };
}

export function interviewOf({ parts }: Bot, { owner, direct }: Place, session: string): Interview {
  const title = parts.people.interview(owner, session)?.title ?? '';
  return { session, title, typing: direct };
}

export function paperFor(bot: Bot, place: Place): PlanPaper {
  const { direct } = place;
  return {
    dialect: dialectFor(bot, place),
    pictures: bot.parts.pictures,
    ways: { share: !direct, send: !direct },
  };
}

/** Throws DeskRefused. `given`: answered from the start. */
export function begin(
  bot: Bot,
  place: Place,
  flow: string,
  given: Readonly<Record<string, string>> = {},
): Shown {
  const { desk, chat } = bot.parts;
  const { unit } = hostOf(chat, place.guild);
  const { session, replies } = desk.begin(place.owner, flow, {
    ...(unit === null ? {} : { unit }),
    ...given,
  });
  return shownReplies(bot, place, session, replies);
}

export function goOn(bot: Bot, place: Place, session: string, view?: PlanView): Shown {
  return shownReplies(bot, place, session, bot.parts.desk.resume(place.owner, session), view);
}

export function say(bot: Bot, place: Place, session: string, message: Message): Shown {
  return shownReplies(bot, place, session, bot.parts.desk.say(place.owner, session, message));
}

/** Ids and wishes of the flows that are offered where she is. */
export function offered(bot: Bot, { guild }: Place) {
  const host = hostOf(bot.parts.chat, guild);
  return bot.parts.desk.flows().filter(({ id }) => offers(host, id));
}

/** Her interviews that wait for an answer, and those that have come to a plan; newest first. */
export function interviewsOf(bot: Bot, { owner }: Place) {
  const { desk } = bot.parts;
  const all = desk.open(owner).map((open) => {
    const last = desk.resume(owner, open.session).findLast((reply) => reply.reply !== 'say');
    return { ...open, planned: last?.reply === 'outcome' };
  });
  return { open: all.filter((one) => !one.planned), plans: all.filter((one) => one.planned) };
}
