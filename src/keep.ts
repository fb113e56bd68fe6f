/** Draws in plain characters, and keeps pictures and sheets as files. */
import { existsSync, writeFileSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import type { Plan } from './fit/plan.ts';
import type { LengthUnit } from './fit/units.ts';
import type { StartingFigure } from './present/key.ts';
import { BLANKS, type Blank, blankSheet, picturesOf, render } from './present/pictures.ts';
import type { Job } from './present/render/job.ts';
import { type Paper, type TypeSize, usualPaper } from './present/sheets/paper.ts';
import type { Dialect } from './present/terms.ts';
import type { KeepWish, Kept, Print } from './transport/contract.ts';

/** What every sheet of this machine is told; `paper` null: as it is usual with the unit. */
export interface Printing {
  readonly dialect: Dialect;
  readonly paper: Paper | null;
  readonly type: TypeSize;
  /** ISO 8601, printed on the sheet of a plan. */
  readonly date: string;
  /** Of the sheets that are filled in by hand. */
  readonly unit: LengthUnit;
}

/** What a file is to hold; `suffix` tells it from the others that are kept with it. */
interface Content {
  readonly suffix: string;
  readonly job: Job;
}

export interface KeptFiles extends Print {
  /** A PNG file; where a plan has several pictures each is a file, named after what it shows. */
  readonly picture?: string | undefined;
  /** A PDF file. */
  readonly sheet?: string | undefined;
  /** Answers that its workings begin with. */
  readonly from?: readonly StartingFigure[];
}

/** Writes the files, over those of the same name, and gives their names. */
export async function keepFiles(plan: Plan, files: KeptFiles, printing: Printing): Promise<string[]> {
  const { picture, sheet } = files;
  const pictures = picture === undefined ? [] : await writeAll(pictured(plan, printing), picture, 'w');
  const sheets = sheet === undefined ? [] : await writeAll(planned(plan, files, printing), sheet, 'w');
  return [...pictures, ...sheets];
}

/** Writes a sheet to fill in by hand, over a file of that name. */
export async function keepBlank(
  blank: Blank,
  file: string,
  print: Print,
  printing: Printing,
): Promise<string[]> {
  return writeAll(blankContent(blank, print, printing), file, 'w');
}

/** Writes nothing over a file that is there: a name that was wished is refused, a usual one numbered. */
export async function keepNew(wish: KeepWish, folder: string, printing: Printing): Promise<Kept> {
  const contents = contentsOf(wish, printing);
  const ending = wish.keep === 'pictures' ? '.png' : '.pdf';
  const usual = wish.keep === 'blank' ? wish.blank : 'plan';
  const file = resolve(
    folder,
    wish.file === null ? free(contents, folder, usual, ending) : ended(wish.file, ending),
  );
  const there = contents.map((c) => nameOf(file, c)).find((name) => existsSync(name));
  if (there !== undefined)
    return {
      kept: 'nothing',
      why: `${there} is there already, and stays as it is. Please choose another name.`,
    };
  try {
    return { kept: 'files', files: await writeAll(contents, file, 'wx') };
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    return {
      kept: 'nothing',
      why: `${file} cannot be written (${error.code}). Please choose another name or folder.`,
    };
  }
}

function contentsOf(wish: KeepWish, printing: Printing): Content[] {
  switch (wish.keep) {
    case 'pictures':
      return pictured(wish.plan, printing);
    case 'sheet':
      return planned(wish.plan, wish, printing);
    case 'blank': {
      const blank = BLANKS.find((b) => b === wish.blank);
      if (blank === undefined) throw new RangeError(`there is no sheet '${wish.blank}'`);
      return blankContent(blank, wish, printing);
    }
    default:
      return wish satisfies never;
  }
}

function pictured(plan: Plan, { dialect }: Printing): Content[] {
  const pictures = picturesOf(plan, dialect);
  return pictures.map(({ name, drawing }) => ({
    suffix: pictures.length === 1 ? '' : `-${name}`,
    job: { make: 'png', drawing, theme: 'light', scale: 2 },
  }));
}

function planned(plan: Plan, print: Print & Pick<KeptFiles, 'from'>, printing: Printing): Content[] {
  const { dialect, date } = printing;
  const from = print.from ?? [];
  const options = { project: '', date, dialect, from, ...printed(print, printing, plan.unit) };
  return [{ suffix: '', job: { make: 'plan sheet', plan, options } }];
}

function blankContent(blank: Blank, print: Print, printing: Printing): Content[] {
  const { date, unit } = printing;
  const sheet = blankSheet(blank, { date, unit, ...printed(print, printing, unit) });
  return [{ suffix: '', job: { make: 'pdf', sheet } }];
}

function printed(print: Print, set: Printing, unit: LengthUnit): { paper: Paper; type: TypeSize } {
  return { paper: print.paper ?? set.paper ?? usualPaper(unit), type: print.type ?? set.type };
}

/** `flag`: 'w' writes over what is there, 'wx' throws. */
async function writeAll(contents: readonly Content[], file: string, flag: 'w' | 'wx'): Promise<string[]> {
  const written: string[] = [];
  for (const content of contents) {
    const name = nameOf(file, content);
    writeFileSync(name, await render(content.job), { flag });
    written.push(name);
  }
  return written;
}

/** 'plan.png' and '-body' give 'plan-body.png'. */
function nameOf(file: string, { suffix }: Content): string {
  const ending = extname(file);
  return `${file.slice(0, file.length - ending.length)}${suffix}${ending}`;
}

function ended(file: string, ending: string): string {
  return extname(file) === '' ? `${file}${ending}` : file;
}

/** 'plan.pdf', or 'plan-2.pdf' where that is there, and so on. */
function free(contents: readonly Content[], folder: string, usual: string, ending: string): string {
  for (let nth = 1; ; nth += 1) {
    const file = `${usual}${nth === 1 ? '' : `-${nth}`}${ending}`;
    if (!contents.some((c) => existsSync(resolve(folder, nameOf(file, c))))) return file;
  }
}
