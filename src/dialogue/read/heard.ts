/** What became of a typed answer. A person's unusable answer is a value with a reason and an example, never an exception. */

/** Why a clear reading is still put back as one yes/no question. */
export const ASK_BACK_REASONS = [
  'unit missing',
  'span missing',
  'unlikely',
  'approximate',
  'space lost',
  'comma unclear',
  'comma missing',
  'foot mark',
  'other measurement',
  'more or less',
  'turned round',
  'spelling',
  'extra words',
  'fewer or more than sizes',
] as const;
export type AskBackReason = (typeof ASK_BACK_REASONS)[number];

export const REFUSAL_REASONS = [
  'empty',
  'too long',
  'no number',
  'number too large',
  'thousands',
  'several numbers',
  'ranges',
  'incomplete',
  'not whole',
  'negative',
  'out of range',
  'other kind',
  'uneven rows',
  'unknown size',
  'no such choice',
  'not understood',
] as const;
export type RefusalReason = (typeof REFUSAL_REASONS)[number];

/** Read without doubt. `echo` says what was understood, with its unit, the reader's own unit first. */
export interface Understood<T> {
  readonly kind: 'heard';
  readonly value: T;
  readonly echo: string;
}

/** One likely reading; `question` is answered with yes (the value stands) or no. */
export interface AskBack<T> {
  readonly kind: 'ask back';
  readonly why: AskBackReason;
  readonly question: string;
  readonly value: T;
  readonly echo: string;
}

/** One reading to choose from. */
export interface Option<T> {
  readonly value: T;
  readonly echo: string;
}

/** Several readings that contradict each other, at least two. */
export interface Which<T> {
  readonly kind: 'which';
  readonly question: string;
  readonly options: readonly Option<T>[];
}

/** Not usable. `message` says what was expected; `example` is an answer that would be heard. */
export interface Refused {
  readonly kind: 'refused';
  readonly reason: RefusalReason;
  readonly message: string;
  readonly example: string;
}

export type Heard<T> = Understood<T> | AskBack<T> | Which<T> | Refused;

export function heard<T>(value: T, echo: string): Understood<T> {
  return { kind: 'heard', value, echo };
}

/** Without a question of its own the echo is put back: 'Do you mean 47.6 cm (18¾ in)?' */
export function askBack<T>(
  why: AskBackReason,
  { value, echo }: Option<T>,
  question = `Do you mean ${echo}?`,
): AskBack<T> {
  return { kind: 'ask back', why, question, value, echo };
}

export function which<T>(question: string, options: readonly Option<T>[]): Which<T> {
  return { kind: 'which', question, options };
}

/** What a question expects: in words that follow 'I need …', and an answer that would be heard. */
export interface Expected {
  readonly what: string;
  readonly example: string;
}

export function refused(reason: RefusalReason, { what, example }: Expected): Refused {
  return { kind: 'refused', reason, message: `${because(reason)} I need ${what}.`, example };
}

/** The first half of a refusal; what is needed instead follows it. */
function because(reason: RefusalReason): string {
  switch (reason) {
    case 'empty':
      return 'There was nothing in that answer.';
    case 'too long':
      return 'That is more than I can read at once.';
    case 'no number':
      return 'I found no number in that.';
    case 'number too large':
      return 'That number is larger than anything in a garment.';
    case 'thousands':
      return 'I cannot tell the decimal point from the thousands mark there; please leave the thousands mark out.';
    case 'several numbers':
      return 'I read more than one number and cannot tell which one you mean.';
    case 'ranges':
      return 'I read a range for each size; one number for each size is enough.';
    case 'incomplete':
      return 'Half of it is missing there.';
    case 'not whole':
      return 'That is not a whole number.';
    case 'negative':
      return 'A minus does not fit here.';
    case 'out of range':
      return 'That cannot be right for this question.';
    case 'other kind':
      return 'That counts something else than I asked for.';
    case 'uneven rows':
      return 'I could not match those figures size by size.';
    case 'unknown size':
      return 'I do not know that size.';
    case 'no such choice':
      return 'That is not one of the choices.';
    case 'not understood':
      return 'I could not read all of that.';
    default:
      return reason satisfies never;
  }
}
