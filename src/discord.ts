/** The Discord bot put together: settings, store, desk and transport. */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { ConfigFaults, type DiscordConfig, readDiscordConfig } from './config.ts';
import { openDesk } from './desk.ts';
import { reviewLines } from './dialogue/show.ts';
import type { Flows } from './flow/compile.ts';
import { loadFlows } from './library.ts';
import { type ChatStore, openChatStore } from './store/chat.ts';
import { openStore } from './store/sqlite.ts';
import type { Store } from './store/store.ts';
import { checkDiscord, type Finding, whyNot } from './transport/discord/check.ts';
import { commandsFor } from './transport/discord/commands.ts';
import { startHeart } from './transport/discord/health.ts';
import { IDENTIFY_APART } from './transport/discord/limits.ts';
import { factsOf, type Log, logTo } from './transport/discord/log.ts';
import type { DiscordParts, People } from './transport/discord/parts.ts';
import { draughtsman } from './transport/discord/plan-files.ts';
import { type Registration, register, restFor } from './transport/discord/registering.ts';
import { runDiscord } from './transport/discord/run.ts';
import { HOPELESS, superviseShards } from './transport/discord/shards.ts';
import { runScript } from './transport/script/run.ts';

/** A person waits three seconds at most for a sign; a verb of the store may take a part of that, in milliseconds. */
const PATIENCE = 1000;

/** Runs the bot until SIGTERM or SIGINT. Gives the exit code. */
export async function runBot(args: readonly string[]): Promise<number> {
  const config = readDiscordConfig();
  const stopping = new AbortController();
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => stopping.abort());
  const log = logTo(process.stdout);
  const [flag, id, of] = args;
  if (flag === '--shard') return runShard(config, { id: Number(id), of: Number(of) }, log, stopping.signal);
  if (config.shards === 1) return runShard(config, { id: 0, of: 1 }, log, stopping.signal);
  const program = [process.execPath, process.argv[1] ?? '', 'discord'] as const;
  return superviseShards({ shards: config.shards, program, log, stopping: stopping.signal });
}

async function runShard(
  config: DiscordConfig,
  shard: { readonly id: number; readonly of: number },
  log: Log,
  stopping: AbortSignal,
): Promise<number> {
  const kept = openKept(config.data);
  const heart = startHeart(config.data, shard, Date.now, (error) =>
    log.warn('health not written', factsOf(error)),
  );
  try {
    let end = (_code: number): void => {};
    const ended = new Promise<number>((resolve) => {
      end = resolve;
    });
    stopping.addEventListener('abort', () => end(0));
    const { token, application, api } = config;
    const running = runDiscord(partsOf(config, loadFlows(), kept, log), {
      token,
      application,
      api,
      shard,
      identifyApart: IDENTIFY_APART,
      line: (line) => {
        heart.tell(line);
        if (line === 'refused') end(HOPELESS);
      },
    });
    running.ready.catch((error: unknown) => {
      log.error('not let in', factsOf(error));
      end(isHopeless(error) ? HOPELESS : 1);
    });
    const code = await ended;
    await running.stop();
    log.info('stopped', { code });
    return code;
  } finally {
    heart.stop();
    kept.close();
  }
}

function isHopeless(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'TokenInvalid';
}

/** Everything that is kept, in one file, which several processes may use. */
export interface Kept {
  readonly store: Store;
  readonly chat: ChatStore;
  readonly close: () => void;
}

export function openKept(data: string): Kept {
  const file = join(data, 'easewright.sqlite');
  const store = openStore(file, PATIENCE);
  const chat = openChatStore(file, PATIENCE);
  return {
    store,
    chat,
    close: () => {
      chat.close();
      store.close();
    },
  };
}

type Defaults = Pick<DiscordConfig, 'unit' | 'terms' | 'paper' | 'type'>;

export function partsOf(
  { unit, terms, paper, type }: Defaults,
  flows: Flows,
  { store, chat }: Kept,
  log: Log,
): DiscordParts {
  const print = { paper, type };
  // Short enough to be carried by a button beside a question and an answer; nobody guesses 128 bits.
  const newId = () => randomBytes(16).toString('base64url');
  return {
    desk: openDesk({ flows, store, clock: Date.now, newId, unit, terms }),
    flows,
    people: peopleOf(flows, store, chat),
    chat,
    atOnce: runScript,
    draw: draughtsman(print, (error) => log.error('not drawn', factsOf(error))),
    defaults: { unit, terms, print },
    log,
    clock: Date.now,
  };
}

function peopleOf(flows: Flows, store: Store, chat: ChatStore): People {
  return {
    preferencesOf: (owner) => store.preferencesOf(owner),
    prefer: (owner, preferences) => store.prefer(owner, preferences),
    interview: (owner, id, dialect) => {
      const session = store.load(id);
      const flow = session === undefined ? undefined : flows.get(session.flow);
      if (session?.owner !== owner || flow === undefined) return undefined;
      const said = flow.inTerms(dialect);
      const title = session.practice === true ? `Practice: ${said.file.title}` : said.file.title;
      return { title, lines: () => reviewLines(said, session) };
    },
    exportOf: (owner) => ({ ...store.exportOf(owner), bookmark: chat.bookmarkOf(owner) ?? null }),
    forget: (owner) => store.forget(owner),
  };
}

/** Registers the commands where they changed. Gives the exit code. */
export async function registerCommands(out: (text: string) => void): Promise<number> {
  const { api, token, application } = readDiscordConfig();
  const commands = commandsFor(loadFlows());
  try {
    out(`${REGISTRATION[await register(restFor(api, token), application, commands)]}\n`);
    return 0;
  } catch (error) {
    out(`The commands are not registered. ${whyNot(error)}\n`);
    return 1;
  }
}

const REGISTRATION: Readonly<Record<Registration, string>> = {
  registered: 'The commands are registered. Discord shows them everywhere within a minute.',
  unchanged: 'The commands are registered already, as they are now. Nothing was sent.',
};

/** Says what is missing, if anything is. Gives the exit code. */
export async function checkBot(out: (text: string) => void): Promise<number> {
  const findings = await lookAtAll();
  for (const { kind, says } of findings) out(`${MARKS[kind]}  ${says}\n`);
  const lacks = findings.filter(({ kind }) => kind === 'lacks').length;
  out(lacks === 0 ? '\nNothing is missing.\n' : `\nMissing: ${lacks}. Change it, and check again.\n`);
  return lacks === 0 ? 0 : 1;
}

const MARKS: Readonly<Record<Finding['kind'], string>> = {
  fine: 'fine   ',
  note: 'note   ',
  lacks: 'missing',
};

async function lookAtAll(): Promise<Finding[]> {
  try {
    const config = readDiscordConfig();
    const fine: Finding = { kind: 'fine', says: 'The settings are complete.' };
    return [
      fine,
      ...(await checkDiscord({ ...config, commands: commandsFor(loadFlows()), now: Date.now() })),
    ];
  } catch (error) {
    if (!(error instanceof ConfigFaults)) throw error;
    return error.faults.map((says) => ({ kind: 'lacks', says }));
  }
}
