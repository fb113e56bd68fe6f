/** What a plan says of its sleeves and bodies, as the answers that the recheck chapter asks for. */
import { type Piece, type Section, sections } from '../fit/outline.ts';
import type { PieceChange, Plan } from '../fit/plan.ts';
import { CM_PER, cm, type LengthUnit, lengthIn } from '../fit/units.ts';
import type { Value } from '../flow/answer.ts';
import { PARTS } from './recheck.ts';

/** One part that can be checked in mid-project, with answers by the questions of the chapter. */
export interface PlannedPart {
  /** 'sleeve, cuff to upper arm'. */
  readonly name: string;
  readonly answers: Readonly<Record<string, Value>>;
}

/** The stretches of a plan's pieces in which stitches are counted from one end to the other, edgings left out. */
export function plannedParts({ pieces, unit }: Plan): PlannedPart[] {
  return pieces.flatMap((change) => {
    const made = partOf(change.after);
    if (made === undefined) return [];
    return shapedStretches(change.after).map((stretch) => plannedPart(change, stretch, made, unit));
  });
}

/** The choice of 'recheck_piece' that is knitted in the same way; undefined for a yoke or collar. */
function partOf({ name, worked, direction }: Piece): string | undefined {
  const alike = name === 'front' ? 'back' : name;
  return Object.entries(PARTS).find(
    ([, part]) => part.name === alike && part.worked === worked && part.direction === direction,
  )?.[0];
}

/** Between edging and underarm, parted at a waist; the plain rows of the waist itself are no stretch. */
function shapedStretches(piece: Piece): readonly Section[] {
  const all = sections(piece);
  const above = piece.direction === 'up' ? all.slice(1) : all.slice(0, -1);
  return above.filter(({ from, to, rows }) => from.name !== to.name && rows > 0);
}

function plannedPart(
  { after, gauge }: PieceChange,
  { from, to, rows }: Section,
  made: string,
  unit: LengthUnit,
): PlannedPart {
  const length = cm(rows / gauge.rowsPerCm);
  const count = (perCm: number) => {
    const span = unit === 'cm' ? cm(10) : lengthIn(4, 'in');
    return { count: perCm * span, span, unit };
  };
  return {
    name: `${after.name}, ${from.name} to ${to.name}`,
    answers: {
      recheck_piece: { kind: 'choice', choice: made },
      recheck_from: { kind: 'stitches', count: from.stitches },
      recheck_to: { kind: 'stitches', count: to.stitches },
      recheck_length: { kind: 'length', cm: length, typed: { value: length / CM_PER[unit], unit } },
      recheck_gauge: { kind: 'gauge', stitches: count(gauge.stitchesPerCm), rows: count(gauge.rowsPerCm) },
    },
  };
}
