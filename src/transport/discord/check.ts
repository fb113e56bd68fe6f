/** Looks at everything that the bot needs, and says in plain words what is missing and what to do. */
import { accessSync, constants, existsSync, mkdirSync } from 'node:fs';
import { DiscordAPIError, type REST, Routes } from 'discord.js';
import type { Command } from './commands.ts';
import { type Health, readHealth, TOO_OLD } from './health.ts';
import { areRegistered, restFor } from './registering.ts';

/** `lacks`: the bot cannot work so. `note`: it can, but somebody should know. */
export interface Finding {
  readonly kind: 'fine' | 'note' | 'lacks';
  readonly says: string;
}

export interface Checked {
  readonly token: string;
  readonly application: string;
  readonly api: string;
  readonly data: string;
  readonly commands: readonly Command[];
  readonly now: number;
}

export async function checkDiscord(checked: Checked): Promise<Finding[]> {
  return [checkFolder(checked.data), ...(await checkAccount(checked)), checkRunning(checked)];
}

function checkFolder(data: string): Finding {
  try {
    mkdirSync(data, { recursive: true, mode: 0o700 });
    accessSync(data, constants.R_OK | constants.W_OK | constants.X_OK);
    return { kind: 'fine', says: `The folder ${data} can be written.` };
  } catch {
    return {
      kind: 'lacks',
      says: `The folder ${data} cannot be written. Make it, give it to the user that runs the bot, or name another in EASEWRIGHT_DATA.`,
    };
  }
}

async function checkAccount(checked: Checked): Promise<Finding[]> {
  const rest = restFor(checked.api, checked.token);
  try {
    const { id } = (await rest.get(Routes.currentApplication())) as { id: string };
    const fine: Finding = { kind: 'fine', says: 'Discord takes the token.' };
    if (id !== checked.application) {
      const says = `EASEWRIGHT_DISCORD_APPLICATION is ${checked.application}, but the token belongs to the application ${id}. Set it to that, or copy the token again.`;
      return [fine, { kind: 'lacks', says }];
    }
    return [fine, await checkCommands(rest, checked)];
  } catch (error) {
    return [{ kind: 'lacks', says: whyNot(error) }];
  }
}

/** Why Discord gave no answer, and what a host can do. */
export function whyNot(error: unknown): string {
  if (error instanceof DiscordAPIError && error.status === 401)
    return 'Discord refuses the token. Make a new one in the developer portal (Bot, Reset Token) and put it into EASEWRIGHT_DISCORD_TOKEN.';
  if (error instanceof DiscordAPIError)
    return `Discord refuses to answer (${error.status}, code ${error.code}).`;
  return 'Discord cannot be reached from this machine. Is it on the internet, and may it open web pages?';
}

async function checkCommands(rest: REST, { application, commands }: Checked): Promise<Finding> {
  if (await areRegistered(rest, application, commands))
    return { kind: 'fine', says: 'The commands are registered, as this version has them.' };
  return {
    kind: 'lacks',
    says: 'The commands are not registered, or are those of another version. Run: npm run discord:commands',
  };
}

function checkRunning({ data, now }: Checked): Finding {
  const processes = existsSync(data) ? readHealth(data) : [];
  const alive = processes.filter(({ at }) => now - at < TOO_OLD);
  if (alive.length === 0)
    return { kind: 'note', says: 'The bot is not running. To start it: npm run discord' };
  const ill = alive.filter(({ line }) => line !== 'ready');
  if (ill.length === 0) return { kind: 'fine', says: `The bot is running and connected (${count(alive)}).` };
  return {
    kind: 'note',
    says: `The bot is running but not connected (${ill.map(({ line, shard }) => `part ${shard.id + 1} of ${shard.of}: ${line}`).join(', ')}). It goes on trying.`,
  };
}

function count(processes: readonly Health[]): string {
  return processes.length === 1 ? '1 process' : `${processes.length} processes`;
}
