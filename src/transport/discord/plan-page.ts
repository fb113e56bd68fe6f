/** An outcome as a message: in parts that fit, with its files, its workings behind a button. */
import type { ReviewLine } from '../../dialogue/message.ts';
import type { Outcome } from '../../fit/plan.ts';
import { sumsOf } from '../../fit/sum.ts';
import { keyText } from '../../present/key-text.ts';
import { outcomeText } from '../../present/plan-text.ts';
import type { Dialect } from '../../present/terms.ts';
import { makeId } from './custom-id.ts';
import { FILES, MESSAGE_TEXT } from './limits.ts';
import { buttons, type Control, gallery, type Page, type PageFile, page, shownFile, text } from './page.ts';
import type { Drawn } from './plan-files.ts';
import type { Interview } from './screen.ts';
import { inParts } from './split.ts';
import { asTyped } from './typed.ts';

/** Which part is shown, counted from 1: of the plan, of the plan with its workings, or of its answer key. */
export interface PlanView {
  readonly part: number;
  readonly shows: 'plan' | 'workings' | 'key';
}

export const FIRST_VIEW: PlanView = { part: 1, shows: 'plan' };

/** What the page needs beside the outcome. */
export interface PlanPaper {
  readonly dialect: Dialect;
  /** Pictures and sheet; nothing where there is no plan. */
  readonly drawn: Drawn;
  /** What she has answered. */
  readonly answers: () => readonly ReviewLine[];
  /** Whether she may share it here, and have it sent to her. */
  readonly ways: { readonly share: boolean; readonly send: boolean };
}

/** Room beside the plan itself: the title, and what is said above. */
const ROOM = 700;
const OUTCOME = 'outcome';

export function planPage(
  outcome: Outcome,
  view: PlanView,
  said: string,
  interview: Interview,
  paper: PlanPaper,
): Page {
  const whole = wholeText(outcome, view, paper);
  const parts = planParts(whole);
  const part = Math.min(Math.max(view.part, 1), parts.length);
  const title = parts.length > 1 ? ` · part ${part} of ${parts.length}` : '';
  const files =
    view.shows === 'key'
      ? partFiles(whole, part, { ...paper.drawn, pictures: [] }, 'sums.txt')
      : partFiles(whole, part, paper.drawn);
  return page(
    [
      ...(said === '' ? [] : [text(said)]),
      text(`-# ${asTyped(interview.title)}${title}`),
      text(parts[part - 1] ?? ''),
      ...fileParts(files),
      ...planButtons(outcome, { part, shows: view.shows }, parts.length, interview, paper),
    ],
    [...files.pictures, ...files.documents],
  );
}

function wholeText(outcome: Outcome, { shows }: PlanView, { dialect, answers }: PlanPaper): string {
  return shows === 'key'
    ? keyText(outcome, answers(), dialect)
    : outcomeText(outcome, { dialect, workings: shows === 'workings' });
}

/** '1\. Body: From the hem to the waist' and 'Take care:', each a line of its own. */
const HEADS = /^(?:\d+\\\. .+|[A-Z][a-z ]+:)$/gm;

/** The text in parts, each as it is shown. */
export function planParts(whole: string): string[] {
  return inParts(asTyped(whole).replace(HEADS, '**$&**'), MESSAGE_TEXT - ROOM);
}

export interface PartFiles {
  readonly pictures: readonly PageFile[];
  readonly documents: readonly PageFile[];
}

/**
 * The first part comes with the sheet and with the whole text as a file, which cannot vanish. Pictures that find no room
 * beside them stand by the next parts; all of them stand in the sheet.
 */
export function partFiles(
  whole: string,
  part: number,
  { pictures, sheet }: Drawn,
  name = 'plan.txt',
): PartFiles {
  const documents = [...(sheet === undefined ? [] : [sheet]), { name, data: whole, alternative: '' }];
  const first = FILES - documents.length;
  if (part === 1) return { pictures: pictures.slice(0, first), documents };
  const from = first + (part - 2) * FILES;
  return { pictures: pictures.slice(from, from + FILES), documents: [] };
}

export function fileParts({ pictures, documents }: PartFiles) {
  return [
    ...(pictures.length === 0 ? [] : [gallery(pictures)]),
    ...documents.map(({ name }) => shownFile(name)),
  ];
}

function planButtons(
  outcome: Outcome,
  { part, shows }: PlanView,
  parts: number,
  { session }: Interview,
  { ways }: PlanPaper,
) {
  const turn = (label: string, view: PlanView): Control => ({ label, id: viewId(session, view) });
  const isPlan = outcome.kind === 'plan';
  return [
    ...buttons([
      ...(part > 1 ? [turn('Part before', { part: part - 1, shows })] : []),
      ...(part < parts ? [{ ...turn('Next part', { part: part + 1, shows }), style: 'first' as const }] : []),
      ...OTHERS[shows].map(([label, other]) => turn(label, { part: 1, shows: other })),
      { label: 'Change an answer', id: makeId('answer', session, OUTCOME, 'review') },
    ]),
    ...buttons([
      ...(outcome.kind === 'plan' && sumsOf(outcome.plan).length > 0
        ? [{ label: 'Work it yourself', id: makeId('answer', session, OUTCOME, 'work it yourself') }]
        : []),
      ...(isPlan && ways.share
        ? [{ label: 'Share in this channel', id: makeId('share', session, OUTCOME) }]
        : []),
      ...(ways.send ? [{ label: 'Send it to me', id: makeId('send', session, OUTCOME) }] : []),
    ]),
  ];
}

/** What may be turned to, by what is shown. */
const OTHERS: Readonly<Record<PlanView['shows'], readonly (readonly [string, PlanView['shows']])[]>> = {
  plan: [
    ['Show the workings', 'workings'],
    ['All the sums on one page', 'key'],
  ],
  workings: [
    ['Hide the workings', 'plan'],
    ['All the sums on one page', 'key'],
  ],
  key: [['Show the plan', 'plan']],
};

/** As buttons carry it, which stay in chats for years. */
const WRITTEN = { plan: '', workings: ' worked', key: ' key' } as const;

function viewId(session: string, { part, shows }: PlanView): string {
  return makeId('plan', session, OUTCOME, `${part}${WRITTEN[shows]}`);
}

/** The view that a button carries; the first one where it cannot be read. */
export function viewOf(words: string): PlanView {
  const [, part, worked, key] = /^(\d+)(?:( worked)|( key))?$/.exec(words) ?? [];
  if (part === undefined) return FIRST_VIEW;
  if (key !== undefined) return { part: Number(part), shows: 'key' };
  return { part: Number(part), shows: worked === undefined ? 'plan' : 'workings' };
}
