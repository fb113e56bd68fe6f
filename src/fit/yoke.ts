/** A round yoke as asked for, or the reason why not with ways that work, each worked out. */
import { heightOf } from './gauge.ts';
import { stitches } from './units.ts';
import { evenly } from './yoke-scheme.ts';
import { shapeYoke, type YokeAsk, type YokeHindrance, type YokeShape } from './yoke-shape.ts';

export type { Plateau, YokeAsk, YokeRound, YokeShape } from './yoke-shape.ts';

export type CannotYoke = YokeHindrance & { readonly alternatives: readonly YokeAlternative[] };

export interface YokeAlternative {
  readonly way:
    | 'usual neck'
    | 'nearest count'
    | 'without the repeat'
    | 'deeper yoke'
    | 'other number of rounds';
  readonly yoke: YokeShape;
}

/** Share of the underarm's stitches that is left at the neck after three rounds that keep two thirds each. */
const USUAL_NECK = 8 / 27;

export function yoke(ask: YokeAsk): YokeShape | CannotYoke {
  const found = shapeYoke(ask);
  return found.kind === 'yoke' ? found : { ...found, alternatives: waysOut(ask, found) };
}

function waysOut(ask: YokeAsk, hindrance: YokeHindrance): readonly YokeAlternative[] {
  switch (hindrance.kind) {
    case 'neck not smaller':
      return offer('usual neck', {
        ...ask,
        neck: stitches(onMultiple(ask, 'neck', ask.underarm * USUAL_NECK)),
      });
    case 'no multiple':
      return [...offer('nearest count', onMultiples(ask, 0)), ...offer('nearest count', onMultiples(ask, 1))];
    case 'repeat too wide':
      return offer('without the repeat', withoutRepeat(ask));
    case 'yoke too shallow':
      return [
        ...offer('deeper yoke', { ...ask, depth: heightOf(hindrance.needed, ask.gauge) }),
        ...fewer(ask),
      ];
    case 'round too full':
      return more(ask);
    default:
      return hindrance satisfies never;
  }
}

/** The multiple at one end that is nearest to a count from below. */
function onMultiple(ask: YokeAsk, where: 'underarm' | 'neck', count: number): number {
  const multiple = (where === 'neck' ? ask.multiples?.at(-1) : ask.multiples?.[0]) ?? 1;
  return multiple * Math.max(1, Math.floor(count / multiple));
}

/** Both ends on the multiples below their counts, or on those above. */
function onMultiples(ask: YokeAsk, above: 0 | 1): YokeAsk {
  const to = (where: 'underarm' | 'neck') => {
    const below = onMultiple(ask, where, ask[where]);
    const step = onMultiple(ask, where, 0);
    return stitches(below === ask[where] ? below : below + above * step);
  };
  return { ...ask, underarm: to('underarm'), neck: to('neck') };
}

function withoutRepeat({ multiples: _, ...ask }: YokeAsk): YokeAsk {
  return ask;
}

/** The most rounds, equally far apart, below those asked for. */
function fewer(ask: YokeAsk): readonly YokeAlternative[] {
  for (let rounds = ask.scheme.length - 1; rounds >= 1; rounds -= 1) {
    const found = offer('other number of rounds', { ...withoutRepeat(ask), scheme: evenly(rounds) });
    if (found.length > 0) return found;
  }
  return [];
}

/** The fewest rounds, equally far apart, that hold the changes; there is at most one a row. */
function more(ask: YokeAsk): readonly YokeAlternative[] {
  const most = ask.depth * ask.gauge.rows.perCm;
  for (let rounds = 1; rounds <= most; rounds += 1) {
    const found = offer('other number of rounds', { ...withoutRepeat(ask), scheme: evenly(rounds) });
    if (found.length > 0) return found;
  }
  return [];
}

function offer(way: YokeAlternative['way'], ask: YokeAsk): readonly YokeAlternative[] {
  const found = shapeYoke(ask);
  return found.kind === 'yoke' ? [{ way, yoke: found }] : [];
}
