/** A desk without dialogue or store, whose small interview shows every kind of reply once. */
import type { Reply } from '../../../src/dialogue/message.ts';
import type { Outcome } from '../../../src/fit/plan.ts';
import type { Desk, Drawings, KeepWish, Kept, Offered, Wording } from '../../../src/transport/contract.ts';
import { DeskRefused } from '../../../src/transport/contract.ts';

const HELP = ['back', 'why', 'how', "I don't know", 'pause'].map((word) => ({ label: word, send: word }));

const FOR_WHOM: Reply = {
  reply: 'ask',
  question: 'for_whom',
  text: 'For whom is the wristlet? A wristlet that is knitted for somebody else is measured on her arm, not on yours.',
  progress: { number: 1, toGo: 2 },
  buttons: [
    { label: 'For me', send: 'For me' },
    { label: 'For somebody else, who can be measured while you knit', send: 'For somebody else' },
    { label: 'Nobody yet', send: 'Nobody yet' },
  ],
  several: false,
  example: 'for me',
  help: HELP.slice(1),
};
const EDGES: Reply = {
  reply: 'ask',
  question: 'edges',
  text: 'Which edges shall be ribbed?',
  progress: { number: 2, toGo: 1 },
  buttons: [
    { label: 'The hand', send: 'The hand' },
    { label: 'The arm', send: 'The arm' },
  ],
  several: true,
  example: 'hand, arm',
  help: HELP,
};
const WRIST: Reply = {
  reply: 'ask',
  question: 'wrist',
  text: 'How wide is the wrist around?',
  progress: { number: 3, toGo: 0 },
  buttons: [{ label: '16 cm', send: '16 cm', note: 'as on 3 May 2025' }],
  several: false,
  example: '16 cm',
  help: HELP,
};
const LENGTH: Reply = {
  reply: 'ask',
  question: 'long',
  text: 'How long shall it be?',
  progress: { number: 4, toGo: 0 },
  buttons: [],
  several: false,
  example: '8 cm',
  help: HELP,
};
const CHECK: Reply = {
  reply: 'check',
  question: 'long',
  text: 'Do you mean 16 in (40.6 cm)?',
  buttons: [
    { label: 'Yes: 16 in (40.6 cm)', send: 'yes' },
    { label: 'No, I will type it again', send: 'no' },
  ],
};
const CANNOT: Outcome = { kind: 'cannot', unit: 'cm', because: [], instead: [], workings: [] };
const SCREENS = [FOR_WHOM, EDGES, WRIST, LENGTH];

export const fakeWording: Wording = () =>
  'Cast on 40 stitches.\n1. Rib: knit 1, purl 1 for 10 rounds, loosely enough that the hand can pass through the edge.\n   You: work 20 rounds plain.\n';

/** What was wished to be kept, beside the drawings themselves: lines as wide as they may be. */
export function fakeDrawings(kept: Kept = { kept: 'files', files: ['/home/ada/plan.pdf'] }) {
  const wishes: KeepWish[] = [];
  const drawings: Drawings = {
    plan: async (_plan, columns) => `Body\n${'-'.repeat(columns)}`,
    pictured: (id) => id === 'wrist',
    question: async (id, columns) => `${id}\n${'#'.repeat(columns)}`,
    blanks: async () => [
      { id: 'measuring', title: 'Measurements' },
      { id: 'waist', title: 'A waist' },
    ],
    keep: async (wish) => {
      wishes.push(wish);
      return kept;
    },
  };
  return { drawings, wishes };
}

/** What was said to it, beside the desk itself. Its answers are kept as they were typed. */
export function fakeDesk(outcome: Outcome = CANNOT) {
  const heard: string[] = [];
  let answers: string[] = [];
  let at = 0;
  let revisits = false;
  let broken = 0;

  const review = (): Reply => ({
    reply: 'review',
    lines: ['For whom', 'Edges', 'Wrist', 'Length'].map((label, i) => ({
      question: label,
      label,
      shown: answers[i] ?? 'not known',
      assumed: answers[i] === undefined,
    })),
    buttons: [
      { label: 'Make my plan', send: 'yes' },
      { label: 'Pause', send: 'pause' },
    ],
  });
  const ending: Reply = {
    reply: 'outcome',
    outcome,
    buttons: [{ label: 'Change an answer', send: 'review' }],
  };
  const show = (): Reply => SCREENS[at] ?? (at === SCREENS.length ? review() : ending);
  const note = (tone: 'heard' | 'refused' | 'explain', text: string): Reply => ({ reply: 'say', tone, text });

  function reply(text: string): Reply[] {
    if (text === 'pause') return [{ reply: 'rest', how: 'paused', text: 'Paused. All is kept.' }];
    if (text === 'cancel') return [{ reply: 'rest', how: 'cancelled', text: 'Cancelled.' }];
    if (text === 'why') return [note('explain', 'It is asked for the count of stitches.'), show()];
    if (text === 'review') at = SCREENS.length;
    else if (text === 'start over') [at, answers] = [0, []];
    else if (text === 'back') at = Math.max(0, at - 1);
    else if (text.startsWith('change ')) [at, revisits] = [2, true];
    else if (text === 'about 16') return [CHECK];
    else if (text === '') return [note('refused', 'There was nothing in that answer.'), show()];
    else return accept(text);
    return [show()];
  }

  function accept(text: string): Reply[] {
    if (at >= SCREENS.length) at += 1;
    else {
      answers[at] = text;
      at = revisits ? SCREENS.length : at + 1;
      revisits = false;
    }
    return [note('heard', text), show()];
  }

  const flow: Offered = {
    id: 'wristlet',
    title: 'A wristlet',
    wish: 'I want a wristlet that fits',
    hear: ['my wrists are cold'],
    group: 'sums',
    common: true,
    exercise: false,
  };
  const desk: Desk = {
    flows: () => [
      flow,
      {
        id: 'mitten',
        title: 'A mitten',
        wish: 'My mittens are too long or too short for my hands',
        hear: ['thumb too short'],
        group: 'sums',
        common: false,
        exercise: false,
      },
    ],
    open: () =>
      answers.length === 0
        ? []
        : [
            {
              session: 's',
              flow,
              lastAt: Date.UTC(2025, 4, 3, 12),
              answered: answers.length,
              practice: false,
            },
          ],
    begin: () => {
      [at, answers] = [0, []];
      return { session: 's', replies: [show()] };
    },
    practise: () => {
      throw new Error('nothing is practised here');
    },
    resume: () => [show()],
    say: (_owner, _session, message) => {
      heard.push(message.to === undefined ? message.text : `${message.to}: ${message.text}`);
      if (broken > 0) {
        broken -= 1;
        throw new DeskRefused('not stored', new Error('The disk is full'));
      }
      return reply(message.text);
    },
  };
  return {
    desk,
    heard,
    /** From now on so many answers cannot be stored. */
    breaks: (times: number) => {
      broken = times;
    },
  };
}
