/** Files of a message and how the payload speaks of them (page `reference`, Uploading Files). */
import { type JsonObject, objects, objectsIn } from '../json.ts';
import { decimal, form, list, text, truth } from './fields.ts';
import type { Rule, Spot } from './spot.ts';
import { everyComponent } from './tree.ts';

/** Bytes of one file where neither the person nor the server pays for more. */
export const FILE_LIMIT = 10 * 1024 * 1024;
/** Bytes of one request, files and all. */
export const REQUEST_LIMIT = 25 * 1024 * 1024;

/** One uploaded file; `key` is the number n of its form part `files[n]`. */
export interface FilePart {
  readonly key: string;
  readonly name: string;
  readonly contentType: string;
  readonly bytes: Uint8Array;
}

const attachmentId: Rule = (spot) => {
  if (!/^\d{1,20}$/.test(`${spot.value}`)) spot.wrong('bad-format', 'Must be a snowflake or a file number.');
};

export const attachments: Rule = list(
  form(
    { id: attachmentId },
    {
      filename: text(1, 260),
      title: text(1, 1024),
      description: text(0, 1024),
      duration_secs: decimal(0, 2 ** 31 - 1),
      waveform: text(0, 400),
      is_spoiler: truth,
    },
  ),
  0,
  10,
);

/** What the message keeps of earlier files and gets of new ones. */
export interface FilesAtHand {
  readonly sent: readonly FilePart[];
  /** Files the message had before an edit, by id. */
  readonly before: ReadonlyMap<string, { readonly filename: string }>;
}

/** Each file is small enough, has a name that stays as it is, and is listed; each listed one is there. */
export function filesAgree(files: FilesAtHand): Rule {
  return (message) => {
    const body = message.value as JsonObject;
    const spot = message.at('attachments');
    const listed = objects(spot.value).map((entry) => `${entry.id}`);
    if (files.sent.length + files.before.size > 0) checkCount(spot, listed, files);
    for (const file of files.sent) checkFile(spot, file, listed);
    listed.forEach((id, place) => {
      const known = files.before.has(id) || files.sent.some((file) => file.key === id);
      if (!known) spot.at(place).wrong('file-not-sent', `No file '${id}' was sent or was there before.`);
    });
    const names = namesAfter(body, files);
    const doubled = names.find((name, place) => names.indexOf(name) !== place);
    if (doubled) spot.wrong('file-name-twice', `Two files are called '${doubled}'.`);
    checkReferences(message, names);
  };
}

function checkCount(spot: Spot, listed: readonly string[], files: FilesAtHand): void {
  const count = Array.isArray(spot.value) ? listed.length : files.sent.length + files.before.size;
  if (count > 10 && listed.length <= 10) spot.wrong('too-many', `${count} of 10 files.`);
}

function checkFile(spot: Spot, file: FilePart, listed: readonly string[]): void {
  if (file.bytes.length > FILE_LIMIT) spot.wrong('file-too-large', `'${file.name}' is over 10 MiB.`);
  if (!/^[\w.-]+$/.test(file.name)) {
    spot.wrong('file-name-changes', `The platform would rename '${file.name}'.`);
  }
  if (Array.isArray(spot.value) && !listed.includes(file.key)) {
    spot.wrong('file-not-listed', `files[${file.key}] is not among the attachments.`);
  }
}

/** Names of all files the message shows after this request. */
function namesAfter(body: JsonObject, files: FilesAtHand): string[] {
  const keepsAll = !Array.isArray(body.attachments);
  const listed = new Set(objectsIn(body, 'attachments').map((entry) => `${entry.id}`));
  const kept = [...files.before].filter(([id]) => keepsAll || listed.has(id));
  return [...kept.map(([, file]) => file.filename), ...files.sent.map((file) => file.name)];
}

/** Each `attachment://name` names a file of the message; with components V2 each file is so named. */
function checkReferences(message: Spot, names: readonly string[]): void {
  const body = message.value as JsonObject;
  const referred = new Set(
    [...JSON.stringify(body).matchAll(/"attachment:\/\/([^"]*)"/g)].map((hit) => hit[1]),
  );
  for (const name of referred) {
    if (!names.includes(`${name}`)) message.wrong('no-such-attachment', `No file is called '${name}'.`);
  }
  const isV2 = [...everyComponent(body.components)].some((component) => Number(component.type) > 8);
  const hidden = names.filter((name) => !referred.has(name));
  if (isV2 && hidden.length > 0) {
    message.at('attachments').wrong('file-not-shown', `No component shows '${hidden.join("', '")}'.`);
  }
}

/** Form parts of an upload may only be `payload_json` and `files[n]`, each n once. */
export function strayPart(names: readonly string[]): string | undefined {
  return names.find(
    (name, place) => !/^(?:payload_json|files\[\d+\])$/.test(name) || names.indexOf(name) !== place,
  );
}
