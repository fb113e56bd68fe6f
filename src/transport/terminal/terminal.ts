/** Easewright at a terminal: with a window, or through a pipe. */
import type { Readable, Writable } from 'node:stream';
import { converse, type Terms } from './conversation.ts';
import { plainPerson } from './plain.ts';
import { windowPerson } from './window.ts';

export interface TerminalOptions extends Terms {
  readonly input: Readable;
  readonly output: Writable & { readonly columns?: number };
  /** Columns of the window, where they are not to be asked of the output. */
  readonly columns?: number;
  /** True: choices by arrow keys, in colour. False: lines of text in and out, without any escape code. */
  readonly interactive: boolean;
}

const COLUMNS = 80;
/** Longer lines are hard to read. */
const WIDEST = 100;

/** Runs until she leaves or the input ends. Everything she answered is stored by then. */
export async function runTerminal({
  input,
  output,
  columns,
  interactive,
  ...terms
}: TerminalOptions): Promise<void> {
  const width = () => Math.min(columns ?? output.columns ?? COLUMNS, WIDEST);
  const terminal = { input, output, width };
  await converse(terms, interactive ? windowPerson(terminal) : plainPerson(terminal));
}
