/** What the hosts of a server may set: units and terms that come first, chapters on offer, where answers may be public. */
import * as z from 'zod';
import { LENGTH_UNITS } from '../../fit/units.ts';
import { DIALECTS } from '../../present/terms.ts';
import type { Chat } from './parts.ts';

export interface HostSettings {
  readonly unit: (typeof LENGTH_UNITS)[number] | null;
  readonly terms: (typeof DIALECTS)[number] | null;
  /** Ids of flows; null: all of them. */
  readonly chapters: readonly string[] | null;
  readonly public: PublicIn;
}

/** Where answers may be seen by all; a list holds ids of channels. */
export type PublicIn = 'everywhere' | 'nowhere' | readonly string[];

export const NOTHING_SET: HostSettings = { unit: null, terms: null, chapters: null, public: 'everywhere' };

const settings = z.strictObject({
  unit: z.enum(LENGTH_UNITS).nullable(),
  terms: z.enum(DIALECTS).nullable(),
  chapters: z.array(z.string()).nullable(),
  public: z.union([z.enum(['everywhere', 'nowhere']), z.array(z.string())]),
});

/** `guild` null: not in a server, where nobody has set anything. Settings that cannot be read count as not set. */
export function hostOf(chat: Pick<Chat, 'hostOf'>, guild: string | null): HostSettings {
  const stored = guild === null ? undefined : chat.hostOf(guild);
  if (stored === undefined) return NOTHING_SET;
  const read = settings.safeParse(JSON.parse(stored));
  return read.success ? read.data : NOTHING_SET;
}

export function keepHost(chat: Pick<Chat, 'setHost'>, guild: string, kept: HostSettings): void {
  chat.setHost(guild, JSON.stringify(kept));
}

export function isPublic({ public: where }: HostSettings, channel: string): boolean {
  if (where === 'everywhere') return true;
  return where !== 'nowhere' && where.includes(channel);
}

export function offers({ chapters }: HostSettings, flow: string): boolean {
  return chapters === null || chapters.includes(flow);
}
