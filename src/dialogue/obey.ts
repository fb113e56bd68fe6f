/** What may be said instead of an answer, carried out: going back, explaining, changing, leaving out, resting. */
import type { Dialect } from '../fit/terms.ts';
import type { LengthUnit } from '../fit/units.ts';
import { unitOf } from '../flow/calculations.ts';
import type { Stop } from '../flow/compile.ts';
import { meantElsewhere, offerElsewhere } from './elsewhere.ts';
import { exampleFor } from './example.ts';
import { couldBeKept } from './hear.ts';
import { lessonCalled, listLessons, wordLesson } from './lessons.ts';
import type { Command } from './read/command.ts';
import { bare, phraseOf } from './read/phrase.ts';
import {
  accept,
  again,
  at,
  done,
  explained,
  isAt,
  note,
  nothingToAnswer,
  type Scene,
  type Turn,
} from './scene.ts';
import { AT_THE_START, answersOf, type LogLine } from './session.ts';
import { showAnswer, showValue } from './shown.ts';
import { askedStops, standing } from './standing.ts';
import { take } from './take.ts';

const HELP =
  'Type an answer, or one of these: back, why, how, lesson, I don\'t know, skip, review, change (and what, such as "change bust"), inches, centimetres, UK terms, US terms, another chapter, pause, start over, cancel.';

export function obey(scene: Scene, command: Command): Turn {
  const { session, flow, now } = scene;
  switch (command.command) {
    case 'back':
      return back(scene);
    case 'why':
    case 'how':
      return explain(scene, command.command);
    case 'do not know':
      return leaveOut(scene, 'unknown');
    case 'skip':
    case 'later':
      return leaveOut(scene, 'skipped');
    case 'yes':
    case 'no':
      return yesOrNo(scene, command.command === 'yes');
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
      const offered = session.practice === true ? '' : ' Your body measurements can be offered again.';
      return done(flow, fresh, [line], [note(`We start over.${offered}`)]);
    }
    case 'review':
      return review(scene);
    case 'units':
      return units(scene, command.unit);
    case 'terms':
      return terms(scene, command.terms);
    case 'change':
      return change(scene, command.what);
    case 'help':
      return again(scene, [explained(HELP)]);
    case 'lesson':
      return lesson(scene, command.what);
    case 'lessons':
      return again(scene, [explained(listLessons(flow.book.lessons))]);
    default:
      return command satisfies never;
  }
}

function yesOrNo(scene: Scene, yes: boolean): Turn {
  const { session, flow } = scene;
  const pending = session.place.pending;
  if (scene.at.at === 'question' && pending !== null) {
    const only = pending.options[0];
    if (yes && only !== undefined && pending.yesNo) return take(scene, scene.at.stop, only);
    if (!yes) return done(flow, at(session, { pending: null }), [], [note('Then let us take it again.')]);
    return again(scene, [note('Which of them? Please pick one.')]);
  }
  if (scene.at.at === 'review') {
    return yes
      ? done(flow, at(session, { confirmed: true }), [], [])
      : again(scene, [note('Say "change" and what, such as "change bust".')]);
  }
  return scene.at.at === 'question'
    ? again(scene, [note('Please answer the question, or say "help".')])
    : nothingToAnswer(scene);
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

export function keep(scene: Scene): Turn {
  const { session, flow } = scene;
  if (scene.at.at !== 'question') return nothingToAnswer(scene);
  const { stop } = scene.at;
  const answers = answersOf(session.log);
  const present = answers[stop.id];
  if (present !== undefined && !flow.fits(stop, answers) && couldBeKept(flow.asked(stop, answers), present))
    return accept(scene, stop.id, present, 'Kept as it was.');
  if (session.place.revisiting === null) return nothingToAnswer(scene);
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
  const meant = found.length === 0 ? meantElsewhere(flow, scene.text) : undefined;
  if (meant !== undefined) return offerElsewhere(scene, meant);
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
  const words = (text: string) => bare(phraseOf(text.replaceAll('_', ' ')));
  const wanted = words(what);
  if (wanted === '') return [];
  const names = (s: Stop) => [words(s.question.short), words(s.id)];
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
        : `${question.how}${picture}\nAn answer looks like this: ${exampleFor(question, unitOf(answersOf(scene.session.log)))}`,
    ),
  ]);
}

/** The lesson of that name; without one, that of the question. Where there is none, all are listed. */
function lesson(scene: Scene, what: string): Turn {
  const { lessons } = scene.flow.book;
  const linked = scene.at.at === 'question' ? scene.at.stop.question.lesson : undefined;
  const found = what === '' ? lessons.get(linked ?? '') : lessonCalled(lessons, what);
  if (found !== undefined) return again(scene, [explained(wordLesson(found))]);
  const none = what === '' ? [] : [note(`There is no lesson called '${what}'.`)];
  return again(scene, [...none, explained(listLessons(lessons))]);
}

function rest(scene: Scene, how: 'paused' | 'cancelled', text: string): Turn {
  return { session: at(scene.session, { rest: how }), added: [], replies: [{ reply: 'rest', how, text }] };
}

/** Shows everything in the unit from here on; what was typed keeps its own. */
function units(scene: Scene, unit: LengthUnit | undefined): Turn {
  if (unit === undefined) return again(scene, [note('Say "inches" or "centimetres".')]);
  const answer = { given: 'value' as const, value: { kind: 'choice' as const, choice: unit } };
  return accept(
    scene,
    'unit',
    answer,
    unit === 'cm' ? 'From here on in centimetres.' : 'From here on in inches.',
    { place: { pending: null } },
  );
}

const IN_TERMS: Readonly<Record<Dialect, string>> = {
  us: 'From here on in US terms, such as gauge and bind off.',
  uk: 'From here on in UK terms, such as tension and cast off.',
};

/** Says everything in these terms from here on; both are understood in any answer. */
function terms(scene: Scene, dialect: Dialect | undefined): Turn {
  if (dialect === undefined) return again(scene, [note('Say "UK terms" or "US terms".')]);
  const session = { ...at(scene.session, { pending: null }), terms: dialect };
  return done(scene.flow, session, [], [note(IN_TERMS[dialect])]);
}
