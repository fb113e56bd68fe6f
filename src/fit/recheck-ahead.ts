/** The rest of a piece from a row on: each level ahead moved to where its length lies at the real gauge, and re-spaced. */
import type { Gauge } from './gauge.ts';
import { type Level, level, type Piece, piece } from './outline.ts';
import type { Placed } from './recheck-measures.ts';
import { type Carriers, type Spacing, space } from './spacing.ts';
import { rows, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** How a piece is shaped between its levels. */
export interface Shaped {
  /** Stitches that one shaping row gains or loses. */
  readonly perRow: number;
  /** Rows of the piece, counted from its start, that may carry shaping. */
  readonly carriers: Carriers;
  /** Edge stitches of a flat piece, both edges together. */
  readonly edge: number;
}

/** Which figures are worked out anew: counts where widths would be off, rows where lengths would. */
export interface Anew {
  readonly counts: boolean;
  readonly rows: boolean;
}

export interface Ahead {
  /** The rest as a piece of its own, from the row at hand, which is its row 0. */
  readonly piece: Piece;
  /** One a section, rows counted from the section's own start. */
  readonly sections: readonly Spacing[];
  readonly levels: readonly Placed[];
  readonly possible: boolean;
  readonly workings: readonly WorkingLine[];
}

export interface AheadAsk {
  readonly planned: Piece;
  readonly gauge: { readonly planned: Gauge; readonly real: Gauge };
  readonly shaped: Shaped;
  /** Where the rest begins. */
  readonly from: { readonly row: number; readonly stitches: number };
  readonly anew: Anew;
}

export function ahead(ask: AheadAsk): Ahead {
  const { planned, from } = ask;
  const workings: WorkingLine[] = [];
  const rest: Placed[] = [];
  for (const target of planned.levels.filter((l) => l.row > from.row)) {
    const row = rowOf(target, ask);
    const count = countOf(target, ask);
    workings.push(row, count);
    rest.push({
      planned: target,
      row: Math.max(row.result.value, rest.at(-1)?.row ?? from.row),
      stitches: count.result.value,
      knitted: false,
    });
  }
  const first = level('now', 0, from.stitches);
  const levels = rest.map((l) => level(l.planned.name, l.row - from.row, l.stitches));
  const outline = piece(planned.name, planned.worked, planned.direction, [first, ...levels]);
  const sections = outline.levels.slice(1).map((to, i) => section(outline.levels[i] as Level, to, ask));
  return {
    piece: outline,
    sections,
    levels: rest,
    possible: sections.every((s) => s.kind === 'spaced'),
    workings: [...workings, ...sections.flatMap((s) => (s.kind === 'spaced' ? s.workings : []))],
  };
}

/** What a level's count comes to at the real gauge, before any rounding to what shaping rows reach. */
export function scaled(
  { name, stitches }: Level,
  { planned, real }: { readonly planned: Gauge; readonly real: Gauge },
  edge: number,
): WorkingLine {
  return workOut(
    `stitches at the ${name}, as knitted`,
    '(a - e) * b / c + e',
    {
      a: quantity(`stitches at the ${name}, planned`, stitches, 'stitches'),
      b: quantity('stitches, as knitted', real.stitches.perCm, 'stitches/cm'),
      c: quantity('stitches, planned', planned.stitches.perCm, 'stitches/cm'),
      e: quantity('edge stitches', edge, 'stitches'),
    },
    { unit: 'stitches', rounding: { to: 'whole' } },
  );
}

/** The level's row at the real gauge; on flat pieces an even one, so that a wrong-side row comes last. */
function rowOf(target: Level, { gauge, planned, anew }: AheadAsk): WorkingLine {
  const given = { a: quantity(`rows to the ${target.name}, planned`, target.row, 'rows') };
  if (!anew.rows) return workOut(`rows to the ${target.name}`, 'a', given, { unit: 'rows' });
  return workOut(
    `rows to the ${target.name}`,
    'a * b / c',
    {
      ...given,
      b: quantity('rows, as knitted', gauge.real.rows.perCm, 'rows/cm'),
      c: quantity('rows, planned', gauge.planned.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: planned.worked === 'flat' ? 'even' : 'whole' } },
  );
}

/** The level's count for its planned width, the nearest that whole shaping rows reach from the count at hand. */
function countOf(target: Level, { gauge, shaped, from, anew }: AheadAsk): WorkingLine {
  const rounding = {
    to: 'multiple',
    multiple: shaped.perRow,
    plus: from.stitches % shaped.perRow,
  } as const;
  const a = quantity(`stitches at the ${target.name}, planned`, target.stitches, 'stitches');
  if (!anew.counts)
    return workOut(`stitches at the ${target.name}`, 'a', { a }, { unit: 'stitches', rounding });
  return workOut(
    `stitches at the ${target.name}`,
    '(a - e) * b / c + e',
    {
      a,
      b: quantity('stitches, as knitted', gauge.real.stitches.perCm, 'stitches/cm'),
      c: quantity('stitches, planned', gauge.planned.stitches.perCm, 'stitches/cm'),
      e: quantity('edge stitches', shaped.edge, 'stitches'),
    },
    { unit: 'stitches', rounding },
  );
}

function section(from: Level, to: Level, { shaped, gauge, from: start }: AheadAsk): Spacing {
  return space({
    rows: rows(to.row - from.row),
    from: stitches(from.stitches),
    to: stitches(to.stitches),
    perRow: shaped.perRow,
    carriers: carriersFrom(start.row + from.row, shaped.carriers),
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
    stitchesPerCm: gauge.real.stitches.perCm,
  });
}

/** Odd rows of the piece are even ones of a section that begins after an odd row. */
function carriersFrom(row: number, carriers: Carriers): Carriers {
  if (carriers === 'every row' || row % 2 === 0) return carriers;
  return carriers === 'odd rows' ? 'even rows' : 'odd rows';
}
