/** Reading JSON whose form is not yet known; a wrong type reads as absent or empty. */
export type JsonObject = Readonly<Record<string, unknown>>;

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function objectIn(holder: JsonObject, key: string): JsonObject {
  const value = holder[key];
  return isObject(value) ? value : {};
}

export function objectsIn(holder: JsonObject, key: string): readonly JsonObject[] {
  return objects(holder[key]);
}

export function objects(value: unknown): readonly JsonObject[] {
  return Array.isArray(value) ? value.filter(isObject) : [];
}

export function textIn(holder: JsonObject, key: string): string {
  const value = holder[key];
  return typeof value === 'string' ? value : '';
}

export function numberIn(holder: JsonObject, key: string): number | undefined {
  const value = holder[key];
  return typeof value === 'number' ? value : undefined;
}

export function textsIn(holder: JsonObject, key: string): readonly string[] {
  const value = holder[key];
  return Array.isArray(value) ? value.filter((entry) => typeof entry === 'string') : [];
}

/** True for a key that is missing or null: the platform takes both as 'not given'. */
export function isAbsent(holder: JsonObject, key: string): boolean {
  return holder[key] === undefined || holder[key] === null;
}
