/** Messages as they stand in their channels, and who can see them. */
import type { JsonObject } from './json.ts';
import { EPHEMERAL } from './rules/messages.ts';
import { newId } from './snowflake.ts';
import type { Account, Channel } from './world.ts';

/** Message flag of a deferred reply that has not been filled in. */
export const LOADING = 1 << 7;

export interface Attachment {
  readonly id: string;
  readonly filename: string;
  readonly contentType: string;
  readonly description: string | undefined;
  readonly bytes: Uint8Array;
}

/** One state of a message; an edit makes a new one with the same id and a higher version. */
export interface Message {
  readonly id: string;
  readonly channel: Channel;
  readonly author: Account;
  readonly content: string;
  readonly embeds: readonly JsonObject[];
  readonly components: readonly JsonObject[];
  readonly attachments: readonly Attachment[];
  readonly flags: number;
  readonly version: number;
  readonly editedAt: number | undefined;
  /** The only person who sees an ephemeral message. */
  readonly onlyFor: Account | undefined;
  /** The interaction this message answers. */
  readonly interactionId: string | undefined;
  readonly replyTo: string | undefined;
}

export type Draft = Omit<Message, 'id' | 'version' | 'editedAt'>;
export type Edit = Pick<Message, 'content' | 'embeds' | 'components' | 'attachments' | 'flags'>;

export interface Change {
  readonly kind: 'posted' | 'edited' | 'removed';
  readonly message: Message;
}
type Listener = (change: Change) => void;

/** A channel's messages: all by id, and apart what everyone sees and what one person alone sees. */
interface Shelf {
  readonly all: Map<string, Message>;
  readonly open: Map<string, Message>;
  readonly ephemeral: Map<string, Map<string, Message>>;
  readonly listeners: Set<Listener>;
}

export class Messages {
  private readonly shelves = new Map<string, Shelf>();
  private readonly files = new Map<string, Attachment>();
  private readonly tellApp: Listener;

  /** `tellApp` hears of every change that the platform tells the app (ephemeral messages it does not). */
  constructor(tellApp: Listener) {
    this.tellApp = tellApp;
  }

  post(draft: Draft): Message {
    const message: Message = { ...draft, id: newId(), version: 1, editedAt: undefined };
    const shelf = this.shelf(message.channel);
    shelf.all.set(message.id, message);
    this.seenBy(shelf, message).set(message.id, message);
    this.tell({ kind: 'posted', message });
    return message;
  }

  edit(before: Message, edit: Edit): Message {
    const message: Message = { ...before, ...edit, version: before.version + 1, editedAt: Date.now() };
    const shelf = this.shelf(message.channel);
    shelf.all.set(message.id, message);
    const seen = this.seenBy(shelf, message);
    // An ephemeral message that vanished from the person's view stays out of it.
    if (seen.has(message.id)) seen.set(message.id, message);
    this.tell({ kind: 'edited', message });
    return message;
  }

  remove(message: Message): void {
    const shelf = this.shelf(message.channel);
    shelf.all.delete(message.id);
    this.seenBy(shelf, message).delete(message.id);
    this.tell({ kind: 'removed', message });
  }

  /** A file of a message, or one a person gave to a command or form, by its id. */
  file(id: string): Attachment | undefined {
    return this.files.get(id);
  }

  keepFile(file: Attachment): void {
    this.files.set(file.id, file);
  }

  find(channel: Channel, id: string): Message | undefined {
    return this.shelf(channel).all.get(id);
  }

  /** What a person sees in a channel now: what is open to all, then what only she sees, each oldest first. */
  visibleTo(account: Account, channel: Channel): Message[] {
    const shelf = this.shelf(channel);
    return [...shelf.open.values(), ...(shelf.ephemeral.get(account.id)?.values() ?? [])];
  }

  /** One message as a person sees it now, or undefined where it is gone for her. */
  seen(account: Account, { channel, id }: Message): Message | undefined {
    const shelf = this.shelf(channel);
    return shelf.open.get(id) ?? shelf.ephemeral.get(account.id)?.get(id);
  }

  /** All ephemeral messages leave the person's view, as after a restart of her client. */
  vanishFor(account: Account): void {
    for (const shelf of this.shelves.values()) shelf.ephemeral.delete(account.id);
  }

  /** Hears every change in a channel until the returned function is called. */
  listen(channel: Channel, listener: Listener): () => void {
    const { listeners } = this.shelf(channel);
    listeners.add(listener);
    return () => listeners.delete(listener);
  }

  private tell(change: Change): void {
    for (const file of change.message.attachments) this.keepFile(file);
    if (!change.message.onlyFor) this.tellApp(change);
    for (const listener of [...this.shelf(change.message.channel).listeners]) listener(change);
  }

  private seenBy(shelf: Shelf, message: Message): Map<string, Message> {
    if (!message.onlyFor) return shelf.open;
    const known = shelf.ephemeral.get(message.onlyFor.id);
    if (known) return known;
    const mine = new Map<string, Message>();
    shelf.ephemeral.set(message.onlyFor.id, mine);
    return mine;
  }

  private shelf(channel: Channel): Shelf {
    const known = this.shelves.get(channel.id);
    if (known) return known;
    const shelf: Shelf = { all: new Map(), open: new Map(), ephemeral: new Map(), listeners: new Set() };
    this.shelves.set(channel.id, shelf);
    return shelf;
  }
}

export function isEphemeral(message: Message): boolean {
  return (message.flags & EPHEMERAL) !== 0;
}
