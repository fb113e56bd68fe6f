/** What is offered while somebody types in a command: wishes, patterns, her own interviews and plans. */
import type { APIApplicationCommandOptionChoice, AutocompleteInteraction } from 'discord.js';
import { rankWishes } from '../../dialogue/wish.ts';
import type { Offered } from '../contract.ts';
import type { Bot, Place } from './bot.ts';
import { PATTERN } from './commands.ts';
import { interviewsOf, offered, practised } from './interviews.ts';
import { OPTION_TEXT, SELECT_OPTIONS } from './limits.ts';
import { wordOpen } from './menu.ts';
import { atMost } from './typed.ts';

/** Something that may be named in a command; `value` is what the command is then given. */
export interface Nameable {
  readonly value: string;
  readonly names: readonly string[];
}

export function completions(
  bot: Bot,
  place: Place,
  i: AutocompleteInteraction,
): APIApplicationCommandOptionChoice<string>[] {
  const { name, value } = i.options.getFocused(true);
  const all = nameable(bot, place, name);
  const found = matching(all, value);
  return (found.length === 0 && name === 'wish' ? meant(bot, place, value) : found)
    .slice(0, SELECT_OPTIONS)
    .map((one) => ({ name: atMost(one.names[0] ?? one.value, OPTION_TEXT), value: one.value }));
}

function nameable(bot: Bot, place: Place, option: string): Nameable[] {
  const opened = (all: ReturnType<typeof interviewsOf>['open']) =>
    all.map((one) => ({ value: one.session, names: [wordOpen(one)] }));
  switch (option) {
    case 'wish':
      return commonFirst(offered(bot, place)).map(asWish);
    case 'chapter':
      return practised(bot, place).map(({ id, title, wish }) => ({ value: id, names: [title, wish] }));
    case 'pattern':
      return patterns(bot);
    case 'interview':
      return opened(interviewsOf(bot, place).open);
    case 'which':
      return opened(interviewsOf(bot, place).plans);
    default:
      return [];
  }
}

/** No more are shown than fit. */
function commonFirst(all: readonly Offered[]): Offered[] {
  return all.toSorted((a, b) => Number(b.common) - Number(a.common));
}

/** Wishes that are likely meant by words of her own. */
function meant(bot: Bot, place: Place, typed: string): Nameable[] {
  return rankWishes(offered(bot, place), typed).map(({ wish }) => asWish(wish));
}

function asWish({ id, wish, title }: Offered): Nameable {
  return { value: id, names: [wish, title] };
}

/** Patterns that an interview knows, as the first flow that asks for one names them. */
function patterns({ parts }: Bot): Nameable[] {
  for (const { questions } of parts.flows.values()) {
    const choices = questions.get(PATTERN)?.choices;
    if (choices !== undefined) return choices.map(({ label }) => ({ value: label, names: [label] }));
  }
  return [];
}

/** Those with every word that was typed, in the order in which they are listed. */
function matching(all: readonly Nameable[], typed: string): Nameable[] {
  const words = typed.toLowerCase().split(/\s+/);
  return all.filter(({ names, value }) => {
    const text = [...names, value].join(' ').toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

/** What was meant: its own value, one of its names, or the only one that has all the words. */
export function named(all: readonly Nameable[], typed: string): string | undefined {
  const wanted = typed.trim().toLowerCase();
  const exact = all.find(({ value, names }) =>
    [value, ...names].some((name) => name.toLowerCase() === wanted),
  );
  const found = matching(all, wanted);
  return exact?.value ?? (found.length === 1 ? found[0]?.value : undefined);
}
