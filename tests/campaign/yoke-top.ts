/** What a yoke of either kind leaves behind. */
import type { Needle } from '../simulator/needle.ts';

/** The yoke's stitches in the order of a round. */
export const ORDER = ['back', 'sleeve', 'front', 'sleeve'] as const;

export interface KnittedTop {
  readonly needle: Needle;
  readonly rows: number;
  readonly neck: number;
  /** The boundary at the middle of the back, at the neck. */
  readonly centre: number;
}
