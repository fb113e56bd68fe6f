/** Changes spread across one row as a step of a plan: the row written out, or what can be done in its place. */
import { type Instruction, type Part, type Phrase, phrase } from './plan.ts';
import { changesIn, plain } from './row.ts';
import type { BreaksRule, CannotSpread, Spread, SpreadAlternative } from './spread.ts';
import { step } from './steps.ts';
import type { Stitches } from './units.ts';
import { type Impossible, otherwise, type WorkedWay } from './ways.ts';
import type { Worked } from './words.ts';
import { quantity } from './working.ts';

export function spreadPart(found: Spread | CannotSpread, worked: Worked): Part | Impossible {
  const lies = { piece: 'all', where: phrase('where: one row'), worked } as const;
  if (found.kind !== 'spread') {
    const notes = rowNotes(found.alternatives.flatMap((a) => a.rows));
    return otherwise(lies, reason(found), found.alternatives.map(way), found.workings, notes);
  }
  return {
    steps: [
      step(lies.piece, lies.where, {
        worked,
        instead: [written(found)],
        notes: [phrase(ENDS[found.symmetry]), ...rowNotes([found])],
        workings: found.workings,
      }),
    ],
    finished: [],
    pieces: [],
  };
}

const ENDS = {
  seamless: 'note: round has no join',
  symmetrical: 'note: flat ends are half',
  'last end one longer': 'note: one end is longer',
} as const;

/** What the signs in the rows mean. */
export function rowNotes(spreads: readonly Spread[]): Phrase[] {
  const changes = new Set(spreads.flatMap(({ row }) => changesIn(row)));
  return [
    phrase('note: k as the pattern has it'),
    ...[...changes].map((change) => phrase(`note: ${change}`)),
  ];
}

/** One row as an instruction. */
export function written({ row, before, after }: Spread): Instruction {
  return { do: 'work row', row, before, after };
}

function reason(found: CannotSpread): Phrase {
  switch (found.kind) {
    case 'too many changes':
      return phrase('cannot: changes exceed the row', {
        asked: quantity('changes asked for', found.asked, 'times'),
        most: quantity('most changes', found.most, 'times'),
      });
    case 'no multiple':
      return phrase('cannot: changes do not come out', {
        change: quantity('difference', Math.abs(found.change), 'stitches'),
        each: quantity('stitches by which a change alters the count', found.each, 'stitches'),
      });
    case 'no whole repeats':
      return phrase('cannot: no whole repeats', {
        stitches: quantity('stitches', found.stitches, 'stitches'),
        repeat: quantity('repeat', found.repeat, 'stitches'),
        over: quantity('stitches over', found.over, 'stitches'),
      });
    case 'result breaks the rule':
      return brokenRule(found);
    default:
      return found satisfies never;
  }
}

function brokenRule({ after }: BreaksRule): Phrase {
  return phrase('cannot: count breaks the rule', { after: quantity('count', after, 'stitches') });
}

/** Several rows have a plain one between each two. */
function way({ way: name, rows: spreads }: SpreadAlternative): WorkedWay {
  const after = quantity('stitches after the row', spreads.at(-1)?.after ?? 0, 'stitches');
  const instead = spreads.flatMap((spread, i) => [
    ...(i === 0 ? [] : [plainRow(spread.before)]),
    written(spread),
  ]);
  return { name: phrase(`way: ${name}`, { after }), instead, workings: spreads.flatMap((s) => s.workings) };
}

function plainRow(count: Stitches): Instruction {
  return { do: 'work row', row: [plain(count)], before: count, after: count };
}
