/** Replies as paragraphs of text, for a window and for a pipe alike. What a colour says is also said in words. */
import type { Button, Progress, Reply } from '../../dialogue/message.ts';
import { sumQuestion, sumSaid, wordTally } from '../../present/sum-text.ts';
import type { Wording } from '../contract.ts';
import { wrap } from './wrap.ts';

/** How a paragraph may be coloured. */
export type Role = 'plain' | 'title' | 'noted' | 'refused' | 'quiet';

export interface Paragraph {
  readonly role: Role;
  readonly text: string;
}

export function paragraph(text: string, role: Role = 'plain'): Paragraph {
  return { role, text };
}

/** The paragraphs of a reply, without its choices. */
export function render(reply: Reply, wording: Wording): Paragraph[] {
  switch (reply.reply) {
    case 'say':
      return [say(reply.tone, reply.text)];
    case 'ask':
      return [paragraph(wordProgress(reply.progress), 'quiet'), paragraph(reply.text, 'title')];
    case 'check':
      return [paragraph(reply.text, 'title')];
    case 'review':
      return [
        paragraph('Your answers', 'title'),
        ...reply.lines.map((line) => paragraph(`- ${line.label}: ${line.shown}`)),
      ];
    case 'outcome':
      return [paragraph(wording(reply.outcome, reply.workings === true, reply.key).trimEnd())];
    case 'sum':
      return [
        paragraph(wordProgress(reply.progress, 'Sum'), 'quiet'),
        paragraph(sumQuestion(reply.sum, reply.terms), 'title'),
      ];
    case 'sum said':
      return [paragraph(sumSaid(reply.sum, reply.said, reply.terms))];
    case 'tally':
      return [paragraph(wordTally(reply.tally))];
    case 'rest':
      return [paragraph(reply.text)];
    default:
      return reply satisfies never;
  }
}

function say(tone: Extract<Reply, { reply: 'say' }>['tone'], text: string): Paragraph {
  switch (tone) {
    case 'heard':
      return paragraph(`Noted: ${text}`, 'noted');
    case 'refused':
      return paragraph(`Not taken: ${text}`, 'refused');
    case 'note':
    case 'explain':
      return paragraph(text);
    default:
      return tone satisfies never;
  }
}

export function wordProgress({ number, toGo }: Progress, what = 'Question'): string {
  return `${what} ${number}, ${toGo === 0 ? 'the last one as things stand' : `about ${toGo} to go`}`;
}

/** A choice with where it comes from. */
export function wordButton({ label, note }: Button): string {
  return note === undefined ? label : `${label} (${note})`;
}

/** Choices as a list, for those who type: each with what to type where that is not its own words. */
export function listButtons(buttons: readonly Button[]): Paragraph[] {
  return buttons.map((button) => {
    const itself = button.send.toLowerCase() === button.label.toLowerCase();
    return paragraph(`- ${wordButton(button)}${itself ? '' : ` [type ${button.send}]`}`);
  });
}

/** A paragraph in lines of at most so many columns. */
export function layOut({ role, text }: Paragraph, width: number): Paragraph[] {
  return wrap(text, width).map((line) => ({ role, text: line }));
}
