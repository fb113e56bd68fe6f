/** Reads the files of flows and lessons, and reports every fault of every file at once. */
import { type Document, isMap, isNode, isScalar, LineCounter, parseDocument } from 'yaml';
import type { Calculations } from './calculations.ts';
import { checkBook } from './check.ts';
import { checkLessons } from './check-lessons.ts';
import { type Fault, FlowFaults, pointAt } from './fault.ts';
import { type Lesson, type Lessons, lessonSchema } from './lesson.ts';
import { type FlowFile, flowSchema, type Question } from './schema.ts';

/** A flow or a lesson as text, with the name under which its faults are reported. */
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

/** All flows, questions and lessons, by id. */
export interface Book {
  readonly flows: ReadonlyMap<string, FlowFile>;
  readonly questions: ReadonlyMap<string, Question>;
  /** The flow in whose file a question is worded. */
  readonly home: ReadonlyMap<string, string>;
  readonly lessons: Lessons;
}

/** Faults that may only come of a file that could not be read itself. */
const ABOUT_OTHERS: ReadonlySet<Fault['code']> = new Set([
  'unknown question',
  'unknown flow',
  'condition too early',
  'unknown lesson',
  'lesson without a question',
]);

/** Reads the files into a book. Throws FlowFaults, which lists everything that is wrong. */
export function loadBook(texts: readonly FlowText[], calculations: Calculations): Book {
  const faults: Fault[] = [];
  const read = texts.map((text) => readSheet(text, faults));
  const sheets = read.flatMap((one) => (one !== undefined && 'flow' in one ? [one] : []));
  const lessons = read.flatMap((one) => (one !== undefined && 'lesson' in one ? [one] : []));
  const unread = read.includes(undefined);
  const between = [...checkBook(sheets, calculations), ...checkLessons(lessons, sheets)];
  faults.push(...between.filter((fault) => !(unread && ABOUT_OTHERS.has(fault.code))));
  if (faults.length > 0) throw new FlowFaults(faults);
  return {
    flows: new Map(sheets.map((s) => [s.flow.id, s.flow])),
    questions: new Map(sheets.flatMap((s) => Object.entries(s.flow.questions))),
    home: new Map(sheets.flatMap((s) => Object.keys(s.flow.questions).map((q) => [q, s.flow.id]))),
    lessons: new Map(
      lessons.toSorted((a, b) => a.lesson.place - b.lesson.place).map((s) => [s.lesson.lesson, s.lesson]),
    ),
  };
}

/** A file with the key `lesson` is a lesson; any other is a flow. */
function readSheet({ file, text, read }: FlowText, faults: Fault[]): Sheet | LessonSheet | undefined {
  const document = () => parseDocument(text, { lineCounter: new LineCounter(), uniqueKeys: true });
  const faultAt: FaultAt = (path, code, message) => ({
    code,
    file,
    message,
    ...pointAt(text, offsetOf(document(), path)),
  });
  const value = read ?? readYaml(file, text, document(), faults);
  if (value === undefined) return undefined;
  const isLesson = typeof value === 'object' && value !== null && 'lesson' in value;
  const parsed = isLesson ? lessonSchema.safeParse(value) : flowSchema.safeParse(value);
  if (parsed.success)
    return 'lesson' in parsed.data ? { lesson: parsed.data, faultAt } : { file, flow: parsed.data, faultAt };
  const code = isLesson ? 'not a lesson' : 'not a flow';
  for (const { path, message } of parsed.error.issues)
    faults.push(faultAt(path, code, `${path.join('.') || 'the file'}: ${message}`));
  return undefined;
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
