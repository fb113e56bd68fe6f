/** What the size chart has to say: region by region what is wanted, and what each size would measure there. */
import type { ComparedSize, Step } from '../../fit/plan.ts';
import { type Cm, cm, formatLength, type LengthUnit } from '../../fit/units.ts';
import { capital, wordDifference } from './words.ts';

export interface SizeChart {
  readonly unit: LengthUnit;
  readonly regions: readonly RegionLine[];
  /** The largest difference of all, for one scale. */
  readonly most: number;
}

export interface RegionLine {
  readonly region: string;
  readonly wanted: Cm;
  readonly sizes: readonly SizeLine[];
}

export interface SizeLine {
  readonly label: string;
  readonly followed: boolean;
  readonly knitted: Cm;
  readonly difference: Cm;
}

/** Null where the step compares no sizes. */
export function sizeChart(step: Step, unit: LengthUnit): SizeChart | null {
  const compared = step.instead.flatMap((i) => (i.do === 'compare sizes' ? i.sizes : []));
  const names = [...new Set(compared.flatMap((s) => s.regions.map((r) => r.region)))];
  if (names.length === 0) return null;
  const followed = followedIn(step, compared);
  // Small before large, as a pattern prints them; what is no number keeps its place.
  const sizes = [...compared].sort((a, b) => Number(a.label) - Number(b.label) || 0);
  const regions = names.map((region): RegionLine => {
    const lines = sizes.flatMap((size) =>
      size.regions.filter((r) => r.region === region).map((r) => ({ ...r, label: size.label })),
    );
    return {
      region: capital(region),
      wanted: lines[0]?.wanted ?? cm(0),
      sizes: lines.map(({ label, knitted, difference }) => ({
        label,
        followed: label === followed,
        knitted,
        difference,
      })),
    };
  });
  const differences = regions.flatMap((r) => r.sizes.map((s) => Math.abs(s.difference)));
  return { unit, regions, most: Math.max(...differences) };
}

/** The size that the step says to follow; the first of those compared where it says none. */
function followedIn(step: Step, sizes: readonly ComparedSize[]): string {
  for (const instruction of step.instead) {
    if (instruction.do !== 'say' || instruction.phrase.say !== 'do: follow the size') continue;
    const { size } = instruction.phrase.with;
    if (typeof size === 'string') return size;
  }
  return sizes[0]?.label ?? '';
}

/** '99.2 cm, 4.5 cm less'. */
export function sizeWords({ knitted, difference }: SizeLine, unit: LengthUnit): string {
  return `${formatLength(knitted, unit)}, ${wordDifference(difference, unit)}`;
}

export function chartAlternative({ regions, unit }: SizeChart): string {
  const lines = regions.map(({ region, wanted, sizes }) => {
    const said = sizes.map((s) => `size ${s.label}${s.followed ? ' (followed)' : ''} ${sizeWords(s, unit)}`);
    return `${region}, wanted ${formatLength(wanted, unit)}: ${said.join('; ')}.`;
  });
  return ['The sizes against what is wanted, each as it comes out in your fabric.', ...lines].join(' ');
}
