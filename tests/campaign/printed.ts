/** What a pattern prints in one size: the sample's own figures, or those of a random pattern whose counts agree. */
import { rateFrom } from '../../src/fit/gauge.ts';
import type { Counted } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import type { Worked } from '../../src/fit/words.ts';
import { drawsOf, type Made, type Wearer } from './wearers.ts';

interface PieceMade {
  readonly worked: Worked;
  readonly up: boolean;
}

export interface Printed {
  readonly body: PieceMade;
  readonly sleeves: PieceMade;
  readonly joined: Wearer['joined'];
  /** Edge stitches of a flat piece that its seams swallow. */
  readonly edge: { readonly body: number; readonly sleeves: number };
  /** All round, or of the back in pieces. */
  readonly bust: number;
  readonly hem: number;
  readonly back: number;
  readonly cross: number;
  readonly neck: number;
  readonly boundOff: number;
  readonly wrist: number;
  readonly upperArm: number;
  /** Set aside of body and sleeve at each underarm, where they are joined. */
  readonly underarm: number;
  readonly depth: number;
  /** To the underarm, and of the sleeve, in centimetres; null where the pattern's are not known for certain. */
  readonly lengths: { readonly body: number; readonly armhole: number; readonly sleeve: number } | null;
  /** Rows from one armhole decrease to the next. */
  readonly pace: 1 | 2 | 4;
  /** At the knitter's own gauge. */
  readonly stitchesPerCm: number;
  readonly rowsPerCm: number;
}

export function printedFor(wearer: Wearer): Printed {
  const gauge = {
    stitchesPerCm: rateFrom([...wearer.stitches]).perCm,
    rowsPerCm: rateFrom([...wearer.rows]).perCm,
  };
  return wearer.pattern === 'own' ? owned(wearer, gauge) : sampled(wearer, gauge);
}

type Rates = Pick<Printed, 'stitchesPerCm' | 'rowsPerCm'>;

function sampled({ pattern, size: nth }: Wearer, gauge: Rates): Printed {
  const sample = pattern === 'sample_round' ? SAMPLE_ROUND : SAMPLE_PIECES;
  const size = sample.sizes[nth];
  const count = (name: Counted): number => {
    const found = size?.counts[name];
    if (found === undefined) throw new Error(`the sample prints no ${name}`);
    return found;
  };
  return {
    ...gauge,
    body: { worked: sample.body, up: true },
    sleeves: { worked: sample.sleeves, up: true },
    joined: 'set_in',
    edge: sample.edge,
    bust: count('bust'),
    hem: count('body cast-on'),
    back: sample.body === 'round' ? count('bust') / 2 : count('bust'),
    cross: count('cross back'),
    neck: count('back neck'),
    boundOff: size?.armhole?.boundOff ?? 0,
    wrist: count('wrist'),
    upperArm: count('upper arm'),
    underarm: 0,
    depth: size?.finished['armhole depth'] ?? 0,
    lengths: {
      body: size?.finished['body length'] ?? 0,
      armhole: size?.finished['armhole depth'] ?? 0,
      sleeve: size?.finished['sleeve length'] ?? 0,
    },
    pace: 2,
  };
}

function owned(wearer: Wearer, gauge: Rates): Printed {
  const draws = drawsOf([...wearer.toss].reverse());
  const { joined } = wearer;
  const body = made(joined === 'yoke' ? roundOf(wearer.body) : wearer.body);
  // Sleeves of a yoke are begun at the end at which the body is begun.
  const sleeves =
    joined === 'raglan' || joined === 'yoke'
      ? { ...body, worked: made(wearer.sleeves).worked }
      : made(wearer.sleeves);
  const edge = { body: body.worked === 'flat' ? 2 : 0, sleeves: sleeves.worked === 'flat' ? 2 : 0 };
  const half = Math.max(24, Math.round((wearer.bust / 2) * gauge.stitchesPerCm));
  const bust = body.worked === 'flat' ? half + edge.body : 2 * half + (draws.often(0.15) ? 1 : 0);
  const back = half + edge.body;
  const depth = draws.length(wearer.bust * 0.17, wearer.bust * 0.23);
  const arm = Math.max(14, depth * draws.between(1.3, 1.7));
  const upperArm = Math.round(arm * gauge.stitchesPerCm) + edge.sleeves;
  // A dropped shoulder loses nothing at the armhole.
  const loss = joined === 'drop' ? 0 : Math.round(back * draws.between(0.05, 0.13));
  const cross = back - 2 * loss - (joined !== 'drop' && draws.often(0.06) ? 1 : 0);
  const near = Math.round(cross * draws.between(0.3, 0.45));
  return {
    ...gauge,
    body,
    sleeves,
    joined,
    edge,
    bust,
    hem: Math.max(20, bust + draws.one([0, 0, 0, 4, -4, 8, 3])),
    back,
    cross,
    neck: (cross - near) % 2 === 0 ? near : near + 1,
    boundOff: Math.max(1, Math.round(loss * draws.between(0.25, 0.6))),
    wrist: Math.max(10, Math.round(upperArm * draws.between(0.5, 0.8))),
    upperArm,
    underarm: Math.max(2, Math.round(back * draws.between(0.06, 0.14))),
    depth,
    lengths: null,
    pace: draws.one([2, 2, 1, 4]),
  };
}

function made(way: Made): PieceMade {
  return { worked: way.endsWith('round') ? 'round' : 'flat', up: way.startsWith('up') };
}

function roundOf(way: Made): Made {
  return way.startsWith('up') ? 'up_round' : 'down_round';
}
