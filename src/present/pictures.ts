/** What `present` draws: the pictures of a plan, where to measure, and the sheets to print. The one file to wire up. */
import type { Plan } from '../fit/plan.ts';
import { picturesOfStep, schematicsOf } from './pictures/of-plan.ts';
import type { Picture } from './pictures/picture.ts';
import type { Dialect } from './terms.ts';

export { MEASURED, type Measured, measuredBy, measuringPicture } from './measuring/measuring.ts';
export type { Picture } from './pictures/picture.ts';
export { render } from './render/render.ts';
export { blankSheet, blankTitle } from './sheets/blank-sheets.ts';
export { BLANKS, type Blank } from './sheets/blanks.ts';
export { planSheet as sheetOf } from './sheets/plan-sheet.ts';

/** Every picture of a plan: its pieces first, then the sizes and the shaping of each step in the order of knitting. */
export function picturesOf(plan: Plan, dialect: Dialect): Picture[] {
  const view = { unit: plan.unit, dialect };
  return numbered([...schematicsOf(plan, view), ...plan.steps.flatMap((step) => picturesOfStep(step, view))]);
}

/** What a plan changes, in plain characters: its pieces, the rest of its shapes; its ladders where it has nothing else. */
export function planInCharacters(plan: Plan, dialect: Dialect, columns: number): string {
  const all = picturesOf(plan, dialect);
  const shapes = all.filter(({ kind }) => kind === 'shape');
  return (shapes.length > 0 ? shapes : all).map(({ characters }) => characters(columns)).join('\n\n\n');
}

/** Names that occur again are numbered from the second on, so that each can be a file. */
function numbered(pictures: readonly Picture[]): Picture[] {
  const seen = new Map<string, number>();
  return pictures.map((picture) => {
    const nth = (seen.get(picture.name) ?? 0) + 1;
    seen.set(picture.name, nth);
    return nth === 1 ? picture : { ...picture, name: `${picture.name}-${nth}` };
  });
}
