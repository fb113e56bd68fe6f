/** How a piece lies on the drawing. */
export interface Scale {
  /** Units of the drawing for one centimetre. */
  readonly perCm: number;
  readonly middle: number;
  /** The y of a height in rows. */
  readonly y: (row: number) => number;
}
