import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { build } from 'esbuild';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { measuringPicture, render, sheetOf } from '../../src/present/pictures.ts';
import { RenderFailed } from '../../src/present/render/render.ts';
import { samplePlan } from '../../tools/sample-garment.ts';

const { drawing } = measuringPicture('wrist');

describe('the renderer', () => {
  it('makes a PNG of so many pixels to the unit, in its own thread', async () => {
    const bytes = await render({ make: 'png', drawing, theme: 'light', scale: 2 });
    const { width, height } = PNG.sync.read(Buffer.from(bytes));
    expect(Math.abs(width - 2 * drawing.width)).toBeLessThan(1);
    expect(Math.abs(height - 2 * drawing.height)).toBeLessThan(1);
  });

  it('gives the same bytes for the same drawing, and answers many at once in their order', async () => {
    const jobs = (['light', 'dark', 'light'] as const).map((theme) =>
      render({ make: 'png', drawing, theme, scale: 1 }),
    );
    const [light, dark, again] = await Promise.all(jobs);
    expect(Buffer.from(light ?? []).equals(Buffer.from(again ?? []))).toBe(true);
    expect(Buffer.from(light ?? []).equals(Buffer.from(dark ?? []))).toBe(false);
  });

  it('lays out the sheet of a plan in its own thread, to the same bytes', async () => {
    const plan = samplePlan();
    const options = {
      project: 'Garden',
      date: '2025-03-01',
      paper: 'A4',
      type: 'normal',
      dialect: 'us',
    } as const;
    const there = await render({ make: 'plan sheet', plan, options });
    const here = await render({ make: 'pdf', sheet: sheetOf(plan, options) });
    expect(Buffer.from(there).equals(Buffer.from(here))).toBe(true);
  });

  it('leaves the program free while it draws', async () => {
    let ticks = 0;
    const clock = setInterval(() => {
      ticks += 1;
    }, 1);
    await render({ make: 'png', drawing, theme: 'light', scale: 6 });
    clearInterval(clock);
    expect(ticks).toBeGreaterThan(0);
  });

  it('says what went wrong, and goes on with the next job', async () => {
    const nothing = { width: 0, height: 0, shapes: [] };
    await expect(render({ make: 'png', drawing: nothing, theme: 'light', scale: 1 })).rejects.toBeInstanceOf(
      RenderFailed,
    );
    expect((await render({ make: 'png', drawing, theme: 'light', scale: 1 })).length).toBeGreaterThan(1000);
  });

  it('works from a bundle too, and lets the program end when nothing is left to do', async () => {
    const outdir = resolve(import.meta.dirname, '../../node_modules/.cache/render-test');
    mkdirSync(outdir, { recursive: true });
    try {
      await build({
        entryPoints: { go: 'src/present/render/render.ts', 'render-worker': 'src/present/render/worker.ts' },
        outdir,
        bundle: true,
        splitting: true,
        format: 'esm',
        platform: 'node',
        packages: 'external',
      });
      const job = JSON.stringify({ make: 'png', drawing, theme: 'light', scale: 1 });
      const program = `import { render } from './go.js'; console.log((await render(${job})).length);`;
      writeFileSync(resolve(outdir, 'program.mjs'), program);
      const printed = execFileSync(process.execPath, [resolve(outdir, 'program.mjs')], {
        encoding: 'utf8',
        timeout: 30_000,
      });
      expect(Number(printed)).toBe((await render({ make: 'png', drawing, theme: 'light', scale: 1 })).length);
    } finally {
      rmSync(outdir, { recursive: true, force: true });
    }
  });
});
