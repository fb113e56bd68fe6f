/** An answer that was heard, or picked from several readings, on its way into the log: bodies are held against the tables. */
import { unitOf } from '../flow/calculations.ts';
import type { Stop } from '../flow/compile.ts';
import { bodyKnown, checkBody } from './body-check.ts';
import { earlierAt, worded } from './earlier.ts';
import { accept, at, done, refuse, type Scene, type Turn } from './scene.ts';
import { answersOf, type PendingOption, type Session } from './session.ts';

type Also = NonNullable<NonNullable<Parameters<typeof accept>[4]>['also']>;

/** Takes it, or refuses a figure that no body has, or asks back about an unusual one that was not confirmed yet. */
export function take(
  scene: Scene,
  { id, question }: Stop,
  { answer, echo }: PendingOption,
  also: Also = [],
): Turn {
  const { flow, session } = scene;
  const { measurement } = question;
  const value = answer.given === 'value' && answer.confirmed !== true ? answer.value : undefined;
  if (measurement !== undefined && value?.kind === 'length') {
    const answers = answersOf(session.log);
    const body = bodyKnown(flow.inForce(answers), flow.questions, id);
    const verdict = checkBody({ ...question, measurement }, value.typed, body, unitOf(answers));
    if (verdict.kind === 'refused') return refuse(scene, id, verdict.text);
    if (verdict.kind === 'ask back')
      return putBack(scene, id, { text: verdict.text, yesNo: true, options: verdict.options });
  }
  return accept(scene, id, answer, echo, { also });
}

/** One reading, or several, to be confirmed. */
export function putBack(
  { flow, session }: Scene,
  question: string,
  asked: { readonly text: string; readonly yesNo: boolean; readonly options: readonly PendingOption[] },
): Turn {
  return done(flow, at(session, { pending: { question, ...asked } }), [], []);
}

/** Takes along what was pressed; undefined where the text is no such button. Each answer keeps its own date. */
export function takeAlong(scene: Scene, stop: Stop): Turn | undefined {
  const { flow, session, text } = scene;
  const said = text.trim().toLowerCase();
  const found = earlierAt(flow, session, stop).find(({ label }) => label.toLowerCase() === said);
  if (found === undefined) return undefined;
  const next: Session = {
    ...session,
    log: [...session.log, ...found.lines],
    place: { ...session.place, revisiting: null, pending: null },
  };
  const taken = worded(flow, session, found.lines).join(', ');
  const echo = `${found.label}: ${taken}. To change one of them, say "change" and which.`;
  return done(flow, next, found.lines, [{ reply: 'say', tone: 'heard', text: echo }]);
}
