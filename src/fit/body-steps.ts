/** The body's sections as steps of a plan, in the order of knitting. */
import type { BodyItem } from './body-lay.ts';
import { type BodySection, type BodyShaping, perBodyRow, toDartLine } from './body-shaping.ts';
import { dartPoints } from './dart-lines.ts';
import { rowAt } from './heights.ts';
import type { PhraseName } from './phrases.ts';
import {
  type Finished,
  type Instruction,
  type Part,
  type Phrase,
  type PieceChange,
  phrase,
  type ShapedAt,
  type Step,
} from './plan.ts';
import {
  checkWidth,
  edging,
  finishedLength,
  finishedWidth,
  fromTo,
  heightLine,
  pieceChange,
  plain,
  say,
  shaping,
  step,
  widthLine,
} from './steps.ts';
import { type WaistTold, waistStep } from './waist-steps.ts';
import { statedAs } from './ways.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `waist`: how the waist's finished width came about, for its workings. */
export function bodyPart(body: BodyShaping, waist: WorkingLine | null): Part {
  const sections = body.sections.map((section): BodyItem => ({ kind: 'section', section }));
  return {
    steps: bodySteps({ body, waist, piece: pieceName(body), alike: true }, sections),
    finished: bodyFinished(body),
    pieces: [bodyChange(body)],
  };
}

/** The piece before and after, with its dart lines where it has any. */
export function bodyChange(body: BodyShaping): PieceChange {
  const { gauge, edge } = body.ask;
  const change = pieceChange(body.before, body.after, gauge, edge);
  const darts = dartPoints(body);
  return darts.length === 0 ? change : { ...change, darts };
}

/** Which piece is told of, and whether its front is told to be knitted alike. */
export interface BodyTold extends WaistTold {
  readonly alike: boolean;
}

/** Sections and short rows in the order of knitting. */
export function bodySteps(told: BodyTold, items: readonly BodyItem[]): Step[] {
  const { ask } = told.body;
  const last = items.at(-1);
  const steps = items.flatMap((item): readonly Step[] => {
    switch (item.kind) {
      case 'section':
        return [stepOf(told, item.section, item === last)];
      case 'short rows':
        return item.part.steps;
      case 'cannot lie':
        return [cannotLie(told, item)];
      default:
        return item satisfies never;
    }
  });
  const [first] = sectionsOf(items);
  if (ask.direction === 'up' || first === undefined) return steps;
  const begin: Instruction = { do: 'begin with', stitches: first.from };
  return steps.map((one, i) => (i === 0 ? { ...one, instead: [begin, ...one.instead] } : one));
}

function sectionsOf(items: readonly BodyItem[]): BodySection[] {
  return items.flatMap((item) => (item.kind === 'section' ? [item.section] : []));
}

function cannotLie(
  { piece, body: { ask } }: BodyTold,
  { part, section }: Extract<BodyItem, { kind: 'cannot lie' }>,
): Step {
  const where = phrase('where: short rows that cannot lie here');
  if (part !== null) {
    const notes = [...part.because, ...part.instead];
    return step(piece, where, { worked: ask.gauge.worked, notes, workings: part.workings });
  }
  const why = section.name === 'edging' ? 'cannot: short rows in the edging' : 'cannot: rows all shape';
  const notes = [phrase(why), phrase('instead: another place for the short rows')];
  return step(piece, where, { worked: ask.gauge.worked, notes });
}

export function bodyFinished(body: BodyShaping): Finished[] {
  const { ask } = body;
  const pieces = ask.gauge.worked === 'round' ? 1 : 2;
  const width = (name: string, theirs: number, count: number) =>
    finishedWidth(name, theirs, count, ask.gauge, pieces, ask.edge);
  return [
    width('bust', ask.pattern.bust, ask.pattern.bust),
    ...(body.waist === null ? [] : [width('waist', ask.pattern.bust, body.waist.stitches)]),
    width('lower edge', ask.pattern.hem, body.hem?.stitches ?? ask.pattern.hem),
    finishedLength('body, lower edge to underarm', ask.pattern.length, body.inAll.result.value, ask.gauge),
  ];
}

function stepOf(told: BodyTold, section: BodySection, last: boolean): Step {
  const made = wholeStep(told, section, last);
  if (section.part !== 'rest') return made;
  return { ...made, where: phrase('where: on from the short rows'), pattern: null };
}

function wholeStep(told: BodyTold, section: BodySection, last: boolean): Step {
  switch (section.name) {
    case 'edging':
      return told.body.ask.direction === 'up' ? castOn(told, section) : lastEdging(told, section);
    case 'plain':
      return section.spacing === null && unshaped(told.body)
        ? straight(told, section, last)
        : shaped(told, section, ['where: hem to underarm', 'where: underarm to hem'], last);
    case 'waist':
      return waistStep(told, section);
    case 'hem and waist':
      return shaped(told, section, ['where: hem to waist', 'where: waist to hem'], last);
    case 'waist and underarm':
      return shaped(told, section, ['where: waist to underarm', 'where: underarm to waist'], last);
    default:
      return section.name satisfies never;
  }
}

/** Whether the pattern's body goes straight from hem to underarm, here as there. */
function unshaped({ sections }: BodyShaping): boolean {
  return sections.every(({ from, to }) => from === to);
}

function castOn({ body, piece, alike }: BodyTold, section: BodySection): Step {
  const { ask } = body;
  const width = widthLine('lower edge', section.from, ask.gauge, ask.edge);
  return step(piece, phrase('where: cast-on and hem'), {
    worked: body.ask.gauge.worked,
    pattern: phrase('pattern: cast on', { count: quantity('stitches', ask.pattern.hem, 'stitches') }),
    instead: [
      { do: 'cast on', stitches: section.from },
      ...edging(section.stretch.rows, section.from, ask.gauge),
    ],
    check: checkWidth(width, ask.gauge.worked === 'round'),
    notes: [...hemNotes(body), ...piecesAlike(body, alike)],
    workings: [asPattern(body), width, ...hemLines(body), ...section.workings, edgingDepth(body, section)],
  });
}

/** Where the count at the lower edge is not the pattern's. */
function hemNotes(body: BodyShaping): Phrase[] {
  const moved = body.hemMoved ? [phrase('note: count moved for shaping', { change: perRow(body) })] : [];
  return [...(body.hem?.neighbours ?? []), ...moved];
}

function hemLines(body: BodyShaping): WorkingLine[] {
  return [...(body.hem?.workings ?? []), ...(body.hemMoved ? statedAs({ change: perRow(body) }) : [])];
}

function edgingDepth(body: BodyShaping, section: BodySection): WorkingLine {
  return heightLine('depth of the edging', section.stretch.rows, body.ask.gauge);
}

function lastEdging({ body, piece }: BodyTold, section: BodySection): Step {
  return step(piece, phrase('where: last edging'), {
    worked: body.ask.gauge.worked,
    instead: [
      ...edging(section.stretch.rows, section.from, body.ask.gauge),
      { do: 'bind off', stitches: section.to },
    ],
    check: phrase('check: length in all', { length: total(body).result }),
    notes: hemNotes(body),
    workings: [...hemLines(body), ...section.workings, edgingDepth(body, section), total(body)],
  });
}

function straight({ body, piece, alike }: BodyTold, section: BodySection, last: boolean): Step {
  const { ask } = body;
  const theirs = rowAt("pattern's length", ask.pattern.length, ask.gauge);
  const more = body.inAll.result.value - theirs.result.value;
  const change = workOut(
    more < 0 ? 'rows fewer than the pattern' : 'rows more than the pattern',
    'a - b',
    more < 0 ? { a: theirs.result, b: body.inAll.result } : { a: body.inAll.result, b: theirs.result },
    { unit: 'rows' },
  );
  const height = heightLine('length of this section', section.stretch.rows, ask.gauge);
  const name =
    more === 0
      ? 'do: as many rows as the pattern'
      : more > 0
        ? 'do: more rows than the pattern'
        : 'do: fewer rows than the pattern';
  return step(piece, phrase(ask.direction === 'up' ? 'where: hem to underarm' : 'where: underarm to hem'), {
    worked: body.ask.gauge.worked,
    pattern: phrase('pattern: straight for a length', {
      length: quantity('length', ask.pattern.length, 'cm'),
      rows: theirs.result,
    }),
    instead: [
      plain(section.stretch.rows, section.to, ask.gauge),
      ...(section.part === 'before' ? [] : [say(phrase(name, { rows: change.result }))]),
    ],
    check: last
      ? phrase('check: length in all', { length: total(body).result })
      : phrase('check: length so far', { length: height.result }),
    notes: piecesAlike(body, alike),
    workings: [...section.workings, theirs, change, height, total(body)],
  });
}

/** `up`, `down`: the step's place where the body is knitted up, and where it is knitted down. */
function shaped(
  { body, piece, alike }: BodyTold,
  section: BodySection,
  [up, down]: readonly [up: PhraseName, down: PhraseName],
  last: boolean,
): Step {
  const { ask } = body;
  const made = section.spacing === null ? null : shaping(section.spacing, at(body), ask.gauge, ask.edge);
  const height = heightLine('length of this section', section.stretch.rows, ask.gauge);
  const darts = dartLines(body, section);
  return step(piece, phrase(ask.direction === 'up' ? up : down), {
    worked: body.ask.gauge.worked,
    pattern:
      ask.direction === 'up'
        ? fromTo(ask.pattern.hem, ask.pattern.bust)
        : fromTo(ask.pattern.bust, ask.pattern.hem),
    instead: [
      ...(made?.instead ?? []),
      ...(section.spacing === null ? [plain(section.stretch.rows, section.to, ask.gauge)] : []),
    ],
    check: last
      ? phrase('check: length in all', { length: total(body).result })
      : phrase('check: length so far', { length: height.result }),
    notes: [...darts.notes, ...(made?.notes ?? []), ...piecesAlike(body, alike)],
    workings: [
      asPattern(body),
      ...darts.workings,
      ...section.workings,
      height,
      total(body),
      ...(made?.workings ?? []),
    ],
  });
}

function asPattern({ ask }: BodyShaping): WorkingLine {
  return workOut(
    "the pattern's change from hem to underarm",
    'a - b',
    {
      a: quantity("the pattern's stitches at the bust", ask.pattern.bust, 'stitches'),
      b: quantity("the pattern's stitches at the lower edge", ask.pattern.hem, 'stitches'),
    },
    { unit: 'stitches' },
  );
}

function total(body: BodyShaping): WorkingLine {
  return heightLine('length from the lower edge to the underarm', body.inAll.result.value, body.ask.gauge);
}

function perRow(body: BodyShaping) {
  return quantity('stitches a shaping row', perBodyRow(body.ask.gauge, body.ask.lines), 'stitches');
}

function at(body: BodyShaping): ShapedAt {
  const { gauge, lines = 'sides' } = body.ask;
  const round = gauge.worked === 'round';
  if (lines === 'sides') return round ? 'both sides of both side lines' : 'both edges';
  return lines === 'darts' && round ? 'both sides of all four dart lines' : 'both sides of both dart lines';
}

/** Where the dart lines lie; said where the first of them is shaped. */
function dartLines({ ask, sections }: BodyShaping, { from, name }: BodySection) {
  const { gauge, lines = 'sides' } = ask;
  const first = sections.find(({ spacing }) => spacing !== null)?.name === name;
  if (lines === 'sides' || !first) return { notes: [], workings: [] };
  const line = toDartLine(from, ask);
  const where = gauge.worked === 'flat' ? 'piece' : lines === 'back darts' ? 'back' : 'round';
  return { notes: [phrase(DART_LINES[where], { in: line.result })], workings: [line] };
}

const DART_LINES = {
  round: 'note: four dart lines',
  piece: 'note: dart lines of a piece',
  back: 'note: dart lines of the back',
} as const satisfies Record<string, PhraseName>;

function pieceName(body: BodyShaping): 'body' | 'back' {
  return body.ask.gauge.worked === 'round' ? 'body' : 'back';
}

function piecesAlike(body: BodyShaping, alike: boolean): Phrase[] {
  return body.ask.gauge.worked === 'round' || !alike ? [] : [phrase('note: pieces alike')];
}
