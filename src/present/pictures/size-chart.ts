/**
 * The pattern's sizes against what is wanted, region by region. A bar to the left of the line is so much smaller, one to
 * the right so much larger; all are drawn to one scale. The size that is followed has a pointer and solid bars.
 */
import { formatLength } from '../../fit/units.ts';
import { box, type Drawing, line, named, point, rectangle, type Shape, text } from '../draw/drawing.ts';
import { shortened } from '../draw/font.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { BODY, LEADING, MARGIN, PICTURE_WIDTH, SMALL, STRONG, TITLE } from './picture.ts';
import { type RegionLine, type SizeChart, type SizeLine, sizeWords } from './size-chart-figures.ts';

export const CHART_TITLE = 'Sizes against what is wanted';

const ROW = 24;
/** The line of what is wanted, and the longest bar to either side of it. */
const WANTED = 166;
const LONGEST = 66;
const FIGURES = WANTED + LONGEST + 14;
const NAMES = WANTED - LONGEST - MARGIN - 6;

export function drawSizeChart(chart: SizeChart): Drawing {
  const shapes: Shape[] = [
    text(CHART_TITLE, point(MARGIN, 26), TITLE),
    text('◂ smaller', point(WANTED - 8, 50), { ...SMALL, anchor: 'end' }),
    text('larger ▸', point(WANTED + 8, 50), SMALL),
  ];
  let y = 66;
  for (const region of chart.regions) {
    shapes.push(...regionShapes(region, chart, y));
    y += 26 + ROW * region.sizes.length + 8;
  }
  const key = y + 12;
  shapes.push(
    text('▸ and a solid bar: the size that is followed', point(MARGIN, key), SMALL),
    text('Each size as it comes out in your fabric.', point(MARGIN, key + LEADING), SMALL),
  );
  return { width: PICTURE_WIDTH, height: key + LEADING + MARGIN, shapes };
}

function regionShapes(region: RegionLine, chart: SizeChart, top: number): Shape[] {
  const low = top + 24 + ROW * region.sizes.length;
  const perCm = LONGEST / Math.max(chart.most, 0.1);
  return [
    line('frame', point(MARGIN, top), point(PICTURE_WIDTH - MARGIN, top)),
    text(region.region, point(MARGIN, top + 19), STRONG),
    text(`wanted ${formatLength(region.wanted, chart.unit)}`, point(FIGURES, top + 19), BODY),
    ...region.sizes.flatMap((size, i) => sizeShapes(size, chart, perCm, top + 24 + ROW * (i + 0.5))),
    named('wanted', line('tick', point(WANTED, top + 26), point(WANTED, low))),
  ];
}

function sizeShapes(size: SizeLine, { unit }: SizeChart, perCm: number, middle: number): Shape[] {
  const long = Math.abs(size.difference) * perCm;
  const left = size.difference < 0 ? WANTED - long : WANTED;
  const look = size.followed ? STRONG : BODY;
  const bar = box(left, middle - 6, long, 12);
  const name = shortened(`${size.followed ? '▸ ' : ''}size ${size.label}`, NAMES, look.size, 'bold');
  return [
    text(name, point(MARGIN, middle + 5), look),
    named(`bar ${size.label}`, rectangle(size.followed ? 'strong' : 'fabric', 'dimension', bar)),
    text(sizeWords(size, unit), point(FIGURES, middle + 5), { ...look, size: 12.5 }),
  ];
}

export function sizeChartCharacters(chart: SizeChart, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  const widest = Math.min(12, Math.max(...chart.regions.flatMap((r) => r.sizes.map((s) => s.label.length))));
  const half = Math.max(4, Math.min(12, Math.floor((wide - 28 - widest) / 2)));
  const parts = chart.regions.map((region) => [
    `${region.region}, wanted ${formatLength(region.wanted, chart.unit)}`,
    ...region.sizes.flatMap((size) => {
      const long = Math.round((Math.abs(size.difference) / Math.max(chart.most, 0.1)) * half);
      const mark = (size.followed ? '#' : '-').repeat(long);
      const less = size.difference < 0;
      const bar = `${(less ? mark : '').padStart(half)}|${(less ? '' : mark).padEnd(half)}`;
      const name = `${size.followed ? '>' : ' '} ${size.label.slice(0, widest).padStart(widest)}`;
      const words = sizeWords(size, chart.unit);
      const one = `${name} ${bar} ${words}`;
      return one.length <= wide ? [one] : [`${name} ${bar}`, `    ${words}`];
    }),
  ]);
  return sheetOfCharacters([
    [CHART_TITLE],
    ...parts,
    wrapColumns('> and # the size that is followed. Left of the line smaller, right of it larger.', wide),
  ]);
}
