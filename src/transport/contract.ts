/** What every transport is given by `main`, with nothing of any one service in it. */
import type { Message, Reply, ReviewLine } from '../dialogue/message.ts';
import type { Outcome, Plan } from '../fit/plan.ts';
import type { Dialect } from '../fit/terms.ts';
import type { WishGroup } from '../flow/schema.ts';

/** A flow as it is offered: its id, its name, the wish in a knitter's words, and other ways in which she may say it. */
export interface Offered {
  readonly id: string;
  readonly title: string;
  readonly wish: string;
  readonly hear: readonly string[];
  readonly group: WishGroup;
  /** Whether it is among the first that are offered. */
  readonly common: boolean;
  /** Whether there is an exercise in it. */
  readonly exercise: boolean;
}

/** An interview that was begun and not ended. */
export interface OpenInterview {
  readonly session: string;
  readonly flow: Offered;
  /** Milliseconds since 1970 of the last answer. */
  readonly lastAt: number;
  readonly answered: number;
  /** Whether it is an exercise, on figures that are not hers. */
  readonly practice: boolean;
}

/** Why the desk refused. `not stored`: this answer is not kept, all earlier ones are; the cause says what failed. */
export const REFUSALS = ['no such flow', 'no such interview', 'of another owner', 'not stored'] as const;
export type Refusal = (typeof REFUSALS)[number];

/** Thrown by the desk where it did nothing. */
export class DeskRefused extends Error {
  override readonly name = 'DeskRefused';
  readonly reason: Refusal;

  constructor(reason: Refusal, cause?: unknown) {
    super(cause instanceof Error ? `${reason}: ${cause.message}` : reason, { cause });
    this.reason = reason;
  }
}

/**
 * The desk: it runs turns for one owner after another. Every accepted answer is stored durably before `say` or `begin`
 * returns its replies.
 */
export interface Desk {
  /** `usual`, here and below: the terms where she is, for those who have chosen none. */
  readonly flows: (owner?: string, usual?: Dialect) => readonly Offered[];
  readonly open: (owner: string, usual?: Dialect) => readonly OpenInterview[];
  /** `given`: what is answered from the start, question ids with what would be typed; a saved unit goes before. */
  readonly begin: (
    owner: string,
    flow: string,
    given?: Readonly<Record<string, string>>,
    usual?: Dialect,
  ) => { readonly session: string; readonly replies: readonly Reply[] };
  /** The same with the exercise of the flow: its figures are offered, and none of them is kept as hers. */
  readonly practise: Desk['begin'];
  /** Takes up a session where it stands: its next question, review or outcome again. */
  readonly resume: (owner: string, session: string, usual?: Dialect) => readonly Reply[];
  readonly say: (owner: string, session: string, message: Message, usual?: Dialect) => readonly Reply[];
}

/**
 * How an outcome is put into words, with or without its workings; made by `present`. `key`: the answers that its answer
 * key begins with, where that takes the place of the plan.
 */
export type Wording = (outcome: Outcome, workings: boolean, key?: readonly ReviewLine[]) => string;

/** How a sheet is to be printed; null: as it is usual with her unit, or as it is set. */
export interface Print {
  readonly paper: 'A4' | 'Letter' | null;
  readonly type: 'normal' | 'large' | null;
}

/** What is to be kept as a file of that name; null: of a name that is free. */
export type KeepWish = Print & { readonly file: string | null } & (
    | { readonly keep: 'pictures' | 'sheet'; readonly plan: Plan }
    | { readonly keep: 'blank'; readonly blank: string }
  );

/** The whole paths of the files that were written; or why none was, as a sentence. */
export type Kept =
  | { readonly kept: 'files'; readonly files: readonly string[] }
  | { readonly kept: 'nothing'; readonly why: string };

/** What can be drawn, and kept in files, for a person who sits at this machine; made by `main`. */
export interface Drawings {
  /** What a plan changes, in plain characters, no line longer than so many columns (40 at least). */
  readonly plan: (plan: Plan, columns: number) => Promise<string>;
  /** Whether a picture tells what a question asks to be measured, and that picture in plain characters. */
  readonly pictured: (question: string) => boolean;
  readonly question: (id: string, columns: number) => Promise<string>;
  /** Sheets to fill in by hand: the word for each, and its title. */
  readonly blanks: () => Promise<readonly { readonly id: string; readonly title: string }[]>;
  /** Writes over no file that is there. */
  readonly keep: (wish: KeepWish) => Promise<Kept>;
}
