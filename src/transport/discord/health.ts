/** A small file that tells other programs how the bot is: one a process, written at every change and every few seconds. */
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import type { Line } from './client.ts';

const health = z.object({
  line: z.enum(['connecting', 'ready', 'lost', 'refused']),
  /** Milliseconds since 1970: since when it is so, and when it was written. */
  since: z.number(),
  at: z.number(),
  shard: z.object({ id: z.number(), of: z.number() }),
  pid: z.number(),
});
export type Health = z.infer<typeof health>;

/** In milliseconds. A file older than a few beats is of a process that is gone. */
export const BEAT = 15_000;
export const TOO_OLD = 4 * BEAT;

const NAME = /^discord-health-\d+-of-\d+\.json$/;

export interface Heart {
  readonly tell: (line: Line) => void;
  /** Removes the file. */
  readonly stop: () => void;
}

/** `failed` hears of a file that could not be written, on a full disk say: the bot goes on without. */
export function startHeart(
  folder: string,
  shard: Health['shard'],
  clock: () => number,
  failed: (error: unknown) => void,
): Heart {
  const file = join(folder, `discord-health-${shard.id}-of-${shard.of}.json`);
  let now: Health = { line: 'connecting', since: clock(), at: clock(), shard, pid: process.pid };
  const write = () => {
    now = { ...now, at: clock() };
    try {
      // Renamed into place, so that a reader never finds half a file.
      writeFileSync(`${file}.new`, `${JSON.stringify(now)}\n`);
      renameSync(`${file}.new`, file);
    } catch (error) {
      failed(error);
    }
  };
  const beat = setInterval(write, BEAT);
  beat.unref();
  return {
    tell: (line) => {
      now = { ...now, line, since: clock() };
      write();
    },
    stop: () => {
      clearInterval(beat);
      rmSync(file, { force: true });
    },
  };
}

/** What the processes of this folder last wrote. */
export function readHealth(folder: string): Health[] {
  return readdirSync(folder)
    .filter((name) => NAME.test(name))
    .flatMap((name) => {
      const read = health.safeParse(JSON.parse(readFileSync(join(folder, name), 'utf8')));
      return read.success ? [read.data] : [];
    });
}
