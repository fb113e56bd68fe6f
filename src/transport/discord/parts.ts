/** What the program hands to this transport. What is kept is reached through plain verbs; where it is kept is not known here. */
import type { ReviewLine } from '../../dialogue/message.ts';
import type { Outcome } from '../../fit/plan.ts';
import type { LengthUnit } from '../../fit/units.ts';
import type { CompiledFlow, Flows } from '../../flow/compile.ts';
import type { Dialect } from '../../present/terms.ts';
import type { Desk } from '../contract.ts';
import type { Log } from './log.ts';
import type { Draughtsman, Printing } from './plan-files.ts';

export interface DiscordParts {
  readonly desk: Desk;
  readonly flows: Flows;
  readonly people: People;
  readonly chat: Chat;
  /** Answers a flow from texts by question, without keeping anything. */
  readonly atOnce: (flow: CompiledFlow, typed: Readonly<Record<string, readonly string[]>>) => AtOnce;
  readonly draw: Draughtsman;
  /** For those who have chosen none, where their hosts have chosen none either. */
  readonly defaults: {
    readonly unit: LengthUnit | null;
    readonly terms: Dialect;
    readonly print: Printing;
  };
  readonly log: Log;
  /** Milliseconds since 1970. */
  readonly clock: () => number;
}

export interface Preferences {
  readonly unit: LengthUnit | null;
  readonly terms: Dialect | null;
}

/** What is kept of people. */
export interface People {
  readonly preferencesOf: (owner: string) => Preferences;
  readonly prefer: (owner: string, preferences: Preferences) => void;
  /** The interview's title and what is answered in it; undefined where it is not hers, or not there. */
  readonly interview: (owner: string, session: string, terms: Dialect) => KeptInterview | undefined;
  /** Everything that is kept of her, as a JSON value. */
  readonly exportOf: (owner: string) => unknown;
  readonly forget: (owner: string) => void;
}

export interface KeptInterview {
  readonly title: string;
  readonly lines: () => readonly ReviewLine[];
}

/** The interview that her next typed words answer. */
export interface Bookmark {
  readonly session: string;
  readonly question: string;
  readonly channel: string;
  readonly message: string;
  /** When the question was shown, by Discord's clock; milliseconds since 1970. */
  readonly shownAt: number;
}

export interface Chat {
  readonly bookmarkOf: (owner: string) => Bookmark | undefined;
  readonly setBookmark: (owner: string, bookmark: Bookmark) => void;
  readonly dropBookmark: (owner: string) => void;
  readonly hostOf: (community: string) => string | undefined;
  readonly setHost: (community: string, settings: string) => void;
  readonly passAt: (gate: string, apart: number, now: number) => number;
}

export type AtOnce =
  | { readonly result: 'outcome'; readonly outcome: Outcome }
  | {
      readonly result: 'refused';
      readonly refused: readonly {
        readonly question: string;
        readonly answer: string;
        readonly reason: string;
        readonly example: string;
      }[];
    }
  | {
      readonly result: 'open';
      readonly open: readonly { readonly question: string; readonly ask: string }[];
    };
