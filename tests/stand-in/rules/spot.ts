/** One place in a payload under inspection, and the list of what was found wrong there. */

/** What can be wrong with a payload; each code has at least one row in `rules.test.ts`. */
export const VIOLATION_CODES = [
  // form
  'wrong-type',
  'missing',
  'unknown-key',
  'too-short',
  'too-long',
  'too-few',
  'too-many',
  'too-small',
  'too-large',
  'not-one-of',
  'bad-format',
  'not-allowed-here',
  // messages
  'empty-message',
  'empty-embed',
  'embed-texts-over-6000',
  'flag-not-allowed',
  'flag-taken-off',
  'mentions-not-silenced',
  'mentions-contradict',
  // files
  'file-too-large',
  'file-name-changes',
  'file-name-twice',
  'file-not-listed',
  'file-not-sent',
  'file-not-shown',
  'no-such-attachment',
  'unknown-part',
  // components
  'custom-id-twice',
  'component-id-twice',
  'option-value-twice',
  'button-without-action',
  'button-with-two-actions',
  'button-without-face',
  'not-an-emoji',
  'row-mixed',
  'more-than-options',
  'minimum-over-maximum',
  'defaults-out-of-bounds',
  'optional-needs-not-required',
  'value-out-of-bounds',
  'components-over-40',
  'texts-over-4000',
  'not-with-components-v2',
  'needs-components-v2',
  // answers to an interaction
  'callback-not-for-this-interaction',
  'choice-of-wrong-type',
  // commands
  'not-lower-case',
  'required-after-optional',
  'choices-with-autocomplete',
  'command-name-twice',
  'option-name-twice',
  'choice-twice',
  'subcommands-mixed',
  'texts-over-8000',
  'too-many-of-a-kind',
  'only-in-global-commands',
  'private-channel-needs-user-install',
  // requests
  'unknown-route',
] as const;
export type ViolationCode = (typeof VIOLATION_CODES)[number];

/** One breach of the platform's rules; `path` is dotted, list places as numbers (`embeds.0.title`). */
export interface Violation {
  readonly code: ViolationCode;
  readonly path: string;
  readonly says: string;
}

/** A rule looks at one spot and reports there what is wrong. */
export type Rule = (spot: Spot) => void;

export class Spot {
  readonly value: unknown;
  private readonly path: string;
  private readonly found: Violation[];

  constructor(value: unknown, path: string, found: Violation[]) {
    this.value = value;
    this.path = path;
    this.found = found;
  }

  /** The value of a key (or list place) below this spot. */
  at(key: string | number): Spot {
    const below = (this.value as Record<string | number, unknown>)[key];
    return new Spot(below, this.path === '' ? `${key}` : `${this.path}.${key}`, this.found);
  }

  wrong(code: ViolationCode, says: string): void {
    this.found.push({ code, path: this.path, says });
  }
}

/** Everything a rule finds wrong with a value. */
export function inspect(value: unknown, rule: Rule, path = ''): Violation[] {
  const found: Violation[] = [];
  rule(new Spot(value, path, found));
  return found;
}
