/**
 * What people complain of in bots that interview them, collected from public bug reports: each turned round, where it
 * concerns what is said. What concerns a platform is held beside that platform's transport.
 */
import { describe, expect, it } from 'vitest';
import type { Reply } from '../../src/dialogue/message.ts';
import { show } from '../../src/dialogue/show.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { flows, start, Talk } from './talk.ts';
import { WHOLE } from './whole.ts';

const everyFlow = [...flows.values()].map((flow) => ({ id: flow.file.id, flow }));

/** The longest interview up to its review. */
const whole = () => start('whole').say(...WHOLE.map(([, typed]) => typed));

/** From the first question to the outcome, saying the same at each. */
function throughout(talk: Talk, each: (talk: Talk) => void): Talk {
  for (let i = 0; talk.at !== 'review'; i++) {
    if (i > talk.flow.stops.length) throw new Error(`${talk.flow.file.id} goes round in a circle`);
    each(talk);
  }
  return talk;
}

describe('an answer', () => {
  it('is a line to store as soon as it is given, not when a form is full', () => {
    const talk = start('body');
    for (const [i, typed] of ['cm', 'women', '96.5', '91'].entries()) {
      expect(talk.say(typed).session.log).toHaveLength(i + 1);
    }
  });

  it('is said back with its value, so that nobody wonders whether it was saved', () => {
    expect(start('body').say('cm', 'women', '96.5').text).toContain('96.5 cm (38 in)');
    expect(start('spread').say('80').text).toContain('80 stitches');
  });

  it('may be typed where a button stood, by its words or its number', () => {
    for (const typed of ['Back and forth', 'flat', '2', 'turned']) {
      expect(start('swatch').say('cm', typed).answer('swatch_made')).toMatchObject({ choice: 'flat' });
    }
  });

  it('with a decimal comma is that figure, and never ten times as much', () => {
    const talk = start('body').say('cm', 'women', '96,5', '91', '80', '102', '31,2');
    expect(talk.answer('bust')).toMatchObject({ cm: 96.5 });
    expect(talk.answer('upper_arm')).toMatchObject({ cm: 31.2 });
    expect(start('body').say('cm', 'babies', '45', '3,2').text).not.toContain('32 cm');
  });

  it('that is badly typed spoils none of the others', () => {
    const talk = start('body').say('cm', 'women', '96.5', 'about so wide');
    expect(talk.answer('bust')).toMatchObject({ cm: 96.5 });
    expect(talk.session.log).toHaveLength(3);
    expect(talk.say('91').at).toBe('waist');
  });

  it('that is badly typed is told what was expected, with an example that would be taken', () => {
    for (const [id, lines] of [
      ['body', ['cm', 'women']],
      ['sleeve', ['in', 'flat']],
      ['size', ['cm', 'own', 'flat', 'skip']],
      ['reading', []],
      ['buttons', ['rows']],
    ] as const) {
      const talk = start(id).say(...lines);
      const { at } = talk;
      const refusal = talk.say('£$%').replies[0];
      if (refusal?.reply !== 'say') throw new Error('something is said');
      expect(refusal.tone).toBe('refused');
      const example = /For example: (.+)$/.exec(refusal.text)?.[1] ?? '';
      expect(talk.at).toBe(at);
      expect(talk.say(example).answer(at)).toMatchObject({ kind: expect.any(String) });
    }
  });

  it('always has its unit beside it, in the unit of the reader', () => {
    const talk = start('measure').say('in', 'women', 'wrist', '16.5 cm', 'review');
    expect(JSON.stringify(talk.replies.at(-1))).toContain('"shown":"6.5 in"');
  });

  it('twice given, by a double tap, is one', () => {
    const press = { text: "Women's", to: 'table' };
    const talk = start('body').say('cm', press, press);
    expect(talk.session.log).toHaveLength(2);
    expect(talk.at).toBe('bust');
    expect(talk.text).toContain('answered already');
  });

  it('can be put right at once and at any later time', () => {
    const talk = start('body').say('cm', 'women', '96.5', 'back', '98');
    expect(talk.answer('bust')).toMatchObject({ cm: 98 });
    expect(talk.say('91', '80', 'change bust', '97').answer('bust')).toMatchObject({ cm: 97 });
    expect(talk.at).toBe('hip');
  });

  it('that is changed opens what hangs on it, names that, and leaves the rest', () => {
    const talk = whole().say('change finished bust', '36 in');
    expect(talk.text).toContain('That changes what fits, so I ask again: Size to follow.');
    expect(talk.at).toBe('size');
    talk.say('1');
    expect(talk.text).toContain('size 1\nThese figures were of the size before, so I ask again: ');
    expect(talk.at).toBe('p_wrist');
    for (const [question] of WHOLE)
      if (!question.startsWith('p_')) expect(talk.answer(question)).toBeDefined();
  });

  it('that is changed from the finished plan leads through no other question', () => {
    const talk = whole().say('yes', 'change hem depth');
    expect(talk.at).toBe('p_hem');
    expect(talk.say('3').at).toBe('review');
    expect(talk.say('yes').at).toBe('outcome');
  });
});

describe('a question', () => {
  it.each(everyFlow)('of $id is asked once, whatever was said to the others', ({ flow }) => {
    for (const said of ["I don't know", 'skip']) {
      const asked: string[] = [];
      throughout(new Talk(flow), (talk) => {
        asked.push(talk.at);
        talk.say(said);
      });
      expect(new Set(asked).size).toBe(asked.length);
    }
  });

  it.each(everyFlow)('of $id can be passed, put off, asked why, and left', ({ flow }) => {
    throughout(new Talk(flow), (talk) => {
      const { at, session } = talk;
      expect(talk.say('why').replies[0]).toMatchObject({ tone: 'explain' });
      expect(talk.at).toBe(at);
      expect(talk.say('pause').replies).toMatchObject([{ reply: 'rest' }]);
      expect(talk.say('how').at).toBe(at);
      const ask = talk.replies.at(-1);
      if (ask?.reply !== 'ask') throw new Error('a question is asked');
      expect(ask.help.map(({ send }) => send)).toEqual(
        expect.arrayContaining(['why', 'how', "I don't know", 'pause']),
      );
      expect(talk.session.log).toEqual(session.log);
      expect(talk.say('later').answer(at)).toBe('skipped');
    });
  });

  it('is not asked where its answer was typed along with another', () => {
    const talk = start('swatch').say('cm', 'round', 'yes', '22 sts and 30 rows over 10 cm', 'skip');
    expect(talk.at).toBe('swatch_rows_2');
  });

  it('can be had again with its buttons whenever the screen has lost it', () => {
    const talk = start('swatch').say('cm');
    expect(show(talk.flow, talk.session)).toEqual([talk.replies.at(-1)]);
    expect(talk.say('help').replies.at(-1)).toEqual(show(talk.flow, talk.session)[0]);
  });

  it('waits as long as a swatch takes to dry: no answer comes too late', () => {
    let now = 0;
    const talk = new Talk(start('swatch').flow, () => now).say('cm', 'flat');
    now = 365 * 24 * 3600 * 1000;
    expect(talk.say('yes').at).toBe('swatch_stitches');
  });

  it('from whose list nothing is wanted takes "none" for an answer', () => {
    const talk = start('whole');
    for (const [id, typed] of WHOLE) {
      if (id === 'wishes') break;
      talk.say(typed);
    }
    expect(talk.say('none').answer('wishes')).toEqual({ kind: 'choices', choices: [] });
    expect(talk.at).toBe('review');
  });

  it('with a long list takes what is typed, button or not', () => {
    for (const typed of ['upper arm', 'biceps', '5']) {
      expect(start('measure').say('cm', 'women', typed).at).toBe('upper_arm');
    }
  });

  it('that is old answers nothing, and says in words what became of it', () => {
    const talk = start('body').say('cm', 'women', { text: 'Inches', to: 'unit' });
    expect(talk.text).toContain('That was answered already: Unit, Centimetres');
    expect(talk.answer('unit')).toMatchObject({ choice: 'cm' });
    expect(talk.say({ text: 'Start', to: 'no such question' }).text).toContain('no longer open');
  });

  it('about units is asked once, and either unit is taken from then on', () => {
    const talk = start('body').say('cm', 'women', '38 in', '91 cm', '31½"');
    expect(talk.answer('waist')).toMatchObject({ cm: 31.5 * 2.54 });
    expect(talk.session.log.filter((l) => l.line === 'answer' && l.question === 'unit')).toHaveLength(1);
  });
});

describe('what is not known or left out', () => {
  it('is never passed off as an answer', () => {
    const talk = start('body').say('cm', 'women', '96.5', 'skip', "I don't know");
    expect([talk.answer('upper_bust'), talk.answer('waist')]).toEqual(['skipped', 'unknown']);
    const review = throughout(talk, (t) => t.say('skip')).replies.at(-1);
    if (review?.reply !== 'review') throw new Error('the review is shown');
    const [, , bust, upperBust] = review.lines;
    expect(bust).toMatchObject({ assumed: false });
    expect(upperBust).toMatchObject({ assumed: true, shown: expect.stringContaining('left out') });
  });

  it('is named in the plan with what stands in for it and what that may change', () => {
    const talk = start('spacing').say('50', '72', '84', "I don't know", 'skip', 'yes');
    const outcome = talk.replies.at(-1);
    if (outcome?.reply !== 'outcome' || outcome.outcome.kind !== 'plan') throw new Error('there is a plan');
    expect(outcome.outcome.plan.assumed).toHaveLength(2);
    const text = outcomeText(outcome.outcome, { dialect: 'us', workings: false });
    expect(text).toContain('Where it shapes: Back and forth, at both edges');
    expect(text).toContain('back and forth and shapes at both edges');
  });
});

describe('an interview', () => {
  const states = [[], ['cm'], ['cm', 'women', '38'], ['cm', 'pause'], ['cm', 'cancel']] as const;

  it('can be started over, cancelled and asked for help wherever it stands', () => {
    for (const said of states) {
      expect(start('body').say(...said, 'help').text).toContain('start over');
      expect(start('body').say(...said, 'start over').at).toBe('unit');
      expect(start('body').say(...said, 'cancel').at).toBe('cancelled');
    }
    for (const talk of [whole(), whole().say('yes')]) {
      expect(talk.say('cancel').at).toBe('cancelled');
      expect(talk.say('start over').at).toBe('unit');
    }
  });

  it('can be so too where a reading is put back to her, or another chapter is offered', () => {
    const inTheMiddle = [
      () => start('reading').say('cast off 9(10:11) sts at beg of next 4 rows'),
      () => start('hem').say('cm', 'hem round', '22 sts and 30 rows to 10 cm', 'my sleeves are too tight'),
    ];
    for (const talk of inTheMiddle) {
      expect(talk().replies.at(-1)).toMatchObject({ reply: 'check' });
      expect(talk().say('help').text).toContain('start over');
      expect(talk().say('start over').at).toBe(talk().flow.stops[0]?.id);
      expect(talk().say('cancel').at).toBe('cancelled');
    }
  });

  it('lets her out of sums that she works herself: help names the words, cancel leads back to the plan', () => {
    const sums = () => start('spacing').say('50', '72', '84', 'flat', 'skip', 'yes', 'work it yourself');
    expect(sums().at).toBe('sum');
    expect(sums().say('help').text).toContain('start over');
    expect(sums().say('next', 'start over').replies.at(-1)).toEqual(sums().replies.at(-1));
    expect(sums().say('cancel').at).toBe('outcome');
    expect(sums().say('cancel', 'cancel').at).toBe('cancelled');
  });

  it('keeps a doubtful figure that is put back to her while she looks at another', () => {
    const [body, sleeve] = [start('body').say('cm', 'women', '38'), start('sleeve').say('cm')];
    const waiting = JSON.parse(JSON.stringify(body.session));
    sleeve.say('flat');
    expect(show(body.flow, waiting)).toMatchObject([{ reply: 'check' }]);
    body.session = waiting;
    expect(body.say('yes').answer('bust')).toMatchObject({ cm: 38 * 2.54 });
  });

  it('does not freeze after a doubtful answer: back, cancel and a new figure all lead on', () => {
    const doubt = () => start('body').say('cm', 'women', '38');
    expect(doubt().replies).toMatchObject([{ reply: 'check' }]);
    expect(doubt().say('back').at).toBe('bust');
    expect(doubt().say('no').replies.at(-1)).toMatchObject({ reply: 'ask', question: 'bust' });
    expect(doubt().say('97').at).toBe('upper_bust');
    expect(doubt().say("I don't know").at).toBe('upper_bust');
    expect(doubt().say('cancel').at).toBe('cancelled');
  });

  it.each(everyFlow)(
    '$id has no two steps that lead into each other: it ends, whatever is not known',
    ({ flow }) => {
      const talk = throughout(new Talk(flow), (t) => t.say("I don't know"));
      expect(talk.say('yes').replies.at(-1)).toMatchObject({ reply: 'outcome' });
    },
  );

  it('that is refused again and again stays at its question, and can still be passed', () => {
    const talk = start('body').say('cm', 'women', 'x', 'x', 'x', 'x', 'x');
    expect(talk.at).toBe('bust');
    expect(talk.session.log).toHaveLength(2);
    expect(talk.say('skip').at).toBe('upper_bust');
  });

  it('that is refused for the third time names the ways past it, until it is answered', () => {
    const talk = start('body').say('cm', 'women', 'x', 'x');
    const wayPast = '"I don\'t know" to go on without it';
    expect(talk.text).not.toContain(wayPast);
    expect(talk.say('x').text).toContain(wayPast);
    expect(talk.say('900 cm').text).toContain(wayPast);
    expect(talk.say('96.5', 'x').text).not.toContain(wayPast);
    expect(talk.say('back', 'x').text).not.toContain(wayPast);
  });

  it('is its log: taken up from what was stored it stands at the next open question, with the old answers', () => {
    const talk = start('body').say('cm', 'women', '96.5', '91');
    const stored = JSON.parse(JSON.stringify(talk.session));
    expect(show(talk.flow, stored)).toEqual([talk.replies.at(-1)]);
    talk.session = stored;
    expect(talk.say('review').text).toContain('Bust or chest: 96.5 cm\nUpper bust: 91 cm');
  });

  it('ends when she says so and not by itself, and says what was kept', () => {
    const talk = start('body').say('cm', 'women', 'pause');
    expect(talk.text).toContain('Everything you have answered is kept.');
    expect(talk.say('review').text).toContain('Unit: Centimetres');
  });

  it('keeps its place beside another that is open at the same time', () => {
    const [sleeve, body] = [start('sleeve').say('cm'), start('body').say('in', 'men')];
    sleeve.say('flat');
    body.say('42');
    expect([sleeve.at, body.at]).toEqual(['gauge', 'upper_bust']);
    expect([sleeve.answer('unit'), body.answer('unit')]).toMatchObject([{ choice: 'cm' }, { choice: 'in' }]);
  });
});

describe('a plan', () => {
  it('can be had again at any time', () => {
    const talk = whole().say('yes');
    expect(talk.at).toBe('outcome');
    expect(show(talk.flow, talk.session)).toEqual(talk.replies);
    expect(talk.say('help').replies.at(-1)).toMatchObject({ reply: 'outcome' });
  });

  it('is plain text in short paragraphs: no markup, no table, nothing that a small screen cuts', () => {
    const last = whole().say('yes').replies.at(-1);
    if (last?.reply !== 'outcome') throw new Error('there is an outcome');
    const text = outcomeText(last.outcome, { dialect: 'us', workings: false });
    expect(text).not.toMatch(/[*_`|]{2}|\t|<[a-z]|https?:/);
    // A message of the smallest platform that shows plans holds 2,000 characters: no step may need more.
    for (const step of text.split('\n\n')) expect(step.length).toBeLessThan(2000);
  });
});

describe('whatever is said', () => {
  it.each(everyFlow)('in $id is words in short paragraphs, which can be read aloud', ({ flow }) => {
    throughout(new Talk(flow), (talk) => {
      for (const asked of ['why', 'how', 'help', 'what is this?'])
        for (const text of talk.say(asked).replies.flatMap((reply) => wordsIn(reply))) {
          expect(text).toMatch(/\p{L}|\d/u);
          expect(text).not.toMatch(/\p{Extended_Pictographic}|[*_`|~<>[\]{}]/u);
          for (const paragraph of text.split('\n')) expect(paragraph.length).toBeLessThan(400);
        }
      talk.say('skip');
    });
  });
});

/** What a reply shows to her eyes, or to her ears: texts, buttons and their notes. */
function wordsIn(reply: Reply): readonly string[] {
  if (reply.reply === 'review') return reply.lines.map(({ label, shown }) => `${label}: ${shown}`);
  if (reply.reply !== 'ask') return 'text' in reply ? [reply.text] : [];
  const { text, example, buttons, help } = reply;
  const shown = [...buttons, ...help].flatMap(({ label, note }) =>
    note === undefined ? [label] : [label, note],
  );
  return [text, example, ...shown];
}
