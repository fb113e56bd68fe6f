/** The alterations, asked of the engine with the figures that were answered. */
import { type BodyCannot, shapeBody } from '../fit/body-shaping.ts';
import { bodyPart } from '../fit/body-steps.ts';
import { easedWidth, easeLine } from '../fit/ease.ts';
import { type Cannot, type Part, phrase } from '../fit/plan.ts';
import { type SleeveCannot, shapeSleeve } from '../fit/sleeve.ts';
import { sleevePart } from '../fit/sleeve-steps.ts';
import { type Cm, cm } from '../fit/units.ts';
import { quantity, workOut } from '../fit/working.ts';
import { fitOf } from './body-known.ts';
import { capFor } from './cap-of.ts';
import { bodyFigures, sleeveFigures } from './figures.ts';
import { type Ledger, take, takeLength } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';

/** A part of the plan; or why it cannot be made; or undefined where figures are missing (they are entered as waiting). */
export type Altered = Part | CannotAlter | undefined;

export type CannotAlter = Omit<Cannot, 'unit'>;

export function sleeveAltered(book: Ledger): Altered {
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
  const [arm, hand] = [eased('upper arm', upperArm), eased('wrist', wrist)];
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
  if (shaped.kind === 'cannot') return cannot(shaped);
  const cap = shaped.topDifference === null ? undefined : capFor(book, shaped.counts.upperArm);
  return sleevePart(shaped, { wrist: hand, upperArm: arm }, cap);
}

export function bodyAltered(book: Ledger, wish: { readonly waist: boolean }): Altered {
  const figures = bodyFigures(book);
  const length = takeLength(book, 'body_length');
  const waist = wish.waist ? waistWanted(book) : null;
  if (figures === undefined || length === undefined || waist === undefined) return undefined;
  const gauge = ownGauge(book, figures.worked);
  if (gauge === undefined) return undefined;
  const shaped = shapeBody({
    gauge,
    direction: figures.direction,
    edge: figures.edge,
    pattern: figures,
    length,
    waist: waist && { around: cm(waist.eased.result.value), belowUnderarm: waist.belowUnderarm },
    hip: null,
  });
  return shaped.kind === 'cannot' ? cannot(shaped) : bodyPart(shaped, waist?.eased ?? null);
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

function cannot(why: BodyCannot | SleeveCannot): CannotAlter {
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
