/** What is written in the direct message: an answer to the question that she saw last, or a call for the menu. */
import type { Reply } from '../../dialogue/message.ts';
import { DeskRefused } from '../contract.ts';
import { type Bot, bookmark, type Place, type Shown } from './bot.ts';
import { questionOf, shownReplies } from './interviews.ts';
import { factsOf } from './log.ts';
import { menuPage } from './menu.ts';
import { note, type Page, page, text } from './page.ts';
import type { Bookmark } from './parts.ts';
import { asTyped } from './typed.ts';

const MENU = /^\s*(?:start|menu|hello|hi|begin|new)\s*[.!]?\s*$/i;

/** The answer comes as a new message, below her words; the question above keeps its text and loses its buttons. */
export async function heardInDirect(bot: Bot, place: Place, words: string): Promise<void> {
  const before = MENU.test(words) ? undefined : bot.parts.chat.bookmarkOf(place.owner);
  const { shown, replies } = await answerTo(bot, place, before, words);
  const sent = await bot.direct.send(place.channel, shown.page);
  if (sent.kind !== 'sent') {
    bot.parts.log.warn('not answered', sent.kind === 'failed' ? factsOf(sent.error) : { why: sent.kind });
    return;
  }
  bookmark(bot, place, shown, sent.message);
  if (before === undefined || replies === undefined) return;
  const closed = await bot.direct.replace(before.channel, before.message, closedPage(bot, before, replies));
  if (closed.kind === 'failed') bot.parts.log.warn('not closed', factsOf(closed.error));
}

async function answerTo(
  bot: Bot,
  place: Place,
  before: Bookmark | undefined,
  words: string,
): Promise<{ shown: Shown; replies?: readonly Reply[] }> {
  if (before === undefined) return { shown: { page: menuPage(bot, place) } };
  if (words.trim() === '')
    return {
      shown: { page: note('I can read words only. Please write your answer, or press a button above.') },
    };
  const { session, question } = before;
  try {
    const replies = bot.parts.desk.say(place.owner, session, { text: words, to: question });
    return { shown: await shownReplies(bot, place, session, replies), replies };
  } catch (error) {
    if (!(error instanceof DeskRefused)) throw error;
    if (error.reason === 'not stored')
      return {
        shown: {
          page: note(
            'This could not be saved just now, so it was not taken. Everything before it is safe. Please write it again.',
          ),
        },
      };
    return { shown: { page: menuPage(bot, place, 'That interview is no longer here.') } };
  }
}

/** The question as it was asked, with what was understood. */
function closedPage(bot: Bot, { question }: Bookmark, replies: readonly Reply[]): Page {
  const asked = questionOf(bot.parts.flows, question);
  const heard = replies.find((reply) => reply.reply === 'say' && reply.tone === 'heard');
  const noted = heard?.reply === 'say' ? `-# Noted: ${asTyped(heard.text)}` : '-# See below.';
  return page([text(asked === undefined ? noted : `${asTyped(asked.ask)}\n${noted}`)]);
}
