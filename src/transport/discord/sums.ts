/** One sum in one line: the options of a command answered at once, with the workings, for all to see. */
import type { ChatInputCommandInteraction } from 'discord.js';
import type { CompiledFlow } from '../../flow/compile.ts';
import { outcomeText } from '../../present/plan-text.ts';
import { type Bot, dialectFor, type Place, unitFor, untold } from './bot.ts';
import { hostOf, isPublic, offers } from './host.ts';
import { note, type Page, page, type Seen, text } from './page.ts';
import type { AtOnce } from './parts.ts';
import { planParts } from './plan-page.ts';
import { nameOf, type SumOption, sumFlows, sumOptions } from './sums-options.ts';
import { asTyped } from './typed.ts';

/**
 * Nothing is kept, and a sum takes a few milliseconds: it is answered whole, as the first act. What is refused, or may
 * not be public here, she alone sees.
 */
export async function answerSum(bot: Bot, place: Place, i: ChatInputCommandInteraction): Promise<void> {
  const name = i.options.getSubcommand();
  const flow = sumFlows(bot.parts.flows)
    .find(({ file }) => nameOf(file.id) === name)
    ?.inTerms(dialectFor(bot, place));
  if (flow === undefined || !offers(hostOf(bot.parts.chat, place.guild), flow.file.id))
    return reply(bot, i, [note('This sum is not offered here. To see what is: /fit help')], 'by her alone');
  const options = sumOptions(flow);
  const given = new Map(options.map((option) => [option, i.options.getString(option.name)?.trim() ?? '']));
  const result = bot.parts.atOnce(flow, asScript(flow, given, unitFor(bot, place)));
  if (result.result !== 'outcome') return reply(bot, i, [notAnswered(result, options)], 'by her alone');
  const whole = outcomeText(result.outcome, { dialect: dialectFor(bot, place), workings: true });
  const asked = [...given].flatMap(([{ question }, typed]) =>
    typed === '' ? [] : [`${question.short}: ${typed}`],
  );
  const allowed =
    place.direct || isPublic(hostOf(bot.parts.chat, place.guild), bot.threads.homeOf(place.channel));
  const title = `-# ${asTyped(`${flow.file.title} · ${asked.join(' · ')}`)}`;
  const pages = planParts(whole).map((part, n) => page([...(n === 0 ? [text(title)] : []), text(part)]));
  const hidden = page([text('-# The hosts of this server keep answers in public to other channels.')]);
  await reply(bot, i, allowed ? pages : [...pages, hidden], allowed ? 'by all' : 'by her alone');
}

async function reply(
  bot: Bot,
  i: ChatInputCommandInteraction,
  pages: readonly Page[],
  seen: Seen,
): Promise<void> {
  const [first, ...rest] = pages;
  if (first === undefined) return;
  const answered = await bot.answers.reply(i, first, seen);
  if (answered.kind !== 'taken') return untold(bot, 'sum not shown', i, answered);
  for (const more of rest) await bot.answers.followUp(i, more, seen);
}

/** What is typed at each question. What was left out is not known; where nothing can stand in, it stays open. */
function asScript(
  { questions }: CompiledFlow,
  given: ReadonlyMap<SumOption, string>,
  unit: string | null,
): Record<string, readonly string[]> {
  const typed = [...given].flatMap(([{ id, question }, text]): [string, string[]][] => {
    if (text !== '') return [[id, [text]]];
    return 'use' in question.unknown ? [[id, ["I don't know"]]] : [];
  });
  const own: [string, string[]][] = unit !== null && questions.has('unit') ? [['unit', [unit]]] : [];
  const chosen = [...given].some(([{ id }, text]) => id === 'unit' && text !== '');
  return Object.fromEntries(chosen ? typed : [...typed, ...own]);
}

function notAnswered(result: Exclude<AtOnce, { result: 'outcome' }>, options: readonly SumOption[]): Page {
  const nameFor = (id: string) => options.find((option) => option.id === id)?.name ?? id;
  const lines =
    result.result === 'refused'
      ? result.refused.map(
          ({ question, answer, reason }) => `${nameFor(question)}: '${answer}' was not taken. ${reason}`,
        )
      : result.open.map(({ question, ask }) => `${nameFor(question)}: ${ask}`);
  return note(asTyped(lines.join('\n')));
}
