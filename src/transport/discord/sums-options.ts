/** One-line sums: which flows can be answered in one command, and their questions as its options. */
import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandStringOption,
  ApplicationCommandOptionType,
} from 'discord.js';
import type { CompiledFlow, Flows } from '../../flow/compile.ts';
import type { Question } from '../../flow/schema.ts';
import { COMMAND_NAME, OPTION_TEXT } from './limits.ts';
import { atMost } from './typed.ts';

/** An option of a sum, with the question that it answers. */
export interface SumOption {
  readonly name: string;
  readonly id: string;
  readonly question: Question;
  readonly required: boolean;
}

/** More questions than this are an interview. */
const MOST_QUESTIONS = 6;

/** Flows of few questions, none of them about a body: the answer may be seen by all. */
export function sumFlows(flows: Flows): CompiledFlow[] {
  return [...flows.values()].filter(
    ({ questions }) =>
      questions.size <= MOST_QUESTIONS &&
      [...questions.values()].every(({ measurement }) => measurement === undefined),
  );
}

/** Required ones first: those that are always asked, and that nothing can stand in for. */
export function sumOptions({ questions, stops }: CompiledFlow): SumOption[] {
  const always = new Set(stops.flatMap(({ id, when }) => (when === undefined ? [id] : [])));
  const made = [...questions].map(([id, question]) => ({
    id,
    question,
    name: nameOf(question.short),
    required: always.has(id) && 'waits' in question.unknown,
  }));
  return made.sort((a, b) => Number(b.required) - Number(a.required));
}

/** 'Plain rows at each end' as an option is called: 'plain-rows-at-each-end'. */
export function nameOf(short: string): string {
  return short
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, COMMAND_NAME)
    .replace(/-$/, '');
}

export function asOption({ name, question, required }: SumOption): APIApplicationCommandBasicOption {
  const option: APIApplicationCommandStringOption = {
    type: ApplicationCommandOptionType.String,
    name,
    description: atMost(question.ask, OPTION_TEXT),
    required,
  };
  const choices = question.choices?.map(({ label }) => ({ name: label, value: label }));
  return choices === undefined ? option : { ...option, choices };
}
