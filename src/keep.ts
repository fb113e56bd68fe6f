/** Keeps a plan's pictures and its sheet as files. */
import { writeFileSync } from 'node:fs';
import { extname } from 'node:path';
import type { Plan } from './fit/plan.ts';
import { picturesOf, render, sheetOf } from './present/pictures.ts';
import type { Dialect } from './present/terms.ts';

export interface KeptFiles {
  /** A PNG file; where a plan has several pictures each is a file, named after what it shows. */
  readonly picture?: string | undefined;
  /** A PDF file. */
  readonly sheet?: string | undefined;
}

/** Writes the files and gives their names. `date`: ISO 8601, printed on the sheet. */
export async function keepFiles(
  plan: Plan,
  { picture, sheet }: KeptFiles,
  dialect: Dialect,
  date: string,
): Promise<string[]> {
  const written: string[] = [];
  const pictures = picture === undefined ? [] : picturesOf(plan, dialect);
  for (const { name, drawing } of pictures) {
    const file = pictures.length === 1 ? (picture ?? '') : beside(picture ?? '', name);
    writeFileSync(file, await render({ make: 'png', drawing, theme: 'light', scale: 2 }));
    written.push(file);
  }
  if (sheet !== undefined) {
    const paper = plan.unit === 'in' ? 'Letter' : 'A4';
    const pages = sheetOf(plan, { project: '', date, paper, type: 'normal', dialect });
    writeFileSync(sheet, await render({ make: 'pdf', sheet: pages }));
    written.push(sheet);
  }
  return written;
}

/** 'plan.png' and 'body' give 'plan-body.png'. */
function beside(file: string, name: string): string {
  const ending = extname(file);
  return `${file.slice(0, file.length - ending.length)}-${name}${ending}`;
}
