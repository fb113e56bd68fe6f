/** Figures that stand in checks, sentences and notes of a plan, held against the whole garment as it was knitted. */
import type { Instruction, Phrase, Step } from '../../src/fit/plan.ts';
import type { Answer } from '../../src/flow/answer.ts';
import { armholeRows } from './garment-checks.ts';
import type { Knitting } from './knitting.ts';
import { frontNeck, scheduleAt, sleeveAtUnderarm, slopeOf, told, yokeEnds } from './necks.ts';
import { figure } from './whole-checks.ts';

export function figuresAsKnitted(knitting: Knitting): void {
  for (const step of knitting.plan.steps) {
    knitting.findings.at(`said at ${step.where.say}`);
    const said = step.instead.flatMap((one) => (one.do === 'say' ? [one.phrase] : []));
    for (const phrase of [...said, ...step.notes, ...(step.check === null ? [] : [step.check])])
      for (const [name, found] of Object.entries(foundFor(knitting, step, phrase)))
        if (found !== undefined) {
          knitting.findings.meet(`figure held: ${phrase.say}`);
          knitting.findings.near(figure(phrase, name), found, `${phrase.say}: ${name}`);
        }
  }
}

type Found = Readonly<Record<string, number | undefined>>;

function foundFor(knitting: Knitting, step: Step, phrase: Phrase): Found {
  return (
    ofArmhole(knitting, step, phrase) ??
    ofShoulders(knitting, step, phrase) ??
    ofNeck(knitting, step, phrase) ??
    ofSleeve(knitting, step, phrase) ??
    ofDarts(knitting, step, phrase) ??
    ofCounts(knitting, step, phrase) ??
    {}
  );
}

type Finder = (knitting: Knitting, step: Step, phrase: Phrase) => Found | undefined;

const ofArmhole: Finder = (knitting, step, phrase) => {
  const { rowsPerCm } = knitting.printed;
  const own = armholeRows(knitting, 'back') ?? marked(knitting);
  const theirs = step.pattern?.say === 'pattern: armhole' ? figure(step.pattern, 'rows') : undefined;
  const difference = own === undefined || theirs === undefined ? undefined : own - theirs;
  switch (phrase.say) {
    case 'check: armhole depth':
    case 'check: armhole depth from the markers':
      return { depth: own && own / rowsPerCm };
    case 'note: shoulders come later':
      return { rows: difference };
    case 'note: shoulders come earlier':
      return { rows: difference && -difference };
    case 'do: front neck begins above the marker': {
      const neck = frontNeck(knitting.plan);
      return { rows: own === undefined || neck === undefined ? undefined : own - neck.rows };
    }
    default:
      return undefined;
  }
};

/** Of a dropped shoulder, from the markers. */
function marked({ plan }: Knitting): number | undefined {
  const [mark] = told(plan, 'where: straight armhole').flatMap((one) =>
    one.do === 'say' && one.phrase.say === 'do: mark the underarm' ? [figure(one.phrase, 'rows')] : [],
  );
  return mark;
}

const ofShoulders: Finder = ({ plan, bench, printed }, step, phrase) => {
  const rows = slopeOf(step.instead);
  switch (phrase.say) {
    case 'check: shoulder drop': {
      // Of short rows each stitch tells how far it rose; bind-offs lie two rows apart.
      const grown = bench.done.get(`${step.piece}: ${step.where.say}`)?.grown ?? [];
      const short = step.instead.some((one) => one.do === 'short rows') && grown.length > 0;
      const knitted = short ? Math.max(...grown) - Math.min(...grown) : rows - 2;
      return { drop: rows === 0 ? undefined : knitted / printed.rowsPerCm };
    }
    case 'note: drop as knitted':
      return { drop: rows === 0 ? undefined : rows / printed.rowsPerCm };
    case 'note: neck between the shoulders': {
      const both = startOf(step.instead);
      const one = startOf(told(plan, 'where: shoulder at the right'));
      return { neck: both === undefined || one === undefined ? undefined : both - 2 * one };
    }
    case 'note: shoulders follow the neck':
      return { shoulder: frontNeck(plan)?.shoulders[0] };
    default:
      return undefined;
  }
};

function startOf(instructions: readonly Instruction[]): number | undefined {
  for (const one of instructions) {
    if (one.do === 'short rows') return one.wedge.needle;
    if (one.do === 'shape edges') return one.schedule.from;
  }
  return undefined;
}

const ofNeck: Finder = ({ plan, answers, printed }, step, phrase) => {
  const neck = frontNeck(plan);
  const before = step.shaped?.shape === 'neck' ? step.shaped.before : null;
  const after = step.shaped?.shape === 'neck' ? step.shaped.after : null;
  const ends = yokeEnds(plan, printed.body.up);
  const around = ends && ends.neck / printed.stitchesPerCm;
  const gained = before === null || neck === undefined ? undefined : neck.shoulders[0] - before.shoulder;
  const earlier = before === null || neck === undefined ? undefined : neck.rows - before.rows;
  const longer = before === null || after === null ? undefined : after.edge - before.edge;
  switch (phrase.say) {
    case 'check: length to the shoulder':
      return { length: neck && neck.rows / printed.rowsPerCm };
    case 'note: neck begins earlier':
      return { rows: earlier };
    case 'note: neck begins later':
      return { rows: earlier && -earlier };
    case 'note: shoulders gain':
      return { count: gained };
    case 'note: shoulders lose':
      return { count: gained && -gained };
    case 'note: neckband gains':
      return { edge: longer, count: longer && Math.round(longer * printed.stitchesPerCm) };
    case 'note: neckband loses':
      return { edge: longer && -longer, count: longer && Math.round(-longer * printed.stitchesPerCm) };
    case 'do: neck as the counts give it':
      return { stitches: ends?.neck, around };
    case 'note: raglan neck too narrow':
    case 'note: raglan neck too wide': {
      const wanted = lengthOf(answers.neck_around);
      const sign = phrase.say === 'note: raglan neck too wide' ? 1 : -1;
      return {
        wanted,
        off: wanted === undefined || around === undefined ? undefined : sign * (around - wanted),
      };
    }
    default:
      return undefined;
  }
};

function lengthOf(answer: Answer | undefined): number | undefined {
  return answer?.given === 'value' && answer.value.kind === 'length' ? answer.value.cm : undefined;
}

const ofSleeve: Finder = (knitting, step, phrase) => {
  const { plan, answers, printed } = knitting;
  const arm = sleeveAtUnderarm(knitting);
  const more = arm === undefined ? undefined : Math.abs(arm - printed.upperArm);
  switch (phrase.say) {
    case 'note: sleeves changed, counted in':
    case 'note: cap takes the difference':
    case 'do: cap for another upper arm':
      return { count: more };
    case 'do: sleeve top has':
    case 'check: sleeve top': {
      const [top] = step.instead.flatMap((one) =>
        one.do === 'say' && one.phrase.say === 'do: sleeve top has' ? [figure(one.phrase, 'top')] : [],
      );
      const bare = step.notes.some(({ say }) => say === 'note: sleeve top without edge stitches');
      const edge = bare ? 0 : printed.edge.sleeves;
      const width = top === undefined ? undefined : (top - edge) / printed.stitchesPerCm;
      return phrase.say === 'check: sleeve top' ? { width } : { width, top: arm };
    }
    case 'do: shorten the sleeve by the overhang':
    case 'do: lengthen the sleeve to the shoulder': {
      const [back, across] = [lengthOf(answers.back_width), lengthOf(answers.cross_back)];
      const over = back === undefined || across === undefined ? undefined : (back - across) / 2;
      return phrase.say === 'do: lengthen the sleeve to the shoulder'
        ? { short: over && -over }
        : { overhang: over };
    }
    case 'check: cap edge': {
      if (step.shaped?.shape !== 'cap') return {};
      const { front, back } = step.shaped.armhole;
      return { wanted: front.edge + back.edge };
    }
    case 'note: cap eased in':
    case 'note: cap stretched': {
      if (step.shaped?.shape !== 'cap') return {};
      const { armhole, after } = step.shaped;
      return { by: Math.abs(after.edge - armhole.front.edge - armhole.back.edge) };
    }
    case 'note: neck begins within the armhole':
      return { last: scheduleAt(plan, 'where: armhole of the front')?.events.at(-1)?.row };
    default:
      return undefined;
  }
};

const ofDarts: Finder = ({ plan, printed }, step, phrase) => {
  const [spaced] = step.instead.flatMap((one) => (one.do === 'shape' ? [one.spaced] : []));
  const height = spaced && spaced.rows / printed.rowsPerCm;
  const wider = spaced && Math.abs(spaced.to - spaced.from);
  const [castOn] = plan.steps.flatMap(({ piece, instead }) =>
    instead.flatMap((one) => (one.do === 'cast on' && piece !== 'sleeve' ? [one.stitches] : [])),
  );
  const begun = castOn ?? printed.bust;
  const front = printed.body.worked === 'round' ? Math.floor(begun / 2) : begun;
  switch (phrase.say) {
    case 'do: widen up to the bust point':
    case 'do: widen down to the bust point':
    case 'do: narrow up to the underarm':
    case 'do: narrow down to the waist':
      return { rows: spaced?.rows, height };
    case 'check: front is wider': {
      const [added] = step.instead.flatMap((one) =>
        one.do === 'say' && one.phrase.say === 'do: cast on more for the front'
          ? [figure(one.phrase, 'added')]
          : [],
      );
      const stitches = wider ?? added;
      return { width: stitches && stitches / printed.stitchesPerCm };
    }
    case 'do: cast on more for the front':
      return { front: front + figure(phrase, 'added') };
    case 'note: front is back to the pattern':
    case 'note: front keeps its stitches':
      return { front: spaced?.to };
    default:
      return undefined;
  }
};

const ofCounts: Finder = ({ printed }, step, phrase) => {
  const sleeve = step.piece === 'sleeve';
  const edge = sleeve ? printed.edge.sleeves : printed.edge.body;
  const wide = (count: number) => (count - edge) / printed.stitchesPerCm;
  switch (phrase.say) {
    case 'note: nearest counts':
      return { belowWidth: wide(figure(phrase, 'below')), aboveWidth: wide(figure(phrase, 'above')) };
    case 'note: way out, count within reach':
      return { width: wide(figure(phrase, 'end')) };
    case 'do: your gauge':
      return { stitches: printed.stitchesPerCm, rows: printed.rowsPerCm };
    case 'do: wedge before the neck edge': {
      const after = step.instead.flatMap((one) => (one.do === 'work plain' ? [one.rows] : []));
      const [wedge] = step.instead.flatMap((one) => (one.do === 'short rows' ? [one.wedge] : []));
      if (wedge === undefined || !printed.body.up) return {};
      return {
        rows: after.reduce((sum, one) => sum + one, 0) + wedge.closing.ordinaryRows + first(wedge),
      };
    }
    default:
      return undefined;
  }
};

function first({ firstRow }: { readonly firstRow: 'right side' | 'wrong side' }): number {
  return firstRow === 'wrong side' ? 1 : 0;
}
