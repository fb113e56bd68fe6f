/** What is wrong with a file of flows, lessons or practice: a code, a place, and the line with a pointer under it. */

/** Every code, with what it means and how to mend it. */
export const FAULT_CODES = {
  'not yaml': 'The text is not YAML. Look at indentation, quotes and colons near the pointer.',
  'not a flow':
    'A key is missing, misspelt, or has the wrong kind of value. The schema for editors lists all keys.',
  'two of one id':
    'Two files define the same flow, or two questions the same id. Ids are used once in the whole folder.',
  'unknown question': 'A step or a condition names a question that no file defines.',
  'unknown flow': 'A step includes a flow that no file defines.',
  'not a lesson':
    'A key of a lesson is missing, misspelt, or has the wrong kind of value. The schema for editors lists all keys.',
  'unknown lesson': 'A question names a lesson that no file holds.',
  'lesson without a question': 'No question names this lesson, so nobody would be led to it.',
  'not a practice':
    'A key of a practice is missing, misspelt, or has the wrong kind of value. The schema for editors lists all keys.',
  'answer missing': 'An exercise lacks an answer to a question that its flow always asks.',
  'answer to nothing': 'An exercise answers a question that its flow never asks.',
  'unknown calculation': 'The name is not among the calculations that the program offers.',
  'unknown choice': 'A condition names a choice that its question does not offer.',
  'wrong condition':
    'The condition does not suit the kind of its question: `is` needs a choice, `has` needs choices.',
  'condition too early': 'The condition rests on a question that is never asked before this step.',
  'choices missing': 'A choice question lists its choices, and no other kind does.',
  'includes itself': 'The flow includes itself, by one way or another.',
} as const;
export type FaultCode = keyof typeof FAULT_CODES;

export interface Fault {
  readonly code: FaultCode;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
  /** The line at fault with a pointer under the place. */
  readonly pointer: string;
}

/** Thrown at start with every fault of every file: a flow is data of ours, so a fault in it is ours to mend. */
export class FlowFaults extends Error {
  override readonly name = 'FlowFaults';
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(formatFault).join('\n\n'));
    this.faults = faults;
  }
}

export function formatFault(fault: Fault): string {
  return `${fault.file}:${fault.line}:${fault.column} ${fault.code}: ${fault.message}\n${fault.pointer}`;
}

/** The line around an offset of the text, with a pointer under the place. */
export function pointAt(text: string, offset: number): { line: number; column: number; pointer: string } {
  const start = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
  const end = text.indexOf('\n', start);
  const line = text.slice(0, start).split('\n').length;
  const column = offset - start + 1;
  const shown = text.slice(start, end === -1 ? text.length : end);
  return { line, column, pointer: `  ${shown}\n  ${' '.repeat(Math.max(0, column - 1))}^` };
}
