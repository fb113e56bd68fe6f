/** Answer files: YAML or JSON, one interview a document or a line. */
import { parseAllDocuments } from 'yaml';
import * as z from 'zod';
import type { Script } from './run.ts';

const typed = z.union([z.string(), z.number(), z.boolean()]).transform(asTyped);
const scriptSchema = z.record(z.string(), z.union([typed.transform((t) => [t]), z.array(typed).min(1)]));

/** The file cannot be read as answers: says where and what was expected. */
export class AnswerFileFault extends Error {
  override readonly name = 'AnswerFileFault';
}

/** All interviews of a file, in order. JSON is YAML; JSON lines are one document a line. */
export function readScripts(text: string, file: string): Script[] {
  const sources = isJsonLines(text) ? text.split('\n').filter((line) => line.trim() !== '') : [text];
  return sources.flatMap((source, line) =>
    [parseAllDocuments(source)].flat().map((document, i) => {
      const place = sources.length > 1 ? `line ${line + 1}` : `document ${i + 1}`;
      if ('errors' in document && document.errors[0] !== undefined) {
        throw new AnswerFileFault(`${file}, ${place}: ${document.errors[0].message}`);
      }
      const parsed = scriptSchema.safeParse('toJS' in document ? document.toJS() : {});
      if (!parsed.success) {
        throw new AnswerFileFault(
          `${file}, ${place}: expected question ids with answers, such as "bust: 96 cm". ${z.prettifyError(parsed.error)}`,
        );
      }
      return parsed.data;
    }),
  );
}

function isJsonLines(text: string): boolean {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  return (
    lines.length > 1 &&
    lines.every((line) => line.trimStart().startsWith('{') && line.trimEnd().endsWith('}'))
  );
}

/** YAML reads bare yes, no and numbers as values; a person would have typed the words. */
function asTyped(value: string | number | boolean): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}
