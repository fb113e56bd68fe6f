/** The store as one SQLite file, which several processes may use at once. */
import type Database from 'better-sqlite3';
import type { LogLine, Measured, Place, Session } from '../dialogue/session.ts';
import type { Measurement } from '../fit/words.ts';
import { valueGiven } from '../flow/answer.ts';
import { openDatabase } from './database.ts';
import { LINE_FORMAT, PLACE_FORMAT, readLine, readPlace, writeLine, writePlace } from './format.ts';
import { type LineRow, prepare, type SessionRow, type Statements } from './statements.ts';
import type { Export, OpenSession, Preferences, Store } from './store.ts';
import { LogMismatch, named } from './trouble.ts';

/** How long a verb waits for another process to let go, in milliseconds. */
const PATIENCE = 5000;

/** Opens the file, makes it where it is missing, and brings it up to date. Throws StoreTrouble or StoreTooNew. */
export function openStore(file: string, patience = PATIENCE): Store {
  return new SqliteStore(openDatabase(file, patience), file);
}

class SqliteStore implements Store {
  readonly #db: Database.Database;
  readonly #file: string;
  readonly #sql: Statements;

  constructor(db: Database.Database, file: string) {
    this.#db = db;
    this.#file = file;
    this.#sql = prepare(db);
  }

  create(session: Session, begun: number): void {
    this.#write('create', () => {
      const { id, owner, flow, version, log, place } = session;
      const practice = session.practice === true ? 1 : 0;
      const written = writePlace(place);
      this.#sql.newSession.run(id, owner, flow, version, begun, log.length, PLACE_FORMAT, written, practice);
      this.#addLines(id, 0, log);
    });
  }

  load(session: string): Session | undefined {
    return this.#read('load', () => {
      const row = this.#sql.session.get(session);
      return row === undefined ? undefined : this.#sessionFrom(row);
    });
  }

  append(session: string, from: number, lines: readonly LogLine[], place: Place): void {
    this.#write('append', () => {
      const stored = this.#sql.lines.all(session);
      if (from > stored.length) throw new LogMismatch('gap', session, from, stored.length);
      const known = stored.slice(from);
      const parted = lines.findIndex(
        (line, i) => known[i] !== undefined && known[i].line !== writeLine(line),
      );
      if (parted >= 0) throw new LogMismatch('conflict', session, from + parted, stored.length);
      if (lines.length === 0 && known.length > 0)
        throw new LogMismatch('conflict', session, from, stored.length);
      const doubled = lines.length > 0 && lines.length <= known.length;
      if (doubled) return;
      this.#addLines(session, stored.length, lines.slice(known.length));
      this.#sql.setPlace.run(PLACE_FORMAT, writePlace(place), session);
    });
  }

  openOf(owner: string): readonly OpenSession[] {
    return this.#read('openOf', () =>
      this.#sql.openSessions.all(owner).map((row) => {
        const session = this.#sessionFrom(row);
        // Answers that were taken along keep their own, earlier date.
        return { session, lastAt: Math.max(row.begun, ...session.log.map(({ at }) => at)) };
      }),
    ).sort((a, b) => b.lastAt - a.lastAt);
  }

  measuredOf(owner: string, questions: ReadonlyMap<string, Measurement>): ReadonlyMap<Measurement, Measured> {
    return this.#read('measuredOf', () => {
      const latest = new Map<Measurement, Measured>();
      for (const row of this.#sql.answersTo.all(owner, JSON.stringify([...questions.keys()]))) {
        const line = lineFrom(row);
        if (line.line !== 'answer') continue;
        const measurement = questions.get(line.question);
        const length = valueGiven({ [line.question]: line.answer }, line.question, 'length');
        if (measurement === undefined || length === undefined) continue;
        latest.set(measurement, { cm: length.cm, typed: length.typed, at: line.at });
      }
      return latest;
    });
  }

  preferencesOf(owner: string): Preferences {
    return this.#read('preferencesOf', () => this.#sql.preferences.get(owner) ?? { unit: null, terms: null });
  }

  prefer(owner: string, { unit, terms }: Preferences): void {
    this.#write('prefer', () => this.#sql.setPreferences.run(owner, unit, terms));
  }

  exportOf(owner: string): Export {
    return this.#read('exportOf', () => ({
      schema: 'easewright export',
      version: 1,
      owner,
      preferences: this.#sql.preferences.get(owner) ?? { unit: null, terms: null },
      sessions: this.#sql.sessionsOf.all(owner).map((row) => {
        const { owner: _, ...session } = this.#sessionFrom(row);
        return { ...session, begun: row.begun };
      }),
    }));
  }

  forget(owner: string): void {
    this.#write('forget', () => {
      for (const statement of this.#sql.forgetting) statement.run(owner);
    });
    // What was deleted also stands in the write-ahead log; emptied into the file, it is overwritten there.
    this.#named('forget', () => this.#db.pragma('wal_checkpoint(TRUNCATE)'));
  }

  close(): void {
    this.#named('close', () => this.#db.close());
  }

  #addLines(session: string, from: number, lines: readonly LogLine[]): void {
    lines.forEach((line, i) => {
      this.#sql.newLine.run(session, from + i, LINE_FORMAT, writeLine(line));
    });
  }

  #sessionFrom(row: SessionRow): Session {
    const { id, owner, flow, version } = row;
    const log = this.#sql.lines.all(id).map(lineFrom);
    const place = readPlace(row.place_format, row.place);
    return { id, owner, flow, version, log, place, ...(row.practice === 1 ? { practice: true } : {}) };
  }

  /** One picture of the database: what other processes write meanwhile is not seen. */
  #read<T>(during: string, work: () => T): T {
    return this.#named(during, () => this.#db.transaction(work).deferred());
  }

  #write(during: string, work: () => unknown): void {
    this.#named(during, () => this.#db.transaction(work).immediate());
  }

  #named<T>(during: string, work: () => T): T {
    try {
      return work();
    } catch (error) {
      throw named(error, this.#file, during);
    }
  }
}

function lineFrom(row: LineRow): LogLine {
  return readLine(row.format, row.line, `line ${row.number} of ${row.session}`);
}
