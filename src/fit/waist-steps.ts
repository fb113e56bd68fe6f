/** The plain rows of a body at its waist, as a step. */
import type { FrontAtWaist } from './body-pieces.ts';
import type { BodySection, BodyShaping } from './body-shaping.ts';
import { type Phrase, phrase, type Step } from './plan.ts';
import { checkWidth, heightLine, plain, step, widthLine } from './steps.ts';
import { type WorkingLine, workOut } from './working.ts';

export interface WaistTold {
  readonly body: BodyShaping;
  /** How the waist's finished width came about. */
  readonly waist: WorkingLine | null;
  readonly piece: 'body' | 'back' | 'front';
  /** What the front has at the waist where the back's darts take the rest; absent where it is knitted alike. */
  readonly front?: FrontAtWaist;
}

export function waistStep(told: WaistTold, section: BodySection): Step {
  const { body, piece } = told;
  const { ask, waist } = body;
  const around = waistAround(told, section);
  return step(piece, phrase('where: at the waist'), {
    worked: body.ask.gauge.worked,
    instead: [plain(section.stretch.rows, section.from, ask.gauge)],
    check: around.check,
    notes: [
      ...(waist === null ? [] : waist.neighbours),
      ...around.notes,
      phrase('note: plain at the waist is common practice'),
    ],
    workings: [
      ...around.wanted,
      ...(waist?.workings ?? []),
      ...around.measured,
      ...section.workings,
      heightLine('plain stretch', section.stretch.rows, ask.gauge),
    ],
  });
}

interface WaistAround {
  readonly check: Phrase;
  readonly notes: readonly Phrase[];
  /** From the waist that is wanted to the width of this piece. */
  readonly wanted: readonly WorkingLine[];
  readonly measured: readonly WorkingLine[];
}

function waistAround({ body, waist: eased, front }: WaistTold, { from }: BodySection): WaistAround {
  const { gauge, edge } = body.ask;
  const asked = eased === null ? [] : [eased];
  if (front === undefined) {
    const round = gauge.worked === 'round';
    const width = widthLine('waist', from, gauge, edge, round ? 1 : 2);
    const check = phrase(round ? 'check: width around' : 'check: width of both', { width: width.result });
    const share = asked.flatMap((line) => shareLine(body, line));
    return { check, notes: [], wanted: [...asked, ...share], measured: [width] };
  }
  const back = widthLine('waist of the back', from, gauge, edge);
  const given = { a: back.result, b: front.width.result };
  const width = workOut('width at the waist', 'a + b', given, { unit: 'cm' });
  const note = phrase('note: waist of back and front', { front: given.b, width: width.result });
  const measured = [back, width];
  return { check: checkWidth(back, false), notes: [note], wanted: [...asked, ...front.workings], measured };
}

/** In pieces, half of what goes round falls to each. */
function shareLine(body: BodyShaping, eased: WorkingLine): WorkingLine[] {
  if (body.ask.gauge.worked === 'round') return [];
  return [workOut('width of one piece', 'a / 2', { a: eased.result }, { unit: 'cm' })];
}
