/** What the app hears over the gateway of deeds and messages. */
import type { GatewayEvent } from './gateway.ts';
import { INTERACTION_TYPE, type Interaction } from './interactions.ts';
import type { JsonObject } from './json.ts';
import type { Change, Message } from './messages.ts';
import type { Platform } from './platform.ts';
import { owners } from './registry.ts';
import { FILE_LIMIT } from './rules/files.ts';
import { channelOnWire, contextOnWire, memberOnWire, messageOnWire, userOnWire } from './wire.ts';
import { appIsIn } from './world.ts';

const GUILD_MESSAGES_INTENT = 1 << 9;
const DIRECT_MESSAGES_INTENT = 1 << 12;

/** INTERACTION_CREATE (page `interactions/receiving-and-responding`); `data` is the deed's own part. */
export function interactionEvent(
  platform: Platform,
  interaction: Interaction,
  data: JsonObject,
  installTypes?: readonly unknown[],
): GatewayEvent {
  const { by, channel, source } = interaction;
  const { guild } = channel;
  const current = source && (platform.messages.find(channel, source.id) ?? source);
  return {
    name: 'INTERACTION_CREATE',
    guildId: guild?.hasApp ? guild.id : undefined,
    data: {
      id: interaction.id,
      application_id: platform.world.appId,
      type: INTERACTION_TYPE[interaction.deed],
      token: interaction.token,
      version: 1,
      data,
      channel_id: channel.id,
      channel: { ...channelOnWire(channel), permissions: '2248473465835073' },
      context: contextOnWire(channel),
      locale: by.locale,
      app_permissions: `${channel.appPermissions}`,
      entitlements: [],
      authorizing_integration_owners: owners(by, channel, installTypes),
      attachment_size_limit: FILE_LIMIT,
      ...(current && { message: messageOnWire(current, platform.world.bot, platform.address.http) }),
      ...(guild
        ? {
            guild_id: guild.id,
            guild: { id: guild.id, locale: guild.locale, features: [] },
            guild_locale: guild.locale,
            member: memberOnWire(by),
          }
        : { user: userOnWire(by) }),
    },
  };
}

/** The event a message's posting, edit or removal gives rise to, where the app is in the channel. */
export function messageEvent(platform: Platform, { kind, message }: Change): GatewayEvent | undefined {
  const { channel } = message;
  if (!appIsIn(channel)) return undefined;
  const place = {
    guildId: channel.guild?.id,
    intent: channel.guild ? GUILD_MESSAGES_INTENT : DIRECT_MESSAGES_INTENT,
  };
  const ids = {
    id: message.id,
    channel_id: channel.id,
    ...(channel.guild && { guild_id: channel.guild.id }),
  };
  if (kind === 'removed') return { name: 'MESSAGE_DELETE', data: ids, ...place };
  const name = kind === 'posted' ? 'MESSAGE_CREATE' : 'MESSAGE_UPDATE';
  const data = messageData(platform, message);
  return { name, data, ...place, ...(isHidden(platform, message) && { withoutContent: emptied(data) }) };
}

function messageData(platform: Platform, message: Message): JsonObject {
  return {
    ...messageOnWire(message, platform.world.bot, platform.address.http),
    channel_type: message.channel.guild ? 0 : 1,
    ...(message.channel.guild && { member: memberOnWire(message.author) }),
  };
}

/** Others' messages in servers are empty without the intent, unless they mention the app. */
function isHidden(platform: Platform, message: Message): boolean {
  const { id } = platform.world.bot;
  const mentioned = message.content.includes(`<@${id}>`) || message.content.includes(`<@!${id}>`);
  return message.channel.guild !== undefined && !message.author.isApp && !mentioned;
}

function emptied(data: JsonObject): JsonObject {
  return { ...data, content: '', embeds: [], attachments: [], components: [] };
}
