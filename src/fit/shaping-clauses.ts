/**
 * From the tokens of a shaping line to its clauses, in order: which rows each speaks of, how often, how many stitches.
 * Anything that is not understood is refused with its place, never guessed.
 */
import { type Clause, type Effect, type Line, type Often, Unreadable } from './shaping-clause.ts';
import { Cursor } from './shaping-cursor.ts';
import { type Mark, type Token, tokens } from './shaping-words.ts';

/** Reads a line; what is worked 'at the same time' makes a line of its own. Throws `Unreadable`. */
export function clausesOf(text: string): readonly Line[] {
  const all = tokens(text);
  const unknown = all.find((t) => t.kind === 'unknown');
  if (unknown !== undefined) throw new Unreadable('word not known', unknown.word);
  const lines: Token[][] = [[]];
  for (const token of all)
    if (token.kind === 'mark' && token.mark === 'same time') lines.push([]);
    else lines.at(-1)?.push(token);
  const worded = lines.filter((line) => line.some((t) => t.kind !== 'mark' || !isJoint(t.mark)));
  if (worded.length === 0) throw new Unreadable('nothing to read');
  let verb: Verb | undefined;
  return worded.map((line) => {
    const reader = new Reader(line, verb === undefined ? {} : { verb });
    const read = reader.line();
    verb = reader.said.verb;
    return read;
  });
}

function isJoint(mark: Mark): boolean {
  return mark === 'then' || mark === 'and';
}

type Verb = 'increase' | 'decrease' | 'bind off';

/** What is said once holds for what follows; said at the end, it holds for what came before without it. */
interface Said {
  verb?: Verb;
  amount?: number;
  places?: number | 'as many as there are markers';
}

/** A clause before it is known what its rows do. */
type Bare = Clause extends infer C ? (C extends unknown ? Omit<C, 'effect'> : never) : never;
interface Draft {
  readonly clause: Bare;
  readonly said: Said;
}
const NONE: readonly Bare[] = [];

/** No shaping row that is not a bind-off changes more stitches than this at one place. */
const MOST_AT_ONCE = 4;
/** Brackets within brackets grow fast; no sweater's line has so many clauses. */
const MOST_CLAUSES = 999;

function finish({ clause, said }: Draft): Clause {
  const { verb, amount, places } = said;
  const by = verb === undefined || verb === 'increase' ? verb : 'decrease';
  const silent = amount === undefined && places === undefined;
  const perRow =
    silent || places === 'as many as there are markers' ? undefined : (amount ?? 1) * (places ?? 1);
  const effect: Effect = { by, perRow, placed: perRow !== undefined && places !== undefined };
  return clause.kind === 'plain' ? clause : { ...clause, effect };
}

/** Walks along the tokens of one line; each method takes the tokens that it understands and returns their clauses. */
class Reader {
  readonly said: Said;
  private readonly cursor: Cursor;
  private readonly found: Draft[] = [];
  private joint: 'and' | 'then' = 'then';
  /** '12 times' ahead of the rows that it counts. */
  private ahead: number | undefined;
  /** Rows stated for the whole line. */
  private within: number | undefined;
  private goesOn = false;
  private start: number | undefined;
  private end: number | undefined;
  /** Stitches were said of which no row is known yet. */
  private unplaced: number | undefined;

  constructor(line: readonly Token[], said: Said) {
    this.cursor = new Cursor(line);
    this.said = { ...said };
  }

  line(): Line {
    while (!this.cursor.atEnd) this.step();
    if (this.found.length === 0) throw new Unreadable('no rows named');
    if (this.ahead !== undefined) throw new Unreadable('number without a meaning', `${this.ahead}`);
    if (this.unplaced !== undefined) throw new Unreadable('no rows named', `${this.unplaced}`);
    return { clauses: this.found.map(finish), goesOn: this.goesOn, start: this.start, end: this.end };
  }

  private step(): void {
    const clauses = this.read(this.cursor.move());
    for (const clause of clauses) this.found.push({ clause, said: { ...this.said } });
    if (clauses.length === 0) return;
    this.joint = 'then';
    this.unplaced = undefined;
  }

  private read(token: Token): readonly Bare[] {
    switch (token.kind) {
      case 'number':
        return this.number(token.value);
      case 'ordinal':
        this.cursor.take('row', 'rows');
        return [{ kind: 'row', row: token.value }];
      case 'unknown':
        throw new Unreadable('word not known', token.word);
      case 'mark':
        return this.mark(token.mark);
      default:
        return token satisfies never;
    }
  }

  private mark(mark: Mark): readonly Bare[] {
    switch (mark) {
      case 'then':
      case 'and':
        this.joint = mark;
        return NONE;
      case 'increase':
      case 'decrease':
      case 'bind off':
        return this.verb(mark);
      case 'both ends':
        return this.say({ places: 2 });
      case 'both sides of both markers':
        return this.say({ places: 4 });
      case 'markers':
        return this.say({ places: 'as many as there are markers' });
      case 'one edge':
        return this.say({ places: 1 });
      case 'repeat':
        this.goesOn ||= this.found.length === 0;
        return NONE;
      case 'next':
        return this.next();
      case 'following':
        return this.following();
      case 'every':
        return this.every();
      case 'plain':
        return this.plain(this.cursor.number());
      case '[':
        return this.bracket();
      case 'until':
        return this.endCount();
      case ']':
      case 'row':
      case 'rows':
      case 'times':
      case 'more':
      case 'in all':
      case 'stitches':
      case 'same time':
        throw new Unreadable('word not known', mark);
      default:
        return mark satisfies never;
    }
  }

  /** 'dec row' alone is a row; before 'every', 'next' or a number it only names what is done there. */
  private verb(verb: Verb): readonly Bare[] {
    this.say({ verb });
    if (!this.cursor.take('row', 'rows')) return NONE;
    const alone = this.cursor.atEnd || this.cursor.isMark(0, 'then', 'and', ']');
    return alone && !this.goesOn ? [{ kind: 'next', rows: 1 }] : NONE;
  }

  private say(now: Said): readonly Bare[] {
    Object.assign(this.said, now);
    for (const draft of this.found) Object.assign(draft.said, { ...now, ...draft.said });
    return NONE;
  }

  /** A number: stitches, an often ahead of its rows, plain rows, rows in all, or a count of following rows. */
  private number(value: number): readonly Bare[] {
    if (this.cursor.take('stitches')) return this.amount(value);
    if (this.cursor.take('times')) {
      this.ahead = value;
      return NONE;
    }
    if (this.cursor.take('following')) return this.followingTimes(value);
    if (!this.cursor.take('row', 'rows')) throw new Unreadable('number without a meaning', `${value}`);
    if (this.cursor.take('plain')) return this.plain(value);
    if (this.found.length > 0) throw new Unreadable('number without a meaning', `${value}`);
    this.within = value;
    return NONE;
  }

  /**
   * Stitches of a shaping row, or of the needle before and after it. 'Bind off 2 sts 2 times': only at the start of a
   * row, so at one edge on every second row.
   */
  private amount(value: number): readonly Bare[] {
    if (this.isCount(value)) {
      if (this.found.length === 0) this.start = value;
      else this.end = value;
      return NONE;
    }
    if (!this.found.some((draft) => draft.said.amount === undefined)) this.unplaced = value;
    this.say({ amount: value });
    const counted = this.cursor.peek()?.kind === 'number' && this.cursor.isMark(1, 'times');
    if (this.said.verb !== 'bind off' || !counted) return NONE;
    return [{ kind: 'run', every: [2], often: this.often() }];
  }

  /** Many stitches ahead of the first verb, or behind the last row, are a count of the needle. */
  private isCount(value: number): boolean {
    if (value <= MOST_AT_ONCE) return false;
    if (this.found.length === 0) return this.said.verb === undefined && this.cursor.isMark(0, 'then', ']');
    return this.cursor.atEnd || this.cursor.isMark(0, 'then', ']');
  }

  private next(): readonly Bare[] {
    const rows = this.cursor.number();
    const interval = rows === undefined ? this.cursor.ordinal() : undefined;
    this.cursor.take('row', 'rows');
    if (interval !== undefined) return [run([interval], { count: 'times', times: 1 })];
    return [{ kind: 'next', rows: rows ?? 1 }];
  }

  private following(): readonly Bare[] {
    const times = this.cursor.number();
    if (times !== undefined) return this.followingTimes(times);
    const interval = this.cursor.ordinal();
    const single = this.cursor.isMark(0, 'row');
    this.cursor.take('row', 'rows');
    if (interval === undefined) return [{ kind: 'next', rows: 1 }];
    return [run([interval], this.often(single ? 1 : undefined))];
  }

  /** '5 foll 4th rows', 'foll 10 alt rows', 'foll 3 rows'. */
  private followingTimes(times: number): readonly Bare[] {
    const interval = this.cursor.ordinal();
    this.cursor.take('row', 'rows');
    if (interval === undefined) return [{ kind: 'next', rows: times }];
    return [run([interval], { count: 'times', times })];
  }

  private every(): readonly Bare[] {
    this.cursor.take('following');
    const intervals = [this.cursor.ordinal() ?? this.cursor.number() ?? 1];
    const second = this.cursor.isMark(1, 'every') ? 2 : 1;
    if (this.cursor.isMark(0, 'and') && this.cursor.peek(second)?.kind === 'ordinal') {
      this.cursor.take('and');
      this.cursor.take('every');
      intervals.push(this.cursor.ordinal() ?? 1);
    }
    this.cursor.take('row', 'rows');
    return [run(intervals, this.often())];
  }

  /** How often, after the rows were named. `single` is the number of times that the wording implies by itself. */
  private often(single?: number): Often {
    if (this.ahead !== undefined) {
      const times = this.ahead;
      this.ahead = undefined;
      return { count: 'times', times };
    }
    if (this.cursor.take('until')) return this.until();
    if (this.cursor.take('in all')) return this.inAll();
    const counted = this.cursor.peek()?.kind === 'number';
    if (counted && (this.cursor.isMark(1, 'times') || this.cursor.isMark(1, 'more'))) return this.times();
    if (single !== undefined) return { count: 'times', times: single };
    if (this.within !== undefined) return { count: 'within', rows: this.within };
    throw new Unreadable('how often is missing');
  }

  /** '6 times', '6 more times', '6 times more', '6 times in all'. */
  private times(): Often {
    const times = this.cursor.number() ?? 0;
    const more = this.cursor.take('more');
    this.goesOn ||= more && this.found.length === 0;
    if (!this.cursor.take('times')) throw new Unreadable('how often is missing');
    if (this.cursor.take('in all')) return { count: 'in all', times };
    const before = this.found.at(-1)?.clause.kind;
    const joined = this.joint === 'and' && (before === 'next' || before === 'row');
    const certain = this.cursor.take('more') || more || !joined;
    return certain ? { count: 'times', times } : { count: 'times, first perhaps counted in', times };
  }

  private until(): Extract<Often, { count: 'until' }> {
    const stitches = this.cursor.number();
    if (stitches === undefined) throw new Unreadable('how often is missing');
    this.cursor.take('stitches');
    return { count: 'until', stitches };
  }

  /** '… 6 times, to 59 sts' names the count that is reached. */
  private endCount(): readonly Bare[] {
    const { stitches } = this.until();
    if (this.found.length === 0) throw new Unreadable('how often is missing');
    this.end = stitches;
    return NONE;
  }

  private inAll(): Often {
    const times = this.cursor.number();
    if (times === undefined) throw new Unreadable('how often is missing');
    this.cursor.take('times', 'increase', 'decrease');
    this.cursor.take('row', 'rows');
    return { count: 'in all', times };
  }

  private plain(counted: number | undefined): readonly Bare[] {
    if (counted === undefined) throw new Unreadable('how often is missing');
    this.cursor.take('row', 'rows');
    return [{ kind: 'plain', rows: counted }];
  }

  /** '[work 5 rows even, inc row] 6 times'; or a remark in brackets. */
  private bracket(): readonly Bare[] {
    const inside: Bare[] = [];
    while (!this.cursor.take(']')) {
      if (this.cursor.atEnd) throw new Unreadable('word not known', '(');
      inside.push(...this.read(this.cursor.move()));
    }
    if (inside.length === 0) return NONE;
    const times = this.cursor.number();
    if (times === undefined || !this.cursor.take('times')) throw new Unreadable('how often is missing');
    if (times * inside.length > MOST_CLAUSES) throw new Unreadable('number without a meaning', `${times}`);
    return Array.from({ length: times }, () => inside).flat();
  }
}

function run(every: readonly number[], often: Often): Bare {
  if (every.some((n) => n < 1)) throw new Unreadable('number without a meaning', '0');
  return { kind: 'run', every, often };
}
