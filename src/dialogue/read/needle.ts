/** Reads a needle size, US, metric or old UK: '10 1/2 needles', '4 mm', '3er Nadeln', 'UK 8', 'US 6 from the US 7'. */
import { NEEDLES, type NeedleSize } from '../../fit/tables/needles.ts';
import { formatDecimal } from '../../fit/units.ts';
import { askBack, type Expected, type Heard, heard, type Option, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import type { NumberToken, Token } from './token.ts';
import { means } from './vocabulary.ts';

export interface NeedleTyped {
  readonly needle: NeedleSize;
  /** The size that it replaces, where one is named: 'US 6 from the US 7'. */
  readonly before: NeedleSize | undefined;
}

type System = 'US' | 'mm' | 'old UK';

interface Mention {
  readonly system: System | undefined;
  readonly number: NumberToken;
  readonly at: number;
}

/** The thinnest and thickest needles that are made, in millimetres, with some room. */
const THINNEST = 0.5;
const THICKEST = 40;

const EXPECTED: Expected = { what: 'a needle size with ‘US’ or ‘mm’', example: '4 mm' };
const NEEDLE_WORDS = new Set(
  'us usa american uk old canadian size sizes no nr # er mm from to down up went straight straights hook'.split(
    ' ',
  ),
);

export function readNeedle(text: string): Heard<NeedleTyped> {
  const tokens = listen(text, EXPECTED);
  if (isRefused(tokens)) return tokens;
  const mentions = tokens.flatMap((t, at): Mention[] =>
    t.is === 'number' ? [mentionAt(tokens, at, t)] : [],
  );
  const rest = tokens.filter((t) => t.is !== 'number' && !NEEDLE_WORDS.has(t.text) && t.text !== '/');
  const verdict = judgeRest(rest, ['needle', 'mm']);
  const [first, second, third] = mentions;
  if (first === undefined) return refused('no number', EXPECTED);
  if (tokens[first.at - 1]?.text === '-') return refused('negative', EXPECTED);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, EXPECTED);
  if (third !== undefined) return refused('several numbers', EXPECTED);
  const read = second === undefined ? single(first) : twoSizes(tokens, first, second);
  return verdict === 'extra words' && read.kind === 'heard' ? askBack('extra words', read) : read;
}

function mentionAt(tokens: readonly Token[], at: number, number: NumberToken): Mention {
  const [twoBefore, before, after, next] = [at - 2, at - 1, at + 1, at + 2].map((i) => tokens[i]?.text ?? '');
  const around = [
    before,
    after,
    ['size', 'no', '#', 'old'].includes(before ?? '') ? twoBefore : '',
    after === '(' ? next : '',
  ];
  if (means(after ?? '', 'mm') || after === 'er') return { system: 'mm', number, at };
  if (around.some((word) => word === 'us' || word === 'usa' || word === 'american'))
    return { system: 'US', number, at };
  if (around.some((word) => word === 'uk' || word === 'canadian')) return { system: 'old UK', number, at };
  // German and French needles are numbered in millimetres; a vulgar fraction is a US label.
  if (tokens.some((t) => /^(nadel|aiguille)/.test(t.text))) return { system: 'mm', number, at };
  return { system: number.fraction ? 'US' : undefined, number, at };
}

function single(mention: Mention): Heard<NeedleTyped> {
  const options = distinct(sizesOf(mention)).map((found) => optionOf(found));
  const [only, another] = options;
  if (only === undefined) return withoutLabel(mention);
  return another === undefined ? heard(only.value, only.echo) : which('Which size is that?', options);
}

/** Millimetres that no chart lists; or a label that is none, as '5½ (UK)', whose figure is a size in millimetres. */
function withoutLabel({ system, number }: Mention): Heard<NeedleTyped> {
  const mm = number.value;
  const listed = NEEDLES.find((n) => n.mm === mm);
  if (system === 'US' || mm < THINNEST || mm > THICKEST) return refused('unknown size', EXPECTED);
  const option = optionOf({ size: listed ?? { mm, us: undefined, ukOld: undefined }, system: 'mm' });
  if (listed !== undefined) return askBack('unit missing', option);
  return askBack('unlikely', option, `${option.echo} is not a common size. Is it right?`);
}

function distinct(found: readonly Found[]): readonly Found[] {
  return found.filter((f, i) => found.findIndex((other) => other.size.mm === f.size.mm) === i);
}

interface Found {
  readonly size: NeedleSize;
  readonly system: System;
}

/** Every size that the mention may be, in each system that it does not rule out. */
function sizesOf({ system, number }: Mention): readonly Found[] {
  // '00' is a size of its own; '07' is 7.
  const label = /^0+$/.test(number.text) ? number.text : `${number.value}`;
  const isLabelOnly = /^00+$/.test(number.text);
  const found = (of: System, sizes: readonly NeedleSize[]) =>
    system === undefined || system === of ? sizes.map((size) => ({ size, system: of })) : [];
  return [
    ...found(
      'US',
      NEEDLES.filter((n) => n.us === label),
    ),
    ...found(
      'mm',
      NEEDLES.filter((n) => !isLabelOnly && n.mm === number.value),
    ),
    ...found(
      'old UK',
      NEEDLES.filter((n) => n.ukOld === label),
    ),
  ];
}

/** A change of needle, or one size named in two systems. */
function twoSizes(tokens: readonly Token[], a: Mention, b: Mention): Heard<NeedleTyped> {
  const [first, second] = [sizesOf(a), sizesOf(b)];
  const between = tokens.slice(a.at + 1, b.at).map((t) => t.text);
  const leads = tokens.slice(0, a.at).some((t) => t.text === 'from');
  if (between.includes('from') || (leads && between.includes('to'))) {
    const [to, from] = between.includes('from') ? [first, second] : [second, first];
    return changed(to, from);
  }
  const same = first.find((f) => second.some((s) => s.size.mm === f.size.mm));
  if (same !== undefined && a.system !== b.system) {
    const { value, echo } = optionOf(same);
    return heard(value, echo);
  }
  const options = [...first, ...second].map((f) => optionOf(f));
  return options.length < 2 || a.system === undefined || b.system === undefined
    ? refused('several numbers', EXPECTED)
    : which('Those are two sizes. Which one is it?', options);
}

function changed(to: readonly Found[], from: readonly Found[]): Heard<NeedleTyped> {
  const options = to.flatMap((t) => from.filter((f) => f.system === t.system).map((f) => optionOf(t, f)));
  const [only, another] = options;
  if (only === undefined) return refused('unknown size', EXPECTED);
  return another === undefined ? heard(only.value, only.echo) : which('Which sizes are those?', options);
}

function optionOf(to: Found, from?: Found): Option<NeedleTyped> {
  const echo = from === undefined ? sizeText(to) : `${sizeText(to)} instead of ${sizeText(from)}`;
  return { value: { needle: to.size, before: from?.size }, echo };
}

/** '6.5 mm (US 10½)', '4 mm (old UK 8)'. */
function sizeText({ size, system }: Found): string {
  const mm = `${formatDecimal(size.mm, 2)} mm`;
  if (system === 'old UK') return `${mm} (old UK ${size.ukOld ?? ''})`;
  return size.us === undefined ? mm : `${mm} (US ${size.us.replace('.5', '½')})`;
}
