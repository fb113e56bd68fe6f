/** The commands the app registered, and where a person can use them. */
import { type JsonObject, numberIn, textIn } from './json.ts';
import { tooManyCreations } from './refusal.ts';
import { newId } from './snowflake.ts';
import { type Account, appIsIn, type Channel, CONTEXT_NUMBER } from './world.ts';

/** New commands in one day, globally and per server (error 30034). */
const CREATIONS_A_DAY = 200;

export interface RegisteredCommand {
  readonly id: string;
  readonly type: number;
  readonly name: string;
  readonly definition: JsonObject;
  readonly guildId: string | undefined;
}

export class Registry {
  private readonly scopes = new Map<string, readonly RegisteredCommand[]>();
  private readonly creations = new Map<string, number>();

  /** Puts a list in place of the old one; a command that keeps type and name keeps its id. */
  replace(guildId: string | undefined, definitions: readonly JsonObject[]): readonly RegisteredCommand[] {
    const scope = guildId ?? 'global';
    const before = this.list(guildId);
    const next = definitions.map((definition) => {
      const type = numberIn(definition, 'type') ?? 1;
      const name = textIn(definition, 'name');
      const known = before.find((command) => command.type === type && command.name === name);
      return { id: known?.id ?? newId(), type, name, definition, guildId };
    });
    const old = new Set(before.map((command) => command.id));
    const created = (this.creations.get(scope) ?? 0) + next.filter((command) => !old.has(command.id)).length;
    if (created > CREATIONS_A_DAY) throw tooManyCreations();
    this.creations.set(scope, created);
    this.scopes.set(scope, next);
    return next;
  }

  list(guildId: string | undefined): readonly RegisteredCommand[] {
    return this.scopes.get(guildId ?? 'global') ?? [];
  }

  /** The chat command of this name that a person can use in a channel, the server's own before the global one. */
  usable(name: string, by: Account, channel: Channel): RegisteredCommand | undefined {
    const candidates = [...(channel.guild ? this.list(channel.guild.id) : []), ...this.list(undefined)];
    return candidates.find(
      (command) => command.type === 1 && command.name === name && isUsable(command, by, channel),
    );
  }
}

function isUsable(command: RegisteredCommand, by: Account, channel: Channel): boolean {
  if (command.guildId !== undefined) return channel.guild?.hasApp ?? false;
  const { contexts } = command.definition;
  if (Array.isArray(contexts) && !contexts.includes(CONTEXT_NUMBER[channel.context])) return false;
  return Object.keys(owners(by, channel, installTypes(command))).length > 0;
}

/** How a command may be installed: 0 in servers (the default), 1 by people. */
function installTypes(command: RegisteredCommand): readonly unknown[] {
  const types = command.definition.integration_types;
  return Array.isArray(types) ? types : [0];
}

/**
 * By whose leave the app acts here, as interactions carry it: '0' a server's id ('0' in a direct message
 * with the app), '1' a person's. Page `interactions/receiving-and-responding`.
 */
export function owners(by: Account, channel: Channel, types: readonly unknown[] = [0, 1]): JsonObject {
  const byServer = types.includes(0) && appIsIn(channel);
  const byPerson = types.includes(1) && by.hasApp;
  return {
    ...(byServer && { '0': channel.guild?.id ?? '0' }),
    ...(byPerson && { '1': by.id }),
  };
}
