/** What a person may do where she stands: the choices, what else she may type, and to what her words are an answer. */
import type { Button, Reply, ReviewLine } from '../../dialogue/message.ts';
import type { Plan } from '../../fit/plan.ts';
import { PLAN_BUTTONS, PLAN_HINT } from './keeping.ts';

export interface Screen {
  /** What her words answer; null where it cannot be missed. */
  readonly to: string | null;
  readonly buttons: readonly Button[];
  /** True where several choices may be picked together. */
  readonly several: boolean;
  /** The answers under review, each of which may be changed. */
  readonly lines: readonly ReviewLine[];
  /** An answer as it may be typed; null where no answer is wanted. */
  readonly example: string | null;
  /** Commands that help here. */
  readonly commands: readonly string[];
  /** The plan that is shown, which can be drawn and kept. */
  readonly plan: Plan | null;
}

/** Words of the terminal's own, beside those of the dialogue. */
export const ANOTHER: Button = { label: 'Another interview', send: 'another' };
export const LEAVE: Button = { label: 'Leave', send: 'leave' };
const START_OVER: Button = { label: 'Start over', send: 'start over' };

export const NOTHING: Screen = {
  to: null,
  buttons: [],
  several: false,
  lines: [],
  example: null,
  commands: [],
  plan: null,
};

/** The screen of the last reply that has one. */
export function screenOf(replies: readonly Reply[]): Screen {
  const last = replies.findLast((r) => r.reply !== 'say');
  switch (last?.reply) {
    case 'ask': {
      const { question: to, buttons, several, example, help } = last;
      return { ...NOTHING, to, buttons, several, example, commands: [...help.map((b) => b.send), 'help'] };
    }
    case 'check':
      return { ...NOTHING, to: last.question, buttons: last.buttons, commands: ['back', 'help'] };
    case 'review':
      return { ...NOTHING, to: 'review', buttons: last.buttons, lines: last.lines };
    case 'outcome': {
      const plan = last.outcome.kind === 'plan' ? last.outcome.plan : null;
      const drawn = plan === null ? [] : PLAN_BUTTONS;
      return { ...NOTHING, to: 'outcome', plan, buttons: [...last.buttons, ...drawn, ANOTHER, LEAVE] };
    }
    case 'sum': {
      const { question: to, example, help: buttons } = last;
      return { ...NOTHING, to, buttons, example, commands: ['help'] };
    }
    case 'tally':
      return { ...NOTHING, to: 'outcome', buttons: [...last.buttons, ANOTHER, LEAVE] };
    case 'rest':
      return { ...NOTHING, buttons: [START_OVER, ANOTHER, LEAVE] };
    case 'sum said':
    case undefined:
      return NOTHING;
    default:
      return last satisfies never;
  }
}

/** Whoever types what stands on a button has pressed it. */
export function meant({ buttons }: Screen, typed: string): string {
  const said = typed.trim().toLowerCase();
  return (
    buttons.find(({ label, send }) => [label, send].some((word) => word.toLowerCase() === said))?.send ??
    typed
  );
}

/** One line of what may be typed here. */
export function wordHint({ example, several, commands, lines, plan }: Screen): string {
  const [first] = lines;
  const parts = [
    example === null ? '' : `For example: ${example}.`,
    several ? 'Put commas between several.' : '',
    first === undefined ? '' : `To change one, say change and its name: change ${first.label.toLowerCase()}.`,
    plan === null ? '' : PLAN_HINT,
    commands.length === 0 ? '' : `You can also say: ${commands.join(', ')}.`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}
