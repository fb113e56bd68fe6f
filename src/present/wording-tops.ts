/** The wording of the sentences about necks, armholes, sleeve tops and yokes. */
import type { TOP_PHRASES } from '../fit/phrases-tops.ts';

export const TOP_WORDING: Readonly<Record<(typeof TOP_PHRASES)[number], string>> = {
  'instead: measure once more': 'Look at both figures once more. One of them may be misread.',

  'summary: front neck': 'A front neck {width} wide and {depth} deep.',
  'where: front neck': 'Where the front neck begins',
  'where: neck, the side on the needle': 'The neck, the side that is on the needle',
  'where: neck, the other side': 'The neck, the other side',
  'pattern: front neck': 'its front neck is {width} wide and {depth} deep.',
  'do: neck begins before the shoulder': 'Begin the neck {rows} ({height}) before the shoulder.',
  'do: rows go on from the divided row':
    'Go on over this side alone. The row that divided the front was row 1, so begin with row 2, a wrong-side row.',
  'do: take up the other side':
    'Join the yarn at the neck edge and work row 2, a wrong-side row. Rows are counted as on the first side.',
  'check: length to the shoulder': 'from the divided row straight up to the shoulder it is {length}.',
  'note: armhole of the pattern beside the neck':
    "The neck begins {begins} above the pattern's first armhole [bind-off], before the armhole is all shaped. Up to there work the armhole as printed: you have {across}. Its last decrease is in row {last} of the armhole.",
  'note: armhole may go on beside the neck':
    'These counts hold where the armhole is straight beside the neck. Does it still decrease there? Then go on with its decreases as printed, in the same rows. Until they are done, each side has that many stitches more. Both shoulders come out the same.',
  'note: armhole is open':
    "The armhole is still open. This rests on the pattern's own armhole. Has your way other stitches, or another depth? Then ask again with that figure.",
  'note: sleeve top is open':
    'The armhole or its cap is still open. This rests on your own figures. Has your way another count, or another depth? Then ask again with that figure.',
  'note: neck is open':
    "The front neck is still open. This rests on the pattern's own shoulders. Has your way others? Then ask again with that figure.",
  'note: yoke is open':
    "The yoke is still open. This rests on the pattern's own neck. Has your way other stitches there? Then ask again with that figure.",
  'note: back neck as wide': 'The back of the neck must be as wide, so that the shoulders meet.',
  'note: both shoulders as many stitches': 'Both sides end with as many stitches, for the shoulder.',
  'note: neck begins earlier': 'The neck begins {rows} earlier than in the pattern.',
  'note: neck begins later': 'The neck begins {rows} later than in the pattern.',
  'note: neckband gains':
    'The neck edge of the front is {edge} longer than in the pattern: about {count} more to pick up, at the [gauge] of the front.',
  'note: neckband loses':
    'The neck edge of the front is {edge} shorter than in the pattern: about {count} fewer to pick up, at the [gauge] of the front.',
  'note: shoulders gain': 'Each shoulder has {count} more than in the pattern. Give the back as many.',
  'note: shoulders lose': 'Each shoulder has {count} fewer than in the pattern. Take as many from the back.',
  'cannot: no shoulders left': 'A neck of {neck} leaves no shoulders on {across}.',
  'cannot: neck not symmetrical':
    'The middle that is [bound off] and the neck must both be even, or both odd.',
  'cannot: shaping exceeds the neck': 'The shaping takes {taken}, and the neck has {neck}.',
  'cannot: neck too shallow': 'The shaping needs {needed}, and so shallow a neck has {available}.',
  'way: a third of the stitches': 'A neck over a third of the stitches, {width} wide and {depth} deep.',
  'way: nearest centre': 'A middle of one stitch more or less.',
  'way: no steps': 'Without steps beside the middle, {width} wide and {depth} deep.',
  'way: usual shaping': 'The usual shaping, {width} wide and {depth} deep.',
  'way: wider centre': 'More stitches [bound off] in the middle.',
  'way: deeper neck': 'A deeper neck, {depth}.',
  'way: narrower neck': 'A narrower neck, {width}.',

  'summary: armhole': 'Armholes of another depth, with the top of the sleeve worked out to fit them.',
  'where: armhole': 'The armhole of the back',
  'where: armhole of the front': 'The armhole of the front',
  'where: straight armhole': 'The armhole, straight up',
  'where: sleeve cap': 'The sleeve cap',
  'where: sleeve top to the armhole': 'The top of the sleeve',
  'pattern: armhole': 'its armhole is {depth} deep; at your [gauge] that is {rows}.',
  'do: row 1 is the first bind-off': 'Row 1 is the right-side row that begins the armhole.',
  'do: one stitch more in front':
    'Your body has an odd number of stitches, so that {front} fall to the front. Work two of them together in its first row, near the middle: then it has {back}, like the back.',
  'do: like the back': 'Shape the armhole like that of the back.',
  'do: front neck begins above the underarm': 'The front neck begins {rows} above the first [bind-off].',
  'do: front neck begins above the marker': 'The front neck begins {rows} above the markers.',
  'do: neck is a V': 'The neck is a V. Its decreases are spread from the point to the shoulder.',
  'do: neck edge at the right':
    'The armhole is shaped here too, in the same rows. The right edge, where right-side rows begin, is the neck edge. The left one is the armhole edge.',
  'do: neck edge at the left':
    'The armhole is shaped here too, in the same rows. The left edge, where right-side rows end, is the neck edge. The right one is the armhole edge.',
  'do: mark the underarm':
    'Hang a marker at each edge where the armhole begins. Work {rows} ({height}) straight up from there to the shoulder.',
  'do: cap for another upper arm':
    'Your upper arm has {count} {which} than the pattern. So the cap is another one: it fits the armhole of the pattern.',
  'note: armhole chapter fits the cap':
    'Where the sleeve is set in, the chapter on armholes works the cap out for your count.',
  'do: cap begins as the armhole': 'Begin the cap with the same [bind-offs] as the armhole.',
  'do: sleeve top has': 'End the sleeve with {top}: {width} all along the armhole.',
  'note: sleeve top without edge stitches':
    'Edge stitches are not counted in the top. A sleeve with a seam has one more at each edge for it.',
  'do: shorten the sleeve by the overhang':
    'The shoulder hangs {overhang} over the arm. Make the sleeve shorter than the arm by that.',
  'do: lengthen the sleeve to the shoulder':
    'The shoulder ends {short} before the arm begins. Make the sleeve longer than the arm by that.',
  'check: armhole depth': 'straight up from the first [bind-off] to the shoulder it is {depth}.',
  'check: armhole depth from the markers': 'straight up from the markers to the shoulder it is {depth}.',
  'check: cap edge':
    'a string laid along the whole edge of the cap is {edge} long. Along both armhole edges it is {wanted}.',
  'check: sleeve top': 'the top of the sleeve is {width} wide.',
  'note: shoulders come later': 'Shoulders and front neck come {rows} later than in the pattern.',
  'note: shoulders come earlier': 'Shoulders and front neck come {rows} earlier than in the pattern.',
  'note: shaping is usual':
    'The armhole is shaped in the usual way: your [bind-off], then a decrease at each edge on right-side rows. Does your pattern shape it otherwise? Then the cap still fits this armhole, not that of the pattern.',
  'note: cap meets the shoulder seam':
    'The shoulder seam meets the cap {shoulder} from the middle of its top, towards the back.',
  'note: cap meets the shoulder seam at its middle':
    'The shoulder seam meets the middle of the top of the cap.',
  'note: cap eased in': 'The cap is {by} longer than the armhole. Ease that in as you sew.',
  'note: cap stretched': 'The cap is {by} shorter than the armhole. It stretches by that as you sew.',
  'cannot: armhole of the pattern too long':
    'By these figures the last armhole decrease lies in row {last}, and the armhole has {rows}.',
  'cannot: odd loss': '{loss} cannot be lost alike at both sides.',
  'cannot: cross back wider':
    'The back above the armhole has {by} more than below it, and an armhole only narrows.',
  'cannot: bind-offs exceed the loss':
    'The [bind-offs] take {bound} at each side, and only {loss} are to be lost there.',
  'cannot: armhole shaping needs more rows':
    'The shaping needs {needed}, and only {available} are there for it.',
  'cannot: nothing left for a cap': 'After the [bind-offs] {left} remain, and a cap needs {needed} at least.',
  'cannot: top of the wrong parity': 'Upper arm and top must both be even, or both odd.',
  'cannot: armhole too shallow for a cap':
    'Even the flattest cap has more rows than the {rows} of the armhole.',
  'cannot: armhole edge too short':
    'The armhole edges measure {wanted}, and even the flattest cap has an edge of {shortest}: the sleeve is too wide for them.',
  'cannot: armhole edge too long':
    'The armhole edges measure {wanted}, and even a cap as tall as the armhole reaches {longest}: the sleeve is too narrow for them.',
  'cannot: no whole rows agree':
    'The armhole edges measure {wanted}. No whole number of rows comes near enough: the nearest cap has {nearest}.',
  'cannot: armhole narrower than the arm':
    'A sleeve top along this armhole is {top} wide, and the arm needs {arm}.',
  'cannot: neck begins below the underarm':
    'The front neck has {neck}, and the armhole only {armhole}: it would begin below the underarm.',
  'way: nearest cross back': 'With {crossBack} across.',
  'way: straight armhole': 'Straight up, without shaping.',
  'way: bind off less': 'Fewer stitches [bound off].',
  'way: bind off more': 'More stitches [bound off] at the underarm.',
  'way: shape higher': 'Shaping that goes on higher up.',
  'way: deeper armhole': 'A deeper armhole of {depth}.',
  'way: wider cross back': 'A wider back of {crossBack}.',
  'way: nearest top': 'With {top} at the top.',
  'way: narrower upper arm': 'A narrower upper arm of {upperArm} ({armWidth}).',
  'way: wider upper arm': 'A wider upper arm of {upperArm} ({armWidth}).',
  'way: armhole deeper by': 'An armhole deeper by {by}, on back and front.',
  'way: ease the cap in': 'The cap as it is, with {by} eased in when it is sewn.',

  'summary: raglan': 'Raglan lines over a depth of {depth}.',
  'where: raglan lines': 'The raglan lines',
  'where: raglan neck': 'The neck that remains',
  'do: neck as the counts give it': 'The neck has {stitches}, {around} around.',
  'check: yoke depth': 'straight up from the underarm to the neck it is {depth}.',
  'check: neck around': 'it measures {around} around, before the neckband.',
  'note: raglan neck as wanted': 'That is the neck you want, as nearly as stitches allow.',
  'note: raglan neck too wide': 'You want {wanted}: it is {off} too wide. The counts below come nearer.',
  'note: raglan neck too narrow': 'You want {wanted}: it is {off} too narrow. The counts below come nearer.',
  'note: parts at the same time':
    'Back, front and sleeves lie on one needle, or are knitted one by one over the same [rows].',
  'note: raglan seams narrow the neck':
    'The seams take a stitch at each edge of each part. The neck comes out narrower by them.',
  'cannot: part does not divide': '{part}: a change of {change} cannot be shared by two edges.',
  'cannot: part has too few rows':
    '{part}: it needs {needed#} shaping [rows], and only {available#} may carry them.',
  'cannot: neck of the part is wider': '{part}: the neck has {by} more than the underarm.',
  'cannot: neck of the part is too small': '{part}: {least} must remain at the neck.',
  'way: neck as wanted': 'Other counts at the neck, {around} around.',
  'way: nearest neck counts': 'The nearest counts that work, a neck {around} around.',
  'way: every row': 'Shaping on wrong-side rows too, a neck {around} around.',
  'way: deeper yoke': 'A deeper yoke of {depth}.',
  'way: neck counts within reach': 'The counts that can be reached, a neck {around} around.',

  'summary: yoke': 'A round yoke {depth} deep.',
  'where: yoke round': 'The yoke, shaping round {nth#}',
  'where: yoke': 'The yoke',
  'note: three rounds have a source':
    'Three rounds, at half, at three quarters and at the top of the yoke: a way that is long in use.',
  'note: later three rounds have a source':
    'Three rounds, at half, at three quarters and at the top of the yoke. Each takes about as many stitches: a later way.',
  'note: rule of thumb for the yoke':
    'By a rule of thumb such a yoke has {neck} at the neck and is {depth} deep. Your own measures come first.',
  'note: neckline of the yoke':
    'A round yoke is as high behind as in front. Short rows at the back raise it.',
  'cannot: yoke rounds and counts uneven': 'You named {rounds#} shaping rounds and {counts#} counts.',
  'cannot: yoke rounds out of order':
    'Shaping round {nth#} of the pattern does not follow on from what stands before it, or lies outside the yoke.',
  'cannot: yoke rounds end elsewhere':
    'After its last shaping round the pattern has {last}, and the yoke ends with {end}.',
  'cannot: yoke neck not smaller': 'The neck has {neck} and the underarm {underarm}: the yoke must narrow.',
  'cannot: yoke count no multiple': '{count} at one end are no multiple of {multiple}.',
  'cannot: repeat too wide':
    'A repeat of {multiple} is too wide: no multiple of it lies between two shaping rounds.',
  'cannot: yoke too shallow': 'A yoke of {rows} has two shaping rounds in one; it needs {needed}.',
  'cannot: round too full': 'Round {round#} has room for {most#} changes, and {asked#} are asked for.',
  'way: usual neck': 'A usual neck of {neck}, {around} around.',
  'way: nearest yoke counts': 'From {underarm} to {neck}.',
  'way: without the repeat': 'Without regard to the repeat.',
  'way: other number of rounds': 'With another number of shaping rounds: {rounds#}.',
};
