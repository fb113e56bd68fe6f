/**
 * Short rows laid into the body: the section in which they begin is divided there, and shaped anew on both sides.
 *
 *   |<---------------- rows of the section ---------------->|
 *   |<- shaped ->| short rows, with the one row |<- shaped ->|
 *                  that they take of the rest
 */
import {
  type BodyAsk,
  type BodySection,
  type BodyShaping,
  carriersOf,
  plainBesideUnderarm,
} from './body-shaping.ts';
import type { Part } from './plan.ts';
import { takingRows } from './rows-taken.ts';
import { type Carriers, capacity, type Spaced, space } from './spacing.ts';
import { type Rows, rows, type Stitches, stitches } from './units.ts';
import type { Impossible } from './ways.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Short rows that begin after so many rows of the body, counted from its first. */
export interface ToLay {
  readonly after: Rows;
  /** The short rows on the stitches that are there. */
  readonly on: (needle: Stitches) => Part | Impossible;
}

export type BodyItem =
  | { readonly kind: 'section'; readonly section: BodySection }
  | { readonly kind: 'short rows'; readonly part: Part }
  /** They cannot be knitted, or every row there is wanted for shaping; the sections stay whole. */
  | { readonly kind: 'cannot lie'; readonly part: Impossible | null; readonly section: BodySection };

/**
 * Sections and short rows in the order of knitting. Short rows that begin in an edging cannot lie; those that begin
 * too near the end of the last section begin as late in it as they can.
 */
export function layInBody(body: BodyShaping, wanted: readonly ToLay[]): readonly BodyItem[] {
  const whole: BodyItem[] = body.sections.map((section) => ({ kind: 'section', section }));
  return [...wanted].sort((a, b) => b.after - a.after).reduce((items, one) => lay(body, items, one), whole);
}

/** The topmost are laid first, so that rows below them still count from the start. */
function lay({ ask }: BodyShaping, items: BodyItem[], one: ToLay): BodyItem[] {
  const last = items.findLastIndex(({ kind }) => kind === 'section');
  let start = 0;
  for (const [i, item] of items.entries()) {
    if (item.kind !== 'section') continue;
    const end = start + item.section.stretch.rows;
    if (one.after < end || i === last)
      return items.toSpliced(i, 1, ...divided(ask, item.section, start, one));
    start = end;
  }
  return items;
}

function divided(ask: BodyAsk, section: BodySection, start: number, { after, on }: ToLay): BodyItem[] {
  const cannot = (part: Impossible | null): BodyItem[] => [
    { kind: 'cannot lie', part, section },
    { kind: 'section', section },
  ];
  if (section.name === 'edging') return cannot(null);
  for (const own of ROWS_TAKEN) {
    const before = beginsAfter(ask, section, after - start, own);
    const shared = before === undefined ? undefined : shareOut(ask, section, { before, own, start });
    if (shared === undefined) continue;
    const made = on(shared.needle);
    if ('kind' in made) return cannot(made);
    const part = takingRows(made, own, ask.gauge);
    if (part === undefined) continue;
    return [
      ...shared.first.map((first): BodyItem => ({ kind: 'section', section: first })),
      { kind: 'short rows', part },
      ...shared.rest.map((rest): BodyItem => ({ kind: 'section', section: rest })),
    ];
  }
  return cannot(null);
}

/** Short rows between the sides count as one row of what lies beside them, those that go all round as none. */
const ROWS_TAKEN = [1, 0] as const;

/** On a flat piece short rows begin with a right-side row, after an even number of rows. */
function beginsAfter(ask: BodyAsk, section: BodySection, wanted: number, own: number): number | undefined {
  const step = ask.gauge.worked === 'flat' ? 2 : 1;
  const begins = step * Math.floor(Math.min(Math.max(0, wanted), section.stretch.rows - own) / step);
  return begins < 0 ? undefined : begins;
}

interface Divided {
  readonly before: number;
  readonly own: number;
  readonly start: number;
}

/** Undefined where the rows beside the short rows are too few for the shaping. */
function shareOut(ask: BodyAsk, section: BodySection, at: Divided) {
  const rest = section.stretch.rows - at.before - at.own;
  const lines = rowLines(section, at);
  const parts = halves(ask, section, at);
  if (parts === undefined) return undefined;
  const of = (part: 'before' | 'rest', line: WorkingLine, count: number): BodySection[] =>
    count === 0
      ? []
      : [
          {
            ...section,
            ...parts[part],
            part,
            stretch: { rows: rows(count), workings: [line] },
            workings: [...section.workings, line],
          },
        ];
  return {
    needle: parts.before.to,
    first: of('before', lines.before, at.before),
    rest: of('rest', lines.rest, rest),
  };
}

function rowLines({ stretch }: BodySection, { before, own, start }: Divided) {
  const begins = workOut(
    'rows of this section before the short rows',
    'a - b',
    {
      a: quantity('rows from the start to the short rows', start + before, 'rows'),
      b: quantity('rows from the start to this section', start, 'rows'),
    },
    { unit: 'rows' },
  );
  const rest = workOut(
    'rows of this section after the short rows',
    'a - b - c',
    {
      a: quantity('rows of this section', stretch.rows, 'rows'),
      b: begins.result,
      c: quantity('rows that the short rows take of it', own, 'rows'),
    },
    { unit: 'rows' },
  );
  return { before: begins, rest };
}

type Halves = Readonly<Record<'before' | 'rest', Pick<BodySection, 'from' | 'to' | 'spacing'>>>;

function halves(ask: BodyAsk, section: BodySection, at: Divided): Halves | undefined {
  const { spacing } = section;
  if (spacing === null) return { before: section, rest: section };
  return spacing.kind === 'spaced' ? shaped(ask, section, spacing, at) : undefined;
}

/** As many shaping rows before the short rows as there were, as far as rows beside them allow. */
function shaped(
  ask: BodyAsk,
  section: BodySection,
  spacing: Spaced,
  { before, own }: Divided,
): Halves | undefined {
  const frames = framesFor(ask, section, before, own);
  const times = spacing.shaping.length;
  const most = { before: capacity(frames.before), rest: capacity(frames.rest) };
  const had = spacing.shaping.filter(({ row }) => row <= before).length;
  const first = Math.min(most.before, Math.max(had, times - most.rest));
  if (times - first > most.rest) return undefined;
  const sign = section.to >= section.from ? 1 : -1;
  const between = stitches(section.from + sign * first * spacing.perRow);
  return {
    before: half(ask, spacing, frames.before, section.from, between),
    rest: half(ask, spacing, frames.rest, between, section.to),
  };
}

interface Frame {
  readonly rows: Rows;
  readonly carriers: Carriers;
  readonly lead: Rows;
  readonly trail: Rows;
}

/** The rows before and after, each with what is left of the plain rows beside the underarm. */
function framesFor(ask: BodyAsk, section: BodySection, before: number, own: number) {
  const all = section.stretch.rows;
  const rest = all - before - own;
  const beside = plainBesideUnderarm(ask.gauge).result.value;
  const joins = section.name === 'plain' || section.name === 'waist and underarm';
  const lead = joins && ask.direction === 'down' ? beside : 0;
  const trail = joins && ask.direction === 'up' && section.part !== 'before' ? beside : 0;
  const left = (plain: number, taken: number, room: number) =>
    rows(Math.min(Math.max(0, plain - taken), room));
  const usual = carriersOf(ask.gauge);
  const even = (before + own) % 2 === 0;
  const first: Frame = {
    rows: rows(before),
    carriers: usual,
    lead: left(lead, 0, before),
    trail: left(trail, rest + own, before),
  };
  const second: Frame = {
    rows: rows(rest),
    carriers: usual === 'every row' || even ? usual : 'even rows',
    lead: left(lead, before + own, rest),
    trail: left(trail, 0, rest),
  };
  return { before: first, rest: second };
}

function half(
  ask: BodyAsk,
  { perRow }: Spaced,
  frame: Frame,
  from: Stitches,
  to: Stitches,
): Pick<BodySection, 'from' | 'to' | 'spacing'> {
  if (from === to) return { from, to, spacing: null };
  const { perCm: stitchesPerCm } = ask.gauge.stitches;
  return { from, to, spacing: space({ ...frame, from, to, perRow, order: 'grouped', stitchesPerCm }) };
}
