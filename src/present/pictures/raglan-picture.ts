/** The parts of a raglan side by side, to scale, each with the line along which it is shaped. */
import type { ByPart, RaglanShape } from '../../fit/raglan.ts';
import { RAGLAN_PARTS, type RaglanPart } from '../../fit/raglan-shape.ts';
import { formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import type { Worked } from '../../fit/words.ts';
import { area, boundsOf, named, placed, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { spacedOutline } from './edge-lines.ts';
import { framedPicture } from './framed.ts';
import type { Picture } from './picture.ts';
import { capital, countedRows } from './words.ts';

export interface RaglanShown {
  readonly raglan: RaglanShape;
  /** As the pattern has it, where that is known. */
  readonly before: RaglanShape | null;
  readonly gauge: Rates;
  readonly worked: Worked;
}

const GAP = 4;

const NAMES: ByPart<string> = { back: 'back', front: 'front', sleeve: 'each sleeve' };

export function raglanPicture(shown: RaglanShown, view: View): Picture {
  const { raglan, before } = shown;
  const parts = laidOut(shown);
  return framedPicture(
    {
      title: 'The raglan lines',
      shapes: parts.flatMap((p) => p.shapes),
      key: [
        { line: 'yours', words: 'yours' },
        ...(before === null ? [] : [{ line: 'pattern' as const, words: 'the pattern' }]),
      ],
      facts: [
        ...RAGLAN_PARTS.map((part) => partFact(raglan, part, view)),
        `Depth: ${formatLength(raglan.depth, view.unit)}, ${countedRows(raglan.rows, shown.worked)}. At the neck ${raglan.neck.stitches} sts, ${formatLength(raglan.neck.around, view.unit)} around.`,
      ],
      drawn: 'Back, front and one sleeve side by side between underarm and neck, to scale.',
      names: parts.map(({ part, middle }) => ({ words: NAMES[part], x: middle })),
    },
    view,
  );
}

function laidOut({ raglan, before, gauge }: RaglanShown) {
  let left = 0;
  return RAGLAN_PARTS.map((part) => {
    const outline = (r: RaglanShape) => spacedOutline(r.lines[part].spaced, gauge, r.direction);
    const own: Shape = named(part, area('fabric', 'yours', outline(raglan)));
    const theirs = before === null ? [] : [named(`${part} before`, area(null, 'pattern', outline(before)))];
    const { width } = boundsOf([own, ...theirs]);
    const middle = left + width / 2;
    left += width + GAP;
    return { part, middle, shapes: placed([own, ...theirs], point(middle, 0)) };
  });
}

/** 'Back: 96 sts at the underarm, 40 at the neck; its edge is 24.1 cm long.' */
function partFact({ lines, direction }: RaglanShape, part: RaglanPart, { unit }: View): string {
  const { spaced, edge } = lines[part];
  const [underarm, neck] = direction === 'up' ? [spaced.from, spaced.to] : [spaced.to, spaced.from];
  return `${capital(NAMES[part])}: ${underarm} sts at the underarm, ${neck} at the neck; its edge is ${formatLength(edge, unit)} long.`;
}
