/** Shaping for a full bust as steps of a plan: the advice, and a short-row dart. */
import type { BustAdvice, BustReason, BustShaping } from './bust-advice.ts';
import { type BustDartAsk, bustDart } from './bust-dart.ts';
import type { Gauge } from './gauge.ts';
import { type Part, type Phrase, phrase } from './plan.ts';
import { heightLine, say, step } from './steps.ts';
import type { Impossible } from './ways.ts';
import { type WedgePlace, wedgePart } from './wedge-steps.ts';
import { type Quantity, quantity, type WorkingLine } from './working.ts';

/** What the advice rests on; `length` is null where only girths are known. */
export interface AdviceFigures {
  readonly length: Quantity | null;
  readonly width: Quantity;
  readonly ease: Quantity;
  readonly workings: readonly WorkingLine[];
}

/** `chosen` is what is planned, which may be another way than the one advised. */
export function advicePart(
  advice: BustAdvice,
  figures: AdviceFigures,
  chosen: BustShaping | 'front stitches',
): Part {
  return {
    steps: [
      step('front', phrase('where: which shaping suits'), {
        instead: [say(phrase(`do: advice, ${advice.suits}`)), ...chosenWay(chosen, advice.suits)],
        notes: advice.because.map((reason) => because(reason, figures)),
        workings: figures.workings,
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** What is planned, where that is not what was advised. */
function chosenWay(chosen: BustShaping | 'front stitches', advised: BustShaping) {
  if (chosen === 'none') return [say(phrase('do: bust as the pattern has it'))];
  return chosen === advised ? [] : [say(phrase(`do: chosen, ${chosen}`))];
}

function because(reason: BustReason, { length, width, ease }: AdviceFigures): Phrase {
  switch (reason) {
    case 'the front needs length':
      return length === null
        ? phrase('note: girths speak for length', { width })
        : phrase('note: the front needs length', { length });
    case 'the front needs width':
      return phrase('note: the front needs width', { width });
    case 'the ease takes up the little length that is wanting':
      return phrase('note: ease takes up the length', { length: length ?? width, ease });
    case 'length and width are nearly those of the back':
      return phrase('note: front like the back');
    case 'short rows would break the pattern, and width also stops the front from riding up':
      return phrase('note: pattern broken, width helps');
    case 'short rows would break the pattern, and nothing else adds the length':
      return phrase('note: pattern broken, nothing else helps');
    default:
      return reason satisfies never;
  }
}

/** `below`: rows from the underarm to the bust point, counted at the side; `counted`: how the front was counted. */
export function dartPart(
  ask: BustDartAsk,
  gauge: Gauge,
  below: WorkingLine,
  counted: readonly WorkingLine[],
): Part | Impossible {
  const found = bustDart(ask);
  if (found.kind === 'not needed') {
    const because = [phrase('cannot: no dart needed')];
    return {
      kind: 'cannot',
      because,
      instead: [phrase('instead: no bust shaping')],
      workings: found.workings,
    };
  }
  const height = heightLine('from the underarm to the bust point, in whole rows', below.result.value, gauge);
  const begins = phrase(
    ask.direction === 'up' ? 'do: dart complete at the bust point' : 'do: dart begins at the bust point',
    { rows: below.result, height: height.result },
  );
  const thumb = found.kind === 'bust dart' ? found.thumb : null;
  const place: WedgePlace = {
    piece: 'front',
    where: phrase('where: bust dart'),
    worked: ask.worked,
    before: [say(begins)],
    after: [],
    notes: [
      ...(thumb === null ? [] : [thumbNote(thumb)]),
      ...(ask.worked === 'round'
        ? [
            phrase(
              ask.front.start === 0
                ? 'note: round begins before the front'
                : 'note: round begins before the back',
            ),
          ]
        : []),
      phrase('note: back stays as it is'),
    ],
    workings: [...counted, below, height, ...(found.kind === 'bust dart' ? found.workings : [])],
  };
  return wedgePart(found.kind === 'bust dart' ? found.wedge : found, place, gauge);
}

function thumbNote({ low, high }: { low: number; high: number }): Phrase {
  return phrase('note: rule of thumb', {
    low: quantity('least depth', low, 'cm'),
    high: quantity('greatest depth', high, 'cm'),
  });
}
