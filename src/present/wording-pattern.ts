/** The wording of the sentences about a pattern's own figures. */
import type { PATTERN_PHRASES } from '../fit/phrases-pattern.ts';

export const PATTERN_WORDING: Readonly<Record<(typeof PATTERN_PHRASES)[number], string>> = {
  'summary: line read': 'The line, laid out in [rows].',
  'summary: line read in several ways':
    'The trade writes such a line in more than one sense. Here is each, laid out in [rows].',
  'where: the line, row by row': 'The line, row by row',
  'where: first row ends the interval': 'Read so: the first shaping row ends the first interval',
  'where: first row is the next': 'Read so: the next row shapes, and the intervals are counted from it',
  'do: the line in numbers': '{times#} shaping [rows] over {rows}.',
  'note: times after the first row': 'The times are counted after the row named first.',
  'note: times with the first row': 'The times are counted with the row named first.',
  'note: the line adds up': 'From {start} you reach {end}, as the pattern says.',
  'note: the line does not add up': 'From {start} you reach {reached}, but the pattern says {stated}.',
  'note: the line would add up from': 'It would add up from {start}.',
  'note: only this reading adds up': 'Only this reading adds up, so it is the one that was meant.',
  'note: plain rows after the line': 'The last {rows} are plain.',
  'cannot: line cannot be read': 'The line leaves nothing to work for this size.',
  'cannot: line needs the count before':
    'The line is worked until a count is reached, so the count before it must be known.',
  'cannot: line needs the stitches a row':
    'The line does not say how many stitches a shaping [row] changes. The counts before and after it do not tell either.',
  'cannot: line never reaches its count':
    'The count at the end is never reached from the one at the beginning.',
  'instead: give the counts of the line': 'Count the stitches before the line, and read the count after it.',
  'instead: read the line once more': 'Compare the line with the pattern once more, figure by figure.',
  'where: the needle': 'Or another needle',
  'do: gauge for the width':
    'At a [gauge] of {gauge} the counts of size {size}, as printed, come to {width} around the bust.',
  'note: fabric much the same': 'The fabric stays much the same.',
  'note: fabric looser': 'The fabric becomes much looser, another one. Another size is the better way.',
  'note: fabric denser': 'The fabric becomes much denser, another one. Another size is the better way.',
  'note: width becomes': 'The {what} becomes {to} too, where the pattern prints {from}.',
  'note: length becomes':
    'The length of the {what} becomes {to} where it is counted in [rows]. In the pattern it is {from}.',
  'note: swatch for the needle':
    'Lengths are told as if [rows] changed like stitches. Swatch with that needle first.',

  'summary: no contradiction': 'No two of these figures contradict each other.',
  'summary: contradictions': 'These figures cannot all be right.',
  'where: what was compared': 'What was compared',
  'where: all sizes': 'The whole pattern',
  'where: one size': 'Size {size}',
  'do: compared': 'In all {sizes#} sizes: {rows}.',
  'note: row left out': '{row}: it has {figures#} figures for {sizes#} sizes, so it was left out.',
  'note: no contradiction is no fit':
    'This looks at the pattern alone. Figures that agree with each other need not fit a body.',
  'summary: regauged': 'The counts of your size at your [gauge] of {stitches}.',
  'where: counts of the body': 'The body, count by count',
  'where: counts of the sleeve': 'The sleeve, count by count',
  'note: counts of the back':
    'In pieces these are the counts of the back. The front has the same but for its neck.',
  'note: fit the cap anew': 'If the sleeve has a shaped cap, fit it anew to the armhole it is sewn into.',
  'note: space between these counts':
    'Where the pattern shapes from one of these counts to another, space the shaping over your own [rows].',
  'summary: sizes joined':
    'Size {shoulders} at the shoulders, size {bust} at the bust and size {hip} at the hips. The ways between them are spaced anew.',
  'where: armholes': 'The armholes',
  'where: all else': 'All else',
  'pattern: follows the size': 'follow size {size} here.',
  'pattern: follows the sizes': 'go from size {from} to size {to} here.',
  'do: cast on at the underarms': 'Then cast on {count} at each underarm.',
  'do: follow the shoulders': 'Armhole depth, shoulders and neck follow size {size}.',
  'do: sleeves follow': 'The sleeves follow size {size}.',
  'note: edging as printed':
    'Work the edging as the pattern says, on this count. The rows here are those above or below it.',
  'note: back and front apart':
    'Back and front are knitted apart here, back and forth. The first row is a right-side row.',
  'note: front armholes alike': 'Shape the armholes of the front the same way.',
  'note: joined at the pattern’s gauge':
    'This holds at the [gauge] of the pattern. If yours differs, work these counts out for your own first.',
  'cannot: counts of a size missing': 'Size {size} lacks the stitches at: {places}.',
  'cannot: a waist lies between':
    'The pattern draws the body in at the waist, and between two sizes its height is not known.',
  'cannot: shoulders wider than the back':
    'The back above the armholes has {across}, and below them only {back}. There is nothing to lose on the way.',
  'instead: one size for bust and hips':
    'Take one size for bust and hips, and change the waist in a chapter of its own.',
  'instead: smaller shoulders': 'Take a smaller size at the shoulders.',
  'instead: a size with a wider back': 'These sizes have a back that is wide enough at the bust: {sizes}.',
};
