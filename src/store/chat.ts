/** What a chat service needs kept beside the interviews: bookmarks, what hosts have set, and gates between processes. */
import type Database from 'better-sqlite3';
import { openDatabase } from './database.ts';
import { named } from './trouble.ts';

/** The interview that an owner's next typed words answer: the question she saw, and the message on which it stands. */
export interface Bookmark {
  readonly session: string;
  readonly question: string;
  readonly channel: string;
  readonly message: string;
  /** When the question was shown, by the clock of the chat; milliseconds since 1970. */
  readonly shownAt: number;
}

/**
 * The verbs throw StoreTrouble. What they have written outlives the process; a failure of the power only what hosts have
 * set, as bookmarks and gates come and go with every question.
 */
export interface ChatStore {
  readonly bookmarkOf: (owner: string) => Bookmark | undefined;
  readonly setBookmark: (owner: string, bookmark: Bookmark) => void;
  readonly dropBookmark: (owner: string) => void;
  /** What the hosts of a community have set, as JSON text; undefined where they have set nothing. */
  readonly hostOf: (community: string) => string | undefined;
  readonly setHost: (community: string, settings: string) => void;
  /**
   * The time at which the caller may pass a gate that opens once in so many milliseconds, for all processes together.
   * Each call takes the next free time. Times in milliseconds since 1970.
   */
  readonly passAt: (gate: string, apart: number, now: number) => number;
  readonly close: () => void;
}

/** Opens the file as `openStore` does, on a connection of its own. Throws StoreTrouble or StoreTooNew. */
export function openChatStore(file: string, patience: number): ChatStore {
  const db = openDatabase(file, patience);
  db.pragma('synchronous = NORMAL');
  const sql = prepare(db);
  const tried = <T>(during: string, work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw named(error, file, during);
    }
  };
  const pass = db.transaction((gate: string, apart: number, now: number): number => {
    const at = Math.max(now, sql.freeAt.get(gate)?.free_at ?? 0);
    sql.setFreeAt.run(gate, at + apart);
    return at;
  });
  return {
    bookmarkOf: (owner) => tried('bookmarkOf', () => sql.bookmark.get(owner)),
    setBookmark: (owner, { session, question, channel, message, shownAt }) =>
      tried(
        'setBookmark',
        () => void sql.setBookmark.run(owner, session, question, channel, message, shownAt),
      ),
    dropBookmark: (owner) => tried('dropBookmark', () => void sql.dropBookmark.run(owner)),
    hostOf: (community) => tried('hostOf', () => sql.host.get(community)?.settings),
    setHost: (community, settings) =>
      tried('setHost', () => {
        sql.setHost.run(community, settings);
        db.pragma('wal_checkpoint(FULL)');
      }),
    passAt: (gate, apart, now) => tried('passAt', () => pass.immediate(gate, apart, now)),
    close: () => tried('close', () => void db.close()),
  };
}

function prepare(db: Database.Database) {
  return {
    bookmark: db.prepare<[owner: string], Bookmark>(
      'SELECT session, question, channel, message, shown_at AS shownAt FROM bookmark WHERE owner = ?',
    ),
    setBookmark: db.prepare<
      [owner: string, session: string, question: string, channel: string, message: string, shownAt: number]
    >(
      `INSERT OR REPLACE INTO bookmark (owner, session, question, channel, message, shown_at)
       VALUES (?, ?, ?, ?, ?, ?)`,
    ),
    dropBookmark: db.prepare<[owner: string]>('DELETE FROM bookmark WHERE owner = ?'),
    host: db.prepare<[community: string], { settings: string }>(
      'SELECT settings FROM host WHERE community = ?',
    ),
    setHost: db.prepare<[community: string, settings: string]>(
      'INSERT OR REPLACE INTO host (community, settings) VALUES (?, ?)',
    ),
    freeAt: db.prepare<[gate: string], { free_at: number }>('SELECT free_at FROM gate WHERE name = ?'),
    setFreeAt: db.prepare<[gate: string, at: number]>(
      'INSERT OR REPLACE INTO gate (name, free_at) VALUES (?, ?)',
    ),
  };
}
