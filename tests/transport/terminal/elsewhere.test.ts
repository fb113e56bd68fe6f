import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { expect, it } from 'vitest';
import { openDesk } from '../../../src/desk.ts';
import { loadFlows } from '../../../src/library.ts';
import { openStore } from '../../../src/store/sqlite.ts';
import { runTerminal } from '../../../src/transport/terminal/terminal.ts';
import { databases } from '../../store/folder.ts';
import { fakeDrawings, fakeWording } from './fake-desk.ts';

const newFile = databases();

/** A terminal on the real flows, with these lines typed. */
async function run(lines: readonly string[]): Promise<string> {
  const store = openStore(newFile(), 50);
  let made = 0;
  const newId = () => `${++made}`;
  const desk = openDesk({ flows: loadFlows(), store, clock: () => 1000, newId, unit: 'cm', terms: 'us' });
  const input = Object.assign(new PassThrough(), { isTTY: false });
  const output = new PassThrough();
  const written = text(output);
  input.end(lines.map((line) => `${line}\n`).join(''));
  const given = { desk, drawings: fakeDrawings().drawings, wording: fakeWording, owner: 'ada' };
  await runTerminal({ ...given, input, output, columns: 100, interactive: false });
  output.end();
  store.close();
  return written;
}

const HEM = ['hem', 'hem round', '22 sts and 30 rows to 10 cm'];

it('begins the chapter that she would rather do, and offers the one before to go on with', async () => {
  const said = await run([
    ...HEM,
    'my sleeves are too tight',
    'Begin: Re-space a sleeve',
    'from the cuff, flat',
    'another chapter',
    'yes',
    'Lower the hem at the back',
    'leave',
  ]);
  const [before = '', after = ''] = said.split('“Lower the hem at the back” is paused.');
  expect(before).toContain('Do you mean this: My sleeves are too tight');
  expect(after).toContain('How does the pattern knit the sleeve?');
  expect(after).toContain('“Re-space a sleeve” is paused.');
  const [, list = ''] = after.split('“Re-space a sleeve” is paused.');
  expect(list).toContain('What would you like to do?');
  expect(list).toContain('Go on: Re-space a sleeve');
  expect(list).toContain('Go on: Lower the hem at the back');
});

it('reads her terms from the first list on, once she has chosen them', async () => {
  const said = await run(['swatch', 'UK terms', 'another chapter', 'yes', 'leave']);
  expect(said).toContain('From here on in UK terms');
  expect(said.slice(said.lastIndexOf('What would you like to do?'))).toContain(
    "My tension is not the pattern's",
  );
});
