/** What the renderer is asked for. */
import type { Plan } from '../../fit/plan.ts';
import type { Drawing } from '../draw/drawing.ts';
import type { Theme } from '../draw/palette.ts';
import type { PlanSheetOptions } from '../sheets/plan-sheet.ts';
import type { Sheet } from '../sheets/sheet.ts';

export type Job =
  /** `scale`: pixels for one unit of the drawing; 2 is sharp on a phone. */
  | { readonly make: 'png'; readonly drawing: Drawing; readonly theme: Theme; readonly scale: number }
  | { readonly make: 'pdf'; readonly sheet: Sheet }
  /** Laid out in the renderer's thread too: a long plan's sheet takes longer than a turn may wait. */
  | { readonly make: 'plan sheet'; readonly plan: Plan; readonly options: PlanSheetOptions };
