/** The area of a piece: between two levels its width changes evenly, so each section is a trapezium. */
import { type Gauge, heightOf, widthOf } from './gauge.ts';
import { type Piece, sections } from './outline.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** In square centimetres, edge stitches included: they take yarn too. */
export interface Area {
  readonly area: number;
  readonly workings: readonly WorkingLine[];
}

export function areaOf(piece: Piece, gauge: Gauge): Area {
  const lines = sections(piece).map(({ from, to, rows }) =>
    workOut(
      `area from ${from.name} to ${to.name}`,
      '(a + b) / 2 * h',
      {
        a: quantity(`width at the ${from.name}`, widthOf(from.stitches, gauge), 'cm'),
        b: quantity(`width at the ${to.name}`, widthOf(to.stitches, gauge), 'cm'),
        h: quantity('height', heightOf(rows, gauge), 'cm'),
      },
      { unit: 'cm²' },
    ),
  );
  return sum(`area of the ${piece.name}`, lines);
}

/** The pieces of a garment together, each as often as it is knitted. */
export function areaInAll(pieces: readonly { readonly area: Area; readonly times: number }[]): Area {
  const lines = pieces.map(({ area, times }) =>
    workOut(
      'area of the pieces of one kind',
      'a * n',
      { a: quantity('area of one', area.area, 'cm²'), n: quantity('pieces', times, 'times') },
      { unit: 'cm²' },
    ),
  );
  const all = sum('area in all', lines);
  return { area: all.area, workings: [...pieces.flatMap((p) => p.area.workings), ...all.workings] };
}

function sum(label: string, lines: readonly WorkingLine[]): Area {
  const given = Object.fromEntries(lines.map((line, i) => [`a${i + 1}`, line.result]));
  const total = workOut(label, Object.keys(given).join(' + ') || '0', given, { unit: 'cm²' });
  return { area: total.exact, workings: [...lines, total] };
}
