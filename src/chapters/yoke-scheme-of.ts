/** The shaping rounds of a yoke: one of the schemes, or as the pattern has them. */
import type { PhraseName } from '../fit/phrases.ts';
import { phrase } from '../fit/plan.ts';
import { rows, type Stitches, stitches } from '../fit/units.ts';
import { type Impossible, statedAs } from '../fit/ways.ts';
import type { Direction } from '../fit/words.ts';
import { quantity } from '../fit/working.ts';
import { asPattern, evenly, LATER_THREE_ROUNDS, THREE_ROUNDS, type YokeScheme } from '../fit/yoke-scheme.ts';
import { type Ledger, take, takeChoice, takeRows } from './ledger.ts';

/** As the choices of the question name them. */
const SCHEMES: Readonly<Record<string, YokeScheme>> = {
  three: THREE_ROUNDS,
  three_later: LATER_THREE_ROUNDS,
  four_even: evenly(4),
  five_even: evenly(5),
  six_even: evenly(6),
  eight_even: evenly(8),
};

const NAMED: Readonly<Record<string, PhraseName>> = {
  three: 'note: three rounds have a source',
  three_later: 'note: later three rounds have a source',
};

export interface SchemeChosen {
  readonly scheme: YokeScheme;
  /** What is said of a scheme that was published. */
  readonly named: PhraseName | null;
}

/** The pattern's counts where its yoke begins and ends, in the order of knitting. */
export interface YokeEnds {
  readonly direction: Direction;
  readonly before: Stitches;
  readonly end: Stitches;
}

/** Undefined where figures are missing; they are entered as waiting. */
export function schemeOf(book: Ledger, ends: YokeEnds): SchemeChosen | Impossible | undefined {
  const choice = takeChoice(book, 'yoke_rounds') ?? '';
  const scheme = choice === 'own' ? ownScheme(book, ends) : SCHEMES[choice];
  if (scheme === undefined || 'kind' in scheme) return scheme;
  return { scheme, named: NAMED[choice] ?? null };
}

function ownScheme(book: Ledger, { direction, before, end }: YokeEnds): YokeScheme | Impossible | undefined {
  const all = takeRows(book, 'yoke_own_depth');
  const [places, counts] = [counted(book, 'yoke_own_rounds'), counted(book, 'yoke_own_counts')];
  if (all === undefined || places === undefined || counts === undefined) return undefined;
  if (places.length !== counts.length)
    return wrong('cannot: yoke rounds and counts uneven', {
      rounds: quantity('shaping rounds named', places.length, 'times'),
      counts: quantity('counts named', counts.length, 'times'),
    });
  const last = counts.at(-1) ?? 0;
  if (last !== end)
    return wrong('cannot: yoke rounds end elsewhere', {
      last: quantity('stitches after the last round', last, 'stitches'),
      end: quantity('stitches at the end of the yoke', end, 'stitches'),
    });
  const rounds = places.map((round, i) => ({ round: rows(round), after: stitches(counts[i] ?? 0) }));
  const scheme = asPattern({ direction, rows: all, before, rounds });
  return 'kind' in scheme
    ? wrong('cannot: yoke rounds out of order', { nth: quantity('shaping round', scheme.nth, 'times') })
    : scheme;
}

/** A row of figures of one size; a dash in it counts as nought, which no round and no count is. */
function counted(book: Ledger, question: string): readonly number[] | undefined {
  return take(book, question, 'counts')?.counts.map((count) => count ?? 0);
}

function wrong(because: PhraseName, gaps: Parameters<typeof statedAs>[0]): Impossible {
  return {
    kind: 'cannot',
    because: [phrase(because, gaps)],
    instead: [phrase('instead: measure once more')],
    workings: statedAs(gaps),
  };
}
