/** A terminal without a window: a pipe, a file, a screen reader's line. Text only, no escape codes; a line an answer. */
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Person } from './conversation.ts';
import { layOut, listButtons, type Paragraph, paragraph } from './render.ts';
import { LEAVE, wordHint } from './screen.ts';

export interface PlainTerminal {
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: Writable;
  /** Columns of a line, asked at each block. */
  readonly width: () => number;
}

export function plainPerson({ input, output, width }: PlainTerminal): Person {
  const reader = createInterface({ input, terminal: false, crlfDelay: Number.POSITIVE_INFINITY });
  const lines = reader[Symbol.asyncIterator]();

  function tell(paragraphs: readonly Paragraph[]): void {
    const text = paragraphs.flatMap((p) => layOut(p, width())).map((line) => line.text);
    output.write(`${text.join('\n')}\n\n`);
  }

  /** The next line, shown where it was not typed on this very screen. */
  async function next(): Promise<string | undefined> {
    const line = await lines.next();
    if (line.done === true) return undefined;
    if (input.isTTY !== true) output.write(`> ${line.value}\n\n`);
    return line.value;
  }

  return {
    tell,
    columns: width,
    pick: async ({ title, entries }) => {
      tell([
        paragraph(title, 'title'),
        ...entries.map((entry, i) => paragraph(`${i + 1}. ${entry.label}`)),
        paragraph(`Type its number, or say it in your own words. To end: ${LEAVE.send}.`, 'quiet'),
      ]);
      for (let typed = await next(); typed !== undefined; typed = await next()) {
        const number = /^\d*$/.test(typed.trim());
        const picked = number ? entries[Number(typed) - 1] : typed;
        if (picked !== undefined) return picked;
        tell([paragraph(`Please type a number from 1 to ${entries.length}.`, 'refused')]);
      }
      return undefined;
    },
    answer: async (screen) => {
      const hint = wordHint(screen);
      const shown = [...listButtons(screen.buttons), ...(hint === '' ? [] : [paragraph(hint, 'quiet')])];
      if (shown.length > 0) tell(shown);
      return next();
    },
    part: (paragraphs) => {
      tell(paragraphs);
      reader.close();
    },
  };
}
