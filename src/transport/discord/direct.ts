/** Direct messages, written with the app's own account. */
import { setTimeout as wait } from 'node:timers/promises';
import {
  type APIChannel,
  type APIMessage,
  DiscordAPIError,
  type REST,
  RESTJSONErrorCodes,
  Routes,
  SnowflakeUtil,
} from 'discord.js';
import { type ShownAt, shownAt } from './answering.ts';
import { type Page, payload } from './page.ts';

/** `closed`: she takes no direct messages from us. `failed`: Discord could not be reached, or refused. */
export type Sent =
  | { readonly kind: 'sent'; readonly channel: string; readonly shown: ShownAt }
  | { readonly kind: 'closed' }
  | { readonly kind: 'failed'; readonly error: unknown };

const TRIES = 3;
const PAUSE = 250;

export class DirectMessages {
  private readonly rest: REST;

  constructor(rest: REST) {
    this.rest = rest;
  }

  /** To a person, whether she has written before or not. */
  async sendTo(user: string, page: Page): Promise<Sent> {
    const nonce = newNonce();
    return this.tried(async () => {
      const dm = (await this.rest.post(Routes.userChannels(), {
        body: { recipient_id: user },
      })) as APIChannel;
      return this.post(dm.id, page, nonce);
    });
  }

  async send(channel: string, page: Page): Promise<Sent> {
    const nonce = newNonce();
    return this.tried(() => this.post(channel, page, nonce));
  }

  /** Puts a page in place of an earlier message. */
  async replace(channel: string, message: string, page: Page): Promise<Sent> {
    return this.tried(async () => {
      const route = Routes.channelMessage(channel, message);
      const edited = (await this.rest.patch(route, payload(page))) as APIMessage;
      return { kind: 'sent', channel, shown: shownAt(edited) };
    });
  }

  /** The same nonce twice makes one message, so that a post whose answer was lost may be repeated. */
  private async post(channel: string, page: Page, nonce: string): Promise<Sent> {
    const { body, files } = payload(page);
    const message = (await this.rest.post(Routes.channelMessages(channel), {
      body: { ...body, nonce, enforce_nonce: true },
      files,
    })) as APIMessage;
    return { kind: 'sent', channel, shown: shownAt(message) };
  }

  private async tried(work: () => Promise<Sent>): Promise<Sent> {
    for (let left = TRIES; ; left -= 1) {
      try {
        return await work();
      } catch (error) {
        const code = error instanceof DiscordAPIError ? error.code : undefined;
        if (code === RESTJSONErrorCodes.CannotSendMessagesToThisUser) return { kind: 'closed' };
        if (code !== undefined || left <= 1) return { kind: 'failed', error };
        await wait(PAUSE);
      }
    }
  }
}

function newNonce(): string {
  return SnowflakeUtil.generate().toString();
}
