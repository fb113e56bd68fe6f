import { once } from 'node:events';
import { request } from 'node:http';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { SILENT } from './bad/row.ts';
import { Faults } from './faults.ts';
import type { Person } from './person.ts';
import { RawApp } from './raw-app.ts';
import { RawGateway } from './raw-gateway.ts';
import { RequestRecord } from './record.ts';
import { cannotMessageUser, missingPermissions } from './refusal.ts';
import { type StandIn, startStandIn } from './stand-in.ts';
import { allow, forbid, type Permission } from './world.ts';

const POST = 'POST /channels/:channel/messages';

let standIn: StandIn;
let app: RawApp;
let anna: Person;

beforeEach(async () => {
  standIn = await startStandIn();
  app = new RawApp(standIn);
  anna = standIn.person('Anna');
});
afterEach(() => standIn.close());

const send = (content = 'hello', channel = anna.dm, own: object = {}) =>
  app.send('POST', `/channels/${channel.id}/messages`, { content, ...SILENT, ...own });
const texts = (channel = anna.dm) => anna.sees(channel).map((message) => message.text);

describe('a request', () => {
  it('is delayed, and overtaken by the next', async () => {
    standIn.faults.onRequest(POST, { kind: 'delay', ms: 500 });
    const slow = send('first');
    await expect.poll(() => standIn.record.requests.length).toBe(1);
    await send('second');
    await slow;
    expect(texts()).toEqual(['second', 'first']);
  });

  it('is lost on the way, or worked with its answer lost', async () => {
    standIn.faults.onRequest(POST, { kind: 'request lost' });
    standIn.faults.onRequest(POST, { kind: 'answer lost' });
    await expect(send('first')).rejects.toThrow();
    await expect(send('second')).rejects.toThrow();
    expect(texts()).toEqual(['second']);
    expect(standIn.record.requests.map((request) => request.verdict)).toEqual([
      { kind: 'faulted', fault: 'request lost', worked: false },
      { kind: 'faulted', fault: 'answer lost', worked: true },
    ]);
  });

  it('that the app breaks off in the middle is as if it had never been', async () => {
    const headers = { 'content-type': 'application/json', 'content-length': 1000 };
    const half = request(`${standIn.api}/v10/channels/${anna.dm.id}/messages`, { method: 'POST', headers });
    const broken = once(half, 'error');
    half.write('{"content": "hel');
    await new Promise((sent) => setTimeout(sent, 20));
    half.destroy(new Error('broken off'));
    await broken;
    await send('after');
    expect(texts()).toEqual(['after']);
    expect(standIn.record.requests).toHaveLength(1);
  });

  it.each([
    ['user', null],
    ['shared', null],
    ['global', 'true'],
  ] as const)('is rate limited in the scope %s', async (scope, global) => {
    standIn.faults.onRequest(POST, { kind: 'rate limit', retryAfterMs: 1500, scope });
    const response = await fetch(`${standIn.api}/v10/channels/${anna.dm.id}/messages`, { method: 'POST' });
    expect(response.status).toBe(429);
    expect(response.headers.get('retry-after')).toBe('1.5');
    expect(response.headers.get('x-ratelimit-scope')).toBe(scope);
    expect(response.headers.get('x-ratelimit-global')).toBe(global);
    expect(await response.json()).toMatchObject({ retry_after: 1.5, global: scope === 'global' });
  });

  it('is refused as the test says, as often as it says, and then no more', async () => {
    standIn.faults.onRequest(POST, { kind: 'refusal', refusal: cannotMessageUser() });
    standIn.faults.onRequest(
      (request) => request.method === 'POST',
      { kind: 'refusal', refusal: missingPermissions() },
      2,
    );
    const codes = [await send(), await send(), await send(), await send()].map((answer) => answer.body.code);
    expect(codes).toEqual([50007, 50013, 50013, undefined]);
  });

  it('is refused beyond so many a second, answers to interactions apart', async () => {
    const narrow = await startStandIn({ requestsPerSecond: 2 });
    const raw = new RawApp(narrow);
    const answers = await Promise.all([1, 2, 3].map(() => raw.send('GET', '/users/@me')));
    const limited = answers.filter((answer) => answer.status === 429);
    expect(limited).toMatchObject([{ body: { global: true } }]);
    expect((await raw.answer({ id: '1', token: 'a' }, { type: 5 })).status).toBe(404);
    await narrow.close();
  });
});

describe('the platform itself refuses', () => {
  it.each<[string, number, Permission]>([
    ['writing where the app may not', 50013, 'send messages'],
    ['writing where the app sees nothing', 50001, 'view channel'],
  ])('%s', async (_, code, permission) => {
    const channel = standIn.channelOf();
    forbid(channel, permission);
    expect((await send('hello', channel)).body.code).toBe(code);
    allow(channel, permission);
    expect((await send('hello', channel)).status).toBe(200);
  });

  it('files where the app may not attach any', async () => {
    const channel = standIn.channelOf();
    forbid(channel, 'attach files');
    const file = { part: 'files[0]', name: 'a.txt', bytes: new Uint8Array(1) };
    const answer = await app.send('POST', `/channels/${channel.id}/messages`, {}, [file]);
    expect(answer.body.code).toBe(50013);
  });

  it('direct messages to people who take none, and talk in channels the app is not in', async () => {
    anna.account.takesDirectMessages = false;
    expect((await send()).body.code).toBe(50007);
    expect((await send('hello', standIn.world.privateChannel([anna.account]))).body.code).toBe(50001);
    const strangers = standIn.world.addGuild('strangers', { hasApp: false });
    expect((await send('hello', standIn.channelOf(strangers))).body.code).toBe(50001);
  });

  it('editing what somebody else wrote', async () => {
    const hers = anna.goTo(anna.dm).say('mine');
    const path = `/channels/${anna.dm.id}/messages/${hers.id}`;
    expect((await app.send('PATCH', path, { content: 'a', ...SILENT })).body.code).toBe(50005);
  });

  it('more than 200 new commands in a day (30034)', async () => {
    const named = (from: number) =>
      Array.from({ length: 100 }, (_, number) => ({ name: `c${from + number}`, description: 'A command.' }));
    const put = (from: number) => app.send('PUT', `/applications/${standIn.appId}/commands`, named(from));
    expect([(await put(0)).status, (await put(0)).status, (await put(100)).status]).toEqual([200, 200, 200]);
    expect((await put(200)).body.code).toBe(30034);
  });
});

it('takes a message with an enforced nonce once', async () => {
  const own = { nonce: '7', enforce_nonce: true };
  const first = await send('hello', anna.dm, own);
  const again = await send('hello', anna.dm, own);
  expect(again.body.id).toBe(first.body.id);
  expect(texts()).toEqual(['hello']);
});

describe('an event', () => {
  const heard = async (count: number) => {
    const gateway = new RawGateway(standIn);
    await gateway.ready({ intents: 1 << 12 });
    anna.goTo(anna.dm).say('one');
    anna.say('two');
    const messages = () => gateway.frames.filter((frame) => frame.t === 'MESSAGE_CREATE');
    await expect.poll(() => messages().length).toBe(count);
    return messages().map((frame) => (frame.d as { content: string }).content);
  };

  it('comes twice', async () => {
    standIn.faults.onEvent('MESSAGE_CREATE', { kind: 'twice' });
    expect(await heard(3)).toEqual(['one', 'one', 'two']);
  });

  it('comes after the next one, with sequence numbers in the order of arrival', async () => {
    standIn.faults.onEvent('any', { kind: 'after the next' });
    expect(await heard(2)).toEqual(['two', 'one']);
  });

  it('comes after the next one, or alone when none follows', async () => {
    standIn.faults.onEvent('MESSAGE_CREATE', { kind: 'after the next' }, 2);
    expect(await heard(2)).toEqual(['one', 'two']);
  });

  it('comes late', async () => {
    standIn.faults.onEvent('MESSAGE_CREATE', { kind: 'delay', ms: 30 });
    expect(await heard(2)).toEqual(['two', 'one']);
  });
});

it('plays the same random faults for the same seed, about as many as the rate says, until cleared', () => {
  const record = new RequestRecord();
  const request = record.add({ at: 0, method: 'GET', path: '', query: '', route: '', body: {}, files: [] });
  const draw = (seed: number) => {
    const faults = new Faults();
    faults.atRandom({ seed, rate: 0.2, requests: [{ kind: 'request lost' }, { kind: 'answer lost' }] });
    const drawn = Array.from({ length: 1000 }, () => faults.forRequest(request)?.kind ?? 'none');
    faults.clear();
    return { drawn, after: faults.forRequest(request) };
  };
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1).drawn).not.toEqual(draw(2).drawn);
  const faulted = draw(1).drawn.filter((kind) => kind !== 'none').length;
  // Binomial with n = 1000, p = 0.2: the standard deviation is 12.6, so these bounds are four of them.
  expect(faulted).toBeGreaterThan(150);
  expect(faulted).toBeLessThan(250);
  expect(draw(1).after).toBeUndefined();
});
