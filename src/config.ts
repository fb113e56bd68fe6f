/** The settings of the program: read from the environment and a file named .env, once, and checked. */
import { resolve } from 'node:path';
import { config as readEnvFile } from 'dotenv';
import * as z from 'zod';
import { LENGTH_UNITS } from './fit/units.ts';
import { DIALECTS } from './present/terms.ts';

export interface Config {
  /** The folder in which the database lies, as a whole path. */
  readonly data: string;
  /** The unit for people who have not chosen one; null: they are asked. */
  readonly unit: (typeof LENGTH_UNITS)[number] | null;
  readonly terms: (typeof DIALECTS)[number];
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
  const { error } = readEnvFile({ quiet: true });
  if (error !== undefined && error.code !== 'ENOENT') {
    throw new ConfigFaults([`The file .env cannot be read (${error.code}). Make it readable, or remove it.`]);
  }
  return configFrom(process.env);
}

/** A setting that is empty counts as not set. Throws ConfigFaults. */
export function configFrom(environment: Environment): Config {
  const set = Object.entries(environment).filter(([, text]) => text !== undefined && text.trim() !== '');
  const read = schema.safeParse(Object.fromEntries(set));
  if (!read.success) throw new ConfigFaults(read.error.issues.map((issue) => issue.message));
  const { EASEWRIGHT_DATA, EASEWRIGHT_UNIT, EASEWRIGHT_TERMS } = read.data;
  return { data: resolve(EASEWRIGHT_DATA), unit: EASEWRIGHT_UNIT, terms: EASEWRIGHT_TERMS };
}

const schema = z.object({
  EASEWRIGHT_DATA: z.string().trim().default('data'),
  EASEWRIGHT_UNIT: oneOf('EASEWRIGHT_UNIT', LENGTH_UNITS).nullable().default(null),
  EASEWRIGHT_TERMS: oneOf('EASEWRIGHT_TERMS', DIALECTS).default('us'),
});

function oneOf<const T extends readonly [string, ...string[]]>(name: string, words: T) {
  return z.enum(words, {
    error: ({ input }) => `${name} is '${String(input)}', but it can only be ${words.join(' or ')}.`,
  });
}
