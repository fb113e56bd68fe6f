/** Writes the golden pictures anew, for looking at before they are kept: npx tsx tools/golden.ts */
import { mkdirSync, writeFileSync } from 'node:fs';
import { pngOf } from '../src/present/render/png.ts';
import { TWELVE } from '../tests/present/twelve.ts';

export const GOLDEN = new URL('../tests/present/golden/', import.meta.url);
/** Pixels to the unit: small files that still show every line. */
export const GOLDEN_SCALE = 0.8;

if (process.argv[1]?.endsWith('golden.ts')) {
  mkdirSync(GOLDEN, { recursive: true });
  for (const [name, draw] of Object.entries(TWELVE))
    writeFileSync(new URL(`${name}.png`, GOLDEN), pngOf(draw(), 'light', GOLDEN_SCALE));
}
