/** Interviews: begun, gone on with, answered; each turn shown as one message. */
import type { Reply } from '../../dialogue/message.ts';
import type { Outcome } from '../../fit/plan.ts';
import type { Question } from '../../flow/schema.ts';
import { type Bot, dialectFor, type Place, type Shown } from './bot.ts';
import { hostOf, offers } from './host.ts';
import type { Drawn } from './plan-files.ts';
import { FIRST_VIEW, type PlanPaper, type PlanView, planPage } from './plan-page.ts';
import { type Interview, questionShown, saidText, screenPage } from './screen.ts';

/** Puts replies on a page, with what her next typed words would answer. */
export async function shownReplies(
  bot: Bot,
  place: Place,
  session: string,
  replies: readonly Reply[],
  wanted?: PlanView,
): Promise<Shown> {
  const interview = interviewOf(bot, place, session);
  const last = replies.findLast((reply) => reply.reply !== 'say');
  const question = questionShown(replies);
  if (last?.reply === 'outcome') {
    const view = wanted ?? viewFor(last);
    const paper = await paperFor(bot, place, session, last.outcome, interview.title);
    return { page: planPage(last.outcome, view, saidText(replies), interview, paper), session, question };
  }
  const page = screenPage(replies, interview, await howPicture(bot, place, replies, question));
  return { page, session, question };
}

/** Where she was told how to measure, the picture of it. */
async function howPicture(bot: Bot, place: Place, replies: readonly Reply[], id: string | undefined) {
  const asked = id === undefined ? undefined : questionOf(bot, place, id);
  const told = replies.some(
    (reply) =>
      reply.reply === 'say' &&
      reply.tone === 'explain' &&
      asked !== undefined &&
      reply.text.includes(asked.how),
  );
  return told && id !== undefined ? bot.parts.draw.measuring(id, asked?.measurement) : undefined;
}

/** The question in her terms. */
export function questionOf(bot: Bot, place: Place, id: string): Question | undefined {
  const terms = dialectFor(bot, place);
  for (const flow of bot.parts.flows.values()) {
    const found = flow.inTerms(terms).questions.get(id);
    if (found !== undefined) return found;
  }
  return undefined;
}

export function interviewOf(bot: Bot, place: Place, session: string): Interview {
  const { people } = bot.parts;
  const title = people.interview(place.owner, session, dialectFor(bot, place))?.title ?? '';
  return { session, title, typing: place.direct };
}

function viewFor({ workings, key }: Extract<Reply, { reply: 'outcome' }>): PlanView {
  if (key !== undefined) return { ...FIRST_VIEW, shows: 'key' };
  return workings === true ? { ...FIRST_VIEW, shows: 'workings' } : FIRST_VIEW;
}

async function paperFor(
  bot: Bot,
  place: Place,
  session: string,
  outcome: Outcome,
  title: string,
): Promise<PlanPaper> {
  const { direct } = place;
  const dialect = dialectFor(bot, place);
  return {
    dialect,
    drawn: await drawnOf(bot, place, outcome, title),
    answers: () => bot.parts.people.interview(place.owner, session, dialect)?.lines() ?? [],
    ways: { share: !direct, send: !direct },
  };
}

/** Pictures and sheet of a plan; of anything else there are none. */
export async function drawnOf(bot: Bot, place: Place, outcome: Outcome, title: string): Promise<Drawn> {
  if (outcome.kind !== 'plan') return { pictures: [], sheet: undefined };
  const { draw, clock } = bot.parts;
  return draw.plan(outcome.plan, title, dialectFor(bot, place), clock());
}

/** Throws DeskRefused. `given`: answered from the start; `said`: told above its first question. */
export function begin(
  bot: Bot,
  place: Place,
  flow: string,
  given: Readonly<Record<string, string>> = {},
  said: readonly Reply[] = [],
): Promise<Shown> {
  const { desk } = bot.parts;
  const all = { ...unitHere(bot, place), ...given };
  const { session, replies } = desk.begin(place.owner, flow, all, dialectFor(bot, place));
  return shownReplies(bot, place, session, [...said, ...replies]);
}

/** An exercise. Throws DeskRefused. */
export function practise(bot: Bot, place: Place, flow: string): Promise<Shown> {
  const { session, replies } = bot.parts.desk.practise(
    place.owner,
    flow,
    unitHere(bot, place),
    dialectFor(bot, place),
  );
  return shownReplies(bot, place, session, replies);
}

function unitHere({ parts }: Bot, { guild }: Place): Readonly<Record<string, string>> {
  const { unit } = hostOf(parts.chat, guild);
  return unit === null ? {} : { unit };
}

export function goOn(bot: Bot, place: Place, session: string, view?: PlanView): Promise<Shown> {
  return shownReplies(bot, place, session, resumed(bot, place, session), view);
}

/** Its screen as it stands, in her terms. Throws DeskRefused. */
export function resumed(bot: Bot, place: Place, session: string): readonly Reply[] {
  return bot.parts.desk.resume(place.owner, session, dialectFor(bot, place));
}

/** Ids and wishes of the flows that are offered where she is. */
export function offered(bot: Bot, place: Place) {
  const host = hostOf(bot.parts.chat, place.guild);
  return bot.parts.desk.flows(place.owner, dialectFor(bot, place)).filter(({ id }) => offers(host, id));
}

/** Those of them that have an exercise. */
export function practised(bot: Bot, place: Place) {
  return offered(bot, place).filter(({ exercise }) => exercise);
}

/** Her interviews that wait for an answer, and those that have come to a plan; newest first. */
export function interviewsOf(bot: Bot, place: Place) {
  const all = bot.parts.desk.open(place.owner, dialectFor(bot, place)).map((open) => {
    const last = resumed(bot, place, open.session).findLast((reply) => reply.reply !== 'say');
    return { ...open, planned: last?.reply === 'outcome' };
  });
  return { open: all.filter((one) => !one.planned), plans: all.filter((one) => one.planned) };
}
