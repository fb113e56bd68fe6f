/**
 * The drawing style: what each kind of line, area and text looks like on light and on dark ground.
 * Kinds of line differ in width and dash, so that they are told apart in greyscale and by every eye; colour only helps.
 */

/** Dashes in units of the drawing: drawn, left out, and so on; null is a solid line. */
export interface LineStyle {
  readonly ink: InkName;
  readonly width: number;
  readonly dash: readonly number[] | null;
}

export const LINES = {
  /** The knitter's own piece. */
  yours: { ink: 'yours', width: 2.6, dash: null },
  /** The piece as the pattern has it. */
  pattern: { ink: 'pattern', width: 1.8, dash: [7, 4] },
  /** Short rows, the edge that a cap is sewn into, and where the arm begins. */
  second: { ink: 'second', width: 2.2, dash: [1.5, 3.5] },
  /** Where something is measured on a drawing. */
  dimension: { ink: 'quiet', width: 1, dash: null },
  /** From a label to its place. */
  leader: { ink: 'guide', width: 1, dash: [1.5, 2.5] },
  frame: { ink: 'guide', width: 1, dash: null },
  /** Something to tick, or to write on. */
  tick: { ink: 'text', width: 1.2, dash: null },
  figure: { ink: 'figure', width: 2, dash: null },
  /** Seen through, or behind. */
  hidden: { ink: 'figure', width: 1.4, dash: [4, 3] },
  tape: { ink: 'tape', width: 4.5, dash: null },
  /** The marks on the tape. */
  marks: { ink: 'ground', width: 1.2, dash: null },
  /** A string or a pencil that marks a level on the body. */
  string: { ink: 'text', width: 1.6, dash: [5, 2.5] },
  stitch: { ink: 'guide', width: 1.1, dash: null },
} as const satisfies Readonly<Record<string, LineStyle>>;
export type LineName = keyof typeof LINES;

export const FILLS = ['fabric', 'strong', 'skin', 'ground', 'shade'] as const;
export type FillName = (typeof FILLS)[number];

export const TEXT_INKS = ['text', 'quiet', 'yours', 'pattern', 'tape', 'on strong'] as const;
export type TextInk = (typeof TEXT_INKS)[number];

export type InkName = TextInk | 'second' | 'guide' | 'figure' | 'ground';

export const THEMES = ['light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

export interface Palette {
  readonly ground: string;
  readonly inks: Readonly<Record<InkName, string>>;
  readonly fills: Readonly<Record<FillName, string>>;
}

export const PALETTES: Readonly<Record<Theme, Palette>> = {
  light: {
    ground: '#ffffff',
    inks: {
      text: '#1a1a1a',
      quiet: '#474747',
      yours: '#0a4379',
      pattern: '#8f4300',
      tape: '#a30f45',
      second: '#5b2a86',
      'on strong': '#ffffff',
      guide: '#6b6b6b',
      figure: '#4d4d4d',
      ground: '#ffffff',
    },
    fills: { fabric: '#e6eef6', strong: '#0a4379', skin: '#f1efea', ground: '#ffffff', shade: '#f0f0f0' },
  },
  dark: {
    ground: '#15181c',
    inks: {
      text: '#f4f4f4',
      quiet: '#c9cdd2',
      yours: '#9ccbff',
      pattern: '#f5b971',
      tape: '#ff9ebb',
      second: '#d3b0f5',
      'on strong': '#10151a',
      guide: '#98a0a8',
      figure: '#c4c8cc',
      ground: '#15181c',
    },
    fills: { fabric: '#22303f', strong: '#9ccbff', skin: '#262a2e', ground: '#15181c', shade: '#23272c' },
  },
};
