/** The sums of a plan, worked by the knitter herself: begun, tried one at a time, left. */

import type { Sum } from '../fit/sum.ts';
import { tryFigure } from '../fit/tried.ts';
import type { Reply, SaidOfSum } from './message.ts';
import { obey } from './obey.ts';
import { readCommand } from './read/command.ts';
import { readFigure } from './read/figure.ts';
import { bare, phraseOf } from './read/phrase.ts';
import { again, explained, note, type Scene, type Turn } from './scene.ts';
import { answersOf, type LogLine, type SumLine } from './session.ts';
import { exampleOf, show, showTally } from './show.ts';
import { standing } from './standing.ts';
import { type OpenSum, sumsIn } from './sums.ts';

const BEGIN = new Set(['work it yourself', 'work it myself', 'let me work it', 'sums', 'work sums']);

/** Whether she asks for the sums where a plan is shown. */
export function asksForSums({ at, text }: Scene): boolean {
  return at.at === 'outcome' && BEGIN.has(bare(phraseOf(text)));
}

export function beginSums(scene: Scene): Turn {
  if (sumsIn(scene.flow.outcome(answersOf(scene.session.log))).length === 0)
    return again(scene, [note('There are no sums to work in this plan.')]);
  return logged(scene, { line: 'sums', did: 'begin', at: scene.now }, []);
}

const WORDS = {
  hint: ['hint', 'give me hint', 'tip', 'how', 'why'],
  show: ['show me', 'show', 'show me answer', 'answer', 'solution', 'workings', 'show workings'],
  next: ['next', 'next sum', 'next one'],
  stop: ['stop', 'back', 'enough', 'leave', 'plan', 'cancel', 'quit', 'exit'],
  again: ['start over', 'again'],
} as const;
type SumWord = keyof typeof WORDS;

const HELP =
  'Type your figure, or one of these: hint (how it is put together), show me (the whole working), next, start over, stop, inches, centimetres, UK terms, US terms, pause.';

export function workSum(scene: Scene, open: OpenSum): Turn {
  const { sum } = open;
  switch (wordIn(scene.text)) {
    case 'hint':
      return again(scene, [aboutSum(scene, sum, { kind: 'hint' })]);
    case 'show':
      return past(scene, open, 'shown', [aboutSum(scene, sum, { kind: 'worked' })]);
    case 'next':
      return past(scene, open, 'passed', []);
    case 'stop':
      return stop(scene);
    case 'again':
      return beginSums(scene);
    case undefined:
      return tried(scene, open);
  }
}

function wordIn(text: string): SumWord | undefined {
  const said = bare(phraseOf(text));
  const named = (Object.keys(WORDS) as SumWord[]).find((word) => WORDS[word].some((w) => bare(w) === said));
  if (named !== undefined) return named;
  switch (readCommand(text)?.command) {
    case 'do not know':
    case 'how':
    case 'why':
      return 'hint';
    case 'skip':
    case 'later':
      return 'next';
    default:
      return undefined;
  }
}

function tried(scene: Scene, open: OpenSum): Turn {
  const { sum } = open;
  const command = readCommand(scene.text);
  if (command?.command === 'help') return again(scene, [explained(HELP)]);
  if (command?.command === 'yes' || command?.command === 'no')
    return again(scene, [note('Type your figure, or say "hint".')]);
  if (command !== undefined) return obey(scene, command);
  const read = readFigure(scene.text, sum, exampleOf(sum));
  if (read.kind === 'refused')
    return again(scene, [
      { reply: 'say', tone: 'refused', text: `${read.message} For example: ${read.example}` },
    ]);
  const came = tryFigure(sum, read.value);
  const said = aboutSum(scene, sum, came);
  if (came.kind === 'right') return past(scene, open, 'right', [said]);
  const slips = came.kind === 'slip' ? came.slips.map(({ mistake }) => mistake) : [];
  return logged(scene, sumLine(scene, open, 'wrong', slips), [said]);
}

function aboutSum({ session: { terms = 'us' } }: Scene, sum: Sum, said: SaidOfSum): Reply {
  return { reply: 'sum said', sum, said, terms };
}

function past(
  scene: Scene,
  open: OpenSum,
  came: Exclude<SumLine['came'], 'wrong'>,
  said: readonly Reply[],
): Turn {
  return logged(scene, sumLine(scene, open, came, []), said);
}

function sumLine(
  { text, now }: Scene,
  { sum }: OpenSum,
  came: SumLine['came'],
  slips: SumLine['slips'],
): SumLine {
  return { line: 'sum', sum: sum.line.label, came, slips, typed: text, at: now };
}

function stop(scene: Scene): Turn {
  const line: LogLine = { line: 'sums', did: 'stop', at: scene.now };
  const session = { ...scene.session, log: [...scene.session.log, line] };
  return { session, added: [line], replies: [showTally(scene.session)] };
}

/** The next sum; after the last one, how it went. */
function logged(scene: Scene, line: LogLine, said: readonly Reply[]): Turn {
  const { flow } = scene;
  const session = { ...scene.session, log: [...scene.session.log, line] };
  const more = standing(flow, session).at === 'sum';
  return {
    session,
    added: [line],
    replies: [...said, ...(more ? show(flow, session) : [showTally(session)])],
  };
}
