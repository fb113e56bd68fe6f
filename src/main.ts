/** Starts the program: an interview in the terminal, or the `fit` command for scripts. The only file that knows every floor. */
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { FlowFaults } from './flow/fault.ts';
import { loadFlows } from './library.ts';
import { keyText } from './present/key-text.ts';
import { outcomeText } from './present/plan-text.ts';
import type { Dialect } from './present/terms.ts';
import type { Wording } from './transport/contract.ts';

/** Tells a service manager that starting again would not help (EX_CONFIG of sysexits.h). */
const WRONG_SETTINGS = 78;

const [, , command, ...args] = process.argv;

try {
  if (command === 'fit') await runFit();
  else if (command?.startsWith('discord') === true) await runDiscordCommand(command);
  else await runInterview();
} catch (error) {
  process.stderr.write(`${inWords(error)}\n`);
  process.exitCode = error instanceof Error && error.name === 'ConfigFaults' ? WRONG_SETTINGS : 1;
}

async function runFit(): Promise<void> {
  const { runCommand } = await import('./transport/script/command.ts');
  process.exitCode = await runCommand(args, {
    flows: loadFlows(),
    wordingIn,
    out: (text) => process.stdout.write(text),
    error: (text) => process.stderr.write(text),
    keep: async (plan, files) => {
      if (files.picture === undefined && files.sheet === undefined) return [];
      const { keepFiles } = await import('./keep.ts');
      return keepFiles(plan, files, { ...PRINTING, dialect: files.terms, date: today() });
    },
    keepBlank: async ({ blank, file, unit, ...print }, dialect) => {
      const { keepBlank } = await import('./keep.ts');
      return keepBlank(blank, file, print, { ...PRINTING, dialect, unit, date: today() });
    },
  });
}

function wordingIn(dialect: Dialect): Wording {
  return (outcome, workings, key) =>
    key === undefined ? outcomeText(outcome, { dialect, workings }) : keyText(outcome, key, dialect);
}

/** What `fit` prints where nothing else is said: the same on every machine. */
const PRINTING = { unit: 'cm', paper: null, type: 'normal' } as const;

/** ISO 8601. */
function today(): string {
  return new Date().toISOString().slice(0, 10);
}

async function runDiscordCommand(name: string): Promise<void> {
  const { checkBot, registerCommands, runBot } = await import('./discord.ts');
  const out = (text: string) => process.stdout.write(text);
  if (name === 'discord:check') process.exitCode = await checkBot(out);
  else if (name === 'discord:commands') process.exitCode = await registerCommands(out);
  // All is stored and the time to finish is over: what Discord has not answered by now must not keep the process.
  else process.exit(await runBot(args));
}

async function runInterview(): Promise<void> {
  const { readConfig } = await import('./config.ts');
  const { openDesk } = await import('./desk.ts');
  const { drawingsFor } = await import('./drawings.ts');
  const { openStore } = await import('./store/sqlite.ts');
  const { runTerminal } = await import('./transport/terminal/terminal.ts');
  const config = readConfig();
  const store = openStore(join(config.data, 'easewright.sqlite'));
  const flows = loadFlows();
  const owner = 'terminal';
  const dialect = () => store.preferencesOf(owner).terms ?? config.terms;
  const printing = () => ({
    dialect: dialect(),
    paper: config.paper,
    type: config.type,
    date: today(),
    unit: store.preferencesOf(owner).unit ?? config.unit ?? 'cm',
  });
  try {
    await runTerminal({
      desk: openDesk({
        flows,
        store,
        clock: Date.now,
        newId: randomUUID,
        unit: config.unit,
        terms: config.terms,
      }),
      wording: (...said) => wordingIn(dialect())(...said),
      // npm goes to the folder of the program, and tells from which one it was called.
      drawings: drawingsFor(flows, process.env.INIT_CWD ?? process.cwd(), printing),
      owner,
      input: process.stdin,
      output: process.stdout,
      interactive: process.stdin.isTTY === true && process.stdout.isTTY === true,
    });
  } finally {
    store.close();
  }
}

/** Faults that have words of their own are told in them; anything else is a fault of ours, with its trace. */
function inWords(error: unknown): string {
  if (error instanceof FlowFaults) return error.message;
  if (error instanceof Error && ['ConfigFaults', 'StoreTrouble', 'StoredUnreadable'].includes(error.name))
    return error.message;
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
