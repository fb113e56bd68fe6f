/** A drawing as SVG, on its own ground so that it is legible wherever it is shown. */
import type { Drawing, PathShape, Shape, TextShape } from './drawing.ts';
import { FONT_FAMILY } from './font.ts';
import { LINES, type LineStyle, PALETTES, type Palette, type Theme } from './palette.ts';

export function svgOf(drawing: Drawing, theme: Theme): string {
  const palette = PALETTES[theme];
  const { width, height } = drawing;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(width)} ${num(height)}" width="${num(width)}" height="${num(height)}" font-family="${FONT_FAMILY}">`,
    `<rect width="100%" height="100%" fill="${palette.ground}"/>`,
    ...drawing.shapes.map((shape) => element(shape, palette)),
    '</svg>',
  ].join('\n');
}

function element(shape: Shape, palette: Palette): string {
  return shape.shape === 'path' ? path(shape, palette) : label(shape, palette);
}

function path({ points, closed, line, fill }: PathShape, { inks, fills }: Palette): string {
  const d = `M${points.map((p) => `${num(p.x)} ${num(p.y)}`).join('L')}${closed ? 'Z' : ''}`;
  const filled = fill === null ? 'none' : fills[fill];
  return `<path d="${d}" fill="${filled}"${line === null ? '' : stroke(LINES[line], inks)}/>`;
}

function stroke({ ink, width, dash }: LineStyle, inks: Palette['inks']): string {
  const dashes = dash === null ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  return ` stroke="${inks[ink]}" stroke-width="${width}" stroke-linejoin="round" stroke-linecap="butt"${dashes}`;
}

function label({ text, x, y, size, weight, anchor, ink }: TextShape, { inks }: Palette): string {
  const bold = weight === 'bold' ? ' font-weight="bold"' : '';
  const aligned = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${num(x)}" y="${num(y)}" font-size="${num(size)}"${bold}${aligned} fill="${inks[ink]}">${escaped(text)}</text>`;
}

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);
}
