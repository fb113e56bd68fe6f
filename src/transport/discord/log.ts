/**
 * What the program writes about itself: events with ids, durations and codes. Never what people typed, what they
 * measured, or who they are: errors are logged by name, code and place alone, as their messages may quote all of these.
 */
import { DiscordAPIError, HTTPError } from 'discord.js';
import { pino } from 'pino';

export type Facts = Readonly<Record<string, string | number | boolean | undefined>>;

export interface Log {
  readonly info: (event: string, facts?: Facts) => void;
  readonly warn: (event: string, facts?: Facts) => void;
  readonly error: (event: string, facts?: Facts) => void;
}

/** One JSON object a line. */
export function logTo(output: { write(line: string): void }): Log {
  const logger = pino({ base: null, timestamp: pino.stdTimeFunctions.isoTime }, output);
  return {
    info: (event, facts = {}) => logger.info({ event, ...facts }),
    warn: (event, facts = {}) => logger.warn({ event, ...facts }),
    error: (event, facts = {}) => logger.error({ event, ...facts }),
  };
}

export function factsOf(error: unknown): Facts {
  if (error instanceof DiscordAPIError)
    return { error: 'refused by Discord', code: error.code, status: error.status };
  if (error instanceof HTTPError) return { error: 'Discord failed', status: error.status };
  if (!(error instanceof Error)) return { error: 'unknown' };
  const code = 'code' in error && typeof error.code === 'string' ? error.code : undefined;
  return { error: error.name, code, at: placesOf(error) };
}

/** The lines of a trace that name places in the program. */
function placesOf({ stack = '' }: Error): string {
  return stack
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .slice(0, 6)
    .map((line) => line.trim())
    .join('; ');
}
