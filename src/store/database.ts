/** Opens the database file: private to the user of the process, durable, and of the present shape. */
import { closeSync, mkdirSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { migrate } from './migrations.ts';
import { named } from './trouble.ts';

/** Between two tries, in milliseconds. */
const RETRY = 10;

/**
 * Opens the file, makes it where it is missing, and brings it up to date. `patience`: how long a statement waits for
 * another process to let go, in milliseconds. Throws StoreTrouble or StoreTooNew.
 */
export function openDatabase(file: string, patience: number): Database.Database {
  try {
    // Measurements of bodies are nobody else's to read: folder and file belong to the user of the process alone.
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    closeSync(openSync(file, 'a', 0o600));
    const db = new Database(file, { timeout: patience });
    try {
      switchToWal(db, patience);
      // In WAL mode only FULL brings a commit to the disk before it returns.
      db.pragma('synchronous = FULL');
      db.pragma('foreign_keys = ON');
      db.pragma('secure_delete = ON');
      migrate(db, file);
      return db;
    } catch (error) {
      db.close();
      throw error;
    }
  } catch (error) {
    throw named(error, file, 'open');
  }
}

/** Done once in the life of a file. Here SQLite does not wait for other processes by itself, as it does elsewhere. */
function switchToWal(db: Database.Database, patience: number): void {
  const until = performance.now() + patience;
  for (;;) {
    try {
      db.pragma('journal_mode = WAL');
      return;
    } catch (error) {
      const busy = error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');
      if (!busy || performance.now() > until) throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, RETRY);
    }
  }
}
