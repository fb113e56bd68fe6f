/** A round yoke as steps of a plan: plain rounds, and each shaping round written out, in the order of knitting. */
import type { PhraseName } from './phrases.ts';
import { type Instruction, type Part, type Phrase, phrase, type Step } from './plan.ts';
import { yokeOutline } from './shaped.ts';
import type { Spread } from './spread.ts';
import { rowNotes, written } from './spread-steps.ts';
import { finishedLength, finishedWidth, heightLine, plain, step } from './steps.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { ratesOf } from './wedge-base.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import type { CannotYoke, YokeAlternative, YokeAsk, YokeShape } from './yoke.ts';
import { type PercentageRule, ruleForYoke } from './yoke-percentages.ts';

/** `named`: what is said of a scheme that was published. */
export function yokePart(
  found: YokeShape | CannotYoke,
  ask: YokeAsk,
  named: PhraseName | null,
): Part | Impossible {
  if (found.kind !== 'yoke') {
    const lies = { piece: 'yoke', where: phrase('where: yoke'), worked: 'round' } as const;
    const { because, gaps } = reason(found);
    const ways = found.alternatives.map((alternative) => way(alternative, ask));
    const notes = rowNotes(found.alternatives.flatMap(({ yoke }) => yoke.shaping.map((s) => s.spread)));
    return otherwise(lies, phrase(because, gaps), ways, statedAs(gaps), notes);
  }
  return {
    steps: stepsOf(found, ask, named),
    finished: [
      finishedLength('yoke depth', null, found.rows, ask.gauge),
      finishedWidth('neck around', null, ask.neck, ask.gauge, 1, 0),
    ],
    pieces: [],
  };
}

/** One step a shaping round, with the plain rounds before it; those after the last stand with the last. */
function stepsOf(found: YokeShape, ask: YokeAsk, named: PhraseName | null): Step[] {
  const rounds = inOrder(found, ask);
  const rule = ruleForYoke(ask.underarm, ask.gauge);
  return rounds.map(({ spread, before, after }, i) => {
    const last = i === rounds.length - 1;
    const nth = workOut('shaping round', 'a', { a: quantity('number', i + 1, 'times') }, { unit: 'times' });
    return step('yoke', phrase('where: yoke round', { nth: nth.result }), {
      worked: 'round',
      instead: [
        ...(i === 0 ? [{ do: 'begin with' as const, stitches: spread.before }] : []),
        ...before.instead,
        written(spread),
        ...after.instead,
      ],
      check: last ? phrase('check: yoke depth', { depth: quantity('depth', found.depth, 'cm') }) : null,
      notes: i === 0 ? firstNotes(found, named, rule) : [],
      shaped: i === 0 ? { shape: 'yoke', gauge: ratesOf(ask.gauge), after: yokeOutline(found) } : null,
      workings: [
        nth,
        ...(i === 0 ? [...found.workings, ...rule.workings] : spread.workings),
        ...(last && i > 0 ? [heightLine('depth of the yoke', found.rows, ask.gauge)] : []),
        ...before.lines,
        ...after.lines,
      ],
    });
  });
}

function firstNotes(found: YokeShape, named: PhraseName | null, rule: PercentageRule): Phrase[] {
  return [
    ...(named === null ? [] : [phrase(named)]),
    phrase('note: rule of thumb for the yoke', {
      neck: quantity('neck by the rule', rule.counts.neck, 'stitches'),
      depth: quantity('yoke depth by the rule', rule.yokeDepth, 'cm'),
    }),
    phrase('note: neckline of the yoke'),
    ...rowNotes(found.shaping.map((s) => s.spread)),
  ];
}

interface Rounds {
  readonly spread: Spread;
  readonly before: Plain;
  readonly after: Plain;
}

interface Plain {
  readonly instead: readonly Instruction[];
  readonly lines: readonly WorkingLine[];
}

const NONE: Plain = { instead: [], lines: [] };

function inOrder(found: YokeShape, ask: YokeAsk): Rounds[] {
  return found.shaping.map(({ round, spread }, i) => {
    const since = found.shaping[i - 1]?.round ?? 0;
    const last = i === found.shaping.length - 1;
    return {
      spread,
      before: plainRounds(round - 1, since, spread.before, ask),
      after: last ? plainRounds(found.rows, round, spread.after, ask) : NONE,
    };
  });
}

/** From the round after `since` to the round `upTo`. */
function plainRounds(upTo: number, since: number, count: Spread['before'], { gauge }: YokeAsk): Plain {
  const given = {
    a: quantity('last plain round', upTo, 'rows'),
    b: quantity('rounds before them', since, 'rows'),
  };
  const rounds = workOut(`plain rounds on ${count} stitches`, 'a - b', given, { unit: 'rows' });
  if (rounds.result.value === 0) return NONE;
  const height = heightLine('height of the plain rounds', rounds.result.value, gauge);
  return { instead: [plain(rounds.result.value, count, gauge)], lines: [rounds, height] };
}

function way({ way: name, yoke }: YokeAlternative, ask: YokeAsk): WorkedWay {
  const rounds = inOrder(yoke, ask);
  const [first, last] = [yoke.shaping[0]?.spread, yoke.shaping.at(-1)?.spread];
  const [start, end] = [first?.before ?? ask.underarm, last?.after ?? ask.neck];
  const gaps = {
    underarm: quantity('stitches at the underarm', ask.direction === 'up' ? start : end, 'stitches'),
    neck: quantity('stitches at the neck', ask.direction === 'up' ? end : start, 'stitches'),
    around: quantity('neck around', yoke.neckAround, 'cm'),
    depth: quantity('depth', yoke.depth, 'cm'),
    rounds: quantity('shaping rounds', yoke.shaping.length, 'times'),
  };
  return {
    name: phrase(WAYS[name], gaps),
    instead: [
      { do: 'begin with', stitches: start },
      ...rounds.flatMap(({ spread, before, after }) => [
        ...before.instead,
        written(spread),
        ...after.instead,
      ]),
    ],
    workings: [
      ...yoke.workings,
      ...rounds.flatMap(({ before, after }) => [...before.lines, ...after.lines]),
      ...statedAs(gaps),
    ],
  };
}

const WAYS: Readonly<Record<YokeAlternative['way'], PhraseName>> = {
  'usual neck': 'way: usual neck',
  'nearest count': 'way: nearest yoke counts',
  'without the repeat': 'way: without the repeat',
  'deeper yoke': 'way: deeper yoke',
  'other number of rounds': 'way: other number of rounds',
};

function reason(found: CannotYoke): { because: PhraseName; gaps: Parameters<typeof statedAs>[0] } {
  switch (found.kind) {
    case 'neck not smaller':
      return {
        because: 'cannot: yoke neck not smaller',
        gaps: {
          neck: quantity('stitches at the neck', found.neck, 'stitches'),
          underarm: quantity('stitches at the underarm', found.underarm, 'stitches'),
        },
      };
    case 'no multiple':
      return {
        because: 'cannot: yoke count no multiple',
        gaps: {
          count: quantity(`stitches at the ${found.where}`, found.count, 'stitches'),
          multiple: quantity('stitches of a repeat', found.multiple, 'stitches'),
        },
      };
    case 'repeat too wide':
      return {
        because: 'cannot: repeat too wide',
        gaps: { multiple: quantity('stitches of a repeat', found.multiple, 'stitches') },
      };
    case 'yoke too shallow':
      return {
        because: 'cannot: yoke too shallow',
        gaps: {
          rows: quantity('rounds of the yoke', found.rows, 'rows'),
          needed: quantity('rounds needed', found.needed, 'rows'),
        },
      };
    case 'round too full':
      return {
        because: 'cannot: round too full',
        gaps: { round: quantity('round', found.round, 'times'), ...fullness(found.because) },
      };
    default:
      return found satisfies never;
  }
}

/** A round of single changes without border or repeat fails in one way alone. */
function fullness(because: Extract<CannotYoke, { kind: 'round too full' }>['because']) {
  if (because.kind !== 'too many changes') throw new Error(`a yoke's round was refused: ${because.kind}`);
  return {
    most: quantity('most changes', because.most, 'times'),
    asked: quantity('changes asked for', because.asked, 'times'),
  };
}
