/** The shape of a flow file: an interview as data. Editors are given the same shape as a JSON Schema. */
import * as z from 'zod';
import { MEASUREMENTS } from '../fit/words.ts';
import { ANSWER_KINDS } from './answer.ts';

const id = z
  .string()
  .regex(/^[a-z][a-z0-9_]*$/, 'an id has small letters, digits and underlines, and begins with a letter');
const text = z.string().trim().min(1).max(600);

/** A plain condition on earlier answers, so that what can be reached can be checked. */
export type Condition =
  | { readonly question: string; readonly is: string | readonly string[] }
  | { readonly question: string; readonly has: string }
  | { readonly known: string }
  | { readonly unknown: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

export const conditionSchema: z.ZodType<Condition> = z
  .lazy(() =>
    z.union([
      z.strictObject({ question: id, is: z.union([id, z.array(id).min(1)]) }),
      z.strictObject({ question: id, has: id }),
      z.strictObject({ known: id }),
      z.strictObject({ unknown: id }),
      z.strictObject({ all: z.array(conditionSchema).min(1) }),
      z.strictObject({ any: z.array(conditionSchema).min(1) }),
      z.strictObject({ not: conditionSchema }),
    ]),
  )
  .meta({ id: 'condition', description: 'true or false, from earlier answers' });

const choice = z.strictObject({
  id: id.describe('what is stored'),
  label: z.string().min(1).max(60).describe('what the button says'),
  hear: z.array(z.string()).default([]).describe('other words that mean this choice'),
});

/** What a question may be about that lasts from one interview to the next. */
export const ABOUT = ['wearer', 'pattern', 'swatch', 'plan'] as const;
export type About = (typeof ABOUT)[number];

/** What 'I don't know' leads to: a default with what it could change, or a part of the plan that waits. */
const unknown = z.union([
  z.strictObject({ use: z.string().describe('a calculation that gives the default'), effect: text }),
  z.strictObject({ waits: text.describe('which part of the plan waits for this answer') }),
]);

export const questionSchema = z.strictObject({
  kind: z.enum(ANSWER_KINDS),
  short: z.string().min(1).max(40).describe('its name on the review page'),
  ask: text,
  why: text,
  how: text,
  picture: text.optional().describe('the measuring picture in words'),
  example: z.string().min(1).max(80).describe('an answer as a person would type it'),
  measurement: z
    .enum(MEASUREMENTS)
    .optional()
    .describe('the body measurement, where it is one: checked against the tables'),
  about: z
    .enum(ABOUT)
    .optional()
    .describe(
      'what it is about that lasts: its answer can be taken along into a later interview; a measurement is about the wearer',
    ),
  of_size: id
    .optional()
    .describe(
      'the question whose answer is the size in which this is read; else the size that was asked last before it',
    ),
  rows_too: id.optional().describe('the question that rows typed here, beside the stitches, answer too'),
  one_size: z
    .literal(true)
    .optional()
    .describe('a row of counts that all belong to one size; other rows have one a size'),
  lesson: id.optional().describe('the lesson that belongs to it'),
  offer: z.string().optional().describe('a calculation that gives likely answers'),
  choices: z.array(choice).min(2).max(25).optional(),
  least: z.number().optional().describe('least sensible figure: cm, stitches or rows'),
  most: z.number().optional().describe('greatest sensible figure'),
  unknown,
});
export type Question = z.infer<typeof questionSchema>;
export type Choice = z.infer<typeof choice>;

const step = z.union([
  z.strictObject({ ask: id, when: conditionSchema.optional() }),
  z.strictObject({ include: id, when: conditionSchema.optional() }),
]);

/** How wishes are grouped, in the order in which the groups are offered. */
export const WISH_GROUPS = ['check', 'body', 'tops', 'sums'] as const;
export type WishGroup = (typeof WISH_GROUPS)[number];

export const flowSchema = z
  .strictObject({
    id,
    version: z.int().min(1),
    title: z.string().min(1).max(60),
    wish: z.string().min(1).max(100).describe('what a knitter would say she wants'),
    hear: z.array(z.string().min(1).max(100)).default([]).describe('other ways in which she may say it'),
    group: z.enum(WISH_GROUPS).default('sums').describe('the group of wishes in which it is listed'),
    common: z.boolean().default(false).describe('whether it is among the first that are offered'),
    intro: text,
    place: z.int().default(50).describe('where it stands in the list of flows; lower comes first'),
    result: z.string().describe('the calculation that makes the plan'),
    steps: z.array(step).min(1),
    questions: z.record(id, questionSchema).default({}),
  })
  .meta({ title: 'An Easewright flow', description: 'One chapter of the interview.' });
export type FlowFile = z.infer<typeof flowSchema>;
