/** In which terms and on what paper the `fit` command tells something, as its options say. */
import { DIALECTS, type Dialect } from '../../fit/terms.ts';
import { LENGTH_UNITS, type LengthUnit } from '../../fit/units.ts';
import { BLANKS, type Blank } from '../../present/sheets/blanks.ts';
import { PAPER_NAMES, TYPE_SIZES } from '../../present/sheets/paper.ts';
import type { Print } from '../contract.ts';

/** A sheet that is filled in by hand, into a file. */
export interface BlankWish extends Print {
  readonly blank: Blank;
  readonly file: string;
  readonly unit: LengthUnit;
}

type Options = Readonly<Partial<Record<'blank' | 'sheet' | 'paper' | 'type' | 'unit', string | undefined>>>;

/** The terms that were given, US terms where none were; or a sentence that says what is wrong. */
export function readTerms(given: string | undefined): { readonly terms: Dialect } | string {
  const read = oneOf('--terms', DIALECTS, given);
  return 'wrong' in read ? read.wrong : { terms: read.value ?? 'us' };
}

/** The paper and the type that were given; or a sentence that says what is wrong. */
export function readPrint(options: Options): Print | string {
  const paper = oneOf('--paper', PAPER_NAMES, options.paper);
  const type = oneOf('--type', TYPE_SIZES, options.type);
  if ('wrong' in paper) return paper.wrong;
  if ('wrong' in type) return type.wrong;
  return { paper: paper.value, type: type.value };
}

/** The sheet that is wanted; or a sentence that says what is wrong. */
export function readBlank(options: Options, print: Print): BlankWish | string {
  const blank = oneOf('--blank', BLANKS, options.blank);
  const unit = oneOf('--unit', LENGTH_UNITS, options.unit);
  if ('wrong' in blank) return blank.wrong;
  if ('wrong' in unit) return unit.wrong;
  if (blank.value === null || options.sheet === undefined)
    return 'A blank sheet goes into a file: --blank waist --sheet waist.pdf';
  return { ...print, blank: blank.value, file: options.sheet, unit: unit.value ?? 'cm' };
}

/** Null where the option was not given. */
type Read<T> = { readonly value: T | null } | { readonly wrong: string };

function oneOf<T extends string>(option: string, words: readonly T[], given: string | undefined): Read<T> {
  if (given === undefined) return { value: null };
  const value = words.find((word) => word.toLowerCase() === given.toLowerCase());
  return value === undefined
    ? { wrong: `${option} is '${given}', but it can only be ${words.join(', ')}.` }
    : { value };
}
