import { heightOf } from './gauge.ts';
import { type Neck, type NeckAsk, type NeckHindrance, shapeNeck } from './neck-shape.ts';
import { cm, stitches } from './units.ts';

export type { Neck, NeckAsk, NeckOutline, NeckSide } from './neck-shape.ts';

export type CannotNeck = NeckHindrance & { readonly alternatives: readonly NeckAlternative[] };

export interface NeckAlternative {
  readonly way:
    | 'a third of the stitches'
    | 'nearest centre'
    | 'no steps'
    | 'usual shaping'
    | 'wider centre'
    | 'deeper neck'
    | 'narrower neck';
  readonly neck: Neck;
}

export function neck(ask: NeckAsk): Neck | CannotNeck {
  const found = shapeNeck(ask);
  return found.kind === 'neck' ? found : { ...found, alternatives: waysOut(ask, found) };
}

function waysOut(ask: NeckAsk, hindrance: NeckHindrance): readonly NeckAlternative[] {
  switch (hindrance.kind) {
    case 'no shoulders left':
      return offer('a third of the stitches', {
        ...usual(ask),
        ...(ask.shape === undefined ? {} : { shape: ask.shape }),
        width: cm(ask.stitches / 3 / ask.gauge.stitches.perCm),
      });
    case 'centre of the wrong parity':
      return [
        ...[-1, 1].flatMap((by) =>
          offer('nearest centre', { ...ask, centre: stitches(Math.max(0, hindrance.centre + by)) }),
        ),
        ...offer('usual shaping', usual(ask)),
      ];
    case 'shaping exceeds the neck':
      return [...offer('no steps', { ...ask, steps: [] }), ...offer('usual shaping', usual(ask))];
    case 'too few rows':
      return moreRoom(ask, hindrance.needed - hindrance.available);
    default:
      return hindrance satisfies never;
  }
}

/** The same neck with centre and steps left to common practice, at least two rows deep. */
function usual({ stitches: across, width, depth, gauge }: NeckAsk): NeckAsk {
  return { stitches: across, width, depth: cm(Math.max(depth, heightOf(2, gauge))), gauge };
}

function moreRoom(ask: NeckAsk, missing: number): readonly NeckAlternative[] {
  const wider = ask.centre === undefined ? [] : [stitches(ask.centre + 2 * missing)];
  const more = heightOf(2 * Math.ceil(missing / 2), ask.gauge);
  return [
    ...offer('deeper neck', { ...ask, depth: cm(ask.depth + more) }),
    ...wider.flatMap((centre) => offer('wider centre', { ...ask, centre })),
    ...offer('no steps', { ...ask, steps: [] }),
    ...offer('usual shaping', usual(ask)),
    ...offer('narrower neck', { ...ask, width: cm(ask.width - (2 * missing) / ask.gauge.stitches.perCm) }),
  ];
}

function offer(way: NeckAlternative['way'], ask: NeckAsk): readonly NeckAlternative[] {
  const found = shapeNeck(ask);
  return found.kind === 'neck' ? [{ way, neck: found }] : [];
}
