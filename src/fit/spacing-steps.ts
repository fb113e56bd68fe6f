/** Shaping spaced over rows as a bare sum: one step, or why it cannot be and the ways that can. */
import { type Part, type Phrase, phrase, type ShapedAt, type Step } from './plan.ts';
import type { NoMultiple, Spaced, Spacing, TooFewRows } from './spacing.ts';
import { noSpacing, shapeLines, step } from './steps.ts';
import { type Impossible, otherwise } from './ways.ts';
import type { Worked } from './words.ts';
import { quantity } from './working.ts';

/** How the section is knitted, and where it is shaped. */
export interface SpacingPlace {
  readonly worked: Worked;
  readonly at: ShapedAt;
}

export function spacingPart(spacing: Spacing, { worked, at }: SpacingPlace): Part | Impossible {
  const lies = { piece: 'all', where: phrase('where: the section'), worked } as const;
  if (spacing.kind !== 'spaced') return ways(spacing, lies, at);
  return {
    steps: [
      step(lies.piece, lies.where, {
        worked,
        instead: [
          { do: 'begin with', stitches: spacing.from },
          { do: 'shape', spaced: spacing, at },
        ],
        notes: worked === 'flat' ? sideNote(spacing) : [],
        workings: shapeLines(spacing, at),
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** Which side faces on the rows that shape: on all of them the right one, or it is told apart by their numbers. */
function sideNote({ shaping }: Spaced): Phrase[] {
  if (shaping.length === 0) return [];
  return shaping.every(({ row }) => row % 2 === 1)
    ? [phrase('note: row 1 is a right-side row')]
    : [phrase('note: even rows are wrong-side rows')];
}

function ways(
  spacing: NoMultiple | TooFewRows,
  lies: Pick<Step, 'piece' | 'where' | 'worked'>,
  at: ShapedAt,
): Part | Impossible {
  const found = noSpacing(spacing, null);
  const worked = spacing.alternatives.map(({ spaced }, i) => ({
    name: found.ways[i] ?? lies.where,
    instead: [{ do: 'shape' as const, spaced, at }],
    workings: shapeLines(spaced, at),
  }));
  return otherwise(lies, reason(spacing), worked, found.workings);
}

function reason(spacing: NoMultiple | TooFewRows) {
  return spacing.kind === 'too few rows'
    ? phrase('cannot: too few rows to shape in', {
        needed: quantity('shaping rows needed', spacing.needed, 'times'),
        room: quantity('rows that may carry them', spacing.available, 'times'),
      })
    : phrase('cannot: stitches do not divide', {
        change: quantity('stitches to change', spacing.change, 'stitches'),
        perRow: quantity('stitches a shaping row', spacing.perRow, 'stitches'),
      });
}
