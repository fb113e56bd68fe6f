/** A process that opens the database named on its command line and keeps one session in it. */
import { randomUUID } from 'node:crypto';
import { AT_THE_START } from '../../src/dialogue/session.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { lengthLine, session } from './samples.ts';

const store = openStore(process.argv[2] ?? '');
const id = randomUUID();
store.create(session(id), 0);
store.append(id, 0, [lengthLine('bust', 96.5, 1)], AT_THE_START);
store.close();
