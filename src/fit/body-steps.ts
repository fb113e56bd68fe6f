/** The body's sections as steps of a plan, in the order of knitting. */
import type { BodySection, BodyShaping } from './body-shaping.ts';
import { rowAt } from './heights.ts';
import type { PhraseName } from './phrases.ts';
import { type Part, type Phrase, phrase, type ShapedAt, type Step } from './plan.ts';
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
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `waist`: how the waist's finished width came about, for its workings. */
export function bodyPart(body: BodyShaping, waist: WorkingLine | null): Part {
  const { ask } = body;
  const pieces = ask.gauge.worked === 'round' ? 1 : 2;
  const steps = body.sections.map((section, i): Step => {
    const made = stepOf(body, section, i === body.sections.length - 1, waist);
    const begins = i === 0 && ask.direction === 'down';
    return begins
      ? { ...made, instead: [{ do: 'begin with', stitches: section.from }, ...made.instead] }
      : made;
  });
  const rowsInAll = body.inAll.result.value;
  return {
    steps,
    finished: [
      finishedWidth('bust', ask.pattern.bust, ask.pattern.bust, ask.gauge, pieces, ask.edge),
      ...(body.waist === null
        ? []
        : [finishedWidth('waist', ask.pattern.bust, body.waist.stitches, ask.gauge, pieces, ask.edge)]),
      finishedWidth(
        'lower edge',
        ask.pattern.hem,
        body.hem?.stitches ?? ask.pattern.hem,
        ask.gauge,
        pieces,
        ask.edge,
      ),
      finishedLength('body, lower edge to underarm', ask.pattern.length, rowsInAll, ask.gauge),
    ],
    pieces: [pieceChange(body.before, body.after, ask.gauge, ask.edge)],
  };
}

function stepOf(body: BodyShaping, section: BodySection, last: boolean, waist: WorkingLine | null): Step {
  switch (section.name) {
    case 'edging':
      return body.ask.direction === 'up' ? castOn(body, section) : lastEdging(body, section);
    case 'plain':
      return section.spacing === null
        ? straight(body, section)
        : shaped(body, section, ['where: hem to underarm', 'where: underarm to hem'], last);
    case 'waist':
      return waistPlain(body, section, waist);
    case 'hem and waist':
      return shaped(body, section, ['where: hem to waist', 'where: waist to hem'], last);
    case 'waist and underarm':
      return shaped(body, section, ['where: waist to underarm', 'where: underarm to waist'], last);
    default:
      return section.name satisfies never;
  }
}

function castOn(body: BodyShaping, section: BodySection): Step {
  const { ask } = body;
  const width = widthLine('lower edge', section.from, ask.gauge, ask.edge);
  return step(pieceName(body), phrase('where: cast-on and hem'), {
    worked: body.ask.gauge.worked,
    pattern: phrase('pattern: cast on', { count: quantity('stitches', ask.pattern.hem, 'stitches') }),
    instead: [
      { do: 'cast on', stitches: section.from },
      ...edging(section.stretch.rows, section.from, ask.gauge),
    ],
    check: checkWidth(width, ask.gauge.worked === 'round'),
    notes: [
      ...(body.hem === null ? [] : [body.hem.neighbours]),
      ...(body.hemMoved ? [phrase('note: count moved for shaping', { change: perRow(body) })] : []),
      ...piecesAlike(body),
    ],
    workings: [
      asPattern(body),
      width,
      ...(body.hem?.workings ?? []),
      ...section.workings,
      edgingDepth(body, section),
    ],
  });
}

function edgingDepth(body: BodyShaping, section: BodySection): WorkingLine {
  return heightLine('depth of the edging', section.stretch.rows, body.ask.gauge);
}

function lastEdging(body: BodyShaping, section: BodySection): Step {
  return step(pieceName(body), phrase('where: last edging'), {
    worked: body.ask.gauge.worked,
    instead: [
      ...edging(section.stretch.rows, section.from, body.ask.gauge),
      { do: 'bind off', stitches: section.to },
    ],
    check: phrase('check: length in all', { length: total(body).result }),
    workings: [...section.workings, edgingDepth(body, section), total(body)],
  });
}

function straight(body: BodyShaping, section: BodySection): Step {
  const { ask } = body;
  const theirs = rowAt("pattern's length", ask.pattern.length, ask.gauge);
  const more = body.inAll.result.value - theirs.result.value;
  const change = workOut(
    more < 0 ? 'rows fewer than the pattern' : 'rows more than the pattern',
    'a - b',
    more < 0 ? { a: theirs.result, b: body.inAll.result } : { a: body.inAll.result, b: theirs.result },
    { unit: 'rows' },
  );
  const name =
    more === 0
      ? 'do: as many rows as the pattern'
      : more > 0
        ? 'do: more rows than the pattern'
        : 'do: fewer rows than the pattern';
  return step(
    pieceName(body),
    phrase(ask.direction === 'up' ? 'where: hem to underarm' : 'where: underarm to hem'),
    {
      worked: body.ask.gauge.worked,
      pattern: phrase('pattern: straight for a length', {
        length: quantity('length', ask.pattern.length, 'cm'),
        rows: theirs.result,
      }),
      instead: [
        plain(section.stretch.rows, section.to, ask.gauge),
        say(phrase(name, { rows: change.result })),
      ],
      check: phrase('check: length in all', { length: total(body).result }),
      notes: piecesAlike(body),
      workings: [
        ...section.workings,
        theirs,
        change,
        heightLine('length of this section', section.stretch.rows, ask.gauge),
        total(body),
      ],
    },
  );
}

function waistPlain(body: BodyShaping, section: BodySection, eased: WorkingLine | null): Step {
  const { ask, waist } = body;
  const width = widthLine('waist', section.from, ask.gauge, ask.edge, ask.gauge.worked === 'round' ? 1 : 2);
  return step(pieceName(body), phrase('where: at the waist'), {
    worked: body.ask.gauge.worked,
    instead: [plain(section.stretch.rows, section.from, ask.gauge)],
    check: phrase(ask.gauge.worked === 'round' ? 'check: width around' : 'check: width of both', {
      width: width.result,
    }),
    notes: [
      ...(waist === null ? [] : [waist.neighbours]),
      phrase('note: plain at the waist is common practice'),
    ],
    workings: [
      ...(eased === null ? [] : [eased, ...shareLine(body, eased)]),
      ...(waist?.workings ?? []),
      width,
      ...section.workings,
      heightLine('plain stretch', section.stretch.rows, ask.gauge),
    ],
  });
}

/** `up`, `down`: the step's place where the body is knitted up, and where it is knitted down. */
function shaped(
  body: BodyShaping,
  section: BodySection,
  [up, down]: readonly [up: PhraseName, down: PhraseName],
  last: boolean,
): Step {
  const { ask } = body;
  const made = section.spacing === null ? null : shaping(section.spacing, at(body), ask.gauge, ask.edge);
  const height = heightLine('length of this section', section.stretch.rows, ask.gauge);
  return step(pieceName(body), phrase(ask.direction === 'up' ? up : down), {
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
    notes: [...(made?.notes ?? []), ...piecesAlike(body)],
    workings: [asPattern(body), ...section.workings, height, total(body), ...(made?.workings ?? [])],
  });
}

/** In pieces, half of what goes round falls to each. */
function shareLine(body: BodyShaping, eased: WorkingLine): WorkingLine[] {
  if (body.ask.gauge.worked === 'round') return [];
  return [workOut('width of one piece', 'a / 2', { a: eased.result }, { unit: 'cm' })];
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
  return quantity('stitches a shaping row', body.ask.gauge.worked === 'round' ? 4 : 2, 'stitches');
}

function at(body: BodyShaping): ShapedAt {
  return body.ask.gauge.worked === 'round' ? 'both sides of both side lines' : 'both edges';
}

function pieceName(body: BodyShaping): 'body' | 'back' {
  return body.ask.gauge.worked === 'round' ? 'body' : 'back';
}

function piecesAlike(body: BodyShaping): Phrase[] {
  return body.ask.gauge.worked === 'round' ? [] : [phrase('note: pieces alike')];
}
