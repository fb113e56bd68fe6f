/** Follow-ups, and the edits of an interaction's own messages, by its token. */
import type { Call, Reply, Route } from '../call.ts';
import { editedParts, partsOf } from '../drafts.ts';
import type { Interaction } from '../interactions.ts';
import type { Message } from '../messages.ts';
import type { Platform } from '../platform.ts';
import { tooManyFollowUps, unknownMessage, unknownWebhook } from '../refusal.ts';
import { EPHEMERAL, message } from '../rules/messages.ts';
import { messageOnWire } from '../wire.ts';
import { messageSetting } from './message-setting.ts';

/** Follow-ups of an interaction where the app is only the person's, not the server's. */
const MOST_FOLLOW_UPS = 5;

export function webhookRoutes(platform: Platform): readonly Route[] {
  const route = (pattern: string, work: (call: Call, interaction: Interaction) => Reply): Route => ({
    pattern,
    needsToken: false,
    handler: (call) => {
      if (call.param('app') !== platform.world.appId) throw unknownWebhook();
      return work(call, platform.interactions.webhook(call.param('token')));
    },
  });
  const one = '/webhooks/:app/:token/messages/:message';
  return [
    route('POST /webhooks/:app/:token', (call, interaction) => followUp(platform, call, interaction)),
    route(`GET ${one}`, (call, interaction) => shown(platform, own(platform, interaction, call))),
    route(`PATCH ${one}`, (call, interaction) => edit(platform, call, interaction)),
    route(`DELETE ${one}`, (call, interaction) => remove(platform, call, interaction)),
  ];
}

function followUp(platform: Platform, call: Call, interaction: Interaction): Reply {
  const filled = interaction.loading ? own(platform, interaction, call, '@original') : undefined;
  call.check(message(messageSetting(platform, 'follow-up', call.files, undefined)));
  call.refuseIfWrong();
  call.noteMentions(call.form);
  if (filled) return fillIn(platform, call, interaction, filled);
  if (interaction.onlyUserInstalled && interaction.followUps >= MOST_FOLLOW_UPS) throw tooManyFollowUps();
  interaction.followUps += 1;
  const parts = partsOf(call.form, call.files);
  const posted = platform.messages.post({
    ...parts,
    channel: interaction.channel,
    author: platform.world.bot,
    onlyFor: parts.flags & EPHEMERAL ? interaction.by : undefined,
    interactionId: interaction.id,
    replyTo: interaction.original,
  });
  interaction.own.add(posted.id);
  interaction.outcome.resolve({ kind: 'message', message: posted });
  return shown(platform, posted);
}

/** The first follow-up of a deferred reply becomes that reply; its own ephemeral flag does not count. */
function fillIn(platform: Platform, call: Call, interaction: Interaction, before: Message): Reply {
  const parts = editedParts(before, call.form, call.files);
  const flags = (parts.flags & ~EPHEMERAL) | (before.flags & EPHEMERAL);
  return replace(platform, interaction, before, { ...parts, flags });
}

function edit(platform: Platform, call: Call, interaction: Interaction): Reply {
  const before = own(platform, interaction, call);
  call.check(message(messageSetting(platform, 'webhook edit', call.files, before)));
  call.refuseIfWrong();
  const fillsIn = interaction.loading && before.id === interaction.original;
  if (fillsIn) call.noteMentions(call.form);
  return replace(platform, interaction, before, editedParts(before, call.form, call.files));
}

function replace(
  platform: Platform,
  interaction: Interaction,
  before: Message,
  parts: ReturnType<typeof editedParts>,
): Reply {
  const isReply = interaction.loading && before.id === interaction.original;
  if (isReply) interaction.loading = false;
  const edited = platform.messages.edit(before, parts);
  interaction.outcome.resolve({ kind: isReply ? 'message' : 'update', message: edited });
  return shown(platform, edited);
}

function remove(platform: Platform, call: Call, interaction: Interaction): Reply {
  const gone = own(platform, interaction, call);
  if (gone.id === interaction.original) interaction.loading = false;
  platform.messages.remove(gone);
  interaction.outcome.resolve({ kind: 'removed', message: gone });
  return { status: 204 };
}

/** A message this interaction's token may touch: its own answers, and the one its button stood on. */
function own(
  platform: Platform,
  interaction: Interaction,
  call: Call,
  name = call.param('message'),
): Message {
  const id = name === '@original' ? interaction.original : name;
  const mine = id !== undefined && (interaction.own.has(id) || id === interaction.original);
  const found = mine ? platform.messages.find(interaction.channel, id) : undefined;
  if (!found) throw unknownMessage();
  return found;
}

function shown(platform: Platform, shownMessage: Message): Reply {
  return { status: 200, body: messageOnWire(shownMessage, platform.world.bot, platform.address.http) };
}
