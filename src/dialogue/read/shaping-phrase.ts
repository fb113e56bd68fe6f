/** A shaping phrase taken apart: which rows, how often, how many stitches. */
import { type Figures, figuresAt } from './shaping-figures.ts';
import type { Token } from './token.ts';
import { means } from './vocabulary.ts';

/** One entry a size, null where the phrase is not for that size; a single entry where it is the same for all. */
export type PerSize = readonly (number | null)[];

export interface Shaping {
  /** 'Every Nth row'; several take turns. Empty where the phrase names no rows. */
  readonly every: readonly PerSize[];
  readonly times: PerSize | undefined;
  /** The times come after a first one that is not counted in: 'next and 5 foll 4th rows', '5 more times'. */
  readonly more: boolean;
  /** Stitches that one shaping row changes at one place. */
  readonly stitches: PerSize | undefined;
}

type Draft = { -readonly [K in keyof Shaping]: Shaping[K] };

const TOTAL = new Set(['total', 'insgesamt', 'altogether']);
const AND = new Set(['and', 'und', 'et', '&', '+']);

/** Walks along a phrase; each word says what the figures behind it are. */
export class Phrase {
  readonly draft: Draft = { every: [], times: undefined, more: false, stitches: undefined };
  readonly rest: Token[] = [];
  /** Whether the same thing was said twice over. */
  twice = false;
  commaMissing = false;
  private at = 0;
  private readonly tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
    while (this.at < tokens.length) this.step();
  }

  private step(): void {
    const word = this.text();
    const isPlace = /^(ends?|sides?|edges?)$/.test(this.text(1));
    if (means(word, 'every') && !isPlace) this.afterEvery();
    else if (means(word, 'following')) this.afterFollowing();
    else if (TOTAL.has(word)) this.afterTotal();
    else if (word === 'once' || word === 'twice') this.times([word === 'once' ? 1 : 2], 1);
    else this.afterFigures();
  }

  /** 'every 6th row', 'every other row', 'every row', 'jeder 4. und 6. Reihe'. */
  private afterEvery(): void {
    this.at += means(this.text(1), 'following') ? 2 : 1;
    const first = this.figures();
    if (first === undefined) {
      const isOther = means(this.text(), 'other') || this.text() === 'rs';
      this.every([[isOther ? 2 : 1]], isOther ? 1 : 0);
      return;
    }
    this.at = first.end;
    const second = AND.has(this.text()) ? this.figures(1) : undefined;
    if (second?.ordinal === true) this.every([first.values, second.values], second.end - this.at);
    else this.every([first.values], 0);
  }

  /** 'next 5 rows', 'next row', 'foll 10 alt rows', 'foll 4th row'; 'next and 5 foll 4th rows'. */
  private afterFollowing(): void {
    const and = means(this.text(1), 'row') ? 2 : 1;
    if (AND.has(this.text(and))) {
      this.draft.more = true;
      this.at += and + 1;
      return;
    }
    const first = this.figures(1);
    const isOther = means(this.tokens[first?.end ?? this.at + 1]?.text ?? '', 'other');
    if (first === undefined && !isOther && !means(this.text(1), 'row')) {
      this.leave();
      return;
    }
    this.at = first?.end ?? this.at + 1;
    this.times(first === undefined || first.ordinal ? [1] : first.values, 0);
    this.every([first?.ordinal ? first.values : [isOther ? 2 : 1]], isOther ? 1 : 0);
  }

  /** 'for a total of 10'. */
  private afterTotal(): void {
    const found = this.figures(this.text(1) === 'of' ? 2 : 1);
    if (found === undefined) this.leave();
    else this.times(found.values, found.end - this.at);
  }

  /** Figures that the next word explains: times, stitches, following rows, or an interval. */
  private afterFigures(): void {
    const found = this.figures();
    const [next, second] = [found?.end, (found?.end ?? 0) + 1].map((i) => this.tokens[i ?? -1]?.text ?? '');
    if (found === undefined || next === undefined || second === undefined) {
      this.leave();
      return;
    }
    const start = this.at;
    const isMore = means(next, 'more') ? means(second, 'times') : means(second, 'more');
    this.at = found.end;
    if (means(next, 'following')) this.timesFollowing(found.values);
    else if (means(next, 'times') || isMore) {
      this.draft.more ||= isMore;
      this.times(found.values, isMore ? 2 : 1);
    } else if (found.ordinal && means(next, 'row')) this.every([found.values], 0);
    else if (means(next, 'stitch')) this.stitches(found.values);
    else {
      this.at = start;
      this.leave();
    }
  }

  /** '1 foll 4th row', '5 foll alt rows', '3 foll rows'. */
  private timesFollowing(times: PerSize): void {
    this.times(times, 1);
    const interval = this.figures();
    const isOther = means(this.text(), 'other');
    if (interval === undefined) this.every([[isOther ? 2 : 1]], isOther ? 1 : 0);
    else this.every([interval.values], interval.end - this.at);
  }

  private every(rows: readonly PerSize[], taken: number): void {
    this.twice ||= this.draft.every.length > 0;
    this.draft.every = rows;
    this.at += taken;
    if (means(this.text(), 'row')) this.at += 1;
  }

  private times(row: PerSize, taken: number): void {
    this.twice ||= this.draft.times !== undefined;
    this.draft.times = row;
    this.at += taken;
  }

  private stitches(row: PerSize): void {
    this.twice ||= this.draft.stitches !== undefined;
    this.draft.stitches = row;
    this.at += 1;
  }

  private leave(): void {
    const token = this.tokens[this.at];
    if (token !== undefined) this.rest.push(token);
    this.at += 1;
  }

  private figures(ahead = 0): Figures | undefined {
    const found = figuresAt(this.tokens, this.at + ahead);
    this.commaMissing ||= found?.commaMissing === true;
    return found;
  }

  private text(ahead = 0): string {
    return this.tokens[this.at + ahead]?.text ?? '';
  }
}
