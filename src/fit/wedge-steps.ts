/** A short-row wedge as a step of a plan, with the workings of its markers; or the ways that can be knitted in its place. */
import type { Gauge } from './gauge.ts';
import type { PhraseName } from './phrases.ts';
import { type Instruction, type Part, type Phrase, phrase, type Step } from './plan.ts';
import { heightLine, plain, step } from './steps.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import type { CannotWedge, Marker, NoRoom, Wedge, WedgeAlternative } from './wedge.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Where a wedge lies and what is done beside it. */
export interface WedgePlace extends Pick<Step, 'piece' | 'where' | 'worked'> {
  readonly before: readonly Instruction[];
  readonly after: readonly Instruction[];
  readonly notes: readonly Phrase[];
  readonly workings: readonly WorkingLine[];
}

/** The wedge with what is done beside it, or what can be knitted in its place. */
export function wedgePart(
  found: Wedge | CannotWedge | NoRoom,
  place: WedgePlace,
  gauge: Gauge,
): Part | Impossible {
  const notes = [phrase('note: short rows'), ...place.notes];
  if (found.kind !== 'wedge') {
    const ways = found.alternatives.map((alternative) => way(alternative, place, gauge));
    const { because, gaps } = reason(found);
    const workings = [...place.workings, ...found.workings, ...statedAs(gaps)];
    return otherwise(place, phrase(because, gaps), ways, workings, notes);
  }
  return {
    steps: [
      step(place.piece, place.where, {
        worked: place.worked,
        instead: [...place.before, shortRows(found), ...place.after],
        check: phrase('check: wedge', { depth: quantity('depth', found.depth, 'cm') }),
        notes,
        workings: [...place.workings, ...found.workings, ...markerLines(found)],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** The wedge as an instruction: its turns without their workings. */
export function shortRows({ workings: _, ...wedge }: Wedge): Instruction {
  return { do: 'short rows', wedge };
}

/** Where each marker hangs, for the workings. */
export function markerLines({ markers }: Wedge): WorkingLine[] {
  return markers.map(({ name, at }) =>
    workOut(
      `${CALLED[name]}: stitches from the beginning`,
      'a',
      { a: quantity('stitches', Math.abs(at), 'stitches') },
      { unit: 'stitches' },
    ),
  );
}

const CALLED: Readonly<Record<Marker['name'], string>> = {
  start: 'first marker',
  end: 'second marker',
  centre: 'centre marker',
};

function reason(found: CannotWedge | NoRoom): { because: PhraseName; gaps: Parameters<typeof statedAs>[0] } {
  switch (found.kind) {
    case 'too many turns':
      return {
        because: 'cannot: turns exceed the base',
        gaps: {
          asked: quantity('turns asked for', found.asked, 'times'),
          most: quantity('most turns', found.most, 'times'),
        },
      };
    case 'too flat':
      return { because: 'cannot: wedge too flat', gaps: { depth: quantity('depth', found.depth, 'cm') } };
    case 'one side in the round':
      return { because: 'cannot: one side in the round', gaps: {} };
    case 'no room':
      return {
        because: 'cannot: wedge too wide',
        gaps: {
          needed: quantity('stitches needed', found.needed, 'stitches'),
          available: quantity('stitches there', found.available, 'stitches'),
        },
      };
    default:
      return found satisfies never;
  }
}

/** Plain rows between two wedges, which begin on the same side of the work. */
const BETWEEN = { flat: 1, round: 2 } as const;

function way({ way: name, wedges }: WedgeAlternative, place: WedgePlace, gauge: Gauge): WorkedWay {
  const [first] = wedges;
  const between = heightLine('height of the plain rows between', BETWEEN[gauge.worked], gauge);
  const instead = wedges.flatMap((wedge, i) => [
    ...(i === 0 ? [] : [plain(BETWEEN[gauge.worked], wedge.needle, gauge)]),
    shortRows(wedge),
  ]);
  const gaps =
    first === undefined
      ? {}
      : { depth: quantity('depth', first.depth, 'cm'), flat: quantity('flat', first.flat, 'stitches') };
  return {
    name: phrase(`way: ${name}`, gaps),
    instead: first === undefined ? [] : [...place.before, ...instead, ...place.after],
    workings: [
      ...wedges.flatMap((wedge) => [...wedge.workings, ...markerLines(wedge)]),
      ...(wedges.length > 1 ? [between] : []),
    ],
  };
}
