/** Practice: the exercises as they stand in their files, and what is told of a file that is not sound. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sumsOf } from '../../src/fit/sum.ts';
import { DIALECTS } from '../../src/fit/terms.ts';
import { LENGTH_UNITS } from '../../src/fit/units.ts';
import type { Calculations } from '../../src/flow/calculations.ts';
import { FlowFaults } from '../../src/flow/fault.ts';
import { loadBook } from '../../src/flow/load.ts';
import { loadFlows } from '../../src/library.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { exercises, practised, workedExercise } from '../exercises.ts';

const flows = [...loadFlows().values()];

describe('an exercise', () => {
  it('is there for every flow but the two that only measure', () => {
    const without = flows.filter(({ book, file }) => !book.exercises.has(file.id));
    expect(without.map(({ file }) => file.id).sort()).toEqual(['body', 'measure']);
  });

  it.each(exercises)(
    '%s in %s comes to a plan with sums to try: no answer refused, put back, missing or waiting',
    (_id, _unit, worked) => {
      const { plan } = worked();
      expect(sumsOf(plan).length).toBeGreaterThan(1);
      expect(plan.waiting).toEqual([]);
    },
  );

  it.each(DIALECTS)('tells its story in the terms of the reader, in short sentences: %s', (dialect) => {
    for (const { flow } of practised) {
      const story = flow.inTerms(dialect).book.exercises.get(flow.file.id)?.story ?? '';
      expect(story).toMatch(/[.?]$/);
      expect(story).not.toMatch(/\[|\]/);
      expect(story.split(/(?<=[.?])\s+/).filter((one) => one.split(' ').length > 20)).toEqual([]);
    }
  });

  it.each(LENGTH_UNITS)('in checking a copied pattern has one wrong figure, in %s as well', (unit) => {
    const found = practised.find(({ flow }) => flow.file.id === 'checking');
    if (found === undefined) throw new Error('checking is practised');
    const { plan } = workedExercise(found.flow, found.exercise, unit);
    const contradictions = plan.steps.flatMap((s) => s.instead).filter((i) => i.do === 'note contradiction');
    expect(contradictions).toHaveLength(1);
    const text = outcomeText({ kind: 'plan', plan }, { dialect: 'us', workings: false });
    expect(text).toContain('Any one of these would agree: cross back stitches 88;');
  });
});

const CALCULATIONS: Calculations = {
  results: { sum: () => ({ kind: 'cannot', unit: 'cm', because: [], instead: [], workings: [] }) },
  suggestions: { guess: () => [] },
};

/** Faults of these practice files beside a sound flow, which always asks the colour and sometimes the width. */
function faultsOf(...texts: readonly string[]): string[] {
  const sound = readFileSync(join(import.meta.dirname, '../faults/sound.yaml'), 'utf8');
  const files = texts.map((text, i) => ({ file: `practice-${i + 1}.yaml`, text }));
  try {
    loadBook([{ file: 'sound.yaml', text: sound }, ...files], CALCULATIONS);
    return [];
  } catch (error) {
    if (!(error instanceof FlowFaults)) throw error;
    return error.faults.map((f) => `${f.file}:${f.line} ${f.code}: ${f.message}`);
  }
}

describe('a practice file', () => {
  const SOUND =
    'practice: one\nknitter: She knits.\nexercises:\n  socks:\n    story: Red ones.\n    answers:\n      colour: red\n';

  it('that is sound is taken', () => {
    expect(faultsOf(SOUND)).toEqual([]);
  });

  it('is told which question it leaves open, and which is never asked', () => {
    expect(faultsOf(SOUND.replace('colour: red', 'gauge: 5'))).toEqual([
      "practice-1.yaml:4 answer missing: 'socks' always asks 'colour', and nothing answers it",
      "practice-1.yaml:7 answer to nothing: no flow practised here asks 'gauge'",
    ]);
  });

  it('need not answer what is not always asked, and may answer for all its exercises at once', () => {
    const shared =
      'practice: one\nknitter: She knits.\nanswers:\n  colour: red\n  width: { cm: 10 cm, in: 4 in }\n';
    expect(faultsOf(`${shared}exercises:\n  socks:\n    story: Red ones.\n`)).toEqual([]);
    expect(faultsOf(`${shared}  length: 5\nexercises:\n  socks:\n    story: Red ones.\n`)).toEqual([
      "practice-1.yaml:6 answer to nothing: no flow practised here asks 'length'",
    ]);
  });

  it('is told of a flow that is not there, and of a second exercise for one', () => {
    expect(faultsOf(SOUND.replace('socks', 'hats'))).toEqual([
      "practice-1.yaml:4 unknown flow: no flow is called 'hats'",
    ]);
    expect(faultsOf(SOUND, SOUND)).toEqual([
      "practice-2.yaml:4 two of one id: there are two exercises for the flow 'socks'",
    ]);
  });
});
