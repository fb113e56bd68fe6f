/** What she says in an interview, and where it leads: its next screen, or another chapter that she would rather do. */
import type { Message, Reply } from '../../dialogue/message.ts';
import { type Bot, dialectFor, type Place, type Shown } from './bot.ts';
import { begin, offered, shownReplies } from './interviews.ts';
import { menuPage } from './menu.ts';

/** Throws DeskRefused. */
export function say(bot: Bot, place: Place, session: string, message: Message): Promise<Shown> {
  return onward(bot, place, session, said(bot, place, session, message));
}

export function said(bot: Bot, place: Place, session: string, message: Message): readonly Reply[] {
  return bot.parts.desk.say(place.owner, session, message, dialectFor(bot, place));
}

/** A chapter that the hosts keep from here is not begun: she is shown what there is. */
export async function onward(
  bot: Bot,
  place: Place,
  session: string,
  replies: readonly Reply[],
): Promise<Shown> {
  const rest = replies.find((reply) => reply.reply === 'rest');
  if (rest?.reply !== 'rest' || rest.elsewhere === undefined)
    return shownReplies(bot, place, session, replies);
  const { flow } = rest.elsewhere;
  const there = offered(bot, place).find(({ id }) => id === flow);
  if (there === undefined) return { page: menuPage(bot, place, rest.text) };
  return begin(bot, place, there.id, {}, [{ reply: 'say', tone: 'note', text: rest.text }]);
}
