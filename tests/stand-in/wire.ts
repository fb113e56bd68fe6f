/** How people, channels and messages look in what the platform sends. */
import type { JsonObject } from './json.ts';
import type { Message } from './messages.ts';
import { type Account, type Channel, CONTEXT_NUMBER, type Guild } from './world.ts';

const JOINED_AT = '2024-01-01T00:00:00.000000+00:00';

export function userOnWire(account: Account): JsonObject {
  return {
    id: account.id,
    username: account.name.toLowerCase().replaceAll(' ', '.'),
    global_name: account.name,
    discriminator: '0',
    avatar: null,
    public_flags: 0,
    ...(account.isApp && { bot: true }),
  };
}

export function memberOnWire(account: Account): JsonObject {
  return {
    user: userOnWire(account),
    nick: null,
    avatar: null,
    roles: [],
    joined_at: JOINED_AT,
    premium_since: null,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
    permissions: `${account.permissions}`,
  };
}

export function channelOnWire(channel: Channel): JsonObject {
  if (channel.guild) {
    const { id, name, guild } = channel;
    return { id, type: 0, guild_id: guild.id, name, position: 0, permission_overwrites: [], nsfw: false };
  }
  const people = channel.context === 'bot dm' ? [...channel.people] : channel.people.slice(1);
  const recipients = people.map((account) => userOnWire(account));
  const isGroup = channel.people.length > 2;
  return isGroup
    ? { id: channel.id, type: 3, name: null, icon: null, owner_id: channel.people[0]?.id, recipients }
    : { id: channel.id, type: 1, recipients, last_message_id: null };
}

export function guildOnWire(guild: Guild, bot: Account): JsonObject {
  const everyone = { id: guild.id, name: '@everyone', color: 0, hoist: false, position: 0, managed: false };
  return {
    id: guild.id,
    name: guild.name,
    icon: null,
    owner_id: bot.id,
    preferred_locale: guild.locale,
    roles: [{ ...everyone, permissions: '2248473465835073', mentionable: false, flags: 0 }],
    emojis: [],
    stickers: [],
    features: [],
    afk_timeout: 300,
    verification_level: 0,
    default_message_notifications: 0,
    explicit_content_filter: 0,
    mfa_level: 0,
    system_channel_flags: 0,
    premium_tier: 0,
    nsfw_level: 0,
    joined_at: JOINED_AT,
    large: false,
    unavailable: false,
    member_count: 1,
    members: [memberOnWire(bot)],
    channels: guild.channels.map((channel) => channelOnWire(channel)),
    threads: [],
    presences: [],
    voice_states: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  };
}

/** A message; `cdn` is the address before `/attachments/...`. */
export function messageOnWire(message: Message, bot: Account, cdn: string): JsonObject {
  const { channel, interactionId, replyTo } = message;
  return {
    id: message.id,
    type: replyTo ? 19 : 0,
    channel_id: channel.id,
    ...(channel.guild && { guild_id: channel.guild.id }),
    author: userOnWire(message.author),
    content: message.content,
    timestamp: stamp(idTime(message.id)),
    edited_timestamp: message.editedAt === undefined ? null : stamp(message.editedAt),
    tts: false,
    mention_everyone: false,
    mentions: [],
    mention_roles: [],
    attachments: message.attachments.map((file) => ({
      id: file.id,
      filename: file.filename,
      size: file.bytes.length,
      content_type: file.contentType,
      ...(file.description !== undefined && { description: file.description }),
      url: `${cdn}/attachments/${channel.id}/${file.id}/${file.filename}`,
      proxy_url: `${cdn}/attachments/${channel.id}/${file.id}/${file.filename}`,
    })),
    embeds: message.embeds,
    components: message.components,
    pinned: false,
    flags: message.flags,
    ...(interactionId && { application_id: bot.id, webhook_id: bot.id }),
    ...(replyTo && { message_reference: { message_id: replyTo, channel_id: channel.id } }),
  };
}

/** The number of a channel's context, as interactions carry it. */
export function contextOnWire(channel: Channel): 0 | 1 | 2 {
  return CONTEXT_NUMBER[channel.context];
}

function stamp(ms: number): string {
  return new Date(ms).toISOString().replace('Z', '000+00:00');
}

function idTime(id: string): number {
  return Number((BigInt(id) >> 22n) + 1_420_070_400_000n);
}
