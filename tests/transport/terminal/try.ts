/** The terminal with the desk of the tests, to be looked at: `node --import tsx tests/transport/terminal/try.ts`. */
import { stdin, stdout } from 'node:process';
import { runTerminal } from '../../../src/transport/terminal/terminal.ts';
import { fakeDesk, fakeDrawings, fakeWording } from './fake-desk.ts';

await runTerminal({
  desk: fakeDesk().desk,
  wording: fakeWording,
  drawings: fakeDrawings().drawings,
  owner: 'ada',
  input: stdin,
  output: stdout,
  interactive: stdin.isTTY && stdout.isTTY,
});
