/**
 * The project's own sample sweater, for practice and for tests: a plain pullover from the hem up, straight in the body,
 * with set-in sleeves from the cuff. Finished widths and depths are its counts and rows at its own gauge.
 */
import type { Pattern, PatternSize } from './pattern.ts';
import { cm, roundHalfUp, rows, stitches } from './units.ts';

const STITCHES_PER_CM = 22 / 10;
const ROWS_PER_CM = 30 / 10;
/** Seams swallow one stitch at each edge of a flat piece. */
const EDGE = 2;

/** Size by size, as a pattern prints them. */
// biome-ignore format: the figures of one size stand below one another
const FIGURES = {
  label:      ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  /** All round, without edge stitches. */
  bust:       [160, 180, 200, 220, 240, 260, 280, 300, 320, 340],
  boundOff:   [  3,   4,   5,   6,   7,   8,   9,  11,  12,  14],
  decreased:  [  2,   3,   5,   7,   9,  11,  13,  14,  17,  19],
  shoulder:   [ 18,  20,  22,  23,  24,  25,  26,  28,  28,  29],
  backNeck:   [ 34,  36,  36,  38,  40,  42,  44,  44,  46,  46],
  /** Opening all round before the neckband, in centimetres: about two and a half times the back neck. */
  neck:       [38.5, 41,  41,  43, 45.5, 47.5, 50, 50, 52.5, 52.5],
  /** Sleeve counts as knitted, edge stitches included. */
  wrist:      [ 40,  40,  44,  44,  48,  48,  52,  52,  56,  56],
  upperArm:   [ 60,  66,  70,  74,  78,  84,  94, 102, 108, 116],
  capTop:     [ 22,  22,  22,  24,  24,  26,  28,  30,  30,  32],
  /** Rows from cast-on to underarm, edging included. */
  bodyRows:   [100, 106, 112, 114, 118, 120, 122, 124, 126, 128],
  sleeveRows: [114, 126, 130, 132, 134, 136, 136, 138, 138, 140],
  armholeRows:[ 50,  54,  58,  60,  64,  68,  70,  74,  76,  80],
  /** From the middle of the front neck up to the shoulder. */
  neckRows:   [ 20,  22,  22,  22,  24,  26,  28,  28,  30,  30],
  capRows:    [ 26,  30,  34,  36,  42,  44,  44,  46,  48,  52],
} as const;

type Figure = Exclude<keyof typeof FIGURES, 'label'>;
type SampleSize = { readonly label: string } & Readonly<Record<Figure, number>>;

const SIZES: readonly SampleSize[] = FIGURES.label.map((label, i) => ({
  ...(Object.fromEntries(Object.entries(FIGURES).map(([name, row]) => [name, row[i]])) as SampleSize),
  label,
}));

/** Lengths are printed to the millimetre. */
const printed = (value: number) => cm(roundHalfUp(value, 1));
const width = (count: number) => printed(count / STITCHES_PER_CM);
const height = (count: number) => printed(count / ROWS_PER_CM);

/** `seams` are the edge stitches of a flat back, which its armhole edges and shoulders keep. */
function patternSize(s: SampleSize, pieces: 1 | 2, seams: number): PatternSize {
  const body = stitches(s.bust / pieces + seams);
  const cross = 2 * s.shoulder + s.backNeck;
  return {
    label: s.label,
    finished: {
      bust: width(s.bust),
      waist: width(s.bust),
      hip: width(s.bust),
      'cross back': width(cross),
      'armhole depth': height(s.armholeRows),
      neck: cm(s.neck),
      'upper arm': width(s.upperArm - EDGE),
      wrist: width(s.wrist - EDGE),
      'body length': height(s.bodyRows),
      'sleeve length': height(s.sleeveRows),
    },
    counts: {
      'body cast-on': body,
      bust: body,
      'cross back': stitches(cross + seams),
      'back neck': stitches(s.backNeck),
      shoulder: stitches(s.shoulder + seams / 2),
      'sleeve cast-on': stitches(s.wrist),
      wrist: stitches(s.wrist),
      'upper arm': stitches(s.upperArm),
      'cap top': stitches(s.capTop),
    },
    rows: {
      body: rows(s.bodyRows),
      armhole: rows(s.armholeRows),
      sleeve: rows(s.sleeveRows),
      cap: rows(s.capRows),
    },
    armhole: { boundOff: stitches(s.boundOff), decreased: stitches(s.decreased) },
    neckDepth: height(s.neckRows),
  };
}

const SHARED = {
  construction: 'set-in',
  direction: 'up',
  sleeves: 'flat',
  gauge: {
    stitches: { count: 22, span: cm(10), unit: 'cm' },
    rows: { count: 30, span: cm(10), unit: 'cm' },
  },
  /** Rib of one knit, one purl. */
  repeat: { multiple: 2, plus: 0 },
  edging: { hem: cm(6), cuff: cm(6) },
} as const;

/** The sample with its body in the round to the underarms, sleeves flat. */
export const SAMPLE_ROUND: Pattern = {
  ...SHARED,
  name: 'Pennywhin in the round',
  body: 'round',
  edge: { body: 0, sleeves: EDGE },
  sizes: SIZES.map((size) => patternSize(size, 1, 0)),
};

/** The sample in a back, a front and two sleeves, seamed. */
export const SAMPLE_PIECES: Pattern = {
  ...SHARED,
  name: 'Pennywhin in pieces',
  body: 'flat',
  edge: { body: EDGE, sleeves: EDGE },
  sizes: SIZES.map((size) => patternSize(size, 2, EDGE)),
};
