/** A terminal with a window: choices by the arrow keys, typing always possible, colours where they are wanted. */
import type { Readable, Writable } from 'node:stream';
import { styleText } from 'node:util';
import { isCancel, multiselect, select, settings, text } from '@clack/prompts';
import type { Button } from '../../dialogue/message.ts';
import type { Person } from './conversation.ts';
import { isTyping, type Keys, listenToKeys } from './keys.ts';
import { layOut, type Paragraph, paragraph, type Role, wordButton } from './render.ts';
import { LEAVE, type Screen, wordHint } from './screen.ts';
import { wrap } from './wrap.ts';

// A slip onto Escape must not end an interview, and letters are for typing; Ctrl-C and the arrow keys remain.
for (const key of ['escape', 'h', 'j', 'k', 'l']) settings.aliases.delete(key);

export interface WindowTerminal {
  readonly input: Readable;
  readonly output: Writable;
  /** Columns of the window, asked at each block. */
  readonly width: () => number;
}

const TYPE: Button = { label: 'Type an answer or a command', send: '' };
const CHANGE: Button = { label: 'Change one of these answers', send: '' };
const BACK_TO_PAGE: Button = { label: 'Back to the page', send: 'review' };
const CHOOSE = 'Choose, or type';
const CHOOSE_SEVERAL = 'Mark with Space, or type';

/** What came of a list: choices, words typed instead, or neither where she left. */
type Picked =
  | { readonly picked: 'choices'; readonly choices: readonly Button[] }
  | { readonly picked: 'words'; readonly text: string; readonly entered: boolean }
  | { readonly picked: 'left' };

export function windowPerson({ input, output, width }: WindowTerminal): Person {
  function tell(paragraphs: readonly Paragraph[]): void {
    const lines = paragraphs.flatMap((p) => layOut(p, width()));
    output.write(`\n${lines.map((line) => paint(line, output)).join('\n')}\n`);
  }

  async function choose(message: string, buttons: readonly Button[], several = false): Promise<Picked> {
    const options = buttons.map((value) => ({
      value,
      label: wrap(wordButton(value), width() - 4).join('\n  '),
    }));
    output.write('\n');
    const abort = new AbortController();
    const common = { message, options, input, output, signal: abort.signal, withGuide: false };
    const answer = several ? multiselect({ ...common, required: true }) : select(common);
    const typing = listenToKeys(input, isTyping, () => abort.abort());
    const chosen = await answer;
    typing.stop();
    if (!isCancel(chosen)) return { picked: 'choices', choices: [chosen].flat() };
    if (typing.typed() === '' || typing.left()) return { picked: 'left' };
    return { picked: 'words', text: typing.typed(), entered: typing.entered() };
  }

  /** A line of typing. Further lines that were pasted with it belong to it. */
  async function type(begun: string, example: string | null): Promise<string | undefined> {
    if (begun === '') output.write('\n');
    const abort = new AbortController();
    const answer = text({
      message: 'Your answer',
      initialValue: begun,
      ...(example === null ? {} : { placeholder: `for example ${example}` }),
      input,
      output,
      signal: abort.signal,
      withGuide: false,
    });
    const pasted: Keys = listenToKeys(
      input,
      (_, key) => key.name === 'return',
      () => pasted.left() && abort.abort(),
    );
    const line = await answer;
    pasted.stop();
    return isCancel(line) ? undefined : `${line} ${pasted.typed()}`.trim();
  }

  async function answerFrom(screen: Screen, picked: Picked): Promise<string | undefined> {
    if (picked.picked === 'left') return undefined;
    if (picked.picked === 'words') return picked.entered ? picked.text : type(picked.text, screen.example);
    if (picked.choices.includes(TYPE)) return type('', screen.example);
    if (picked.choices.includes(CHANGE)) return answerFrom(screen, await chooseLine(screen));
    return picked.choices.map((button) => button.send).join(', ');
  }

  function chooseLine({ lines }: Screen): Promise<Picked> {
    const changes = lines.map(({ label, shown }) => ({
      label: `${label}: ${shown}`,
      send: `change ${label}`,
    }));
    return choose('Which one?', [...changes, BACK_TO_PAGE]);
  }

  return {
    tell,
    columns: width,
    part: tell,
    pick: async ({ title, entries }) => {
      const buttons = entries.map((entry) => ({ label: entry.label, send: '' }));
      const picked = await choose(`${title} (choose, or say it in your own words)`, [...buttons, LEAVE]);
      if (picked.picked === 'left') return undefined;
      if (picked.picked === 'words') return picked.entered ? picked.text : type(picked.text, null);
      return entries[buttons.findIndex((b) => picked.choices.includes(b))];
    },
    answer: async (screen) => {
      const hint = wordHint(screen);
      if (hint !== '') tell([paragraph(hint, 'quiet')]);
      if (screen.buttons.length === 0) return type('', screen.example);
      const buttons = [...screen.buttons, ...(screen.lines.length === 0 ? [] : [CHANGE]), TYPE];
      const message = screen.several ? CHOOSE_SEVERAL : CHOOSE;
      return answerFrom(screen, await choose(message, buttons, screen.several));
    },
  };
}

const COLOURS = { title: 'bold', noted: 'green', refused: 'yellow', quiet: 'dim' } as const;

/** Coloured where the output is a terminal and nobody set NO_COLOR. */
function paint({ role, text }: { role: Role; text: string }, stream: Writable): string {
  return role === 'plain' ? text : styleText(COLOURS[role], text, { stream });
}
