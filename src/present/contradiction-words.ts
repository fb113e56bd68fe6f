/** A contradiction between a pattern's figures, in words. */
import type { ContradictionCode } from '../fit/contradiction.ts';
import type { Instruction } from '../fit/plan.ts';
import type { Quantity } from '../fit/working.ts';
import { formatNumber, formatQuantity } from './quantity.ts';
import { inDialect } from './terms.ts';
import type { Voice } from './wording.ts';

const WHAT: Readonly<Record<ContradictionCode, string>> = {
  'gauge out of bounds': 'No hand-knitted garment has such a [gauge].',
  'rows fewer than stitches':
    'The [gauge] has fewer rows than stitches in the same length, as plain knitting never has. Perhaps the two changed places.',
  'label twice': 'More than one size carries this label.',
  'sizes out of order': 'This figure falls from one size to the next.',
  'count and width disagree': 'At the printed [gauge] this count does not give this width.',
  'four inches for ten centimetres':
    'The count fits the same [gauge] over the other span: four inches and ten centimetres were taken as equal.',
  'inches for centimetres':
    'This looks like a figure in the other unit, inches for centimetres or the other way about.',
  'rows and length disagree': 'At the printed [gauge] these rows do not give this length.',
  'repeat not fitted': 'The count leaves part of a stitch repeat over.',
  'edge stitches left out': 'The count fits the stitch repeat only if the edge stitches are left out.',
  'edge stitches in the round': 'A body in the round has no edges, and so no edge stitches.',
  'odd change': 'Shaping on two sides changes an even number of stitches. This is an odd one.',
  'armhole does not add up': 'What is [bound off] and decreased at the armholes does not leave this count.',
  'shoulders do not add up': 'Two shoulders and the back neck do not make up the back above the armholes.',
  'sleeve narrows upward': 'The sleeve is narrower above than below.',
  'wider above the armhole': 'The back is wider above the armholes than below them.',
  'sleeve top and armhole disagree':
    'On a drop shoulder the top of the sleeve is as wide as both sides of the armhole.',
  'lengths out of order': 'The edging alone is as long as the whole piece.',
  'shaping out of reach': 'The rows of the sleeve have no room for so much shaping.',
  'shaping misses the count': 'The shaping does not lead from the one count to the other.',
};

type Noted = Extract<Instruction, { do: 'note contradiction' }>;

/** What is wrong, the figures as printed, and each figure that alone would put it right. */
export function wordContradiction({ code, figures, wouldAgree }: Noted, voice: Voice): string[] {
  const list = (all: readonly Quantity[]) => all.map((q) => named(q, voice)).join('; ');
  return [
    inDialect(WHAT[code], voice.dialect, voice.worked),
    `Printed: ${list(figures)}.`,
    ...(wouldAgree.length === 0
      ? []
      : [`${wouldAgree.length === 1 ? 'This' : 'Any one of these'} would agree: ${list(wouldAgree)}.`]),
  ];
}

/** 'bust stitches 220', 'finished bust 100 cm': the unit only where the name does not say it. */
function named(q: Quantity, voice: Voice): string {
  const said = q.unit === 'stitches' || q.unit === 'rows' ? q.name.includes(q.unit) : false;
  return `${q.name} ${said ? formatNumber(q, voice) : formatQuantity(q, voice)}`;
}
