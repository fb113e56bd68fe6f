/** The parts of a raglan side by side, to scale, each with the line along which it is shaped. */
import { type ByPart, RAGLAN_PARTS, type RaglanPart } from '../../fit/raglan-shape.ts';
import type { RaglanOutline, ShapedPart } from '../../fit/shaped.ts';
import { formatLength } from '../../fit/units.ts';
import { area, boundsOf, named, placed, point } from '../draw/drawing.ts';
import type { Voice } from '../wording.ts';
import { spacedOutline } from './edge-lines.ts';
import type { Framed } from './framed.ts';
import { capital, countedRows } from './words.ts';

type ShapedRaglan = Extract<ShapedPart, { shape: 'raglan' }>;

/** Centimetres between the parts. */
const GAP = 4;

const NAMES: ByPart<string> = { back: 'back', front: 'front', sleeve: 'each sleeve' };

export function raglanFramed(shown: ShapedRaglan, { unit, worked }: Voice): Omit<Framed, 'title'> {
  const { direction, depth, rows, neck } = shown.after;
  const parts = laidOut(shown);
  const deep = { length: formatLength(depth, unit), rows: countedRows(rows, worked) };
  return {
    shapes: parts.flatMap((p) => p.shapes),
    across: null,
    upright: {
      from: direction === 'up' ? -depth : 0,
      to: direction === 'up' ? 0 : depth,
      words: [deep.length, deep.rows],
    },
    names: parts.map(({ part, middle }) => ({ words: NAMES[part], x: middle })),
    key: [{ line: 'yours', words: 'yours' }],
    facts: [
      ...RAGLAN_PARTS.map((part) => partFact(shown.after, part, unit)),
      `Depth: ${deep.length}, ${deep.rows}. At the neck ${neck.stitches} sts, ${formatLength(neck.around, unit)} around.`,
    ],
    drawn: 'Back, front and one sleeve side by side between underarm and neck, to scale.',
  };
}

function laidOut({ after, gauge }: ShapedRaglan) {
  let left = 0;
  return RAGLAN_PARTS.map((part) => {
    const outline = spacedOutline(after.parts[part].spaced, gauge, after.direction);
    const own = named(part, area('fabric', 'yours', outline));
    const { width } = boundsOf([own]);
    const middle = left + width / 2;
    left += width + GAP;
    return { part, middle, shapes: placed([own], point(middle, 0)) };
  });
}

/** 'Back: 96 sts at the underarm, 40 at the neck; its edge is 24.1 cm long.' */
function partFact({ parts, direction }: RaglanOutline, part: RaglanPart, unit: Voice['unit']): string {
  const { spaced, edge } = parts[part];
  const [underarm, neck] = direction === 'up' ? [spaced.from, spaced.to] : [spaced.to, spaced.from];
  return `${capital(NAMES[part])}: ${underarm} sts at the underarm, ${neck} at the neck; its edge is ${formatLength(edge, unit)} long.`;
}
