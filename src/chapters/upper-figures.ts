/** Figures above the underarm, and of the body's edges: from the sample sweater, or as the knitter reads them out. */
import type { Counted, PatternSize } from '../fit/pattern.ts';
import { piecesAround } from '../fit/pattern.ts';
import { type Cm, type Stitches, stitches } from '../fit/units.ts';
import type { Construction } from '../fit/words.ts';
import { type Made, madeOf, sampleSize } from './figures.ts';
import { type Ledger, takeChoice, takeLength, takeStitches } from './ledger.ts';

/** By the choices of the question 'checking_joined'. */
export const JOINED: Readonly<Record<string, Construction>> = {
  set_in: 'set-in',
  drop: 'drop shoulder',
  raglan: 'raglan',
  yoke: 'round yoke',
};

/** How sleeves and body meet; undefined where it was not asked. */
export function constructionOf(book: Ledger): Construction | undefined {
  const sample = sampleSize(book);
  if (sample !== undefined) return sample.pattern.construction;
  return JOINED[takeChoice(book, 'checking_joined') ?? ''];
}

/** How the body is knitted. */
export function bodyMade(book: Ledger): Made | undefined {
  const sample = sampleSize(book);
  if (sample === undefined) return madeOf(takeChoice(book, 'body_made'));
  return { worked: sample.pattern.body, direction: sample.pattern.direction };
}

/** The sample's count in the size that is followed; else the answer to the question. */
export function countOf(book: Ledger, question: string, counted: Counted): Stitches | undefined {
  const sample = sampleSize(book);
  return sample === undefined ? takeStitches(book, question) : sample.size.counts[counted];
}

/** The sample's length in the size that is followed; else the answer to the question. */
export function lengthOf(
  book: Ledger,
  question: string,
  of: (size: PatternSize) => Cm | undefined,
): Cm | undefined {
  const sample = sampleSize(book);
  return sample === undefined ? takeLength(book, question) : of(sample.size);
}

/** Stitches of the back at the underarm, edge stitches included. */
export function backOf(book: Ledger): Stitches | undefined {
  const sample = sampleSize(book);
  if (sample === undefined) return takeStitches(book, 'p_back') ?? halfOfBust(book);
  const { bust } = sample.size.counts;
  return bust === undefined ? undefined : stitches(piecesAround(sample.pattern) === 1 ? bust / 2 : bust);
}

/** Where the body's count was asked for, the back is half of it in the round; an odd stitch goes to the front. */
function halfOfBust(book: Ledger): Stitches | undefined {
  const bust = takeStitches(book, 'p_bust');
  if (bust === undefined) return undefined;
  return bodyMade(book)?.worked === 'flat' ? bust : stitches(Math.floor(bust / 2));
}

/** Whether a body in the round was asked for and has an odd count: an odd stitch goes to the front. */
export function oddBody(book: Ledger): boolean {
  if (sampleSize(book) !== undefined || bodyMade(book)?.worked !== 'round') return false;
  return (takeStitches(book, 'p_bust') ?? 0) % 2 === 1;
}

/** Stitches bound off at each underarm. */
export function boundOffOf(book: Ledger): Stitches | undefined {
  const sample = sampleSize(book);
  return sample === undefined ? takeStitches(book, 'p_bind_off') : sample.size.armhole?.boundOff;
}

/** All stitches of the neck, or of the back alone in pieces. */
export function neckNeedle(book: Ledger, construction: 'raglan' | 'round yoke'): Stitches | undefined {
  const asked = takeStitches(book, 'neck_needle');
  if (asked !== undefined || construction === 'round yoke') return asked ?? takeStitches(book, 'p_yoke_neck');
  const [back, front] = [takeStitches(book, 'p_back_neck'), takeStitches(book, 'p_front_neck')];
  const sleeve = takeStitches(book, 'p_sleeve_neck');
  if (back === undefined || front === undefined || sleeve === undefined) return undefined;
  return bodyMade(book)?.worked === 'flat' ? back : stitches(back + front + 2 * sleeve);
}
