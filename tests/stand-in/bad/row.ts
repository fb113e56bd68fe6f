/** One row of the tables of payloads that the stand-in must refuse. */
import type { RawFile } from '../raw-app.ts';

export interface BadPayload {
  readonly what: string;
  readonly body: unknown;
  /** All violations, as 'code path', or 'code' where the payload as a whole is wrong. */
  readonly breaches: readonly string[];
  readonly files?: readonly RawFile[];
}

export function bad(what: string, body: unknown, ...breaches: readonly string[]): BadPayload {
  return { what, body, breaches };
}

/** `count` things made by number. */
export function times<T>(count: number, make: (number: number) => T): T[] {
  return Array.from({ length: count }, (_, number) => make(number));
}

export const SILENT = { allowed_mentions: { parse: [] } };
