/** A swatch of stockinette with a ruler on it: ten columns of stitches, or ten rows, marked beside the ruler. */
import { box, type Drawing, line, named, point, rectangle, type Shape, text } from '../draw/drawing.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from '../pictures/characters.ts';
import { LEADING, MARGIN, PICTURE_WIDTH, SMALL, TITLE } from '../pictures/picture.ts';

const [COLUMNS, ROWS] = [16, 22] as const;
/** Knitted stitches are wider than they are tall. */
const STITCH = { width: 18, height: 13 } as const;
const LEFT = MARGIN + (PICTURE_WIDTH - 2 * MARGIN - COLUMNS * STITCH.width) / 2;
const TOP = 50;
const RULER = 26;

export type Counting = 'stitches' | 'rows';

export const SWATCH_TITLES: Readonly<Record<Counting, string>> = {
  stitches: 'Stitches of a swatch',
  rows: 'Rows of a swatch',
};

export const SWATCH_ALTERNATIVES: Readonly<Record<Counting, string>> = {
  stitches:
    'A square swatch with a ruler across its middle, and ten columns of stitches marked under the ruler.',
  rows: 'A square swatch with a ruler standing upright in its middle, and ten rows marked beside it.',
};

export function drawSwatch(counting: Counting): Drawing {
  const height = TOP + ROWS * STITCH.height;
  const words =
    counting === 'stitches'
      ? ['Count the columns along the ruler,', 'away from the edges. Quarter stitches count.']
      : ['Count the rows along the ruler,', 'away from the edges. Each V is one row.'];
  return {
    width: PICTURE_WIDTH,
    height: height + 2 * LEADING + 28,
    shapes: [
      text(SWATCH_TITLES[counting], point(MARGIN, 26), TITLE),
      rectangle(
        'skin',
        'figure',
        box(LEFT - 6, TOP - 6, COLUMNS * STITCH.width + 12, ROWS * STITCH.height + 12),
      ),
      ...(counting === 'stitches' ? markedColumns() : markedRows()),
      ...stitches(),
      ...ruler(counting),
      ...words.map((w, i) => text(w, point(LEFT - 6, height + 28 + LEADING * i), SMALL)),
    ],
  };
}

/** Each stitch of the right side is a V. */
function stitches(): Shape[] {
  return Array.from({ length: ROWS * COLUMNS }, (_, i) => {
    const x = LEFT + (i % COLUMNS) * STITCH.width;
    const y = TOP + Math.floor(i / COLUMNS) * STITCH.height;
    const { width, height } = STITCH;
    return line(
      'stitch',
      point(x + 2, y + 1),
      point(x + width / 2, y + height - 2),
      point(x + width - 2, y + 1),
    );
  });
}

/** Ten columns below the ruler, from the fourth on. */
function markedColumns(): Shape[] {
  const [x, y] = [LEFT + 3 * STITCH.width, TOP + 9 * STITCH.height + RULER];
  return Array.from({ length: 10 }, (_, i) =>
    named('counted', mark(x + i * STITCH.width, y, STITCH.width, 6 * STITCH.height, i)),
  );
}

/** Ten rows to the right of the ruler, from the sixth on. */
function markedRows(): Shape[] {
  const [x, y] = [LEFT + 8 * STITCH.width + RULER, TOP + 5 * STITCH.height];
  return Array.from({ length: 10 }, (_, i) =>
    named('counted', mark(x, y + i * STITCH.height, 5 * STITCH.width, STITCH.height, i)),
  );
}

/** Every other one is shaded darker, so that each can be counted. */
function mark(x: number, y: number, width: number, height: number, i: number): Shape {
  return rectangle(i % 2 === 0 ? 'fabric' : 'ground', 'dimension', box(x, y, width, height));
}

function ruler(counting: Counting): Shape[] {
  const long = counting === 'stitches' ? COLUMNS * STITCH.width : ROWS * STITCH.height;
  const at = (along: number, across: number) =>
    counting === 'stitches'
      ? point(LEFT + along, TOP + 9 * STITCH.height + across)
      : point(LEFT + 8 * STITCH.width + across, TOP + along);
  const corners = [at(0, 0), at(long, 0), at(long, RULER), at(0, RULER)];
  const ticks = Array.from({ length: Math.floor(long / 9) }, (_, i) => {
    const along = 9 * (i + 1);
    return line('figure', at(along, RULER), at(along, RULER - ((i + 1) % 5 === 0 ? 13 : 7)));
  });
  return [
    named('ruler', { shape: 'path', points: corners, closed: true, line: 'figure', fill: 'ground' }),
    ...ticks,
  ];
}

export function swatchCharacters(counting: Counting, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  return sheetOfCharacters([
    [SWATCH_TITLES[counting]],
    counting === 'stitches' ? LYING : STANDING,
    wrapColumns(`${SWATCH_ALTERNATIVES[counting]} = or [ ] the ruler.`, wide),
  ]);
}

const EDGE = `+${'-'.repeat(22)}+`;
const PLAIN = `|${'V'.repeat(22)}|`;
const LYING = [
  EDGE,
  ...Array<string>(4).fill(PLAIN),
  `|${'='.repeat(22)}|`,
  `|${'V'.repeat(6)}${'1234567890'}${'V'.repeat(6)}|`,
  ...Array<string>(4).fill(PLAIN),
  EDGE,
];
const STANDING = [
  EDGE,
  ...Array.from(
    { length: 12 },
    (_, i) => `|${'V'.repeat(9)}[ ]${i === 0 || i === 11 ? '  ' : String(i).padStart(2)}${'V'.repeat(8)}|`,
  ),
  EDGE,
];
