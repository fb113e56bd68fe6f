/** A width turned into a stitch count, with its workings. */
import { type CountChoice, type CountRule, type Gauge, stitchesFor } from './gauge.ts';
import { type Phrase, phrase } from './plan.ts';
import type { Cm, Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface Counted {
  readonly stitches: Stitches;
  readonly choice: CountChoice;
  readonly workings: readonly WorkingLine[];
  /** Both neighbouring counts and their widths, in words; nothing where a count gives the very width. */
  readonly neighbours: readonly Phrase[];
}

/** The nearest admissible count for a width around a piece. Throws where the rule's parity can never be met. */
export function countFor(place: string, width: Cm, gauge: Pick<Gauge, 'stitches'>, rule: CountRule): Counted {
  const choice = stitchesFor(width, gauge.stitches.perCm, rule);
  if ('impossible' in choice)
    throw new RangeError(`no ${rule.parity} count is a multiple of ${rule.multiple} + ${rule.plus}`);
  const line = workOut(
    `stitches at the ${place}`,
    rule.edge === 0 ? 'a * b' : 'a * b + c',
    {
      a: quantity(`width at the ${place}`, width, 'cm'),
      b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
      ...(rule.edge === 0 ? {} : { c: quantity('edge stitches', rule.edge, 'stitches') }),
    },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: choice.step, plus: choice.start } },
  );
  const exact = choice.below.stitches === choice.above.stitches;
  const sides = exact ? [] : [choice.below, choice.above];
  const widths = sides.map((side, i) =>
    workOut(
      `width of the ${i === 0 ? 'smaller' : 'larger'} count`,
      rule.edge === 0 ? 'a / b' : '(a - c) / b',
      {
        a: quantity('stitches', side.stitches, 'stitches'),
        b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
        ...(rule.edge === 0 ? {} : { c: quantity('edge stitches', rule.edge, 'stitches') }),
      },
      { unit: 'cm' },
    ),
  );
  return {
    stitches: choice.chosen,
    choice,
    workings: [line, ...widths],
    neighbours: exact ? [] : [nearestCounts(choice)],
  };
}

function nearestCounts({ below, above }: CountChoice): Phrase {
  return phrase('note: nearest counts', {
    below: quantity('smaller count', below.stitches, 'stitches'),
    belowWidth: quantity('its width', below.width, 'cm'),
    above: quantity('larger count', above.stitches, 'stitches'),
    aboveWidth: quantity('its width', above.width, 'cm'),
  });
}
