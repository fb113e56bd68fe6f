/** What is written in the direct message: an answer to the question that she saw last, or a call for the menu. */
import type { Reply } from '../../dialogue/message.ts';
import { DeskRefused } from '../contract.ts';
import { type Bot, bookmark, type Place, type Shown } from './bot.ts';
import { questionOf, resumed, shownReplies } from './interviews.ts';
import { factsOf } from './log.ts';
import { menuPage } from './menu.ts';
import { onward, said } from './onward.ts';
import { note, type Page, page, text } from './page.ts';
import type { Bookmark } from './parts.ts';
import { asTyped } from './typed.ts';

const MENU = /^\s*(?:start|menu|hello|hi|begin|new)\s*[.!]?\s*$/i;

const TOO_EARLY = 'You wrote that before I had asked this, so I did not take it for an answer.';

/** What she wrote, and when, by Discord's clock; milliseconds since 1970. */
export interface Written {
  readonly words: string;
  readonly at: number;
}

/** The answer comes as a new message, below her words; the question above keeps its text and loses its buttons. */
export async function heardInDirect(bot: Bot, place: Place, written: Written): Promise<void> {
  await bot.pace.next();
  const before = MENU.test(written.words) ? undefined : bot.parts.chat.bookmarkOf(place.owner);
  const { shown, replies } = await answerTo(bot, place, before, written);
  const sent = await bot.direct.send(place.channel, shown.page);
  if (sent.kind !== 'sent') {
    bot.parts.log.warn('not answered', sent.kind === 'failed' ? factsOf(sent.error) : { why: sent.kind });
    return;
  }
  bookmark(bot, place, shown, sent.shown);
  if (before === undefined || replies === undefined) return;
  const closed = closedPage(bot, place, before, replies);
  bot.leisure.do(async () => {
    const done = await bot.direct.replace(before.channel, before.message, closed);
    if (done.kind === 'failed') bot.parts.log.warn('not closed', factsOf(done.error));
  });
}

async function answerTo(
  bot: Bot,
  place: Place,
  before: Bookmark | undefined,
  { words, at }: Written,
): Promise<{ shown: Shown; replies?: readonly Reply[] }> {
  if (before === undefined) return { shown: { page: menuPage(bot, place) } };
  if (words.trim() === '')
    return {
      shown: { page: note('I can read words only. Please write your answer, or press a button above.') },
    };
  const { session, question } = before;
  try {
    if (at < before.shownAt) return { shown: await tooEarly(bot, place, session), replies: [] };
    const replies = said(bot, place, session, { text: words, to: question });
    return { shown: await onward(bot, place, session, replies), replies };
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

/** Written before the question was there, and so no answer to it: often the answer before, once more, for want of a reply. */
async function tooEarly(bot: Bot, place: Place, session: string): Promise<Shown> {
  const said = { reply: 'say', tone: 'note', text: TOO_EARLY } as const;
  return shownReplies(bot, place, session, [said, ...resumed(bot, place, session)]);
}

/** The question as it was asked, with what was understood. */
function closedPage(bot: Bot, place: Place, { question }: Bookmark, replies: readonly Reply[]): Page {
  const asked = questionOf(bot, place, question);
  const heard = replies.find((reply) => reply.reply === 'say' && reply.tone === 'heard');
  const noted = heard?.reply === 'say' ? `-# Noted: ${asTyped(heard.text)}` : '-# See below.';
  return page([text(asked === undefined ? noted : `${asTyped(asked.ask)}\n${noted}`)]);
}
