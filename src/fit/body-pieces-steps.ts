/** A back with its darts and a front without them as steps of a plan: first the one, then the other. */
import type { BodyItem } from './body-lay.ts';
import type { BodyPieces } from './body-pieces.ts';
import type { BodyShaping } from './body-shaping.ts';
import { bodyChange, bodySteps } from './body-steps.ts';
import { type Finished, type Part, phrase, type Step } from './plan.ts';
import { finishedFrom, finishedLength, finishedWidth, widthLine } from './steps.ts';
import type { Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `waist`: how the waist's finished width came about, for its workings. */
export function piecesPart(pieces: BodyPieces, waist: WorkingLine | null): Part {
  const { back, front, atWaist } = pieces;
  return {
    steps: [
      ...bodySteps({ body: back, waist, piece: 'back', alike: false, front: atWaist }, whole(back)),
      ...withoutDarts(bodySteps({ body: front, waist, piece: 'front', alike: false }, whole(front)), front),
    ],
    finished: piecesFinished(pieces),
    pieces: [back, front].map(bodyChange),
  };
}

function whole({ sections }: BodyShaping): BodyItem[] {
  return sections.map((section) => ({ kind: 'section', section }));
}

/** Said at the first step of the front. */
function withoutDarts([first, ...rest]: readonly Step[], { inAll }: BodyShaping): Step[] {
  if (first === undefined) return [];
  const note = phrase('note: front without darts', { rows: inAll.result });
  return [{ ...first, notes: [note, ...first.notes], workings: [...first.workings, inAll] }, ...rest];
}

function piecesFinished({ back, front, atWaist }: BodyPieces): Finished[] {
  const { gauge, edge, pattern } = back.ask;
  const both = (name: string, theirs: Stitches, ofBack: Stitches, ofFront: Stitches): Finished => {
    const expected = widthOfBoth(name, ofBack, ofFront, { gauge, edge });
    const printed = widthLine(`${name} of the pattern's count`, theirs, gauge, edge, 2);
    return finishedFrom(
      name,
      expected,
      { rate: gauge.stitches, hangsOn: 'stitch gauge', worked: null },
      printed,
    );
  };
  const hem = (body: BodyShaping) => body.hem?.stitches ?? pattern.hem;
  return [
    finishedWidth('bust', pattern.bust, pattern.bust, gauge, 2, edge),
    both('waist', pattern.bust, back.waist?.stitches ?? pattern.bust, atWaist.stitches),
    both('lower edge', pattern.hem, hem(back), hem(front)),
    finishedLength('body, lower edge to underarm', pattern.length, back.inAll.result.value, gauge),
  ];
}

/** Around back and front of different counts, the edge stitches of each left out. */
function widthOfBoth(
  place: string,
  back: Stitches,
  front: Stitches,
  { gauge, edge }: Pick<BodyShaping['ask'], 'gauge' | 'edge'>,
): WorkingLine {
  return workOut(
    `width at the ${place}`,
    edge === 0 ? '(a + b) / d' : '(a - c + b - c) / d',
    {
      a: quantity('stitches of the back', back, 'stitches'),
      ...(edge === 0 ? {} : { c: quantity('edge stitches', edge, 'stitches') }),
      b: quantity('stitches of the front', front, 'stitches'),
      d: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
    },
    { unit: 'cm' },
  );
}
