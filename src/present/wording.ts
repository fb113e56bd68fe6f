/** The wording of every phrase. Gaps in braces take a quantity with its word; {name#} takes the number alone. */

import type { PhraseName } from '../fit/phrases.ts';
import type { Phrase } from '../fit/plan.ts';
import { formatNumber, formatQuantity, type Reader } from './quantity.ts';
import { type Dialect, inDialect } from './terms.ts';
import { FINISHING_WORDING } from './wording-finishing.ts';
import { GARMENT_WORDING } from './wording-garment.ts';
import { PATTERN_WORDING } from './wording-pattern.ts';
import { RECHECK_WORDING } from './wording-recheck.ts';
import { TOP_WORDING } from './wording-tops.ts';
import { WEDGE_WORDING } from './wording-wedges.ts';

/** Every sentence of a plan, by its name. */
export const WORDING: Readonly<Record<PhraseName, string>> = {
  ...WEDGE_WORDING,
  ...TOP_WORDING,
  ...RECHECK_WORDING,
  ...PATTERN_WORDING,
  ...FINISHING_WORDING,
  ...GARMENT_WORDING,
  'summary: gauge': 'Planned for your [gauge] of {stitches} and {rows}.',
  'summary: measurements': 'These are the measurements, with tables standing in where you did not know.',
  'summary: ease': 'What each fit measures on a bust of {bust}.',
  'summary: size': 'Follow size {size}.',
  'summary: size and bust':
    'Follow size {size}: at your [gauge] it measures {bust} around the bust, and {wanted} is wanted.',
  'summary: sleeve': 'Your sleeve, with its shaping spaced over your length.',
  'summary: length': 'Your body, at your length.',
  'summary: waist': 'Your body, drawn in at the waist.',
  'summary: hangs on stitches':
    'Most unsure is the {name}, give or take {error}: it hangs on your stitch [gauge]. Count stitches over a wider stretch, or at more places, to be surer.',
  'summary: hangs on rows':
    'Most unsure is the {name}, give or take {error}: it hangs on your row [gauge]. Count rows over a taller stretch, or at more places, to be surer.',
  'summary: spacing': 'The shaping, shared out over the rows.',
  'summary: stitches': 'The stitches for a width of {width}.',
  'where: the size': 'Which size to follow',
  'where: the fabric': 'Your fabric',
  'where: the body': 'The measurements',
  'where: the ease': 'Fits to choose from',
  'where: the body piece': 'Length and waist',
  'where: the sleeve piece': 'The sleeve',
  'where: cast-on and hem': 'Cast-on and hem',
  'where: hem to waist': 'From the hem to the waist',
  'where: at the waist': 'At the waist',
  'where: waist to underarm': 'From the waist to the underarm',
  'where: hem to underarm': 'From the hem to the underarm',
  'where: underarm to hem': 'From the underarm to the hem',
  'where: underarm to waist': 'From the underarm to the waist',
  'where: waist to hem': 'From the waist to the hem',
  'where: last edging': 'The last edging',
  'where: cast-on and cuff': 'Cast-on and cuff',
  'where: cuff to underarm': 'From the cuff to the underarm',
  'where: underarm to cuff': 'From the underarm to the cuff',
  'where: sleeve top': 'The top of the sleeve',
  'where: the section': 'The section to shape',
  'where: the width': 'How many stitches',
  'pattern: cast on': 'cast on {count}.',
  'pattern: straight on a count': 'knit straight on {count}.',
  'pattern: from a count to a count': 'go from {from} to {to}.',
  'pattern: straight for a length':
    'knit straight until the body measures {length}; at your [gauge] that is {rows}.',
  'pattern: upper arm': 'its sleeve top begins with {count}.',
  'pattern: gauge': 'its [gauge] is {stitches} and {rows}.',
  'do: your gauge': 'Your [gauge] is {stitches} and {rows}.',
  'do: gauge agrees': 'It agrees with the pattern as nearly as a swatch can tell.',
  'do: larger needle':
    'You have more stitches than the pattern in the same width: your fabric is tighter. Try a larger needle, or let the plan refigure the counts.',
  'do: smaller needle':
    'You have fewer stitches than the pattern in the same width: your fabric is looser. Try a smaller needle, or let the plan refigure the counts.',
  'do: what a width becomes':
    'With the counts of the pattern, {wide} of width comes out {becomes}. A length of {wide}, counted in rows, comes out {tall}.',
  'do: follow the size': 'Follow the counts of size {size} throughout, but for the changes below.',
  'do: stitches for the width': '{count}: at your [gauge] they measure {width}.',
  'do: more rows than the pattern': 'That is {rows} more than the pattern.',
  'do: fewer rows than the pattern': 'That is {rows} fewer than the pattern.',
  'do: as many rows as the pattern': 'That is as many as in the pattern.',
  'check: width': 'laid flat, the piece is {width} wide between its edge stitches.',
  'check: width of both': 'front and back together measure {width} all round.',
  'check: width around': 'it measures {width} all round.',
  'check: it measures': 'it measures {width}.',
  'check: length so far': 'this part is {length} long.',
  'check: length in all': 'it is {length} long in all, edging included.',
  'note: nearest counts':
    'The counts that fit are {below} ({belowWidth}) and {above} ({aboveWidth}); the nearer one is used.',
  'note: count moved for shaping':
    'The count differs from the pattern so that every shaping [row] can change {change}.',
  'note: cap takes the difference':
    'Your upper arm has {count} {which} than the pattern. Spread them over the sleeve top: the armhole edge that they meet is unchanged.',
  'note: pieces alike': 'Knit the front to match the back here.',
  'note: cannot shape in these rows':
    'This cannot be shaped as asked: it needs {needed#} shaping [rows], and only {room#} [rows] here may carry them. Choose one of these instead:',
  'note: stitches do not divide':
    'This cannot be shaped as asked: {change} cannot be shared out by {perRow} a shaping [row]. Choose one of these instead:',
  'note: way out, more stitches a row':
    'Change {change} on each shaping [row]: {times#} of them, ending with {end}.',
  'note: way out, wrong side too': 'Shape on wrong-side rows too: {times#} shaping rows, ending with {end}.',
  'note: way out, longer': 'Make this section {rows} long: {times#} shaping [rows], ending with {end}.',
  'note: way out, count within reach': 'Stop at {end} ({width}): {times#} shaping [rows].',
  'note: way out, count alone': 'Stop at {end}: {times#} shaping [rows].',
  'note: row 1 is a right-side row':
    'Row 1 is the first row of this section, with the right side facing you. So every shaping row is a right-side row.',
  'note: even rows are wrong-side rows':
    'Row 1 is the first row of this section, with the right side facing you. So rows with an even number are wrong-side rows.',
  'note: plain at the waist is common practice':
    'A short plain stretch at the waist is common practice: it lets the fabric turn without a kink.',
  'note: hand must pass': 'Check that your hand passes through before you go on.',
  'note: how sure':
    '{hundred} will measure between {low} and {high}, in about nineteen of twenty cases. A longer count at more places makes this surer.',
  'note: wash the swatch':
    'Wash and dry the swatch as you will the sweater, and count again before you cast on.',
  'note: swatch knitted otherwise':
    'The swatch was knitted another way than this piece (back and forth, or in the round). Many hands purl looser than they knit: swatch the same way to be sure.',
  'note: measure again': 'Measure twice, on another day, before you cast on for a close fit.',
  'note: ease has a source':
    "The ease at the bust follows the yarn industry's standard (Source: Craft Yarn Council's www.YarnStandards.com).",
  'note: another size ranks first': 'Size {size} would need less changing.',
  'note: beyond the largest':
    'Your target lies {by} beyond the largest size ({size}). Add {stitches} all round, or knit it at a [gauge] of {gauge}.',
  'note: below the smallest':
    'Your target lies {by} below the smallest size ({size}). Leave out {stitches} all round, or knit it at a [gauge] of {gauge}.',
  'note: more for the front':
    'The size is chosen for a bust of {bust}, so that the shoulders fit. The front needs {extra} more in width: bust darts or extra front stitches give it.',
  'note: price of a size':
    'A lower price means less to change: shoulders, armhole and neck are hard to change, bust and upper arm are work, lengths, waist and hip are easy. The prices are our own.',
  'cannot: waist outside the body':
    'The waist would lie {waistAt} above the lower edge of a body of {length}: there is no room to shape between the edging ({edging}), the waist and the underarm.',
  'cannot: edging longer than the piece': 'A length of {length} leaves nothing above an edging of {edging}.',
  'cannot: too few rows to shape in':
    'This cannot be shaped as asked: it needs {needed#} shaping [rows], and only {room#} [rows] here may carry them.',
  'cannot: stitches do not divide':
    'This cannot be shaped as asked: {change} cannot be shared out by {perRow} a shaping [row].',
  'cannot: waits': '{what}',
  'cannot: figures missing': 'Some figures are missing, and nothing sound can stand in for them.',
  'instead: change the lengths': 'Measure both lengths once more, or make the piece longer.',
  'instead: answer the open questions': 'Answer the questions that were left open, and ask again.',
  'care: hands': 'Rest hands, wrists and shoulders often on long work. If pain lasts, see a doctor.',
  'care: small children':
    "For children: no cords or ties at the neck, and buttons sewn on firmly. The safety rules for children's clothing of your own country come first.",
  'care: cot': 'Nothing knitted belongs loose in a cot with a sleeping baby.',
  'care: skin': 'Wool and other fibres can irritate sensitive skin. Try the swatch against the skin first.',
};

export interface Voice extends Reader {
  readonly dialect: Dialect;
}

export function wordPhrase({ say, with: gaps }: Phrase, voice: Voice): string {
  const filled = WORDING[say].replace(/\{(\w+)(#?)\}/g, (_, name: string, bare: string) => {
    const gap = gaps[name];
    if (gap === undefined) throw new Error(`the phrase '${say}' needs '${name}'`);
    if (typeof gap === 'string') return gap;
    return bare === '#' ? formatNumber(gap, voice) : formatQuantity(gap, voice);
  });
  const said = inDialect(filled, voice.dialect, voice.worked);
  return say.startsWith('do:') || say.startsWith('note:') || say.startsWith('where:')
    ? capitalise(said)
    : said;
}

function capitalise(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
