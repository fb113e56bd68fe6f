/** What she may have drawn in the terminal, and what she may keep as a file: words of the terminal's own. */
import type { Button } from '../../dialogue/message.ts';
import type { Plan } from '../../fit/plan.ts';
import type { Drawings, KeepWish, Kept, Print } from '../contract.ts';
import { type Paragraph, paragraph } from './render.ts';

export const DRAW: Button = { label: 'Draw it', send: 'draw' };
const KEEP_PICTURES: Button = { label: 'Keep a picture', send: 'keep picture' };
const KEEP_SHEET: Button = { label: 'Keep a sheet to print', send: 'keep sheet' };
export const PLAN_BUTTONS: readonly Button[] = [DRAW, KEEP_PICTURES, KEEP_SHEET];
export const PLAN_HINT =
  'A sheet can be large, on A4 or on Letter, and have a name: keep sheet large to plan.pdf.';

const NOT_READ = 'Say large, A4 or Letter, and to with the name of a file. All of these may be left out.';

/** What a plan's screen shows or keeps at these words; undefined where they mean none of this. */
export async function ofPlan(
  drawings: Drawings,
  plan: Plan,
  text: string,
  columns: number,
): Promise<Paragraph[] | undefined> {
  const said = text.trim();
  if (said.toLowerCase() === DRAW.send) return [paragraph(await drawings.plan(plan, columns))];
  const [, what, words = ''] = /^keep (?:a )?(pictures?|sheet)\b(.*)$/i.exec(said) ?? [];
  if (what === undefined) return undefined;
  const keep = what.toLowerCase() === 'sheet' ? 'sheet' : 'pictures';
  return kept(drawings, words, (print) => ({ ...print, keep, plan }));
}

/** Keeps a sheet that is filled in by hand. */
export function ofBlank(drawings: Drawings, blank: string, words: string): Promise<Paragraph[]> {
  return kept(drawings, words, (print) => ({ ...print, keep: 'blank', blank }));
}

type PrintAndFile = Print & Pick<KeepWish, 'file'>;

async function kept(
  drawings: Drawings,
  words: string,
  wish: (print: PrintAndFile) => KeepWish,
): Promise<Paragraph[]> {
  const print = readPrint(words);
  return print === undefined ? [paragraph(NOT_READ, 'refused')] : told(await drawings.keep(wish(print)));
}

function told(found: Kept): Paragraph[] {
  if (found.kept === 'nothing') return [paragraph(`Not kept: ${found.why}`, 'refused')];
  return found.files.map((file) => paragraph(`Kept: ${file}`, 'noted'));
}

/** 'large letter to plan.pdf'; undefined where a word means nothing here. */
export function readPrint(words: string): PrintAndFile | undefined {
  const [, said = '', file = null] = /^(.*?)(?:\bto\s+(.+))?$/i.exec(words.trim()) ?? [];
  let print: PrintAndFile = { paper: null, type: null, file };
  for (const word of said.split(/[\s,]+/).filter((w) => w !== '')) {
    const meant = PRINT_WORDS.get(word.toLowerCase());
    if (meant === undefined) return undefined;
    print = { ...print, ...meant };
  }
  return print;
}

const PRINT_WORDS: ReadonlyMap<string, Partial<Print>> = new Map<string, Partial<Print>>([
  ['large', { type: 'large' }],
  ['normal', { type: 'normal' }],
  ['a4', { paper: 'A4' }],
  ['letter', { paper: 'Letter' }],
]);
