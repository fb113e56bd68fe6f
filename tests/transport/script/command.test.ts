import { describe, expect, it } from 'vitest';
import { parsePlan } from '../../../src/fit/plan-schema.ts';
import { answerFiles, run } from './surroundings.ts';

const written = answerFiles();

const SPACING = `
spacing_from: 50 sts
spacing_to: 72
spacing_rows: 84
spacing_worked: back and forth, at both edges
spacing_plain: 0
`;

describe('answers from a file', () => {
  it('give a plan with its workings, and exit code 0', async () => {
    const { code, out, error } = await run('--flow', 'spacing', '--answers', written('plan.yaml', SPACING));
    expect([code, error]).toEqual([0, '']);
    expect(out).toContain('You end with 72 stitches.');
    expect(out).toContain('Workings (shown rounded');
  });

  it('give the same plan as data, which follows the published schema', async () => {
    const { code, out } = await run(
      '--flow',
      'spacing',
      '--answers',
      written('data.yaml', SPACING),
      '--json',
    );
    const plan = parsePlan(JSON.parse(out));
    expect([code, plan.flow]).toEqual([0, 'spacing']);
    const shape = plan.steps[0]?.instead.find((i) => i.do === 'shape');
    expect(shape?.do === 'shape' && shape.spaced.to).toBe(72);
  });

  it('may be JSON', async () => {
    const file = written(
      'plan.json',
      JSON.stringify({
        spacing_from: 50,
        spacing_to: 72,
        spacing_rows: 84,
        spacing_worked: 'flat',
        spacing_plain: 0,
      }),
    );
    expect((await run('--flow', 'spacing', '--answers', file)).code).toBe(0);
  });

  it('are all refused at once where they cannot be read, and exit code 2', async () => {
    const file = written('refused.yaml', `${SPACING.replace('72', 'many').replace('84', '-3')}`);
    const { code, out, error } = await run('--flow', 'spacing', '--answers', file);
    expect([code, out]).toEqual([2, '']);
    expect(error.split('\n').filter((line) => line !== '')).toEqual([
      expect.stringMatching(/^spacing_to: 'many' was not taken\. I found no number in that\..*72/),
      expect.stringMatching(/^spacing_rows: '-3' was not taken\. A minus does not fit here\..*84/),
    ]);
  });

  it('list all open questions where some are left out, and exit code 3', async () => {
    const { code, error } = await run(
      '--flow',
      'spacing',
      '--answers',
      written('open.yaml', 'spacing_from: 50\nspacing_worked: flat\n'),
    );
    expect(code).toBe(3);
    expect(error.match(/^\w+ is open/gm)).toEqual([
      'spacing_to is open',
      'spacing_rows is open',
      'spacing_plain is open',
    ]);
  });

  it('say why it cannot be planned, and exit code 4', async () => {
    const file = written(
      'cannot.yaml',
      'buttons_along: stitches\nbuttons_length: 20\nbuttons_number: 7\nbuttons_ends: 4\nbuttons_hole: 2\n',
    );
    const { code, out } = await run('--flow', 'buttons', '--answers', file);
    expect(code).toBe(4);
    expect(out).toContain('This cannot be planned.');
    expect(out).toContain('What you can do: At most 4 go in.');
    const data = await run('--flow', 'buttons', '--answers', file, '--json');
    expect([data.code, JSON.parse(data.out)]).toMatchObject([4, { kind: 'cannot' }]);
  });

  it('may name no question that the flow does not ask', async () => {
    const { code, error } = await run(
      '--flow',
      'spacing',
      '--answers',
      written('stranger.yaml', `${SPACING}bust: 96 cm\n`),
    );
    expect(code).toBe(2);
    expect(error).toContain("bust: '96 cm' was not taken. The flow 'spacing' has no question of this id.");
    expect(error).toContain('spacing_from, spacing_to');
  });

  it('confirm a reading with a list', async () => {
    const typed =
      'unit: cm\nswatch_stitches: 22 sts over 10 cm\nstitches_width: 50 cm\nstitches_multiple: 1\n';
    const asked = await run(
      '--flow',
      'stitches',
      '--answers',
      written('doubt.yaml', `${typed}stitches_edge: 2 purple\n`),
    );
    expect(asked.code).toBe(2);
    expect(asked.error).toContain('answer with a list: what you typed, then "yes"');
    const confirmed = await run(
      '--flow',
      'stitches',
      '--answers',
      written('sure.yaml', `${typed}stitches_edge: [2 purple, yes]\n`),
    );
    expect(confirmed.code).toBe(0);
  });

  it('pick one of several readings with a list', async () => {
    const lines = 'reading_before: 30\nreading_after: 28\n';
    const line = 'dec 1 st at neck edge every 6th (8th, 6th) row 5 (2, 1) times';
    const open = await run(
      '--flow',
      'reading',
      '--answers',
      written('which.yaml', `${lines}reading_line: ${line}\n`),
    );
    expect(open.code).toBe(2);
    expect(open.error).toContain('answer with a list: what you typed, then "size 1 of 3:');
    const picked = await run(
      '--flow',
      'reading',
      '--answers',
      written('picked.yaml', `${lines}reading_line:\n  - ${line}\n  - 2\n`),
    );
    expect(picked.code).toBe(0);
    expect(picked.out).toContain('8 (29), 16 (28)');
  });

  it('keep pictures and sheets where they are asked for, of a plan alone', async () => {
    const file = written('kept.yaml', SPACING);
    const { kept, error } = await run('--flow', 'spacing', '--answers', file, '--picture', 'p.png');
    expect(kept.map((k) => k.files)).toEqual([
      { picture: 'p.png', sheet: undefined, paper: null, type: null, terms: 'us' },
    ]);
    expect(error).toBe('Written: p.png\n');
    const refused = written('not-kept.yaml', SPACING.replace('72', 'many'));
    expect((await run('--flow', 'spacing', '--answers', refused, '--picture', 'p.png')).kept).toEqual([]);
  });
});

describe('the answer key', () => {
  it('takes the place of the plan: the answers as they were understood, and every working by number', async () => {
    const typed = SPACING.replace('spacing_plain: 0', "spacing_plain: I don't know");
    const { code, out } = await run('--flow', 'spacing', '--answers', written('key.yaml', typed), '--key');
    expect(code).toBe(0);
    expect(out).toContain('It starts from:\n- Stitches now: 50 stitches\n- Stitches wanted: 72 stitches\n');
    expect(out).toContain('- Plain rows at each end: not known; 0 rows is used (assumed)\n');
    expect(out).toContain('\n\nStep 1. ');
    expect(out).toContain(
      '\n(1) stitches to gain = 72 stitches (stitches at the end) − 50 stitches (stitches at the start) = 22 stitches\n',
    );
    expect(out).not.toContain('You:');
  });

  it('stands on the sheet too, with the answers before the workings', async () => {
    const file = written('key-sheet.yaml', SPACING);
    const { kept } = await run('--flow', 'spacing', '--answers', file, '--key', '--sheet', 'key.pdf');
    expect(kept.map((k) => k.files)).toMatchObject([
      {
        sheet: 'key.pdf',
        from: [{ label: 'Stitches now', shown: '50 stitches', assumed: false }, {}, {}, {}, {}],
      },
    ]);
  });

  it('is not asked for together with data', async () => {
    const { code, error } = await run('--flow', 'spacing', '--answers', 'x.yaml', '--key', '--json');
    expect([code, error]).toEqual([1, 'Take --json or --key: the data hold every working already.\n']);
  });
});

describe('a sheet', () => {
  it('is printed in large type and on the paper that is asked for', async () => {
    const file = written('printed.yaml', SPACING);
    const asked = ['--sheet', 'p.pdf', '--paper', 'letter', '--type', 'large'];
    const { kept } = await run('--flow', 'spacing', '--answers', file, ...asked);
    expect(kept.map((k) => k.files)).toEqual([
      { picture: undefined, sheet: 'p.pdf', paper: 'Letter', type: 'large', terms: 'us' },
    ]);
  });

  it('to fill in by hand is kept by its name, without any answers', async () => {
    const { code, out, error, blanks } = await run('--blank', 'waist', '--sheet', 'w.pdf', '--unit', 'in');
    expect([code, out, error]).toEqual([0, '', 'Written: w.pdf\n']);
    expect(blanks).toEqual([
      { blank: 'waist', file: 'w.pdf', unit: 'in', paper: null, type: null, terms: 'us' },
    ]);
  });

  it('is worded in the terms that are asked for', async () => {
    const { blanks } = await run('--blank', 'waist', '--sheet', 'w.pdf', '--terms', 'uk');
    expect(blanks).toMatchObject([{ terms: 'uk' }]);
  });

  it.each([
    [['--blank', 'hem', '--sheet', 'h.pdf'], "--blank is 'hem', but it can only be measuring, rows, "],
    [['--blank', 'waist'], 'A blank sheet goes into a file: --blank waist --sheet waist.pdf'],
    [
      ['--blank', 'waist', '--sheet', 'w.pdf', '--paper', 'A3'],
      "--paper is 'A3', but it can only be A4, Letter.",
    ],
    [
      ['--blank', 'waist', '--sheet', 'w.pdf', '--type', 'big'],
      "--type is 'big', but it can only be normal, large.",
    ],
    [
      ['--blank', 'waist', '--sheet', 'w.pdf', '--terms', 'au'],
      "--terms is 'au', but it can only be us, uk.",
    ],
    [['--blank', 'waist', '--sheet', 'w.pdf', '--unit', 'ft'], "--unit is 'ft', but it can only be cm, in."],
  ])('is told what cannot be printed: %j', async (args, says) => {
    const { code, error, blanks } = await run(...args);
    expect([code, blanks]).toEqual([1, []]);
    expect(error).toContain(says);
  });
});

describe('words that are obeyed in an interview', () => {
  it.each(['back', 'start over', 'cancel', 'pause', 'review', 'help', 'inches', 'another chapter'])(
    'are no answer in a file: %s',
    async (word) => {
      const file = written('obeyed.yaml', SPACING.replace('72', word));
      const { code, error } = await run('--flow', 'spacing', '--answers', file);
      expect(code).toBe(2);
      expect(error).toContain(`spacing_to: '${word}' was not taken.`);
    },
  );
});

describe('UK terms', () => {
  it('word the interviews, the questions and the files of a plan, where they are asked for', async () => {
    const flow = ['--flow', 'swatch', '--questions', '--terms'];
    expect((await run(...flow, 'us')).out).toContain('Every stitch count waits for your gauge.');
    expect((await run(...flow, 'uk')).out).toContain('Every stitch count waits for your tension.');
    expect((await run('--flows', '--terms', 'uk')).out).toContain('Is my tension right?');
    const spread = ['--flow', 'spread', 'stitches=84', 'change=+10', 'worked=flat', '--sheet', 's.pdf'];
    expect((await run(...spread, '--terms', 'uk')).kept).toMatchObject([{ files: { terms: 'uk' } }]);
  });
});

describe('several interviews in one file', () => {
  it('are documents of YAML: one line of data for each, and the gravest exit code', async () => {
    const file = written(
      'several.yaml',
      `${SPACING}---${SPACING.replace('72', 'many')}---\nspacing_from: 50\n`,
    );
    const { code, out } = await run('--flow', 'spacing', '--answers', file);
    const lines = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(code).toBe(2);
    expect(lines).toMatchObject([{ schema: 'easewright plan' }, { result: 'refused' }, { result: 'open' }]);
  });

  it('or lines of JSON', async () => {
    const answers = (to: number) =>
      JSON.stringify({
        spacing_from: 50,
        spacing_to: to,
        spacing_rows: 84,
        spacing_worked: 'flat',
        spacing_plain: 0,
      });
    const file = written('lines.jsonl', `${answers(72)}\n${answers(60)}\n`);
    const { code, out } = await run('--flow', 'spacing', '--answers', file);
    const plans = out
      .trim()
      .split('\n')
      .map((line) => parsePlan(JSON.parse(line)));
    expect(code).toBe(0);
    expect(
      plans.map(({ steps }) => steps[0]?.instead.flatMap((i) => (i.do === 'shape' ? [i.spaced.to] : []))),
    ).toEqual([[72], [60]]);
  });

  it('end with code 3 where one is open, and with 4 where one cannot be planned', async () => {
    const buttons = (number: string) =>
      `buttons_along: stitches\nbuttons_length: 20\nbuttons_number: ${number}\nbuttons_ends: 4\nbuttons_hole: 2\n`;
    const cannot = written('two.yaml', `${buttons('2')}---\n${buttons('9')}`);
    expect((await run('--flow', 'buttons', '--answers', cannot)).code).toBe(4);
    const open = written('two-open.yaml', `${buttons('9')}---\nbuttons_length: 20\n`);
    expect((await run('--flow', 'buttons', '--answers', open)).code).toBe(3);
  });
});

describe('a file that cannot be used: exit code 1', () => {
  it('is not there', async () => {
    const { code, error } = await run('--flow', 'spacing', '--answers', 'nowhere/none.yaml');
    expect(code).toBe(1);
    expect(error).toContain('ENOENT');
    expect(error).toContain('nowhere/none.yaml');
  });

  it.each([
    ['no YAML', 'a: [1, 2', /document 1: /],
    ['a list', '- 50\n- 72\n', /expected question ids with answers/],
    ['answers that hold answers', 'spacing_from: { a: 1 }\n', /expected question ids with answers/],
  ])('is %s', async (name, text, message) => {
    const { code, error, out } = await run(
      '--flow',
      'spacing',
      '--answers',
      written(`${name.replaceAll(' ', '-')}.yaml`, text),
    );
    expect([code, out]).toEqual([1, '']);
    expect(error).toMatch(message);
  });
});

describe('the command without answers', () => {
  it('lists the flows: id, title, wish', async () => {
    const { code, out } = await run('--flows');
    const lines = out
      .trim()
      .split('\n')
      .map((line) => line.split('\t'));
    expect(code).toBe(0);
    expect(lines.every((cells) => cells.length === 3)).toBe(true);
    expect(lines.map(([id]) => id)).toContain('spacing');
  });

  it('prints the questions of a flow as data', async () => {
    const { code, out } = await run('--flow', 'spacing', '--questions');
    expect(code).toBe(0);
    expect(JSON.parse(out)[0]).toMatchObject({ id: 'spacing_from', option: 'from', kind: 'stitches' });
  });

  it.each([
    [[], 'Use it like this:'],
    [['--flow', 'spacing'], 'Use it like this:'],
    [['--flow', 'nothing'], "There is no flow 'nothing'. There are: "],
    [['--flaw'], "Unknown option '--flaw'"],
  ])('says how it is used: %j', async (args, text) => {
    const { code, error } = await run(...args);
    expect(code).toBe(1);
    expect(error).toContain(text);
  });
});
