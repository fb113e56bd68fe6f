/**
 * The area of a plain sweater from five finished measurements: the body as a tube from hem to shoulder, two sleeves as
 * trapezia. What armholes and neck take away, caps and bands add again (common practice).
 */
import type { Cm } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface Sweater {
  readonly bust: Cm;
  /** From the lower edge to the top of the shoulder. */
  readonly length: Cm;
  readonly upperArm: Cm;
  readonly wrist: Cm;
  readonly sleeve: Cm;
}

/** In square centimetres. */
export interface Area {
  readonly area: number;
  readonly workings: readonly WorkingLine[];
}

export function sweaterArea({ bust, length, upperArm, wrist, sleeve }: Sweater): Area {
  const body = workOut(
    'area of the body',
    'a * b',
    { a: quantity('finished bust', bust, 'cm'), b: quantity('length from hem to shoulder', length, 'cm') },
    { unit: 'cm²' },
  );
  const arm = workOut(
    'area of one sleeve',
    '(a + b) / 2 * c',
    {
      a: quantity('upper arm', upperArm, 'cm'),
      b: quantity('wrist', wrist, 'cm'),
      c: quantity('sleeve length', sleeve, 'cm'),
    },
    { unit: 'cm²' },
  );
  const all = workOut('area in all', 'a + 2 * b', { a: body.result, b: arm.result }, { unit: 'cm²' });
  return { area: all.exact, workings: [body, arm, all] };
}

/** What is knitted of a sweater: so much of its body's length, and whole sleeves. */
export interface Knitted {
  readonly body: Cm;
  readonly sleeves: 0 | 1 | 2;
}

export interface AreaLeft {
  readonly done: number;
  /** Negative where more is knitted than there is of it. */
  readonly rest: number;
  readonly workings: readonly WorkingLine[];
}

export function areaLeft(sweater: Sweater, { body, sleeves }: Knitted): AreaLeft {
  const all = sweaterArea(sweater);
  const [, arm] = all.workings;
  const done = workOut(
    'area knitted so far',
    'a * b + n * s',
    {
      a: quantity('finished bust', sweater.bust, 'cm'),
      b: quantity('length of the body so far', body, 'cm'),
      n: quantity('sleeves done', sleeves, 'times'),
      s: quantity('area of one sleeve', arm?.exact ?? 0, 'cm²'),
    },
    { unit: 'cm²' },
  );
  const rest = workOut(
    'area still to knit',
    'a - b',
    { a: quantity('area in all', all.area, 'cm²'), b: done.result },
    { unit: 'cm²' },
  );
  return { done: done.exact, rest: rest.exact, workings: [...all.workings, done, rest] };
}

/** How much more fabric one plain body has than another. */
export function areaRatio(
  own: Pick<Sweater, 'bust' | 'length'>,
  pattern: Pick<Sweater, 'bust' | 'length'>,
): WorkingLine {
  return workOut(
    'area over the area of the pattern',
    'a * b / (c * d)',
    {
      a: quantity('finished bust', own.bust, 'cm'),
      b: quantity('length from hem to shoulder', own.length, 'cm'),
      c: quantity("the pattern's bust", pattern.bust, 'cm'),
      d: quantity("the pattern's length", pattern.length, 'cm'),
    },
    { unit: 'ratio' },
  );
}
