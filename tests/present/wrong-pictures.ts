/** What is wrong with the pictures of a plan, in words: faults of geometry, and what is drawn otherwise than it is said. */
import type { PieceChange, Plan } from '../../src/fit/plan.ts';
import type { ShapedPart } from '../../src/fit/shaped.ts';
import { CM_PER, type LengthUnit } from '../../src/fit/units.ts';
import type { PathShape } from '../../src/present/draw/drawing.ts';
import type { Picture } from '../../src/present/pictures/picture.ts';
import { pieceFigures } from '../../src/present/pictures/piece-figures.ts';
import { drawSchematic } from '../../src/present/pictures/schematic.ts';
import { shapedPicture } from '../../src/present/pictures/shaped-picture.ts';
import { picturesOf } from '../../src/present/pictures.ts';
import { faultsOf, numbersIn, pathNamed, pathsOf, saidIn, scaleOf, textNamed } from './geometry.ts';
import { readLength } from './read-length.ts';

/** Of every picture that the plan gives. */
export function wrongInPictures(plan: Plan): string[] {
  return [
    ...picturesOf(plan, 'uk').flatMap((picture) => [
      ...faultsOf(picture.drawing),
      ...(picture.kind === 'shape' ? unsaid(picture) : []),
    ]),
    ...plan.pieces.flatMap((p) => [
      ...wrongDimensions(p, plan.unit),
      ...wrongDarts(p, plan.unit),
      ...wrongLabels(p, plan.unit),
    ]),
  ];
}

/** Of the picture of what a step shapes. */
export function wrongInShape(shaped: ShapedPart, unit: LengthUnit): string[] {
  return wrongIn(shapedPicture(shaped, 'Title', { unit, dialect: 'us', worked: 'flat' }), unit);
}

/** Of a picture with a scale bar. */
export function wrongIn(picture: Picture, unit: LengthUnit): string[] {
  return [...faultsOf(picture.drawing), ...unsaid(picture), ...wrongExtents(picture, unit)];
}

/** Numbers that are drawn and not said in its words. */
function unsaid({ drawing, alternative }: Picture): string[] {
  const words = new Set(numbersIn(alternative));
  return saidIn(drawing)
    .flatMap(numbersIn)
    .filter((n) => !words.has(n))
    .map((n) => `the words do not say ${n}`);
}

/** What is measured above or beside a drawing, where it is drawn longer or shorter than it says, or ends at no corner. */
function wrongExtents({ drawing }: Picture, unit: LengthUnit): string[] {
  const corners = pathsOf(drawing).flatMap((p) => (p.line === 'dimension' ? [] : p.points));
  return (['across', 'upright'] as const).flatMap((name) => {
    const ends = pathsOf(drawing).find((p) => p.name === name)?.points ?? [];
    const [from, to] = ends;
    if (from === undefined || to === undefined) return [];
    const axis = name === 'across' ? 'x' : 'y';
    const loose = ends.filter((end) => !corners.some((c) => Math.abs(c[axis] - end[axis]) < 1e-6));
    const said = textNamed(drawing, `${name}, line 1`).text;
    const drawn = Math.abs(to[axis] - from[axis]) / scaleOf(drawing) / CM_PER[unit];
    return [
      ...loose.map(() => `'${said}' ends at no corner of what is drawn`),
      // A tape is read to a tenth of its unit.
      ...(Math.abs(drawn - readLength(said)) <= 0.0501 ? [] : [`'${said}' is drawn ${drawn} ${unit} long`]),
    ];
  });
}

/** Left and right of each level, in the order of the piece's levels. */
function pairsOf({ points }: PathShape) {
  return points.slice(0, points.length / 2).map((right, i) => ({ right, left: points.at(-1 - i) ?? right }));
}

/** What is drawn otherwise than the piece has it, in centimetres. */
function wrongDimensions(change: PieceChange, unit: LengthUnit): string[] {
  const drawing = drawSchematic(pieceFigures(change), [], { unit, dialect: 'us' });
  const scale = scaleOf(drawing);
  const { gauge, edge, after } = change;
  const halves = gauge.worked === 'round' ? 2 : 1;
  const pairs = pairsOf(pathNamed(drawing, 'yours'));
  return after.levels.flatMap((level, i) => {
    const { left, right } = pairs[i] ?? { left: { x: 0, y: 0 }, right: { x: 0, y: 0 } };
    const wide = (halves * (right.x - left.x)) / scale;
    const high = Math.abs(right.y - (pairs[0]?.right.y ?? 0)) / scale;
    const wants = { wide: (level.stitches - edge) / gauge.stitchesPerCm, high: level.row / gauge.rowsPerCm };
    return [
      ...(Math.abs(wide - wants.wide) < 1e-6
        ? []
        : [`${level.name} is drawn ${wide} cm wide, not ${wants.wide}`]),
      ...(Math.abs(high - wants.high) < 1e-6
        ? []
        : [`${level.name} is drawn ${high} cm high, not ${wants.high}`]),
    ];
  });
}

/** Dart lines that lie elsewhere than their stitches from the middle and their rows from the start. */
function wrongDarts(change: PieceChange, unit: LengthUnit): string[] {
  const { gauge, darts = [] } = change;
  const drawing = drawSchematic(pieceFigures(change), [], { unit, dialect: 'us' });
  const scale = scaleOf(drawing);
  const [start] = pairsOf(pathNamed(drawing, 'yours'));
  const middle = ((start?.left.x ?? 0) + (start?.right.x ?? 0)) / 2;
  const lines = pathsOf(drawing).filter((p) => p.name === 'dart line');
  return [
    ...(lines.length === (darts.length === 0 ? 0 : 2) ? [] : [`${lines.length} dart lines are drawn`]),
    ...lines.flatMap(({ points }, side) =>
      darts.flatMap(({ row, fromMiddle }, i) => {
        const { x = 0, y = 0 } = points[i] ?? {};
        const across = ((side === 0 ? -1 : 1) * (x - middle)) / scale;
        const high = Math.abs(y - (start?.right.y ?? 0)) / scale;
        const lies =
          Math.abs(across - fromMiddle / gauge.stitchesPerCm) < 1e-6 &&
          Math.abs(high - row / gauge.rowsPerCm) < 1e-6;
        return lies ? [] : [`a dart line lies ${across} cm from the middle at row ${row}`];
      }),
    ),
  ];
}

/** Labels that state another width than the one drawn; a tape is read to a tenth of its unit. */
function wrongLabels(change: PieceChange, unit: LengthUnit): string[] {
  const figures = pieceFigures(change);
  const drawing = drawSchematic(figures, [], { unit, dialect: 'us' });
  const scale = scaleOf(drawing);
  const pairs = pairsOf(pathNamed(drawing, 'yours'));
  return figures.levels.flatMap(({ name, stitches, row }) => {
    const index = change.after.levels.findIndex((l) => l.row === row && l.stitches === stitches);
    const pair = pairs[index];
    const drawn = ((pair?.right.x ?? 0) - (pair?.left.x ?? 0)) / scale / CM_PER[unit];
    const halves = change.gauge.worked === 'round' ? 2 : 1;
    const said = readLength(textNamed(drawing, `width at ${name}`).text);
    const count = textNamed(drawing, `count at ${name}`).text;
    return [
      ...(Math.abs(halves * drawn - said) <= 0.0501
        ? []
        : [`${name} says ${said} and is drawn ${halves * drawn}`]),
      ...(count === `${name}: ${stitches} sts` ? [] : [`${count} is not ${stitches}`]),
    ];
  });
}
