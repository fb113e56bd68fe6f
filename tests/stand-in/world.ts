/** The servers, channels and people of the stand-in, before anything is said. */
import { newId } from './snowflake.ts';

export interface Account {
  readonly id: string;
  readonly name: string;
  readonly isApp: boolean;
  /** Language of the person's client. */
  readonly locale: string;
  /** Whether the app may open and fill a direct message with her. */
  takesDirectMessages: boolean;
  /** Whether she added the app to her own account (user install). */
  hasApp: boolean;
  /** What she may do in servers, as permission bits. */
  permissions: bigint;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  readonly locale: string;
  /** Whether the app was added to this server (guild install). */
  readonly hasApp: boolean;
  readonly channels: Channel[];
}

/** Where talk takes place: a server's channel, the direct message with the app, or one without it. */
export type Context = 'guild' | 'bot dm' | 'private channel';

/** The platform's numbers for the contexts of an interaction. */
export const CONTEXT_NUMBER: Readonly<Record<Context, 0 | 1 | 2>> = {
  guild: 0,
  'bot dm': 1,
  'private channel': 2,
};

export interface Channel {
  readonly id: string;
  readonly name: string;
  readonly context: Context;
  readonly guild: Guild | undefined;
  /** The people of a direct message or group; empty in a server's channel, which everyone reads. */
  readonly people: readonly Account[];
  /** What the app may do here, as permission bits. */
  appPermissions: bigint;
}

/** Permissions of the page `topics/permissions` that this stand-in looks at. */
const PERMISSIONS = {
  'view channel': 1n << 10n,
  'send messages': 1n << 11n,
  'embed links': 1n << 14n,
  'attach files': 1n << 15n,
  'read history': 1n << 16n,
} as const;
export type Permission = keyof typeof PERMISSIONS;

/** A member's permissions in a new server, without those of its hosts. */
const USUAL_PERMISSIONS = 2248473465835073n;

const ALL_OF_THEM = Object.values(PERMISSIONS).reduce((all, bit) => all | bit, 0n);

export class World {
  readonly appId = newId();
  readonly token = `${Buffer.from(this.appId).toString('base64url')}.stand.in`;
  readonly guilds = new Map<string, Guild>();
  readonly channels = new Map<string, Channel>();
  readonly accounts = new Map<string, Account>();
  private readonly botDms = new Map<string, Channel>();

  /** The app's own account; on the platform its id is that of the application. */
  readonly bot: Account = {
    id: this.appId,
    name: 'the app',
    isApp: true,
    locale: 'en-US',
    takesDirectMessages: false,
    hasApp: false,
    permissions: USUAL_PERMISSIONS,
  };

  addGuild(name: string, { hasApp = true, locale = 'en-US' } = {}): Guild {
    const guild: Guild = { id: newId(), name, locale, hasApp, channels: [] };
    this.guilds.set(guild.id, guild);
    this.addChannel(guild, 'general');
    return guild;
  }

  addChannel(guild: Guild, name: string): Channel {
    const channel = this.keep({ name, context: 'guild', guild, people: [] });
    guild.channels.push(channel);
    return channel;
  }

  addAccount(name: string, locale: string): Account {
    const account: Account = {
      id: newId(),
      name,
      isApp: false,
      locale,
      takesDirectMessages: true,
      hasApp: false,
      permissions: USUAL_PERMISSIONS,
    };
    this.accounts.set(account.id, account);
    return account;
  }

  /** The direct message of one person with the app, the same one every time. */
  botDm(account: Account): Channel {
    const known = this.botDms.get(account.id);
    if (known) return known;
    const channel = this.keep({ name: '', context: 'bot dm', guild: undefined, people: [account] });
    this.botDms.set(account.id, channel);
    return channel;
  }

  /** A direct message (two people) or a group (more) that the app is not in. */
  privateChannel(people: readonly Account[]): Channel {
    return this.keep({ name: '', context: 'private channel', guild: undefined, people });
  }

  private keep(part: Omit<Channel, 'id' | 'appPermissions'>): Channel {
    const channel: Channel = { id: newId(), appPermissions: ALL_OF_THEM, ...part };
    this.channels.set(channel.id, channel);
    return channel;
  }
}

/** Whether the app is in the channel with its own account, so that it may write there unasked. */
export function appIsIn(channel: Channel): boolean {
  return channel.context === 'bot dm' || (channel.guild?.hasApp ?? false);
}

/** Takes a permission away from the app in one channel. */
export function forbid(channel: Channel, permission: Permission): void {
  channel.appPermissions &= ~PERMISSIONS[permission];
}

export function allow(channel: Channel, permission: Permission): void {
  channel.appPermissions |= PERMISSIONS[permission];
}

export function isAllowed(channel: Channel, permission: Permission): boolean {
  return (channel.appPermissions & PERMISSIONS[permission]) !== 0n;
}
