/** Faults between questions and lessons: a lesson that is not there, and one to which nothing leads. */
import type { Fault } from './fault.ts';
import type { LessonSheet, Sheet } from './load.ts';

/** All such faults of all files. */
export function checkLessons(lessons: readonly LessonSheet[], sheets: readonly Sheet[]): Fault[] {
  const known = new Set<string>();
  const twice = lessons.flatMap(({ lesson: { lesson: id }, faultAt }) => {
    const before = known.has(id);
    known.add(id);
    return before ? [faultAt(['lesson'], 'two of one id', `the lesson '${id}' is defined twice`)] : [];
  });
  const linked = new Set<string>();
  const unknown = sheets.flatMap(({ flow, faultAt }) =>
    Object.entries(flow.questions).flatMap(([question, { lesson }]) => {
      if (lesson === undefined) return [];
      linked.add(lesson);
      if (known.has(lesson)) return [];
      const path = ['questions', question, 'lesson'];
      return [faultAt(path, 'unknown lesson', `no lesson is called '${lesson}'`)];
    }),
  );
  const lonely = lessons.flatMap(({ lesson: { lesson: id }, faultAt }) =>
    linked.has(id) ? [] : [faultAt(['lesson'], 'lesson without a question', `no question names '${id}'`)],
  );
  return [...twice, ...unknown, ...lonely];
}
