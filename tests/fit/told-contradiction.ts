/** Contradictions as a technical editor is told them, and patterns that hold little but what contradicts. */
import type { Contradiction } from '../../src/fit/contradiction.ts';
import { contradictions } from '../../src/fit/contradictions.ts';
import type { StatedShaping } from '../../src/fit/contradictions-sums.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm } from '../../src/fit/units.ts';
import type { Quantity } from '../../src/fit/working.ts';
import { told } from './told.ts';
import { only } from './with-size.ts';

export const ROUND = only(SAMPLE_ROUND, '4');
export const PIECES = only(SAMPLE_PIECES, '4');

export const figure = ({ name, value, unit }: Quantity) =>
  `${name}: ${Math.round(value * 100) / 100} ${unit}`;

export function toldOf({ code, figures, wouldAgree, workings }: Contradiction) {
  return {
    code,
    figures: figures.map(figure),
    // Those beyond what would agree, which are lines of the workings themselves.
    sums: told(workings.slice(0, workings.length - wouldAgree.length)),
    agree: wouldAgree.map(figure),
  };
}

export function gaugeAlone(sts: number, rws: number): Pattern {
  const span = { span: cm(10), unit: 'cm' } as const;
  return {
    ...SAMPLE_ROUND,
    sizes: [],
    gauge: { stitches: { count: sts, ...span }, rows: { count: rws, ...span } },
  };
}

export function bare(size: Partial<PatternSize>, more: Partial<Pattern> = {}): Pattern {
  return { ...ROUND, ...more, sizes: [{ label: '4', finished: {}, counts: {}, ...size }] };
}

export const codes = (pattern: Pattern, lines: readonly StatedShaping[] = []) =>
  contradictions(pattern, lines).map((c) => `${c.size ?? 'all'}: ${c.code}`);

export type Told = ReturnType<typeof toldOf>;
