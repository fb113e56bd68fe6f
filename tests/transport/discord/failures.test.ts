/** What goes wrong between us and Discord, and with the disk: for each a stated behaviour. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { messageOf } from '../../stand-in/answer.ts';
import type { RequestFault } from '../../stand-in/faults.ts';
import { InteractionFailed } from '../../stand-in/interactions.ts';
import type { Person } from '../../stand-in/person.ts';
import { expiredToken, unknownInteraction, unknownMessage } from '../../stand-in/refusal.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import {
  type Circle,
  circle,
  command,
  nothingForbidden,
  press,
  questionOf,
  read,
  sessionOf,
  typedBy,
} from './circle.ts';

const CALLBACK = 'POST /interactions/:id/:token/callback';
const EDIT = 'PATCH /webhooks/:app/:token/messages/:message';
const POST = 'POST /channels/:channel/messages';

let here: Circle;
let anna: Person;
beforeEach(async () => {
  here = await circle({ acknowledgeWithinMs: 700, patienceMs: 5000 });
  anna = here.standIn.person('Anna');
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const LATE = { evenIfGone: true } as const;
const faults = () => here.standIn.faults;

/** Her sleeve, at its second question. */
async function atSleeve(): Promise<SeenMessage> {
  return press(anna, await command(anna, 'fit start', { wish: 'sleeve' }), 'Inches');
}

/** What she typed in the interview of this message. */
const typed = (message: SeenMessage) => typedBy(here, sessionOf(message)).map(([, text]) => text);
const BOTH = ['Inches', 'From the cuff, flat'];

describe('three seconds', () => {
  it('are kept: a press is acknowledged before anything is worked out, and then shown', async () => {
    const before = here.standIn.record.requests.length;
    await atSleeve();
    const sent = here.standIn.record.requests.slice(before);
    const types = sent.map(({ route, body }) =>
      route === CALLBACK ? (body as { type: number }).type : route?.split(' ')[0],
    );
    expect(types).toEqual([5, 'PATCH', 6, 'PATCH']);
  });

  it('are kept by a form: it opens as the very first act', async () => {
    const message = await atSleeve();
    const before = here.standIn.record.requests.length;
    await anna.press(message, 'Type my answer');
    expect(here.standIn.record.requests.slice(before).map(({ body }) => body)).toMatchObject([{ type: 9 }]);
  });
});

describe('an interaction that Discord no longer knows', () => {
  it('is not taken for an answer; the same press again is', async () => {
    const message = await atSleeve();
    faults().onRequest(CALLBACK, { kind: 'refusal', refusal: unknownInteraction() });
    await expect(anna.press(message, 'From the cuff, flat')).rejects.toThrow(InteractionFailed);
    expect(typed(message)).toEqual(['Inches']);
    await press(anna, message, 'From the cuff, flat');
    expect(typed(message)).toEqual(BOTH);
  });

  it('where a form was to open: the question comes as a direct message, and what is written there is the answer', async () => {
    const message = await atSleeve();
    faults().onRequest(CALLBACK, { kind: 'refusal', refusal: unknownInteraction() });
    const failing = expect(anna.press(message, 'Type my answer')).rejects.toThrow(InteractionFailed);
    const asked = await anna.waitFor((m) => questionOf(m) === 'sleeve_made', 'the question', anna.dm);
    await failing;
    anna.goTo(anna.dm).say('from the cuff, flat');
    await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    expect(typed(message)).toEqual(['Inches', 'from the cuff, flat']);
    await expect.poll(() => read(anna.now(asked) ?? asked)).toContain('Noted: From the cuff, flat');
  });

  it('where a form was to open and direct messages are closed: pressing again opens it', async () => {
    anna.account.takesDirectMessages = false;
    const message = await atSleeve();
    faults().onRequest(CALLBACK, { kind: 'refusal', refusal: unknownInteraction() });
    await expect(anna.press(message, 'Type my answer')).rejects.toThrow(InteractionFailed);
    expect((await anna.press(message, 'Type my answer')).kind).toBe('modal');
  });
});

describe('a token that has expired before the next question is shown', () => {
  it('loses no answer: in a server the old message tells what became of it', async () => {
    const message = await atSleeve();
    faults().onRequest(EDIT, { kind: 'refusal', refusal: expiredToken() });
    await anna.press(message, 'From the cuff, flat', { until: 'acknowledged' });
    await expect.poll(() => typed(message)).toEqual(BOTH);
    const shown = messageOf(await anna.press(message, 'From the cuff, flat', LATE));
    expect(read(shown)).toContain('That was answered already');
    expect(questionOf(shown)).toBe('gauge');
  });

  it('loses no answer: in a direct message the next question comes as a new message', async () => {
    anna.goTo(anna.dm);
    const message = await atSleeve();
    faults().onRequest(EDIT, { kind: 'refusal', refusal: expiredToken() });
    await anna.press(message, 'From the cuff, flat', { until: 'acknowledged' });
    const asked = await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    expect(asked.id).not.toBe(message.id);
    expect(typed(message)).toEqual(BOTH);
  });

  it('loses no answer where she had put the private message away', async () => {
    const message = await atSleeve();
    faults().onRequest(EDIT, { kind: 'refusal', refusal: unknownMessage() });
    await anna.press(message, 'From the cuff, flat', { until: 'acknowledged' });
    await expect.poll(() => typed(message)).toEqual(BOTH);
    expect(questionOf(await command(anna, 'fit go-on'))).toBe('gauge');
  });
});

const PASSING: readonly [string, RequestFault][] = [
  ['a rate limit of ours', { kind: 'rate limit', retryAfterMs: 60, scope: 'user' }],
  ['a rate limit of all', { kind: 'rate limit', retryAfterMs: 60, scope: 'global' }],
  ['a rate limit shared with others', { kind: 'rate limit', retryAfterMs: 60, scope: 'shared' }],
  ['a server error', { kind: 'server error', status: 503 }],
  ['a request that is lost', { kind: 'request lost' }],
  ['an answer that is lost', { kind: 'answer lost' }],
];

describe.each(PASSING)('%s', (_, fault) => {
  it.each([
    ['at the acknowledgement', CALLBACK],
    ['at the next question', EDIT],
  ])('%s is got over: one answer, one message, the next question', async (_where, route) => {
    const message = await atSleeve();
    faults().onRequest(route, fault);
    const shown = await press(anna, message, 'From the cuff, flat');
    expect(questionOf(shown)).toBe('gauge');
    expect(anna.sees()).toHaveLength(1);
    expect(typed(message)).toEqual(BOTH);
  });

  it('at a direct message is got over: one answer, and one message', async () => {
    anna.goTo(anna.dm);
    const message = await atSleeve();
    faults().onRequest(POST, fault);
    anna.say('from the cuff, flat');
    await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    await expect.poll(() => read(anna.now(message) ?? message)).toContain('Noted:');
    expect(anna.sees().filter((m) => m.isFromApp)).toHaveLength(2);
    expect(typed(message)).toEqual(BOTH.with(1, 'from the cuff, flat'));
  });
});

describe('a gateway that is lost', () => {
  it.each([
    ['cut', () => here.standIn.gateway.cut(4000)],
    ['broken off', () => here.standIn.gateway.breakOff()],
    ['asked to reconnect', () => here.standIn.gateway.askToReconnect()],
  ])('(%s) is found again, and what was done meanwhile is answered', async (_, interrupt) => {
    const message = await atSleeve();
    interrupt();
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
    expect(typed(message)).toEqual(BOTH);
  });

  it('with its session is opened anew', async () => {
    const message = await atSleeve();
    here.standIn.gateway.invalidate(false);
    await expect
      .poll(() => here.standIn.gateway.received.filter(({ op }) => op === 2).length, { timeout: 5000 })
      .toBe(2);
    await expect.poll(() => here.standIn.gateway.connected().length).toBe(1);
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  });
});

describe('a disk that fails', () => {
  it('takes no answer, says so, leaves the question as it is, and takes the answer when it works again', async () => {
    const message = await atSleeve();
    const other = new Database(join(here.data, 'easewright.sqlite'));
    other.exec('BEGIN IMMEDIATE');
    const told = messageOf(await anna.press(message, 'From the cuff, flat'));
    expect(read(told)).toContain('could not be saved');
    expect(told.isEphemeral).toBe(true);
    expect(anna.now(message)?.buttons).toEqual(message.buttons);
    expect(typed(message)).toEqual(['Inches']);
    other.exec('ROLLBACK');
    other.close();
    await press(anna, message, 'From the cuff, flat');
    expect(typed(message)).toEqual(BOTH);
  });

  it('says so in a direct message too', async () => {
    anna.goTo(anna.dm);
    const message = await atSleeve();
    const { chat } = here.kept;
    await expect.poll(() => chat.bookmarkOf(`discord:${anna.id}`)?.question).toBe('sleeve_made');
    const other = new Database(join(here.data, 'easewright.sqlite'));
    other.exec('BEGIN IMMEDIATE');
    anna.say('from the cuff, flat');
    await anna.waitFor((m) => read(m).includes('could not be saved'), 'the trouble');
    other.exec('ROLLBACK');
    other.close();
    anna.say('from the cuff, flat');
    await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    expect(typed(message)).toEqual(BOTH.with(1, 'from the cuff, flat'));
  });
});

it('a stop finishes what is under way: what was acknowledged is shown', async () => {
  const message = await atSleeve();
  faults().onRequest(EDIT, { kind: 'delay', ms: 400 });
  const acting = anna.press(message, 'From the cuff, flat');
  await expect.poll(() => typed(message)).toEqual(BOTH);
  await here.restart();
  expect(questionOf(messageOf(await acting))).toBe('gauge');
});

it('a mistake of ours is told in plain words, keeps the answers, and is logged by name and place alone', async () => {
  const message = await atSleeve();
  const { store } = here.kept;
  const load = store.load.bind(store);
  Object.assign(store, {
    load: () => {
      throw new RangeError(`bust of ${anna.account.name} is 96.5 cm`);
    },
  });
  const told = messageOf(await anna.press(message, 'From the cuff, flat'));
  expect(read(told)).toContain('Something went wrong on my side. Everything you have answered is kept.');
  Object.assign(store, { load });
  expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  const line = here.log.find((one) => one.includes('RangeError'));
  expect(JSON.parse(line ?? '')).toMatchObject({
    event: 'failed',
    error: 'RangeError',
    at: expect.stringContaining('at '),
  });
  expect(line).not.toContain('96.5');
});
