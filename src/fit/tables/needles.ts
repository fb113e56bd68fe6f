/**
 * Knitting needle sizes: millimetres (diameter), US label, old UK label (also old Canadian and Australian).
 * Sources, as read: 'Knitting Needle Size Conversion Chart' (undated), 'Needle Conversion Chart' (undated), 'Knitting
 * Needle Conversion Chart' (2024), and the Craft Yarn Council's 'Guide to yarn weights' (undated) for US 17 = 12.75 mm.
 * Millimetres are the only safe key. Where charts disagree the label kept is the one that two charts or the Council
 * print: 2.25 mm is US 1 (one chart: 0), 2.5 mm US 1½ (one: 1), 3 mm US 2½ (one: 2). US 17 is 12 mm in shop charts and
 * 12.75 mm with the Council: both rows stand. 1.75 mm as UK 15 has a single source; 19 mm as US 35 is from memory.
 * Patterns of the 1970s may number US sizes otherwise (10½ as 7 mm, 11 as 7.5 mm, in a booklet of 1978).
 */
export interface NeedleSize {
  readonly mm: number;
  readonly us: string | undefined;
  readonly ukOld: string | undefined;
}

// biome-ignore format: one size a line, as a table
const ROWS: readonly (readonly [mm: number, us: string | undefined, ukOld: string | undefined])[] = [
  [1, '00000', '19'],
  [1.25, '0000', '18'],
  [1.5, '000', '17'],
  [1.75, '00', '15'],
  [2, '0', '14'],
  [2.25, '1', '13'],
  [2.5, '1.5', undefined],
  [2.75, '2', '12'],
  [3, '2.5', '11'],
  [3.25, '3', '10'],
  [3.5, '4', undefined],
  [3.75, '5', '9'],
  [4, '6', '8'],
  [4.5, '7', '7'],
  [5, '8', '6'],
  [5.5, '9', '5'],
  [6, '10', '4'],
  [6.5, '10.5', '3'],
  [7, undefined, '2'],
  [7.5, undefined, '1'],
  [8, '11', '0'],
  [9, '13', '00'],
  [10, '15', '000'],
  [12, '17', undefined],
  [12.75, '17', undefined],
  [15, '19', undefined],
  [19, '35', undefined],
  [20, '36', undefined],
  [25, '50', undefined],
];

export const NEEDLES: readonly NeedleSize[] = ROWS.map(([mm, us, ukOld]) => ({ mm, us, ukOld }));
