/**
 * A needle that knits instructions stitch by stitch and reports what came of them. It knows nothing of the engine:
 * it imports nothing, so that a fault in the engine's arithmetic cannot hide in its own check.
 *
 * Stitches lie in the order in which a right-side row meets them: the `start` side is where right-side rows begin,
 * the `end` side where they end. Boundary b lies between stitch b − 1 and stitch b; the yarn hangs at a boundary.
 * On a flat piece rows turn at their ends; in the round they run on across the join, which lies at boundary 0.
 *
 *   const needle = Needle.castOn(40, 'flat');
 *   needle.plain(6);                                   // six whole rows (or rounds)
 *   needle.shaped({ start: -1, end: -1 });             // one row, a decrease at either end
 *   needle.shaped({ at: [{ before: 20, change: 2 }] }); // one row, two stitches made before stitch 20
 *   needle.written(spread.row);                        // one row as the engine writes rows
 *   needle.bindOff(5).finish();                        // five off where the row begins, then knit the row out
 *   needle.castOn(4).finish();                         // four on where the row begins, then knit on
 *   needle.knitTo(30).turn().knitTo(10).turn();        // two short rows, by boundaries
 *   needle.finish();                                   // on to the end of the row, or to the join
 *   const sleeve = needle.takeOff(10, 18);             // those stitches on a holder, as a flat needle of their own
 *   const yoke = Needle.join([sleeve, body], 'round'); // needles put side by side
 *
 * Reports: `count` live stitches; `heights`, rows between the start and each live stitch along its column, where made
 * and cast-on stitches begin at their neighbour's height; `log`, one entry for each row or part of a row up to a turn;
 * `counts`, the live stitches after each of these; `boundOff`, every bind-off with the heights at which it happened.
 * Whatever cannot be knitted (too few stitches, a row that does not come out) throws.
 */

export type Worked = 'flat' | 'round';
export type Side = 'right side' | 'wrong side';

export interface RowRecord {
  readonly side: Side;
  /** Stitches left on the right needle by this row or part of a row. */
  readonly worked: number;
  /** Live stitches after it. */
  readonly count: number;
  /** Whether it was left by a turn before its end. */
  readonly short: boolean;
}

export interface BindOff {
  /** Rows and parts of rows finished before it. */
  readonly afterRows: number;
  readonly at: 'start' | 'end' | 'middle';
  readonly heights: readonly number[];
}

/** What `written` can read: the shape of the engine's rows, restated here. */
export type Part =
  | { readonly kind: 'edge' | 'plain'; readonly stitches: number }
  | { readonly kind: 'change'; readonly change: keyof typeof WORKED_AS }
  | { readonly kind: 'repeat'; readonly times: number; readonly of: readonly Part[] };

/** One row with changes: at its two ends, and before given stitches, counted from the start side as they lie before the row. */
export interface Shaping {
  readonly start?: number;
  readonly end?: number;
  readonly at?: readonly { readonly before: number; readonly change: number }[];
}

/** Stitches taken and left by each change, from any stitch dictionary. */
const WORKED_AS = {
  m1: [0, 1],
  kfb: [1, 2],
  kyok: [1, 3],
  k2tog: [2, 1],
  cdd: [3, 1],
} as const;

export class Needle {
  readonly log: RowRecord[] = [];
  readonly boundOff: BindOff[] = [];
  private yarn = 0;
  private side: Side = 'right side';
  private worked = 0;

  private constructor(
    private stitches: number[],
    private readonly way: Worked,
  ) {}

  static castOn(count: number, way: Worked): Needle {
    return new Needle(Array(count).fill(0), way);
  }

  static join(parts: readonly Needle[], way: Worked): Needle {
    return new Needle(
      parts.flatMap((part) => part.stitches),
      way,
    );
  }

  get count(): number {
    return this.stitches.length;
  }

  get heights(): readonly number[] {
    return [...this.stitches];
  }

  get counts(): readonly number[] {
    return this.log.map((row) => row.count);
  }

  /** Which side is knitted next, and where the yarn hangs. */
  get next(): { readonly side: Side; readonly at: number } {
    return { side: this.side, at: this.yarn };
  }

  /** Knits so many stitches from where the yarn hangs. */
  knit(count: number): this {
    for (let i = 0; i < count; i++) this.change(1, 1);
    return this;
  }

  /** Works `takes` stitches into `leaves`; what is made out of none lies as high as the stitch beside it. */
  change(takes: number, leaves: number): this {
    const taken = this.pull(takes);
    const height = takes === 0 ? this.beside() : Math.max(...taken) + 1;
    this.put(Array(leaves).fill(height));
    this.worked += leaves;
    return this;
  }

  /** Binds off the next stitches. */
  bindOff(count: number): this {
    const at = this.yarn === 0 ? 'start' : this.yarn === this.count ? 'end' : 'middle';
    this.boundOff.push({ afterRows: this.log.length, at, heights: this.pull(count) });
    return this;
  }

  /** Casts stitches on: where a row begins they are knitted next, within a row they wait on the right needle. */
  castOn(count: number): this {
    const before = this.yarn;
    const begins = this.worked === 0;
    this.put(Array(count).fill(begins ? (this.ahead() ?? 0) : this.beside()));
    if (begins) this.yarn = this.side === 'right side' ? before : before + count;
    return this;
  }

  /** Knits on to a boundary; in the round across the join where need be. From the join, the join is a round away. */
  knitTo(boundary: number): this {
    const target = this.way === 'round' ? modulo(boundary, this.count) : boundary;
    if (this.way === 'round' && this.yarn === 0 && boundary === this.count) this.knit(this.count);
    for (let guard = this.count; !this.isAt(target); guard--) {
      if (guard === 0)
        throw new Error(`boundary ${boundary} does not lie ahead among ${this.count} stitches`);
      this.knit(1);
    }
    return this;
  }

  /** Turns the work where the yarn hangs. */
  turn(): this {
    this.note(true);
    this.side = this.side === 'right side' ? 'wrong side' : 'right side';
    return this;
  }

  /** Knits to the end of the row, or to the join, and is ready for the next. */
  finish(): this {
    if (this.way === 'round') return this.closeRound();
    this.knit(this.side === 'right side' ? this.count - this.yarn : this.yarn);
    this.note(false);
    this.side = this.side === 'right side' ? 'wrong side' : 'right side';
    return this;
  }

  /** So many whole rows or rounds without shaping. */
  plain(rows: number): this {
    for (let i = 0; i < rows; i++) {
      if (this.way === 'round') this.knit(this.count);
      this.finish();
    }
    return this;
  }

  /** One whole row with changes, from whichever side it is knitted. */
  shaped({ start = 0, end = 0, at = [] }: Shaping): this {
    const all = [
      ...(start === 0 ? [] : [{ from: 0, change: start }]),
      ...at.map(({ before, change }) => ({ from: before, change })),
      ...(end === 0 ? [] : [{ from: this.count - takes(end), change: end }]),
    ];
    return this.work(this.side === 'right side' ? all : all.reverse());
  }

  /** One whole row as it is written, knitted from its first part to its last. */
  written(row: readonly Part[]): this {
    const begun = this.count;
    let left = begun;
    for (const part of unfold(row)) {
      const [taken, leaves] = part.kind === 'change' ? WORKED_AS[part.change] : [1, 1];
      for (let i = part.kind === 'change' ? 1 : part.stitches; i > 0; i--) {
        left -= taken;
        if (left < 0) throw new Error(`the row needs more than the ${begun} stitches of the needle`);
        this.change(taken, leaves);
      }
    }
    if (left !== 0) throw new Error(`the row leaves ${left} of ${begun} stitches unworked`);
    return this.finish();
  }

  /** Takes the stitches between two boundaries off, between rows, onto a needle of their own. */
  takeOff(from: number, to: number): Needle {
    if (this.worked > 0) throw new Error('stitches are taken off between rows');
    const off = this.stitches.splice(from, to - from);
    if (off.length !== to - from) throw new Error(`there are no stitches ${from} to ${to}`);
    if (this.yarn >= to) this.yarn -= off.length;
    return new Needle(off, 'flat');
  }

  private work(changes: readonly { from: number; change: number }[]): this {
    const [forward, begun] = [this.side === 'right side', this.count];
    let done = 0;
    for (const { from, change } of changes) {
      const reach = forward ? from : begun - from - takes(change);
      if (reach < done) throw new Error(`two changes overlap at stitch ${from}`);
      this.knit(reach - done);
      this.change(takes(change), change > 0 ? change : 1);
      done = reach + takes(change);
    }
    this.knit(begun - done);
    return this.finish();
  }

  private closeRound(): this {
    if (this.side === 'wrong side') throw new Error('a round is finished on its right side');
    if (this.yarn !== 0) this.knit(this.count - this.yarn);
    this.yarn = 0;
    this.note(false);
    return this;
  }

  private isAt(target: number): boolean {
    return this.way === 'round' ? modulo(this.yarn, this.count) === target : this.yarn === target;
  }

  /** The next stitches off the left needle. */
  private pull(count: number): number[] {
    const taken: number[] = [];
    for (let i = 0; i < count; i++) {
      if (this.way === 'round' && this.side === 'right side' && this.yarn === this.count) this.yarn = 0;
      if (this.way === 'round' && this.side === 'wrong side' && this.yarn === 0) this.yarn = this.count;
      const index = this.side === 'right side' ? this.yarn : this.yarn - 1;
      const [height] = this.stitches.splice(index, 1);
      if (height === undefined || index < 0) throw new Error('no stitch is left to work');
      if (this.side === 'wrong side') this.yarn -= 1;
      taken.push(height);
    }
    return taken;
  }

  private put(heights: readonly number[]): void {
    this.stitches.splice(this.yarn, 0, ...heights);
    if (this.side === 'right side') this.yarn += heights.length;
  }

  /** The height at the yarn: of the stitch just worked, else of the next one as it will be. */
  private beside(): number {
    const behind = this.stitches[this.side === 'right side' ? this.yarn - 1 : this.yarn];
    return behind ?? (this.ahead() ?? -1) + 1;
  }

  private ahead(): number | undefined {
    return this.stitches[this.side === 'right side' ? this.yarn : this.yarn - 1];
  }

  private note(short: boolean): void {
    this.log.push({ side: this.side, worked: this.worked, count: this.count, short });
    this.worked = 0;
  }
}

/** Stitches that a change takes: one more than it loses; none where it gains. */
function takes(change: number): number {
  return change < 0 ? 1 - change : 0;
}

function unfold(row: readonly Part[]): Exclude<Part, { kind: 'repeat' }>[] {
  return row.flatMap((part) => {
    if (part.kind !== 'repeat') return [part];
    const once = unfold(part.of);
    return Array.from({ length: part.times }, () => once).flat();
  });
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
