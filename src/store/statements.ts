/** The statements of the SQLite store, prepared once. */
import type { Database, Statement } from 'better-sqlite3';
import type { Preferences } from './store.ts';

export interface SessionRow {
  readonly id: string;
  readonly owner: string;
  readonly flow: string;
  readonly version: number;
  readonly begun: number;
  readonly place_format: number;
  readonly place: string;
  readonly practice: 0 | 1;
}

export interface LineRow {
  readonly session: string;
  readonly number: number;
  readonly format: number;
  readonly line: string;
}

export type Statements = ReturnType<typeof prepare>;

const SESSION = 'SELECT id, owner, flow, version, begun, place_format, place, practice FROM session';
const LINE = 'SELECT log.session, log.number, log.format, log.line FROM log';

export function prepare(db: Database) {
  return {
    session: db.prepare<[id: string], SessionRow>(`${SESSION} WHERE id = ?`),
    sessionsOf: db.prepare<[owner: string], SessionRow>(`${SESSION} WHERE owner = ? ORDER BY begun, id`),
    openSessions: db.prepare<[owner: string], SessionRow>(
      `${SESSION} WHERE owner = ? AND place ->> '$.rest' IS NOT 'cancelled'
       AND given < (SELECT count(*) FROM log WHERE log.session = session.id)`,
    ),
    newSession: db.prepare<
      [
        id: string,
        owner: string,
        flow: string,
        version: number,
        begun: number,
        given: number,
        format: number,
        place: string,
        practice: 0 | 1,
      ]
    >(
      `INSERT INTO session (id, owner, flow, version, begun, given, place_format, place, practice)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    ),
    setPlace: db.prepare<[format: number, place: string, id: string]>(
      'UPDATE session SET place_format = ?, place = ? WHERE id = ?',
    ),
    lines: db.prepare<[session: string], LineRow>(`${LINE} WHERE session = ? ORDER BY number`),
    newLine: db.prepare<[session: string, number: number, format: number, line: string]>(
      'INSERT INTO log (session, number, format, line) VALUES (?, ?, ?, ?)',
    ),
    /** In interviews of her own: what is answered in practice is not hers. */
    answersTo: db.prepare<[owner: string, questions: string], LineRow>(
      `${LINE} JOIN session ON session.id = log.session
       WHERE session.owner = ? AND session.practice = 0 AND log.question IN (SELECT value FROM json_each(?))
       ORDER BY log.at, log.session, log.number`,
    ),
    preferences: db.prepare<[owner: string], Preferences>(
      'SELECT unit, terms FROM preference WHERE owner = ?',
    ),
    setPreferences: db.prepare<[owner: string, unit: Preferences['unit'], terms: Preferences['terms']]>(
      `INSERT INTO preference (owner, unit, terms) VALUES (?, ?, ?)
       ON CONFLICT (owner) DO UPDATE SET unit = excluded.unit, terms = excluded.terms`,
    ),
    /** To be run in this order: the first allows what the last forbids again. */
    forgetting: [
      'INSERT INTO forgetting (owner) VALUES (?)',
      'DELETE FROM log WHERE session IN (SELECT id FROM session WHERE owner = ?)',
      'DELETE FROM session WHERE owner = ?',
      'DELETE FROM preference WHERE owner = ?',
      'DELETE FROM bookmark WHERE owner = ?',
      'DELETE FROM forgetting WHERE owner = ?',
    ].map((sql): Statement<[owner: string]> => db.prepare<[owner: string]>(sql)),
  };
}
