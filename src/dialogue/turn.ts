/**
 * One turn: a session and a message in, the next session, what is to be stored, and the replies out.
 * Pure: no service, no database, no clock. What is in `added` must be stored before the replies are sent.
 */
import type { Answer } from '../flow/answer.ts';
import { unitOf } from '../flow/calculations.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import { bodyKnown, checkBody } from './body-check.ts';
import { hear } from './hear.ts';
import type { Message, Reply } from './message.ts';
import { type Command, readCommand } from './read/command.ts';
import { AT_THE_START, answersOf, type LogLine, type PendingOption, type Session } from './session.ts';
import { show } from './show.ts';
import { showAnswer, showValue } from './shown.ts';
import { askedStops, type Standing, standing } from './standing.ts';

export interface Turn {
  readonly session: Session;
  /** Lines that this turn added to the log. */
  readonly added: readonly LogLine[];
  readonly replies: readonly Reply[];
}

interface Scene {
  readonly flow: CompiledFlow;
  readonly session: Session;
  readonly at: Standing;
  readonly text: string;
  readonly now: number;
}

export function turn(flow: CompiledFlow, session: Session, message: Message, now: number): Turn {
  const woken = session.place.rest === 'paused' ? at(session, { rest: 'none' }) : session;
  const scene: Scene = { flow, session: woken, at: standing(flow, woken), text: message.text, now };
  const old = message.to !== undefined && message.to !== presentQuestion(scene);
  if (old) return again(scene, [oldQuestion(scene, message.to ?? '')]);
  const command = readCommand(message.text);
  if (command !== undefined && !isChoiceHere(scene)) return obey(scene, command);
  if (scene.at.at !== 'question') return nothingToAnswer(scene);
  if (woken.place.pending !== null) return choosePending(scene, scene.at.stop, woken.place.pending.options);
  return takeAnswer(scene, scene.at.stop);
}

/** The id under which buttons of the present screen are sent. */
function presentQuestion({ at: standing }: Scene): string {
  return standing.at === 'question' ? standing.stop.id : standing.at;
}

/** A word such as 'yes' or 'no' is an answer where the question offers it as a choice. */
function isChoiceHere(scene: Scene): boolean {
  if (scene.at.at !== 'question' || scene.session.place.pending !== null) return false;
  const { stop } = scene.at;
  if (stop.question.kind !== 'choice' && stop.question.kind !== 'choices') return false;
  return hear(scene.flow.asked(stop, answersOf(scene.session.log)), scene.text).kind === 'heard';
}

function obey(scene: Scene, command: Command): Turn {
  const { session, flow, now } = scene;
  switch (command.kind) {
    case 'back':
      return back(scene);
    case 'why':
    case 'how':
      return explain(scene, command.kind);
    case 'unknown':
    case 'skip':
      return leaveOut(scene, command.kind === 'unknown' ? 'unknown' : 'skipped');
    case 'yes':
    case 'no':
      return yesOrNo(scene, command.kind === 'yes');
    case 'keep':
      return keep(scene);
    case 'pause':
      return rest(
        scene,
        'paused',
        'Paused. Everything you have answered is kept. Come back whenever you like.',
      );
    case 'cancel':
      return rest(scene, 'cancelled', 'Cancelled. Nothing more is asked. Say "start over" to begin afresh.');
    case 'start over': {
      const line: LogLine = { line: 'start over', at: now };
      const fresh = { ...session, log: [...session.log, line], place: AT_THE_START };
      return done(flow, fresh, [line], [note('We start over. Your body measurements can be offered again.')]);
    }
    case 'review':
      return review(scene);
    case 'units':
      return accept(
        scene,
        'unit',
        { given: 'value', value: { kind: 'choice', choice: command.unit } },
        command.unit === 'cm' ? 'From here on in centimetres.' : 'From here on in inches.',
      );
    case 'change':
      return change(scene, command.what);
    case 'help':
      return again(scene, [explained(HELP)]);
    default:
      return command satisfies never;
  }
}

const HELP =
  'Type an answer, or one of these: back, why, how, I don\'t know, skip, review, change (and what, such as "change bust"), inches, centimetres, pause, start over, cancel.';

function takeAnswer(scene: Scene, stop: Stop): Turn {
  const { flow, session, text } = scene;
  const answers = answersOf(session.log);
  const unit = unitOf(answers);
  const read = hear(flow.asked(stop, answers), text);
  switch (read.kind) {
    case 'refused':
      return again(scene, [
        { reply: 'say', tone: 'refused', text: `${read.message} For example: ${read.example}` },
      ]);
    case 'which':
      return putBack(
        scene,
        stop,
        read.question,
        read.options.map((o) => option(o.echo, { given: 'value', value: o.value })),
      );
    case 'ask back':
      return putBack(scene, stop, read.question, [option(read.echo, { given: 'value', value: read.value })]);
    case 'heard': {
      const { measurement } = stop.question;
      if (measurement !== undefined && read.value.kind === 'length') {
        const body = bodyKnown(flow.inForce(answers), flow.questions, stop.id);
        const verdict = checkBody({ ...stop.question, measurement }, read.value.typed, body, unit);
        if (verdict.kind === 'refused')
          return again(scene, [{ reply: 'say', tone: 'refused', text: verdict.text }]);
        if (verdict.kind === 'ask back') return putBack(scene, stop, verdict.text, verdict.options);
      }
      return accept(scene, stop.id, { given: 'value', value: read.value }, read.echo);
    }
    default:
      return read satisfies never;
  }
}

function option(label: string, answer: Answer): PendingOption {
  return { label, echo: label, answer };
}

/** One reading, or several, to be confirmed. */
function putBack(scene: Scene, stop: Stop, text: string, options: readonly PendingOption[]): Turn {
  const session = at(scene.session, { pending: { question: stop.id, text, options } });
  return done(scene.flow, session, [], []);
}

function choosePending(scene: Scene, stop: Stop, options: readonly PendingOption[]): Turn {
  const wanted = scene.text.trim().toLowerCase();
  const byNumber = /^\d$/.test(wanted) && options.length > 1 ? options[Number(wanted) - 1] : undefined;
  const picked = options.find((o) => o.label.toLowerCase() === wanted) ?? byNumber;
  if (picked !== undefined) return accept(scene, stop.id, picked.answer, picked.echo);
  // Anything else is a fresh answer to the same question.
  return takeAnswer({ ...scene, session: at(scene.session, { pending: null }) }, stop);
}

function yesOrNo(scene: Scene, yes: boolean): Turn {
  const { session, flow } = scene;
  const pending = session.place.pending;
  if (scene.at.at === 'question' && pending !== null) {
    const only = pending.options[0];
    if (yes && only !== undefined && pending.options.length === 1)
      return accept(scene, pending.question, only.answer, only.echo);
    if (!yes) return done(flow, at(session, { pending: null }), [], [note('Then let us take it again.')]);
    return again(scene, [note('Which of them? Please pick one.')]);
  }
  if (scene.at.at === 'review') {
    return yes
      ? done(flow, at(session, { confirmed: true }), [], [])
      : again(scene, [note('Say "change" and what, such as "change bust".')]);
  }
  return scene.at.at === 'question' ? takeAnswer(scene, scene.at.stop) : nothingToAnswer(scene);
}

function leaveOut(scene: Scene, given: 'unknown' | 'skipped'): Turn {
  if (scene.at.at !== 'question') return nothingToAnswer(scene);
  const { stop } = scene.at;
  const { question } = stop;
  const answers = answersOf(scene.session.log);
  const standIn = scene.flow.standIn(question, answers);
  const used =
    standIn === undefined
      ? ''
      : `I take ${showValue(question, standIn.value, unitOf(answers))} (${standIn.from}). `;
  const effect = 'waits' in question.unknown ? question.unknown.waits : question.unknown.effect;
  const said = given === 'unknown' ? 'That is fine.' : 'Left out for now.';
  return accept(scene, stop.id, { given }, `${said} ${used}${effect}`);
}

/** Puts an answer into the log, says what was understood, and which earlier answers it opens again. */
function accept(scene: Scene, question: string, answer: Answer, echo: string): Turn {
  const { flow, session, now, text } = scene;
  if (!flow.questions.has(question)) return again(scene, [note('That cannot be set in this interview.')]);
  const line: LogLine = { line: 'answer', question, answer, typed: text, at: now };
  const next: Session = {
    ...session,
    log: [...session.log, line],
    place: { ...session.place, revisiting: null, pending: null },
  };
  const opened = newlyOpen(flow, session, next, question);
  const asksAgain =
    opened.length === 0 ? [] : [note(`That changes what fits, so I ask again: ${opened.join(', ')}.`)];
  return done(flow, next, [line], [{ reply: 'say', tone: 'heard', text: echo }, ...asksAgain]);
}

/** Questions that had a fitting answer before this turn and have none now. */
function newlyOpen(flow: CompiledFlow, before: Session, after: Session, answered: string): string[] {
  const answers = answersOf(after.log);
  const earlier = answersOf(before.log);
  return askedStops(flow, answers).flatMap((stop) => {
    const answer = answers[stop.id];
    if (answer === undefined || stop.id === answered || earlier[stop.id] === undefined) return [];
    return flow.fits(stop, answers) ? [] : [stop.question.short];
  });
}

function back(scene: Scene): Turn {
  const { flow, session } = scene;
  if (session.place.pending !== null) return done(flow, at(session, { pending: null }), [], []);
  const answers = answersOf(session.log);
  const asked = askedStops(flow, answers).filter((s) => answers[s.id] !== undefined || isAt(scene, s));
  const here = scene.at.at === 'question' ? asked.findIndex((s) => isAt(scene, s)) : asked.length;
  const before = asked[here - 1];
  if (before === undefined) return again(scene, [note('This is the first question.')]);
  return done(flow, at(session, { revisiting: before.id, confirmed: false }), [], []);
}

function isAt(scene: Scene, stop: Stop): boolean {
  return scene.at.at === 'question' && scene.at.stop.id === stop.id;
}

function keep(scene: Scene): Turn {
  const { session, flow } = scene;
  if (scene.at.at !== 'question' || session.place.revisiting === null) return nothingToAnswer(scene);
  return done(flow, at(session, { revisiting: null, pending: null }), [], [note('Kept as it was.')]);
}

function review(scene: Scene): Turn {
  const { session, flow } = scene;
  const open = at(session, { confirmed: false, revisiting: null, pending: null });
  if (standing(flow, open).at === 'review') return done(flow, open, [], []);
  const answers = answersOf(session.log);
  const lines = askedStops(flow, answers).flatMap((s) => {
    const answer = answers[s.id];
    return answer === undefined
      ? []
      : [`${s.question.short}: ${showAnswer(s.question, answer, unitOf(answers))}`];
  });
  const text = lines.length === 0 ? 'Nothing is answered yet.' : `So far:\n${lines.join('\n')}`;
  return again(scene, [explained(text)]);
}

function change(scene: Scene, what: string): Turn {
  const { flow, session } = scene;
  const answers = answersOf(session.log);
  const answered = askedStops(flow, answers).filter((s) => answers[s.id] !== undefined);
  const found = namedBy(answered, what);
  const [only] = found;
  if (only !== undefined && found.length === 1) {
    return done(flow, at(session, { revisiting: only.id, pending: null, confirmed: false }), [], []);
  }
  const names = (found.length > 1 ? found : answered).map((s) => s.question.short.toLowerCase());
  const text =
    names.length === 0
      ? 'Nothing is answered yet, so there is nothing to change.'
      : `Which answer? Say "change" and one of these: ${names.join('; ')}.`;
  return again(scene, [note(text)]);
}

/** The whole name, or else a part of it. */
function namedBy(stops: readonly Stop[], what: string): Stop[] {
  const wanted = what.trim().toLowerCase().replaceAll('_', ' ');
  if (wanted === '') return [];
  const names = (s: Stop) => [s.question.short.toLowerCase(), s.id.replaceAll('_', ' ')];
  const exact = stops.filter((s) => names(s).includes(wanted));
  return exact.length > 0 ? exact : stops.filter((s) => names(s).some((n) => n.includes(wanted)));
}

function explain(scene: Scene, which: 'why' | 'how'): Turn {
  if (scene.at.at !== 'question') return nothingToAnswer(scene);
  const { question } = scene.at.stop;
  const picture = question.picture === undefined ? '' : `\nPicture: ${question.picture}`;
  return again(scene, [
    explained(
      which === 'why'
        ? question.why
        : `${question.how}${picture}\nAn answer looks like this: ${question.example}`,
    ),
  ]);
}

function rest(scene: Scene, how: 'paused' | 'cancelled', text: string): Turn {
  return { session: at(scene.session, { rest: how }), added: [], replies: [{ reply: 'rest', how, text }] };
}

function oldQuestion(scene: Scene, id: string): Reply {
  const answers = answersOf(scene.session.log);
  const [question, answer] = [scene.flow.questions.get(id), answers[id]];
  if (question === undefined || answer === undefined) return note('That question is no longer open.');
  return note(
    `That was answered already: ${question.short}, ${showAnswer(question, answer, unitOf(answers))}. To change it, say "change ${question.short.toLowerCase()}".`,
  );
}

function nothingToAnswer(scene: Scene): Turn {
  const text =
    scene.at.at === 'review'
      ? 'Everything is answered. Say "yes" for the plan, or "change" and what, such as "change bust".'
      : 'Nothing is asked just now. Say "review" to see your answers.';
  return again(scene, [note(text)]);
}

function note(text: string): Reply {
  return { reply: 'say', tone: 'note', text };
}

function explained(text: string): Reply {
  return { reply: 'say', tone: 'explain', text };
}

function at(session: Session, place: Partial<Session['place']>): Session {
  return { ...session, place: { ...session.place, ...place } };
}

/** The same screen once more, after these replies. */
function again(scene: Scene, replies: readonly Reply[]): Turn {
  return done(scene.flow, scene.session, [], replies);
}

function done(
  flow: CompiledFlow,
  session: Session,
  added: readonly LogLine[],
  replies: readonly Reply[],
): Turn {
  return { session, added, replies: [...replies, ...show(flow, session)] };
}
