/** What a plan says of the body beside its rows, at 20 stitches and 28 rows to 10 cm. */
import { describe, expect, it } from 'vitest';
import { type BodyItem, layInBody, type ToLay } from '../../src/fit/body-lay.ts';
import { type BodyAsk, type BodyShaping, shapeBody } from '../../src/fit/body-shaping.ts';
import { bodyPart, bodySteps } from '../../src/fit/body-steps.ts';
import { phrase, type Step } from '../../src/fit/plan.ts';
import { plain, step } from '../../src/fit/steps.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** 40 cm: 14 rounds of edging, and 98 in which 200 stitches become 220. */
const ASK: BodyAsk = {
  gauge: over10cm(20, 28, 'round'),
  direction: 'up',
  edge: 0,
  pattern: { hem: stitches(200), bust: stitches(220), length: cm(35), edging: cm(5) },
  length: cm(40),
  waist: null,
  hip: null,
};
const STRAIGHT: BodyAsk = { ...ASK, pattern: { ...ASK.pattern, hem: stitches(220) } };
const FLAT: BodyAsk = {
  ...ASK,
  gauge: over10cm(20, 28, 'flat'),
  pattern: { ...ASK.pattern, hem: stitches(100), bust: stitches(110) },
};

function drawn(ask: BodyAsk): BodyShaping {
  const body = shapeBody(ask);
  if (body.kind !== 'body') throw new Error(body.why);
  return body;
}

const stepsOf = (ask: BodyAsk, items?: (body: BodyShaping) => readonly BodyItem[]): readonly Step[] => {
  const body = drawn(ask);
  const told = { body, waist: null, piece: 'body', alike: true } as const;
  return items === undefined ? bodyPart(body, null).steps : bodySteps(told, items(body));
};

/** Short rows that take one round of those beside them. */
const shortRows = (after: number): ToLay => ({
  after: rows(after),
  on: (needle) => ({
    steps: [step('body', phrase('where: bust dart'), { instead: [plain(1, needle, ASK.gauge)] })],
    finished: [],
    pieces: [],
  }),
});

const where = (steps: readonly Step[]) => steps.map((one) => one.where.say);
const done = (one: Step | undefined) =>
  one?.instead.map((what) => {
    if (what.do === 'say') return what.phrase.say;
    return what.do === 'work plain' ? `${what.rows} plain on ${what.stitches}` : what.do;
  });

describe('a straight body', () => {
  const lasts = (length: number) => {
    const [, section] = stepsOf({ ...STRAIGHT, length: cm(length) });
    const [said] = section?.instead.flatMap((one) => (one.do === 'say' ? [one.phrase] : [])) ?? [];
    return [said?.say, said?.with.rows];
  };

  it('says how many rows more or fewer than the pattern it has', () => {
    // 35 cm are 98 rounds, 40 cm 112, 30 cm 84.
    expect(lasts(40)).toEqual(['do: more rows than the pattern', expect.objectContaining({ value: 14 })]);
    expect(lasts(30)).toEqual(['do: fewer rows than the pattern', expect.objectContaining({ value: 14 })]);
    expect(lasts(35)).toEqual(['do: as many rows as the pattern', expect.objectContaining({ value: 0 })]);
  });

  it('names the difference by what it is', () => {
    const labels = (length: number) => told(stepsOf({ ...STRAIGHT, length: cm(length) })[1]?.workings ?? []);
    expect(labels(40)).toContain('rows more than the pattern: a - b = 14 rows');
    expect(labels(30)).toContain('rows fewer than the pattern: a - b = 14 rows');
    expect(labels(35)).toContain('rows more than the pattern: a - b = 0 rows');
  });

  it('says so after the last of its rows alone where short rows divide it', () => {
    const steps = stepsOf(STRAIGHT, (body) => layInBody(body, [shortRows(14 + 50)]));
    expect(where(steps)).toEqual([
      'where: cast-on and hem',
      'where: hem to underarm',
      'where: bust dart',
      'where: on from the short rows',
    ]);
    expect(done(steps[1])).toEqual(['50 plain on 220']);
    expect(done(steps[3])).toEqual(['47 plain on 220', 'do: more rows than the pattern']);
    // The pattern's own words stand where the section begins, and the whole length is checked at its end.
    expect(steps.map((one) => one.pattern?.say ?? null)).toEqual([
      'pattern: cast on',
      'pattern: straight for a length',
      null,
      null,
    ]);
    expect(steps[1]?.check?.say).toBe('check: length so far');
    expect(steps[3]?.check?.say).toBe('check: length in all');
  });
});

describe('a shaped body', () => {
  it('is told as shaped on both sides of short rows, though one of them be straight', () => {
    // Above round 90 of the 98 none widens.
    const steps = stepsOf(ASK, (body) => layInBody(body, [shortRows(14 + 90)]));
    expect(where(steps)[1]).toBe('where: hem to underarm');
    expect(done(steps[1])).toContain('shape');
    expect(done(steps[1])?.filter((one) => one.includes('plain on'))).toEqual([]);
    expect(steps[1]?.pattern?.say).toBe('pattern: from a count to a count');
    expect(done(steps[3])).toEqual(['7 plain on 220']);
    expect(steps[3]?.notes).toEqual([]);
    expect(told(steps[3]?.workings ?? [])).toContain(
      "the pattern's change from hem to underarm: a - b = 20 stitches",
    );
  });

  it('begins on the stitches that are there where it is knitted down, whatever comes first', () => {
    const down = stepsOf({ ...ASK, direction: 'down' });
    expect(done(down[0])?.[0]).toBe('begin with');
    expect(down[0]?.instead[0]).toEqual({ do: 'begin with', stitches: 220 });
    expect(down.slice(1).flatMap((one) => done(one) ?? [])).not.toContain('begin with');
    const first = stepsOf({ ...ASK, direction: 'down' }, (body) => layInBody(body, [shortRows(0)]));
    expect(where(first)[0]).toBe('where: bust dart');
    expect(first[0]?.instead[0]).toEqual({ do: 'begin with', stitches: 220 });
    expect(stepsOf(ASK).flatMap((one) => done(one) ?? [])).not.toContain('begin with');
  });

  it('names its sections from below, or from above', () => {
    const waist = { around: cm(90), belowUnderarm: cm(20) };
    expect(where(stepsOf({ ...ASK, waist }))).toEqual([
      'where: cast-on and hem',
      'where: hem to waist',
      'where: at the waist',
      'where: waist to underarm',
    ]);
    expect(where(stepsOf({ ...ASK, waist, direction: 'down' }))).toEqual([
      'where: underarm to waist',
      'where: at the waist',
      'where: waist to hem',
      'where: last edging',
    ]);
  });

  it('shows how its waist was counted, and how it was wanted where that is known', () => {
    const waist = { around: cm(90), belowUnderarm: cm(20) };
    const body = drawn({ ...ASK, waist });
    const [, , plainWaist] = bodyPart(body, null).steps;
    // 90 cm at 2 to the centimetre are 180 stitches.
    expect(told(plainWaist?.workings ?? []).slice(0, 2)).toEqual([
      'stitches at the waist: a * b = 180 stitches',
      'width at the waist: a / b = 90 cm',
    ]);
    const eased = workOut('waist wanted', 'a', { a: quantity('waist', 90, 'cm') }, { unit: 'cm' });
    expect(bodyPart(body, eased).steps[2]?.workings[0]).toEqual(eased);
    const flat = bodyPart(drawn({ ...FLAT, waist }), eased).steps[2];
    expect(told(flat?.workings ?? []).slice(0, 2)).toEqual([
      'waist wanted: a = 90 cm',
      'width of one piece: a / 2 = 45 cm',
    ]);
    expect(flat?.check?.say).toBe('check: width of both');
  });
});

describe('the pieces of a body', () => {
  it('are the body in the round, and a back whose front is alike where it is flat', () => {
    const [round, flat] = [bodyPart(drawn(ASK), null), bodyPart(drawn(FLAT), null)];
    expect(new Set(round.steps.map((one) => one.piece))).toEqual(new Set(['body']));
    expect(new Set(flat.steps.map((one) => one.piece))).toEqual(new Set(['back']));
    const alike = (steps: readonly Step[]) => steps.flatMap((one) => one.notes.map(({ say }) => say));
    expect(alike(flat.steps)).toContain('note: pieces alike');
    expect(alike(round.steps)).not.toContain('note: pieces alike');
  });
});

describe('short rows that cannot lie in the body', () => {
  const cannot = (item: Partial<Extract<BodyItem, { kind: 'cannot lie' }>>, name: 'edging' | 'plain') => {
    const steps = stepsOf(ASK, ({ sections }) =>
      sections.flatMap((section): BodyItem[] =>
        section.name === name ? [{ kind: 'cannot lie', part: null, section, ...item }] : [],
      ),
    );
    return steps.map((one) => [one.where.say, ...one.notes.map(({ say }) => say)]);
  };

  it('are told why: in the edging, or because every row shapes there', () => {
    expect(cannot({}, 'edging')).toEqual([
      [
        'where: short rows that cannot lie here',
        'cannot: short rows in the edging',
        'instead: another place for the short rows',
      ],
    ]);
    expect(cannot({}, 'plain')).toEqual([
      [
        'where: short rows that cannot lie here',
        'cannot: rows all shape',
        'instead: another place for the short rows',
      ],
    ]);
  });

  it('are told what stands in their own way, with its workings', () => {
    const line = workOut('short rows', 'a', { a: quantity('rows', 14, 'rows') }, { unit: 'rows' });
    const part = {
      kind: 'cannot' as const,
      because: [phrase('cannot: armhole edge too short')],
      instead: [phrase('instead: change the figures')],
      workings: [line],
    };
    expect(cannot({ part }, 'plain')).toEqual([
      [
        'where: short rows that cannot lie here',
        'cannot: armhole edge too short',
        'instead: change the figures',
      ],
    ]);
    const [one] = stepsOf(ASK, ({ sections: [, section] }) =>
      section === undefined ? [] : [{ kind: 'cannot lie', part, section }],
    );
    expect(one).toMatchObject({ worked: 'round', workings: [line] });
  });
});
