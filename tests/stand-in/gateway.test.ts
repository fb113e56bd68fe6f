import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { RawApp } from './raw-app.ts';
import { RawGateway } from './raw-gateway.ts';
import { shardOf } from './snowflake.ts';
import { type StandIn, startStandIn } from './stand-in.ts';

let standIn: StandIn;
let gateway: RawGateway;

beforeEach(async () => {
  standIn = await startStandIn({ identify: { maxConcurrency: 1, bucketMs: 0, perDay: 3 } });
  gateway = new RawGateway(standIn);
});
afterEach(() => standIn.close());

describe('the gateway greets and lets in', () => {
  it('with HELLO, READY, and each server of the shard', async () => {
    await gateway.ready();
    expect((await gateway.opcode(10)).d).toEqual({ heartbeat_interval: 41_250 });
    const ready = await gateway.event('READY');
    expect(ready).toMatchObject({ s: 1, d: { application: { id: standIn.appId }, shard: [0, 1] } });
    expect(await gateway.event('GUILD_CREATE')).toMatchObject({ s: 2, d: { id: standIn.guild.id } });
  });

  it('acknowledges heartbeats, unless it is told to ignore them', async () => {
    await gateway.ready();
    standIn.gateway.ignoreHeartbeats(true);
    gateway.send(1, null);
    gateway.send(3, { status: 'online' });
    await expect.poll(() => standIn.gateway.received.length).toBe(3);
    expect(gateway.frames.filter((frame) => frame.op === 11)).toEqual([]);
    standIn.gateway.ignoreHeartbeats(false);
    gateway.send(1, 2);
    await gateway.opcode(11);
  });

  it('sends no server without its intent', async () => {
    await gateway.ready({ intents: 0 });
    gateway.send(1, null);
    await gateway.opcode(11);
    expect(gateway.frames.filter((frame) => frame.op === 0).map((frame) => frame.t)).toEqual(['READY']);
  });
});

describe('the gateway closes', () => {
  it.each([
    ['a wrong token with 4004', { token: 'guessed' }, 4004],
    ['a shard beyond the count with 4010', { shard: [2, 2] }, 4010],
    ['an intent that does not exist with 4013', { intents: 1 << 19 }, 4013],
    ['server members without leave with 4014', { intents: 1 << 1 }, 4014],
    ['presences without leave with 4014', { intents: 1 << 8 }, 4014],
    ['message content without leave with 4014', { intents: 1 << 15 }, 4014],
    ['an identify without properties with 4002', { properties: null }, 4002],
    ['an event of more than 4096 bytes with 4002', { padding: 'x'.repeat(4096) }, 4002],
  ])('%s', async (_, own, code) => {
    await gateway.identify(own);
    expect(await gateway.closed).toBe(code);
  });

  it('an unknown opcode with 4001, one before identifying with 4003, a second identify with 4005', async () => {
    await gateway.ready();
    gateway.send(99, {});
    expect(await gateway.closed).toBe(4001);
    const early = new RawGateway(standIn);
    await early.opcode(10);
    early.send(3, {});
    expect(await early.closed).toBe(4003);
    const eager = new RawGateway(standIn);
    await eager.ready();
    await eager.identify();
    expect(await eager.closed).toBe(4005);
  });

  it('the 121st event within a minute with 4008', async () => {
    await gateway.ready();
    for (let sent = 0; sent < 120; sent += 1) gateway.send(1, null);
    expect(await gateway.closed).toBe(4008);
  });

  it('the identify after the last of the day with 4004', async () => {
    for (let used = 0; used < 3; used += 1) await new RawGateway(standIn).ready();
    await gateway.identify();
    expect(await gateway.closed).toBe(4004);
  });

  it('a connection without heartbeats with 4009', async () => {
    const brisk = await startStandIn({ heartbeatMs: 20 });
    const silent = new RawGateway(brisk);
    await silent.ready();
    expect(await silent.closed).toBe(4009);
    await brisk.close();
  });
});

describe('a session', () => {
  it('is refused with opcode 9 when two shards of one bucket identify at once', async () => {
    const strict = await startStandIn();
    await new RawGateway(strict).ready();
    const second = new RawGateway(strict);
    await second.identify();
    expect(await second.opcode(9)).toMatchObject({ d: false });
    await strict.close();
  });

  it('goes on after a cut with every event since, in order, then RESUMED', async () => {
    const session = await gateway.ready({ intents: 1 << 12 });
    standIn.gateway.cut(4000);
    expect(await gateway.closed).toBe(4000);
    const anna = standIn.person('Anna');
    anna.goTo(anna.dm).say('one');
    anna.say('two');
    const again = new RawGateway(standIn);
    await again.resume(session, 1);
    expect(await again.event('RESUMED')).toMatchObject({ s: 4 });
    expect(again.frames.map(({ t, s }) => `${t} ${s}`).slice(1)).toEqual([
      'MESSAGE_CREATE 2',
      'MESSAGE_CREATE 3',
      'RESUMED 4',
    ]);
  });

  it('cannot be resumed beyond its last event (4007), nor after it was forgotten or closed with 1000', async () => {
    const session = await gateway.ready();
    standIn.gateway.cut();
    const ahead = new RawGateway(standIn);
    await ahead.resume(session, 99);
    expect(await ahead.closed).toBe(4007);
    standIn.gateway.forgetSessions();
    const late = new RawGateway(standIn);
    await late.resume(session, 1);
    expect(await late.opcode(9)).toMatchObject({ d: false });
    const orderly = new RawGateway(standIn);
    const ended = await orderly.ready();
    orderly.close(1000);
    await orderly.closed;
    await expect.poll(() => standIn.gateway.connected()).toEqual([]);
    const mistaken = new RawGateway(standIn);
    await mistaken.resume(ended, 1);
    expect(await mistaken.opcode(9)).toMatchObject({ d: false });
  });

  it('is asked to reconnect, or told that it is invalid', async () => {
    await gateway.ready();
    standIn.gateway.askToReconnect();
    await gateway.opcode(7);
    standIn.gateway.invalidate(true);
    expect(await gateway.opcode(9)).toMatchObject({ d: true });
  });

  it('hears only of the servers of its shard; direct messages go to shard 0', async () => {
    const other = standIn.world.addGuild('another circle');
    const shard = (id: string) => shardOf(id, 2);
    await gateway.ready({ shard: [0, 2], intents: 1 | (1 << 12) });
    const second = new RawGateway(standIn);
    await second.ready({ shard: [1, 2], intents: 1 | (1 << 12) });
    const anna = standIn.person('Anna');
    anna.goTo(anna.dm).say('hello');
    await gateway.event('MESSAGE_CREATE');
    const guildsOf = (one: RawGateway) =>
      one.frames.flatMap((frame) => (frame.t === 'GUILD_CREATE' ? [(frame.d as { id: string }).id] : []));
    const all = [standIn.guild.id, other.id];
    expect(guildsOf(gateway)).toEqual(all.filter((id) => shard(id) === 0));
    expect(guildsOf(second)).toEqual(all.filter((id) => shard(id) === 1));
    expect(second.frames.some((frame) => frame.t === 'MESSAGE_CREATE')).toBe(false);
  });
});

it('hides what people write in servers from an app without message content, but not what names the app', async () => {
  await gateway.ready({ intents: 1 << 9 });
  const anna = standIn.person('Anna');
  anna.say('to the others');
  anna.say(`<@${standIn.appId}> hello`);
  await expect.poll(() => gateway.frames.filter((frame) => frame.t === 'MESSAGE_CREATE').length).toBe(2);
  const contents = gateway.frames.flatMap((frame) =>
    frame.t === 'MESSAGE_CREATE' ? [(frame.d as { content: string }).content] : [],
  );
  expect(contents).toEqual(['', `<@${standIn.appId}> hello`]);
});

it('tells an app its address, shards and identifies left', async () => {
  await gateway.ready();
  const { body } = await new RawApp(standIn).send('GET', '/gateway/bot');
  expect(body).toMatchObject({
    url: expect.stringMatching(/^ws:\/\/127\.0\.0\.1:\d+$/),
    shards: 1,
    session_start_limit: { total: 3, remaining: 2, max_concurrency: 1 },
  });
});
