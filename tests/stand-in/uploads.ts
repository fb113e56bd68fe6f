/** Taking a request's body apart: plain JSON, or a form with `payload_json` and `files[n]`. */
import { notJson } from './refusal.ts';
import { type FilePart, strayPart } from './rules/files.ts';
import type { Violation } from './rules/spot.ts';

export interface Body {
  readonly json: unknown;
  readonly files: readonly FilePart[];
  readonly violations: readonly Violation[];
}

export async function readBody(contentType: string | undefined, bytes: Buffer): Promise<Body> {
  if (bytes.length === 0) return { json: undefined, files: [], violations: [] };
  if (contentType?.startsWith('multipart/form-data')) return readForm(contentType, bytes);
  return { json: parse(bytes.toString('utf8')), files: [], violations: [] };
}

async function readForm(contentType: string, bytes: Buffer): Promise<Body> {
  const sent = new Response(new Uint8Array(bytes), { headers: { 'content-type': contentType } });
  const parts = [...(await sent.formData())];
  const payload = parts.find(([name]) => name === 'payload_json')?.[1];
  const files = await Promise.all(
    parts.flatMap(([name, part]) => (part instanceof File ? [filePart(name, part)] : [])),
  );
  const stray = strayPart(parts.map(([name]) => name));
  const violation: Violation = {
    code: 'unknown-part',
    path: '',
    says: `The form part '${stray}' has no place.`,
  };
  return {
    json: typeof payload === 'string' ? parse(payload) : {},
    files,
    violations: stray === undefined ? [] : [violation],
  };
}

async function filePart(name: string, file: File): Promise<FilePart> {
  return {
    key: name.replace(/\D/g, ''),
    name: file.name,
    contentType: file.type,
    bytes: new Uint8Array(await file.arrayBuffer()),
  };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw notJson();
  }
}
