/** `POST /interactions/:id/:token/callback`: the one answer to what a person did. */
import type { Call, Reply, Route } from '../call.ts';
import { editedParts, partsOf } from '../drafts.ts';
import { INTERACTION_TYPE, type Interaction } from '../interactions.ts';
import { type JsonObject, numberIn, objectIn, objectsIn } from '../json.ts';
import { isEphemeral, LOADING, type Message } from '../messages.ts';
import type { Platform } from '../platform.ts';
import { unknownMessage } from '../refusal.ts';
import { type CallbackType, callback } from '../rules/callbacks.ts';
import { EPHEMERAL } from '../rules/messages.ts';
import { messageOnWire } from '../wire.ts';
import { messageSetting } from './message-setting.ts';

export function callbackRoutes(platform: Platform): readonly Route[] {
  return [
    {
      pattern: 'POST /interactions/:id/:token/callback',
      needsToken: false,
      handler: (call) => answer(platform, call),
    },
  ];
}

function answer(platform: Platform, call: Call): Reply {
  const interaction = platform.interactions.find(call.param('id'), call.param('token'));
  const source = interaction.source && current(platform, interaction.source);
  call.check(
    callback({
      deed: interaction.deed,
      focusedType: interaction.focusedType,
      reply: messageSetting(platform, 'reply', call.files, undefined),
      update: messageSetting(platform, 'update', call.files, source),
    }),
  );
  platform.interactions.demandWaiting(interaction);
  call.refuseIfWrong();
  const type = call.form.type as CallbackType;
  if ((type === 6 || type === 7) && !source) throw unknownMessage();
  platform.interactions.acknowledge(interaction, type);
  const message = carryOut(platform, call, interaction, type, source);
  return call.query.get('with_response') === 'true'
    ? { status: 200, body: response(platform, interaction, type, message) }
    : { status: 204 };
}

function current(platform: Platform, message: Message): Message | undefined {
  return platform.messages.find(message.channel, message.id);
}

/** Does what the answer says; returns the message it made or changed. */
function carryOut(
  platform: Platform,
  call: Call,
  interaction: Interaction,
  type: CallbackType,
  source: Message | undefined,
): Message | undefined {
  const data = objectIn(call.form, 'data');
  switch (type) {
    case 4: {
      call.noteMentions(data);
      const message = post(platform, interaction, data, call);
      interaction.outcome.resolve({ kind: 'message', message });
      return message;
    }
    case 5:
      interaction.loading = true;
      return post(platform, interaction, { flags: (numberIn(data, 'flags') ?? 0) | LOADING }, call);
    case 6:
      interaction.original = source?.id;
      return source;
    case 7:
      return source && update(platform, interaction, source, data, call);
    case 8:
      interaction.outcome.resolve({ kind: 'choices', choices: objectsIn(data, 'choices') });
      return undefined;
    case 9:
      interaction.outcome.resolve({ kind: 'modal', modal: data });
      return undefined;
    default:
      return type satisfies never;
  }
}

function post(platform: Platform, interaction: Interaction, data: JsonObject, call: Call): Message {
  const parts = partsOf(data, call.files);
  const message = platform.messages.post({
    ...parts,
    channel: interaction.channel,
    author: platform.world.bot,
    onlyFor: parts.flags & EPHEMERAL ? interaction.by : undefined,
    interactionId: interaction.id,
    replyTo: undefined,
  });
  interaction.original = message.id;
  interaction.own.add(message.id);
  return message;
}

function update(
  platform: Platform,
  interaction: Interaction,
  source: Message,
  data: JsonObject,
  call: Call,
): Message {
  const message = platform.messages.edit(source, editedParts(source, data, call.files));
  interaction.original = message.id;
  interaction.own.add(message.id);
  interaction.outcome.resolve({ kind: 'update', message });
  return message;
}

function response(
  platform: Platform,
  interaction: Interaction,
  type: CallbackType,
  message: Message | undefined,
): JsonObject {
  const shown = message && messageOnWire(message, platform.world.bot, platform.address.http);
  return {
    interaction: {
      id: interaction.id,
      type: INTERACTION_TYPE[interaction.deed],
      ...(message && {
        response_message_id: message.id,
        response_message_loading: type === 5,
        response_message_ephemeral: isEphemeral(message),
      }),
    },
    resource: { type, ...(shown && { message: shown }) },
  };
}
