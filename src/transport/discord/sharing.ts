/** A plan shared in a channel, or sent to her. What others see is chosen at that moment. */
import type { Outcome } from '../../fit/plan.ts';
import { garmentOnly } from '../../present/garment-only.ts';
import { outcomeText } from '../../present/plan-text.ts';
import type { Deed } from './answering.ts';
import { Aside, type Bot, dialectFor, type Place, type Shown } from './bot.ts';
import { makeId } from './custom-id.ts';
import { hostOf, isPublic } from './host.ts';
import { drawnOf, goOn, interviewOf, resumed } from './interviews.ts';
import { factsOf } from './log.ts';
import { buttons, type Page, page, text } from './page.ts';
import { fileParts, partFiles, planParts } from './plan-page.ts';
import { asTyped } from './typed.ts';

/** What a press on the choice means. */
const GARMENT = 'garment';
const BODY = 'body too';

/** Asks what others may see. Throws Aside where nothing may be shared here. */
export function shareChoice(bot: Bot, place: Place, session: string): Shown {
  const { outcome } = planned(bot, place, session);
  if (!mayBePublic(bot, place))
    throw new Aside(
      'The hosts of this server keep answers in public to other channels. There you can share it with /fit plan, or press Send it to me.',
    );
  const whole = outcomeText(outcome, { dialect: dialectFor(bot, place), workings: false });
  const hidden =
    outcomeText(withoutBody(outcome), { dialect: dialectFor(bot, place), workings: false }) !== whole;
  const id = (words: string) => makeId('share', session, 'outcome', words);
  return {
    page: page([
      text(
        hidden
          ? 'Share your plan here, for all in this channel to see? Your body measurements are left out, unless you want them in.'
          : 'Share your plan here, for all in this channel to see? No measurement of a body is in it.',
      ),
      ...buttons([
        { label: hidden ? 'Share, without my measurements' : 'Share', id: id(GARMENT), style: 'first' },
        ...(hidden ? [{ label: 'Share, with my measurements', id: id(BODY) }] : []),
        { label: 'No, back to my plan', id: makeId('go on', session) },
      ]),
    ]),
  };
}

function mayBePublic({ parts, threads }: Bot, { guild, channel }: Place): boolean {
  return isPublic(hostOf(parts.chat, guild), threads.homeOf(channel));
}

/** A press on the choice: who shares, and what the platform lets us post for it. */
export interface Sharer extends Deed {
  readonly name: string;
  readonly mayAttach: boolean;
  /** Messages to one press. */
  readonly mayPost: number;
}

/** Posts the plan for all to see, and shows her own again. */
export async function share(
  bot: Bot,
  place: Place,
  deed: Sharer,
  session: string,
  what: string,
): Promise<Shown> {
  if (!mayBePublic(bot, place)) return shareChoice(bot, place, session);
  const { outcome, title } = planned(bot, place, session);
  const shared = what === BODY ? outcome : withoutBody(outcome);
  const head = `${deed.name} shares a plan · ${title}`;
  const pages = await pagesOf(bot, place, shared, { title, head, mayAttach: deed.mayAttach });
  for (const [n, one] of asManyAsMay(pages, deed).entries()) {
    const posted = await bot.answers.followUp(deed, one, 'by all');
    if (posted.kind === 'taken') continue;
    bot.parts.log.warn('not shared', { deed: deed.id, part: n, ...factsOf(posted.error) });
    throw new Aside(notShared(posted.kind, n));
  }
  return goOn(bot, place, session);
}

/** The rest of a plan that is longer than may be posted stands in its file. */
function asManyAsMay(pages: readonly Page[], { mayPost, mayAttach }: Sharer): readonly Page[] {
  const last = pages[mayPost - 1];
  if (pages.length <= mayPost || last === undefined) return pages;
  const rest = mayAttach
    ? 'Discord takes no more here. The whole plan is in the file plan.txt above.'
    : 'Discord takes no more here.';
  return [...pages.slice(0, mayPost - 1), { ...last, parts: [...last.parts, text(`-# ${rest}`)] }];
}

function notShared(kind: 'gone' | 'refused' | 'unsure', part: number): string {
  if (kind === 'unsure')
    return 'Discord did not say whether your plan was posted. Please look before you share it again.';
  const begun =
    part > 0 ? 'Only the first part of your plan could be posted here.' : 'I could not post here.';
  return `${begun} A host can allow it: in the settings of this channel, under permissions, let me view the channel, send messages and attach files. Your plan is kept: /fit plan`;
}

/** Sends the whole plan, in messages that stay, to her direct messages. */
export async function sendToHer(bot: Bot, place: Place, session: string): Promise<Shown> {
  const { outcome, title } = planned(bot, place, session);
  for (const one of await pagesOf(bot, place, outcome, { title, head: title, mayAttach: true })) {
    const sent = await bot.direct.sendTo(place.user, one);
    if (sent.kind === 'closed')
      throw new Aside(
        'Your direct messages are closed to me, so I cannot send it. The file below your plan holds all of it, and /fit plan shows it again at any time.',
      );
    if (sent.kind === 'failed') {
      bot.parts.log.warn('not sent', factsOf(sent.error));
      throw new Aside('Discord did not take the message. Your plan is kept. Please try again in a minute.');
    }
  }
  throw new Aside('I have sent it to your direct messages.');
}

async function pagesOf(
  bot: Bot,
  place: Place,
  outcome: Outcome,
  { title, head, mayAttach }: { readonly title: string; readonly head: string; readonly mayAttach: boolean },
): Promise<Page[]> {
  const whole = outcomeText(outcome, { dialect: dialectFor(bot, place), workings: false });
  const drawn = await drawnOf(bot, place, outcome, title);
  const parts = planParts(whole);
  return parts.map((part, n) => {
    const above = parts.length > 1 ? `${head} · part ${n + 1} of ${parts.length}` : head;
    const { pictures, documents } = mayAttach
      ? partFiles(whole, n + 1, drawn)
      : { pictures: [], documents: [] };
    return page(
      [text(`-# ${asTyped(above)}`), text(part), ...fileParts({ pictures, documents })],
      [...pictures, ...documents],
    );
  });
}

function withoutBody(outcome: Outcome): Outcome {
  return outcome.kind === 'plan' ? { kind: 'plan', plan: garmentOnly(outcome.plan) } : outcome;
}

/** Throws Aside where the interview has come to no plan, or no longer has one. */
function planned(bot: Bot, place: Place, session: string): { outcome: Outcome; title: string } {
  const last = resumed(bot, place, session).findLast((reply) => reply.reply !== 'say');
  if (last?.reply !== 'outcome')
    throw new Aside('An answer of this plan is being changed. Finish it first: /fit go-on');
  return { outcome: last.outcome, title: interviewOf(bot, place, session).title };
}
