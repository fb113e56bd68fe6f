/** What people put into a command or a form, beside plain text and numbers. */
import type { JsonObject } from './json.ts';
import type { Attachment, Messages } from './messages.ts';
import { newId } from './snowflake.ts';
import { channelOnWire, memberOnWire, userOnWire } from './wire.ts';
import type { Account, Channel, World } from './world.ts';

/** A test asked for something a person's client would not let her do. */
export class NotPossible extends Error {}

/** A file from a person's device. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly contentType?: string;
}

/** Collects people, channels and files that an interaction's data speaks of by id. */
export class Resolved {
  private readonly world: World;
  private readonly messages: Messages;
  private readonly cdn: string;
  private readonly channel: Channel;
  private readonly found = new Map<string, Record<string, JsonObject>>();

  constructor(world: World, messages: Messages, cdn: string, channel: Channel) {
    this.world = world;
    this.messages = messages;
    this.cdn = cdn;
    this.channel = channel;
  }

  /** Notes a person, server channel or the everyone role by id; any other id is not possible. */
  mention(id: string): string {
    const account = this.world.accounts.get(id);
    const channel = this.world.channels.get(id);
    const isEveryone = this.channel.guild?.id === id;
    if (account) this.person(account);
    else if (channel) this.note('channels', id, { ...channelOnWire(channel), permissions: '0' });
    else if (isEveryone) this.note('roles', id, { id, name: '@everyone', permissions: '0', position: 0 });
    else throw new NotPossible(`No person, channel or role has the id ${id}.`);
    return id;
  }

  /** Uploads a file and notes it. */
  upload(file: GivenFile): string {
    const kept = keptFile(file);
    this.messages.keepFile(kept);
    const url = `${this.cdn}/attachments/${this.channel.id}/${kept.id}/${kept.filename}`;
    this.note('attachments', kept.id, {
      id: kept.id,
      filename: kept.filename,
      size: kept.bytes.length,
      content_type: kept.contentType,
      url,
      proxy_url: url,
      ephemeral: true,
    });
    return kept.id;
  }

  /** The `resolved` part of the data, absent when nothing was noted. */
  onWire(): JsonObject {
    return this.found.size === 0 ? {} : { resolved: Object.fromEntries(this.found) };
  }

  private person(account: Account): void {
    this.note('users', account.id, userOnWire(account));
    const { user: _, deaf: __, mute: ___, ...member } = memberOnWire(account);
    if (this.channel.guild) this.note('members', account.id, member);
  }

  private note(kind: string, id: string, value: JsonObject): void {
    this.found.set(kind, { ...this.found.get(kind), [id]: value });
  }
}

export function keptFile(file: GivenFile): Attachment {
  return {
    id: newId(),
    filename: file.name,
    contentType: file.contentType ?? 'application/octet-stream',
    description: undefined,
    bytes: file.bytes,
  };
}
