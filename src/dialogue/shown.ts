/** An answer as it is shown back, in the reader's unit. */
import type { Count } from '../fit/gauge.ts';
import { formatDecimal, formatLength, formatTape, type LengthUnit } from '../fit/units.ts';
import { GRAMS_PER_OUNCE, METRES_PER_YARD } from '../fit/yarn.ts';
import type { Answer, Value } from '../flow/answer.ts';
import type { Question } from '../flow/schema.ts';
import { wordNewCount } from './read/new-count.ts';

export function showAnswer(question: Question, answer: Answer, unit: LengthUnit): string {
  if (answer.given === 'unknown') return 'not known';
  if (answer.given === 'skipped') return 'left out';
  return showValue(question, answer.value, unit);
}

export function showValue(question: Question, value: Value, unit: LengthUnit): string {
  switch (value.kind) {
    case 'choice':
      return labelOf(question, value.choice);
    case 'choices':
      return value.choices.length === 0 ? 'none' : value.choices.map((c) => labelOf(question, c)).join(', ');
    case 'length':
    case 'ease':
      return formatLength(value.cm, unit);
    case 'stitches':
      return `${value.count} stitches`;
    case 'rows':
      return `${value.count} rows`;
    case 'stitch gauge':
      return showCount(value.stitches, 'stitches');
    case 'row gauge':
      return showCount(value.rows, 'rows');
    case 'gauge':
      return `${showCount(value.stitches, 'stitches')}, ${showCount(value.rows, 'rows')}`;
    case 'sizes':
      return `${value.lengths.map((l) => (l === null ? '–' : formatTape(l, unit))).join(', ')} ${unit}`;
    case 'size':
      return `size ${value.label}`;
    case 'new count':
      return wordNewCount(value);
    case 'multiple':
      return value.plus === 0
        ? `multiple of ${value.multiple}`
        : `multiple of ${value.multiple} + ${value.plus}`;
    case 'number':
      return String(value.count);
    case 'counts': {
      const counts = value.counts.map((c) => c ?? '–').join(', ');
      return question.one_size === true ? counts : `${counts} stitches`;
    }
    case 'shaping line':
      return value.text;
    case 'yarn length':
    case 'yarn weight':
      return showYarn(value);
    default:
      return value satisfies never;
  }
}

/** A gauge keeps the unit of the span that was counted. */
function showCount({ count, span, unit }: Count, what: string): string {
  return `${formatDecimal(count, 2)} ${what} over ${formatLength(span, unit)}`;
}

/** An amount of yarn in the unit in which it was typed. */
export function showYarn(value: Extract<Value, { kind: 'yarn length' | 'yarn weight' }>): string {
  const typed =
    value.kind === 'yarn length'
      ? value.metres / (value.typed === 'yd' ? METRES_PER_YARD : 1)
      : value.grams / (value.typed === 'oz' ? GRAMS_PER_OUNCE : 1);
  return `${formatDecimal(typed, 1)} ${value.typed}`;
}

function labelOf(question: Question, choice: string): string {
  return question.choices?.find((c) => c.id === choice)?.label ?? choice;
}
