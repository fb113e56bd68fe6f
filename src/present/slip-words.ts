/**
 * The words of slips in sums: why a figure parts from the workings, without any figure. `{about}` is the quantity that was
 * taken wrongly.
 */
import type { Mistake } from '../fit/mistake.ts';

export const SLIPS: Readonly<Record<Mistake, string>> = {
  'gauge turned round':
    'The {about} went in the wrong way round: divided where it multiplies, or multiplied where it divides.',
  'other gauge':
    'Rows were taken for stitches there, or stitches for rows. Look which of the two this line counts.',
  'gauge of the whole swatch':
    'The count over the whole swatch was taken for the count over one. Divide the count by its width first.',
  'half a width': 'That is half of it: the front alone, or one of two. This line wants the whole width.',
  'whole width for a part':
    'That is twice as much: the width all round, where this line wants one part of it.',
  'one side only': 'There are two sides to it. One was counted for both, or both for one.',
  'two left out': 'There is a two in this line, to halve or to double. It was left out.',
  'inches and centimetres mixed':
    'Inches and centimetres were mixed. Put every figure into one of them before you begin.',
  'ease forgotten': 'The ease is not in it. The sweater measures what the body measures, and the ease.',
  'ease twice': 'The ease went in twice. It is added once, to the body.',
  'ease the wrong way':
    'The ease went the other way: added where it is taken away, or taken away where it is added.',
  'edging forgotten':
    'The edging was left out of the count. Its rows are knitted before anything else is counted.',
  'edge stitches forgotten':
    'The edge stitches were left out. The seams take them, so they come on top of the width.',
  'repeat forgotten': 'The count does not fit the repeat. Go to the nearest count that does.',
  'extra stitches forgotten': 'The stitches beside the whole repeats were left out.',
  'odd rows': 'The rows must be even, so that you end on the same side as you began.',
  'rounded the wrong way': 'It was rounded the other way. The question says which way it goes.',
  'not rounded': 'So far it is right. It still has to be rounded: nobody knits a part of a stitch or a row.',
  'rounded too early':
    'The {about} was rounded before the end. Keep every decimal while you work, and round the last figure alone.',
  'off by one':
    'It is one too many or one too few. Count what lies between apart from what stands at the ends.',
  'multiplied for divided': 'It was multiplied where it is divided, or divided the wrong way round.',
  'added for taken away': 'It was added where it is taken away, or taken away where it is added.',
};

/** The same as things to watch. */
export const SLIPS_IN_SHORT: Readonly<Record<Mistake, string>> = {
  'gauge turned round': 'which way round the stitches or rows per length go in',
  'other gauge': 'stitches or rows',
  'gauge of the whole swatch': 'the count over one, not over the whole swatch',
  'half a width': 'the whole width or a half',
  'whole width for a part': 'the whole width or a part',
  'one side only': 'one side or both',
  'two left out': 'what is halved or doubled',
  'inches and centimetres mixed': 'one unit throughout',
  'ease forgotten': 'the ease',
  'ease twice': 'the ease, once',
  'ease the wrong way': 'whether the ease is added',
  'edging forgotten': 'the edging',
  'edge stitches forgotten': 'the edge stitches',
  'repeat forgotten': 'the stitch repeat',
  'extra stitches forgotten': 'the stitches beside the repeats',
  'odd rows': 'even rows',
  'rounded the wrong way': 'which way to round',
  'not rounded': 'rounding at the end',
  'rounded too early': 'rounding at the end alone',
  'off by one': 'what lies between and what stands at the ends',
  'multiplied for divided': 'times or divided by',
  'added for taken away': 'plus or minus',
};
