/** What the check finds, and the small things that it rests on. */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Checked, checkDiscord } from '../../../src/transport/discord/check.ts';
import { commandsFor } from '../../../src/transport/discord/commands.ts';
import { readHealth, startHeart, TOO_OLD } from '../../../src/transport/discord/health.ts';
import { identifyGate } from '../../../src/transport/discord/identify.ts';
import { register, restFor } from '../../../src/transport/discord/registering.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { flows } from './circle.ts';

let standIn: StandIn;
let data: string;
beforeEach(async () => {
  standIn = await startStandIn();
  data = mkdtempSync(join(tmpdir(), 'easewright-check-'));
});
afterEach(async () => {
  await standIn.close();
  rmSync(data, { recursive: true, force: true });
});

const SHARD = { id: 0, of: 1 };

async function check(changed: Partial<Checked> = {}): Promise<string[]> {
  const { token, appId: application, api } = standIn;
  const checked = { token, application, api, data, commands: commandsFor(flows), now: 1000, ...changed };
  return (await checkDiscord(checked)).map(({ kind, says }) => `${kind}: ${says}`);
}

const unheard = (error: unknown) => {
  throw error;
};

describe('the check', () => {
  it('finds nothing missing where all is there', async () => {
    await register(restFor(standIn.api, standIn.token), standIn.appId, commandsFor(flows));
    const heart = startHeart(data, SHARD, () => 900, unheard);
    heart.tell('ready');
    expect(await check()).toEqual([
      `fine: The folder ${data} can be written.`,
      'fine: Discord takes the token.',
      'fine: The commands are registered, as this version has them.',
      'fine: The bot is running and connected (1 process).',
    ]);
    heart.stop();
  });

  it('tells to register the commands where they are not, or are those of another version', async () => {
    const lacks = expect.stringMatching(/^lacks: The commands are not registered.*npm run discord:commands$/);
    expect(await check()).toContainEqual(lacks);
    await register(restFor(standIn.api, standIn.token), standIn.appId, commandsFor(flows).slice(1));
    expect(await check()).toContainEqual(lacks);
  });

  it.each<[string, Partial<Checked>, string]>([
    ['a token that Discord refuses', { token: 'ab.cd.ef' }, 'lacks: Discord refuses the token.'],
    [
      'the id of another application',
      { application: '12345678901234567' },
      'but the token belongs to the application',
    ],
    ['no internet', { api: 'http://127.0.0.1:9/api' }, 'lacks: Discord cannot be reached from this machine.'],
    [
      'a folder that cannot be written',
      { data: '/dev/null/here' },
      'lacks: The folder /dev/null/here cannot be written.',
    ],
  ])('tells of %s, and what to do', async (_, changed, says) => {
    expect(await check(changed)).toContainEqual(expect.stringContaining(says));
  });

  it('tells whether the bot runs, and whether it is connected', async () => {
    expect(await check()).toContainEqual('note: The bot is not running. To start it: npm run discord');
    const heart = startHeart(data, { id: 1, of: 2 }, () => 900, unheard);
    heart.tell('lost');
    expect(await check()).toContainEqual(
      'note: The bot is running but not connected (part 2 of 2: lost). It goes on trying.',
    );
    expect(await check({ now: 1000 + TOO_OLD })).toContainEqual(expect.stringContaining('not running'));
    heart.stop();
    expect(readdirSync(data)).toEqual([]);
  });

  it('tells of a sign of life that cannot be written, and lives on', () => {
    const failures: unknown[] = [];
    const heart = startHeart(
      join(data, 'gone'),
      SHARD,
      () => 900,
      (error) => failures.push(error),
    );
    heart.tell('ready');
    heart.stop();
    expect(failures).toEqual([expect.objectContaining({ code: 'ENOENT' })]);
  });

  it('passes over a file that is no sign of life', () => {
    writeFileSync(join(data, 'discord-health-0-of-1.json'), '{"line":"asleep"}');
    expect(readHealth(data)).toEqual([]);
  });
});

it('shards of one bucket identify one after another, those of two beside each other', async () => {
  let now = 0;
  const free = new Map<string, number>();
  const passAt = (gate: string, apart: number, at: number) => {
    const mine = Math.max(at, free.get(gate) ?? 0);
    free.set(gate, mine + apart);
    return mine;
  };
  const gate = identifyGate({ passAt }, () => now, 2, 40);
  const order: number[] = [];
  const pass = async (shard: number) => {
    await gate.waitForIdentify(shard, new AbortController().signal);
    order.push(shard);
  };
  await Promise.all([0, 2, 1].map(pass));
  expect(order).toEqual([0, 1, 2]);
  now = 1000;
  await pass(2);
  expect([...free]).toEqual([
    ['identify 0', 1040],
    ['identify 1', 40],
  ]);
});
