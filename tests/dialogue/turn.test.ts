import { describe, expect, it } from 'vitest';
import { turn } from '../../src/dialogue/turn.ts';
import { start, type Talk } from './talk.ts';
import { WHOLE } from './whole.ts';

/** The longest interview up to its review. */
function answered(): Talk {
  const talk = start('whole');
  for (const [question, typed] of WHOLE) {
    expect(talk.at).toBe(question);
    talk.say(typed);
  }
  expect(talk.at).toBe('review');
  return talk;
}

describe('a turn', () => {
  it('asks, hears, shows back what was understood in the reader’s unit, and asks on', () => {
    const talk = start('body').say('cm', 'women', '38 in');
    expect(talk.text).toContain('96.5 cm (38 in)');
    expect(talk.at).toBe('upper_bust');
  });

  it('changes nothing in the session that it was given', () => {
    const talk = start('body');
    const before = JSON.stringify(talk.session);
    turn(talk.flow, talk.session, { text: 'cm' }, 1);
    expect(JSON.stringify(talk.session)).toBe(before);
  });

  it('offers a 38 in a metric interview as 38 in, and keeps it on a yes', () => {
    const talk = start('body').say('cm', 'women', '38');
    expect(talk.text).toContain('Do you mean 38 in, that is 96.5 cm?');
    expect(talk.session.log).toHaveLength(2);
    talk.say('yes');
    expect(talk.answer('bust')).toMatchObject({ cm: 38 * 2.54, typed: { value: 38, unit: 'in' } });
  });

  it('refuses an impossible figure with the bounds and an example, and keeps what was answered', () => {
    const talk = start('body').say('cm', 'women', '900 cm');
    expect(talk.text).toMatch(/cannot be right.*between.*cm.*96\.5 cm/s);
    expect(talk.at).toBe('bust');
    expect(talk.session.log).toHaveLength(2);
  });

  it('asks again about an unusual figure, and keeps it when it is confirmed', () => {
    const talk = start('body').say('cm', 'women', '96.5 cm', '91', '80', '102', '60 cm');
    expect(talk.text).toMatch(/unusual.*shall I keep 60 cm/s);
    talk.say('yes');
    expect(talk.at).toBe('wrist');
    expect(talk.answer('upper_arm')).toMatchObject({ cm: 60 });
  });

  it('holds a reading that was confirmed against the tables, like one that was heard at once', () => {
    const talk = start('body').say('cm', 'women', 'age 3', 'yes');
    expect(talk.text).toMatch(/3 cm cannot be right.*like this: 96\.5 cm/s);
    expect(talk.at).toBe('bust');
    expect(talk.say('96.5').answer('bust')).toMatchObject({ cm: 96.5 });
  });

  it('takes a fresh figure in place of a yes or no', () => {
    const talk = start('body').say('cm', 'women', '38', '97 cm');
    expect(talk.answer('bust')).toMatchObject({ cm: 97 });
  });

  it('takes rows that were typed beside the stitches, and does not ask for them again', () => {
    const talk = start('swatch').say('cm', 'round', 'yes', '22 sts and 30 rows over 10 cm');
    expect(talk.text).toContain('22 stitches and 30 rows over 10 cm');
    expect(talk.answer('swatch_rows')).toMatchObject({ rows: { count: 30 } });
    expect(talk.say('skip').at).toBe('swatch_rows_2');
  });

  it('names a way on where there is no size to pick, for the pattern’s sizes were left out', () => {
    const talk = start('whole').say('in', 'my own');
    while (talk.at !== 'size') talk.say('skip');
    expect(talk.say('4').text).toContain("I need the pattern's sizes first");
    expect(talk.text).toContain("For example: I don't know");
    expect(talk.say("I don't know").at).toBe('wishes');
  });

  it('refuses what is no answer, with an example', () => {
    const talk = start('body').say('cm', 'women', 'quite wide');
    expect(talk.text).toMatch(/For example: \S+/);
    expect(talk.at).toBe('bust');
  });
});

describe('what may be said at any question', () => {
  it('goes back, shows the present answer, and keeps it on request', () => {
    const talk = start('body').say('cm', 'women', '96.5', 'back');
    expect(talk.at).toBe('bust');
    expect(talk.replies.at(-1)).toMatchObject({ buttons: [{ label: 'Keep: 96.5 cm', send: 'keep' }] });
    talk.say('keep');
    expect(talk.at).toBe('upper_bust');
    expect(talk.answer('bust')).toMatchObject({ cm: 96.5 });
  });

  it('goes back where a choice is called by that word too', () => {
    const talk = start('swatch').say('cm', 'back');
    expect(talk.at).toBe('unit');
    expect(start('spread').say('80', '96', 'm1', 'back').at).toBe('spread_by');
    expect(start('measure').say('cm', 'women', 'back').at).toBe('table');
  });

  it('asks on along what stands in for a choice that is not known', () => {
    const talk = start('yarn').say('cm', "I don't know");
    expect(talk.text).toContain("you want another yarn than the pattern's");
    expect(talk.at).toBe('yarn_balls');
    const whole = start('whole').say(
      'cm',
      'skip',
      'round',
      'yes',
      '22 sts and 30 rows over 10 cm',
      'skip',
      'skip',
    );
    expect(whole.at).toBe('table');
  });

  it('goes back as far as the first question, and says so there', () => {
    const talk = start('body').say('cm', 'women', 'back', 'back');
    expect(talk.at).toBe('unit');
    expect(talk.say('back').text).toContain('first question');
  });

  it('tells why and how, with the picture in words, and asks again', () => {
    const talk = start('body').say('cm', 'women', 'why');
    expect(talk.text).toContain('The size is chosen from it');
    talk.say('how');
    expect(talk.text).toContain('Picture: A figure from the front');
    expect(talk.at).toBe('bust');
  });

  it('takes "I don’t know": a named stand-in where there is one, what waits where there is none', () => {
    const talk = start('body').say('cm', 'women', "I don't know");
    expect(talk.text).toContain('The size waits for it');
    talk.say('96.5 cm'); // upper bust
    talk.say('dunno', 'dunno');
    expect(talk.at).toBe('upper_arm');
    const known = start('body').say('cm', 'women', '96.5', 'dunno');
    expect(known.text).toContain('I take 96.5 cm (the same as the bust)');
  });

  it('leaves out on "skip" and "later", which are no answers', () => {
    const talk = start('body').say('cm', 'women', 'skip', 'later');
    expect([talk.answer('bust'), talk.answer('upper_bust')]).toEqual(['skipped', 'skipped']);
  });

  it('changes the unit at any moment and shows everything in it, keeping what was typed', () => {
    const talk = start('body').say('cm', 'women', '96.5 cm', 'inches', 'review');
    expect(talk.text).toMatch(/Bust or chest: 38 in/);
    expect(talk.answer('bust')).toMatchObject({ typed: { value: 96.5, unit: 'cm' } });
    expect(talk.at).toBe('upper_bust');
  });

  it('pauses, and goes on at the same question with the next message', () => {
    const talk = start('body').say('cm', 'women', 'pause');
    expect(talk.replies).toMatchObject([{ reply: 'rest', how: 'paused' }]);
    talk.say('96.5');
    expect(talk.at).toBe('upper_bust');
  });

  it('cancels, and starts over from there', () => {
    const talk = start('body').say('cm', 'women', 'cancel');
    expect(talk.at).toBe('cancelled');
    talk.say('start over');
    expect(talk.at).toBe('unit');
    expect(talk.session.log.map((l) => l.line)).toEqual(['answer', 'answer', 'start over']);
  });

  it('starts over in every state', () => {
    for (const said of [[], ['cm'], ['cm', 'women', '38'], ['cm', 'pause'], ['cm', 'cancel']]) {
      expect(start('body').say(...said, 'start over').at).toBe('unit');
    }
    expect(answered().say('start over').at).toBe('unit');
    expect(answered().say('yes', 'start over').at).toBe('unit');
  });

  it('helps in every state', () => {
    for (const said of [[], ['cm', 'women', '38'], ['cm', 'cancel']]) {
      expect(start('body').say(...said, 'help').text).toContain('start over');
    }
  });
});

describe('a press on a button', () => {
  it('is the same as its text, typed', () => {
    const talk = start('body').say({ text: 'Centimetres', to: 'unit' });
    expect(talk.at).toBe('table');
  });

  it('on an old question is told kindly what was answered there, and answers nothing', () => {
    const talk = start('body').say('cm', 'women', { text: 'Inches', to: 'unit' });
    expect(talk.text).toContain('That was answered already: Unit, Centimetres');
    expect(talk.answer('unit')).toMatchObject({ choice: 'cm' });
    expect(talk.at).toBe('bust');
  });

  it('pressed twice answers once', () => {
    const talk = start('body').say({ text: 'Centimetres', to: 'unit' }, { text: 'Centimetres', to: 'unit' });
    expect(talk.session.log).toHaveLength(1);
  });
});

describe('the review', () => {
  it('lists every answer on one page, marks what is assumed, and makes the plan on a yes', () => {
    const talk = answered();
    const review = talk.replies.at(-1);
    if (review?.reply !== 'review') throw new Error('the review is shown');
    expect(review.lines).toHaveLength(WHOLE.length);
    talk.say('yes');
    expect(talk.replies.at(-1)).toMatchObject({ reply: 'outcome', outcome: { kind: 'plan' } });
  });

  it('keeps all the other answers when the third is changed, and comes straight back', () => {
    const talk = answered().say('change swatch knitted');
    expect(talk.at).toBe('swatch_made');
    talk.say('flat');
    expect(talk.at).toBe('review');
    for (const [question] of WHOLE) expect(talk.answer(question)).not.toBeUndefined();
  });

  it('asks again only what no longer fits, and says so', () => {
    const talk = answered().say('change finished bust', '36 in');
    expect(talk.text).toContain('I ask again: Size to follow');
    expect(talk.at).toBe('size');
    expect(answered().say('change fit', 'close').at).toBe('review');
  });

  it('asks again what was read in the pattern for the size before, when the size is changed', () => {
    const talk = answered().say('change size', '3');
    expect(talk.text).toContain(
      'These figures were of the size before, so I ask again: Pattern, cuff stitches; Pattern, upper arm stitches;',
    );
    expect(talk.text).not.toContain('Pattern, finished bust');
    const asked: string[] = [];
    while (talk.at !== 'review') {
      asked.push(talk.at);
      talk.say('keep');
    }
    expect(asked).toEqual(WHOLE.map(([id]) => id).filter((id) => id.startsWith('p_')));
    expect(talk.say('yes').at).toBe('outcome');
    expect(answered().say('change size', '2').at).toBe('review');
  });

  it('asks again what was read in one of several sizes, where that one is changed', () => {
    const talk = start('blend').say(
      ...[
        'in',
        'my own',
        'from the hem, in the round',
        '22 sts and 30 rows = 4 in',
        '32 (34, 36, 38) in',
        '176 (188, 200, 208)',
      ],
      ...['176 (188, 200, 208)', '76 (80, 84, 88)', '2', '3', '4', '12 in', '8 in', '6'],
    );
    expect(talk.at).toBe('review');
    talk.say('change size at the bust', '4');
    expect(talk.text).toContain('so I ask again: Body length above the edging; Bound off at each underarm.');
    expect(talk.say('13 in', 'keep').at).toBe('review');
    expect(talk.say('change size at the shoulders', '1').at).toBe('blend_armhole');
  });

  it('puts back a row that has fewer figures than the pattern has sizes', () => {
    const sized = () =>
      start('blend').say(
        'in',
        'my own',
        'from the hem, in the round',
        '22 sts and 30 rows = 4 in',
        '32 (34, 36, 38) in',
      );
    const talk = sized().say('176 (188, 200)');
    expect(talk.text).toBe(
      'I read 3 sizes: 176 (188, 200) stitches. But the pattern has 4 sizes. Is that all that is printed?',
    );
    expect(talk.say('yes').at).toBe('blend_hem');
    expect(talk.answer('checking_bust')).toMatchObject({ counts: [176, 188, 200] });
    expect(sized().say('176 (188, 200)', '176 (188, 200, 208)').answer('checking_bust')).toMatchObject({
      counts: [176, 188, 200, 208],
    });
  });

  it('takes a row of figures that all belong to one size as it is, however many sizes there are', () => {
    const talk = start('yoke').say(
      'cm',
      'from the hem, in the round',
      '22 sts and 30 rows to 10 cm',
      '22 cm',
    );
    talk.say('268', '80', 'as my pattern has them', '72', '36, 54, 72');
    expect(talk.text).toMatch(/^36, 54, 72\n/);
    expect(talk.at).toBe('yoke_own_counts');
    expect(talk.answer('yoke_own_rounds')).toMatchObject({ counts: [36, 54, 72] });
  });

  it('offers a figure of the size before to be kept, and says for which size it was read', () => {
    const talk = answered().say('change size', '3');
    const kept = { label: 'Keep: 46 stitches', send: 'keep', note: 'read for size 2' };
    expect(talk.replies.at(-1)).toMatchObject({ reply: 'ask', buttons: [kept] });
    talk.say('change size', '2');
    expect(talk.at).toBe('review');
  });

  it('keeps what it asked again when she types a figure of the new size, and puts no old one in its place', () => {
    const talk = answered().say('change size', '3', '48');
    expect(talk.answer('p_wrist')).toMatchObject({ count: 48 });
    expect(talk.at).toBe('p_upper_arm');
  });

  it('drops questions that a change makes needless, and finds their answers again when it is undone', () => {
    const talk = answered().say('change changes', 'sleeve');
    expect(talk.at).toBe('review');
    expect(JSON.stringify(talk.replies.at(-1))).not.toContain('Ease at the waist');
    talk.say('change changes', 'sleeve, length, waist');
    expect(talk.at).toBe('review');
    expect(JSON.stringify(talk.replies.at(-1))).toContain('Ease at the waist');
  });

  it('shows the workings of the plan when asked, and the plan again after that', () => {
    const talk = answered().say('yes', 'workings');
    expect(talk.replies).toMatchObject([{ reply: 'outcome', workings: true }]);
    expect(talk.say('review').at).toBe('review');
  });

  it('shows all the sums on one page, with the answers they start from, and the plan again', () => {
    const talk = answered().say('yes', 'key');
    expect(talk.replies).toMatchObject([{ reply: 'outcome', buttons: [{ send: 'plan' }, {}, {}] }]);
    expect(talk.replies[0]).toHaveProperty(
      'key',
      expect.arrayContaining([expect.objectContaining({ label: 'Changes', assumed: false })]),
    );
    expect(talk.say('plan').replies).toMatchObject([{ reply: 'outcome', outcome: { kind: 'plan' } }]);
    expect(talk.replies[0]).not.toHaveProperty('key');
    expect(talk.session.log).toEqual(answered().session.log);
  });

  it('takes no word for a page that is none, whatever words the language itself knows', () => {
    for (const word of ['constructor', 'toString', '__proto__'])
      expect(answered().say('yes', word).at).toBe('outcome');
  });

  it('offers the chapter for what she wants to change where that is no answer of hers', () => {
    const talk = start('waist').say('in', 'sample', 'change the neck, it is too high');
    expect(talk.text).toContain('Do you mean this: The neck is too high, too low,');
    expect(start('waist').say('in', 'change unit').at).toBe('unit');
  });

  it('jumps from the plan to one answer and back to a new plan', () => {
    const talk = answered().say('yes', 'change waist', '32 in');
    expect(talk.at).toBe('review');
    expect(talk.say('yes').at).toBe('outcome');
  });

  it('finds an answer by its whole name, little words and all', () => {
    const talk = start('reading').say('dec 1 st at each end of next 3 rows', '49');
    expect(talk.say('change stitches before the line').at).toBe('reading_before');
  });

  it('asks which answer is meant where several go by the word', () => {
    expect(answered().say('change place').text).toMatch(
      /Which answer\?.*stitches, second place.*rows, second place/s,
    );
    expect(answered().say('change nonsense').text).toContain('Which answer?');
  });
});

describe('numbers of questions', () => {
  it('asks at most forty on the longest whole way', () => {
    expect(WHOLE.length).toBeLessThanOrEqual(40);
  });

  it('tells honestly how far it is: the number goes up by one, and none is left at the review', () => {
    const talk = start('whole');
    WHOLE.forEach(([, typed], i) => {
      const ask = talk.replies.at(-1);
      if (ask?.reply !== 'ask') throw new Error('a question is asked');
      expect(ask.progress.number).toBe(i + 1);
      talk.say(typed);
    });
  });
});
