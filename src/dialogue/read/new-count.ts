/** Reads a count of stitches to come: itself ('94', 'to 94'), or by how many it changes ('+10', '8 fewer', 'dec 8'). */
import type { NewCount } from '../../flow/answer.ts';
import { counted, readStitches } from './count.ts';
import { askBack, type Heard, heard, type Option, refused, which } from './heard.ts';

const MORE = /^\s*[+＋]|\b(?:more|add|plus|gain|extra|increase|inc|m1)\b/iu;
const FEWER = /^\s*[-−–]|\b(?:fewer|less|lose|minus|decrease|dec)\b/iu;
const AFTER = /\b(?:to|after|in all|altogether)\b/iu;
const EXPECTED = { what: 'the new count, or by how many it changes', example: '+10' };

/** A bare number is the count itself, as the question asks for it. */
export function readNewCount(text: string): Heard<NewCount> {
  const [more, fewer] = [MORE.test(text), FEWER.test(text)];
  if (more && fewer) return refused('not understood', EXPECTED);
  const itself = AFTER.test(text) || !(more || fewer);
  const rest = [MORE, FEWER, AFTER].reduce((left, words) => left.replace(words, ' '), text);
  const read = readStitches(rest);
  const option = (count: number): Option<NewCount> => {
    const value: NewCount = itself ? { how: 'to', count } : { how: 'by', count: more ? count : -count };
    return { value, echo: wordNewCount(value) };
  };
  switch (read.kind) {
    case 'refused':
      return refused(read.reason, EXPECTED);
    case 'which':
      return which(
        read.question,
        read.options.map(({ value }) => option(value)),
      );
    case 'ask back':
      return askBack(read.why, option(read.value));
    case 'heard': {
      const { value, echo } = option(read.value);
      return heard(value, echo);
    }
    default:
      return read satisfies never;
  }
}

/** '94 stitches', '10 stitches more', '1 stitch fewer'. */
export function wordNewCount({ how, count }: NewCount): string {
  if (how === 'to') return counted(count, 'stitch');
  return `${counted(Math.abs(count), 'stitch')} ${count < 0 ? 'fewer' : 'more'}`;
}
