/** Twelve garments that cover the shapes which are drawn: for the golden pictures. */
import { type BodyAsk, shapeBody } from '../../src/fit/body-shaping.ts';
import { type Gauge, rateAsPrinted } from '../../src/fit/gauge.ts';
import { level, piece } from '../../src/fit/outline.ts';
import type { PieceChange, TurnedWedge } from '../../src/fit/plan.ts';
import type { ShapedPart } from '../../src/fit/shaped.ts';
import { type SleeveAsk, shapeSleeve } from '../../src/fit/sleeve.ts';
import { pieceChange } from '../../src/fit/steps.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import type { Worked } from '../../src/fit/words.ts';
import type { Drawing } from '../../src/present/draw/drawing.ts';
import { pieceFigures } from '../../src/present/pictures/piece-figures.ts';
import { drawSchematic } from '../../src/present/pictures/schematic.ts';
import { shapedPicture } from '../../src/present/pictures/shaped-picture.ts';
import type { View } from '../../src/present/view.ts';
import { sampleCap, sampleHem, sampleNeck, sampleRaglan, sampleYoke } from '../../tools/sample-garment.ts';

const CM: View = { unit: 'cm', dialect: 'us' };
const IN: View = { unit: 'in', dialect: 'us' };

function gaugeOf(sts: number, rows: number, worked: Worked): Gauge {
  const over10cm = (count: number) => rateAsPrinted({ count, span: cm(10), unit: 'cm' });
  return { stitches: over10cm(sts), rows: over10cm(rows), worked };
}

function body(
  ask: Omit<BodyAsk, 'pattern' | 'hip'> & { bust: number; hem: number; was: number; hip?: number },
): PieceChange {
  const { bust, hem, was, hip, ...rest } = ask;
  const shaped = shapeBody({
    ...rest,
    hip: hip === undefined ? null : cm(hip),
    pattern: { bust: stitches(bust), hem: stitches(hem), length: cm(was), edging: cm(5) },
  });
  if (shaped.kind !== 'body') throw new Error(shaped.why);
  return pieceChange(shaped.before, shaped.after, rest.gauge, rest.edge);
}

function sleeve(
  ask: Pick<SleeveAsk, 'gauge' | 'direction' | 'edge' | 'length'> & {
    wrist: number;
    upperArm: number;
    now: number;
  },
): PieceChange {
  const { wrist, upperArm, now, ...rest } = ask;
  const shaped = shapeSleeve({
    ...rest,
    pattern: { wrist: stitches(wrist), upperArm: stitches(upperArm), length: cm(43), cuff: cm(6) },
    wrist: null,
    upperArm: cm(now),
    cuffRepeat: { multiple: 2, plus: 0 },
  });
  if (shaped.kind !== 'sleeve') throw new Error(shaped.why);
  return pieceChange(shaped.before, shaped.after, rest.gauge, rest.edge);
}

function schematic(change: PieceChange, view: View, wedges: readonly TurnedWedge[] = []): Drawing {
  return drawSchematic(pieceFigures(change), wedges, view);
}

function shaped(part: ShapedPart, title: string, worked: Worked): Drawing {
  return shapedPicture(part, title, { ...CM, worked }).drawing;
}

const [DK, FINE, THICK] = [gaugeOf(22, 30, 'round'), gaugeOf(30, 42, 'flat'), gaugeOf(12, 17, 'round')];
const waist = (around: number) => ({ around: cm(around), belowUnderarm: cm(18) });

/** A whole back with armhole and shoulders, as levels. */
const BACK = piece('back', 'flat', 'up', [
  level('cast-on', 0, 112),
  level('hem', 18, 112),
  level('underarm', 114, 112),
  level('underarm', 114, 100),
  level('cross back', 130, 86),
  level('shoulder', 174, 86),
]);

/** The name of each is the name of its golden file. */
export const TWELVE: Readonly<Record<string, () => Drawing>> = {
  'body-round-waist': () =>
    schematic(
      body({
        gauge: DK,
        direction: 'up',
        edge: 0,
        length: cm(42),
        waist: waist(88),
        bust: 220,
        hem: 220,
        was: 38,
      }),
      CM,
    ),
  'body-round-down-inches': () =>
    schematic(
      body({
        gauge: DK,
        direction: 'down',
        edge: 0,
        length: cm(45),
        waist: waist(92),
        bust: 240,
        hem: 240,
        was: 40,
      }),
      IN,
    ),
  'body-thick-straight': () =>
    schematic(
      body({
        gauge: THICK,
        direction: 'up',
        edge: 0,
        length: cm(30),
        waist: null,
        bust: 150,
        hem: 150,
        was: 40,
      }),
      CM,
    ),
  'body-wide-hip': () =>
    schematic(
      body({
        gauge: DK,
        direction: 'up',
        edge: 0,
        length: cm(50),
        waist: waist(128),
        bust: 312,
        hem: 312,
        was: 40,
        hip: 160,
      }),
      CM,
    ),
  'back-flat-fine': () =>
    schematic(
      body({
        gauge: FINE,
        direction: 'up',
        edge: 2,
        length: cm(38),
        waist: waist(80),
        bust: 146,
        hem: 146,
        was: 38,
      }),
      CM,
    ),
  'back-with-dipping-hem': () =>
    schematic(pieceChange(null, BACK, gaugeOf(22, 30, 'flat'), 2), CM, [sampleHem()]),
  'sleeve-flat-fuller': () =>
    schematic(
      sleeve({
        gauge: gaugeOf(22, 30, 'flat'),
        direction: 'up',
        edge: 2,
        length: cm(45),
        wrist: 46,
        upperArm: 74,
        now: 37,
      }),
      CM,
    ),
  'sleeve-round-down-inches': () =>
    schematic(
      sleeve({ gauge: DK, direction: 'down', edge: 0, length: cm(40), wrist: 44, upperArm: 80, now: 33 }),
      IN,
    ),
  'cap-and-armhole': () => shaped(sampleCap(), 'The cap and its armhole', 'flat'),
  raglan: () => shaped(sampleRaglan(), 'The raglan lines', 'round'),
  yoke: () => shaped(sampleYoke(), 'The yoke', 'round'),
  neck: () => shaped(sampleNeck(), 'The neck', 'flat'),
};
