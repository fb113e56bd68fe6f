/** Reads by how much something is to be longer or shorter, wider or narrower: '+2 in', '5 cm longer', '2" shorter'. */
import type { LengthUnit } from '../../fit/units.ts';
import { type Heard, heard, type Option, which } from './heard.ts';
import { echoMagnitude, readSigned } from './signed.ts';
import type { Length } from './tape.ts';

export interface DifferenceAsked {
  readonly unit: LengthUnit | undefined;
  /** The words for the two directions, as the question has them: 'longer' and 'shorter'. */
  readonly more: string;
  readonly less: string;
}

/** A positive length is more, a negative one less; without sign or direction it is asked back. */
export function readDifference(text: string, asked: DifferenceAsked): Heard<Length> {
  const { unit, more, less } = asked;
  const echo = (length: Length): string => {
    if (length.cm === 0) return `no change (0 ${unit ?? length.typed.unit})`;
    return `${echoMagnitude(length, unit)} ${length.cm > 0 ? more : less}`;
  };
  const read = readSigned(text, {
    expected: {
      what: `a length with ‘${more}’ or ‘${less}’`,
      example: `${unit === 'in' ? '2 in' : '5 cm'} ${more}`,
    },
    unit,
    unsigned: 'ask',
    echo: ({ low }) => echo(low),
  });
  if (read.kind === 'refused') return read;
  const ranges = read.kind === 'which' ? read.options.map((o) => o.value) : [read.value];
  const option = (value: Length): Option<Length> => ({ value, echo: echo(value) });
  const options = ranges.flatMap(({ low, high }) => (low.cm === high.cm ? [low] : [low, high])).map(option);
  const [only, another] = options;
  if (only === undefined || another !== undefined) {
    return which(read.kind === 'which' ? read.question : 'I read two lengths. Which one is it?', options);
  }
  return read.kind === 'ask back' ? { ...read, value: only.value } : heard(only.value, only.echo);
}
