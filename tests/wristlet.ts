/** A flow of three questions, for tests of what lies above the dialogue. */
import { fits } from '../src/dialogue/hear.ts';
import type { Cannot } from '../src/fit/plan.ts';
import { compileBook, type Flows } from '../src/flow/compile.ts';
import { loadBook } from '../src/flow/load.ts';

const TEXT = `
id: wristlet
version: 1
title: A wristlet
wish: I want a wristlet that fits
intro: Two lengths and we are done.
result: nothing
steps: [{ ask: unit }, { ask: wrist }, { ask: long }]
questions:
  unit:
    kind: choice
    short: Units
    ask: Do you measure in centimetres or in inches?
    why: Everything is shown in it.
    how: Look at your tape.
    example: cm
    choices:
      - { id: cm, label: Centimetres, hear: [cm] }
      - { id: in, label: Inches, hear: [in] }
    unknown: { waits: 'Centimetres are used.' }
  wrist:
    kind: length
    short: Wrist
    ask: How wide is your wrist around?
    why: The cast-on is made for it.
    how: Lay the tape around it.
    example: 16 cm
    measurement: wrist
    unknown: { waits: 'The cast-on waits.' }
  long:
    kind: length
    short: Length
    ask: How long shall the wristlet be?
    why: The rows are counted for it.
    how: Measure along the arm.
    example: 8 cm
    least: 2
    most: 60
    unknown: { waits: 'The rows wait.' }
`;

const CANNOT: Cannot = { kind: 'cannot', unit: 'cm', because: [], instead: [], workings: [] };

export function wristlet(): Flows {
  const calculations = { results: { nothing: () => CANNOT }, suggestions: {} };
  return compileBook(loadBook([{ file: 'wristlet.yaml', text: TEXT }], calculations), calculations, fits);
}
