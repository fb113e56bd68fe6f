/** What must hold for any text at all, however unfriendly. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAges } from '../../../src/dialogue/read/ages.ts';
import { type Choice, readChoice, readChoices } from '../../../src/dialogue/read/choice.ts';
import { readCommand } from '../../../src/dialogue/read/command.ts';
import { readRows, readStitches } from '../../../src/dialogue/read/count.ts';
import { readDifference } from '../../../src/dialogue/read/difference.ts';
import { readEase } from '../../../src/dialogue/read/ease.ts';
import { readGauge } from '../../../src/dialogue/read/gauge.ts';
import type { Heard } from '../../../src/dialogue/read/heard.ts';
import { readLength } from '../../../src/dialogue/read/length.ts';
import { readMultiple } from '../../../src/dialogue/read/multiple.ts';
import { readNeedle } from '../../../src/dialogue/read/needle.ts';
import { readNumber } from '../../../src/dialogue/read/number.ts';
import { NUMBER_WORDS } from '../../../src/dialogue/read/number-words.ts';
import { plain } from '../../../src/dialogue/read/plain.ts';
import { readShaping } from '../../../src/dialogue/read/shaping.ts';
import { readLengthRow, readRowRow, readStitchRow } from '../../../src/dialogue/read/sizes.ts';
import { readYarn, readYarnLength } from '../../../src/dialogue/read/yarn.ts';
import { readYesNo } from '../../../src/dialogue/read/yes-no.ts';
import { LENGTH_UNITS, type LengthUnit } from '../../../src/fit/units.ts';

type Reader = (text: string, unit: LengthUnit | undefined) => Heard<unknown>;

const NUMERIC: Readonly<Record<string, Reader>> = {
  'a number': (text) => readNumber(text, { what: 'a number', example: '7', least: -1000, most: 1000 }),
  stitches: readStitches,
  rows: readRows,
  'a length': (text, unit) => readLength(text, { unit }),
  'a height': (text, unit) => readLength(text, { unit, measurement: 'height' }),
  ease: readEase,
  'a difference': (text, unit) => readDifference(text, { unit, more: 'longer', less: 'shorter' }),
  'a stitch gauge': (text, unit) => readGauge(text, { unit, asked: 'stitch' }),
  'a row gauge': (text, unit) => readGauge(text, { unit, asked: 'row' }),
  'a whole gauge': (text, unit) => readGauge(text, { unit, asked: 'both', over: { value: 10, unit: 'cm' } }),
  'a row of lengths': readLengthRow,
  'a row of stitches': readStitchRow,
  'a row of rows': readRowRow,
  ages: readAges,
  'a stitch multiple': readMultiple,
  'a needle size': readNeedle,
  yarn: readYarn,
  'a length of yarn': readYarnLength,
};

const CHOICES: readonly Choice[] = [
  { id: 'raglan', label: 'Raglan', hear: [] },
  { id: 'yoke', label: 'Round yoke', hear: ['circular yoke'] },
];

const READERS: Readonly<Record<string, Reader>> = {
  ...NUMERIC,
  shaping: readShaping,
  'yes or no': readYesNo,
  'a choice': (text) => readChoice(text, CHOICES),
  choices: (text) => readChoices(text, CHOICES),
};

/** Pieces of real answers, put together at random: closer to the readers' rules than random letters. */
const PIECES = [
  ...'0123456789.,/-–−+×x*()[]:;"\'″′½¾⅞⁄٣５ \u200f\u00a0&=~%'.split(''),
  ...'1/2;12;34;241/2;1,234;1e308;sts;st;M;R;m;rows;rnds;in;inch;cm;mm;ft;per;over;to;and;or;from;US;UK;every;foll;times;th'.split(
    ';',
  ),
  ...'S;XL;2XL;years;mo;yards;g;balls;negative;longer;half;five;thirty;hundred;a;an;of;not;about;2/24;8/12;cotton;Nm;kg;strands;Maschen;rangs;spi;🧶'.split(
    ';',
  ),
];
const answer = fc
  .array(fc.constantFrom(...PIECES), { maxLength: 14 })
  .chain((pieces) => fc.constantFrom('', ' ').map((gap) => pieces.join(gap)));
const anyText = fc.oneof(
  answer,
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
);
const unit = fc.constantFrom<LengthUnit | undefined>(...LENGTH_UNITS, undefined);

describe.each(Object.entries(READERS))('Any text read as %s', (_, read) => {
  it('gives a reading or a refusal with an example, never an exception', () => {
    fc.assert(
      fc.property(anyText, unit, (text, u) => {
        const heard = read(text, u);
        if (heard.kind === 'refused') {
          expect(heard.message).not.toBe('');
          expect(read(heard.example, u)).toMatchObject({ kind: 'heard' });
        } else if (heard.kind === 'which') expect(heard.options.length).toBeGreaterThan(1);
        else expect(heard.echo).not.toBe('');
      }),
      { numRuns: 400 },
    );
  });

  it('is refused where it is empty, endless, or holds a number beyond all knitting', () => {
    for (const text of [
      '',
      '   ',
      '\u200f\u200e',
      '🧶',
      '😀😀',
      '8'.repeat(400),
      '38 '.repeat(5000),
      '('.repeat(900),
    ]) {
      expect(read(text, 'cm')).toMatchObject({ kind: 'refused' });
    }
  });
});

describe.each(Object.entries(NUMERIC))('Text read as %s', (_, read) => {
  it('is never heard, asked back or offered where it holds no number', () => {
    const wordless = anyText.filter((text) => !holdsNumber(text));
    fc.assert(
      fc.property(wordless, unit, (text, u) => {
        expect(read(text, u).kind).toBe('refused');
      }),
      { numRuns: 200 },
    );
  });

  it('is refused where it is no number that can be measured or counted', () => {
    for (const text of [
      'NaN',
      'Infinity',
      '1e308',
      '0x10',
      '1.234.567,8',
      '12.03.2024',
      '38%',
      '€38',
      'ten past',
    ]) {
      expect(read(text, 'in').kind).not.toBe('heard');
    }
  });
});

describe('A command', () => {
  it('is never made of figures, marks or spaces alone, but for the question mark', () => {
    const figures = fc.array(fc.constantFrom(...'0123456789.,/-–½¾"\'()[] ×+'.split('')), { maxLength: 12 });
    fc.assert(fc.property(figures, (parts) => void expect(readCommand(parts.join(''))).toBeUndefined()));
  });

  it('is looked for in any text without an exception', () => {
    fc.assert(fc.property(anyText, (text) => void expect(() => readCommand(text)).not.toThrow()));
  });
});

function holdsNumber(text: string): boolean {
  const words = plain(text).split(/[^\p{L}]+/u);
  return /\p{Nd}|\p{No}/u.test(text) || words.some((word) => NUMBER_WORDS.some((n) => word.includes(n)));
}
