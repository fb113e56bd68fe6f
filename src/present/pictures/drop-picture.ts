/** A body that goes straight up to its dropped shoulder, beside it the end of the sleeve that lies along the armhole. */
import type { DropOutline, ShapedDrop } from '../../fit/shaped.ts';
import { formatLength } from '../../fit/units.ts';
import { area, line, named, type Point, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import type { Framed } from './framed.ts';
import { countedRows } from './words.ts';

/** Centimetres of the body that are shown below the underarm, of the sleeve below its top, and between the two. */
const [BELOW, SLEEVE, GAP] = [4, 9, 5] as const;
/** Half the length of a mark, in centimetres; an overhang that no tape shows has no line. */
const [MARK, LEAST] = [0.8, 0.05] as const;

export function dropFramed(shown: ShapedDrop, { unit }: View): Omit<Framed, 'title'> {
  const { after, before, back, overhang } = shown;
  const half = back / 2;
  const widest = Math.max(after.topWidth, before?.topWidth ?? 0);
  const sleeve = -half - GAP - widest / 2;
  const hangs = overhang > LEAST;
  const outlines = (of: DropOutline) => [bodyOutline(back, of), sleeveOutline(sleeve, of)] as const;
  const [body, top] = outlines(after);
  return {
    shapes: [
      // The line of before lies upon the fabric and under the knitter's own, which it meets at most edges.
      ...[body, top].map((outline) => area('fabric', null, outline)),
      ...(before === null ? [] : outlines(before).map((outline) => area(null, 'pattern', outline))),
      named('body', area(null, 'yours', body)),
      named('sleeve', area(null, 'yours', top)),
      ...(hangs ? [-1, 1].map((side) => armBegins(side * (half - overhang), after)) : []),
      ...[-half, half].map((x) => line('dimension', point(x - MARK, 0), point(x + MARK, 0))),
      line('dimension', point(sleeve, BELOW - SLEEVE - MARK), point(sleeve, BELOW - SLEEVE + MARK)),
    ],
    across: hangs ? { from: half - overhang, to: half, words: [formatLength(overhang, unit)] } : null,
    upright: {
      from: -after.depth,
      to: 0,
      words: [formatLength(after.depth, unit), countedRows(after.armholeRows, 'flat')],
    },
    names: [
      { words: 'end of the sleeve', x: sleeve },
      { words: 'back', x: 0 },
    ],
    key: [
      { line: 'yours', words: 'yours' },
      ...(before === null ? [] : [{ line: 'pattern' as const, words: 'before' }]),
      ...(hangs ? [{ line: 'second' as const, words: 'arm begins' }] : []),
    ],
    facts: facts(shown, unit),
    drawn:
      'The back, which the front is like, from a little below the underarm straight up to the shoulder, and beside it the end of the sleeve with the middle of its top marked, to one scale. The sleeve is drawn without its slopes, the back without its neck.',
  };
}

/** Around x = 0, the underarm at y = 0: from the lower left corner over the shoulder line to the lower right one. */
function bodyOutline(back: number, { depth }: DropOutline): Point[] {
  const half = back / 2;
  return [point(-half, BELOW), point(-half, -depth), point(half, -depth), point(half, BELOW)];
}

/** Around a middle, its lower end as low as the body's. */
function sleeveOutline(middle: number, { topWidth }: DropOutline): Point[] {
  const [left, right] = [middle - topWidth / 2, middle + topWidth / 2];
  const top = BELOW - SLEEVE;
  return [point(left, BELOW), point(left, top), point(right, top), point(right, BELOW)];
}

function armBegins(x: number, { depth }: DropOutline): Shape {
  return named('arm', line('second', point(x, -depth), point(x, 0)));
}

function facts({ after, before, overhang }: ShapedDrop, unit: View['unit']): string[] {
  const [deep, wide] = [formatLength(after.depth, unit), formatLength(after.topWidth, unit)];
  return [
    `Armhole: ${countedRows(after.armholeRows, 'flat')} (${deep}), straight up from the underarm.`,
    `Top of the sleeve: ${after.top} sts, ${wide} wide, for the armhole's depth in front and at the back.`,
    ...(overhang > LEAST ? [`The shoulder hangs ${formatLength(overhang, unit)} over the arm.`] : []),
    ...(before === null
      ? []
      : [
          `Before: ${countedRows(before.armholeRows, 'flat')}, and ${before.top} sts at the top of the sleeve.`,
        ]),
  ];
}
