/** Many knitters at once, with calls that fail and a gateway that is cut: nothing is lost, nothing doubled, all answered in time. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { openKept } from '../../../src/discord.ts';
import { commandsFor } from '../../../src/transport/discord/commands.ts';
import { register, restFor } from '../../../src/transport/discord/registering.ts';
import { InteractionFailed } from '../../stand-in/interactions.ts';
import { PLATFORM_SETTINGS } from '../../stand-in/settings.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { flows, nothingForbidden, typedBy } from './circle.ts';
import { Knitter } from './knitter.ts';
import { environmentFor, letIn, type Program, start } from './program.ts';

export interface Crowd {
  readonly people: number;
  readonly seed: number;
  /** Between two cuts of the gateway, in milliseconds. */
  readonly cutEvery: number;
  /** The platform's times are so many times as long: for a machine that has other work to do, or is small. */
  readonly slowness: number;
}

export interface Met {
  readonly answers: number;
  /** Deeds that were not acknowledged in time though Discord had let every call of theirs pass. */
  readonly unexcused: number;
  /** Deeds that were not acknowledged in time after Discord had refused a call, or put it off. */
  readonly refusedByDiscord: number;
  readonly callsThatFailed: number;
  readonly cuts: number;
  /** Of all acknowledgements, in milliseconds after the deed. */
  readonly slowest: number;
  readonly seconds: number;
}

const CALLBACK = 'POST /interactions/:id/:token/callback';

const ANSWERS: ReadonlyMap<string, string> = new Map([
  ['spacing_from', '50'],
  ['spacing_to', '72'],
  ['spacing_rows', '84'],
  ['spacing_worked', 'back and forth, at both edges'],
  ['spacing_plain', '0'],
]);

/** All go the whole way, each as fast as she is answered. */
export async function crowd({ people, seed, cutEvery, slowness }: Crowd): Promise<Met> {
  const data = mkdtempSync(join(tmpdir(), 'easewright-crowd-'));
  const standIn = await startStandIn({
    identify: { maxConcurrency: 1, bucketMs: 0, perDay: 1000 },
    acknowledgeWithinMs: PLATFORM_SETTINGS.acknowledgeWithinMs * slowness,
    patienceMs: PLATFORM_SETTINGS.patienceMs * slowness,
  });
  await register(restFor(standIn.api, standIn.token), standIn.appId, commandsFor(flows));
  const bot = start('discord', environmentFor(standIn, data));
  await bot.until((out) => letIn(out) === 1);
  standIn.faults.atRandom({
    seed,
    rate: 0.05,
    requests: [
      { kind: 'rate limit', retryAfterMs: 200, scope: 'user' },
      { kind: 'rate limit', retryAfterMs: 200, scope: 'shared' },
      { kind: 'server error', status: 500 },
      { kind: 'server error', status: 503 },
    ],
  });
  let cuts = 0;
  const cutting = setInterval(() => {
    standIn.gateway.cut(4000);
    cuts += 1;
  }, cutEvery);
  const begun = performance.now();
  try {
    const knitters = Array.from({ length: people }, (_, n) => newKnitter(standIn, n));
    await Promise.race([Promise.all(knitters.map((knitter) => knitter.goAllTheWay())), endOf(bot)]);
    const seconds = Math.round((performance.now() - begun) / 1000);
    clearInterval(cutting);
    bot.process.kill('SIGTERM');
    expect(await bot.exit).toBe(0);
    const kept = openKept(data);
    for (const { session, taken } of knitters) expect(typedBy({ kept }, session ?? '')).toEqual(taken);
    for (const { taken } of knitters) expect(taken).toEqual([...ANSWERS]);
    kept.close();
    nothingForbidden({ standIn });
    return { ...account(standIn, knitters), cuts, seconds };
  } finally {
    clearInterval(cutting);
    bot.process.kill('SIGKILL');
    await standIn.close();
    rmSync(data, { recursive: true, force: true });
  }
}

/** Without the bot the crowd would try for ever. */
async function endOf({ exit, out }: Program): Promise<never> {
  const how = await exit;
  throw new Error(`the bot ended by itself (${how}):\n${out()}`);
}

function newKnitter(standIn: StandIn, n: number): Knitter {
  const where = n % 2 === 0 ? 'server' : 'direct message';
  return new Knitter(standIn.person(`Knitter ${n}`), { flow: 'spacing', answers: ANSWERS, where });
}

function account(standIn: StandIn, knitters: readonly Knitter[]): Omit<Met, 'cuts' | 'seconds'> {
  const { requests } = standIn.record;
  const faulted = requests.filter(({ verdict }) => verdict.kind === 'faulted');
  const putOff = new Set(
    faulted.filter(({ route }) => route === CALLBACK).map(({ path }) => path.split('/')[2]),
  );
  const late = knitters.flatMap(({ failed }) => failed).filter((one) => one instanceof InteractionFailed);
  const waits = standIn.record
    .to(CALLBACK)
    .flatMap(({ at, path, verdict }) =>
      verdict.kind === 'accepted' ? [at - deedAt(path.split('/')[2] ?? '')] : [],
    );
  return {
    answers: knitters.reduce((sum, { taken }) => sum + taken.length, 0),
    unexcused: late.filter(({ interaction }) => !putOff.has(interaction.id)).length,
    refusedByDiscord: late.filter(({ interaction }) => putOff.has(interaction.id)).length,
    callsThatFailed: faulted.length,
    slowest: waits.reduce((a, b) => Math.max(a, b), 0),
  };
}

/** When a deed was done, as its id tells; milliseconds since 1970. */
function deedAt(id: string): number {
  return Number((BigInt(id) >> 22n) + 1_420_070_400_000n);
}
