/** The shape of a practice file: an invented knitter, what she answers to any question, and her exercises. */
import * as z from 'zod';
import type { LengthUnit } from '../fit/units.ts';

const id = z
  .string()
  .regex(/^[a-z][a-z0-9_]*$/, 'an id has small letters, digits and underlines, and begins with a letter');
const text = z.string().trim().min(1).max(400);

/** An answer as a person types it who reads the one unit or the other. */
export type InBothUnits = Readonly<Record<LengthUnit, string>>;

const typed = z.union([z.string().min(1).max(300), z.number()]).transform(String);
const answers = z.record(
  id,
  z.union([
    typed.transform((one): InBothUnits => ({ cm: one, in: one })),
    z.strictObject({ cm: typed, in: typed }).describe('where figures would not be round in the other unit'),
  ]),
);

export const practiceSchema = z
  .strictObject({
    practice: id.describe('its id'),
    knitter: text.describe('who knits what; told at the beginning of each exercise'),
    answers: answers.default({}).describe('what she answers in every exercise, by question'),
    exercises: z
      .record(
        id,
        z.strictObject({
          story: text.describe('what she wants to know this time'),
          answers: answers.default({}).describe('what she answers in this one instead'),
        }),
      )
      .describe('by the flow that is practised'),
  })
  .meta({ title: 'An Easewright practice file', description: 'A knitter of our own, and her exercises.' });
export type PracticeFile = z.infer<typeof practiceSchema>;

/** A flow with every figure given, to be practised. */
export interface Exercise {
  readonly story: string;
  /** By question. */
  readonly answers: ReadonlyMap<string, InBothUnits>;
}

/** By the flow that is practised. */
export type Exercises = ReadonlyMap<string, Exercise>;

export function exercisesOf(files: readonly PracticeFile[]): Exercises {
  return new Map(
    files.flatMap(({ knitter, answers: always, exercises }) =>
      Object.entries(exercises).map(([flow, { story, answers: own }]): [string, Exercise] => [
        flow,
        { story: `${knitter} ${story}`, answers: new Map(Object.entries({ ...always, ...own })) },
      ]),
    ),
  );
}
