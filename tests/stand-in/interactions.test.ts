import { setTimeout as wait } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Answer, messageOf, NeverAnswered } from './answer.ts';
import { SILENT } from './bad/row.ts';
import { type Interaction, InteractionFailed } from './interactions.ts';
import type { Person } from './person.ts';
import { type RawAnswer, RawApp } from './raw-app.ts';
import type { Settings } from './settings.ts';
import { type StandIn, startStandIn } from './stand-in.ts';

const reply = (content: string, own: object = {}) => ({ type: 4, data: { content, ...SILENT, ...own } });
const row = { type: 1, components: [{ type: 2, style: 1, label: 'Next', custom_id: 'next' }] };

let standIn: StandIn;
let app: RawApp;
let anna: Person;
const opened: Interaction[] = [];

async function start(settings: Partial<Settings>): Promise<void> {
  opened.length = 0;
  standIn = await startStandIn(settings);
  app = new RawApp(standIn);
  anna = standIn.person('Anna');
  await app.register({ name: 'fit', integration_types: [0, 1] });
  const open = standIn.interactions.open.bind(standIn.interactions);
  standIn.interactions.open = (opening) => {
    const interaction = open(opening);
    opened.push(interaction);
    return interaction;
  };
}

/** Starts again with people and platform in a hurry. */
async function hurry(settings: Partial<Settings>): Promise<void> {
  await standIn.close();
  await start(settings);
}

beforeEach(() => start({}));
afterEach(() => standIn.close());

/** What she does, and the interaction that the app got of it. */
function begin(deed: Promise<Answer>): { interaction: Interaction; answer: Promise<Answer> } {
  const interaction = opened.at(-1);
  if (!interaction) throw new Error('Nothing was opened.');
  deed.catch(() => {});
  return { interaction, answer: deed };
}

function webhook(method: string, { token }: Interaction, rest: string, body?: unknown): Promise<RawAnswer> {
  return app.send(method, `/webhooks/${standIn.appId}/${token}${rest}`, body);
}

describe('an interaction', () => {
  it('fails for the person when nobody answers in time, and a late answer gets 10062', async () => {
    await hurry({ acknowledgeWithinMs: 30 });
    const { interaction, answer } = begin(anna.command('fit'));
    await expect(answer).rejects.toBeInstanceOf(InteractionFailed);
    await expect(answer).rejects.toThrow(/command 'fit'/);
    const late = await app.answer(interaction, reply('sorry'));
    expect([late.status, late.body.code]).toEqual([404, 10062]);
    expect((await webhook('POST', interaction, '', { content: 'a', ...SILENT })).body.code).toBe(10015);
  });

  it('takes one answer: the second gets 40060', async () => {
    await hurry({ patienceMs: 30 });
    const { interaction, answer } = begin(anna.command('fit'));
    expect((await app.answer(interaction, { type: 5 })).status).toBe(204);
    const second = await app.answer(interaction, { type: 9, data: {} });
    expect([second.status, second.body.code]).toEqual([400, 40060]);
    await expect(answer).rejects.toBeInstanceOf(NeverAnswered);
  });

  it('is unknown by a wrong token', async () => {
    const { interaction } = begin(anna.command('fit'));
    expect((await app.answer({ ...interaction, token: 'guessed' }, { type: 5 })).body.code).toBe(10062);
  });

  it('still takes an answer after a payload that was refused', async () => {
    const { interaction, answer } = begin(anna.command('fit'));
    await app.answer(interaction, reply('x'.repeat(2001)));
    await app.answer(interaction, reply('shorter'));
    expect(messageOf(await answer).text).toBe('shorter');
  });

  it('gives its message back on request', async () => {
    const { interaction } = begin(anna.command('fit'));
    const path = `/interactions/${interaction.id}/${interaction.token}/callback?with_response=true`;
    const { body } = await app.send('POST', path, reply('hello', { flags: 64 }));
    expect(body).toMatchObject({
      interaction: { id: interaction.id, type: 2, response_message_ephemeral: true },
      resource: { type: 4, message: { content: 'hello' } },
    });
  });
});

describe('a token', () => {
  it('reads, edits and deletes the original and follow-ups', async () => {
    const { interaction } = begin(anna.command('fit'));
    await app.answer(interaction, reply('first'));
    const second = await webhook('POST', interaction, '', { content: 'second', ...SILENT });
    expect((await webhook('GET', interaction, '/messages/@original')).body.content).toBe('first');
    await webhook('PATCH', interaction, '/messages/@original', { content: 'first, better', ...SILENT });
    await webhook('PATCH', interaction, `/messages/${second.body.id}`, {
      content: 'second, better',
      ...SILENT,
    });
    expect(anna.sees().map((message) => message.text)).toEqual(['first, better', 'second, better']);
    expect((await webhook('DELETE', interaction, '/messages/@original')).status).toBe(204);
    expect(anna.sees().map((message) => message.text)).toEqual(['second, better']);
    expect((await webhook('GET', interaction, '/messages/@original')).body.code).toBe(10008);
  });

  it('reaches no message of another interaction', async () => {
    const first = begin(anna.command('fit'));
    await app.answer(first.interaction, reply('hers'));
    const message = messageOf(await first.answer);
    const second = begin(standIn.person('Berta').command('fit'));
    await app.answer(second.interaction, reply('the other'));
    const answer = await webhook('PATCH', second.interaction, `/messages/${message.id}`, {
      content: 'a',
      ...SILENT,
    });
    expect(answer.body.code).toBe(10008);
  });

  it('serves nothing before the answer (10015) and nothing once it has expired (50027)', async () => {
    const { interaction } = begin(anna.command('fit'));
    expect((await webhook('POST', interaction, '', { content: 'a', ...SILENT })).body.code).toBe(10015);
    await app.answer(interaction, reply('first'));
    standIn.interactions.expireTokens();
    const late = await webhook('PATCH', interaction, '/messages/@original', { content: 'a', ...SILENT });
    expect([late.status, late.body.code]).toEqual([401, 50027]);
  });

  it('expires by itself after its lifetime', async () => {
    const short = await startStandIn({ tokenLifetimeMs: 20 });
    const interaction = short.interactions.open({ ...begin(anna.command('fit')).interaction });
    short.interactions.acknowledge(interaction, 5);
    await wait(40);
    expect(() => short.interactions.webhook(interaction.token)).toThrow('Invalid Webhook Token');
    await short.close();
  });

  it('allows five follow-ups where the app is only hers, not the server’s (40094)', async () => {
    anna.account.hasApp = true;
    anna.goTo(standIn.channelOf(standIn.world.addGuild('strangers', { hasApp: false })));
    const { interaction } = begin(anna.command('fit'));
    await app.answer(interaction, reply('first'));
    const codes = [];
    for (let sent = 0; sent < 6; sent += 1) {
      codes.push((await webhook('POST', interaction, '', { content: 'a', ...SILENT })).body.code);
    }
    expect(codes).toEqual([undefined, undefined, undefined, undefined, undefined, 40094]);
  });
});

describe('a deferred reply', () => {
  it('shows itself loading, and is filled in by the first follow-up, whose own ephemeral flag does not count', async () => {
    const { interaction, answer } = begin(anna.command('fit'));
    await app.answer(interaction, { type: 5, data: { flags: 0 } });
    expect(anna.sees()).toMatchObject([{ isLoading: true, text: '' }]);
    await webhook('POST', interaction, '', { content: 'worked out', flags: 64, ...SILENT });
    expect(messageOf(await answer)).toMatchObject({
      text: 'worked out',
      isEphemeral: false,
      isLoading: false,
    });
    expect(anna.sees()).toHaveLength(1);
  });

  it('is still being waited for while an acknowledgement is all that was asked', async () => {
    const { interaction, answer } = begin(anna.command('fit', {}, { until: 'acknowledged' }));
    await app.answer(interaction, { type: 5 });
    expect(await answer).toMatchObject({ kind: 'acknowledged', type: 5 });
  });
});

describe('a button', () => {
  it('can be pressed again by a client that lags behind, but not by one that is up to date', async () => {
    const { interaction, answer } = begin(anna.command('fit'));
    await app.answer(interaction, reply('first', { components: [row] }));
    const message = messageOf(await answer);
    const press = begin(anna.press(message, 'Next'));
    await app.answer(press.interaction, { type: 7, data: { content: 'done', components: [], ...SILENT } });
    expect(messageOf(await press.answer).buttons).toEqual([]);
    await expect(anna.press(message, 'Next')).rejects.toThrow("There is no live button 'Next'.");
    const again = begin(anna.press(message, 'Next', { evenIfGone: true }));
    await app.answer(again.interaction, reply('that one is done already', { flags: 64 }));
    expect(messageOf(await again.answer).isEphemeral).toBe(true);
  });

  it('may lead to a new message after a silent acknowledgement, or to the removal of its own', async () => {
    const { interaction, answer } = begin(anna.command('fit'));
    await app.answer(interaction, reply('first', { components: [row] }));
    const message = messageOf(await answer);
    const press = begin(anna.press(message, 'Next'));
    await app.answer(press.interaction, { type: 6 });
    await webhook('POST', press.interaction, '', { content: 'next', ...SILENT });
    expect(await press.answer).toMatchObject({ kind: 'message', message: { text: 'next' } });
    const last = begin(anna.press(message, 'Next'));
    await app.answer(last.interaction, { type: 6 });
    await webhook('DELETE', last.interaction, '/messages/@original');
    expect((await last.answer).kind).toBe('removed');
    await expect(anna.press(message, 'Next')).rejects.toThrow('The message is gone.');
  });
});

it('records every mention that would call somebody, and demands silence only where it is set to', async () => {
  const lax = await startStandIn({ silence: 'not demanded' });
  const berta = lax.person('Berta');
  const raw = new RawApp(lax);
  const path = `/channels/${berta.dm.id}/messages`;
  await raw.send('POST', path, { content: `@everyone <@${berta.id}> <@&5> @here` });
  await raw.send('POST', path, {
    content: `@everyone <@${berta.id}>`,
    allowed_mentions: { parse: [], users: [berta.id] },
  });
  await raw.send('POST', path, { content: `@everyone <@${berta.id}>`, ...SILENT });
  expect(lax.record.violations).toEqual([]);
  expect(lax.record.requests.map((request) => request.mentions)).toEqual([
    ['@everyone', `<@${berta.id}>`, '<@&5>', '@here'],
    [`<@${berta.id}>`],
    [],
  ]);
  await lax.close();
});
