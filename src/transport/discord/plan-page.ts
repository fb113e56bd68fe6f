/** An outcome as a message: in parts that fit, with its files, its workings behind a button. */
import type { Outcome } from '../../fit/plan.ts';
import { sumsOf } from '../../fit/sum.ts';
import { outcomeText } from '../../present/plan-text.ts';
import type { Dialect } from '../../present/terms.ts';
import { makeId } from './custom-id.ts';
import { FILES, MESSAGE_TEXT } from './limits.ts';
import { buttons, type Control, gallery, type Page, type PageFile, page, shownFile, text } from './page.ts';
import type { Drawn } from './plan-files.ts';
import type { Interview } from './screen.ts';
import { inParts } from './split.ts';
import { asTyped } from './typed.ts';

/** Which part of a plan is shown, counted from 1, and whether with its workings. */
export interface PlanView {
  readonly part: number;
  readonly workings: boolean;
}

export const FIRST_VIEW: PlanView = { part: 1, workings: false };

/** What the page needs beside the outcome. */
export interface PlanPaper {
  readonly dialect: Dialect;
  /** Pictures and sheet; nothing where there is no plan. */
  readonly drawn: Drawn;
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
  const whole = outcomeText(outcome, { dialect: paper.dialect, workings: view.workings });
  const parts = planParts(whole);
  const part = Math.min(Math.max(view.part, 1), parts.length);
  const title = parts.length > 1 ? ` · part ${part} of ${parts.length}` : '';
  const files = partFiles(whole, part, paper.drawn);
  return page(
    [
      ...(said === '' ? [] : [text(said)]),
      text(`-# ${asTyped(interview.title)}${title}`),
      text(parts[part - 1] ?? ''),
      ...fileParts(files),
      ...planButtons(outcome, { part, workings: view.workings }, parts.length, interview, paper),
    ],
    [...files.pictures, ...files.documents],
  );
}

/** The text in parts, each as it is shown. */
export function planParts(whole: string): string[] {
  return inParts(asTyped(whole), MESSAGE_TEXT - ROOM);
}

export interface PartFiles {
  readonly pictures: readonly PageFile[];
  readonly documents: readonly PageFile[];
}

/**
 * The first part comes with the sheet and with the whole text as a file, which cannot vanish. Pictures that find no room
 * beside them stand by the next parts; all of them stand in the sheet.
 */
export function partFiles(whole: string, part: number, { pictures, sheet }: Drawn): PartFiles {
  const documents = [...(sheet === undefined ? [] : [sheet]), textFile(whole)];
  const first = FILES - documents.length;
  if (part === 1) return { pictures: pictures.slice(0, first), documents };
  const from = first + (part - 2) * FILES;
  return { pictures: pictures.slice(from, from + FILES), documents: [] };
}

function textFile(whole: string): PageFile {
  return { name: 'plan.txt', data: whole, alternative: '' };
}

export function fileParts({ pictures, documents }: PartFiles) {
  return [
    ...(pictures.length === 0 ? [] : [gallery(pictures)]),
    ...documents.map(({ name }) => shownFile(name)),
  ];
}

function planButtons(
  outcome: Outcome,
  { part, workings }: PlanView,
  parts: number,
  { session }: Interview,
  { ways }: PlanPaper,
) {
  const turn = (label: string, view: PlanView): Control => ({ label, id: viewId(session, view) });
  const isPlan = outcome.kind === 'plan';
  return [
    ...buttons([
      ...(part > 1 ? [turn('Part before', { part: part - 1, workings })] : []),
      ...(part < parts
        ? [{ ...turn('Next part', { part: part + 1, workings }), style: 'first' as const }]
        : []),
      turn(workings ? 'Hide the workings' : 'Show the workings', { part: 1, workings: !workings }),
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

function viewId(session: string, { part, workings }: PlanView): string {
  return makeId('plan', session, OUTCOME, `${part}${workings ? ' worked' : ''}`);
}

/** The view that a button carries; the first one where it cannot be read. */
export function viewOf(words: string): PlanView {
  const [, part, worked] = /^(\d+)( worked)?$/.exec(words) ?? [];
  return part === undefined ? FIRST_VIEW : { part: Number(part), workings: worked !== undefined };
}
