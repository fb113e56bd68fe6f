/** From a checked payload to what stands in the message. */
import { isAbsent, isObject, type JsonObject, numberIn, objects, objectsIn, textIn } from './json.ts';
import { type Attachment, type Edit, LOADING, type Message } from './messages.ts';
import type { FilePart } from './rules/files.ts';
import { newId } from './snowflake.ts';

/** The parts of a new message. */
export function partsOf(body: JsonObject, files: readonly FilePart[]): Edit {
  return {
    content: textIn(body, 'content'),
    embeds: objectsIn(body, 'embeds'),
    components: numbered(objectsIn(body, 'components')),
    attachments: files.map((file) => attachment(file, body)),
    flags: numberIn(body, 'flags') ?? 0,
  };
}

/** The parts of a message after an edit: a key that is not given leaves what was there. */
export function editedParts(before: Message, body: JsonObject, files: readonly FilePart[]): Edit {
  const fresh = partsOf(body, files);
  const listed = new Set(objectsIn(body, 'attachments').map((entry) => `${entry.id}`));
  const keepsAll = isAbsent(body, 'attachments');
  const kept = before.attachments.filter((file) => keepsAll || listed.has(file.id));
  return {
    content: body.content === undefined ? before.content : fresh.content,
    embeds: body.embeds === undefined ? before.embeds : fresh.embeds,
    components: body.components === undefined ? before.components : fresh.components,
    attachments: [...kept, ...fresh.attachments],
    flags: (before.flags | fresh.flags) & ~LOADING,
  };
}

function attachment(file: FilePart, body: JsonObject): Attachment {
  const entry = objectsIn(body, 'attachments').find((listed) => `${listed.id}` === file.key);
  return {
    id: newId(),
    filename: file.name,
    contentType: file.contentType,
    description: entry && !isAbsent(entry, 'description') ? textIn(entry, 'description') : undefined,
    bytes: file.bytes,
  };
}

/** Components with an id each, counted from 1 in reading order where the app gave none. */
function numbered(components: readonly JsonObject[]): readonly JsonObject[] {
  let last = 0;
  const number = (component: JsonObject): JsonObject => {
    last += 1;
    const id = numberIn(component, 'id') || last;
    return {
      ...component,
      id,
      ...(Array.isArray(component.components) && { components: objects(component.components).map(number) }),
      ...(isObject(component.accessory) && { accessory: number(component.accessory) }),
    };
  };
  return components.map(number);
}
