/** Loads the flows and lessons of the project's own folder, joined with the calculations of the chapters. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CALCULATIONS } from './chapters/index.ts';
import { fits } from './dialogue/hear.ts';
import { compileBook, type Flows } from './flow/compile.ts';
import { type FlowText, loadBook } from './flow/load.ts';

const FLOWS_FOLDER = fileURLToPath(new URL('../flows/', import.meta.url));

/** What the build has read of the flow files, by the text itself, so that an edited file is read anew. */
const READ_BY_BUILD = fileURLToPath(new URL('./flows.json', import.meta.url));

export function readFlowTexts(folder = FLOWS_FOLDER): FlowText[] {
  const readBefore = readByBuild();
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const text = readFileSync(join(folder, name), 'utf8');
      const known = readBefore[name];
      return { file: `flows/${name}`, text, ...(known?.text === text ? { read: known.read } : {}) };
    });
}

function readByBuild(): Record<string, { text: string; read: unknown } | undefined> {
  return existsSync(READ_BY_BUILD) ? JSON.parse(readFileSync(READ_BY_BUILD, 'utf8')) : {};
}

/** Throws FlowFaults, with every fault of every file, where the folder is not sound. */
export function loadFlows(): Flows {
  return compileBook(loadBook(readFlowTexts(), CALCULATIONS), CALCULATIONS, fits);
}
