/** The real program as a process of its own, on a stand-in for Discord. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { setTimeout as wait } from 'node:timers/promises';
import type { StandIn } from '../../stand-in/stand-in.ts';

export type Environment = Readonly<Record<string, string>>;

export function environmentFor(standIn: StandIn, data: string): Environment {
  return {
    EASEWRIGHT_DATA: data,
    EASEWRIGHT_DISCORD_TOKEN: standIn.token,
    EASEWRIGHT_DISCORD_APPLICATION: standIn.appId,
    EASEWRIGHT_DISCORD_API: standIn.api,
  };
}

export interface Program {
  readonly process: ChildProcess;
  /** What it has written so far. */
  readonly out: () => string;
  /** The exit code, or the signal that ended it. */
  readonly exit: Promise<number | string>;
  /** Waits until it has written something that is so. */
  readonly until: (isSo: (out: string) => boolean) => Promise<void>;
}

export function start(command: string, environment: Environment): Program {
  const child = spawn(process.execPath, ['dist/main.js', command], {
    env: { PATH: process.env.PATH ?? '', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      out += String(chunk);
    });
  }
  const exit = once(child, 'close').then(([code, signal]) => code ?? signal);
  return {
    process: child,
    out: () => out,
    exit,
    until: async (isSo) => {
      while (!isSo(out)) {
        if (child.exitCode !== null || child.signalCode !== null) throw new Error(`it ended:\n${out}`);
        await wait(20);
      }
    },
  };
}

/** Runs a command to its end. */
export async function run(
  command: string,
  environment: Environment,
): Promise<{ code: unknown; out: string }> {
  const program = start(command, environment);
  const code = await program.exit;
  return { code, out: program.out() };
}

/** How often it has been let in. */
export function letIn(out: string): number {
  return out.split('"line":"ready"').length - 1;
}
