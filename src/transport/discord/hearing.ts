/** Everything that people do, handed to what answers it. Each deed is heard once, however often it is delivered. */
import {
  type ChatInputCommandInteraction,
  type Interaction,
  type Message,
  type ModalSubmitInteraction,
  PermissionFlagsBits,
} from 'discord.js';
import { Aside, type Bot, ownerOf, type Place, placeOf, privately, untold, worked } from './bot.ts';
import { fitCommand } from './commanded.ts';
import { completions } from './completing.ts';
import { readId } from './custom-id.ts';
import { typedIn } from './form.ts';
import { hostPage } from './host-page.ts';
import { factsOf } from './log.ts';
import { say } from './onward.ts';
import { pressed } from './pressed.ts';
import { answerSum } from './sums.ts';
import { SeenBefore } from './turns.ts';
import { heardInDirect } from './written.ts';

/** Ids of deeds that are remembered: some minutes of a busy day. */
const REMEMBERED = 20_000;

export function hearing(bot: Bot) {
  const before = new SeenBefore(REMEMBERED);
  const underWay = new Set<Promise<void>>();
  /** A mistake of ours ends this deed alone. */
  const guarded = (work: () => Promise<void>): void => {
    const done = work()
      .catch((error: unknown) => bot.parts.log.error('failed', factsOf(error)))
      .finally(() => underWay.delete(done));
    underWay.add(done);
  };
  return {
    interaction: (i: Interaction): void => {
      if (before.isNew(i.id)) guarded(() => heard(bot, i));
    },
    message: (message: Message): void => {
      const isHers = !message.author.bot && message.guildId === null;
      if (isHers && before.isNew(message.id)) guarded(() => written(bot, message));
    },
    /** Resolves when nothing is under way. */
    rest: async (): Promise<void> => {
      while (underWay.size > 0) await Promise.all(underWay);
    },
  };
}

async function heard(bot: Bot, i: Interaction): Promise<void> {
  if (i.isAutocomplete()) {
    const answered = await bot.answers.complete(
      i,
      choicesFor(bot, () => completions(bot, placeOf(i), i)),
    );
    if (answered.kind !== 'taken') untold(bot, 'not completed', i, answered);
  } else if (i.isChatInputCommand()) await commanded(bot, placeOf(i), i);
  else if (i.isMessageComponent()) await pressed(bot, i);
  else if (i.isModalSubmit()) await submitted(bot, placeOf(i), i);
}

/** Where her interviews cannot be read just now, nothing is offered, and she may type it. */
function choicesFor<T>(bot: Bot, work: () => T[]): T[] {
  try {
    return work();
  } catch (error) {
    bot.parts.log.warn('not completed', factsOf(error));
    return [];
  }
}

async function commanded(bot: Bot, place: Place, i: ChatInputCommandInteraction): Promise<void> {
  switch (i.commandName) {
    case 'sums':
      return answerSum(bot, place, i);
    case 'host':
      return worked(bot, i, place, 'by her alone', () => {
        if (i.guildId === null || i.memberPermissions?.has(PermissionFlagsBits.ManageGuild) !== true)
          throw new Aside('Only those who may manage this server can see its settings.');
        return { page: hostPage(bot, i.guildId) };
      });
    default:
      return worked(bot, i, place, privately(place), () => fitCommand(bot, place, i));
  }
}

async function submitted(bot: Bot, place: Place, i: ModalSubmitInteraction): Promise<void> {
  const carried = readId(i.customId);
  const text = typedIn(i);
  await worked(bot, i, place, i.isFromMessage() ? 'update' : privately(place), () => {
    if (carried === undefined)
      throw new Aside('This form is from another version of me. To go on: /fit go-on');
    return say(bot, place, carried.session, { text, to: carried.question });
  });
}

async function written(bot: Bot, message: Message): Promise<void> {
  const { id: user } = message.author;
  const place: Place = {
    user,
    owner: ownerOf(user),
    guild: null,
    channel: message.channelId,
    direct: true,
  };
  await bot.turns.of(place.owner, () =>
    heardInDirect(bot, place, { words: message.content, at: message.createdTimestamp }),
  );
}
