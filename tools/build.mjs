/** Bundles the program into dist/, so that it starts in a fraction of a second. Run by `npm ci` and before `npm start`. */
import { rmSync } from 'node:fs';
import { build } from 'esbuild';

rmSync('dist', { recursive: true, force: true });

await build({
  entryPoints: ['src/main.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: true,
  logLevel: 'warning',
  // Native code and what only a server needs is loaded where it lies.
  external: ['better-sqlite3', 'discord.js', 'dotenv'],
  // Some libraries call `require` themselves; a module has none of its own.
  banner: {
    js: "import { createRequire as requireFor } from 'node:module'; const require = requireFor(import.meta.url);",
  },
});
