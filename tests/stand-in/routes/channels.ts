/** Messages the app writes with its own account, in servers it is in and in direct messages. */
import type { Call, Reply, Route } from '../call.ts';
import { editedParts, partsOf } from '../drafts.ts';
import { objectIn, textIn } from '../json.ts';
import { isEphemeral, type Message } from '../messages.ts';
import type { Platform } from '../platform.ts';
import {
  cannotMessageUser,
  missingAccess,
  missingPermissions,
  notTheAuthor,
  unknownChannel,
  unknownMessage,
  unknownUser,
} from '../refusal.ts';
import { form, snowflake } from '../rules/fields.ts';
import { message } from '../rules/messages.ts';
import { channelOnWire, messageOnWire } from '../wire.ts';
import { appIsIn, type Channel, isAllowed } from '../world.ts';
import { messageSetting } from './message-setting.ts';

export function channelRoutes(platform: Platform): readonly Route[] {
  const route = (pattern: string, work: (call: Call, channel: Channel) => Reply): Route => ({
    pattern,
    needsToken: true,
    handler: (call) => work(call, reachable(platform, call.param('channel'))),
  });
  const messages = '/channels/:channel/messages';
  const nonces = new Map<string, Message>();
  return [
    { pattern: 'POST /users/@me/channels', needsToken: true, handler: (call) => openDm(platform, call) },
    route('GET /channels/:channel', (_, channel) => ({ status: 200, body: channelOnWire(channel) })),
    route('POST /channels/:channel/typing', (_, channel) => {
      demandSending(channel, 0);
      return { status: 204 };
    }),
    route(`POST ${messages}`, (call, channel) => post(platform, call, channel, nonces)),
    route(`GET ${messages}/:message`, (call, channel) => shown(platform, standing(platform, call, channel))),
    route(`PATCH ${messages}/:message`, (call, channel) => edit(platform, call, channel)),
    route(`DELETE ${messages}/:message`, (call, channel) => {
      platform.messages.remove(ownMessage(platform, call, channel));
      return { status: 204 };
    }),
  ];
}

function openDm(platform: Platform, call: Call): Reply {
  call.check(form({ recipient_id: snowflake }));
  call.refuseIfWrong();
  const account = platform.world.accounts.get(textIn(call.form, 'recipient_id'));
  if (!account) throw unknownUser();
  return { status: 200, body: channelOnWire(platform.world.botDm(account)) };
}

function post(platform: Platform, call: Call, channel: Channel, nonces: Map<string, Message>): Reply {
  call.check(message(messageSetting(platform, 'channel message', call.files, undefined)));
  demandSending(channel, call.files.length);
  call.refuseIfWrong();
  const nonce = call.form.enforce_nonce === true ? `${channel.id} ${call.form.nonce}` : undefined;
  const sentBefore = nonce === undefined ? undefined : nonces.get(nonce);
  if (sentBefore) return shown(platform, sentBefore);
  call.noteMentions(call.form);
  const replyTo = textIn(objectIn(call.form, 'message_reference'), 'message_id');
  const posted = platform.messages.post({
    ...partsOf(call.form, call.files),
    channel,
    author: platform.world.bot,
    onlyFor: undefined,
    interactionId: undefined,
    replyTo: replyTo === '' ? undefined : replyTo,
  });
  if (nonce !== undefined) nonces.set(nonce, posted);
  return shown(platform, posted);
}

function edit(platform: Platform, call: Call, channel: Channel): Reply {
  const before = ownMessage(platform, call, channel);
  call.check(message(messageSetting(platform, 'channel edit', call.files, before)));
  call.refuseIfWrong();
  return shown(platform, platform.messages.edit(before, editedParts(before, call.form, call.files)));
}

function reachable(platform: Platform, id: string): Channel {
  const channel = platform.world.channels.get(id);
  if (!channel) throw unknownChannel();
  if (!appIsIn(channel) || !isAllowed(channel, 'view channel')) throw missingAccess();
  return channel;
}

function demandSending(channel: Channel, files: number): void {
  const [person] = channel.context === 'bot dm' ? channel.people : [];
  if (person && !person.takesDirectMessages) throw cannotMessageUser();
  if (!isAllowed(channel, 'send messages')) throw missingPermissions();
  if (files > 0 && !isAllowed(channel, 'attach files')) throw missingPermissions();
}

/** A message the app's account can see: not an ephemeral one, which only its interaction's token reaches. */
function standing(platform: Platform, call: Call, channel: Channel): Message {
  const found = platform.messages.find(channel, call.param('message'));
  if (!found || isEphemeral(found)) throw unknownMessage();
  return found;
}

function ownMessage(platform: Platform, call: Call, channel: Channel): Message {
  const found = standing(platform, call, channel);
  if (found.author !== platform.world.bot) throw notTheAuthor();
  return found;
}

function shown(platform: Platform, shownMessage: Message): Reply {
  return { status: 200, body: messageOnWire(shownMessage, platform.world.bot, platform.address.http) };
}
