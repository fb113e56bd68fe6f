/** Loads the flows of the project's own folder, joined with the calculations of the chapters. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CALCULATIONS } from './chapters/index.ts';
import { fits } from './dialogue/hear.ts';
import { compileBook, type Flows } from './flow/compile.ts';
import { type FlowText, loadBook } from './flow/load.ts';

const FLOWS_FOLDER = fileURLToPath(new URL('../flows/', import.meta.url));

export function readFlowTexts(folder = FLOWS_FOLDER): FlowText[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({ file: `flows/${name}`, text: readFileSync(join(folder, name), 'utf8') }));
}

/** Throws FlowFaults, with every fault of every file, where the folder is not sound. */
export function loadFlows(): Flows {
  return compileBook(loadBook(readFlowTexts(), CALCULATIONS), CALCULATIONS, fits);
}
