/** Darts that run up and down beside sides that are shaped in the same rows: each counts by itself, and one row adds both up. */
import { type Phrase, phrase } from './plan.ts';
import type { Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Sides that are shaped in the same rows. Counts of the darts leave them out, and theirs leave out the darts. */
export interface ShapedSides {
  /** Rows of the body before the darts begin; null where they begin with it. */
  readonly begins: WorkingLine | null;
  /** Of the front where the body begins, and at the fullest point of the bust; null where short rows lie there too. */
  readonly first: Stitches;
  readonly atBust: Stitches | null;
}

export interface BesideSides {
  /** Said of every section. */
  readonly counts: Phrase;
  /** Said where the darts begin: with one row in which both are added up, where the sides are shaped up to there. */
  readonly start: readonly Phrase[];
  readonly workings: readonly WorkingLine[];
}

/** `wide`: the front at its fullest, by the darts alone. */
export function besideSides(
  added: Stitches,
  { sides, front }: { readonly sides: ShapedSides | null; readonly front: Stitches },
  wide: WorkingLine,
): BesideSides {
  if (sides === null) return { counts: phrase('note: counts of the front alone'), start: [], workings: [] };
  const { begins, atBust } = sides;
  const there = quantity('stitches of the front there', front, 'stitches');
  const stated = workOut(there.name, 'a', { a: there }, { unit: 'stitches' });
  const start =
    begins === null
      ? { notes: [], lines: [stated] }
      : {
          notes: [phrase('note: darts begin after', { begins: begins.result, front: there })],
          lines: [begins, stated],
        };
  const sum = atBust === null || atBust === front ? null : addedUp(added, front, atBust, wide);
  return {
    counts: phrase('note: darts leave out the sides'),
    start: [...start.notes, ...(sum === null ? [] : [sum.note])],
    workings: [...start.lines, ...(sum?.lines ?? [])],
  };
}

function addedUp(added: Stitches, front: Stitches, atBust: Stitches, wide: WorkingLine) {
  const more = atBust > front;
  const at = quantity('stitches of the front at the bust, without the darts', atBust, 'stitches');
  const by = workOut(
    more ? 'stitches that the sides gain up to there' : 'stitches that the sides lose up to there',
    more ? 'a - b' : 'b - a',
    { a: at, b: quantity('stitches of the front where the darts begin', front, 'stitches') },
    { unit: 'stitches' },
  );
  const all = workOut(
    'stitches of the front at the bust',
    'a + b',
    { a: at, b: quantity('stitches added', added, 'stitches') },
    { unit: 'stitches' },
  );
  const gaps = { all: all.result, wide: wide.result, sides: by.result };
  const name = more ? 'note: sides gain beside the darts' : 'note: sides lose beside the darts';
  return { note: phrase(name, gaps), lines: [by, all] };
}
