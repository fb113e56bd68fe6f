/** A sample sweater in which everything is changed: question ids with what is typed at each. */
export interface Knitter {
  /** To 10 cm. */
  readonly stitches: number;
  readonly rows: number;
  /** In centimetres; `longer`: all lengths, against the usual. */
  readonly bust: number;
  readonly longer: number;
  readonly pattern: 'Pennywhin, in the round' | 'Pennywhin, in pieces';
  readonly unit: 'cm' | 'in';
}

export function everyWish(knitter: Knitter): Readonly<Record<string, string>> {
  const { stitches, rows, bust, longer, pattern, unit } = knitter;
  return {
    unit,
    pattern,
    swatch_made: 'in the round',
    swatch_washed: 'yes',
    swatch_stitches: `${stitches} sts over 10 cm`,
    swatch_stitches_2: `${stitches + 0.5} sts over 10 cm`,
    swatch_stitches_3: `${stitches} sts over 10 cm`,
    swatch_rows: `${rows} rows over 10 cm`,
    swatch_rows_2: `${rows + 0.5} rows over 10 cm`,
    table: 'women',
    bust: `${bust} cm`,
    upper_bust: `${bust - 5} cm`,
    fit: 'classic',
    size: "I don't know",
    wishes: 'all',
    upper_arm: `${33 + longer} cm`,
    wrist: '16 cm',
    sleeve_length: `${45 + longer} cm`,
    body_length: `${40 + longer} cm`,
    waist: `${bust - 16} cm`,
    waist_ease: '8 cm',
    underarm_to_waist: '18 cm',
    front_length: '46 cm',
    back_length: '42 cm',
    bust_fabric: 'plain',
    bust_shaping: 'short rows',
    bust_span: '19 cm',
    bust_below_underarm: '5 cm',
    hem_drop: '5 cm',
    ...(pattern === 'Pennywhin, in the round' ? { hem_over: 'across the back' } : {}),
    armhole_wanted: '22 cm',
    neck_width: '18 cm',
    neck_depth: '10 cm',
    shoulder_how: 'short rows',
    shoulder_drop: '3 cm',
    neck_raise: '2.5 cm',
    yarn_swatch: '9 g',
    yarn_swatch_width: '15 cm',
    yarn_swatch_height: '15 cm',
    yarn_ball: '50 g',
  };
}
