/**
 * A process that appends answers one after another to the session 'knitter' until it is killed, and prints the number of
 * each line once the store has acknowledged it. Its command line names the database.
 */
import { writeSync } from 'node:fs';
import { AT_THE_START } from '../../src/dialogue/session.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { lengthLine } from './samples.ts';

const store = openStore(process.argv[2] ?? '');
for (let number = store.load('knitter')?.log.length ?? 0; ; number += 1) {
  const line = lengthLine(`question ${number}`, number, number);
  store.append('knitter', number, [line], { ...AT_THE_START, revisiting: `question ${number}` });
  writeSync(1, `${number}\n`);
}
