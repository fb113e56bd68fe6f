import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Body, checkMeasurement, type Verdict } from '../../src/fit/body.ts';
import { possibleRange, usualRange } from '../../src/fit/bounds.ts';
import { cm, inches, type LengthUnit } from '../../src/fit/units.ts';
import { MEASUREMENTS, type Measurement, TABLES, type Table } from '../../src/fit/words.ts';

type Known = Partial<Record<Measurement, number>>;

function check(of: Measurement, value: number, unit: LengthUnit, known: Known = {}, table: Table = 'women') {
  const body = { table, known: Object.fromEntries(Object.entries(known).map(([m, v]) => [m, cm(v)])) };
  return checkMeasurement(of, { value, unit }, body);
}

describe('a measurement typed in the wrong unit', () => {
  it.each([
    ['bust', 38, 'cm', 'in', 96.52],
    ['bust', 96, 'in', 'cm', 96],
    ['upper arm', 12, 'cm', 'in', 30.48],
    ['wrist', 7, 'cm', 'in', 17.78],
    ['wrist', 16, 'in', 'cm', 16],
    ['cross back', 38, 'in', 'cm', 38],
    ['armhole depth', 8, 'cm', 'in', 20.32],
    ['height', 65, 'cm', 'in', 165.1],
    ['arm length', 17, 'cm', 'in', 43.18],
  ] as const)('%s %d typed as %s is offered as %s', (of, value, unit, as, meant) => {
    const verdict = check(of, value, unit);
    expect(verdict).toMatchObject({ kind: 'wrong unit', as });
    if (verdict.kind === 'wrong unit') expect(verdict.meant).toBeCloseTo(meant, 9);
  });

  it("is seen in a child's and a baby's figures too", () => {
    expect(check('bust', 24, 'cm', {}, 'children')).toMatchObject({ kind: 'wrong unit', as: 'in' });
    expect(check('upper arm', 6, 'cm', {}, 'babies')).toMatchObject({ kind: 'wrong unit', as: 'in' });
  });

  it('is seen by what is known of the rest of the body', () => {
    // 60 in round the waist is a figure met with; beside a bust of 85 cm, 60 cm is the likely one.
    expect(check('waist', 60, 'in').kind).toBe('fine');
    expect(check('waist', 60, 'in', { bust: 85 })).toMatchObject({ kind: 'wrong unit', as: 'cm', meant: 60 });
  });

  it('still says what the figure is as typed', () => {
    expect(check('bust', 38, 'cm')).toMatchObject({ asTyped: { kind: 'improbable' } });
    expect(check('upper arm', 8, 'cm', {}, 'men')).toMatchObject({ kind: 'impossible' });
    expect(check('height', 65, 'cm')).toMatchObject({ asTyped: { kind: 'impossible' } });
  });
});

describe('an impossible measurement', () => {
  it.each([0, -96, 5, 1000])('is refused with the bounds: a bust of %d cm', (value) => {
    const verdict = check('bust', value, 'cm');
    expect(verdict.kind).toBe('impossible');
    if (verdict.kind === 'impossible') expect([verdict.low, verdict.high]).toEqual([34.75, 360]);
  });

  it('lies below half the smallest or above twice the largest figure published, for every table', () => {
    for (const table of TABLES)
      for (const of of MEASUREMENTS) {
        const usual = usualRange(of, table);
        expect(usual.low).toBeGreaterThan(0);
        expect(usual.high).toBeGreaterThan(usual.low);
        expect(possibleRange(of, table)).toEqual({ low: usual.low / 2, high: usual.high * 2 });
      }
  });
});

describe('an improbable measurement', () => {
  it('is asked again by itself', () => {
    expect(check('wrist', 19.5, 'cm')).toMatchObject({ kind: 'improbable', because: { of: 'itself' } });
  });

  it.each([
    ['waist', 125, { bust: 88 }, 'bust'],
    ['upper arm', 40, { bust: 90 }, 'bust'],
    ['upper arm', 21, { bust: 110 }, 'bust'],
    ['hip', 135, { bust: 90 }, 'bust'],
    ['wrist', 18, { 'upper arm': 24 }, 'upper arm'],
    ['arm length', 55, { height: 165 }, 'height'],
    ['back length', 52, { height: 150 }, 'height'],
    ['upper bust', 70, { bust: 110 }, 'bust'],
    ['bust span', 30, { bust: 96 }, 'bust'],
    ['front length', 65, { 'back length': 42 }, 'back length'],
    ['upper arm', 22, { waist: 150 }, 'waist'],
  ] as const)('is asked again beside another: %s %d with %o', (of, value, known, other) => {
    const verdict = check(of, value, 'cm', known);
    expect(verdict).toMatchObject({ kind: 'improbable', because: { of: 'another', beside: { other } } });
    if (verdict.kind === 'improbable') expect(verdict.usual.low).toBeLessThan(verdict.usual.high);
  });

  it('is asked again whichever of the two was typed last', () => {
    expect(check('upper arm', 40, 'cm', { bust: 90 }).kind).toBe('improbable');
    expect(check('bust', 90, 'cm', { 'upper arm': 40 }).kind).toBe('improbable');
  });

  it('is told from a body that was not surveyed: above the largest bust measured, arms are not questioned', () => {
    expect(check('upper arm', 53, 'cm', { bust: 140 }).kind).toBe('fine');
  });

  it("is asked again in a child's body", () => {
    expect(check('waist', 95, 'cm', { height: 110 }, 'children')).toMatchObject({
      because: { of: 'another', beside: { other: 'height' } },
    });
    expect(check('arm length', 15, 'cm', { bust: 70 }, 'children').kind).not.toBe('fine');
  });
});

describe('checking', () => {
  it('never asks again for a likely body', () => {
    const known: Known = {
      bust: 96.5,
      'upper bust': 91,
      waist: 80,
      hip: 102,
      'upper arm': 31,
      wrist: 16,
      neck: 37,
      head: 56,
      'cross back': 37,
      'bust span': 19,
      'armhole depth': 19,
      'back length': 42,
      'front length': 45,
      'arm length': 43,
      height: 165,
    };
    for (const of of MEASUREMENTS) expect(check(of, known[of] ?? 0, 'cm', known).kind).toBe('fine');
  });

  it('says the same of a figure in inches and in centimetres, but for the unit it offers', () => {
    const known = fc.record({ bust: fc.integer({ min: 70, max: 160 }) }, { requiredKeys: [] });
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASUREMENTS),
        fc.constantFrom(...TABLES),
        fc.integer({ min: 8, max: 1600 }),
        known,
        (of, table, eighths, k) => {
          const inInches = check(of, eighths / 8, 'in', k, table);
          const inCm = check(of, inches(eighths / 8), 'cm', k, table);
          expect(asTyped(inInches)).toBe(asTyped(inCm));
        },
      ),
    );
  });

  it('never refuses what lies between two figures that it takes', () => {
    const body: Body = { table: 'women', known: {} };
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASUREMENTS),
        fc.tuple(fc.double({ min: 1, max: 400, noNaN: true }), fc.double({ min: 1, max: 400, noNaN: true })),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (of, [a, b], share) => {
          const kind = (value: number) => asTyped(checkMeasurement(of, { value, unit: 'cm' }, body));
          if (kind(a) === 'impossible' || kind(b) === 'impossible') return;
          expect(kind(a + (b - a) * share)).not.toBe('impossible');
        },
      ),
    );
  });
});

/** The verdict on the figure as it was typed. */
function asTyped(verdict: Verdict): Verdict['kind'] {
  return verdict.kind === 'wrong unit' ? verdict.asTyped.kind : verdict.kind;
}
