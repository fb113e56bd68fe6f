/** Lessons put into words, and found by what they are called. */
import type { Lesson, Lessons } from '../flow/lesson.ts';
import { bare, phraseOf } from './read/phrase.ts';

/** One screen: the title, the paragraphs, and what to take care of. */
export function wordLesson({ title, teaches, care }: Lesson): string {
  return [title, ...teaches, ...(care === undefined ? [] : [`Take care: ${care}`])].join('\n');
}

/** All lessons, each with what is typed for it. */
export function listLessons(lessons: Lessons): string {
  const names = [...lessons.values()].map(({ title }) => `- lesson ${title.toLowerCase()}`);
  return `Lessons of one screen each. Type one of these:\n${names.join('\n')}`;
}

/** The lesson that is called so: by its id, its title or another name, or else by words that only it has. */
export function lessonCalled(lessons: Lessons, what: string): Lesson | undefined {
  const wanted = bare(phraseOf(what));
  if (wanted === '') return undefined;
  const all = [...lessons.values()];
  const exact = all.find((lesson) => namesOf(lesson).includes(wanted));
  if (exact !== undefined) return exact;
  const words = wanted.split(' ');
  const having = all.filter((lesson) => {
    const own = new Set(namesOf(lesson).flatMap((name) => name.split(' ')));
    return words.every((word) => own.has(word));
  });
  return having.length === 1 ? having[0] : undefined;
}

function namesOf({ lesson, title, hear }: Lesson): string[] {
  return [lesson.replaceAll('_', ' '), title, ...hear].map((name) => bare(phraseOf(name)));
}
