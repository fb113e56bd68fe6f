/** A waist shaped on the lines that are asked for; and what can be had where those cannot take so much, worked out. */
import { type BodyPieces, type PiecesTooShort, shapePieces } from './body-pieces.ts';
import { piecesPart } from './body-pieces-steps.ts';
import {
  type BodyAsk,
  type BodyCannot,
  type BodyShaping,
  perBodyRow,
  shapeBody,
  type WaistAsk,
} from './body-shaping.ts';
import { bodyPart } from './body-steps.ts';
import type { PhraseName } from './phrases.ts';
import { type Part, type Phrase, phrase } from './plan.ts';
import { cm } from './units.ts';
import type { WorkingLine } from './working.ts';

export type WaistShaped = BodyShaping | BodyPieces;
export type WaistRefused = BodyCannot | PiecesTooShort;
type Ask = BodyAsk & { readonly waist: WaistAsk };

/** Darts in the back of pieces make two pieces that differ; else the body is shaped as one. */
export function shapeWaist(ask: Ask): WaistShaped | WaistRefused {
  return ask.lines === 'back darts' && ask.gauge.worked === 'flat' ? shapePieces(ask) : shapeBody(ask);
}

/** `waist`: how its finished width came about, for its workings. */
export function waistPart(shaped: WaistShaped, waist: WorkingLine | null): Part {
  return shaped.kind === 'pieces' ? piecesPart(shaped, waist) : bodyPart(shaped, waist);
}

export interface OtherWaists {
  readonly ways: readonly Phrase[];
  readonly workings: readonly WorkingLine[];
}

/** Other lines that take the waist as it is wanted, and the narrowest that the same lines can; `waist` as above. */
export function otherWaists(ask: Ask, waist: WorkingLine | null): OtherWaists {
  const others = OTHERS.flatMap(({ lines, say }) => {
    const made = lines === ask.lines ? undefined : sound({ ...ask, lines });
    return made === undefined ? [] : wayOf(say, widthWorked(made, waist));
  });
  const least = narrowest(ask);
  const wider = least === undefined ? [] : wayOf('instead: wider waist in these lines', widthOfCounts(least));
  const found = [...others, ...wider];
  return { ways: found.map(({ way }) => way), workings: found.flatMap(({ workings }) => workings) };
}

const OTHERS = [
  { lines: 'sides', say: 'instead: waist at the sides' },
  { lines: 'darts', say: 'instead: waist in darts of both' },
] as const;

/** With each of its sections shaped. */
function sound(ask: Ask): WaistShaped | undefined {
  const made = shapeWaist(ask);
  if (made.kind === 'cannot') return undefined;
  const { sections } = made.kind === 'pieces' ? made.back : made;
  return sections.every(({ spacing }) => spacing === null || spacing.kind === 'spaced') ? made : undefined;
}

/** Count by count wider than it is wanted, as long as anything is drawn in. */
function narrowest(ask: Ask): WaistShaped | undefined {
  const { gauge, lines, edge, pattern } = ask;
  const alike = gauge.worked === 'flat' && lines !== 'back darts' ? 2 : 1;
  const step = (alike * perBodyRow(gauge, lines)) / gauge.stitches.perCm;
  const bust = ((gauge.worked === 'flat' ? 2 : 1) * (pattern.bust - edge)) / gauge.stitches.perCm;
  for (let around = ask.waist.around + step; around < bust; around += step) {
    const made = sound({ ...ask, waist: { ...ask.waist, around: cm(around) } });
    if (made !== undefined) return made;
  }
  return undefined;
}

/** The last of the workings is the width. */
function wayOf(say: PhraseName, workings: readonly WorkingLine[]) {
  const width = workings.at(-1);
  return width === undefined ? [] : [{ way: phrase(say, { width: width.result }), workings }];
}

/** From the waist that is wanted, whose own line is left out. */
function widthWorked(made: WaistShaped, waist: WorkingLine | null): WorkingLine[] {
  const step = waistPart(made, waist).steps.find(({ where }) => where.say === 'where: at the waist');
  const lines = step?.workings ?? [];
  const width = lines.findIndex(({ label }) => label === 'width at the waist');
  return lines.slice(0, width + 1).filter((line) => line !== waist);
}

function widthOfCounts(made: WaistShaped): WorkingLine[] {
  const waist = waistPart(made, null).finished.find(({ name }) => name === 'waist');
  return waist?.workings.slice(0, 1) ?? [];
}
