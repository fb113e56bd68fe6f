/** A short-row wedge in knitters' words: its markers, its first rows in full, and every turn. */
import type { TurnedWedge } from '../fit/plan.ts';
import { cm } from '../fit/units.ts';
import type { Marker, Turn } from '../fit/wedge.ts';
import { quantity } from '../fit/working.ts';
import { formatQuantity } from './quantity.ts';
import type { Voice } from './wording.ts';

/** Markers, the first short rows, how the wedge ends, and what it adds. */
export function wordWedge(wedge: TurnedWedge, voice: Voice): string {
  const first = wedge.turns
    .filter(({ row }) => row <= 2)
    .map((turn) => `${sideOf(turn, wedge)}: ${wordTurn(turn, wedge)}.`);
  const back = wedge.sides === 'both' ? [] : ['On each other short row work back to the edge.'];
  const more = wedge.turns.length > first.length ? ['Go on like this, turning as listed below.'] : [];
  return [
    ...wedge.markers.map((marker) => `${wordMarker(marker, wedge)}.`),
    ...first,
    ...back,
    ...more,
    wordClosing(wedge),
    wordDepth(wedge, voice),
  ].join(' ');
}

/** 'Turns, in stitches before the marker ahead: rows 1 and 2: 5; rows 3 and 4: 11.' */
export function wordTurns({ turns }: TurnedWedge): string {
  const how = turns.some(({ way }) => way === 'past') ? 'past the centre marker' : 'before the marker ahead';
  return `Turns, in stitches ${how}: ${inPairs(turns).join('; ')}.`;
}

function inPairs(turns: readonly Turn[]): string[] {
  return turns.flatMap((turn, i) => {
    const before = turns[i - 1];
    const next = turns[i + 1];
    if (i % 2 === 1 && before !== undefined && pairs(before, turn)) return [];
    if (i % 2 === 0 && next !== undefined && pairs(turn, next))
      return [`rows ${turn.row} and ${next.row}: ${turn.stitches}`];
    return [`row ${turn.row}: ${turn.stitches}`];
  });
}

function pairs(a: Turn, b: Turn): boolean {
  return b.row === a.row + 1 && a.stitches === b.stitches;
}

const NAMES: Readonly<Record<Marker['name'], string>> = {
  start: 'the first marker',
  end: 'the second marker',
  centre: 'the centre marker',
};

function called(name: Marker['name'], { markers }: TurnedWedge): string {
  return markers.length === 1 && name !== 'centre' ? 'the marker' : NAMES[name];
}

function wordMarker({ name, at }: Marker, wedge: TurnedWedge): string {
  const { worked, needle } = wedge;
  const round = worked === 'round';
  const line = round ? 'the round' : 'a right-side row';
  if (at < 0) return `Hang ${called(name, wedge)} ${counted(-at)} before the end of the round`;
  if (at === 0) return `Hang ${called(name, wedge)} at the beginning of ${line}`;
  if (at === needle) return `Hang ${called(name, wedge)} at the end of ${line}`;
  return `Hang ${called(name, wedge)} after the first ${counted(at)} of ${line}`;
}

function sideOf({ row }: Turn, { firstRow }: TurnedWedge): string {
  const right = (row % 2 === 1) === (firstRow === 'right side');
  return `Row ${row} (${right ? 'right' : 'wrong'} side)`;
}

function wordTurn({ marker, way, stitches }: Turn, wedge: TurnedWedge): string {
  return `work to ${counted(stitches)} ${way} ${called(marker, wedge)} and turn`;
}

function wordClosing({ closing, rows, worked }: TurnedWedge): string {
  const end = closing.to === 'join' ? 'the end of the round' : 'the end of the row';
  const round = worked === 'round' ? 'round' : 'row';
  const counts =
    closing.ordinaryRows === 1
      ? `Beside the wedge all this counts as one ${round}.`
      : `Beside the wedge it counts as no ${round}.`;
  return `After short row ${rows} turn and work to ${end}. Close the gap at each turn when you pass it. ${counts}`;
}

function wordDepth({ rows, depth }: TurnedWedge, voice: Voice): string {
  const added = formatQuantity(quantity('rows', rows, 'rows'), voice);
  const length = formatQuantity(quantity('depth', cm(depth), 'cm'), voice);
  return `That adds ${added} (${length}) where it is deepest.`;
}

function counted(count: number): string {
  return `${count} ${count === 1 ? 'stitch' : 'stitches'}`;
}
