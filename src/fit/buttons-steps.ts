/** Buttonholes placed along a band, as a step; or why there is no room. */
import type { ButtonAsk, ButtonsPlaced, NoRoom } from './buttons.ts';
import { type Cannot, type Part, phrase } from './plan.ts';
import { step } from './steps.ts';
import { quantity, workOut } from './working.ts';

export function buttonsPart(ask: ButtonAsk, found: ButtonsPlaced | NoRoom): Part | Omit<Cannot, 'unit'> {
  if (found.kind === 'no room') return noRoom(ask, found);
  const { holes, gaps, workings } = found;
  const [shorter, longer] = [Math.min(...gaps), gaps.filter((g) => g > Math.min(...gaps)).length];
  const gap = quantity('a shorter gap', shorter, ask.unit);
  const note =
    longer === 0
      ? phrase('note: gaps alike', { gap })
      : phrase('note: gaps nearly alike', { gap, longer: quantity('gaps one longer', longer, 'times') });
  const first = quantity(`${ask.unit} before the first`, ask.first, ask.unit);
  return {
    steps: [
      step('band', phrase('where: the buttonholes'), {
        worked: 'flat',
        instead: [{ do: 'place buttonholes', unit: ask.unit, length: ask.length, holes, gaps }],
        notes: gaps.length === 0 ? [] : [note],
        workings: [
          ...workings,
          workOut(
            'first of the first buttonhole',
            'a + b',
            { a: first, b: quantity('the next', 1, ask.unit) },
            { unit: ask.unit },
          ),
        ],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

function noRoom(ask: ButtonAsk, { most, workings }: NoRoom): Omit<Cannot, 'unit'> {
  const { unit } = ask;
  const given = {
    l: quantity(`${unit} of the band`, ask.length, unit),
    n: quantity('buttonholes', ask.buttons, 'times'),
    h: quantity(`${unit} of one buttonhole`, ask.hole, unit),
    f: quantity(`${unit} before the first`, ask.first, unit),
    e: quantity(`${unit} after the last`, ask.last, unit),
    g: quantity(`${unit} of the least gap`, 1, unit),
  };
  const needed = workOut(`${unit} needed`, 'f + n * h + (n - 1) * g + e', given, { unit });
  const fit = workOut('most buttonholes', '(l - f - e + g) / (h + g)', given, {
    unit: 'times',
    rounding: { to: 'whole down' },
  });
  return {
    kind: 'cannot',
    because: [
      phrase('cannot: no room for buttonholes', { length: given.l, count: given.n, needed: needed.result }),
    ],
    instead: [
      ...(most > 0 ? [phrase('instead: fewer buttons', { most: fit.result })] : []),
      phrase('instead: a longer band', { needed: needed.result }),
    ],
    workings: [...workings, needed, fit],
  };
}
