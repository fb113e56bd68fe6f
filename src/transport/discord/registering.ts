/** Registers the commands with Discord, and only where they differ from those that are registered. */
import {
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  REST,
  Routes,
} from 'discord.js';
import type { Command } from './commands.ts';

/** A client for requests with the bot's token. */
export function restFor(api: string, token: string): REST {
  return new REST({ api, version: '10' }).setToken(token);
}

export type Registration = 'registered' | 'unchanged';

/** Throws what the library throws where Discord cannot be reached, or refuses. */
export async function register(
  rest: REST,
  application: string,
  commands: readonly Command[],
): Promise<Registration> {
  if (await areRegistered(rest, application, commands)) return 'unchanged';
  await rest.put(Routes.applicationCommands(application), { body: commands });
  return 'registered';
}

export async function areRegistered(
  rest: REST,
  application: string,
  commands: readonly Command[],
): Promise<boolean> {
  const there = await rest.get(Routes.applicationCommands(application));
  return canonical(there) === canonical(commands);
}

/** Keys that the platform adds and we do not set. */
const ADDED = new Set([
  'id',
  'application_id',
  'version',
  'guild_id',
  'dm_permission',
  'name_localized',
  'description_localized',
]);

/** What a key means where it is left out (interactions/application-commands). */
const LEFT_OUT: Readonly<Record<string, unknown>> = {
  type: ApplicationCommandType.ChatInput,
  nsfw: false,
  required: false,
  autocomplete: false,
  default_member_permissions: null,
  name_localizations: null,
  description_localizations: null,
  handler: null,
  contexts: [
    InteractionContextType.Guild,
    InteractionContextType.BotDM,
    InteractionContextType.PrivateChannel,
  ],
  integration_types: [ApplicationIntegrationType.GuildInstall],
};

/** Two lists of commands that mean the same are written the same. */
function canonical(commands: unknown): string {
  const list = Array.isArray(commands) ? commands : [];
  return JSON.stringify(list.map(withoutDefaults).sort(byText));
}

function withoutDefaults(part: unknown): unknown {
  if (Array.isArray(part)) return part.every(isNumber) ? sorted(part) : part.map(withoutDefaults);
  if (typeof part !== 'object' || part === null) return part;
  const kept = Object.entries(part)
    .filter(([key, value]) => !ADDED.has(key) && !isDefault(key, value))
    .map(([key, value]): [string, unknown] => [key, withoutDefaults(value)]);
  return Object.fromEntries(kept.sort(([a], [b]) => a.localeCompare(b)));
}

function isDefault(key: string, value: unknown): boolean {
  if (Array.isArray(value) && value.length === 0) return true;
  return key in LEFT_OUT && JSON.stringify(sorted(value)) === JSON.stringify(sorted(LEFT_OUT[key]));
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number';
}

/** The order of contexts and of ways to install means nothing. */
function sorted(value: unknown): unknown {
  return Array.isArray(value) ? [...value].sort() : value;
}

function byText(a: unknown, b: unknown): number {
  return JSON.stringify(a).localeCompare(JSON.stringify(b));
}
