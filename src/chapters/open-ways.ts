/** What follows a step of several ways rests on figures that the way chosen may change; such a step says so. */
import type { PhraseName } from '../fit/phrases.ts';
import { type Part, phrase } from '../fit/plan.ts';
import type { Altered } from './alterations.ts';

/** Whether a way is still to be chosen, or none could be found. */
export function isOpen(altered: Altered): boolean {
  if (altered === undefined) return false;
  return 'kind' in altered || hasChoice(altered);
}

/** The same of what a garment is put together from, where one without any way has nothing to do. */
export function isOpenPart(part: Part): boolean {
  return hasChoice(part) || part.steps.every(({ instead }) => instead.length === 0);
}

/** Whether a way is still to be chosen in it. */
export function hasChoice({ steps }: Part): boolean {
  return steps.some(({ instead }) => instead.some((one) => one.do === 'choose one'));
}

/** Said at the first step of each part that tells something to do. */
export function resting(parts: readonly Part[], note: PhraseName): Part[] {
  return parts.map((part) => {
    const first = part.steps.findIndex(({ instead }) => instead.length > 0);
    const steps = part.steps.map((step, i) =>
      i === first ? { ...step, notes: [phrase(note), ...step.notes] } : step,
    );
    return { ...part, steps };
  });
}
