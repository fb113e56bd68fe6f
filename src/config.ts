/** The settings of the program: read from the environment and a file named .env, once, and checked. */
import { resolve } from 'node:path';
import { config as readEnvFile } from 'dotenv';
import * as z from 'zod';
import { LENGTH_UNITS } from './fit/units.ts';
import { PAPER_NAMES, type Paper, TYPE_SIZES, type TypeSize } from './present/sheets/paper.ts';
import { DIALECTS } from './present/terms.ts';

export interface Config {
  /** The folder in which the database lies, as a whole path. */
  readonly data: string;
  /** The unit for people who have not chosen one; null: they are asked. */
  readonly unit: (typeof LENGTH_UNITS)[number] | null;
  readonly terms: (typeof DIALECTS)[number];
  /** Of every sheet; null: A4 for centimetres, Letter for inches. */
  readonly paper: Paper | null;
  readonly type: TypeSize;
}

/** What the bot needs beside. */
export interface DiscordConfig extends Config {
  readonly token: string;
  readonly application: string;
  /** How many processes share the servers. */
  readonly shards: number;
  /** The base address of Discord's interface, without its version. */
  readonly api: string;
}

/** Thrown at start with every fault of the settings, in plain words. */
export class ConfigFaults extends Error {
  override readonly name = 'ConfigFaults';
  readonly faults: readonly string[];

  constructor(faults: readonly string[]) {
    super(faults.join('\n'));
    this.faults = faults;
  }
}

type Environment = Readonly<Record<string, string | undefined>>;

/** Reads the file .env of the working folder, where there is one; what the environment says goes before it. */
export function readConfig(): Config {
  readFile();
  return configFrom(process.env);
}

export function readDiscordConfig(): DiscordConfig {
  readFile();
  return discordConfigFrom(process.env);
}

function readFile(): void {
  const { error } = readEnvFile({ quiet: true });
  if (error !== undefined && error.code !== 'ENOENT') {
    throw new ConfigFaults([`The file .env cannot be read (${error.code}). Make it readable, or remove it.`]);
  }
}

/** A setting that is empty counts as not set. Throws ConfigFaults. */
export function configFrom(environment: Environment): Config {
  return configOf(read(schema, environment));
}

/** As `configFrom`, with what the bot needs; the faults of all settings together. */
export function discordConfigFrom(environment: Environment): DiscordConfig {
  const set = read(discordSchema, environment);
  return {
    ...configOf(set),
    token: set.EASEWRIGHT_DISCORD_TOKEN,
    application: set.EASEWRIGHT_DISCORD_APPLICATION,
    shards: set.EASEWRIGHT_DISCORD_SHARDS,
    api: set.EASEWRIGHT_DISCORD_API,
  };
}

function configOf(set: z.infer<typeof schema>): Config {
  return {
    data: resolve(set.EASEWRIGHT_DATA),
    unit: set.EASEWRIGHT_UNIT,
    terms: set.EASEWRIGHT_TERMS,
    paper: set.EASEWRIGHT_PAPER,
    type: set.EASEWRIGHT_TYPE,
  };
}

function read<T>(shape: z.ZodType<T>, environment: Environment): T {
  const set = Object.entries(environment).filter(([, text]) => text !== undefined && text.trim() !== '');
  const found = shape.safeParse(Object.fromEntries(set));
  if (!found.success) throw new ConfigFaults(found.error.issues.map((issue) => issue.message));
  return found.data;
}

const schema = z.object({
  EASEWRIGHT_DATA: z.string().trim().default('data'),
  EASEWRIGHT_UNIT: oneOf('EASEWRIGHT_UNIT', LENGTH_UNITS).nullable().default(null),
  EASEWRIGHT_TERMS: oneOf('EASEWRIGHT_TERMS', DIALECTS).default('us'),
  EASEWRIGHT_PAPER: oneOf('EASEWRIGHT_PAPER', PAPER_NAMES).nullable().default(null),
  EASEWRIGHT_TYPE: oneOf('EASEWRIGHT_TYPE', TYPE_SIZES).default('normal'),
});

const discordSchema = schema.extend({
  EASEWRIGHT_DISCORD_TOKEN: z
    .string(
      'EASEWRIGHT_DISCORD_TOKEN is missing: the secret token of your bot, from its page in the developer portal.',
    )
    .trim()
    .regex(
      /^[\w-]+\.[\w-]+\.[\w-]+$/,
      'EASEWRIGHT_DISCORD_TOKEN is no token: it has three parts with dots between. Copy it whole, without spaces.',
    ),
  EASEWRIGHT_DISCORD_APPLICATION: z
    .string(
      'EASEWRIGHT_DISCORD_APPLICATION is missing: the application id, a long number, from the developer portal.',
    )
    .trim()
    .regex(
      /^\d{17,20}$/,
      'EASEWRIGHT_DISCORD_APPLICATION is no application id: it is a number of 17 to 20 digits.',
    ),
  EASEWRIGHT_DISCORD_SHARDS: z.coerce
    .number('EASEWRIGHT_DISCORD_SHARDS is no number.')
    .int('EASEWRIGHT_DISCORD_SHARDS must be a whole number.')
    .min(1, 'EASEWRIGHT_DISCORD_SHARDS must be 1 or more.')
    .max(64, 'EASEWRIGHT_DISCORD_SHARDS must be 64 or fewer.')
    .default(1),
  EASEWRIGHT_DISCORD_API: z
    .url('EASEWRIGHT_DISCORD_API is no web address.')
    .default('https://discord.com/api'),
});

function oneOf<const T extends readonly [string, ...string[]]>(name: string, words: T) {
  return z.enum(words, {
    error: ({ input }) => `${name} is '${String(input)}', but it can only be ${words.join(' or ')}.`,
  });
}
