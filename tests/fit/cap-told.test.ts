/** What the step of a cap says beside its instructions, and what it says where there is no cap. */
import { describe, expect, it } from 'vitest';
import { type CannotCap, type Cap, type CapAlternative, cap } from '../../src/fit/cap.ts';
import { capOtherwise, capStep } from '../../src/fit/cap-steps.ts';
import type { ShapedCap } from '../../src/fit/shaped.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const GAUGE = over10cm(22, 30);

function capFor(front: number, back: number, ease = 0): Cap {
  const made = cap({
    upperArm: stitches(74),
    armhole: { front: cm(front), back: cm(back) },
    depth: cm(20),
    bindOff: stitches(6),
    gauge: GAUGE,
    ease: cm(ease),
  });
  if (made.kind !== 'cap') throw new Error(made.kind);
  return made;
}

/** The picture has no part in what is said. */
const PICTURE: ShapedCap = {
  shape: 'cap',
  gauge: { stitchesPerCm: perCm(2.2), rowsPerCm: perCm(3) },
  after: capFor(23.85, 23.85),
  before: null,
  armhole: {
    gauge: { stitchesPerCm: perCm(2.2), rowsPerCm: perCm(3) },
    front: { rows: rows(60), edge: cm(23.85), events: [] },
    back: { rows: rows(60), edge: cm(23.85), events: [] },
  },
};

/** The notes, each with its lengths in centimetres. */
function notes(made: Cap): string[] {
  return capStep(made, PICTURE).notes.map(({ say, with: gaps }) =>
    [
      say,
      ...Object.values(gaps).map((gap) => (typeof gap === 'string' ? gap : `${gap.value} ${gap.unit}`)),
    ].join(' / '),
  );
}

const MIDDLE = 'note: cap meets the shoulder seam at its middle';

describe('the step of a cap', () => {
  const made = capFor(23.85, 23.85);

  it('says by how much the cap is eased in or stretched where 3 mm or more are to be hidden', () => {
    expect(notes({ ...made, difference: cm(0.29) })).toEqual([MIDDLE]);
    expect(notes({ ...made, difference: cm(-0.29) })).toEqual([MIDDLE]);
    expect(notes({ ...made, difference: cm(0) })).toEqual([MIDDLE]);
    expect(notes({ ...made, difference: cm(0.3) })).toEqual(['note: cap eased in / 0.3 cm', MIDDLE]);
    expect(notes({ ...made, difference: cm(-0.3) })).toEqual(['note: cap stretched / 0.3 cm', MIDDLE]);
  });

  it('works out what is hidden, as a length', () => {
    const lines = told(capStep({ ...made, difference: cm(-0.3) }, PICTURE).workings);
    expect(lines).toContain('difference of the edges: a = 0.3 cm');
  });

  it('says where the shoulder seam meets it unless that is the middle, to 3 mm', () => {
    expect(notes({ ...made, shoulderFromCentre: cm(0.29), difference: cm(0) })).toEqual([MIDDLE]);
    expect(notes({ ...made, shoulderFromCentre: cm(0.3), difference: cm(0) })).toEqual([
      'note: cap meets the shoulder seam / 0.3 cm',
    ]);
  });

  it('ends with the stitches of the top, bound off', () => {
    expect(capStep(made, PICTURE).instead.at(-1)).toEqual({ do: 'bind off', stitches: 18 });
  });
});

describe('where there is no cap', () => {
  const alternatives: readonly CapAlternative[] = [];
  const cases: readonly [CannotCap, string, Readonly<Record<string, number>>][] = [
    [
      { kind: 'nothing left for a cap', left: 6, needed: stitches(8), alternatives },
      'cannot: nothing left for a cap',
      { left: 6, needed: 8 },
    ],
    [
      { kind: 'top of the wrong parity', top: stitches(17), alternatives },
      'cannot: top of the wrong parity',
      {},
    ],
    [
      { kind: 'armhole too shallow', rows: rows(6), alternatives },
      'cannot: armhole too shallow for a cap',
      { rows: 6 },
    ],
    [
      { kind: 'armhole edge too short', wanted: cm(35), shortest: cm(37), alternatives },
      'cannot: armhole edge too short',
      { wanted: 35, shortest: 37 },
    ],
    [
      { kind: 'armhole edge too long', wanted: cm(80), longest: cm(65), alternatives },
      'cannot: armhole edge too long',
      { wanted: 80, longest: 65 },
    ],
    [
      { kind: 'no whole rows agree', wanted: cm(23), nearest: cm(24), alternatives },
      'cannot: no whole rows agree',
      { wanted: 23, nearest: 24 },
    ],
  ];

  it.each(cases)('the plan says why, with its figures: %o', (found, because, figures) => {
    const said = capOtherwise(found, GAUGE, 0);
    if (!('kind' in said)) throw new Error('nothing can be planned of it');
    expect(said.because).toMatchObject([{ say: because }]);
    const gaps = Object.entries(said.because[0]?.with ?? {});
    expect(
      Object.fromEntries(gaps.map(([name, gap]) => [name, typeof gap === 'string' ? gap : gap.value])),
    ).toEqual(figures);
    expect(said.workings.map(({ result }) => result.value)).toEqual(Object.values(figures));
  });

  it('each way names its arm and top, the width of that arm, and by how much where that is asked', () => {
    const found = cap({
      upperArm: stitches(74),
      armhole: { front: cm(17.5), back: cm(17.5) },
      depth: cm(20),
      bindOff: stitches(6),
      gauge: GAUGE,
    });
    if (found.kind === 'cap') throw new Error('there is a cap');
    const part = capOtherwise(found, GAUGE, 2);
    if ('kind' in part) throw new Error('there are ways');
    const ways = part.steps[0]?.instead.flatMap((one) => (one.do === 'choose one' ? one.ways : [])) ?? [];
    expect(ways.map(({ name }) => name.say)).toEqual([
      'way: ease the cap in',
      'way: armhole deeper by',
      'way: narrower upper arm',
    ]);
    const [eased, , narrower] = ways;
    // (74 − 2) / 2.2 and (68 − 2) / 2.2 cm; 37.83 − 35 are eased in.
    expect(eased?.name.with).toMatchObject({
      upperArm: { value: 74, unit: 'stitches' },
      armWidth: { value: 72 / 2.2, unit: 'cm' },
      by: { value: expect.closeTo(2.834, 3), unit: 'cm' },
    });
    expect(narrower?.name.with).toMatchObject({ upperArm: { value: 68 }, armWidth: { value: 66 / 2.2 } });
    expect(narrower?.name.with).not.toHaveProperty('by');
    const lines = told(part.steps[0]?.workings ?? []);
    expect(lines).toContain('width at the upper arm: (a - c) / b = 30 cm');
    expect(lines.filter((line) => line.startsWith('by how much'))).toHaveLength(2);
  });
});
