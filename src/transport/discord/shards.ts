/** Several processes that share the servers between them: each is started again when it ends by itself. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { setTimeout as wait } from 'node:timers/promises';
import type { Log } from './log.ts';

/** The exit code of a process that would fail again in the same way: settings are wrong, or Discord refuses us. */
export const HOPELESS = 78;

/** Before a process is started again, in milliseconds: more after each end, back to the first when one ran this long. */
const FIRST_WAIT = 1000;
const LONGEST_WAIT = 60_000;
const RAN_WELL = 60_000;

export interface Sharding {
  readonly shards: number;
  /** The program and its arguments, to which `--shard`, its number and how many there are is added. */
  readonly program: readonly [string, ...string[]];
  readonly log: Log;
  readonly stopping: AbortSignal;
}

/** Runs until it is told to stop, or until a process says that there is no hope. Gives the exit code. */
export async function superviseShards(sharding: Sharding): Promise<number> {
  const hopeless = new AbortController();
  const stopping = AbortSignal.any([sharding.stopping, hopeless.signal]);
  const lives = Array.from({ length: sharding.shards }, (_, id) =>
    live({ ...sharding, stopping }, id, () => hopeless.abort()),
  );
  await Promise.all(lives);
  return hopeless.signal.aborted ? HOPELESS : 0;
}

/** One shard, through all its processes. */
async function live(sharding: Sharding, id: number, giveUp: () => void): Promise<void> {
  const { stopping, log } = sharding;
  for (let pause = FIRST_WAIT; !stopping.aborted; pause = Math.min(pause * 2, LONGEST_WAIT)) {
    const begun = performance.now();
    const code = await oneProcess(sharding, id);
    if (stopping.aborted) return;
    log.warn('process ended', { shard: id, code: code ?? undefined });
    if (code === HOPELESS) return giveUp();
    if (performance.now() - begun > RAN_WELL) pause = FIRST_WAIT;
    await wait(pause, undefined, { signal: stopping }).catch(() => {});
  }
}

async function oneProcess({ program, shards, stopping }: Sharding, id: number): Promise<number | null> {
  const [file, ...args] = program;
  const child = spawn(file, [...args, '--shard', `${id}`, `${shards}`], { stdio: 'inherit' });
  const end = () => child.kill('SIGTERM');
  stopping.addEventListener('abort', end);
  try {
    return await exitOf(child);
  } finally {
    stopping.removeEventListener('abort', end);
  }
}

async function exitOf(child: ChildProcess): Promise<number | null> {
  const [code] = await once(child, 'exit');
  return typeof code === 'number' ? code : null;
}
