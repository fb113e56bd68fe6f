import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Calculations } from '../../src/flow/calculations.ts';
import { FAULT_CODES, FlowFaults } from '../../src/flow/fault.ts';
import { loadBook } from '../../src/flow/load.ts';

const FOLDER = join(import.meta.dirname, '../faults');
const CALCULATIONS: Calculations = {
  results: { sum: () => ({ kind: 'cannot', unit: 'cm', because: [], instead: [], workings: [] }) },
  suggestions: { guess: () => [] },
};
const names = readdirSync(FOLDER)
  .filter((f) => f.endsWith('.yaml') && f !== 'sound.yaml')
  .map((f) => f.replace('.yaml', ''));

function faultsOf(texts: readonly { file: string; text: string }[]): FlowFaults {
  try {
    loadBook(texts, CALCULATIONS);
  } catch (error) {
    if (error instanceof FlowFaults) return error;
    throw error;
  }
  throw new Error('no fault was found');
}

const read = (name: string) => ({
  file: `${name}.yaml`,
  text: readFileSync(join(FOLDER, `${name}.yaml`), 'utf8'),
});

describe('faults in a flow file', () => {
  it('takes a sound file', () => {
    expect(loadBook([read('sound')], CALCULATIONS).flows.has('socks')).toBe(true);
  });

  it.each(names)('%s: tells code, place and pointer, as written beside it', (name) => {
    const message = `${faultsOf([read(name)]).message}\n`;
    const beside = join(FOLDER, `${name}.txt`);
    expect(message).toBe(readFileSync(beside, 'utf8'));
  });

  it('reports all faults of all files together', () => {
    const both = faultsOf([
      read('several-at-once'),
      { ...read('unknown-choice'), text: read('unknown-choice').text.replace('id: socks', 'id: hats') },
    ]);
    expect(both.faults.map((f) => f.code)).toEqual(
      expect.arrayContaining(['unknown question', 'unknown calculation', 'unknown choice', 'two of one id']),
    );
  });

  it('explains every code, and every code has a broken file or a test of its own', () => {
    const seen = new Set(names.flatMap((name) => faultsOf([read(name)]).faults.map((f) => f.code)));
    const elsewhere = ['two of one id', 'answer missing', 'answer to nothing'];
    expect([...seen, ...elsewhere].sort()).toEqual(Object.keys(FAULT_CODES).sort());
  });
});
