/** One size's stitch counts at another gauge, each under the rule that its place asks for. */
import { admissible, type CountRule, type Gauge, stitchesFor } from './gauge.ts';
import { type Counted, type Pattern, type PatternSize, piecesAround } from './pattern.ts';
import { type Cm, cm, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface CountFigure {
  readonly place: Counted;
  readonly pattern: Stitches;
  readonly stitches: Stitches;
  /** Of one piece, without its edge stitches. */
  readonly width: Cm;
  /** What the pattern's own count would measure at this gauge. */
  readonly widthUnchanged: Cm;
  /** The nearest counts on either side that the place allows; both are `stitches` where the sum leaves no choice. */
  readonly below: Stitches;
  readonly above: Stitches;
  readonly workings: readonly WorkingLine[];
}

export type CountFigures = Partial<Readonly<Record<Counted, CountFigure>>>;

export interface RegaugeAsk {
  readonly pattern: Pattern;
  readonly size: PatternSize;
  readonly own: Gauge;
}

/** In an order in which each count follows from those before it. */
const ORDER: readonly Counted[] = [
  'bust',
  'body cast-on',
  'hip',
  'waist',
  'cross back',
  'back neck',
  'shoulder',
  'wrist',
  'sleeve cast-on',
  'upper arm',
  'cap top',
];

export function regaugedCounts(ask: RegaugeAsk): CountFigures {
  let chosen: CountFigures = {};
  for (const place of ORDER) {
    const count = ask.size.counts[place];
    if (count === undefined) continue;
    const figure =
      place === 'shoulder' && sharesCrossBack(chosen)
        ? shoulderOf(count, chosen, ask)
        : figureOf(place, count, ruleFor(place, chosen, ask), ask);
    chosen = { ...chosen, [place]: figure };
  }
  return chosen;
}

/** Stitches of the back at the bust: half of a body in the round. */
export function backLine(bust: Stitches, pattern: Pattern): WorkingLine {
  const a = quantity('bust stitches', bust, 'stitches');
  const formula = piecesAround(pattern) === 1 ? 'a / 2' : 'a';
  return workOut('stitches of the back', formula, { a }, { unit: 'stitches' });
}

function ruleFor(place: Counted, chosen: CountFigures, { pattern, size }: RegaugeAsk): CountRule {
  const body = { ...pattern.repeat, edge: bodyEdge(pattern) };
  const bust = chosen.bust?.stitches;
  switch (place) {
    case 'bust':
      return bustRule(pattern);
    case 'body cast-on':
    case 'hip':
    case 'waist':
      return size.counts[place] === size.counts.bust
        ? bustRule(pattern)
        : reachable({ ...body, parity: parityOf(bust) });
    case 'cross back':
      return plain(body.edge, bust === undefined ? undefined : backLine(bust, pattern).exact);
    case 'back neck':
    case 'shoulder':
      return plain(0, place === 'shoulder' ? undefined : chosen['cross back']?.stitches);
    case 'wrist':
    case 'sleeve cast-on':
      return plain(pattern.edge.sleeves, undefined);
    case 'upper arm':
      return plain(pattern.edge.sleeves, chosen.wrist?.stitches);
    case 'cap top':
      return plain(0, chosen['upper arm']?.stitches);
    default:
      return place satisfies never;
  }
}

function bustRule(pattern: Pattern): CountRule {
  return reachable({
    ...pattern.repeat,
    edge: bodyEdge(pattern),
    parity: isDivided(pattern) ? 'even' : 'any',
  });
}

function bodyEdge(pattern: Pattern): number {
  return pattern.body === 'flat' ? pattern.edge.body : 0;
}

/** A body in the round that is divided at the underarms into two halves alike. */
function isDivided(pattern: Pattern): boolean {
  return pattern.body === 'round' && ['set-in', 'drop shoulder'].includes(pattern.construction);
}

/** Any count of the same parity as another, so that shaping at both sides gets from one to the other. */
function plain(edge: number, like: number | undefined): CountRule {
  return { multiple: 1, plus: 0, edge, parity: parityOf(like) };
}

function parityOf(count: number | undefined): CountRule['parity'] {
  if (count === undefined || !Number.isInteger(count)) return 'any';
  return count % 2 === 0 ? 'even' : 'odd';
}

/** A repeat goes before a parity that it can never have. */
function reachable(rule: CountRule): CountRule {
  return admissible(rule) === undefined ? { ...rule, parity: 'any' } : rule;
}

function figureOf(
  place: Counted,
  count: Stitches,
  rule: CountRule,
  { pattern, own }: RegaugeAsk,
): CountFigure {
  const printed = pattern.gauge.stitches;
  const rate = own.stitches.perCm;
  const width = cm(((count - rule.edge) * printed.span) / printed.count);
  const choice = stitchesFor(width, rate, rule);
  if ('impossible' in choice) throw new RangeError(`no count at the ${place} fits ${JSON.stringify(rule)}`);
  const line = workOut(
    `stitches at the ${place}`,
    rule.edge === 0 ? 'a * b / c' : '(a - e) * b / c + e',
    {
      a: quantity(`stitches at the ${place}, pattern`, count, 'stitches'),
      b: quantity('own gauge', rate, 'stitches/cm'),
      c: quantity('gauge of the pattern', printed.count / printed.span, 'stitches/cm'),
      ...(rule.edge === 0 ? {} : { e: quantity('edge stitches', rule.edge, 'stitches') }),
    },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: choice.step, plus: choice.start } },
  );
  return {
    place,
    pattern: count,
    stitches: choice.chosen,
    width: choice.width,
    widthUnchanged: cm((count - rule.edge) / rate),
    below: choice.below.stitches,
    above: choice.above.stitches,
    workings: [
      line,
      widthLine(place, choice.chosen, rule.edge, own),
      widthLine(place, count, rule.edge, own, ', count unchanged'),
    ],
  };
}

function sharesCrossBack(chosen: CountFigures): boolean {
  return chosen['cross back'] !== undefined && chosen['back neck'] !== undefined;
}

/** What the neck leaves of the cross back, halved. */
function shoulderOf(count: Stitches, chosen: CountFigures, { own }: RegaugeAsk): CountFigure {
  const left = workOut(
    'stitches at the shoulder',
    '(a - b) / 2',
    {
      a: quantity('stitches at the cross back', chosen['cross back']?.stitches ?? 0, 'stitches'),
      b: quantity('stitches at the back neck', chosen['back neck']?.stitches ?? 0, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const exact = stitches(left.exact);
  return {
    place: 'shoulder',
    pattern: count,
    stitches: exact,
    width: cm(exact / own.stitches.perCm),
    widthUnchanged: cm(count / own.stitches.perCm),
    below: exact,
    above: exact,
    workings: [
      left,
      widthLine('shoulder', exact, 0, own),
      widthLine('shoulder', count, 0, own, ', count unchanged'),
    ],
  };
}

function widthLine(
  place: Counted,
  count: Stitches,
  edge: number,
  own: Gauge,
  manner: '' | ', count unchanged' = '',
): WorkingLine {
  return workOut(
    `width at the ${place}${manner}`,
    edge === 0 ? 'a / b' : '(a - e) / b',
    {
      a: quantity(`stitches at the ${place}`, count, 'stitches'),
      b: quantity('own gauge', own.stitches.perCm, 'stitches/cm'),
      ...(edge === 0 ? {} : { e: quantity('edge stitches', edge, 'stitches') }),
    },
    { unit: 'cm' },
  );
}
