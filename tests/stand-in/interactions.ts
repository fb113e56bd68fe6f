/** What people did to the app, until when it may answer, and what came of it. */
import { randomUUID } from 'node:crypto';
import type { JsonObject } from './json.ts';
import { type Later, later } from './later.ts';
import type { Message } from './messages.ts';
import { alreadyAcknowledged, expiredToken, unknownInteraction, unknownWebhook } from './refusal.ts';
import type { CallbackType, Deed } from './rules/callbacks.ts';
import { newId } from './snowflake.ts';
import type { Account, Channel } from './world.ts';

/** The platform's number for what a person did. */
export const INTERACTION_TYPE: Readonly<Record<Deed, number>> = {
  command: 2,
  component: 3,
  autocomplete: 4,
  modal: 5,
  'modal from a message': 5,
};

/** 'This interaction failed': nothing acknowledged it in time. */
export class InteractionFailed extends Error {
  readonly interaction: Interaction;

  constructor(interaction: Interaction, withinMs: number) {
    super(`This interaction failed: no acknowledgement of the ${interaction.what} within ${withinMs} ms.`);
    this.interaction = interaction;
  }
}

/** The first thing that showed after a deed. A deferred update may end in a new message or in a change. */
export type Outcome =
  | { readonly kind: 'message'; readonly message: Message }
  | { readonly kind: 'update'; readonly message: Message }
  | { readonly kind: 'removed'; readonly message: Message }
  | { readonly kind: 'modal'; readonly modal: JsonObject }
  | { readonly kind: 'choices'; readonly choices: readonly JsonObject[] };

/** What is known when a person does something. */
export interface Opening {
  readonly deed: Deed;
  /** The deed in words, for error texts. */
  readonly what: string;
  readonly by: Account;
  readonly channel: Channel;
  /** The message a button or select stands on, or a modal was opened from. */
  readonly source: Message | undefined;
  readonly focusedType: number | undefined;
  /** Installed for the person alone, not in the server: only five follow-ups then. */
  readonly onlyUserInstalled: boolean;
}

export interface Interaction extends Opening {
  readonly id: string;
  readonly token: string;
  readonly openedAt: number;
  expiresAt: number;
  state: 'waiting' | 'acknowledged' | 'failed';
  /** Id of the message that `@original` names. */
  original: string | undefined;
  /** A deferred reply still to be filled in. */
  loading: boolean;
  followUps: number;
  /** Ids of the messages its token may edit. */
  readonly own: Set<string>;
  readonly acknowledged: Later<CallbackType>;
  readonly outcome: Later<Outcome>;
}

export interface InteractionTimes {
  readonly acknowledgeWithinMs: number;
  readonly tokenLifetimeMs: number;
}

export class Interactions {
  private readonly times: InteractionTimes;
  private readonly byToken = new Map<string, Interaction>();
  private readonly waiting = new Map<string, NodeJS.Timeout>();

  constructor(times: InteractionTimes) {
    this.times = times;
  }

  open(opening: Opening): Interaction {
    const now = Date.now();
    const interaction: Interaction = {
      ...opening,
      id: newId(),
      token: randomUUID().replaceAll('-', ''),
      openedAt: now,
      expiresAt: now + this.times.tokenLifetimeMs,
      state: 'waiting',
      original: undefined,
      loading: false,
      followUps: 0,
      own: new Set(),
      acknowledged: later(),
      outcome: later(),
    };
    this.byToken.set(interaction.token, interaction);
    const timer = setTimeout(() => this.fail(interaction), this.times.acknowledgeWithinMs);
    this.waiting.set(interaction.token, timer);
    return interaction;
  }

  /** The interaction a callback speaks of, whatever its state. */
  find(id: string, token: string): Interaction {
    const interaction = this.byToken.get(token);
    if (!interaction || interaction.id !== id) throw unknownInteraction();
    return interaction;
  }

  /** Refuses a late answer and a second one. */
  demandWaiting(interaction: Interaction): void {
    if (interaction.state === 'acknowledged') throw alreadyAcknowledged();
    if (interaction.state === 'failed') throw unknownInteraction();
  }

  /** Takes the first answer. */
  acknowledge(interaction: Interaction, type: CallbackType): void {
    this.demandWaiting(interaction);
    interaction.state = 'acknowledged';
    clearTimeout(this.waiting.get(interaction.token));
    this.waiting.delete(interaction.token);
    interaction.acknowledged.resolve(type);
  }

  /** The acknowledged interaction behind a webhook's address, as long as its token holds. */
  webhook(token: string): Interaction {
    const interaction = this.byToken.get(token);
    if (!interaction || interaction.state === 'failed') throw unknownWebhook();
    if (Date.now() > interaction.expiresAt) throw expiredToken();
    if (interaction.state === 'waiting') throw unknownWebhook();
    return interaction;
  }

  /** Tokens issued so far stop working, as after their fifteen minutes. */
  expireTokens(): void {
    const past = Date.now() - 1;
    for (const interaction of this.byToken.values()) interaction.expiresAt = past;
  }

  /** The time for a first answer is over for all that wait for one. */
  lapse(): void {
    for (const [token, timer] of this.waiting) {
      clearTimeout(timer);
      const interaction = this.byToken.get(token);
      if (interaction !== undefined) this.fail(interaction);
    }
  }

  close(): void {
    for (const timer of this.waiting.values()) clearTimeout(timer);
    this.waiting.clear();
  }

  private fail(interaction: Interaction): void {
    interaction.state = 'failed';
    this.waiting.delete(interaction.token);
    const failure = new InteractionFailed(interaction, this.times.acknowledgeWithinMs);
    interaction.acknowledged.reject(failure);
    interaction.outcome.reject(failure);
  }
}
