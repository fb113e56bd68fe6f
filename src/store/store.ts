/** What is kept of a person: her interviews, and how she likes figures and terms. Owners are opaque names. */
import type { LogLine, Measured, Place, Session } from '../dialogue/session.ts';
import type { LengthUnit } from '../fit/units.ts';
import type { Measurement } from '../fit/words.ts';

export interface Preferences {
  /** Null until she has said. */
  readonly unit: LengthUnit | null;
  readonly terms: 'us' | 'uk' | null;
}

/** A session that was begun, answered at least once, and not cancelled. */
export interface OpenSession {
  readonly session: Session;
  /** Milliseconds since 1970 of its last line. */
  readonly lastAt: number;
}

/** Everything that is kept of one owner, as a JSON value. */
export interface Export {
  readonly schema: 'easewright export';
  readonly version: 1;
  readonly owner: string;
  readonly preferences: Preferences;
  /** `begun`: milliseconds since 1970. */
  readonly sessions: readonly (Omit<Session, 'owner'> & { readonly begun: number })[];
}

/**
 * The verbs of a store. What a verb has written is durable when it returns. Failures of the outside world are thrown as
 * StoreTrouble; values that cannot be read back as StoredUnreadable.
 */
export interface Store {
  /** Keeps a new session with the lines that it begins with. `begun`: milliseconds since 1970. */
  readonly create: (session: Session, begun: number) => void;
  readonly load: (session: string) => Session | undefined;
  /**
   * Adds lines to the log from number `from` (counted from 0), and sets the place, both or neither. Lines that are there
   * already are not stored twice. Throws LogMismatch where a line would leave a gap or differs from the one stored.
   */
  readonly append: (session: string, from: number, lines: readonly LogLine[], place: Place) => void;
  /** Newest first. */
  readonly openOf: (owner: string) => readonly OpenSession[];
  /** The latest length that the owner gave to each of these questions, by what it measures. What she practised is not hers. */
  readonly measuredOf: (
    owner: string,
    questions: ReadonlyMap<string, Measurement>,
  ) => ReadonlyMap<Measurement, Measured>;
  readonly preferencesOf: (owner: string) => Preferences;
  readonly prefer: (owner: string, preferences: Preferences) => void;
  readonly exportOf: (owner: string) => Export;
  /** Deletes everything of the owner, and overwrites it in the file. */
  readonly forget: (owner: string) => void;
  readonly close: () => void;
}
