/** Another width by the needle alone, as a step: the gauge that gives it, and what else of the size it changes. */
import type { NeedleWay } from './needle-way.ts';
import type { PhraseName } from './phrases.ts';
import { type Phrase, phrase, type Step } from './plan.ts';
import { say, step } from './steps.ts';
import type { Cm } from './units.ts';
import { quantity } from './working.ts';

const FABRICS: Readonly<Record<NeedleWay['fabric'], PhraseName>> = {
  'much the same': 'note: fabric much the same',
  looser: 'note: fabric looser',
  denser: 'note: fabric denser',
};

/** `size`: its label. The width that is wanted is the first of `way.widths`. */
export function needleStep(way: NeedleWay, size: string): Step {
  const [wanted, ...others] = way.widths;
  if (wanted === undefined) throw new RangeError('a needle is changed for some width');
  const gauge = quantity('gauge for the width', way.gauge, 'stitches/cm');
  const width = quantity('width wanted', wanted.becomes, 'cm');
  return step('all', phrase('where: the needle'), {
    instead: [say(phrase('do: gauge for the width', { size, gauge, width }))],
    notes: [
      phrase(FABRICS[way.fabric]),
      ...others.map(({ region, ...change }) => becomes('note: width becomes', region, change)),
      ...way.lengths.map(({ stretch, ...change }) => becomes('note: length becomes', stretch, change)),
      phrase('note: swatch for the needle'),
    ],
    workings: way.workings,
  });
}

function becomes(
  name: PhraseName,
  what: string,
  { printed, becomes: then }: { readonly printed: Cm; readonly becomes: Cm },
): Phrase {
  return phrase(name, {
    what,
    from: quantity('printed', printed, 'cm'),
    to: quantity('becomes', then, 'cm'),
  });
}
