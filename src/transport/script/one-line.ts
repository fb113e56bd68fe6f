/**
 * Answers in one line: the questions of a short flow as options, `name=value`. A name is a question's id, or the id without
 * the chapter it begins with where that tells it from the others: `from` for `spread_from`.
 */
import type { CompiledFlow, Flows } from '../../flow/compile.ts';
import type { Script } from './run.ts';

/** More questions than this are an interview. */
export const MOST_IN_ONE_LINE = 8;

/** The short name of every question by its id; its id where the short one would not tell it from another. */
export function optionNames({ questions }: CompiledFlow, flows: Flows): ReadonlyMap<string, string> {
  const ids = [...questions.keys()];
  const shorts = ids.map((id) => withoutChapter(id, flows));
  return new Map(
    ids.map((id, i) => {
      const short = shorts[i] ?? id;
      const alone = shorts.filter((other) => other === short).length === 1 && !ids.includes(short);
      return [id, alone ? short : id];
    }),
  );
}

function withoutChapter(id: string, flows: Flows): string {
  const [chapter = '', ...rest] = id.split('_');
  return rest.length > 0 && flows.has(chapter) ? rest.join('_') : id;
}

/**
 * What is typed at each question, or a sentence that says what is wrong. An option that is given twice is answered with
 * its first value and confirmed with the next. One left out is not known where something sound can stand in for it.
 */
export function readOneLine(flow: CompiledFlow, flows: Flows, args: readonly string[]): Script | string {
  if (flow.questions.size > MOST_IN_ONE_LINE)
    return `The flow '${flow.file.id}' asks more than ${MOST_IN_ONE_LINE} questions: answer it from a file.`;
  const names = optionNames(flow, flows);
  const typed = new Map<string, string[]>();
  for (const arg of args) {
    const [, name, value] = /^([^=]+)=(.*)$/s.exec(arg) ?? [];
    if (name === undefined || value === undefined)
      return `Expected name=value, not '${arg}'. ${named(names)}`;
    const id = [...names].find(([of, short]) => of === name || short === name)?.[0];
    if (id === undefined) return `There is no option '${name}'. ${named(names)}`;
    typed.set(id, [...(typed.get(id) ?? []), value]);
  }
  for (const [id, { unknown }] of flow.questions)
    if (!typed.has(id) && 'use' in unknown) typed.set(id, ["I don't know"]);
  return Object.fromEntries(typed);
}

function named(names: ReadonlyMap<string, string>): string {
  return `There are: ${[...names.values()].join(', ')}.`;
}
