/** The sheets that are filled in by hand, each by the word with which it is asked for. */
export const BLANKS = ['measuring', 'rows', 'stitches', 'waist', 'wedge'] as const;
export type Blank = (typeof BLANKS)[number];
