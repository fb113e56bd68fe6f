/** The plan as a sheet: steps to tick, measurements, cautions, schematics and strips, then the workings. */
import type { Finished, Plan, Step } from '../../fit/plan.ts';
import { formatLength } from '../../fit/units.ts';
import { drawable } from '../draw/font.ts';
import { answerKey, type KeyPart, SHOWN_ROUNDED, type StartingFigure, wordAlso } from '../key.ts';
import { picturesOfStep, schematicsOf } from '../pictures/of-plan.ts';
import type { Picture } from '../pictures/picture.ts';
import { stepText } from '../plan-text.ts';
import type { Dialect } from '../terms.ts';
import type { View } from '../view.ts';
import { wordPhrase } from '../wording.ts';
import { layOut, layOutEvenly, lineWidth, numbered, pageRoom, type Section } from './pages.ts';
import {
  figure,
  heading,
  type Paragraph,
  paragraph,
  row,
  type Setting,
  settingFor,
  tickHeading,
} from './paragraph.ts';
import { type Sheet, type SheetOptions, wordDate } from './sheet.ts';

export interface PlanSheetOptions extends SheetOptions {
  readonly dialect: Dialect;
  /** The answers that are to be printed before the workings; none where others may read the sheet. */
  readonly from?: readonly StartingFigure[];
}

export function planSheet(plan: Plan, options: PlanSheetOptions): Sheet {
  const setting = settingFor(options.type, lineWidth(options.paper));
  const view = { unit: plan.unit, dialect: options.dialect };
  const sections = [
    opening(plan, options, setting),
    ...plan.steps.map((step, i) => stepSection(step, i + 1, setting, view)),
    ...measured(plan, setting),
    ...listed(
      'Taken for granted',
      plan.assumed.map((a) => `${a.question}: ${a.used}. ${a.effect}`),
      setting,
    ),
    ...listed('Still waiting', plan.waiting, setting),
    ...listed(
      'Take care',
      plan.cautions.map((c) => wordPhrase(c, { ...view, worked: null })),
      setting,
    ),
    ...pictureSections(plan, setting, options, view),
  ];
  const workings = workingSections(plan, setting, options);
  const project = drawable(options.project);
  const head = { title: project === '' ? 'Plan' : `${project}: Plan`, date: wordDate(options.date) };
  const laid = [
    ...layOut(sections, setting, options.paper),
    ...(workings.length === 0 ? [] : layOutEvenly(workings, setting, options.paper)),
  ];
  return {
    title: project === '' ? 'Plan' : `Plan: ${project}`,
    date: options.date,
    pages: numbered(laid, head, setting, options.paper),
  };
}

function opening(plan: Plan, options: PlanSheetOptions, setting: Setting): Section {
  const voice = { unit: plan.unit, dialect: options.dialect, worked: null };
  const project = drawable(options.project);
  return {
    heading: [heading('H1', project === '' ? 'Your plan' : project, setting)],
    continued: [],
    paragraphs: [
      paragraph(wordDate(options.date), setting, { ink: 'quiet' }),
      paragraph(plan.summary.map((p) => wordPhrase(p, voice)).join(' '), setting),
    ],
  };
}

/** The lines of the step as the text has them: heading, then labelled paragraphs and lists. */
function stepSection(step: Step, number: number, setting: Setting, view: View): Section {
  const voice = { ...view, worked: step.worked };
  const [title = '', ...lines] = stepText(step, number, voice, {
    dialect: view.dialect,
    workings: false,
  }).split('\n   ');
  return {
    heading: [tickHeading(title, setting)],
    continued: [heading('H2', `${title} (continued)`, setting)],
    paragraphs: lines.map((l) => stepLine(l.trim(), setting)),
  };
}

function stepLine(words: string, setting: Setting): Paragraph {
  const indent = setting.heading * 1.5;
  if (words.startsWith('- '))
    return paragraph(words.slice(2), setting, { indent: indent + setting.body, mark: '•' });
  const label = /^(The pattern|You|Check|Note):(?: |$)/.exec(words)?.[0].trim();
  if (label === undefined) return paragraph(words, setting, { indent });
  return paragraph(words.slice(label.length).trim(), setting, { indent, label });
}

const COLUMNS = [0, 0.4, 0.56, 0.82];

function measured(plan: Plan, setting: Setting): Section[] {
  if (plan.finished.length === 0) return [];
  const head = row(
    ['', 'yours', 'in 19 of 20 cases', 'the pattern'].map((words) => ({ words, weight: 'bold' as const })),
    COLUMNS,
    setting,
    true,
  );
  return [
    {
      heading: [heading('H2', 'It will measure', setting), head],
      continued: [heading('H2', 'It will measure (continued)', setting), head],
      paragraphs: plan.finished.map((f) => row(finishedCells(f, plan), COLUMNS, setting, true)),
    },
  ];
}

function finishedCells({ name, pattern, range }: Finished, { unit }: Plan) {
  const [low, high] = [formatLength(range.low, unit), formatLength(range.high, unit)];
  return [
    { words: name },
    { words: formatLength(range.expected, unit), weight: 'bold' as const },
    { words: low === high ? '' : `${low} to ${high}` },
    { words: pattern === null ? '' : formatLength(pattern, unit) },
  ];
}

function listed(title: string, lines: readonly string[], setting: Setting): Section[] {
  if (lines.length === 0) return [];
  const items = lines.map((l) => paragraph(l, setting, { indent: setting.body, mark: '•' }));
  return [
    {
      heading: [heading('H2', title, setting)],
      continued: [heading('H2', `${title} (continued)`, setting)],
      paragraphs: items,
    },
  ];
}

function pictureSections(plan: Plan, setting: Setting, options: PlanSheetOptions, view: View): Section[] {
  const tallest = pictureRoom(setting, options) / setting.drawing;
  const ofSteps = plan.steps.flatMap((s) => picturesOfStep(s, view, tallest));
  const pictures = [...schematicsOf(plan, view), ...ofSteps];
  return pictures.map((picture, i) => pictureSection(picture, i === 0, setting, options));
}

/** The height that a picture may have: a page less its heading. */
function pictureRoom(setting: Setting, options: PlanSheetOptions): number {
  return pageRoom(options.paper) - 2 * setting.title;
}

function pictureSection(
  picture: Picture,
  first: boolean,
  setting: Setting,
  options: PlanSheetOptions,
): Section {
  return {
    heading: first ? [heading('H1', 'Pictures', setting)] : [],
    continued: [],
    paragraphs: [figure(picture.drawing, picture.alternative, setting, pictureRoom(setting, options))],
    newPage: first,
  };
}

/** The answer key: what the plan starts from, where that is to be printed, then every working, numbered. */
function workingSections(plan: Plan, setting: Setting, { dialect, from }: PlanSheetOptions): Section[] {
  const { from: starts, parts } = answerKey({ kind: 'plan', plan }, from ?? [], dialect);
  const start = { title: 'It starts from', lines: starts.map((words) => ({ words, mark: '•' })) };
  const all = [...(starts.length === 0 ? [] : [start]), ...parts.flatMap(keyLines)];
  return all.map(({ title, lines }, i) => ({
    heading: [
      ...(i === 0 ? [heading('H1', 'Workings', setting), paragraph(SHOWN_ROUNDED, setting)] : []),
      heading('H2', title, setting),
    ],
    continued: [heading('H2', `${title} (continued)`, setting)],
    paragraphs: lines.map(({ words, mark }) => {
      const look = { indent: setting.body, size: setting.small };
      return paragraph(words, setting, mark === null ? look : { ...look, mark });
    }),
  }));
}

/** The rows of a step stand under its heading in the plan. */
function keyLines({ title, lines, also }: KeyPart) {
  const words = [
    ...lines.map(({ number, text }) => ({ words: `(${number}) ${text}`, mark: null })),
    ...(also.length === 0 ? [] : [{ words: wordAlso(also), mark: null }]),
  ];
  return words.length === 0 ? [] : [{ title, lines: words }];
}
