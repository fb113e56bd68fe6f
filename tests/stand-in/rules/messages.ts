/** A whole message, as each of the routes takes it (pages `resources/message`, `components/reference`). */
import { isAbsent, isObject, type JsonObject, numberIn, objectsIn, textIn } from '../json.ts';
import { embeds } from './embeds.ts';
import { both, type Fields, form, list, oneOf, snowflake, text, truth, whole } from './fields.ts';
import { attachments, type FilesAtHand, filesAgree } from './files.ts';
import { COMPONENTS_V2, layout, rows } from './layout.ts';
import { allowedMentions, silenced } from './mentions.ts';
import type { Rule } from './spot.ts';
import { displayedTexts, uniqueIds } from './tree.ts';

export const EPHEMERAL = 1 << 6;
const SUPPRESS_EMBEDS = 1 << 2;
const SUPPRESS_NOTIFICATIONS = 1 << 12;

/** By which way a message comes; the ways differ in keys and flags. */
export type MessageWay =
  | 'reply'
  | 'follow-up'
  | 'update'
  | 'webhook edit'
  | 'channel message'
  | 'channel edit';

const FLAGS: Readonly<Record<MessageWay, number>> = {
  reply: EPHEMERAL | SUPPRESS_EMBEDS | SUPPRESS_NOTIFICATIONS | COMPONENTS_V2,
  'follow-up': EPHEMERAL | SUPPRESS_EMBEDS | SUPPRESS_NOTIFICATIONS | COMPONENTS_V2,
  update: SUPPRESS_EMBEDS | COMPONENTS_V2,
  'webhook edit': SUPPRESS_EMBEDS | COMPONENTS_V2,
  'channel message': SUPPRESS_EMBEDS | SUPPRESS_NOTIFICATIONS | COMPONENTS_V2,
  'channel edit': SUPPRESS_EMBEDS | COMPONENTS_V2,
};

/** What a message held before an edit. */
export interface Standing {
  readonly content: string;
  readonly embeds: readonly unknown[];
  readonly components: readonly unknown[];
  readonly flags: number;
}

export interface MessageSetting extends FilesAtHand {
  readonly way: MessageWay;
  /** Undefined for a new message. */
  readonly standing: Standing | undefined;
  /** Whether text must come with `allowed_mentions: { parse: [] }`. */
  readonly silenceDemanded: boolean;
}

/** `tts` and `enforce_nonce` are written by the client library into every message. */
const everywhere: Fields = {
  content: text(0, 2000),
  embeds,
  allowed_mentions: allowedMentions,
  attachments,
  tts: truth,
  enforce_nonce: truth,
};

/** A text of up to 25 characters or a whole number. */
const nonce: Rule = (spot) => {
  if (!Number.isSafeInteger(spot.value)) text(1, 25)(spot);
};

const onlyInChannels: Fields = {
  nonce,
  sticker_ids: list(snowflake, 1, 3),
  message_reference: form(
    { message_id: snowflake },
    { channel_id: snowflake, guild_id: snowflake, fail_if_not_exists: truth, type: oneOf(0) },
  ),
};

export function message(setting: MessageSetting): Rule {
  const own = setting.way === 'channel message' ? onlyInChannels : {};
  return (spot) => {
    const isV2 = flagsAfter(spot.value, setting) & COMPONENTS_V2;
    const components = both(isV2 ? layout : rows, uniqueIds);
    form({}, { ...everywhere, ...own, flags: flags(setting), components })(spot);
    if (!isObject(spot.value)) return;
    both(notEmpty(setting), filesAgree(setting))(spot);
    if (isV2) onlyComponents(setting)(spot);
    if (setting.silenceDemanded && hasText(spot.value)) silenced(spot.at('allowed_mentions'));
  };
}

function flags(setting: MessageSetting): Rule {
  return both(whole(0, 2 ** 31 - 1), (spot) => {
    const given = Number(spot.value);
    if (given & ~FLAGS[setting.way])
      spot.wrong('flag-not-allowed', `Flags ${given} do not go with ${setting.way}.`);
    const hadV2 = (setting.standing?.flags ?? 0) & COMPONENTS_V2;
    if (hadV2 && !(given & COMPONENTS_V2)) spot.wrong('flag-taken-off', 'Components V2 cannot be taken off.');
  });
}

function flagsAfter(body: unknown, setting: MessageSetting): number {
  const given = isObject(body) ? (numberIn(body, 'flags') ?? 0) : 0;
  return given | (setting.standing?.flags ?? 0);
}

/** A list that is there after the request: the new one if given, else the one before. */
function after(body: JsonObject, key: 'embeds' | 'components', setting: MessageSetting): readonly unknown[] {
  return body[key] === undefined ? (setting.standing?.[key] ?? []) : objectsIn(body, key);
}

function contentAfter(body: JsonObject, setting: MessageSetting): string {
  return body.content === undefined ? (setting.standing?.content ?? '') : textIn(body, 'content');
}

function notEmpty(setting: MessageSetting): Rule {
  return (spot) => {
    const body = spot.value as JsonObject;
    const files = setting.sent.length + (isAbsent(body, 'attachments') ? setting.before.size : 0);
    const kept = objectsIn(body, 'attachments').length;
    const parts = after(body, 'embeds', setting).length + after(body, 'components', setting).length;
    const stickers = Array.isArray(body.sticker_ids) ? body.sticker_ids.length : 0;
    if (contentAfter(body, setting).trim() === '' && parts + files + kept + stickers === 0) {
      spot.wrong('empty-message', 'Cannot send an empty message.');
    }
  };
}

/** With components V2 there is no content, embed or sticker; an edit must clear what was there. */
function onlyComponents(setting: MessageSetting): Rule {
  return (spot) => {
    const body = spot.value as JsonObject;
    const told = (key: string) =>
      spot.at(key).wrong('not-with-components-v2', `'${key}' does not go with components V2.`);
    if (contentAfter(body, setting) !== '') told('content');
    if (after(body, 'embeds', setting).length > 0) told('embeds');
    if (!isAbsent(body, 'sticker_ids')) told('sticker_ids');
  };
}

function hasText(body: JsonObject): boolean {
  return textsWithMentions(body).some((text) => text !== '');
}

/** The texts of a message in which a mention can call somebody: content and text displays, not embeds. */
export function textsWithMentions(body: JsonObject): string[] {
  return [textIn(body, 'content'), ...displayedTexts(body.components)];
}
