/** The parts of a typed answer: numbers, words and marks. */

export interface NumberToken {
  readonly is: 'number';
  readonly value: number;
  /** As typed, in plain spelling: needle size '00' is not '0'. */
  readonly text: string;
  /** Written as or with a vulgar fraction: the mark of somebody who reads an inch tape. */
  readonly fraction: boolean;
  /** The digits after a decimal comma; empty where there is none. */
  readonly afterComma: string;
  /** Whether white space stands before it. */
  readonly spaced: boolean;
}

export interface WordToken {
  readonly is: 'word';
  readonly text: string;
  readonly spaced: boolean;
}

export interface MarkToken {
  readonly is: 'mark';
  readonly text: string;
  readonly spaced: boolean;
}

export type Token = NumberToken | WordToken | MarkToken;

/** The word at a place, or an empty string: so that neighbours can be looked at without a care for the ends. */
export function wordAt(tokens: readonly Token[], at: number): string {
  const token = tokens[at];
  return token?.is === 'word' ? token.text : '';
}

export function markAt(tokens: readonly Token[], at: number): string {
  const token = tokens[at];
  return token?.is === 'mark' ? token.text : '';
}
