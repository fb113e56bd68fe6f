/** Keys pressed while a prompt is open, so that a person may type where she is offered a list, and paste several lines. */
import type { Key } from 'node:readline';
import type { Readable } from 'node:stream';

export interface Keys {
  /** What was typed; line breaks as spaces. */
  readonly typed: () => string;
  /** Whether a whole line was typed. */
  readonly entered: () => boolean;
  /** Whether she closed the input with Ctrl-D. */
  readonly left: () => boolean;
  readonly stop: () => void;
}

/**
 * Listens from now on. Begun after a prompt, whose own listener so comes first. `first` is called at the first key that
 * counts as typing, or at Ctrl-D.
 */
export function listenToKeys(
  input: Readable,
  counts: (char: string, key: Key) => boolean,
  first: () => void,
): Keys {
  let text = '';
  let entered = false;
  let left = false;
  const onKey = (char: string | undefined, key: Key) => {
    const began = text === '' && !left;
    if (key.ctrl === true && key.name === 'd') left = true;
    else if (text !== '' || (char !== undefined && counts(char, key))) {
      const enter = key.name === 'return' || key.name === 'enter';
      entered ||= enter;
      text += enter ? ' ' : printable(char);
    } else return;
    if (began) first();
  };
  input.on('keypress', onKey);
  return {
    typed: () => text.trim(),
    entered: () => entered,
    left: () => left,
    stop: () => input.off('keypress', onKey),
  };
}

/** A key that writes something: no control character, no arrow. */
export function isTyping(char: string, key: Key): boolean {
  return key.ctrl !== true && key.meta !== true && char !== ' ' && printable(char) !== '';
}

function printable(char: string | undefined): string {
  return char === undefined || /^[\p{Cc}\p{Cs}]/u.test(char) ? '' : char;
}
