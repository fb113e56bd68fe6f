/** What the dialogue replies, as one message: what was said, then the question with its controls. */
import type { Button, Progress, Reply } from '../../dialogue/message.ts';
import { sumQuestion, sumSaid, wordTally } from '../../present/sum-text.ts';
import { makeId } from './custom-id.ts';
import { BUTTON_LABEL, MESSAGE_TEXT } from './limits.ts';
import {
  buttons,
  type Choice,
  type Control,
  gallery,
  lists,
  type Page,
  type PageFile,
  page,
  text,
} from './page.ts';
import { asTyped, atMost } from './typed.ts';

/** The interview that a message belongs to. */
export interface Interview {
  readonly session: string;
  readonly title: string;
  /** Whether words that are typed there are heard. */
  readonly typing: boolean;
}

type Ask = Extract<Reply, { reply: 'ask' }>;
type Check = Extract<Reply, { reply: 'check' }>;
type Review = Extract<Reply, { reply: 'review' }>;
type Rest = Extract<Reply, { reply: 'rest' }>;
type SumAsked = Extract<Reply, { reply: 'sum' }>;

/** More choices than this are a list. */
const MOST_BUTTONS = 10;
/** Room for what is said above a question, in characters, marks of escape included. */
const SAID = 2600;

/** Replies without an outcome, whose page is made elsewhere; `picture` tells more of what was explained. */
export function screenPage(replies: readonly Reply[], interview: Interview, picture?: PageFile): Page {
  const pictures = picture === undefined ? [] : [picture];
  return page(screenParts(replies, interview, pictures), pictures);
}

function screenParts(replies: readonly Reply[], interview: Interview, pictures: readonly PageFile[]) {
  const said = saidText(replies);
  const above = [...(said === '' ? [] : [text(said)]), ...(pictures.length === 0 ? [] : [gallery(pictures)])];
  const last = replies.findLast((reply) => reply.reply !== 'say');
  switch (last?.reply) {
    case 'ask':
      return [...above, ...askParts(last, interview)];
    case 'check':
      return [...above, ...checkParts(last, interview)];
    case 'review':
      return [...above, ...reviewParts(last, interview, said.length)];
    case 'rest':
      return [...above, ...restParts(last, interview)];
    case 'sum':
      return [...above, ...sumParts(last, interview)];
    case 'tally':
      return [
        ...above,
        text(asTyped(wordTally(last.tally))),
        ...answerButtons(last.buttons, 'outcome', interview),
      ];
    case 'outcome':
    case 'sum said':
    case undefined:
      return above;
    default:
      return last satisfies never;
  }
}

/** What was understood, refused or explained. */
export function saidText(replies: readonly Reply[]): string {
  const lines = replies.flatMap((reply) => {
    if (reply.reply === 'sum said') return [asTyped(sumSaid(reply.sum, reply.said, reply.terms))];
    return reply.reply === 'say' ? [wordSaid(reply)] : [];
  });
  return atMost(lines.join('\n'), SAID);
}

function wordSaid({ tone, text: said }: Extract<Reply, { reply: 'say' }>): string {
  switch (tone) {
    case 'heard':
      return `Noted: ${asTyped(said)}`;
    case 'refused':
      return `Not taken: ${asTyped(said)}`;
    case 'note':
    case 'explain':
      return asTyped(said);
    default:
      return tone satisfies never;
  }
}

/**
 * The screen that typed words would answer; undefined where the one before still stands. While an interview rests, its
 * question stays as it was.
 */
export function questionShown(replies: readonly Reply[]): string | undefined {
  const last = replies.findLast((reply) => reply.reply !== 'say');
  switch (last?.reply) {
    case 'ask':
    case 'check':
    case 'sum':
      return last.question;
    case 'review':
    case 'outcome':
      return last.reply;
    case 'tally':
      return 'outcome';
    case 'rest':
      return last.how === 'cancelled' ? 'cancelled' : undefined;
    case 'sum said':
    case undefined:
      return undefined;
    default:
      return last satisfies never;
  }
}

function askParts(ask: Ask, interview: Interview) {
  const { session, title } = interview;
  const help = (send: string) =>
    ask.help.filter((b) => b.send === send).map((b) => answer(b, ask.question, session));
  const typed = typing(session, ask.question);
  const type: Control = ask.buttons.length === 0 ? { ...typed, style: 'first' } : typed;
  return [
    text(`-# ${asTyped(title)} · ${wordProgress(ask.progress)}`),
    text(bold(ask.text)),
    text(
      `-# For example: ${asTyped(ask.example)}${interview.typing ? '. You may simply write it here.' : ''}`,
    ),
    ...choices(ask, session),
    ...buttons([type, ...help("I don't know"), ...help('back')]),
    ...buttons([...help('why'), ...help('how'), ...help('lesson'), ...help('pause')]),
    moreList(session, ask.question),
  ];
}

/** A sum that she works herself: she types its figure, or asks for help. */
function sumParts({ sum, terms, progress, example, help, question }: SumAsked, interview: Interview) {
  const { session, title, typing: heard } = interview;
  return [
    text(`-# ${asTyped(title)} · ${wordProgress(progress, 'sum')}`),
    text(bold(sumQuestion(sum, terms))),
    text(`-# For example: ${asTyped(example)}${heard ? '. You may simply write it here.' : ''}`),
    ...buttons([{ ...typing(session, question), style: 'first' }]),
    ...answerButtons(help, question, interview),
  ];
}

/** One of several readings, or none of them: then something else is typed. */
function checkParts({ text: put, buttons: offered, question }: Check, { session }: Interview) {
  const readings = offered.map((button) => answer(button, question, session));
  return [text(bold(put)), ...buttons([...readings, typing(session, question)])];
}

/** Opens the form. */
function typing(session: string, question: string): Control {
  return { label: 'Type my answer', id: makeId('type', session, question) };
}

function choices({ buttons: offered, several, question }: Ask, session: string) {
  if (!several && offered.length <= MOST_BUTTONS)
    return buttons(keptFirst(offered).map((button) => answer(button, question, session)));
  const options = keptFirst(offered).map(
    ({ label, send, note }): Choice => ({
      label,
      value: send,
      ...(note === undefined ? {} : { about: note }),
    }),
  );
  return lists(options, {
    id: (list) => makeId('answer', session, question, `list ${list}`),
    hint: several ? 'Pick one or more' : 'Pick one',
    most: several ? options.length : 1,
  });
}

/** Where a question is asked again, its present answer goes before the others. */
function keptFirst(offered: readonly Button[]): readonly Button[] {
  return offered.toSorted((a, b) => Number(b.send === 'keep') - Number(a.send === 'keep'));
}

/** The label with where it comes from, as far as that fits: the source of a figure stands in the plan too. */
export function wordLabel({ label, note }: Button): string {
  const room = BUTTON_LABEL - label.length - ' ()'.length;
  if (note === undefined || room < 1) return label;
  const [first = ''] = note.split('. ');
  return `${label} (${atMost(note.length <= room ? note : first, room)})`;
}

/** A button that says its words for her. */
function answer(button: Button, question: string, session: string): Control {
  const { send } = button;
  return {
    label: wordLabel(button),
    id: makeId('answer', session, question, send),
  };
}

function answerButtons(offered: readonly Button[], question: string, { session }: Interview) {
  return buttons(offered.map((button) => answer(button, question, session)));
}

/** What may be done at any question, and is seldom wanted. */
export const MORE = [
  { label: 'Leave this out for now', value: 'skip' },
  { label: 'Show or change my answers', value: 'answers' },
  { label: 'Show centimetres', value: 'cm' },
  { label: 'Show inches', value: 'inches' },
  { label: 'Say it in UK terms: cast off, tension', value: 'UK terms' },
  { label: 'Say it in US terms: bind off, gauge', value: 'US terms' },
  { label: 'Start over', value: 'start over' },
  { label: 'Cancel this interview', value: 'cancel' },
] as const;

function moreList(session: string, question: string) {
  const [list] = lists(MORE, { id: () => makeId('more', session, question), hint: 'More' });
  if (list === undefined) throw new Error('the list is not empty');
  return list;
}

function reviewParts({ lines, buttons: offered }: Review, interview: Interview, said: number) {
  const title = `-# ${asTyped(interview.title)} · your answers`;
  const room = MESSAGE_TEXT - said - title.length - 200;
  const shown = lines.map(({ label, shown: value }) => ({
    head: `- ${asTyped(label)}: `,
    value: asTyped(value),
  }));
  const heads = shown.reduce((sum, { head }) => sum + head.length + 1, 0);
  const each = Math.max(20, Math.floor((room - heads) / Math.max(1, shown.length)));
  const fits = shown.reduce((sum, { value }) => sum + value.length, heads) <= room;
  const words = shown.map(({ head, value }) => `${head}${fits ? value : atMost(value, each)}`);
  return [
    text(title),
    text(words.join('\n')),
    ...answerButtons(offered, 'review', interview),
    ...changeLists(lines, interview),
  ];
}

/** What is answered so far, each to be changed, with the way back to the question. */
export function answersPage(lines: Review['lines'], interview: Interview): Page {
  const goOn = buttons([{ label: 'Go on', id: makeId('go on', interview.session), style: 'first' }]);
  if (lines.length === 0) return page([text('Nothing is answered yet.'), ...goOn]);
  return page([...reviewParts({ reply: 'review', lines, buttons: [] }, interview, 0), ...goOn]);
}

/** Asks once more before something that cannot be undone. */
export function surePage(what: 'start over' | 'cancel', { session }: Interview, question: string): Page {
  const over = what === 'start over';
  return page([
    text(
      over
        ? 'Start over? The answers of this interview are set aside, and the first question is asked again.'
        : 'Cancel this interview? It is no longer offered to go on with.',
    ),
    ...buttons([
      {
        label: over ? 'Yes, start over' : 'Yes, cancel it',
        id: makeId('answer', session, question, what),
        style: 'careful',
      },
      { label: 'No, go on', id: makeId('go on', session) },
    ]),
  ]);
}

function changeLists(lines: Review['lines'], { session }: Interview) {
  return lists(
    lines.map(({ question, label, shown }) => ({ label, value: question, about: shown })),
    { id: (list) => makeId('change', session, '', `${list}`), hint: 'Change an answer' },
  );
}

/** Where an interview was laid down. */
function restParts({ how, text: said }: Rest, { session }: Interview) {
  if (how === 'cancelled') {
    const over = makeId('answer', session, 'cancelled', 'start over');
    return [text(asTyped(said)), ...buttons([{ label: 'Start over', id: over }])];
  }
  return [
    text(`${asTyped(said)}\n-# When this message is out of sight: /fit go-on`),
    ...buttons([{ label: 'Go on', id: makeId('go on', session), style: 'first' }]),
  ];
}

export function wordProgress({ number, toGo }: Progress, what = 'question'): string {
  return `${what} ${number}, ${toGo === 0 ? 'the last one as things stand' : `about ${toGo} to go`}`;
}

function bold(said: string): string {
  return `**${asTyped(said)}**`;
}
