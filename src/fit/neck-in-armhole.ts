/**
 * A front neck that begins while its armholes are still shaped: each side is shaped at both its edges, in the same rows.
 *
 *   armhole rows   1 … begins │ begins + 1 … last shaping row … │ straight
 *   neck rows                 │ 1 (divides)  …                  │ … shoulder
 */
import type { Armhole } from './armhole.ts';
import { countAfter, type EdgeEvent, together } from './edge-shaping.ts';
import type { Neck, NeckSide } from './neck.ts';
import { type Rows, rows, type Stitches, stitches } from './units.ts';
import { type QuantityUnit, quantity, type WorkingLine, workOut } from './working.ts';

/** A neck with what is left of the armholes when it begins. */
export interface NeckInArmhole {
  readonly kind: 'neck in the armhole';
  /** Rows above the underarm after which the neck begins. */
  readonly begins: Rows;
  /** On the needle in the dividing row, and on each side of its middle. */
  readonly across: Stitches;
  readonly each: Stitches;
  /** Decreased at either armhole edge in the dividing row. */
  readonly atEdges: Stitches;
  /** After the dividing row; `from` counts each side when that row is done. */
  readonly sides: Neck['sides'];
  readonly workings: readonly WorkingLine[];
}

/** The neck would begin in the rows that bind off at the underarm; the rows that it may have at most. */
export interface NeckTooLow {
  readonly kind: 'neck too low';
  readonly most: Rows;
}

/** What a neck meets in an armhole, whether it is shaped anew or the pattern's. */
export type ArmholeLines = Pick<Armhole, 'bust' | 'bindOffs' | 'rows' | 'events'>;

/** Undefined where the neck begins above all shaping of the armhole. */
export function neckInArmhole(armhole: ArmholeLines, neck: Neck): NeckInArmhole | NeckTooLow | undefined {
  const begins = armhole.rows - neck.rows;
  const last = armhole.events.at(-1)?.row ?? 0;
  if (begins >= last) return undefined;
  const boundOff = 2 * armhole.bindOffs.length;
  if (begins < boundOff) return { kind: 'neck too low', most: rows(armhole.rows - boundOff) };
  const below = armhole.events.filter(({ row }) => row <= begins);
  const above = armhole.events.filter(({ row }) => row > begins);
  const across = countAfter(armhole.bust, below);
  const each = stitches((across - neck.centre) / 2);
  const [first] = above;
  const atEdges = first !== undefined && first.row === begins + 1 ? stitches(-first.change) : stitches(0);
  const rest = above.filter(({ row }) => row > begins + 1);
  const from = stitches(each - atEdges);
  const side = (edge: 'right' | 'left', { events }: NeckSide): NeckSide => ({
    from,
    events: together(from, alongOne(edge, rest, begins), events),
  });
  return {
    kind: 'neck in the armhole',
    begins: rows(begins),
    across,
    each,
    atEdges,
    // The part that is knitted first has its armhole at the right, where right-side rows begin.
    sides: { first: side('right', neck.sides.first), last: side('left', neck.sides.last) },
    workings: explain({ begins, across, each, atEdges, last }, armhole, neck),
  };
}

/** Decreases at both edges of the piece, as they fall to one side of it. */
function alongOne(edge: 'right' | 'left', events: readonly EdgeEvent[], begins: number): EdgeEvent[] {
  return events.map((event) => ({ ...event, edge, row: rows(event.row - begins) }));
}

interface Figures {
  readonly begins: number;
  readonly across: number;
  readonly each: number;
  readonly atEdges: number;
  readonly last: number;
}

function explain(
  { begins, across, each, atEdges, last }: Figures,
  armhole: ArmholeLines,
  neck: Neck,
): WorkingLine[] {
  const of = (name: string, value: number, unit: QuantityUnit) => quantity(name, value, unit);
  return [
    workOut(
      'rows of the armhole before the neck',
      'a - b',
      { a: of('rows of the armhole', armhole.rows, 'rows'), b: of('rows of the neck', neck.rows, 'rows') },
      { unit: 'rows' },
    ),
    workOut(
      'last shaping row of the armhole, counted from the dividing row',
      'a - b',
      {
        a: of('last shaping row of the armhole', last, 'rows'),
        b: of('rows before the neck', begins, 'rows'),
      },
      { unit: 'rows' },
    ),
    workOut(
      'stitches of each side in the dividing row',
      '(a - b) / 2',
      {
        a: of('stitches on the needle there', across, 'stitches'),
        b: of('stitches of the centre', neck.centre, 'stitches'),
      },
      { unit: 'stitches' },
    ),
    workOut(
      'stitches of each side after the dividing row',
      'a - b',
      {
        a: of('stitches of each side', each, 'stitches'),
        b: of('decreased at the armhole edge', atEdges, 'stitches'),
      },
      { unit: 'stitches' },
    ),
  ];
}
