/** What a person may do where she stands: the choices, what else she may type, and to what her words are an answer. */
import type { Button, Reply, ReviewLine } from '../../dialogue/message.ts';

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
}

/** Words of the terminal's own, beside those of the dialogue. */
export const ANOTHER: Button = { label: 'Another interview', send: 'another' };
export const LEAVE: Button = { label: 'Leave', send: 'leave' };
const START_OVER: Button = { label: 'Start over', send: 'start over' };

const NOTHING: Screen = { to: null, buttons: [], several: false, lines: [], example: null, commands: [] };

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
    case 'outcome':
      return { ...NOTHING, to: 'outcome', buttons: [...last.buttons, ANOTHER, LEAVE] };
    case 'rest':
      return { ...NOTHING, buttons: [START_OVER, ANOTHER, LEAVE] };
    case undefined:
      return NOTHING;
    default:
      return last satisfies never;
  }
}

/** One line of what may be typed here. */
export function wordHint({ example, several, commands, lines }: Screen): string {
  const [first] = lines;
  const parts = [
    example === null ? '' : `For example: ${example}.`,
    several ? 'Put commas between several.' : '',
    first === undefined ? '' : `To change one, say change and its name: change ${first.label.toLowerCase()}.`,
    commands.length === 0 ? '' : `You can also say: ${commands.join(', ')}.`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}
