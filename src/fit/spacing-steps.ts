/** Shaping spaced over rows as a bare sum: one step, or why it cannot be and what can. */
import { type Cannot, type Part, phrase, type ShapedAt } from './plan.ts';
import type { Spacing } from './spacing.ts';
import { noSpacing, shapeLines, step } from './steps.ts';
import type { Worked } from './words.ts';

/** How the section is knitted, and where it is shaped. */
export interface SpacingPlace {
  readonly worked: Worked;
  readonly at: ShapedAt;
}

export function spacingPart(spacing: Spacing, { worked, at }: SpacingPlace): Part | Omit<Cannot, 'unit'> {
  if (spacing.kind !== 'spaced') {
    const { why, ways, workings } = noSpacing(spacing, null);
    return { kind: 'cannot', because: [why], instead: ways, workings };
  }
  const shaped = spacing.shaping.length > 0;
  return {
    steps: [
      step('all', phrase('where: the section'), {
        worked,
        instead: [
          { do: 'begin with', stitches: spacing.from },
          { do: 'shape', spaced: spacing, at },
        ],
        notes: shaped && worked === 'flat' ? [phrase('note: row 1 is a right-side row')] : [],
        workings: shapeLines(spacing, at),
      }),
    ],
    finished: [],
    pieces: [],
  };
}
