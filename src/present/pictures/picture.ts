/** A picture with what it says in words and in plain characters. */
import type { Drawing } from '../draw/drawing.ts';

export interface Picture {
  /** For a file: small letters and hyphens. */
  readonly name: string;
  /** A shape to scale, rows to follow one by one, figures to compare, or where to measure. */
  readonly kind: 'shape' | 'ladder' | 'chart' | 'measuring';
  readonly title: string;
  readonly drawing: Drawing;
  /** The text alternative: says what the drawing says. */
  readonly alternative: string;
  /** Drawn in plain characters, no line longer than so many columns (40 at least). */
  readonly characters: (columns: number) => string;
}

/** Width of every picture: a phone held upright. */
export const PICTURE_WIDTH = 420;
export const MARGIN = 14;

export const TITLE = { size: 17, weight: 'bold' } as const;
export const STRONG = { size: 13.5, weight: 'bold' } as const;
export const BODY = { size: 13 } as const;
export const SMALL = { size: 12, ink: 'quiet' } as const;
/** From one baseline to the next. */
export const LEADING = 17;

/** 'Body, hem to waist' becomes 'body-hem-to-waist'. */
export function fileName(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
