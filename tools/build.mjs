/** Bundles the program into dist/, so that it starts in a fraction of a second. Run by `npm ci` and before `npm start`. */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build } from 'esbuild';
import { parseDocument } from 'yaml';

const { metafile } = await build({
  // The renderer runs in a thread of its own, which is begun from a file.
  entryPoints: { main: 'src/main.ts', 'render-worker': 'src/present/render/worker.ts' },
  outdir: 'dist',
  bundle: true,
  metafile: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  minifyWhitespace: true,
  logLevel: 'warning',
  // Native code and what only a server needs is loaded where it lies.
  external: ['better-sqlite3', 'discord.js', 'dotenv', '@resvg/resvg-js', 'pdfkit', 'pino'],
  // Some libraries call `require` themselves; a module has none of its own.
  banner: {
    js: "import { createRequire as requireFor } from 'node:module'; const require = requireFor(import.meta.url);",
  },
});

// Reading YAML takes most of a start: the flows are read here, and kept beside the text that they were read from.
const flows = readdirSync('flows', { recursive: true }).filter((file) => file.endsWith('.yaml'));
const read = flows.map((file) => {
  const text = readFileSync(join('flows', file), 'utf8');
  const document = parseDocument(text, { uniqueKeys: true });
  return document.errors.length > 0 ? [] : [[file, { text, read: document.toJS() }]];
});
writeFileSync('dist/flows.json', JSON.stringify(Object.fromEntries(read.flat())));

// Chunks of an earlier build go last, so that a program that starts meanwhile finds what it needs.
const made = new Set(['flows.json', ...Object.keys(metafile.outputs).map((file) => basename(file))]);
for (const file of readdirSync('dist')) if (!made.has(file)) rmSync(join('dist', file));
