/** The settings of a server, for those who may manage it: every choice is saved as it is made. */
import { ChannelType, ComponentType, SelectMenuDefaultValueType } from 'discord.js';
import type { Bot } from './bot.ts';
import { makeId } from './custom-id.ts';
import { type HostSettings, hostOf, keepHost, type PublicIn } from './host.ts';
import { SELECT_OPTIONS } from './limits.ts';
import { type Choice, lists, type Page, page, row, text } from './page.ts';

const SET = {
  unit: 'unit',
  terms: 'terms',
  chapters: 'chapters',
  where: 'where',
  channels: 'channels',
} as const;
const NONE = 'none';
const ONLY = 'only';

export function hostPage(bot: Bot, guild: string, said = ''): Page {
  const now = hostOf(bot.parts.chat, guild);
  const list = (what: string, choices: readonly Choice[], hint: string, many = { least: 1, most: 1 }) =>
    lists(choices, { id: (n) => makeId('host', '', '', `${what} ${n}`), hint, ...many });
  const chapters = bot.parts.desk.flows().map(({ id, title }) => ({
    label: title,
    value: id,
    chosen: now.chapters === null || now.chapters.includes(id),
  }));
  return page([
    ...(said === '' ? [] : [text(said)]),
    text(
      '**Settings of this server**\nEach choice is saved at once. Interviews are always private; what each person has chosen for herself goes before.',
    ),
    text('Units and terms for those who have chosen none:'),
    ...list(SET.unit, units(now), 'Units'),
    ...list(SET.terms, terms(now), 'Terms'),
    text('Chapters on offer in this server:'),
    ...list(SET.chapters, chapters, 'Chapters', { least: 0, most: chapters.length }),
    text('Where sums and shared plans may be seen by all:'),
    ...list(SET.where, where(now), 'Public answers'),
    ...(Array.isArray(now.public) ? [channels(now.public)] : []),
  ]);
}

/** Changes one setting to what was picked, and keeps it. */
export function hostSet(bot: Bot, guild: string, what: string, picked: readonly string[]): Page {
  const now = hostOf(bot.parts.chat, guild);
  keepHost(bot.parts.chat, guild, changed(bot, now, what, picked));
  return hostPage(bot, guild, 'Saved.');
}

function changed(bot: Bot, now: HostSettings, what: string, picked: readonly string[]): HostSettings {
  const [one] = picked;
  const [setting, list] = what.split(' ');
  switch (setting) {
    case SET.unit:
      return { ...now, unit: one === 'cm' || one === 'in' ? one : null };
    case SET.terms:
      return { ...now, terms: one === 'us' || one === 'uk' ? one : null };
    case SET.chapters: {
      const all = bot.parts.desk.flows().map(({ id }) => id);
      const listed = all.slice(Number(list) * SELECT_OPTIONS, (Number(list) + 1) * SELECT_OPTIONS);
      const unlisted = (now.chapters ?? all).filter((id) => !listed.includes(id));
      const chapters = [...unlisted, ...picked];
      return { ...now, chapters: all.every((id) => chapters.includes(id)) ? null : chapters };
    }
    case SET.where:
      return { ...now, public: publicIn(now, one) };
    case SET.channels:
      return { ...now, public: picked };
    default:
      return now;
  }
}

function publicIn({ public: before }: HostSettings, picked: string | undefined): PublicIn {
  if (picked === 'everywhere' || picked === 'nowhere') return picked;
  return Array.isArray(before) ? before : [];
}

function units({ unit }: HostSettings): Choice[] {
  return [
    { label: 'Centimetres', value: 'cm', chosen: unit === 'cm' },
    { label: 'Inches', value: 'in', chosen: unit === 'in' },
    { label: 'Ask each person', value: NONE, chosen: unit === null },
  ];
}

function terms({ terms: now }: HostSettings): Choice[] {
  return [
    { label: 'bind off, gauge (US)', value: 'us', chosen: now === 'us' },
    { label: 'cast off, tension (UK)', value: 'uk', chosen: now === 'uk' },
    { label: 'As is usual here', value: NONE, chosen: now === null },
  ];
}

function where({ public: now }: HostSettings): Choice[] {
  return [
    { label: 'In every channel', value: 'everywhere', chosen: now === 'everywhere' },
    { label: 'Only in channels that I pick', value: ONLY, chosen: Array.isArray(now) },
    { label: 'Nowhere: always by the asker alone', value: 'nowhere', chosen: now === 'nowhere' },
  ];
}

function channels(chosen: readonly string[]) {
  return row([
    {
      type: ComponentType.ChannelSelect,
      custom_id: makeId('host', '', '', SET.channels),
      placeholder: 'Channels for public answers',
      channel_types: [ChannelType.GuildText, ChannelType.GuildForum, ChannelType.GuildAnnouncement],
      default_values: chosen
        .slice(0, SELECT_OPTIONS)
        .map((id) => ({ id, type: SelectMenuDefaultValueType.Channel })),
      min_values: 0,
      max_values: SELECT_OPTIONS,
    },
  ]);
}
