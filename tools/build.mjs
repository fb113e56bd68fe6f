/** Bundles the program into dist/, so that it starts in a fraction of a second. Run by `npm ci` and before `npm start`. */
import { build } from 'esbuild';

await build({
  entryPoints: ['src/main.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  logLevel: 'warning',
  // Native code and what only a server needs is loaded where it lies.
  external: ['better-sqlite3', 'discord.js', 'dotenv'],
  // Some libraries call `require` themselves; a module has none of its own.
  banner: {
    js: "import { createRequire as requireFor } from 'node:module'; const require = requireFor(import.meta.url);",
  },
});
