import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { messageOf } from './answer.ts';
import { SAMPLER_COMMANDS, sampler } from './sampler.ts';
import { type StandIn, startStandIn } from './stand-in.ts';
import { type TinyBot, tinyBot } from './tiny-bot.ts';

const CALLBACK = 'POST /interactions/:id/:token/callback';
const EDIT = 'PATCH /webhooks/:app/:token/messages/:message';

let standIn: StandIn;
let bot: TinyBot;

beforeEach(async () => {
  standIn = await startStandIn({ identify: { maxConcurrency: 1, bucketMs: 0, perDay: 1000 } });
  bot = await tinyBot(standIn, sampler, { ws: { buildIdentifyThrottler: withoutWaiting } });
  await bot.client.application.commands.set(SAMPLER_COMMANDS);
});
afterEach(async () => {
  await bot.stop();
  await standIn.close();
});

/** The library waits five seconds between identifies; these tests need not. */
const withoutWaiting = async () => ({ waitForIdentify: async () => {} });

const opcodes = (op: number) => standIn.gateway.received.filter((frame) => frame.op === op).length;
const isBack = () => expect.poll(() => standIn.gateway.connected().length, { timeout: 10_000 }).toBe(1);

describe('a real client survives', () => {
  it.each([
    ['a gateway cut with 4000', () => standIn.gateway.cut(4000)],
    ['a connection broken off', () => standIn.gateway.breakOff()],
    ['being asked to reconnect', () => standIn.gateway.askToReconnect()],
  ])('%s, by resuming, and gets what was done meanwhile', async (_, interrupt) => {
    const anna = standIn.person('Anna');
    interrupt();
    await expect.poll(() => standIn.gateway.connected().length).toBe(0);
    const answer = anna.command('wool', { wool: 'tweed' });
    expect(messageOf(await answer).text).toBe('you said tweed');
    expect([opcodes(2), opcodes(6)]).toEqual([1, 1]);
    expect(bot.errors).toEqual([]);
  });

  it('an invalid session, by identifying anew', async () => {
    standIn.gateway.invalidate(false);
    await expect.poll(() => opcodes(2), { timeout: 10_000 }).toBe(2);
    await isBack();
    expect(messageOf(await standIn.person('Anna').command('wool')).text).toBe('you said no wool');
  });

  it('a session forgotten while it was away', async () => {
    standIn.gateway.cut();
    standIn.gateway.forgetSessions();
    await expect.poll(() => opcodes(2), { timeout: 10_000 }).toBe(2);
    expect(opcodes(6)).toBe(1);
    await isBack();
  });

  it.each(['user', 'shared', 'global'] as const)(
    'a rate limit (%s), by waiting as long as told',
    async (scope) => {
      standIn.faults.onRequest(EDIT, { kind: 'rate limit', retryAfterMs: 60, scope });
      const reply = messageOf(await standIn.person('Anna').command('slow'));
      expect(reply.text).toBe('worked out');
      expect(standIn.record.to(EDIT).map((request) => request.verdict.kind)).toEqual(['faulted', 'accepted']);
    },
  );

  it('a server error, by trying again', async () => {
    standIn.faults.onRequest(CALLBACK, { kind: 'server error', status: 502 });
    expect(messageOf(await standIn.person('Anna').command('wool')).text).toBe('you said no wool');
    expect(standIn.record.to(CALLBACK)).toHaveLength(2);
  });

  it('limits of its routes that it is told of before they bite', async () => {
    await bot.stop();
    await standIn.close();
    standIn = await startStandIn({ perRoute: { limit: 2, windowMs: 150 } });
    bot = await tinyBot(standIn, sampler);
    const anna = standIn.person('Anna');
    const dm = await bot.client.users.createDM(anna.id);
    await Promise.all([1, 2, 3, 4, 5].map((number) => dm.send(`${number}`)));
    expect(anna.sees(anna.dm).map((message) => message.text)).toEqual(['1', '2', '3', '4', '5']);
    expect(standIn.record.requests.filter((request) => request.verdict.kind !== 'accepted')).toEqual([]);
  });
});

describe('a real client is told', () => {
  it('that its own answer was lost, though the person has it', async () => {
    standIn.faults.onRequest(CALLBACK, { kind: 'answer lost' });
    expect(messageOf(await standIn.person('Anna').command('wool')).text).toBe('you said no wool');
    await expect.poll(() => bot.errors.length, { timeout: 10_000 }).toBe(1);
  });

  it('in the platform’s own form that its payload is refused', async () => {
    const anna = standIn.person('Anna');
    const dm = await bot.client.users.createDM(anna.id);
    await expect(dm.send('x'.repeat(2001))).rejects.toMatchObject({
      code: 50035,
      status: 400,
      message: expect.stringContaining('content[TOO_LONG]: Must be 2000 or fewer in length.'),
    });
    anna.account.takesDirectMessages = false;
    await expect(dm.send('hello')).rejects.toMatchObject({ code: 50007, status: 403 });
  });

  it('that the token is wrong', async () => {
    await expect(tinyBot({ ...pick(standIn), token: 'guessed' }, sampler)).rejects.toThrow(/token/i);
  });
});

function pick({ api, token }: StandIn): Pick<StandIn, 'api' | 'token'> {
  return { api, token };
}
