/** The picture for each thing that is measured: the body, a garment's lengths, the swatch. */
import { MEASUREMENTS } from '../../fit/words.ts';
import { fileName, type Picture } from '../pictures/picture.ts';
import { BODY_PLACES } from './body-places.ts';
import { GARMENT_LENGTHS, GARMENT_PLACES, RECHECKED } from './garment-places.ts';
import { measuringCharacters } from './measuring-characters.ts';
import { drawMeasuring, figureAlone, type Shown } from './measuring-picture.ts';
import { type Counting, drawSwatch, SWATCH_ALTERNATIVES, SWATCH_TITLES, swatchCharacters } from './swatch.ts';

export const MEASURED = [
  ...MEASUREMENTS,
  ...GARMENT_LENGTHS,
  ...RECHECKED,
  'swatch stitches',
  'swatch rows',
] as const;
export type Measured = (typeof MEASURED)[number];

const PLACES = { ...BODY_PLACES, ...GARMENT_PLACES };

/** What a question of the interview asks to be measured: its measurement, or its own name; undefined where none is drawn. */
export function measuredBy(question: {
  readonly id: string;
  readonly measurement?: string | undefined;
}): Measured | undefined {
  const name = question.measurement ?? question.id.replaceAll('_', ' ');
  return MEASURED.find((measured) => measured === name);
}

/** Where the tape or the ruler lies. */
export function measuringPicture(measured: Measured): Picture {
  if (measured === 'swatch stitches') return swatch('stitches');
  if (measured === 'swatch rows') return swatch('rows');
  return onFigure(measured, PLACES[measured]);
}

/** A measurement as a sheet shows it: the figure with the tape alone, and its words. */
export function measuringThumb(
  measured: keyof typeof PLACES,
): Pick<Picture, 'title' | 'drawing' | 'alternative'> {
  const shown = PLACES[measured];
  return { title: shown.title, drawing: figureAlone(shown), alternative: shown.alternative };
}

function onFigure(measured: Measured, shown: Shown): Picture {
  return {
    name: fileName(`measure ${measured}`),
    kind: 'measuring',
    title: shown.title,
    drawing: drawMeasuring(shown),
    alternative: shown.alternative,
    characters: (columns) => measuringCharacters(shown, columns),
  };
}

function swatch(counting: Counting): Picture {
  return {
    name: `measure-swatch-${counting}`,
    kind: 'measuring',
    title: SWATCH_TITLES[counting],
    drawing: drawSwatch(counting),
    alternative: SWATCH_ALTERNATIVES[counting],
    characters: (columns) => swatchCharacters(counting, columns),
  };
}
