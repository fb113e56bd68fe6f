/** The shape of the database, as a list of steps that only ever grows: a step that has been published is never changed. */
import type { Database } from 'better-sqlite3';
import { StoreTooNew } from './trouble.ts';

export const MIGRATIONS: readonly string[] = [
  `
  CREATE TABLE session (
    id TEXT PRIMARY KEY,
    owner TEXT NOT NULL,
    flow TEXT NOT NULL,
    version INTEGER NOT NULL,
    begun INTEGER NOT NULL,
    -- Lines that the session began with, before the owner said anything.
    given INTEGER NOT NULL,
    place_format INTEGER NOT NULL,
    place TEXT NOT NULL CHECK (json_valid(place))
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX session_of_owner ON session (owner);

  CREATE TABLE log (
    session TEXT NOT NULL REFERENCES session (id),
    number INTEGER NOT NULL,
    format INTEGER NOT NULL,
    line TEXT NOT NULL CHECK (json_valid(line)),
    question TEXT GENERATED ALWAYS AS (line ->> '$.question') VIRTUAL,
    at INTEGER GENERATED ALWAYS AS (line ->> '$.at') VIRTUAL,
    PRIMARY KEY (session, number)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE preference (
    owner TEXT PRIMARY KEY,
    unit TEXT CHECK (unit IN ('cm', 'in')),
    terms TEXT CHECK (terms IN ('us', 'uk'))
  ) STRICT, WITHOUT ROWID;

  -- Holds an owner only while everything of hers is being deleted.
  CREATE TABLE forgetting (owner TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;

  CREATE TRIGGER log_has_no_gap BEFORE INSERT ON log
  WHEN new.number <> (SELECT coalesce(max(number) + 1, 0) FROM log WHERE session = new.session)
  BEGIN SELECT raise(ABORT, 'the log is added to at its end'); END;

  CREATE TRIGGER log_is_not_changed BEFORE UPDATE ON log
  BEGIN SELECT raise(ABORT, 'the log is only added to'); END;

  CREATE TRIGGER log_is_not_deleted BEFORE DELETE ON log
  WHEN NOT EXISTS (
    SELECT 1 FROM forgetting JOIN session USING (owner) WHERE session.id = old.session
  )
  BEGIN SELECT raise(ABORT, 'the log is only added to'); END;

  CREATE TRIGGER session_stays_the_owners BEFORE UPDATE OF id, owner, flow, version, begun, given ON session
  BEGIN SELECT raise(ABORT, 'of a session only its place changes'); END;
  `,
  `
  -- The interview that the owner's next words answer, and the message on which its question stands.
  CREATE TABLE bookmark (
    owner TEXT PRIMARY KEY,
    session TEXT NOT NULL,
    question TEXT NOT NULL,
    channel TEXT NOT NULL,
    message TEXT NOT NULL,
    -- When the question was shown there, by the clock of the chat; milliseconds since 1970.
    shown_at INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;

  -- What the hosts of a community have set.
  CREATE TABLE host (
    community TEXT PRIMARY KEY,
    settings TEXT NOT NULL CHECK (json_valid(settings))
  ) STRICT, WITHOUT ROWID;

  -- When the next process may pass a gate that lets one through at a time; milliseconds since 1970.
  CREATE TABLE gate (name TEXT PRIMARY KEY, free_at INTEGER NOT NULL) STRICT, WITHOUT ROWID;
  `,
  `
  -- 1: an exercise on figures that are not the owner's.
  ALTER TABLE session ADD COLUMN practice INTEGER NOT NULL DEFAULT 0 CHECK (practice IN (0, 1));

  CREATE TRIGGER practice_stays_practice BEFORE UPDATE OF practice ON session
  BEGIN SELECT raise(ABORT, 'of a session only its place changes'); END;
  `,
];

/** Brings the database up to date, one step a transaction. Throws StoreTooNew for a database of a later program. */
export function migrate(db: Database, file: string): void {
  while (versionOf(db) !== MIGRATIONS.length) {
    db.transaction(() => {
      // Read again: another process may have taken the step meanwhile.
      const version = versionOf(db);
      if (version > MIGRATIONS.length) throw new StoreTooNew(file, version, MIGRATIONS.length);
      const step = MIGRATIONS[version];
      if (step === undefined) return;
      db.exec(step);
      db.pragma(`user_version = ${version + 1}`);
    }).immediate();
  }
}

function versionOf(db: Database): number {
  return Number(db.pragma('user_version', { simple: true }));
}
