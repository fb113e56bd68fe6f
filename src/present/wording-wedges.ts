/** The wording of the sentences about one written row and about short rows. */
import type { WEDGE_PHRASES } from '../fit/phrases-wedges.ts';

export const WEDGE_WORDING: Readonly<Record<(typeof WEDGE_PHRASES)[number], string>> = {
  'summary: spread': 'From {before} to {after}, evenly spread.',
  'where: one row': 'One [row] with the changes spread evenly',
  'note: flat ends are half':
    'The stretches at both ends are about half as long as those between. In a seam they make a whole one.',
  'note: one end is longer': 'The two ends differ by one stitch: these counts cannot be shared more evenly.',
  'note: round has no join': 'The spacing runs on across the beginning of the round, so that no join shows.',
  'note: k as the pattern has it':
    'The letter k with a number means: knit so many, or work them as your pattern has them.',
  'note: m1': 'The sign m1 means: make one stitch out of the bar before the next stitch.',
  'note: kfb': 'The sign kfb means: knit into the front and the back of one stitch.',
  'note: kyok': 'The sign kyok means: knit, yarn over, knit, all into one stitch.',
  'note: k2tog': 'The sign k2tog means: knit two stitches together.',
  'note: cdd':
    'The sign cdd means: slip two stitches together as if to knit, knit one, and pass the slipped ones over it.',
  'cannot: changes exceed the row': 'One [row] has room for {most#} changes, and {asked#} are asked for.',
  'cannot: changes do not come out':
    'Each change counts for {each}, and a difference of {change} is no multiple of that.',
  'cannot: no whole repeats': '{stitches} are no whole number of repeats of {repeat}: {over} are left over.',
  'cannot: count breaks the rule': 'A count of {after} does not fit the repeat.',
  'cannot: nothing to change': 'Both counts are {count}: there is nothing to add or to lose.',
  'cannot: border fills the row': 'Two borders of {edge} leave nothing of {count} to work with.',
  'cannot: increase would be a decrease': 'You chose an increase, but {after} is less than {before}.',
  'cannot: decrease would be an increase': 'You chose a decrease, but {after} is more than {before}.',
  'instead: change the count': 'Look at both counts once more, or choose the other way to change them.',
  'instead: change the border': 'Make the borders narrower.',
  'way: several rows': 'Over several [rows], with a plain [row] between them.',
  'way: double changes': 'In one [row] with double changes.',
  'way: as many as fit': 'As many as one [row] holds: you get {after}.',
  'way: nearest count': 'To {after} instead.',
  'way: anywhere in the row': 'Anywhere in the [row], without regard to the repeat.',
  'do: this way instead': 'This can be done instead:',
  'do: one of these instead': 'Choose one of these instead:',
  'note: ask again with that figure':
    'Change your answer to the figure of the way that you choose, and the whole plan follows.',
  'instead: change the figures': 'Look at the figures once more and change the one that stands in the way.',

  'note: short rows':
    'Short rows are turned before their end, so that one part grows longer than the rest. Turn in any way you know, for instance by wrap and turn or with a double stitch.',
  'check: wedge':
    'from below the short rows to above them it is {depth} longer in the middle than beside them.',
  'cannot: turns exceed the base':
    'So deep a wedge needs {asked#} turns on each side, and its stitches have room for {most#}.',
  'cannot: wedge too flat': '{depth} is too little: one turn and the row back are more than that.',
  'cannot: one side in the round': 'In the round every short row is turned at both ends.',
  'cannot: wedge too wide': 'It needs {needed}, and there are {available} for it.',
  'way: shallower': 'A shallower wedge of {depth}.',
  'way: two wedges': 'Two wedges, one above the other, which together give the depth.',
  'way: narrower middle': 'The full depth over fewer stitches: {flat}.',
  'way: two rows': 'The least wedge there is, {depth}.',
  'way: both sides': 'Turned on both sides.',
  'way: closer turns': 'The turns closer to the bust points, with the full depth over {flat}.',
  'way: widest base': 'As wide as the stitches allow.',
  'way: leave it out': 'Leave it out: nobody will see so little.',

  'summary: hem': 'A hem that hangs {depth} lower at the back.',
  'where: hem across the back': 'The hem, lower across the back',
  'where: hem all round': 'The hem, lower at the back and tapering all round',
  'do: wedge after the edging': 'Work the edging ({rows}). Then work these short rows, before all else.',
  'do: wedge before the edging':
    'Work these short rows when only the edging ({rows}) is left to do. Then work the edging.',
  'note: round begins before the back':
    'All is counted from the side where the back begins. Does your round begin elsewhere? Then work to that side first, and on to it again at the end.',
  'note: round begins at the centre of the back':
    'All is counted from the centre of the back. Does your round begin elsewhere? Then work to the centre first, and on to it again at the end.',
  'note: front keeps its length': 'The front keeps its length. The side lines do not change either.',

  'summary: back neck': 'A neck that rises {depth} higher behind.',
  'summary: front neck by short rows':
    'A neck that lies {depth} lower in front: the same as a back that rises so much higher.',
  'where: back of the neck': 'The back of the neck',
  'do: wedge at the neck edge': 'Work these short rows right after the neck edge or the neckband.',
  'do: wedge up to the neck edge': 'Work these short rows last, right before the neck edge or the neckband.',
  'do: wedge after the neck edge': 'Work these short rows {rows} after the neck edge.',
  'do: wedge before the neck edge': 'Work these short rows {rows} before the neck edge is reached.',
  'note: neck rises behind':
    'The back grows and the front stays as it is. So the neck sits higher behind and lower in front.',

  'summary: shoulder': 'Shoulders that slope by {drop}.',
  'where: shoulders of the back': 'Both shoulders of the back',
  'where: shoulder at the right': 'The shoulder at the right, seen from the right side',
  'where: shoulder at the left': 'The shoulder at the left, seen from the right side',
  'do: shoulder slopes from here':
    'Begin where the shoulder begins in your pattern, when the armhole is as deep as it should be.',
  'do: shoulder slopes from the cast-on': 'Begin right after the shoulder stitches are cast on or picked up.',
  'do: close the shoulder at once':
    'Then [bind off] or join the stitches of the shoulder all at once. The slope shows no steps.',
  'note: nothing to bind off from the neck down':
    'A shoulder that is knitted first has nothing to [bind off], so the slope is made by short rows.',
  'note: drop as knitted':
    'A straight line through the middles of the steps falls {drop} from neck to armhole.',
  'note: neck between the shoulders':
    'The {neck} between the shoulders are the back of the neck. They end as your pattern has it.',
  'note: both shoulders alike': 'Front and back shoulders are shaped alike, so that they can be joined.',
  'check: shoulder drop': 'the step at the armhole lies {drop} lower than the step at the neck.',
  'cannot: shoulder too flat': '{drop} is too little for a slope: it needs two steps at least.',
  'cannot: shoulder too steep': 'The slope needs {asked#} steps, and the shoulder has {shoulder}.',
  'cannot: nothing to bind off': 'A shoulder that is knitted first has nothing to [bind off].',
  'way: two steps': 'Two steps, a slope of {drop}.',
  'way: straight across': 'No slope: end the shoulder straight across.',
  'way: a step for each stitch': 'One step for each stitch, a slope of {drop}.',
  'way: shoulder by short rows': 'The same slope by short rows.',

  'summary: bust': 'Your front, shaped for the bust.',
  'where: which shaping suits': 'Which shaping suits you',
  'where: what cannot be': 'What cannot be done',
  'where: bust dart': 'The bust dart',
  'where: more stitches for the front': 'More stitches for the front',
  'where: widen to the bust': 'Widen on the way to the bust',
  'where: narrow from the bust': 'Narrow again beyond the bust',
  'do: bust as the pattern has it': 'Knit the front as the pattern has it.',
  'do: advice, none': 'Your figures ask for no shaping at the bust.',
  'do: advice, short rows': 'Short rows suit you: they add length to the front, and no width.',
  'do: advice, vertical darts': 'Vertical darts suit you: they add width to the front, and no length.',
  'do: advice, both': 'Both suit you: short rows for the length, vertical darts for the width.',
  'do: chosen, short rows': 'You chose short rows alone, and they are planned here.',
  'do: chosen, vertical darts': 'You chose vertical darts alone, and they are planned here.',
  'do: chosen, both': 'You chose short rows and vertical darts, and both are planned here.',
  'do: chosen, front stitches': 'You chose more stitches for the front, and they are planned here.',
  'note: girths speak for length':
    'The full bust is {width} more than the upper bust, so the front needs more length too.',
  'note: the front needs length': 'Over the bust the front needs {length} more length than the back.',
  'note: the front needs width': 'The full bust is {width} more than the upper bust.',
  'note: ease takes up the length':
    'The front would need {length} more length, but {ease} of ease takes that up.',
  'note: front like the back': 'Length and width of the front are nearly those of the back.',
  'note: pattern broken, width helps':
    'Short rows would break your stitch or colour pattern. More width also keeps the front from riding up.',
  'note: pattern broken, nothing else helps':
    'Short rows will show in your stitch or colour pattern. Nothing else adds length.',
  'do: dart complete at the bust point':
    'Begin {rows} ({height}) before the underarm, counted at the side. The short rows end at the fullest point of the bust.',
  'do: dart begins at the bust point':
    'Begin {rows} ({height}) below the underarm, counted at the side. That is at the fullest point of the bust.',
  'do: hang dart markers':
    'Hang a dart marker {fromSide} in from each side of the front. Both lie over the bust points.',
  'do: widen up to the bust point':
    'Widen the front over {rows} ({height}). They end at the fullest point of the bust, {below} before the underarm.',
  'do: widen down to the bust point':
    'Widen the front over the first {rows} ({height}) below the underarm, down to the fullest point of the bust.',
  'do: narrow up to the underarm':
    'Narrow it again over the {rows} ({height}) from the fullest point of the bust up to the underarm.',
  'do: narrow down to the waist':
    'Narrow it again over {rows} ({height}) from the fullest point of the bust down to the waist.',
  'do: cast on more for the front': 'Begin the front with {added} more than the pattern: {front}.',
  'note: rule of thumb':
    'The depth comes from a rule of thumb: anything from {low} to {high} may be right. Measuring front and back is surer.',
  'note: round begins before the front':
    'All is counted from the side where the front begins. Does your round begin elsewhere? Then work to that side first, and on to it again at the end.',
  'note: back stays as it is': 'The back stays as the pattern has it.',
  'note: counts of the front alone': 'These counts are those of the front alone.',
  'note: front is back to the pattern': 'The front is back at the count of the pattern: {front}.',
  'note: front keeps its stitches': 'The front keeps {front} from here on.',
  'note: front keeps the stitches of the darts': 'The front keeps the {added} of the darts from here on.',
  'note: stitches of the darts are gone': 'All {added} of the darts are gone again.',
  'note: darts begin after': 'The darts begin after {begins} of the body, where the front has {front}.',
  'note: darts leave out the sides':
    'These counts are those of the front with its darts. What the sides gain or lose in the same [rows] comes on top.',
  'note: sides gain beside the darts':
    'At the fullest point of the bust the front has {all}: {wide} with the darts, and {sides} more from its sides.',
  'note: sides lose beside the darts':
    'At the fullest point of the bust the front has {all}: {wide} with the darts, and {sides} fewer from its sides.',
  'check: front is wider': 'at the bust the front is {width} wider than the back.',
  'cannot: no dart needed': 'The front needs no more length than the back.',
  'cannot: no width needed':
    'The front needs no more stitches: {width} is less than one shaping [row] would add.',
  'cannot: darts outside the front': 'The bust points lie {span} apart, and the front has only {front}.',
  'instead: no bust shaping': 'Knit the front as the pattern has it, or measure once more.',
};
