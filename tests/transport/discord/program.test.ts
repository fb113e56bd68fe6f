/** `npm run discord`, `discord:check` and `discord:commands`, as processes of their own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { openKept } from '../../../src/discord.ts';
import { readHealth } from '../../../src/transport/discord/health.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { command, nothingForbidden, press, questionOf, sessionOf, type } from './circle.ts';
import { type Environment, environmentFor, letIn, run, start } from './program.ts';

let standIn: StandIn;
let data: string;
let environment: Environment;
beforeAll(async () => {
  standIn = await startStandIn({
    patienceMs: 10_000,
    identify: { maxConcurrency: 1, bucketMs: 0, perDay: 1000 },
  });
  data = mkdtempSync(join(tmpdir(), 'easewright-program-'));
  environment = environmentFor(standIn, data);
});
afterAll(async () => {
  nothingForbidden({ standIn });
  await standIn.close();
  rmSync(data, { recursive: true, force: true });
});

describe('discord:check and discord:commands', () => {
  it('name everything that is not set, at once', async () => {
    const { code, out } = await run('discord:check', { EASEWRIGHT_DATA: data, EASEWRIGHT_UNIT: 'ells' });
    expect(code).toBe(1);
    expect(out).toContain("missing  EASEWRIGHT_UNIT is 'ells'");
    expect(out).toContain('missing  EASEWRIGHT_DISCORD_TOKEN is missing: the secret token of your bot');
    expect(out).toContain('missing  EASEWRIGHT_DISCORD_APPLICATION is missing: the application id');
    expect(out).toContain('Missing: 3.');
  });

  it('register the commands, and find nothing missing', async () => {
    const first = await run('discord:commands', environment);
    expect(first).toMatchObject({ code: 0, out: expect.stringContaining('The commands are registered.') });
    const after = await run('discord:check', environment);
    expect(after).toMatchObject({ code: 0, out: expect.stringContaining('Nothing is missing.') });
    expect(after.out).toContain('note     The bot is not running. To start it: npm run discord');
  });

  it.each([
    ['Discord refuses the token', { EASEWRIGHT_DISCORD_TOKEN: 'ab.cd.ef' }],
    ['Discord cannot be reached', { EASEWRIGHT_DISCORD_API: 'http://127.0.0.1:9/api' }],
  ])('say in words that %s', async (why, changed) => {
    const { code, out } = await run('discord:commands', { ...environment, ...changed });
    expect({ code, out }).toEqual({ code: 1, out: expect.stringContaining(`not registered. ${why}`) });
    expect(out).not.toContain('at ');
  });
});

describe('discord', () => {
  it('is not to be started again where Discord refuses the token, or settings are wrong', async () => {
    const refused = await run('discord', { ...environment, EASEWRIGHT_DISCORD_TOKEN: 'ab.cd.ef' });
    expect(refused).toMatchObject({ code: 78, out: expect.stringContaining('TokenInvalid') });
    const wrong = await run('discord', { ...environment, EASEWRIGHT_UNIT: 'ells' });
    expect(wrong).toMatchObject({ code: 78, out: expect.stringContaining("EASEWRIGHT_UNIT is 'ells'") });
  });

  it('answers, tells how it is, ends on SIGTERM with everything stored, and logs nothing that was typed', async () => {
    const bot = start('discord', environment);
    await bot.until((out) => letIn(out) === 1);
    // The health is written beside the log, not with it: the one may be read a moment before the other.
    await vi.waitFor(
      () => expect(readHealth(data)).toMatchObject([{ line: 'ready', pid: bot.process.pid }]),
      10_000,
    );
    const anna = standIn.person('Anna Wintergreen');
    const first = await command(anna, 'fit measure', { what: 'Upper arm', table: "Women's" });
    const asked = await press(anna, first, 'Centimetres');
    await type(anna, asked, 'wide, I fear');
    await type(anna, asked, '31.7 cm');
    bot.process.kill('SIGTERM');
    expect(await bot.exit).toBe(0);
    const kept = openKept(data);
    expect(kept.store.load(sessionOf(asked))?.log.at(-1)).toMatchObject({ typed: '31.7 cm' });
    kept.close();
    const lines = bot
      .out()
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines.map(({ event }) => event)).toEqual(['line', 'stopped']);
    // The clock may read any figure.
    const logged = JSON.stringify(lines.map(({ time, ...said }) => said));
    expect(logged).not.toMatch(/31\.7|wide|Anna|Wintergreen|upper_arm/);
    expect(bot.out()).not.toContain(anna.id);
    expect(readHealth(data)).toEqual([]);
  });

  it('ends on SIGTERM also while its line is lost, and does not open it again', async () => {
    const bot = start('discord', environment);
    await bot.until((out) => letIn(out) === 1);
    standIn.gateway.cut(4000);
    await bot.until((out) => out.includes('"line":"lost"'));
    bot.process.kill('SIGTERM');
    expect(await bot.exit).toBe(0);
    expect(standIn.gateway.connected()).toEqual([]);
  });

  it('ends on SIGTERM also while Discord leaves it without an answer', async () => {
    const bot = start('discord', environment);
    await bot.until((out) => letIn(out) === 1);
    standIn.faults.onRequest('PATCH /channels/:channel/messages/:message', { kind: 'delay', ms: 3_600_000 });
    const berta = standIn.person('Berta');
    berta.goTo(berta.dm);
    await press(berta, await command(berta, 'fit start', { wish: 'sleeve' }), 'Inches');
    berta.say('from the cuff, flat');
    await berta.waitFor((message) => questionOf(message) === 'gauge', 'the next question');
    await expect.poll(() => standIn.record.requests.at(-1)?.method).toBe('PATCH');
    bot.process.kill('SIGTERM');
    expect(await bot.exit).toBe(0);
  });
});
