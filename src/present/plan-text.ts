/** A plan, or why there can be none, as plain text: short lines, words beside every symbol, nothing in colour alone. */
import type {
  Cannot,
  ComparedFit,
  ComparedSize,
  Finished,
  Instruction,
  Outcome,
  Plan,
  Step,
  Way,
} from '../fit/plan.ts';
import { cm, formatDecimal, formatLength } from '../fit/units.ts';
import { quantity } from '../fit/working.ts';
import { wordButtonholes, wordPickUp } from './band-words.ts';
import { wordContradiction } from './contradiction-words.ts';
import { wordCounts } from './count-words.ts';
import { wordDivided, wordEdgeRows, wordEdges } from './edge-words.ts';
import { wordEach, wordShapedRows } from './line-words.ts';
import { wordMeasure } from './measure-words.ts';
import { formatQuantity } from './quantity.ts';
import { wordRaglan, wordRaglanRows } from './raglan-words.ts';
import { wordRow } from './row-words.ts';
import { wordSchedule, wordShaping } from './shaping-words.ts';
import { type Dialect, inDialect } from './terms.ts';
import { wordTurns, wordWedge } from './wedge-words.ts';
import { type Voice, wordPhrase } from './wording.ts';
import { wordWorking } from './workings-text.ts';

export interface TextOptions {
  readonly dialect: Dialect;
  readonly workings: boolean;
}

const WORKINGS = 'Workings (shown rounded, worked with the whole figures):';

/** The whole text, ending with a line break. */
export function outcomeText(outcome: Outcome, options: TextOptions): string {
  return outcome.kind === 'plan' ? planText(outcome.plan, options) : cannotText(outcome, options);
}

export function planText(plan: Plan, options: TextOptions): string {
  const voice = voiceOf(plan, options);
  const parts = [
    plan.summary.map((p) => wordPhrase(p, voice)).join(' '),
    ...plan.steps.map((step, i) => stepText(step, i + 1, { ...voice, worked: step.worked }, options)),
    finishedText(plan, options),
    listText(
      'Taken for granted',
      plan.assumed.map((a) => `${a.question}: ${a.used}. ${a.effect}`),
    ),
    listText('Still waiting', plan.waiting),
    listText(
      'Take care',
      plan.cautions.map((c) => wordPhrase(c, voice)),
    ),
  ];
  return `${parts.filter((p) => p !== '').join('\n\n')}\n`;
}

/** One step as it stands in the plan, so that a long plan can be split between steps. */
export function stepText(step: Step, number: number, voice: Voice, options: TextOptions): string {
  const piece = step.piece === 'all' ? '' : `${step.piece.slice(0, 1).toUpperCase()}${step.piece.slice(1)}: `;
  const lines = [
    `${number}. ${piece}${wordPhrase(step.where, voice)}`,
    ...(step.pattern === null ? [] : [`The pattern: ${wordPhrase(step.pattern, voice)}`]),
    ...(step.instead.length === 0
      ? []
      : [`You: ${step.instead.flatMap((i) => instructionText(i, voice)).join(' ')}`]),
    ...step.instead.flatMap((i) => scheduleLines(i, voice)),
    ...(step.check === null ? [] : [`Check: ${wordPhrase(step.check, voice)}`]),
    ...step.notes.map((n) => `Note: ${wordPhrase(n, voice)}`),
    ...(options.workings && step.workings.length > 0
      ? [WORKINGS, ...unique(step.workings.map((w) => `- ${wordWorking(w, voice)}`))]
      : []),
  ];
  return lines.join('\n   ');
}

/** What to do, in sentences. */
export function instructionText(instruction: Instruction, voice: Voice): string[] {
  switch (instruction.do) {
    case 'say':
      return [wordPhrase(instruction.phrase, voice)];
    case 'cast on':
      return [`Cast on ${instruction.stitches} stitches.`];
    case 'begin with':
      return [`Begin with ${instruction.stitches} stitches.`];
    case 'work edging': {
      const rows = formatQuantity(quantity('rows', instruction.rows, 'rows'), voice);
      return [`Work the edging for ${rows} (${formatLength(instruction.length, voice.unit)}).`];
    }
    case 'bind off':
      return [inDialect(`Then [bind off] all ${instruction.stitches} stitches loosely.`, voice.dialect)];
    case 'work plain': {
      const rows = formatQuantity(quantity('rows', instruction.rows, 'rows'), voice);
      const length = formatLength(instruction.length, voice.unit);
      return [`Work ${rows} plain (${length}) on ${instruction.stitches} stitches.`];
    }
    case 'shape':
      return [wordShaping(instruction.spaced, instruction.at, voice.worked ?? 'flat')];
    case 'work row':
      return [
        `Work this ${voice.worked === 'round' ? 'round' : 'row'}: ${wordRow(instruction.row)}.`,
        `You then have ${instruction.after} stitches.`,
      ];
    case 'short rows':
      return [wordWedge(instruction.wedge, voice)];
    case 'divide':
      return [wordDivided(instruction, voice)];
    case 'shape edges':
      return [wordEdges(instruction.schedule, voice)];
    case 'shape raglan':
      return wordRaglan(instruction.raglan, voice.worked ?? 'round');
    case 'choose one':
      return instruction.ways.map((way) => `\n   - ${wayText(way, voice)}`);
    case 'shape rows':
      return wordEach(instruction);
    case 'note contradiction':
      return wordContradiction(instruction, voice);
    case 'compare counts':
      return wordCounts(instruction, voice).map((line) => `\n   - ${line}`);
    case 'pick up':
      return wordPickUp(instruction);
    case 'place buttonholes':
      return wordButtonholes(instruction);
    case 'compare measures':
      return instruction.measures.map((measure) => `\n   - ${wordMeasure(measure, voice)}`);
    case 'compare sizes':
      return instruction.sizes.map((size) => `\n   - ${sizeLine(size, voice)}`);
    case 'compare fits':
      return instruction.fits.map((fit) => `\n   - ${fitLine(fit, voice)}`);
    case 'note measurements':
      return instruction.measurements.map(
        ({ name, value, assumed }) =>
          `\n   - ${name}: ${formatLength(value, voice.unit)}${assumed ? " (a table's figure)" : ''}`,
      );
    default:
      return instruction satisfies never;
  }
}

/** Every row that shapes, in full; nothing for what needs no such list. */
export function scheduleLines(instruction: Instruction, voice: Voice): string[] {
  const worked = voice.worked ?? 'flat';
  switch (instruction.do) {
    case 'shape':
      return instruction.spaced.shaping.length > 0 ? [wordSchedule(instruction.spaced, worked)] : [];
    case 'shape rows':
      return [wordShapedRows(instruction, worked)];
    case 'short rows':
      return [wordTurns(instruction.wedge)];
    case 'shape edges':
      return instruction.schedule.events.length > 0 ? [wordEdgeRows(instruction.schedule)] : [];
    case 'shape raglan':
      return [wordRaglanRows(instruction.raglan, worked)];
    default:
      return [];
  }
}

/** A way out with all that it needs, on one line. */
function wayText({ name, instead }: Way, voice: Voice): string {
  const said = instead.flatMap((i) => [...instructionText(i, voice), ...scheduleLines(i, voice)]);
  return [wordPhrase(name, voice), ...said].join(' ');
}

/** 'Size 4, price 3.2: bust 100 cm (wanted 101 cm, 1 cm less), …' */
function sizeLine({ label, price, regions }: ComparedSize, { unit }: Voice): string {
  const parts = regions.map(({ region, knitted, wanted, difference }) => {
    const off = formatLength(cm(Math.abs(difference)), unit);
    const how =
      off === `0 ${unit}`
        ? 'as wanted'
        : `${off} ${difference < 0 ? 'less' : 'more'} than the ${formatLength(wanted, unit)} wanted`;
    return `${region} ${formatLength(knitted, unit)}, ${how}`;
  });
  return `Size ${label}, price ${formatDecimal(price, 1)}: ${parts.join('; ')}.`;
}

function fitLine({ fit, low, high, nearest }: ComparedFit, { unit }: Voice): string {
  const range =
    high === null
      ? `${formatLength(low, unit)} or more`
      : low === high
        ? formatLength(low, unit)
        : `${formatLength(low, unit)} to ${formatLength(high, unit)}`;
  const size =
    nearest === null ? '' : `; size ${nearest.label} comes nearest with ${formatLength(nearest.bust, unit)}`;
  return `${fit}: finished bust ${range}${size}.`;
}

function finishedText(plan: Plan, options: TextOptions): string {
  const measured = listText(
    'It will measure',
    plan.finished.map((f) => finishedLine(f, plan)),
  );
  if (!options.workings || plan.finished.length === 0) return measured;
  const lines = plan.finished.flatMap(({ worked, workings }) =>
    workings.map((w) => wordWorking(w, { ...voiceOf(plan, options), worked })),
  );
  return `${measured}\n\n${listText('Workings of the measurements (shown rounded, worked with the whole figures)', unique(lines))}`;
}

function finishedLine({ name, pattern, range }: Finished, { unit }: Plan): string {
  const sure =
    range.low === range.high
      ? ''
      : ` (between ${formatLength(range.low, unit)} and ${formatLength(range.high, unit)})`;
  const before = pattern === null ? '' : `; the pattern's counts give ${formatLength(pattern, unit)}`;
  return `${name}: ${formatLength(range.expected, unit)}${sure}${before}`;
}

export function cannotText(cannot: Cannot, options: TextOptions): string {
  const voice: Voice = { unit: cannot.unit, worked: null, dialect: options.dialect };
  return `${[
    'This cannot be planned.',
    ...cannot.because.map((p) => `Because: ${wordPhrase(p, voice)}`),
    ...cannot.instead.map((p) => `What you can do: ${wordPhrase(p, voice)}`),
    ...(options.workings && cannot.workings.length > 0
      ? [WORKINGS, ...unique(cannot.workings.map((w) => `- ${wordWorking(w, voice)}`))]
      : []),
  ].join('\n')}\n`;
}

function listText(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [`${title}:`, ...lines.map((l) => `- ${l}`)].join('\n');
}

function voiceOf(plan: Plan, options: TextOptions): Voice {
  return { unit: plan.unit, worked: null, dialect: options.dialect };
}

function unique(lines: readonly string[]): string[] {
  return [...new Set(lines)];
}
