/** Every text that people read in interviews, lessons and plans, with where it stands. */
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';
import type { Dialect } from '../../src/present/terms.ts';
import { inDialect } from '../../src/present/terms.ts';
import { WORDING } from '../../src/present/wording.ts';

export interface Text {
  readonly where: string;
  readonly text: string;
}

/** Of the flows and lessons. */
export function textsOfFlows(dialect: Dialect): Text[] {
  const flows = [...loadFlows().values()].map((flow) => flow.inTerms(dialect));
  const lessons = [...(flows[0]?.book.lessons.values() ?? [])].flatMap(
    ({ lesson, title, teaches, care = '' }) =>
      [title, ...teaches, care].map((text) => ({ where: `lesson ${lesson}`, text })),
  );
  const exercises = [...(flows[0]?.book.exercises ?? [])].map(([where, { story }]) => ({
    where: `exercise ${where}`,
    text: story,
  }));
  return unique([...flows.flatMap(textsOfFlow), ...lessons, ...exercises]);
}

/** In the order in which she comes to them. */
export function textsOfFlow({ file, questions }: CompiledFlow): Text[] {
  const { title, wish, intro } = file;
  const asked = [...questions].flatMap(([id, question]) => {
    const { short, ask, why, how, picture = '', unknown, choices = [] } = question;
    const left = 'waits' in unknown ? unknown.waits : unknown.effect;
    const labels = choices.map(({ label }) => label);
    return [short, ask, ...labels, why, how, picture, left].map((text) => ({ where: id, text }));
  });
  return [...[title, wish, intro].map((text) => ({ where: file.id, text })), ...asked];
}

/** Of plans: their sentences, with the gaps as they are. */
export function textsOfPlans(dialect: Dialect): Text[] {
  return Object.entries(WORDING).map(([where, text]) => ({ where, text: inDialect(text, dialect) }));
}

function unique(texts: readonly Text[]): Text[] {
  const seen = new Map(texts.map((one) => [`${one.where}: ${one.text}`, one]));
  return [...seen.values()].filter(({ text }) => text !== '');
}
