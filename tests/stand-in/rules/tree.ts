/** Walking through nested components, and what must be unique among them. */
import { isObject, type JsonObject } from '../json.ts';
import type { Rule, Spot } from './spot.ts';

/** Every component of a list, nested ones included (in rows, sections, containers, labels). */
export function* everyComponent(components: unknown): Generator<JsonObject> {
  if (!Array.isArray(components)) return;
  for (const component of components) {
    if (!isObject(component)) continue;
    yield component;
    yield* everyComponent(component.components);
    yield* everyComponent([component.accessory, component.component]);
  }
}

function* everySpot(spot: Spot): Generator<Spot> {
  if (!Array.isArray(spot.value)) return;
  for (let place = 0; place < spot.value.length; place += 1) yield* spotsFrom(spot.at(place));
}

function* spotsFrom(spot: Spot): Generator<Spot> {
  if (!isObject(spot.value)) return;
  yield spot;
  yield* everySpot(spot.at('components'));
  yield* spotsFrom(spot.at('accessory'));
  yield* spotsFrom(spot.at('component'));
}

/** No custom id and no numeric id occurs twice (page `components/reference`). */
export const uniqueIds: Rule = (components) => {
  const customIds = new Set<unknown>();
  const ids = new Set<unknown>();
  for (const spot of everySpot(components)) {
    twice(spot.at('custom_id'), customIds, 'custom-id-twice');
    // 0 means 'choose one for me' on the platform and may repeat.
    if (spot.at('id').value !== 0) twice(spot.at('id'), ids, 'component-id-twice');
  }
};

function twice(spot: Spot, seen: Set<unknown>, code: 'custom-id-twice' | 'component-id-twice'): void {
  if (spot.value === undefined || spot.value === null) return;
  if (seen.has(spot.value)) spot.wrong(code, `'${spot.value}' is used more than once.`);
  seen.add(spot.value);
}

/** All text displays' text, in reading order. */
export function displayedTexts(components: unknown): string[] {
  const texts: string[] = [];
  for (const component of everyComponent(components)) {
    if (component.type === 10 && typeof component.content === 'string') texts.push(component.content);
  }
  return texts;
}
