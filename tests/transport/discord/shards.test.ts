/** Several processes on one database. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openKept } from '../../../src/discord.ts';
import { readHealth } from '../../../src/transport/discord/health.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { command, nothingForbidden, press, questionOf, sessionOf } from './circle.ts';
import { environmentFor, letIn, type Program, run, start } from './program.ts';

let standIn: StandIn;
let data: string;
let bot: Program;
beforeEach(async () => {
  standIn = await startStandIn({ patienceMs: 15_000, shards: 2 });
  data = mkdtempSync(join(tmpdir(), 'easewright-shards-'));
  const environment = { ...environmentFor(standIn, data), EASEWRIGHT_DISCORD_SHARDS: '2' };
  await run('discord:commands', environment);
  bot = start('discord', environment);
  await bot.until((out) => letIn(out) === 2);
}, 60_000);
afterEach(async () => {
  bot.process.kill('SIGTERM');
  expect(await bot.exit).toBe(0);
  expect(standIn.gateway.connected()).toEqual([]);
  nothingForbidden({ standIn });
  await standIn.close();
  rmSync(data, { recursive: true, force: true });
}, 30_000);

const processes = () =>
  bot
    .out()
    .split('\n')
    .flatMap((line) => (line.startsWith('{') ? [JSON.parse(line)] : []));

describe('shards in processes of their own', { timeout: 60_000 }, () => {
  it('share the servers, never cross, and keep to the limit on identifying, also when one is killed', async () => {
    expect(
      standIn.gateway
        .connected()
        .map(({ shard }) => shard.id)
        .sort(),
    ).toEqual([0, 1]);
    const people = [];
    for (let n = 0; n < 6; n += 1) {
      const guild = standIn.world.addGuild(`circle ${n}`);
      people.push(standIn.person(`Knitter ${n}`).goTo(standIn.channelOf(guild)));
    }
    const walked = await Promise.all(
      people.map(async (person) => {
        const first = await command(person, 'fit start', { wish: 'sleeve' });
        const second = await press(person, first, 'Inches');
        const back = await press(
          person.goTo(person.dm),
          await command(person, 'fit go-on'),
          'From the cuff, flat',
        );
        expect(sessionOf(back)).toBe(sessionOf(second));
        return { person, message: back };
      }),
    );
    expect(walked.map(({ message }) => questionOf(message))).toEqual(people.map(() => 'gauge'));
    const kept = openKept(data);
    for (const { person, message } of walked)
      expect(kept.store.load(sessionOf(message))).toMatchObject({
        owner: `discord:${person.id}`,
        log: [{ typed: 'Inches' }, { typed: 'From the cuff, flat' }],
      });
    kept.close();
    await oneIsKilled();
    const identifies = standIn.gateway.received.filter(({ op }) => op === 2).map(({ at }) => at);
    expect(identifies).toHaveLength(3);
    for (const [n, at] of identifies.slice(1).entries())
      expect(at - (identifies[n] ?? 0)).toBeGreaterThanOrEqual(5000);
  });

  /** The process that was let in last is killed; another takes its place. */
  async function oneIsKilled(): Promise<void> {
    const [, second] = readHealth(data).sort((a, b) => a.shard.id - b.shard.id);
    if (second === undefined) throw new Error('there is no second process');
    process.kill(second.pid, 'SIGKILL');
    await bot.until((out) => letIn(out) === 3);
    expect(processes().filter(({ event }) => event === 'process ended')).toMatchObject([{ shard: 1 }]);
  }
});
