/** Which of the knitter's figures a plan's finished measurements hang on most. */
import { type Finished, type Phrase, phrase } from './plan.ts';
import { quantity } from './working.ts';

/** Less than this either way is lost in any knitted fabric: a plan says nothing of it. In centimetres. */
const LEAST_ERROR = 0.25;

/** The most unsure of the finished measurements, and the gauge that makes it so; nothing where all are sure. */
export function hangsMostOn(finished: readonly Finished[]): Phrase[] {
  const unsure = finished
    .flatMap(({ name, range, hangsOn }) => {
      const error = range.high - range.expected;
      return hangsOn === null || error < LEAST_ERROR ? [] : [{ name, hangsOn, error }];
    })
    .sort((a, b) => b.error - a.error);
  const [most] = unsure;
  if (most === undefined) return [];
  const gaps = { name: most.name, error: quantity('two standard errors', most.error, 'cm') };
  return [
    phrase(most.hangsOn === 'stitch gauge' ? 'summary: hangs on stitches' : 'summary: hangs on rows', gaps),
  ];
}
