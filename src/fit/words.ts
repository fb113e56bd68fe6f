/** The terms of the craft, each listed once; unions and maps are derived from the lists. Imports nothing. */

/** How a piece is knitted: back and forth, or in the round. */
export const WORKED = ['flat', 'round'] as const;
export type Worked = (typeof WORKED)[number];

/** From hem or cuff upward, or from neck or shoulder downward. */
export const DIRECTIONS = ['up', 'down'] as const;
export type Direction = (typeof DIRECTIONS)[number];

export const PIECES = ['body', 'back', 'front', 'sleeve', 'yoke', 'collar', 'band'] as const;
export type PieceName = (typeof PIECES)[number];

/** Heights at which a count is stated. */
export const LEVELS = [
  'hem',
  'hip',
  'waist',
  'bust',
  'underarm',
  'cuff',
  'wrist',
  'elbow',
  'upper arm',
  'cross back',
  'shoulder',
  'neck',
  'cap top',
  'cast-on',
  'now',
  'beginning',
  'end',
] as const;
export type LevelName = (typeof LEVELS)[number];

export const CONSTRUCTIONS = ['set-in', 'drop shoulder', 'raglan', 'round yoke'] as const;
export type Construction = (typeof CONSTRUCTIONS)[number];

/** Body measurements, in the order in which they are best taken. */
export const MEASUREMENTS = [
  'bust',
  'upper bust',
  'waist',
  'hip',
  'upper arm',
  'wrist',
  'neck',
  'head',
  'cross back',
  'bust span',
  'armhole depth',
  'back length',
  'front length',
  'arm length',
  'height',
] as const;
export type Measurement = (typeof MEASUREMENTS)[number];

/** Whose tables a body is compared with. */
export const TABLES = ['women', 'men', 'children', 'babies'] as const;
export type Table = (typeof TABLES)[number];

/** Names of ease at the bust, as the yarn industry's standard lists them, closest first. */
export const FITS = ['very close', 'close', 'classic', 'loose', 'oversized'] as const;
export type Fit = (typeof FITS)[number];

/** Regions in which a pattern's size is compared with a body. */
export const REGIONS = [
  'bust',
  'cross back',
  'armhole depth',
  'neck',
  'upper arm',
  'wrist',
  'waist',
  'hip',
  'body length',
  'sleeve length',
] as const;
export type Region = (typeof REGIONS)[number];
