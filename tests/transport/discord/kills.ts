/** The real program killed again and again while knitters go through their interviews; what they were shown holds. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { expect } from 'vitest';
import { type Kept, openKept } from '../../../src/discord.ts';
import { commandsFor } from '../../../src/transport/discord/commands.ts';
import { register, restFor } from '../../../src/transport/discord/registering.ts';
import { WHOLE } from '../../dialogue/whole.ts';
import { chance } from '../../stand-in/chance.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { flows, nothingForbidden, planFile, typedBy } from './circle.ts';
import { Knitter } from './knitter.ts';
import { environmentFor, letIn, type Program, start } from './program.ts';

export interface Kills {
  readonly times: number;
  readonly seed: number;
  readonly people: number;
  /** So many requests of a life, at most, Discord has met when the program is killed, or is about to be. */
  readonly longestLife: number;
}

/** From the last request that is met to the kill, at most, in milliseconds: so that it falls anywhere between two. */
const MOMENT = 12;

/** What was met on the way. */
export interface Met {
  readonly answers: number;
  readonly plans: number;
  /** Kills at which a deed was under way. */
  readonly interrupted: number;
  /** Answers that were kept although nobody was told so before the kill. */
  readonly keptUnseen: number;
}

export async function killAgainAndAgain({ times, seed, people, longestLife }: Kills): Promise<Met> {
  const next = chance(seed);
  const data = mkdtempSync(join(tmpdir(), 'easewright-kills-'));
  const standIn = await startStandIn({
    // Whether the program is quick enough is not asked here: they wait for it until it is killed.
    acknowledgeWithinMs: 60_000,
    patienceMs: 60_000,
    identify: { maxConcurrency: 1, bucketMs: 0, perDay: 10_000 },
  });
  await register(restFor(standIn.api, standIn.token), standIn.appId, commandsFor(flows));
  const kept = openKept(data);
  const met = { answers: 0, plans: 0, interrupted: 0, keptUnseen: 0 };
  const knitters = Array.from({ length: people }, (_, n) => newKnitter(standIn, n));
  let made = people;
  try {
    for (let kill = 0; kill < times; kill += 1) {
      const bot = await started(standIn, data);
      let alive = true;
      const acting = knitters.map(async (_, n) => {
        while (alive) {
          const knitter = knitters[n];
          if (knitter === undefined) return;
          await knitter.step();
          if (knitter.plan === undefined) continue;
          expect(planFile(knitter.plan)).toMatch(/^Planned for your gauge of 5\.5 stitches per in/);
          met.plans += 1;
          knitters[n] = newKnitter(standIn, made);
          made += 1;
        }
      });
      const life = 1 + Math.floor(next() * longestLife);
      const killing = standIn.record.further(life).then(async () => {
        await wait(next() * MOMENT);
        alive = false;
        bot.process.kill('SIGKILL');
        expect(await bot.exit).toBe('SIGKILL');
        standIn.giveUp();
      });
      await Promise.all([killing, ...acting]);
      met.interrupted += knitters.some(({ unsure }) => unsure !== undefined) ? 1 : 0;
      for (const knitter of knitters) met.keptUnseen += held(kept, knitter);
    }
    await goOn(standIn, data, knitters);
    for (const knitter of knitters) met.keptUnseen += held(kept, knitter);
    met.answers = knitters.reduce((sum, { taken }) => sum + taken.length, met.plans * WHOLE.length);
    nothingForbidden({ standIn });
    return met;
  } finally {
    kept.close();
    await standIn.close();
    rmSync(data, { recursive: true, force: true });
  }
}

function newKnitter(standIn: StandIn, n: number): Knitter {
  const where = n % 2 === 0 ? 'server' : 'direct message';
  return new Knitter(standIn.person(`Knitter ${n}`), { flow: 'whole', answers: new Map(WHOLE), where });
}

/** The program, let in. So that it need not wait five seconds after the one before, the gate is opened. */
async function started(standIn: StandIn, data: string): Promise<Program> {
  const db = new Database(join(data, 'easewright.sqlite'));
  db.exec('DELETE FROM gate');
  db.close();
  const bot = start('discord', environmentFor(standIn, data));
  await bot.until((out) => letIn(out) === 1);
  return bot;
}

/** Every interview goes on from its last message: one more answer, or the plan. */
async function goOn(standIn: StandIn, data: string, knitters: readonly Knitter[]): Promise<void> {
  const bot = await started(standIn, data);
  await Promise.all(
    knitters.map(async (knitter) => {
      const before = knitter.taken.length;
      for (let tries = 0; tries < 5; tries += 1) {
        await knitter.step();
        if (knitter.taken.length > before || knitter.plan !== undefined) return;
      }
      throw new Error(`${knitter.person.account.name} cannot go on`);
    }),
  );
  bot.process.kill('SIGTERM');
  expect(await bot.exit).toBe(0);
}

/** Each answer that she was shown is there once, in order; beside them at most the one that was under way. */
function held(kept: Kept, knitter: Knitter): number {
  const { session, taken, unsure } = knitter;
  if (session === undefined) return 0;
  const stored = typedBy({ kept }, session);
  expect(stored.slice(0, taken.length)).toEqual(taken);
  const beyond = stored.slice(taken.length);
  if (beyond.length > 0) expect(beyond).toEqual([unsure]);
  return beyond.length;
}
