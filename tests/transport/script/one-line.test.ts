import { describe, expect, it } from 'vitest';
import { loadFlows } from '../../../src/library.ts';
import { MOST_IN_ONE_LINE, optionNames } from '../../../src/transport/script/one-line.ts';
import { run } from './surroundings.ts';

const flows = loadFlows();
const namesOf = (id: string) => {
  const flow = flows.get(id);
  return flow === undefined ? [] : [...optionNames(flow, flows).values()];
};

describe('the options of a flow', () => {
  it('are its question ids without what stands before their first underline', () => {
    expect(namesOf('spacing')).toEqual(['from', 'to', 'rows', 'worked', 'plain']);
    expect(namesOf('stitches')).toEqual(['unit', 'stitches', 'width', 'multiple', 'edge']);
  });

  it('tell all questions of every flow apart', () => {
    for (const flow of flows.values()) {
      const names = [...optionNames(flow, flows).values()];
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('keep the whole id where the short one would be that of two', () => {
    const names = namesOf('whole');
    expect(names).toContain('body_made');
    expect(names).toContain('sleeve_made');
  });
});

describe('answers in one line', () => {
  it('give a plan', async () => {
    const { code, out } = await run(
      '--flow',
      'spacing',
      'from=50',
      'to=72',
      'rows=84',
      'worked=round',
      'plain=0',
    );
    expect(code).toBe(0);
    expect(out).toContain('You end with 72 stitches.');
  });

  it('spread ten stitches over a round', async () => {
    const { code, out } = await run('--flow', 'spread', 'stitches=84', 'change=+10', 'worked=round');
    expect(code).toBe(0);
    expect(out).toContain('You then have 94 stitches.');
  });

  it('give the plan as data', async () => {
    const { code, out } = await run(
      '--flow',
      'spread',
      'stitches=80',
      'change=-10',
      'by=k2tog',
      'worked=flat',
      '--json',
    );
    expect([code, JSON.parse(out).flow]).toEqual([0, 'spread']);
  });

  it('take whole ids, and values with signs, blanks and equals signs', async () => {
    const { code, out } = await run(
      '--flow',
      'stitches',
      'unit=in',
      'swatch_stitches=22 sts = 4"',
      'width=20 in',
      'multiple=4 + 2',
      'edge=2',
    );
    expect(code).toBe(0);
    expect(out).toContain('112 stitches: at your gauge they measure 20 in.');
  });

  it('do not ask for what something sound can stand in for, and name it as taken for granted', async () => {
    const { code, out } = await run('--flow', 'stitches', 'stitches=20/10cm', 'width=50 cm');
    expect(code).toBe(0);
    expect(out).toContain('100 stitches');
    expect(out).toContain('Taken for granted:');
  });

  it('leave open what nothing can stand in for', async () => {
    const { code, error } = await run('--flow', 'spacing', 'from=50');
    expect(code).toBe(3);
    expect(error.match(/^\w+ is open/gm)).toEqual(['to is open', 'rows is open']);
  });

  it('are refused like those from a file', async () => {
    const { code, error } = await run('--flow', 'spacing', 'from=some', 'to=-2', 'rows=84');
    expect(code).toBe(2);
    expect(error).toContain("from: 'some' was not taken.");
    expect(error).toContain("to: '-2' was not taken.");
  });

  it('confirm a reading by giving the option again', async () => {
    const line = 'line=dec 1 st at neck edge every 6th (8th, 6th) row 5 (2, 1) times';
    expect((await run('--flow', 'reading', line)).code).toBe(2);
    const { code, out } = await run('--flow', 'reading', line, 'line=2');
    expect(code).toBe(0);
    expect(out).toContain('Rows that shape: 8, 16.');
  });

  it.each([
    [
      ['spacing', 'from=50', 'colour=red'],
      "There is no option 'colour'. There are: from, to, rows, worked, plain.",
    ],
    [['spacing', '50'], "Expected name=value, not '50'."],
    [['whole', 'pattern=own'], `The flow 'whole' asks more than ${MOST_IN_ONE_LINE} questions`],
  ])('say what is wrong with the line itself: %j', async ([flow = '', ...options], text) => {
    const { code, error, out } = await run('--flow', flow, ...options);
    expect([code, out]).toEqual([1, '']);
    expect(error).toContain(text);
  });
});
