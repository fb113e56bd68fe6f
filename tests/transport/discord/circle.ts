/** A bot of ours on a stand-in for Discord, with a database of its own; and how people get through an interview with it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Kept, openKept, partsOf } from '../../../src/discord.ts';
import type { Flows } from '../../../src/flow/compile.ts';
import { loadFlows } from '../../../src/library.ts';
import type { Desk } from '../../../src/transport/contract.ts';
import { commandsFor } from '../../../src/transport/discord/commands.ts';
import { logTo } from '../../../src/transport/discord/log.ts';
import type { Draughtsman } from '../../../src/transport/discord/plan-files.ts';
import { register, restFor } from '../../../src/transport/discord/registering.ts';
import { type Running, runDiscord } from '../../../src/transport/discord/run.ts';
import { messageOf, modalOf } from '../../stand-in/answer.ts';
import type { Person } from '../../stand-in/person.ts';
import { openApiPath, schemasIn } from '../../stand-in/schemas.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import type { Settings } from '../../stand-in/settings.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';

export const flows = loadFlows();

export interface Circle {
  readonly standIn: StandIn;
  readonly data: string;
  /** The desk, to come to a point of an interview without pressing through it. */
  readonly desk: Desk;
  /** What is kept, as the bot sees it. */
  readonly kept: Kept;
  /** The lines of the log. */
  readonly log: string[];
  /** Stops the bot and starts another one on the same database, with these flows or the same. */
  readonly restart: (flows?: Flows) => Promise<void>;
  readonly stop: () => Promise<void>;
}

const DEFAULTS = { unit: null, terms: 'us', paper: null, type: 'normal' } as const;

/** Drawing takes a second a plan: only where pictures are looked at it is done. */
const NOTHING_DRAWN: Draughtsman = {
  plan: async () => ({ pictures: [], sheet: undefined }),
  measuring: async () => undefined,
  blanks: async () => [],
};

export async function circle(
  settings: Partial<Settings> & { readonly draw?: boolean } = {},
): Promise<Circle> {
  const standIn = await startStandIn({
    identify: { maxConcurrency: 1, bucketMs: 0, perDay: 1000 },
    patienceMs: 6000,
    ...settings,
  });
  const data = mkdtempSync(join(tmpdir(), 'easewright-discord-'));
  const kept = openKept(data);
  const log: string[] = [];
  const start = async (offered = flows): Promise<Running> => {
    const whole = partsOf(DEFAULTS, offered, kept, logTo({ write: (line) => log.push(line) }));
    const parts = settings.draw === true ? whole : { ...whole, draw: NOTHING_DRAWN };
    const { api, token, appId: application } = standIn;
    const shard = { id: 0, of: 1 };
    const running = runDiscord(parts, { api, token, application, shard, identifyApart: 0, line: () => {} });
    await running.ready;
    return running;
  };
  await register(restFor(standIn.api, standIn.token), standIn.appId, commandsFor(flows));
  let running = await start();
  return {
    standIn,
    data,
    desk: partsOf(DEFAULTS, flows, kept, logTo({ write: (line) => log.push(line) })).desk,
    kept,
    log,
    restart: async (offered) => {
      await running.stop();
      running = await start(offered);
    },
    stop: async () => {
      await running.stop();
      await standIn.close();
      kept.close();
      rmSync(data, { recursive: true, force: true });
    },
  };
}

/**
 * What holds after every test: nothing was sent that the platform forbids, by our rules or by its own description where
 * that is at hand, and nobody was called by name.
 */
export function nothingForbidden(
  { standIn }: { readonly standIn: Pick<StandIn, 'record'> },
  description = openApiPath(),
): void {
  const { violations, mentions, requests } = standIn.record;
  const found = description === undefined ? [] : schemasIn(description).faults(requests);
  const forbidden = [
    ...violations.map(({ request, path, says }) => `${request.route} ${path} ${says}`),
    ...mentions.map(({ request, mention }) => `${request.route} would have called ${mention}`),
    ...found.map(({ schema, path, says }) => `${schema}${path} ${says}`).filter((one) => !DIFFERS.has(one)),
  ];
  if (forbidden.length > 0) throw new Error(`Discord forbids this:\n${forbidden.join('\n')}`);
}

/** Where the description and the developer documentation (2026-08-06) differ, and the documentation is followed. */
const DIFFERS = new Set([
  // Permissions are bits in a text, since they are more than a number holds (topics/permissions).
  'ApplicationCommandUpdateRequest/default_member_permissions must be integer,null',
]);

/** The text as she reads it: marks of escape and of bold are not shown. */
export function read(message: SeenMessage): string {
  return unmarked(message.text);
}

export function unmarked(text: string): string {
  return text.replace(/(?<!\\)\*\*/g, '').replace(/\\([^0-9A-Za-z\s])/g, '$1');
}

/** Types an answer in the form and sends it off. */
export async function type(person: Person, message: SeenMessage, text: string): Promise<SeenMessage> {
  const form = modalOf(await person.press(message, 'Type my answer'));
  return messageOf(await person.submit(form, { answer: text }));
}

export async function press(person: Person, message: SeenMessage, label: string): Promise<SeenMessage> {
  return messageOf(await person.press(message, label));
}

/** Picks in the list whose hint begins so. */
export async function pick(
  person: Person,
  message: SeenMessage,
  hint: string,
  ...labels: string[]
): Promise<SeenMessage> {
  const list = message.selects.find(
    ({ placeholder, options }) =>
      placeholder.startsWith(hint) && options.some(({ label }) => labels.includes(label)),
  );
  if (list === undefined) throw new Error(`there is no list '${hint}'`);
  return messageOf(await person.select(message, list.customId, labels));
}

export async function command(
  person: Person,
  path: string,
  values: Parameters<Person['command']>[1] = {},
): Promise<SeenMessage> {
  return messageOf(await person.command(path, values));
}

/** The id of the question that a message asks, as its controls carry it. */
export function questionOf(message: SeenMessage): string | undefined {
  const ids = message.buttons.flatMap(({ customId }) => (customId === undefined ? [] : [customId]));
  return ids.find((id) => id.startsWith('1t|'))?.split('|')[2];
}

/** The interview that a message belongs to. */
export function sessionOf(message: SeenMessage): string {
  const id = message.buttons.find(({ customId }) => customId?.startsWith('1') === true)?.customId;
  return id?.split('|')[1] ?? '';
}

/** The file of a plan, as text. */
export function planFile(message: SeenMessage): string {
  const file = message.files.find(({ name }) => name === 'plan.txt');
  return new TextDecoder().decode(file?.bytes);
}

/** What she has answered in an interview, as it was typed, in the order in which it was kept. */
export function typedBy(
  { kept }: Pick<Circle, 'kept'>,
  session: string,
): readonly [question: string, typed: string][] {
  const log = kept.store.load(session)?.log ?? [];
  return log.flatMap((line): [string, string][] =>
    line.line === 'answer' ? [[line.question, line.typed]] : [],
  );
}
