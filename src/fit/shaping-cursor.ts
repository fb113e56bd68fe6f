/** A place in the tokens of a shaping line that moves on as tokens are understood. */
import type { Mark, Token } from './shaping-words.ts';

export class Cursor {
  private at = 0;
  private readonly tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
  }

  get atEnd(): boolean {
    return this.at >= this.tokens.length;
  }

  peek(ahead = 0): Token | undefined {
    return this.tokens[this.at + ahead];
  }

  isMark(ahead: number, ...marks: readonly Mark[]): boolean {
    const token = this.peek(ahead);
    return token?.kind === 'mark' && marks.includes(token.mark);
  }

  /** The next token, whatever it is. Throws at the end. */
  move(): Token {
    const token = this.peek();
    if (token === undefined) throw new RangeError('no token is left');
    this.at += 1;
    return token;
  }

  take(...marks: readonly Mark[]): boolean {
    const taken = this.isMark(0, ...marks);
    if (taken) this.at += 1;
    return taken;
  }

  number(): number | undefined {
    return this.valueOf('number');
  }

  ordinal(): number | undefined {
    return this.valueOf('ordinal');
  }

  private valueOf(kind: 'number' | 'ordinal'): number | undefined {
    const token = this.peek();
    if (token?.kind !== kind) return undefined;
    this.at += 1;
    return token.value;
  }
}
