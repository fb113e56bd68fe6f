/** What the renderer is asked for. */
import type { Drawing } from '../draw/drawing.ts';
import type { Theme } from '../draw/palette.ts';
import type { Sheet } from '../sheets/sheet.ts';

export type Job =
  /** `scale`: pixels for one unit of the drawing; 2 is sharp on a phone. */
  | { readonly make: 'png'; readonly drawing: Drawing; readonly theme: Theme; readonly scale: number }
  | { readonly make: 'pdf'; readonly sheet: Sheet };
