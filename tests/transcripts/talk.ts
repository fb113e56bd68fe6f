/** A conversation through the terminal, line by line, with a desk on a store of its own; read back as one text. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Writable } from 'node:stream';
import { openDesk } from '../../src/desk.ts';
import { loadFlows } from '../../src/library.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { runTerminal } from '../../src/transport/terminal/terminal.ts';

const flows = loadFlows();

/** What is on the screen after these lines were typed. The first line picks the flow. */
export async function talk(lines: readonly string[]): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-talk-'));
  const store = openStore(join(folder, 'talk.sqlite'));
  const input = new PassThrough();
  const shown: string[] = [];
  const output = new Writable({
    write(chunk, _encoding, done) {
      shown.push(String(chunk));
      done();
    },
  });
  let made = 0;
  const running = runTerminal({
    desk: openDesk({
      flows,
      store,
      clock: () => Date.UTC(2026, 4, 3),
      newId: () => `talk ${made++}`,
      unit: null,
    }),
    wording: (outcome, workings) => outcomeText(outcome, { dialect: 'us', workings }),
    owner: 'knitter',
    input,
    output,
    columns: 100,
    interactive: false,
  });
  input.end(`${lines.join('\n')}\n`);
  await running;
  store.close();
  rmSync(folder, { recursive: true });
  return shown.join('');
}
