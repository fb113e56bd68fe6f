/** Yarn by the size of a sweater: the pattern's amount for another one, and whether what is left lasts for the rest. */
import { type Outcome, phrase } from '../fit/plan.ts';
import { type Cm, cm } from '../fit/units.ts';
import { type Impossible, statedAs } from '../fit/ways.ts';
import { quantity, workOut } from '../fit/working.ts';
import { USUAL_MARGIN, yarnFromPattern } from '../fit/yarn.ts';
import { areaLeft, areaRatio, type Knitted, type Sweater } from '../fit/yarn-garment.ts';
import { yarnLeft } from '../fit/yarn-left.ts';
import { restPart } from '../fit/yarn-rest-steps.ts';
import { yarnPart } from '../fit/yarn-steps.ts';
import { type Ledger, take, takeChoice, takeLength } from './ledger.ts';
import { missing, outcomeOf, planOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { patternGauge } from './pattern-of.ts';

/** The pattern's amount for another size, length or gauge, in balls of the knitter's own. */
export function resized(book: Ledger): Outcome {
  const balls = take(book, 'yarn_balls', 'number')?.count;
  const theirs = take(book, 'yarn_band', 'yarn length')?.metres;
  const own = take(book, 'yarn_own_band', 'yarn length')?.metres;
  const pattern = sized(takeLength(book, 'yarn_theirs_around'), takeLength(book, 'yarn_theirs_long'));
  const wanted = sized(takeLength(book, 'yarn_around'), takeLength(book, 'yarn_long'));
  const gauge = { pattern: patternGauge(book)?.stitches.perCm, own: ownGauge(book, 'round')?.stitches.perCm };
  if (balls === undefined || theirs === undefined || own === undefined) return missing(book);
  if (pattern === undefined || wanted === undefined) return missing(book);
  if (gauge.pattern === undefined || gauge.own === undefined) return missing(book);
  const printed = workOut(
    'yarn of the pattern',
    'a * b',
    { a: quantity('balls of the pattern', balls, 'times'), b: quantity('length of one', theirs, 'm') },
    { unit: 'm' },
  );
  const ratio = areaRatio(wanted, pattern);
  const need = yarnFromPattern(
    {
      amount: { value: printed.exact, unit: 'm' },
      areaRatio: ratio.exact,
      gauge: { pattern: gauge.pattern, own: gauge.own },
    },
    { metres: own },
    USUAL_MARGIN,
  );
  const notes = [phrase('note: sleeves change as the body does'), phrase('note: denser stitches take more')];
  return planOf(book, [phrase('summary: yarn')], [yarnPart(need, [printed, ratio], notes)]);
}

function sized(bust: Cm | undefined, length: Cm | undefined): Pick<Sweater, 'bust' | 'length'> | undefined {
  return bust === undefined || length === undefined ? undefined : { bust, length };
}

const SLEEVES: Readonly<Record<string, Knitted['sleeves']>> = { none: 0, one: 1, both: 2 };

/** Whether the yarn that is left lasts for what is still to knit of a sweater. */
export function restOfSweater(book: Ledger): Outcome {
  const sweater = sweaterAsked(book);
  const body = takeLength(book, 'yarn_body_done') ?? cm(0);
  const sleeves = SLEEVES[takeChoice(book, 'yarn_sleeves_done') ?? ''];
  const used = take(book, 'yarn_used_all', 'yarn weight')?.grams;
  const left = take(book, 'yarn_left', 'yarn weight')?.grams;
  if (sweater === undefined || sleeves === undefined) return missing(book);
  if (used === undefined || left === undefined) return missing(book);
  if (body > sweater.length) return outcomeOf(book, tooMuchDone(body, sweater.length), []);
  const area = areaLeft(sweater, { body, sleeves });
  if (area.done === 0) return outcomeOf(book, nothingDone(), []);
  const found = yarnLeft({
    unit: 'g',
    left,
    used: { amount: used, area: area.done },
    rest: area.rest,
    margin: USUAL_MARGIN,
  });
  const bust = sleeves === 2 ? sweater.bust : null;
  const part = restPart(found, {
    left: { value: left, unit: 'g' },
    rest: area.rest,
    bust,
    area: area.workings,
  });
  const summary = found.kind === 'lasts' ? 'summary: yarn lasts' : 'summary: yarn runs short';
  return planOf(book, [phrase(summary)], [part]);
}

/** The measurements of a sweater that were asked for; undefined where one is missing. */
export function sweaterAsked(book: Ledger): Sweater | undefined {
  const body = sized(takeLength(book, 'yarn_around'), takeLength(book, 'yarn_long'));
  const [upperArm, wrist] = [takeLength(book, 'yarn_upper_arm'), takeLength(book, 'yarn_wrist')];
  const sleeve = takeLength(book, 'sleeve_length');
  if (body === undefined || upperArm === undefined || wrist === undefined || sleeve === undefined)
    return undefined;
  return { ...body, upperArm, wrist, sleeve };
}

function tooMuchDone(body: Cm, length: Cm): Impossible {
  const gaps = {
    done: quantity('length of the body so far', body, 'cm'),
    length: quantity('length from hem to shoulder', length, 'cm'),
  };
  return {
    kind: 'cannot',
    because: [phrase('cannot: more knitted than there is', gaps)],
    instead: [phrase('instead: measure once more')],
    workings: statedAs(gaps),
  };
}

function nothingDone(): Impossible {
  return {
    kind: 'cannot',
    because: [phrase('cannot: nothing knitted yet')],
    instead: [phrase('instead: weigh a swatch')],
    workings: [],
  };
}
