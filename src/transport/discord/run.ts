/** The bot from start to stop: connects, answers, and leaves with everything stored and every answer given. */
import { setTimeout as wait } from 'node:timers/promises';
import { type Client, Events, Status } from 'discord.js';
import { Answers } from './answering.ts';
import type { Bot } from './bot.ts';
import { type Connecting, type Line, makeClient, watchLine } from './client.ts';
import { DirectMessages } from './direct.ts';
import { hearing } from './hearing.ts';
import type { DiscordParts } from './parts.ts';
import { Threads } from './threads.ts';
import { Leisure, Pace, Turns } from './turns.ts';

export interface Starting extends Connecting {
  readonly application: string;
  /** Called at every change of the connection. */
  readonly line: (line: Line) => void;
}

export interface Running {
  /** Resolves when the gateway has let us in. Rejects with what the library throws where it does not. */
  readonly ready: Promise<void>;
  /** Hears nothing new, finishes what is under way, and hangs up. */
  readonly stop: () => Promise<void>;
}

/** Of fifty requests a second (topics/rate-limits), ten may go to closing old questions. In milliseconds. */
const BETWEEN_CLOSINGS = 100;
/** How long what is under way may take at the end, and how long hanging up may take, in milliseconds. */
const FINISHING = 10_000;
const HANGING_UP = 2000;

export function runDiscord(parts: DiscordParts, starting: Starting): Running {
  const client = makeClient(parts, starting);
  const bot: Bot = {
    parts,
    answers: new Answers(starting.api, starting.application),
    direct: new DirectMessages(client.rest),
    threads: new Threads(),
    turns: new Turns(),
    pace: new Pace(),
    leisure: new Leisure(BETWEEN_CLOSINGS),
  };
  const ears = hearing(bot);
  client.on(Events.Raw, bot.threads.hear);
  client.on(Events.InteractionCreate, ears.interaction);
  client.on(Events.MessageCreate, ears.message);
  const unwatch = watchLine(client, parts, starting.line);
  starting.line('connecting');
  return {
    ready: Promise.all([client.login(starting.token), letIn(client)]).then(() => {}),
    stop: async () => {
      client.off(Events.InteractionCreate, ears.interaction);
      client.off(Events.MessageCreate, ears.message);
      bot.leisure.end();
      await Promise.race([ears.rest(), wait(FINISHING, undefined, { ref: false })]);
      unwatch();
      await hangUp(client);
    },
  };
}

function letIn(client: Client): Promise<void> {
  return new Promise((isReady) => client.once(Events.ClientReady, () => isReady()));
}

/**
 * The library cannot hang up on a line that it is opening: it opens it all the same, and keeps it. So that is waited for
 * first; where it takes too long, only the end of the process ends it.
 */
async function hangUp(client: Client): Promise<void> {
  const tooLong = wait(HANGING_UP, undefined, { ref: false });
  if (isOpening(client)) await Promise.race([opened(client), tooLong]);
  await Promise.race([client.destroy(), tooLong]);
}

function isOpening({ ws }: Client): boolean {
  return ws.shards.some(({ status }) => status !== Status.Ready && status !== Status.Disconnected);
}

function opened(client: Client): Promise<void> {
  return new Promise((isOpen) => {
    client.once(Events.ShardReady, () => isOpen());
    client.once(Events.ShardResume, () => isOpen());
  });
}
