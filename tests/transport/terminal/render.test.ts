import { describe, expect, it } from 'vitest';
import type { Button, Reply } from '../../../src/dialogue/message.ts';
import { layOut, listButtons, render } from '../../../src/transport/terminal/render.ts';
import { screenOf, wordHint } from '../../../src/transport/terminal/screen.ts';
import { fakeWording } from './fake-desk.ts';

/** The text of a reply with its choices, as a person reads it in a window of 40 columns. */
function read(...replies: Reply[]): string {
  const screen = screenOf(replies);
  const paragraphs = [...replies.flatMap((r) => render(r, fakeWording)), ...listButtons(screen.buttons)];
  const text = paragraphs.flatMap((p) => layOut(p, 40)).map((p) => p.text);
  return [...text, wordHint(screen)].join('\n').trimEnd();
}

const word = (text: string): Button => ({ label: text, send: text });
const ask = {
  reply: 'ask',
  question: 'wrist',
  text: 'How wide is your wrist around, just below the bone?',
  progress: { number: 4, toGo: 9 },
  buttons: [{ label: '16 cm', send: '16 cm', note: 'as on 3 May 2025' }],
  several: false,
  example: '16 cm',
  help: [word('back'), word('why')],
} as const satisfies Reply;

describe('a reply as text', () => {
  it('says in words what a colour would say', () => {
    expect(read({ reply: 'say', tone: 'heard', text: '16 cm (6¼ in)' })).toBe('Noted: 16 cm (6¼ in)');
    expect(read({ reply: 'say', tone: 'refused', text: 'I found no number.' })).toBe(
      'Not taken: I found no number.',
    );
    expect(read({ reply: 'say', tone: 'note', text: 'Kept as it was.' })).toBe('Kept as it was.');
    expect(read({ reply: 'say', tone: 'explain', text: 'For the cuff.' })).toBe('For the cuff.');
  });

  it('shows a question with its progress, likely answers with where they come from, and what may be typed', () => {
    expect(read(ask)).toBe(
      [
        'Question 4, about 9 to go',
        'How wide is your wrist around, just',
        'below the bone?',
        '- 16 cm (as on 3 May 2025)',
        'For example: 16 cm. You can also say: back, why, help.',
      ].join('\n'),
    );
  });

  it('does not promise that the last question is the last for good', () => {
    const [first, second] = read({ ...ask, progress: { number: 12, toGo: 0 } }).split('\n');
    expect(`${first} ${second}`).toBe('Question 12, the last one as things stand');
  });

  it('says how to pick several', () => {
    expect(read({ ...ask, several: true })).toContain('Put commas between several.');
  });

  it('shows a reading to be confirmed, with what to type for each choice', () => {
    const buttons = [
      { label: 'Yes: 16 in (40.6 cm)', send: 'yes' },
      { label: 'No, I will type it again', send: 'no' },
    ];
    expect(read({ reply: 'check', question: 'wrist', text: 'Do you mean 16 in (40.6 cm)?', buttons })).toBe(
      [
        'Do you mean 16 in (40.6 cm)?',
        '- Yes: 16 in (40.6 cm) [type yes]',
        '- No, I will type it again [type no]',
        'You can also say: back, help.',
      ].join('\n'),
    );
  });

  it('shows all answers on one page, and how to change each', () => {
    const lines = [
      { question: 'wrist', label: 'Wrist', shown: '16 cm', assumed: false },
      { question: 'long', label: 'Length', shown: 'not known; 8 cm is used', assumed: true },
    ];
    expect(read({ reply: 'review', lines, buttons: [{ label: 'Make my plan', send: 'yes' }] })).toBe(
      [
        'Your answers',
        '- Wrist: 16 cm',
        '- Length: not known; 8 cm is used',
        '- Make my plan [type yes]',
        'To change one, say change and its name: change wrist.',
      ].join('\n'),
    );
  });

  it('shows the outcome in its wording, and how to go on from there', () => {
    const outcome = { kind: 'cannot', unit: 'cm', because: [], instead: [], workings: [] } as const;
    expect(read({ reply: 'outcome', outcome, buttons: [] })).toBe(
      [
        'Cast on 40 stitches.',
        '1. Rib: knit 1, purl 1 for 10 rounds,',
        '   loosely enough that the hand can pass',
        '   through the edge.',
        '   You: work 20 rounds plain.',
        '- Another interview [type another]',
        '- Leave',
      ].join('\n'),
    );
  });

  it('offers a way on after cancelling', () => {
    expect(read({ reply: 'rest', how: 'cancelled', text: 'Cancelled.' })).toBe(
      'Cancelled.\n- Start over\n- Another interview [type another]\n- Leave',
    );
  });
});
