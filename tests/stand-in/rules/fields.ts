/** The small rules of which the platform's forms are built. */
import { isObject } from '../json.ts';
import type { Rule, Spot } from './spot.ts';

/** Several rules on one spot. */
export function both(...rules: readonly Rule[]): Rule {
  return (spot) => {
    for (const rule of rules) rule(spot);
  };
}

/**
 * Text of `min` to `max` characters. The upper bound counts UTF-16 units untrimmed and the lower one
 * counts what is left after trimming: each the stricter reading of 'inclusive, white space is trimmed'.
 */
export function text(min: number, max: number, form?: RegExp): Rule {
  return (spot) => {
    if (typeof spot.value !== 'string') return spot.wrong('wrong-type', 'Must be a string.');
    if (spot.value.trim().length < min) spot.wrong('too-short', `Must be at least ${min} in length.`);
    if (spot.value.length > max) spot.wrong('too-long', `Must be ${max} or fewer in length.`);
    if (form && !form.test(spot.value)) spot.wrong('bad-format', `Must match ${form}.`);
  };
}

export function decimal(min: number, max: number): Rule {
  return (spot) => {
    if (typeof spot.value !== 'number') return spot.wrong('wrong-type', 'Must be a number.');
    if (spot.value < min) spot.wrong('too-small', `Must be ${min} or more.`);
    if (spot.value > max) spot.wrong('too-large', `Must be ${max} or less.`);
  };
}

export function whole(min: number, max: number): Rule {
  return (spot) => {
    if (!Number.isInteger(spot.value)) return spot.wrong('wrong-type', 'Must be a whole number.');
    decimal(min, max)(spot);
  };
}

export const truth: Rule = (spot) => {
  if (typeof spot.value !== 'boolean') spot.wrong('wrong-type', 'Must be true or false.');
};

export function oneOf(...values: readonly unknown[]): Rule {
  return (spot) => {
    if (!values.includes(spot.value)) spot.wrong('not-one-of', `Must be one of ${values.join(', ')}.`);
  };
}

export const snowflake = text(1, 20, /^\d{1,20}$/);

/** An absolute address with one of these schemes. */
export function link(max: number, ...schemes: readonly string[]): Rule {
  return both(text(1, max), (spot) => {
    const fits = typeof spot.value === 'string' && URL.canParse(spot.value);
    const scheme = fits ? new URL(`${spot.value}`).protocol : '';
    if (!schemes.includes(scheme)) spot.wrong('bad-format', `Scheme must be one of ${schemes.join(' ')}.`);
  });
}

export function list(item: Rule, min: number, max: number): Rule {
  return (spot) => {
    if (!Array.isArray(spot.value)) return spot.wrong('wrong-type', 'Must be a list.');
    if (spot.value.length < min) spot.wrong('too-few', `Must have ${min} or more entries.`);
    if (spot.value.length > max) spot.wrong('too-many', `Must have ${max} or fewer entries.`);
    for (let place = 0; place < spot.value.length; place += 1) item(spot.at(place));
  };
}

export type Fields = Readonly<Record<string, Rule>>;

/** An object with these keys and no others; an optional key may be null, which counts as not given. */
export function form(required: Fields, optional: Fields = {}): Rule {
  return (spot) => {
    if (!isObject(spot.value)) return spot.wrong('wrong-type', 'Must be an object.');
    for (const key of Object.keys(required)) if (isMissing(spot, key)) missing(spot.at(key));
    for (const key of Object.keys(spot.value)) {
      const rule = required[key] ?? optional[key];
      if (!rule) spot.at(key).wrong('unknown-key', `The platform knows no key '${key}' here.`);
      else if (!isMissing(spot, key)) rule(spot.at(key));
    }
  };
}

/** An object whose `type` picks the rule for all of it. */
export function byType(rules: Readonly<Record<number, Rule>>, where: string): Rule {
  return (spot) => {
    if (!isObject(spot.value)) return spot.wrong('wrong-type', 'Must be an object.');
    const type = spot.value.type;
    const rule = typeof type === 'number' ? rules[type] : undefined;
    if (rule) rule(spot);
    else spot.at('type').wrong('not-allowed-here', `Type ${type} has no place in ${where}.`);
  };
}

function isMissing(spot: Spot, key: string): boolean {
  const { value } = spot.at(key);
  return value === undefined || value === null;
}

function missing(spot: Spot): void {
  spot.wrong('missing', 'This field is required.');
}
