/** A drawing as PNG. Only the project's own font files are loaded, so that it looks alike on every machine. */
import { Resvg } from '@resvg/resvg-js';
import type { Drawing } from '../draw/drawing.ts';
import { FONT_FAMILY, fontFile, WEIGHTS } from '../draw/font.ts';
import type { Theme } from '../draw/palette.ts';
import { svgOf } from '../draw/svg.ts';

/** `scale`: pixels for one unit of the drawing. */
export function pngOf(drawing: Drawing, theme: Theme, scale: number): Uint8Array {
  const picture = new Resvg(svgOf(drawing, theme), {
    font: {
      fontFiles: WEIGHTS.map(fontFile),
      loadSystemFonts: false,
      defaultFontFamily: FONT_FAMILY,
    },
    fitTo: { mode: 'zoom', value: scale },
  });
  return picture.render().asPng();
}
