/**
 * Answers to what people did, by the token that came with it. On a client of their own: the platform does not count them
 * among the app's fifty requests a second (topics/rate-limits), and the library would.
 */
import { setTimeout as wait } from 'node:timers/promises';
import {
  type APIApplicationCommandOptionChoice,
  type APIMessage,
  type APIModalInteractionResponseCallbackData,
  DiscordAPIError,
  InteractionResponseType,
  MessageFlags,
  REST,
  RESTJSONErrorCodes,
  Routes,
  SnowflakeUtil,
} from 'discord.js';
import { type Page, payload, type Seen } from './page.ts';

/** A deed as far as it is answered. */
export interface Deed {
  readonly id: string;
  readonly token: string;
}

/**
 * What became of an answer. `gone`: the platform knows the deed, the message or the token no more; `refused`: it did not
 * take the answer; `unsure`: no word came back, it may have been taken.
 */
export type Answered =
  | { readonly kind: 'taken'; readonly shown: ShownAt | undefined }
  | { readonly kind: 'gone' | 'refused' | 'unsure'; readonly error: unknown };

/** A message, and when it came to be as it is, by Discord's clock; milliseconds since 1970. */
export interface ShownAt {
  readonly message: string;
  readonly at: number;
}

export function shownAt({ id, edited_timestamp: edited }: APIMessage): ShownAt {
  return { message: id, at: edited === null ? SnowflakeUtil.timestampFrom(id) : Date.parse(edited) };
}

/** Tries of a request that may be repeated, and the wait between them in milliseconds. */
const TRIES = 3;
const PAUSE = 250;

/** Codes that say: too late, or no longer there (topics/opcodes-and-status-codes). */
const GONE: ReadonlySet<unknown> = new Set([
  RESTJSONErrorCodes.UnknownInteraction,
  RESTJSONErrorCodes.UnknownWebhook,
  RESTJSONErrorCodes.UnknownMessage,
  RESTJSONErrorCodes.InvalidWebhookToken,
]);

export class Answers {
  private readonly rest: REST;
  private readonly application: string;

  constructor(api: string, application: string) {
    this.rest = new REST({ api, version: '10', globalRequestsPerSecond: Number.POSITIVE_INFINITY });
    this.application = application;
  }

  /** Says at once that the deed was heard; what comes of it is shown by `edit`. */
  acknowledge(deed: Deed, as: 'update' | Seen): Promise<Answered> {
    if (as === 'update') return this.callback(deed, { type: InteractionResponseType.DeferredMessageUpdate });
    const flags = as === 'by all' ? 0 : MessageFlags.Ephemeral;
    const type = InteractionResponseType.DeferredChannelMessageWithSource;
    return this.callback(deed, { type, data: { flags } });
  }

  /** A whole answer at once. */
  reply(deed: Deed, page: Page, seen: Seen): Promise<Answered> {
    const { body, files } = payload(page, seen);
    return this.callback(deed, { type: InteractionResponseType.ChannelMessageWithSource, data: body }, files);
  }

  openForm(deed: Deed, form: APIModalInteractionResponseCallbackData): Promise<Answered> {
    return this.callback(deed, { type: InteractionResponseType.Modal, data: form });
  }

  complete(deed: Deed, choices: readonly APIApplicationCommandOptionChoice<string>[]): Promise<Answered> {
    const type = InteractionResponseType.ApplicationCommandAutocompleteResult;
    return this.callback(deed, { type, data: { choices } });
  }

  /** Shows the page in place of the acknowledgement, or of the message on which she pressed. */
  edit(deed: Deed, page: Page): Promise<Answered> {
    return this.tried(TRIES, async () => {
      const route = Routes.webhookMessage(this.application, deed.token, '@original');
      const message = (await this.rest.patch(route, { ...payload(page), auth: false })) as APIMessage;
      return shownAt(message);
    });
  }

  /** A further message. Sent once: it might come twice where the answer to it is lost. */
  followUp(deed: Deed, page: Page, seen: Seen): Promise<Answered> {
    return this.tried(1, async () => {
      const route = Routes.webhook(this.application, deed.token);
      const message = (await this.rest.post(route, { ...payload(page, seen), auth: false })) as APIMessage;
      return shownAt(message);
    });
  }

  /** A second callback is refused as such, so that one whose answer was lost may be repeated. */
  private callback(
    deed: Deed,
    body: unknown,
    files: ReturnType<typeof payload>['files'] = [],
  ): Promise<Answered> {
    return this.tried(TRIES, async () => {
      try {
        await this.rest.post(Routes.interactionCallback(deed.id, deed.token), { body, files, auth: false });
      } catch (error) {
        const earlier = codeOf(error) === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged;
        if (!earlier) throw error;
      }
      return undefined;
    });
  }

  /** The library itself repeats what met a server error or a rate limit; here lost connections are repeated. */
  private async tried(tries: number, work: () => Promise<ShownAt | undefined>): Promise<Answered> {
    for (let left = tries; ; left -= 1) {
      try {
        return { kind: 'taken', shown: await work() };
      } catch (error) {
        if (error instanceof DiscordAPIError)
          return { kind: GONE.has(error.code) ? 'gone' : 'refused', error };
        if (left <= 1) return { kind: 'unsure', error };
        await wait(PAUSE);
      }
    }
  }
}

export function codeOf(error: unknown): number | string | undefined {
  return error instanceof DiscordAPIError ? error.code : undefined;
}
