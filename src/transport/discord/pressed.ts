/** What a press or a choice on one of our messages does. */
import { type MessageComponentInteraction, PermissionFlagsBits } from 'discord.js';
import type { Button, Reply } from '../../dialogue/message.ts';
import {
  Aside,
  type Bot,
  bookmark,
  dialectFor,
  leaveBookmark,
  type Place,
  placeOf,
  type Shown,
  untold,
  worked,
} from './bot.ts';
import { practiseNamed, startFlow } from './commanded.ts';
import { type Carried, readId, wordsOf } from './custom-id.ts';
import { answerForm } from './form.ts';
import { hostPage, hostSet } from './host-page.ts';
import { goOn, interviewOf, questionOf, resumed } from './interviews.ts';
import { FOLLOW_UPS } from './limits.ts';
import { mineDone } from './mine.ts';
import { say } from './onward.ts';
import { note } from './page.ts';
import { viewOf } from './plan-page.ts';
import { answersPage, surePage } from './screen.ts';
import { type Sharer, sendToHer, share, shareChoice } from './sharing.ts';

export async function pressed(bot: Bot, i: MessageComponentInteraction): Promise<void> {
  const carried = readId(i.customId);
  const place = placeOf(i);
  if (carried === undefined) return ofAnotherVersion(bot, i);
  // A form must be the first answer to a press, and opens without looking anything up.
  if (carried.act === 'type') return openForm(bot, place, i, carried);
  await worked(bot, i, place, 'update', () => done(bot, place, i, carried));
}

async function ofAnotherVersion(bot: Bot, i: MessageComponentInteraction): Promise<void> {
  const said = note(
    'This button is from another version of me. Your answers are kept. To see your question again: /fit go-on',
  );
  const answered = await bot.answers.reply(i, said, 'by her alone');
  if (answered.kind !== 'taken') untold(bot, 'not told', i, answered);
}

/** Where the form cannot open, the question is asked as a message in which she may write. */
async function openForm(
  bot: Bot,
  place: Place,
  i: MessageComponentInteraction,
  { session, question }: Carried,
): Promise<void> {
  const form = answerForm(session, question, questionOf(bot, place, question));
  const opened = await bot.answers.openForm(i, form);
  if (opened.kind === 'taken') return;
  untold(bot, 'form not opened', i, opened);
  await bot.turns.of(place.owner, async () => {
    const direct: Place = { ...place, guild: null, direct: true };
    const shown = await goOn(bot, direct, session);
    leaveBookmark(bot, direct, shown);
    const sent = await bot.direct.sendTo(place.user, shown.page);
    if (sent.kind === 'sent') bookmark(bot, { ...direct, channel: sent.channel }, shown, sent.shown);
  });
}

/** What comes of the press, as it is to be shown. */
function done(
  bot: Bot,
  place: Place,
  i: MessageComponentInteraction,
  carried: Carried,
): Shown | Promise<Shown> {
  const { act, session, what } = carried;
  const words = 'words' in what ? what.words : '';
  const picked = i.isAnySelectMenu() ? i.values : [];
  switch (act) {
    case 'answer':
      return answered(bot, place, carried, picked);
    case 'more':
      return more(bot, place, carried, picked[0] ?? '');
    case 'change':
      return say(bot, place, session, { text: `change ${picked[0] ?? ''}` });
    case 'go on':
      return goOn(bot, place, session);
    case 'plan':
      return goOn(bot, place, session, viewOf(words));
    case 'share':
      return words === '' ? shareChoice(bot, place, session) : share(bot, place, sharer(i), session, words);
    case 'send':
      return sendToHer(bot, place, session);
    case 'start':
      return startFlow(bot, place, picked[0] ?? '');
    case 'practise':
      return practiseNamed(bot, place, picked[0] ?? '');
    case 'mine':
      return mineDone(bot, place, words, picked[0]);
    case 'host':
      return hosted(bot, i, words, picked);
    case 'type':
    case 'form':
      throw new Error(`'${act}' is no press that shows something`);
    default:
      return act satisfies never;
  }
}

/** A press under a question that is no longer asked says nothing new: the dialogue tells what became of it. */
function answered(
  bot: Bot,
  place: Place,
  { session, question, what }: Carried,
  picked: readonly string[],
): Promise<Shown> {
  if (picked.length > 0) return say(bot, place, session, { text: picked.join(', '), to: question });
  const text = wordsOf(what, () => said(bot, place, session));
  if (text === undefined) return goOn(bot, place, session);
  return say(bot, place, session, { text, to: question });
}

/** What the buttons of the present screen say. */
function said(bot: Bot, place: Place, session: string): string[] {
  const replies = resumed(bot, place, session);
  return replies.flatMap((reply: Reply) =>
    'buttons' in reply ? reply.buttons.map((b: Button) => b.send) : [],
  );
}

function more(
  bot: Bot,
  place: Place,
  { session, question }: Carried,
  picked: string,
): Shown | Promise<Shown> {
  const interview = interviewOf(bot, place, session);
  switch (picked) {
    case 'answers': {
      // Also refuses those to whom the interview does not belong.
      bot.parts.desk.resume(place.owner, session);
      const lines = bot.parts.people.interview(place.owner, session, dialectFor(bot, place))?.lines() ?? [];
      return { page: answersPage(lines, interview) };
    }
    case 'start over':
    case 'cancel':
      bot.parts.desk.resume(place.owner, session);
      return { page: surePage(picked, interview, question) };
    default:
      return say(bot, place, session, { text: picked, to: question });
  }
}

function sharer(i: MessageComponentInteraction): Sharer {
  return {
    id: i.id,
    token: i.token,
    name: i.user.displayName,
    mayAttach: i.appPermissions.has(PermissionFlagsBits.AttachFiles),
    mayPost: i.authorizingIntegrationOwners.guildId === null ? FOLLOW_UPS : Number.POSITIVE_INFINITY,
  };
}

/** Permissions are looked at anew at each press: they may have been taken from her since. */
function hosted(bot: Bot, i: MessageComponentInteraction, what: string, picked: readonly string[]): Shown {
  if (i.guildId === null || i.memberPermissions?.has(PermissionFlagsBits.ManageGuild) !== true)
    throw new Aside('Only those who may manage this server can change its settings.');
  return { page: what === '' ? hostPage(bot, i.guildId) : hostSet(bot, i.guildId, what, picked) };
}
