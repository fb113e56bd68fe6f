/** Reads the files of flows, lessons and practice, and reports every fault of every file at once. */
import { type Document, isMap, isNode, isScalar, LineCounter, parseDocument } from 'yaml';
import type { Calculations } from './calculations.ts';
import { checkBook } from './check.ts';
import { checkLessons } from './check-lessons.ts';
import { checkPractice } from './check-practice.ts';
import { type Fault, FlowFaults, pointAt } from './fault.ts';
import { type Lesson, type Lessons, lessonSchema } from './lesson.ts';
import { type Exercises, exercisesOf, type PracticeFile, practiceSchema } from './practice.ts';
import { type FlowFile, flowSchema, type Question } from './schema.ts';

/** A flow, a lesson or a practice as text, with the name under which its faults are reported. */
export interface FlowText {
  readonly file: string;
  readonly text: string;
  /** What the text says, where it has been read before: reading YAML is the slowest part of a start. */
  readonly read?: unknown;
}

/** The means to point at any place in a file that has been read. */
type FaultAt = (path: readonly PropertyKey[], code: Fault['code'], message: string) => Fault;

export interface Sheet {
  readonly file: string;
  readonly flow: FlowFile;
  readonly faultAt: FaultAt;
}

export interface LessonSheet {
  readonly lesson: Lesson;
  readonly faultAt: FaultAt;
}

export interface PracticeSheet {
  readonly practice: PracticeFile;
  readonly faultAt: FaultAt;
}

/** All flows, questions, lessons and exercises, by id. */
export interface Book {
  readonly flows: ReadonlyMap<string, FlowFile>;
  readonly questions: ReadonlyMap<string, Question>;
  /** The flow in whose file a question is worded. */
  readonly home: ReadonlyMap<string, string>;
  readonly lessons: Lessons;
  readonly exercises: Exercises;
}

/** Faults that may only come of a file that could not be read itself. */
const ABOUT_OTHERS: ReadonlySet<Fault['code']> = new Set([
  'unknown question',
  'unknown flow',
  'condition too early',
  'unknown lesson',
  'lesson without a question',
  'answer to nothing',
]);

/** Reads the files into a book. Throws FlowFaults, which lists everything that is wrong. */
export function loadBook(texts: readonly FlowText[], calculations: Calculations): Book {
  const faults: Fault[] = [];
  const read = texts.map((text) => readSheet(text, faults));
  const sheets = read.flatMap((one) => (one !== undefined && 'flow' in one ? [one] : []));
  const lessons = read.flatMap((one) => (one !== undefined && 'lesson' in one ? [one] : []));
  const practices = read.flatMap((one) => (one !== undefined && 'practice' in one ? [one] : []));
  const unread = read.includes(undefined);
  const between = [
    ...checkBook(sheets, calculations),
    ...checkLessons(lessons, sheets),
    ...checkPractice(practices, sheets),
  ];
  faults.push(...between.filter((fault) => !(unread && ABOUT_OTHERS.has(fault.code))));
  if (faults.length > 0) throw new FlowFaults(faults);
  return {
    flows: new Map(sheets.map((s) => [s.flow.id, s.flow])),
    questions: new Map(sheets.flatMap((s) => Object.entries(s.flow.questions))),
    home: new Map(sheets.flatMap((s) => Object.keys(s.flow.questions).map((q) => [q, s.flow.id]))),
    lessons: new Map(
      lessons.toSorted((a, b) => a.lesson.place - b.lesson.place).map((s) => [s.lesson.lesson, s.lesson]),
    ),
    exercises: exercisesOf(practices.map((s) => s.practice)),
  };
}

/** A file with the key `lesson` is a lesson, one with the key `practice` a practice; any other is a flow. */
function readSheet(
  { file, text, read }: FlowText,
  faults: Fault[],
): Sheet | LessonSheet | PracticeSheet | undefined {
  const document = () => parseDocument(text, { lineCounter: new LineCounter(), uniqueKeys: true });
  const faultAt: FaultAt = (path, code, message) => ({
    code,
    file,
    message,
    ...pointAt(text, offsetOf(document(), path)),
  });
  const value = read ?? readYaml(file, text, document(), faults);
  if (value === undefined) return undefined;
  const { code, schema } = READERS.find(({ key }) => hasKey(value, key)) ?? FLOW;
  const parsed = schema.safeParse(value);
  if (!parsed.success) {
    for (const { path, message } of parsed.error.issues)
      faults.push(faultAt(path, code, `${path.join('.') || 'the file'}: ${message}`));
    return undefined;
  }
  const { data } = parsed;
  if ('lesson' in data) return { lesson: data, faultAt };
  return 'practice' in data ? { practice: data, faultAt } : { file, flow: data, faultAt };
}

const FLOW = { key: 'steps', code: 'not a flow', schema: flowSchema } as const;
const READERS = [
  { key: 'lesson', code: 'not a lesson', schema: lessonSchema },
  { key: 'practice', code: 'not a practice', schema: practiceSchema },
] as const;

function hasKey(value: unknown, key: string): boolean {
  return typeof value === 'object' && value !== null && key in value;
}

function readYaml(file: string, text: string, document: Document, faults: Fault[]): unknown {
  for (const error of document.errors) {
    faults.push({
      code: 'not yaml',
      file,
      message: error.message.split('\n')[0] ?? '',
      ...pointAt(text, error.pos[0]),
    });
  }
  return document.errors.length > 0 ? undefined : (document.toJS() ?? {});
}

/** Where in the text a path lies; the nearest enclosing place where the path itself is missing. */
function offsetOf(document: Document, path: readonly PropertyKey[]): number {
  for (let length = path.length; length > 0; length -= 1) {
    const parent = document.getIn(path.slice(0, length - 1), true);
    if (isMap(parent)) {
      const key = String(path[length - 1]);
      const pair = parent.items.find((p) => isScalar(p.key) && String(p.key.value) === key);
      if (pair !== undefined && isScalar(pair.key) && pair.key.range) return pair.key.range[0];
    }
    const node = document.getIn(path.slice(0, length), true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return 0;
}
