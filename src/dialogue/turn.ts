/**
 * One turn: a session and a message in, the next session, what is to be stored, and the replies out.
 * Pure: no service, no database, no clock. What is in `added` must be stored before the replies are sent.
 */
import type { Answer } from '../flow/answer.ts';
import { unitOf } from '../flow/calculations.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import { asksElsewhere, decided, meantElsewhere, offerElsewhere } from './elsewhere.ts';
import { hear } from './hear.ts';
import type { Message, Reply } from './message.ts';
import { keep, obey } from './obey.ts';
import { type Command, readCommand } from './read/command.ts';
import { readGauge } from './read/gauge.ts';
import { again, at, note, nothingToAnswer, refuse, type Scene, type Turn } from './scene.ts';
import { answersOf, type PendingOption, type Session } from './session.ts';
import { show, showKey, showWorkings } from './show.ts';
import { showAnswer } from './shown.ts';
import { screenOf, standing } from './standing.ts';
import { putBack, take, takeAlong } from './take.ts';
import { asksForSums, beginSums, workSum } from './work-sums.ts';

/** In the terms in which she reads. */
export function turn(given: CompiledFlow, session: Session, message: Message, now: number): Turn {
  const flow = given.inTerms(session.terms ?? 'us');
  const { elsewhere, ...place } = session.place;
  const here = elsewhere === undefined ? session : { ...session, place };
  const woken = place.rest === 'paused' ? at(here, { rest: 'none' }) : here;
  const scene: Scene = { flow, session: woken, at: standing(flow, woken), text: message.text, now };
  const old = message.to !== undefined && message.to !== screenOf(scene.at);
  if (old) return again(scene, [oldQuestion(scene, message.to ?? '')]);
  const gone = elsewhere === undefined ? undefined : decided(scene, elsewhere);
  if (gone !== undefined) return gone;
  if (scene.at.at === 'sum') return workSum(scene, scene.at);
  if (asksForSums(scene)) return beginSums(scene);
  const word = message.text.trim().toLowerCase();
  if (word === 'keep') return keep(scene);
  const page = scene.at.at === 'outcome' ? PAGES.get(word) : undefined;
  if (page !== undefined) return { session: woken, added: [], replies: page(flow, woken) };
  const along = scene.at.at === 'question' ? takeAlong(scene, scene.at.stop) : undefined;
  if (along !== undefined) return along;
  if (scene.at.at !== 'cancelled' && asksElsewhere(message.text))
    return offerElsewhere(scene, { flow: null });
  const command = readCommand(message.text);
  if (command !== undefined && (isOnScreen(command) || !isChoiceHere(scene))) return obey(scene, command);
  if (scene.at.at !== 'question') return elsewhereOr(scene, () => nothingToAnswer(scene));
  if (woken.place.pending !== null) return choosePending(scene, scene.at.stop, woken.place.pending.options);
  return takeAnswer(scene, scene.at.stop);
}

/** What may be shown of a plan that stands, by the word that asks for it. */
const PAGES: ReadonlyMap<string, typeof show> = new Map<string, typeof show>([
  ['plan', show],
  ['workings', (flow, session) => [showWorkings(flow, session)]],
  ['key', (flow, session) => [showKey(flow, session)]],
]);

/** Words that are no answer may tell that she wants another chapter. */
function elsewhereOr(scene: Scene, otherwise: () => Turn): Turn {
  const meant = scene.at.at === 'cancelled' ? undefined : meantElsewhere(scene.flow, scene.text);
  return meant === undefined ? otherwise() : offerElsewhere(scene, meant);
}

/** What stands on a button under every question is never an answer: 'back' does not choose 'Back and forth'. */
function isOnScreen({ command }: Command): boolean {
  return ['back', 'why', 'how', 'do not know', 'pause'].includes(command);
}

/** A word such as 'yes' or 'no' is an answer where the question offers it as a choice. */
function isChoiceHere(scene: Scene): boolean {
  if (scene.at.at !== 'question' || scene.session.place.pending !== null) return false;
  const { stop } = scene.at;
  if (stop.question.kind !== 'choice' && stop.question.kind !== 'choices') return false;
  return hear(scene.flow.asked(stop, answersOf(scene.session.log)), scene.text).kind === 'heard';
}

function takeAnswer(scene: Scene, stop: Stop): Turn {
  const { flow, session, text } = scene;
  const answers = answersOf(session.log);
  const read = hear(flow.asked(stop, answers), text);
  switch (read.kind) {
    case 'refused':
      return elsewhereOr(scene, () => refuse(scene, stop.id, `${read.message} For example: ${read.example}`));
    case 'which':
      return putBack(scene, stop.id, {
        text: read.question,
        yesNo: false,
        options: read.options.map((o) => option(o.echo, { given: 'value', value: o.value })),
      });
    case 'ask back': {
      const options = [option(read.echo, { given: 'value', value: read.value })];
      return putBack(scene, stop.id, { text: read.question, yesNo: true, options });
    }
    case 'heard':
      return take(
        scene,
        stop,
        option(read.echo, { given: 'value', value: read.value }),
        alsoTyped(scene, stop),
      );
    default:
      return read satisfies never;
  }
}

/** Rows typed beside the stitches answer the question about rows, unless it has an answer already. */
function alsoTyped({ flow, session, text }: Scene, { question }: Stop) {
  const id = question.rows_too;
  const answers = answersOf(session.log);
  if (id === undefined || answers[id] !== undefined) return [];
  const rows = readGauge(text, { unit: unitOf(answers), asked: 'both' });
  if (!flow.questions.has(id) || rows.kind !== 'heard' || rows.value.rows === undefined) return [];
  return [
    {
      question: id,
      answer: { given: 'value' as const, value: { kind: 'row gauge' as const, rows: rows.value.rows } },
    },
  ];
}

function option(label: string, answer: Answer): PendingOption {
  return { label, echo: label, answer };
}

function choosePending(scene: Scene, stop: Stop, options: readonly PendingOption[]): Turn {
  const wanted = scene.text.trim().toLowerCase();
  const byNumber = /^\d$/.test(wanted) && options.length > 1 ? options[Number(wanted) - 1] : undefined;
  const picked = options.find((o) => o.label.toLowerCase() === wanted) ?? byNumber;
  if (picked !== undefined) return take(scene, stop, picked);
  // Anything else is a fresh answer to the same question.
  return takeAnswer({ ...scene, session: at(scene.session, { pending: null }) }, stop);
}

function oldQuestion(scene: Scene, id: string): Reply {
  const answers = answersOf(scene.session.log);
  const [question, answer] = [scene.flow.questions.get(id), answers[id]];
  if (question === undefined || answer === undefined) return note('That question is no longer open.');
  return note(
    `That was answered already: ${question.short}, ${showAnswer(question, answer, unitOf(answers))}. To change it, say "change ${question.short.toLowerCase()}".`,
  );
}
