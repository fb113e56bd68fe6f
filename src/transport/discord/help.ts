/** What can be done here, on one page. */
import type { Flows } from '../../flow/compile.ts';
import { commandsFor } from './commands.ts';
import { type Page, page, text } from './page.ts';
import { asTyped } from './typed.ts';

const INTRO =
  'I fit a knitting pattern to a body. I ask one question at a time, and at the end you hold a numbered plan to knit from.';
const OUTRO = [
  'An interview is seen by you alone. Each answer is saved at once: stop whenever you like, and go on tomorrow with /fit go-on.',
  "At any question you may type an answer in your own way, or press I don't know, Why do you ask or How do I find it.",
  'In a direct message with me you may simply write.',
].join('\n');

export function helpPage(flows: Flows): Page {
  const [fit, ...others] = commandsFor(flows);
  const lines = [
    ...(fit?.options ?? []).map(({ name, description }) => `**/fit ${name}** ${asTyped(description)}`),
    ...others.map(({ name, description }) => `**/${name}** ${asTyped(description)}`),
  ];
  return page([text(INTRO), text(lines.join('\n')), text(OUTRO)]);
}
