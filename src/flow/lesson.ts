/** The shape of a lesson's file: one screen on one subject, linked from the questions where it matters. */
import * as z from 'zod';

const text = z.string().trim().min(1).max(500);

export const lessonSchema = z
  .strictObject({
    lesson: z
      .string()
      .regex(/^[a-z][a-z0-9_]*$/, 'an id has small letters, digits and underlines, and begins with a letter')
      .describe('its id, by which questions name it'),
    title: z.string().min(1).max(40),
    place: z.int().default(50).describe('where it stands in the list of lessons; lower comes first'),
    hear: z.array(z.string()).default([]).describe('other words by which it may be asked for'),
    teaches: z.array(text).min(1).max(6).describe('paragraphs'),
    care: text.optional().describe('what to take care of'),
  })
  .meta({ title: 'An Easewright lesson', description: 'One screen on one subject.' });
export type Lesson = z.infer<typeof lessonSchema>;

/** By id, in the order in which they are listed. */
export type Lessons = ReadonlyMap<string, Lesson>;
