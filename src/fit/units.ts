/**
 * Lengths, stitches and rows as values that cannot be mixed up, and the only conversions between them.
 * Every length inside the engine is in centimetres.
 */

declare const brand: unique symbol;
type Branded<Name extends string> = number & { readonly [brand]: Name };

/** A length in centimetres; may be negative (ease, differences). */
export type Cm = Branded<'cm'>;
/** A whole number of stitches. */
export type Stitches = Branded<'stitches'>;
/** A whole number of rows, or of rounds where the piece is knitted in the round. */
export type Rows = Branded<'rows'>;
/** Stitches (or rows) in one centimetre of fabric. */
export type PerCm = Branded<'per cm'>;

/** The unit in which a person reads her tape. */
export const LENGTH_UNITS = ['cm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** Centimetres in one unit. The inch is exact by the international yard and pound agreement of 1959. */
export const CM_PER: Readonly<Record<LengthUnit, number>> = { cm: 1, in: 2.54 };

export function cm(value: number): Cm {
  return finite(value, 'a length') as Cm;
}

export function inches(value: number): Cm {
  return cm(value * CM_PER.in);
}

export function lengthIn(value: number, unit: LengthUnit): Cm {
  return cm(value * CM_PER[unit]);
}

/** The number that a tape marked in `unit` shows for this length. */
export function onTape(length: Cm, unit: LengthUnit): number {
  return length / CM_PER[unit];
}

export function stitches(value: number): Stitches {
  return whole(value, 'stitches') as Stitches;
}

export function rows(value: number): Rows {
  return whole(value, 'rows') as Rows;
}

export function perCm(value: number): PerCm {
  if (!(value > 0)) throw new RangeError(`a gauge is a positive number per centimetre, got ${value}`);
  return finite(value, 'a gauge') as PerCm;
}

function finite(value: number, what: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${what} is a finite number, got ${value}`);
  return value;
}

function whole(value: number, what: string): number {
  if (!Number.isSafeInteger(value))
    throw new RangeError(`${what} are counted in whole numbers, got ${value}`);
  return value;
}

/** Eighths of an inch as they are printed on a tape. */
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

/**
 * A length as a knitter reads it: `96.5 cm`, `18¾ in`. Centimetres to the millimetre. Inches as a fraction
 * where the length is a whole number of eighths, else with one decimal: typed tenths and eighths come back unchanged.
 */
export function formatLength(length: Cm, unit: LengthUnit): string {
  return `${formatTape(length, unit)} ${unit}`;
}

/** The figure alone, without its unit: for rows of sizes and tables that name the unit once. */
export function formatTape(length: Cm, unit: LengthUnit): string {
  const value = onTape(length, unit);
  if (unit === 'in') {
    const eighths = Math.round(value * 8);
    if (Math.abs(value * 8 - eighths) < 1e-6) return formatEighths(eighths);
  }
  return formatDecimal(value, 1);
}

/** A number with at most `places` decimals, without trailing noughts and with a true minus sign. */
export function formatDecimal(value: number, places: number): string {
  const rounded = Number(roundHalfUp(value, places).toFixed(places));
  return rounded < 0 ? `−${-rounded}` : `${Math.abs(rounded)}`;
}

/** Rounds a half away from nought; a value within a billionth of a half counts as a half. */
export function roundHalfUp(value: number, places = 0): number {
  const scale = 10 ** places;
  return (Math.sign(value) * Math.floor(Math.abs(value) * scale + 0.5 + 1e-9)) / scale;
}

function formatEighths(eighths: number): string {
  const sign = eighths < 0 ? '−' : '';
  const magnitude = Math.abs(eighths);
  const wholePart = Math.floor(magnitude / 8);
  const fraction = EIGHTHS[magnitude % 8] ?? '';
  return `${sign}${wholePart === 0 && fraction !== '' ? '' : wholePart}${fraction}`;
}
