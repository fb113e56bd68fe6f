/** The platform's error answers, by the names of page `topics/opcodes-and-status-codes`. */
import { isObject, type JsonObject } from './json.ts';
import type { Violation } from './rules/spot.ts';

export class Refusal extends Error {
  readonly status: number;
  readonly code: number;
  readonly errors: JsonObject | undefined;

  constructor(status: number, code: number, message: string, errors?: JsonObject) {
    super(message);
    this.status = status;
    this.code = code;
    this.errors = errors;
  }

  get body(): JsonObject {
    return { message: this.message, code: this.code, ...(this.errors ? { errors: this.errors } : {}) };
  }
}

export const unauthorized = () => new Refusal(401, 0, '401: Unauthorized');
export const noSuchRoute = () => new Refusal(404, 0, '404: Not Found');
export const unknownChannel = () => new Refusal(404, 10003, 'Unknown Channel');
export const unknownMessage = () => new Refusal(404, 10008, 'Unknown Message');
export const unknownUser = () => new Refusal(404, 10013, 'Unknown User');
export const unknownWebhook = () => new Refusal(404, 10015, 'Unknown Webhook');
export const unknownGuild = () => new Refusal(404, 10004, 'Unknown Guild');
export const unknownInteraction = () => new Refusal(404, 10062, 'Unknown interaction');
export const unknownApplication = () => new Refusal(404, 10002, 'Unknown Application');
export const tooManyCreations = () =>
  new Refusal(400, 30034, 'Max number of daily application command creates has been reached (200)');
export const tooLarge = () => new Refusal(413, 40005, 'Request entity too large');
export const alreadyAcknowledged = () =>
  new Refusal(400, 40060, 'Interaction has already been acknowledged.');
export const tooManyFollowUps = () =>
  new Refusal(400, 40094, 'Maximum number of follow-up messages reached (5)');
export const missingAccess = () => new Refusal(403, 50001, 'Missing Access');
export const notTheAuthor = () => new Refusal(403, 50005, 'Cannot edit a message authored by another user');
export const cannotMessageUser = () => new Refusal(403, 50007, 'Cannot send messages to this user');
export const missingPermissions = () => new Refusal(403, 50013, 'Missing Permissions');
export const expiredToken = () => new Refusal(401, 50027, 'Invalid Webhook Token');
export const notJson = () => new Refusal(400, 50109, 'The request body contains invalid JSON.');

/** The answer to a payload that breaks the rules: every breach at its place in `errors`. */
export function invalidForm(violations: readonly Violation[]): Refusal {
  const alone = violations.length === 1 ? violations[0] : undefined;
  if (alone?.code === 'empty-message') return new Refusal(400, 50006, 'Cannot send an empty message');
  const errors: Record<string, unknown> = {};
  for (const violation of violations) place(errors, violation);
  return new Refusal(400, 50035, 'Invalid Form Body', errors);
}

function place(errors: Record<string, unknown>, violation: Violation): void {
  let here = errors;
  for (const key of violation.path.split('.').filter((part) => part !== '')) {
    const below = here[key];
    const next = isObject(below) ? (below as Record<string, unknown>) : {};
    here[key] = next;
    here = next;
  }
  const entry = { code: violation.code.toUpperCase().replaceAll('-', '_'), message: violation.says };
  here._errors = [...(Array.isArray(here._errors) ? here._errors : []), entry];
}
