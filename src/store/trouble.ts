/** What can go wrong in a store, by name, with the facts as fields. */
import Database from 'better-sqlite3';

export const TROUBLES = [
  'disk full',
  'locked',
  'corrupt',
  'read-only',
  'cannot open',
  'input or output',
] as const;
export type Trouble = (typeof TROUBLES)[number];

/** The world outside failed. Nothing of the verb was kept; everything before it was. */
export class StoreTrouble extends Error {
  override readonly name = 'StoreTrouble';
  readonly trouble: Trouble;
  readonly file: string;
  /** The verb that was under way. */
  readonly during: string;
  /** The code that SQLite or the system gave. */
  readonly code: string;

  constructor(facts: { trouble: Trouble; file: string; during: string; code: string }, cause: unknown) {
    super(`${IN_WORDS[facts.trouble]} (${facts.file}, ${facts.during}, ${facts.code})`, { cause });
    this.trouble = facts.trouble;
    this.file = facts.file;
    this.during = facts.during;
    this.code = facts.code;
  }
}

const IN_WORDS: Readonly<Record<Trouble, string>> = {
  'disk full': 'The disk is full',
  locked: 'Another program holds the database and did not let go in time',
  corrupt: 'The database is damaged, or is no database of ours',
  'read-only': 'The database may be read but not written',
  'cannot open': 'The database cannot be opened',
  'input or output': 'The disk did not do what was asked',
};

/** The database was made by a later version of the program; this one leaves it alone. */
export class StoreTooNew extends Error {
  override readonly name = 'StoreTooNew';
  readonly file: string;
  readonly found: number;
  readonly known: number;

  constructor(file: string, found: number, known: number) {
    super(`${file} is of version ${found}; this program knows versions up to ${known}. Please update it.`);
    this.file = file;
    this.found = found;
    this.known = known;
  }
}

/** A stored value is not of the shape, or of the version, that it should be. */
export class StoredUnreadable extends Error {
  override readonly name = 'StoredUnreadable';
  readonly where: string;

  constructor(where: string, why: string) {
    super(`${where} cannot be read: ${why}`);
    this.where = where;
  }
}

/** The log is not where the caller took it to be: somebody else has added to it, or lines are missing in between. */
export class LogMismatch extends Error {
  override readonly name = 'LogMismatch';
  readonly session: string;
  readonly kind: 'gap' | 'conflict';
  /** The line at which the two part. */
  readonly number: number;
  /** How many lines are stored. */
  readonly stored: number;

  constructor(kind: 'gap' | 'conflict', session: string, number: number, stored: number) {
    super(
      kind === 'gap'
        ? `line ${number} of ${session} would leave a gap: only ${stored} are stored`
        : `line ${number} of ${session} is not the one that is stored`,
    );
    this.kind = kind;
    this.session = session;
    this.number = number;
    this.stored = stored;
  }
}

/** Beginnings of the codes of SQLite, and the codes of the system. */
const BY_CODE: readonly (readonly [RegExp, Trouble])[] = [
  [/^SQLITE_FULL|^ENOSPC$|^EDQUOT$/, 'disk full'],
  [/^SQLITE_(BUSY|LOCKED|PROTOCOL)/, 'locked'],
  [/^SQLITE_(CORRUPT|NOTADB)/, 'corrupt'],
  [/^SQLITE_(READONLY|PERM)|^EROFS$|^EACCES$|^EPERM$/, 'read-only'],
  [/^SQLITE_CANTOPEN|^ENOTDIR$|^EEXIST$|^EISDIR$|^ENOENT$|^ELOOP$|^ENAMETOOLONG$/, 'cannot open'],
  [/^SQLITE_IOERR|^EIO$|^EMFILE$|^ENFILE$/, 'input or output'],
];

/** The error as trouble of the outside world where it is one, else the error itself. */
export function named(error: unknown, file: string, during: string): unknown {
  const code = codeOf(error);
  const trouble = BY_CODE.find(([pattern]) => pattern.test(code))?.[1];
  return trouble === undefined ? error : new StoreTrouble({ trouble, file, during, code }, error);
}

function codeOf(error: unknown): string {
  if (error instanceof Database.SqliteError) return error.code;
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
