/** Every picture that a plan gives, each with its words and its characters. */
import type { Plan, Step, TurnedWedge } from '../../fit/plan.ts';
import type { ShapedPart } from '../../fit/shaped.ts';
import type { View } from '../view.ts';
import { wordTurns, wordWedge } from '../wedge-words.ts';
import { fileName, type Picture } from './picture.ts';
import { pieceFigures } from './piece-figures.ts';
import { drawSchematic } from './schematic.ts';
import { schematicCharacters } from './schematic-characters.ts';
import { schematicAlternative } from './schematic-words.ts';
import { shapedPicture } from './shaped-picture.ts';
import { CHART_TITLE, drawSizeChart, sizeChartCharacters } from './size-chart.ts';
import { chartAlternative, sizeChart } from './size-chart-figures.ts';
import { drawStrip, splitStrip } from './strip.ts';
import { stripCharacters } from './strip-characters.ts';
import { stripAlternative, stripsOf } from './strip-figures.ts';
import { wedgeCharacters } from './wedge-characters.ts';
import { drawWedge } from './wedge-picture.ts';
import { scaleFact } from './wedge-to-scale.ts';
import { pieceTitle, spoken, stepTitle } from './words.ts';

/** One for each piece that changes, before and after. */
export function schematicsOf(plan: Plan, view: View): Picture[] {
  return plan.pieces.map((change) => {
    const { name, worked } = change.after;
    const figures = pieceFigures(change);
    const wedges = plan.steps.filter((s) => s.piece === name).flatMap(wedgesOf);
    return {
      name: fileName(`schematic ${name}`),
      kind: 'shape',
      title: pieceTitle(name, worked),
      drawing: drawSchematic(figures, wedges, view),
      alternative: schematicAlternative(figures, view),
      characters: (columns) => schematicCharacters(figures, view, columns),
    };
  });
}

/** What a step has to show: sizes, what it shapes, its shaping rows, short rows. A ladder taller than `tallest` comes in parts. */
export function picturesOfStep(step: Step, view: View, tallest = Number.POSITIVE_INFINITY): Picture[] {
  return [
    ...sizePictures(step, view),
    ...shapedPictures(step, view),
    ...stripPictures(step, view, tallest),
    ...wedgePictures(step, view),
  ];
}

function sizePictures(step: Step, view: View): Picture[] {
  const chart = sizeChart(step, view.unit);
  if (chart === null) return [];
  return [
    {
      name: 'sizes',
      kind: 'chart',
      title: CHART_TITLE,
      drawing: drawSizeChart(chart),
      alternative: chartAlternative(chart),
      characters: (columns) => sizeChartCharacters(chart, columns),
    },
  ];
}

function shapedPictures(step: Step, view: View): Picture[] {
  if (step.shaped === null) return [];
  const title = SHAPE_TITLES[step.shaped.shape] ?? stepTitle(step, view);
  return [shapedPicture(step.shaped, title, { ...view, worked: step.worked })];
}

/** Of shapes that go beyond their step. */
const SHAPE_TITLES: Partial<Readonly<Record<ShapedPart['shape'], string>>> = {
  cap: 'Sleeve: the cap and its armhole',
  neck: 'Front: the neck',
  'drop shoulder': 'Body and sleeve: the dropped shoulder',
  yoke: 'Yoke: all its rounds',
};

function stripPictures(step: Step, view: View, tallest: number): Picture[] {
  const strips = stripsOf(step, view).flatMap((strip) => splitStrip(strip, tallest));
  return strips.map((strip) => ({
    name: fileName(`shaping ${strip.title}`),
    kind: 'ladder',
    title: strip.title,
    drawing: drawStrip(strip),
    alternative: stripAlternative(strip),
    characters: (columns) => stripCharacters(strip, columns),
  }));
}

function wedgePictures(step: Step, view: View): Picture[] {
  const title = stepTitle(step, view);
  return wedgesOf(step).map((wedge) => wedgePicture(wedge, title, view));
}

export function wedgePicture(wedge: TurnedWedge, title: string, view: View): Picture {
  const words = wordWedge(wedge, { ...view, worked: wedge.worked });
  const facts = scaleFact(wedge, view);
  return {
    name: fileName(`short rows ${title}`),
    kind: 'shape',
    title,
    drawing: drawWedge(wedge, title, view),
    alternative: spoken(`${title}. ${facts} ${words} ${wordTurns(wedge)}`),
    characters: (columns) => wedgeCharacters(wedge, title, [facts, words], columns),
  };
}

function wedgesOf(step: Step): TurnedWedge[] {
  return step.instead.flatMap((i) => (i.do === 'short rows' ? [i.wedge] : []));
}
