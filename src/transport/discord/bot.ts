/** What every deed is worked with, and how one is worked: acknowledged at once, done in its turn, shown. */
import type { BaseInteraction } from 'discord.js';
import { InteractionContextType } from 'discord.js';
import type { LengthUnit } from '../../fit/units.ts';
import type { Dialect } from '../../present/terms.ts';
import { DeskRefused } from '../contract.ts';
import type { Answered, Answers, Deed, ShownAt } from './answering.ts';
import type { DirectMessages } from './direct.ts';
import { hostOf } from './host.ts';
import { factsOf } from './log.ts';
import { note, type Page, type Seen } from './page.ts';
import type { DiscordParts } from './parts.ts';
import type { Threads } from './threads.ts';
import type { Leisure, Pace, Turns } from './turns.ts';

export interface Bot {
  readonly parts: DiscordParts;
  readonly answers: Answers;
  readonly direct: DirectMessages;
  readonly threads: Threads;
  readonly turns: Turns;
  readonly pace: Pace;
  readonly leisure: Leisure;
}

/** Where somebody is, and who she is. Outside of servers `guild` is null. */
export interface Place {
  readonly user: string;
  readonly owner: string;
  readonly guild: string | null;
  readonly channel: string;
  /** In the direct message with the app, where typed words are heard and nobody else reads. */
  readonly direct: boolean;
}

/** What is to be shown; in a direct message the question is what her next typed words answer. */
export interface Shown {
  readonly page: Page;
  readonly session?: string;
  readonly question?: string | undefined;
}

/** A word beside the message, which stays as it is. */
export class Aside extends Error {
  override readonly name = 'Aside';
}

export function ownerOf(user: string): string {
  return `discord:${user}`;
}

export function placeOf(i: BaseInteraction): Place {
  const direct = i.context === InteractionContextType.BotDM;
  return { user: i.user.id, owner: ownerOf(i.user.id), guild: i.guildId, channel: i.channelId ?? '', direct };
}

/** Hers alone in a server or group; in the direct message it is so anyway, and stays. */
export function privately({ direct }: Place): Seen {
  return direct ? 'by all' : 'by her alone';
}

/** Null: she is asked. */
export function unitFor({ parts }: Bot, { owner, guild }: Place): LengthUnit | null {
  return parts.people.preferencesOf(owner).unit ?? hostOf(parts.chat, guild).unit ?? parts.defaults.unit;
}

export function dialectFor({ parts }: Bot, { owner, guild }: Place): Dialect {
  return parts.people.preferencesOf(owner).terms ?? hostOf(parts.chat, guild).terms ?? parts.defaults.terms;
}

/**
 * Acknowledges, then does the work in the person's turn, and shows it: in place of the message on which she pressed, or
 * as a new one. Where the platform knows the deed no more, she sees that it failed, and nothing is done.
 */
export async function worked(
  bot: Bot,
  deed: Deed,
  place: Place,
  as: 'update' | Seen,
  work: () => Shown | Promise<Shown>,
): Promise<void> {
  const heard = await bot.answers.acknowledge(deed, as);
  if (heard.kind === 'gone' || heard.kind === 'refused') return untold(bot, 'not acknowledged', deed, heard);
  await bot.turns.of(place.owner, async () => {
    const shown = await attempted(bot, deed, work);
    if (shown instanceof Aside) return aside(bot, deed, as, note(shown.message));
    leaveBookmark(bot, place, shown);
    const edited = await bot.answers.edit(deed, shown.page);
    if (edited.kind === 'taken') bookmark(bot, place, shown, edited.shown);
    else await shownOtherwise(bot, deed, place, shown, edited);
  });
}

/** What the work shows; where it could not be done, why, in words. */
async function attempted(bot: Bot, deed: Deed, work: () => Shown | Promise<Shown>): Promise<Shown | Aside> {
  try {
    await bot.pace.next();
    return await work();
  } catch (error) {
    if (error instanceof Aside) return error;
    if (error instanceof DeskRefused) return refused(bot, deed, error);
    bot.parts.log.error('failed', { deed: deed.id, ...factsOf(error) });
    return new Aside(
      'Something went wrong on my side. Everything you have answered is kept. To see your question again: /fit go-on',
    );
  }
}

function refused(bot: Bot, deed: Deed, { reason, cause }: DeskRefused): Shown | Aside {
  bot.parts.log.warn('refused', { deed: deed.id, reason, ...(cause === undefined ? {} : factsOf(cause)) });
  switch (reason) {
    case 'of another owner':
      return new Aside(
        "This is another knitter's interview, and only she can answer. To begin your own: /fit start",
      );
    case 'not stored':
      return new Aside(
        'This could not be saved just now, so it was not taken. Everything before it is safe. Please try again.',
      );
    case 'no such interview':
      return {
        page: note('This interview is no longer kept, so it cannot go on. To begin a new one: /fit start'),
      };
    case 'no such flow':
      return {
        page: note(
          'This chapter is no longer offered. Your measurements are kept, and are offered again in the others: /fit start',
        ),
      };
    default:
      return reason satisfies never;
  }
}

/** Beside a message that stays, or in place of the word that something is being done. */
async function aside(bot: Bot, deed: Deed, as: 'update' | Seen, page: Page): Promise<void> {
  const told =
    as === 'update'
      ? await bot.answers.followUp(deed, page, 'by her alone')
      : await bot.answers.edit(deed, page);
  if (told.kind !== 'taken') untold(bot, 'not told', deed, told);
}

/** The answer is kept, but its page did not come through. */
async function shownOtherwise(
  bot: Bot,
  deed: Deed,
  place: Place,
  shown: Shown,
  edited: Exclude<Answered, { kind: 'taken' }>,
): Promise<void> {
  untold(bot, 'not shown', deed, edited);
  if (edited.kind === 'refused') {
    const kept = note(
      'This cannot be shown here. Everything you have answered is kept. To go on: /fit go-on',
    );
    await bot.answers.edit(deed, kept);
  } else if (place.direct) {
    const sent = await bot.direct.send(place.channel, shown.page);
    if (sent.kind === 'sent') bookmark(bot, place, shown, sent.shown);
  }
}

/**
 * Before another interview is shown, none is bookmarked: where the program ends between showing and keeping the bookmark,
 * her next words must not be taken for an answer in the interview before.
 */
export function leaveBookmark({ parts }: Bot, { direct, owner }: Place, { session }: Shown): void {
  if (!direct || session === undefined) return;
  const before = parts.chat.bookmarkOf(owner);
  if (before !== undefined && before.session !== session) parts.chat.dropBookmark(owner);
}

export function bookmark(
  bot: Bot,
  place: Place,
  { session, question }: Shown,
  there: ShownAt | undefined,
): void {
  if (!place.direct || session === undefined || question === undefined || there === undefined) return;
  const { message, at } = there;
  try {
    const { chat } = bot.parts;
    const before = chat.bookmarkOf(place.owner);
    const again = before?.session === session && before.question === question;
    // A question that is shown again has been there since it was first shown.
    const shownAt = again ? Math.min(before.shownAt, at) : at;
    chat.setBookmark(place.owner, { session, question, channel: place.channel, message, shownAt });
  } catch (error) {
    // Her next typed words are then taken for an answer to the question before, and told to be answered already.
    bot.parts.log.warn('bookmark not kept', factsOf(error));
  }
}

export function untold(
  bot: Bot,
  event: string,
  deed: Deed,
  answered: Exclude<Answered, { kind: 'taken' }>,
): void {
  bot.parts.log.warn(event, { deed: deed.id, why: answered.kind, ...factsOf(answered.error) });
}
