/** Gathers what an owner's other interviews know that a new one asks for: each set from one interview alone. */
import { plannedParts } from './chapters/recheck-parts.ts';
import { aboutOf, DATE, type Earlier } from './dialogue/earlier.ts';
import { answersOf, type LogLine, type Session } from './dialogue/session.ts';
import type { CompiledFlow, Flows } from './flow/compile.ts';
import { ABOUT, type About } from './flow/schema.ts';

type AnswerLine = Extract<LogLine, { line: 'answer' }>;

/** Interviews that are looked into, the newest ones. */
const MOST = 10;
/** Sets that are offered at one question, the newest ones. */
const OFFERED = 3;

/**
 * Newest first. Figures of a pattern are those of one size, so they come from an interview of the same flow alone,
 * where the size goes with them.
 */
export function earlierFor(flow: CompiledFlow, others: readonly Session[], flows: Flows): Earlier[] {
  const sets = others.slice(0, MOST).flatMap((other) => {
    const theirs = flows.get(other.flow);
    if (theirs === undefined) return [];
    return [...ABOUT.flatMap((about) => setOf(about, flow, theirs, other)), ...partsOf(flow, theirs, other)];
  });
  return ABOUT.flatMap((about) => unlike(sets.filter((set) => set.about === about)).slice(0, OFFERED));
}

function setOf(about: About, flow: CompiledFlow, theirs: CompiledFlow, other: Session): Earlier[] {
  if (about === 'pattern' && theirs.file.id !== flow.file.id) return [];
  const lines = linesInForce(theirs, other).filter(({ question: id, answer }) => {
    const question = flow.questions.get(id);
    return question !== undefined && aboutOf(question) === about && answer.given === 'value';
  });
  return lines.length === 0 ? [] : [{ about, label: `Same ${about} as on ${dateOf(lines)}`, lines }];
}

/** The last answer to each question that is asked as things stand there. */
function linesInForce(flow: CompiledFlow, { log }: Session): AnswerLine[] {
  const answers = answersOf(log);
  return Object.keys(flow.inForce(answers)).flatMap((id) =>
    log.filter((l): l is AnswerLine => l.line === 'answer' && l.question === id).slice(-1),
  );
}

/** Parts of a plan of hers, for a chapter that checks one in mid-project. */
function partsOf(flow: CompiledFlow, theirs: CompiledFlow, { log, place }: Session): Earlier[] {
  if (!flow.questions.has('recheck_piece') || !place.confirmed) return [];
  const outcome = theirs.outcome(answersOf(log));
  if (outcome.kind !== 'plan') return [];
  const at = Math.max(...log.map((line) => line.at));
  return plannedParts(outcome.plan).map(({ name, answers }) => {
    const label = `Planned on ${DATE.format(at)}: ${name}`;
    const lines = Object.entries(answers).map(
      ([question, value]): AnswerLine => ({
        line: 'answer',
        question,
        answer: { given: 'value', value },
        typed: label,
        at,
      }),
    );
    return { about: 'plan', label, lines };
  });
}

function dateOf(lines: readonly AnswerLine[]): string {
  return DATE.format(Math.max(...lines.map(({ at }) => at)));
}

/** The same answers are offered once; of two sets of one name the newer. */
function unlike(sets: readonly Earlier[]): Earlier[] {
  const seen = new Set<string>();
  return sets.filter(({ label, lines }) => {
    const said = JSON.stringify(
      lines.map(({ question, answer }) => [question, answer]).sort(([a], [b]) => (`${a}` < `${b}` ? -1 : 1)),
    );
    const known = seen.has(label) || seen.has(said);
    seen.add(label).add(said);
    return !known;
  });
}
