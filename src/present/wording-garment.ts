/** The wording of the sentences about changes that meet in one garment. */
import type { GARMENT_PHRASES } from '../fit/phrases-garment.ts';

export const GARMENT_WORDING: Readonly<Record<(typeof GARMENT_PHRASES)[number], string>> = {
  'where: short rows that cannot lie here': 'Short rows that find no place here',
  'where: on from the short rows': 'On from the short rows',
  'where: the yoke piece': 'The yoke',
  'where: the neck piece': 'The neck',
  'where: the shoulders piece': 'The shoulders',
  'where: the front piece': 'The front',
  'note: darts within the body':
    'These [rows] are those of the body, which come next. Work both at the same time. The counts of the body leave out the stitches that the darts add.',
  'note: slope deepens the neck':
    'The slope of the shoulder deepens the neck once more. Both together give the depth you want.',
  'note: neck begins within the armhole':
    'The front neck begins {rows} above the first [bind-off], and the armhole shapes up to row {last#}. There both are shaped in the same rows. A shallower neck begins above it.',
  'note: told from the underarm up':
    'This is told from the underarm up. From the neck down, read its rows from the last to the first: increase where it decreases, and cast on where stitches are [bound off].',
  'note: odd body under a raglan':
    'The body has an odd number of stitches, and the front is counted here like the back. Work two stitches of the front together, near its middle, in the last round before the yoke.',
  'note: odd body below a raglan':
    'The body has an odd number of stitches, and the front is counted here like the back. Take one stitch more at one underarm.',
  'note: sleeves changed, counted in':
    'Your sleeve differs from the pattern by {count} at the upper arm. That is counted in here.',
  'note: shoulders follow the neck':
    'The neck that was shaped anew leaves {shoulder} for each shoulder, on the front and on the back.',
  'cannot: short rows in the edging': 'They would begin in the edging, or beyond the end of the body.',
  'cannot: darts meet': 'Darts that take in so much would meet before the waist is reached.',
  'instead: waist at the sides': 'Shape it at the sides. The waist then measures {width} all round.',
  'instead: waist in darts of both':
    'Shape it in darts of front and back. The waist then measures {width} all round.',
  'instead: wider waist in these lines': 'Keep to these darts for a waist of {width} all round, or wider.',
  'note: four dart lines':
    'Before this part hang four markers for the dart lines: on front and back, {in} in from each side marker.',
  'note: dart lines of a piece':
    'Before this part hang two markers for the dart lines, {in} in from each seam. The edge stitch is not counted.',
  'note: dart lines of the back':
    'Before this part hang two markers on the back for the dart lines, {in} in from each side marker. The front is knitted straight.',
  'note: waist of back and front':
    'The front is {front} wide in the middle of these rows. Together they measure {width} all round.',
  'note: front without darts':
    'The front has no darts. It has {rows} in all, as many as the back, so that the sides can be sewn.',
  'cannot: rows all shape': 'The [rows] beside them are too few for the shaping that lies there.',
  'cannot: darts in rows that shape':
    'Darts that run up and down would begin in the edging, or where the sides cannot be shaped as planned.',
  'cannot: slope takes the neck': 'The slope of the shoulders, {drop}, takes up the whole depth of the neck.',
  'cannot: a yoke has no shoulders': 'A raglan or a round yoke has no shoulders to slope.',
  'cannot: front neck from the neck down':
    'A front neck is shaped here from the hem up, and your body is knitted from the neck down.',
  'cannot: raise has no rows':
    'The short rows need plain [rows] below the shoulders, and the armhole is shaped up to there.',
  'cannot: neck in the underarm':
    'The front neck would begin in the rows that [bind off] at the underarm, or below them.',
  'instead: a shallower neck': 'Make the front neck at most {depth} deep, or the armholes deeper.',
  'note: cap told from the underarm up':
    'Your sleeve is knitted from the shoulder down, and its cap is told from the underarm up. Read its rows from the last to the first: increase where it decreases, and cast on where stitches are [bound off].',
  'instead: another place for the short rows':
    'Change one figure: the height of the bust, the waist, or the length of the body.',
  'instead: one of two shapings':
    'Take short rows for the bust. Or measure again from the waist up to the bust point: the darts lie between the two.',
  'instead: deeper neck or gentler slope': 'Make the neck deeper, or the slope of the shoulders gentler.',
  'instead: raise the back of the neck': 'Raise the back of the neck by short rows instead.',
  'instead: lower the neck by short rows':
    'Lower the front neck by short rows at the back: wish for a raised back of the neck.',
  'instead: raise in a deeper armhole': 'Make the armhole deeper, or leave the back of the neck as it is.',
};
