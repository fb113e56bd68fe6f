/** Writes the JSON Schemas that editors and other programs use. A test holds them against what is in the tree. */
import { writeFileSync } from 'node:fs';
import * as z from 'zod';
import { planSchema } from '../src/fit/plan-schema.ts';
import { lessonSchema } from '../src/flow/lesson.ts';
import { practiceSchema } from '../src/flow/practice.ts';
import { flowSchema } from '../src/flow/schema.ts';

export const SCHEMA_FILES = {
  'flows/flow.schema.json': () => jsonOf(flowSchema),
  'flows/lesson.schema.json': () => jsonOf(lessonSchema),
  'flows/practice.schema.json': () => jsonOf(practiceSchema),
  'src/fit/plan.schema.json': () => jsonOf(planSchema),
} as const;

function jsonOf(schema: z.ZodType): string {
  return `${JSON.stringify(z.toJSONSchema(schema, { io: 'input' }), null, 2)}\n`;
}

if (process.argv[1]?.endsWith('schemas.ts')) {
  for (const [file, make] of Object.entries(SCHEMA_FILES)) writeFileSync(file, make());
}
