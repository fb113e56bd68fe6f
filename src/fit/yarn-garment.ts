/**
 * The area of a plain sweater from five finished measurements: the body as a tube from hem to shoulder, two sleeves as
 * trapezia. What the neck takes away, caps and bands add again (common practice).
 */
import type { Cm } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import type { Area } from './yarn-area.ts';

export interface Sweater {
  readonly bust: Cm;
  /** From the lower edge to the top of the shoulder. */
  readonly length: Cm;
  readonly upperArm: Cm;
  readonly wrist: Cm;
  readonly sleeve: Cm;
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
  const workings: WorkingLine[] = [body, arm, all];
  return { area: all.exact, workings };
}
