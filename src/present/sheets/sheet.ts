/** A sheet to print: pages of parts, each with the role that it has for those who listen instead of look. */
import type { Drawing, Shape } from '../draw/drawing.ts';
import type { Paper, TypeSize } from './paper.ts';

/** `Artifact`: what repeats on every page, and is not read out. */
export type Role = 'H1' | 'H2' | 'P' | 'Figure' | 'Artifact';

export interface Part {
  readonly role: Role;
  readonly shapes: readonly Shape[];
  /** What a figure shows, in words. */
  readonly alternative?: string;
}

export interface Page {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly Part[];
}

export interface Sheet {
  readonly title: string;
  /** ISO 8601, such as 2025-03-01: all that the file tells of time. */
  readonly date: string;
  readonly pages: readonly Page[];
}

/** What every sheet is told. */
export interface SheetOptions {
  /** What the knitter calls it; may be empty. */
  readonly project: string;
  /** ISO 8601, such as 2025-03-01. */
  readonly date: string;
  readonly paper: Paper;
  readonly type: TypeSize;
}

export function drawingOf({ width, height, parts }: Page): Drawing {
  return { width, height, shapes: parts.flatMap((p) => p.shapes) };
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** '1 March 2025': read alike on both sides of the sea. Throws where the date is none. */
export function wordDate(iso: string): string {
  const date = new Date(`${iso}T00:00:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(iso) || Number.isNaN(date.getTime()))
    throw new RangeError(`a date is given as 2025-03-01, got '${iso}'`);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
}
