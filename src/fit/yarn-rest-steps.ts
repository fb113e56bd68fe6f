/** Whether the yarn that is left lasts for the rest of a sweater, as a step; if it does not, how far it goes. */
import { type Part, type Phrase, phrase } from './plan.ts';
import { say, step } from './steps.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import { amount, type YarnAmount } from './yarn.ts';
import type { Lasts, RunsShort } from './yarn-left.ts';

/** `bust`: null where sleeves are still to knit, too. `rest` is the area to knit, in square centimetres. */
export interface RestOf {
  readonly left: YarnAmount;
  readonly rest: number;
  readonly bust: number | null;
  readonly area: readonly WorkingLine[];
}

export function restPart(found: Lasts | RunsShort, of: RestOf): Part {
  const needed = amount('yarn for the rest, with the margin', found.needed);
  const left = amount('yarn left', of.left);
  const told =
    found.kind === 'lasts'
      ? { phrase: phrase('do: rest lasts', { left, over: amount('yarn over', found.over) }), lines: [] }
      : runsShort(found, of);
  return {
    steps: [
      step('all', phrase('where: the yarn'), {
        instead: [say(phrase('do: the rest takes', { needed })), say(told.phrase)],
        notes: [phrase('note: margin of yarn'), phrase('note: area is reckoned roughly')],
        workings: [...of.area, ...found.workings, ...told.lines],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

function runsShort(
  { short, enoughFor }: RunsShort,
  { left, rest, bust }: RestOf,
): { phrase: Phrase; lines: readonly WorkingLine[] } {
  const enough = quantity('area that the yarn left is enough for', enoughFor, 'cm²');
  const gaps = { left: amount('yarn left', left), short: amount('yarn short', short) };
  if (bust !== null) {
    const around = quantity('finished bust', bust, 'cm');
    const length = workOut('length of the body for it', 'a / b', { a: enough, b: around }, { unit: 'cm' });
    return { phrase: phrase('do: rest of the body', { ...gaps, length: length.result }), lines: [length] };
  }
  const share = workOut(
    'per cent of the rest',
    'c * a / b',
    { c: quantity('a hundred', 100, 'times'), a: enough, b: quantity('area still to knit', rest, 'cm²') },
    { unit: 'times', rounding: { to: 'whole down' } },
  );
  return { phrase: phrase('do: rest in percent', { ...gaps, share: share.result }), lines: [share] };
}
