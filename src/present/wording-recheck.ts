/** The wording of the sentences of a recheck in mid-project. */
import type { RECHECK_PHRASES } from '../fit/phrases-recheck.ts';

export const RECHECK_WORDING: Readonly<Record<(typeof RECHECK_PHRASES)[number], string>> = {
  'summary: on track': 'It is on track.',
  'summary: mend ahead': 'Nothing need be undone: the rest can be put right from here on.',
  'summary: decide': 'Something is off that the rest cannot put right. Here is what either way costs.',
  'where: what it measures': 'What it will measure',
  'where: the rest': 'From here on',
  'where: going on': 'One way: knit on',
  'where: leaving it': 'One way: leave it as it is',
  'where: ripping back': 'The other way: rip back',
  'do: knit on as planned': 'Knit on as planned. At the [gauge] of your knitting it will measure:',
  'do: off if kept as planned': 'Kept as planned, this would be off:',
  'do: the count is another':
    'Widths and lengths come out as planned. Only the count on your needle is not the plan’s for this [row].',
  'do: it will then measure': 'It will then measure:',
  'do: what stays off': 'If you knit on, this stays off:',
  'do: what is off': 'This is off:',
  'do: too few rows are left': 'The [rows] that are left are too few for the shaping that is left.',
  'do: rip back to the row': 'Rip back {rows}, to [row] {row#}.',
  'do: rip back and begin again': 'Rip back all {rows} and begin this part again, with another count.',
  'do: begin again': 'Begin this part again, with another count.',
  'note: near enough':
    'By common practice a length within {length} of the plan is near enough. So is a width within a fortieth of it, or within {width} where that is more.',
  'note: too near to tell':
    'Where it is too near to tell, count over a wider stretch of the piece before you decide.',
  'note: rows from here': '[rows] are counted anew from here: the first is the next one you knit.',
  'note: rows from there':
    '[rows] are counted anew from there: the first is the next one you knit after ripping back.',
  'note: count after ripping back':
    'This takes your shaping to be spaced evenly. Have you another count there? Then check again from there with your own.',
  'cannot: too narrow to check':
    'At the [gauge] of your knitting only {stitches} would be left at one end. That is too few to shape.',
  'instead: count once more':
    'Count the stitches of the knitting once more, over as wide a stretch as you can.',
};
