/** The alterations, asked of the engine with the figures that were answered. */
import { type BodyAsk, type BodyCannot, type BodyShaping, shapeBody } from '../fit/body-shaping.ts';
import { bodyPart } from '../fit/body-steps.ts';
import type { DropShoulder } from '../fit/drop-shoulder.ts';
import { easedWidth, easeLine } from '../fit/ease.ts';
import { type Cannot, type Part, phrase } from '../fit/plan.ts';
import { type SleeveCannot, type SleeveShaping, shapeSleeve } from '../fit/sleeve.ts';
import { type SleeveWidths, sleevePart } from '../fit/sleeve-steps.ts';
import { type Cm, cm } from '../fit/units.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import { fitOf } from './body-known.ts';
import { capFor } from './cap-of.ts';
import { bodyFigures, sleeveFigures } from './figures.ts';
import { type Ledger, take, takeLength } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';

/** A part of the plan; or why it cannot be made; or undefined where figures are missing (they are entered as waiting). */
export type Altered = Part | CannotAlter | undefined;

export type CannotAlter = Omit<Cannot, 'unit'>;

export function sleeveAltered(book: Ledger): Altered {
  const made = sleeveShaped(book);
  if (made === undefined || 'kind' in made) return made;
  const { shaped, widths } = made;
  const cap = shaped.topDifference === null ? undefined : capFor(book, shaped.counts.upperArm);
  return sleevePart(shaped, widths, cap);
}

export interface ShapedSleeve {
  readonly shaped: SleeveShaping;
  readonly widths: SleeveWidths;
}

/**
 * Undefined where figures are missing; they are entered as waiting. `top`: of a dropped shoulder, as wide as its
 * armhole, in place of the width that the arm has with its ease.
 */
export function sleeveShaped(
  book: Ledger,
  top?: Pick<DropShoulder, 'topWidth'>,
): ShapedSleeve | CannotAlter | undefined {
  const figures = sleeveFigures(book);
  const length = takeLength(book, 'sleeve_length');
  const upperArm = takeLength(book, 'upper_arm');
  const wrist = takeLength(book, 'wrist');
  const fit = fitOf(book.sheet);
  if (figures === undefined || length === undefined) return undefined;
  const gauge = ownGauge(book, figures.worked);
  if (gauge === undefined) return undefined;
  const eased = (region: 'upper arm' | 'wrist', body: Cm | undefined) =>
    body === undefined ? null : easedWidth(region, body, fit);
  const arm = top === undefined ? eased('upper arm', upperArm) : armholeWide(top);
  const hand = eased('wrist', wrist);
  const shaped = shapeSleeve({
    gauge,
    direction: figures.direction,
    edge: figures.edge,
    pattern: figures,
    wrist: hand === null ? null : cm(hand.result.value),
    upperArm: arm === null ? null : cm(arm.result.value),
    length,
    cuffRepeat: { multiple: 2, plus: 0 },
  });
  return shaped.kind === 'cannot' ? cannot(shaped) : { shaped, widths: { wrist: hand, upperArm: arm } };
}

function armholeWide({ topWidth }: Pick<DropShoulder, 'topWidth'>): WorkingLine {
  const width = quantity('width of the sleeve top along the armhole', topWidth, 'cm');
  return workOut('width at the upper arm', 'a', { a: width }, { unit: 'cm' });
}

export function lengthAltered(book: Ledger): Altered {
  const made = bodyShaped(book, { length: true, waist: false });
  if (made === undefined || 'kind' in made) return made;
  return bodyPart(made.shaped, made.waist);
}

export interface BodyWish {
  readonly length: boolean;
  readonly waist: boolean;
}

export interface ShapedBody {
  readonly shaped: BodyShaping;
  /** How the waist's finished width came about. */
  readonly waist: WorkingLine | null;
}

/** Shaped at the sides. Undefined where figures are missing. */
export function bodyShaped(book: Ledger, wish: BodyWish): ShapedBody | CannotAlter | undefined {
  const asked = bodyAsked(book, wish);
  if (asked === undefined) return undefined;
  const shaped = shapeBody(asked.ask);
  return shaped.kind === 'cannot' ? cannot(shaped) : { shaped, waist: asked.waist };
}

export interface AskedBody extends Pick<ShapedBody, 'waist'> {
  readonly ask: BodyAsk;
}

/** Where its length is not to change, it is the pattern's. Undefined where figures are missing. */
export function bodyAsked(book: Ledger, wish: BodyWish): AskedBody | undefined {
  const figures = bodyFigures(book);
  const length = wish.length ? takeLength(book, 'body_length') : figures?.length;
  const waist = wish.waist ? waistWanted(book) : null;
  if (figures === undefined || length === undefined || waist === undefined) return undefined;
  const gauge = ownGauge(book, figures.worked);
  if (gauge === undefined) return undefined;
  const { direction, edge } = figures;
  const drawn = waist && { around: cm(waist.eased.result.value), belowUnderarm: waist.belowUnderarm };
  const ask: BodyAsk = { gauge, direction, edge, pattern: figures, length, waist: drawn, hip: null };
  return { ask, waist: waist?.eased ?? null };
}

function waistWanted(book: Ledger) {
  const [body, ease, belowUnderarm] = [
    takeLength(book, 'waist'),
    take(book, 'waist_ease', 'ease')?.cm,
    takeLength(book, 'underarm_to_waist'),
  ];
  if (body === undefined || ease === undefined || belowUnderarm === undefined) return undefined;
  const eased = easeLine('waist', body, ease);
  return { eased, belowUnderarm };
}

export function cannot(why: BodyCannot | SleeveCannot): CannotAlter {
  const [length, edging] = [quantity('length', why.length, 'cm'), quantity('edging', why.edging, 'cm')];
  const waistAt =
    'waistAt' in why && why.waistAt !== null ? quantity('height of the waist', why.waistAt, 'cm') : null;
  return {
    kind: 'cannot',
    because: [phrase(`cannot: ${why.why}`, { length, edging, ...(waistAt === null ? {} : { waistAt }) })],
    instead: [phrase('instead: change the lengths')],
    workings: [
      workOut('what is left above the edging', 'a - b', { a: length, b: edging }, { unit: 'cm' }),
      ...(waistAt === null
        ? []
        : [workOut('from the edging to the waist', 'a - b', { a: waistAt, b: edging }, { unit: 'cm' })]),
    ],
  };
}
