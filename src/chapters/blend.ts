/** The chapter that joins sizes: shoulders, bust and hips from up to three. */
import { type BlendAsk, blend } from '../fit/blend.ts';
import { blendCannot, blendPart } from '../fit/blend-steps.ts';
import type { Pattern } from '../fit/pattern.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { stitches } from '../fit/units.ts';
import type { Sheet } from '../flow/calculations.ts';
import { edgeOf, samplePattern } from './figures.ts';
import { type Ledger, ledger, take, takeLength, takeStitches } from './ledger.ts';
import { missing, outcomeOf } from './make-plan.ts';
import { patternOf } from './pattern-of.ts';
import { printedRows, type RowsAsked } from './printed-rows.ts';
import { SUGGESTIONS } from './suggestions.ts';

const ROWS: RowsAsked = {
  counts: [
    ['checking_bust', 'bust'],
    ['blend_hem', 'body cast-on'],
    ['checking_cross_back', 'cross back'],
  ],
  lengths: [['sizes_bust', 'bust']],
};

export function blendResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const label = (question: string) => take(book, question, 'size')?.label;
  const [shoulders, bust, hip] = [label('blend_shoulders'), label('blend_bust'), label('blend_hip')];
  const pattern = samplePattern(book) ?? ownPattern(book, { shoulders, bust });
  if (shoulders === undefined || bust === undefined || hip === undefined || pattern === undefined)
    return missing(book);
  const ask: BlendAsk = { shoulders, bust, hip, sleeves: shoulders };
  const blended = blend(pattern, ask);
  return outcomeOf(
    book,
    blended.kind === 'blended' ? blendPart(pattern, ask, blended) : blendCannot(blended),
    [phrase('summary: sizes joined', { shoulders, bust, hip })],
  );
}

/** Lengths and bind-offs are asked of the two sizes that they are taken from, and no other. */
function ownPattern(
  book: Ledger,
  followed: { readonly shoulders: string | undefined; readonly bust: string | undefined },
): Pattern | undefined {
  const base = patternOf(book);
  const [length, armhole] = [takeLength(book, 'blend_length'), takeLength(book, 'blend_armhole')];
  const off = takeStitches(book, 'blend_bound_off');
  if (base === undefined || length === undefined || armhole === undefined || off === undefined)
    return undefined;
  const edge = edgeOf(book, { worked: base.body });
  return {
    ...base,
    edge: { body: edge, sleeves: edge },
    sizes: printedRows(book, ROWS).sizes.map((size) => ({
      ...size,
      finished: {
        ...size.finished,
        ...(size.label === followed.bust ? { 'body length': length } : {}),
        ...(size.label === followed.shoulders ? { 'armhole depth': armhole } : {}),
      },
      ...(size.label === followed.bust ? { armhole: { boundOff: off, decreased: stitches(0) } } : {}),
    })),
  };
}
