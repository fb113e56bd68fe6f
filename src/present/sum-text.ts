/** The sums that a knitter works herself, in words: the question, a hint, what became of her figure, and the end of it. */
import type { Mistake } from '../fit/mistake.ts';
import type { Sum } from '../fit/sum.ts';
import type { Slip, Tally, Tried } from '../fit/tried.ts';
import type { Quantity, QuantityUnit } from '../fit/working.ts';
import { SLIPS, SLIPS_IN_SHORT } from './slip-words.ts';
import { type Dialect, namesIn } from './terms.ts';
import { inRounds, namedQuantity, SIGNS, wordRounding, wordWorking } from './workings-text.ts';

/** 'Stitches at the waist: what do you get? You have 88 cm (width at the waist) and 2.2 stitches per cm. …' */
export function sumQuestion(sum: Sum, dialect: Dialect): string {
  return namesIn(wordQuestion(sum), dialect);
}

function wordQuestion({ line, unit, worked }: Sum): string {
  const reader = { unit, worked, fine: true } as const;
  const given = Object.values(line.given).map((q) => namedQuantity(q, reader));
  const unitOf = ASKED_IN[line.result.unit].replace('cm', unit);
  const rounding = line.rounding === undefined ? [] : [`Give it ${wordRounding(line.rounding)}.`];
  return [
    `${capital(inRounds(line.label, reader))}${unitOf === '' ? '' : `, in ${unitOf}`}: what do you get?`,
    `You have ${listed([...new Set(given)])}.`,
    ...rounding,
  ].join(' ');
}

/** Units that the name of a sum does not tell; '' where they are plain. */
const ASKED_IN: Readonly<Record<QuantityUnit, string>> = {
  cm: 'cm',
  'cm²': 'square cm',
  g: 'g',
  m: 'm',
  stitches: '',
  rows: '',
  'stitches/cm': 'stitches per cm',
  'rows/cm': 'rows per cm',
  'g/cm²': 'g per square cm',
  '/cm': 'a figure per cm',
  times: '',
  ratio: '',
};

function listed(all: readonly string[]): string {
  const last = all.at(-1) ?? '';
  return all.length < 2 ? last : `${all.slice(0, -1).join(', ')} and ${last}`;
}

/** How the sum is put together, in names alone. */
function sumHint(sum: Sum): string {
  return `${capital(inRounds(sum.line.label, sum))} = ${inNames(sum.line.formula, sum)}.`;
}

function inNames(formula: string, sum: Sum): string {
  return formula.replace(/[A-Za-z][A-Za-z0-9]*|[-+*/()]/g, (token) => {
    const q = sum.line.given[token];
    return q === undefined ? (SIGNS[token] ?? token) : nameOf(q, sum);
  });
}

/** What is counted over a length is called in full. */
function nameOf({ name, unit: of }: Quantity, { unit, worked }: Sum): string {
  if (of === 'stitches/cm' && name === 'stitches') return `stitches per ${unit}`;
  if (of === 'rows/cm' && name === 'rows') return `${worked === 'round' ? 'rounds' : 'rows'} per ${unit}`;
  return inRounds(name, { worked });
}

/** The whole working, with its figure. */
function sumWorked({ line, unit, worked }: Sum): string {
  return `${wordWorking(line, { unit, worked, dialect: 'us' })}.`;
}

/** What is said about a sum. Until it is right, or she asks to be shown, its figure is in none of these sentences. */
export function sumSaid(sum: Sum, said: SaidOfSum, dialect: Dialect): string {
  return namesIn(wordSaid(sum, said), dialect);
}

type SaidOfSum = Tried | { readonly kind: 'hint' | 'worked' };

function wordSaid(sum: Sum, said: SaidOfSum): string {
  switch (said.kind) {
    case 'right':
      return `Right: ${sumWorked(sum)}`;
    case 'slip':
      return said.slips.map((slip) => wordSlip(slip, sum)).join(' Or else: ');
    case 'parted':
      return wordParted(said, sum);
    case 'hint':
      return sumHint(sum);
    case 'worked':
      return `This is how it goes: ${sumWorked(sum)}`;
    default:
      return said satisfies never;
  }
}

function wordSlip({ mistake, at, about }: Slip, sum: Sum): string {
  const q = Object.values(sum.line.given).find(({ name }) => name === about);
  const named = q === undefined ? (about ?? 'figure') : nameOf(q, sum);
  return `Yours parts from the workings at "${at}". ${SLIPS[mistake].replace('{about}', named)}`;
}

function wordParted({ from, begin }: Extract<Tried, { kind: 'parted' }>, sum: Sum): string {
  const first = `I get another figure. Compare "${from}" first.`;
  return begin === null ? first : `${first} Then begin with ${inNames(begin, sum)}.`;
}

export function wordTally({ atOnce, later, shown, passed, slips }: Tally): string {
  const done = atOnce + later + shown + passed;
  if (done === 0)
    return ['No sum is done yet. They are there whenever you like.', ...slipsSeen(slips)].join(' ');
  const parts = [
    `${atOnce} of ${done} right at once`,
    ...(later > 0 ? [`${later} after another try`] : []),
    ...(shown > 0 ? [`${shown} shown`] : []),
    ...(passed > 0 ? [`${passed} passed over`] : []),
  ];
  return [`${listed(parts)}.`, praise(atOnce + later, done), ...slipsSeen(slips)].join(' ');
}

function praise(right: number, done: number): string {
  if (right === done) return 'You can check any plan by hand now.';
  return right * 2 >= done ? 'That is well worked.' : 'Each sum gets easier with the next sweater.';
}

function slipsSeen(slips: readonly Mistake[]): string[] {
  const [first, second] = slips;
  if (first === undefined) return [];
  const kinds = [first, ...(second === undefined ? [] : [second])].map((slip) => SLIPS_IN_SHORT[slip]);
  return [`What to watch: ${listed(kinds)}.`];
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
