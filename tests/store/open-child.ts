/**
 * A process that keeps one session in each of several new databases. It opens them at times agreed with its brothers, so
 * that all come to a new file together. Command line: folder, first time in milliseconds since 1970, number of files.
 */
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { AT_THE_START } from '../../src/dialogue/session.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { lengthLine, session } from './samples.ts';

/** Milliseconds from one file to the next. */
const BEAT = 50;

const [folder = '', start, files] = process.argv.slice(2);
for (let i = 0; i < Number(files); i += 1) {
  while (Date.now() < Number(start) + i * BEAT);
  const store = openStore(join(folder, `${i}.db`));
  const id = randomUUID();
  store.create(session(id), 0);
  store.append(id, 0, [lengthLine('bust', 96.5, 1)], AT_THE_START);
  store.close();
}
