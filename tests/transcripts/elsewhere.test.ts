/** A knitter who would rather do something else, in the midst of an interview: nothing she has answered is lost. */
import { describe, expect, it } from 'vitest';
import { openDesk } from '../../src/desk.ts';
import type { Reply } from '../../src/dialogue/message.ts';
import { loadFlows } from '../../src/library.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { databases } from '../store/folder.ts';

const newFile = databases();
const flows = loadFlows();

/** An interview in which she is asked for the pattern's stitches. */
function inTheMidst(flow: string, ...typed: string[]) {
  const store = openStore(newFile(), 50);
  let made = 0;
  const desk = openDesk({
    flows,
    store,
    clock: () => 1000,
    newId: () => `${++made}`,
    unit: 'cm',
    terms: 'us',
  });
  const { session } = desk.begin('ada', flow);
  for (const text of typed) desk.say('ada', session, { text });
  const say = (text: string) => desk.say('ada', session, { text });
  return { desk, session, say, log: () => store.load(session)?.log ?? [] };
}

const HEM = ['hem round', '22 sts and 30 rows to 10 cm'];
const stands = (replies: readonly Reply[]) => {
  const last = replies.at(-1);
  return last?.reply === 'ask' ? last.question : last?.reply;
};
const buttons = (replies: readonly Reply[]) => {
  const last = replies.at(-1);
  return last !== undefined && 'buttons' in last ? last.buttons.map(({ label }) => label) : [];
};

describe('a knitter in the midst of an interview', () => {
  it('says what she would rather do, is asked whether she means it, and finds all as it was when she comes back', () => {
    const { desk, session, say, log } = inTheMidst('hem', ...HEM);
    const before = log();
    const offered = say('my sleeves are too tight');
    expect(stands(offered)).toBe('check');
    expect(buttons(offered)).toEqual(['Begin: Re-space a sleeve', 'No, go on here']);
    expect(offered.at(-1)).toMatchObject({
      text: expect.stringContaining('“Lower the hem at the back” waits for you'),
    });
    expect(stands(desk.resume('ada', session))).toBe('check');
    expect(say('yes').at(-1)).toMatchObject({ reply: 'rest', how: 'paused', elsewhere: { flow: 'sleeve' } });
    expect(log()).toEqual(before);
    expect(desk.open('ada')).toMatchObject([{ session, answered: 3 }]);
    expect(stands(desk.resume('ada', session))).toBe('p_hem_stitches');
    expect(stands(say('220'))).toBe('p_hem');
  });

  it('says no, and goes on where she was', () => {
    const { say } = inTheMidst('hem', ...HEM);
    say('I am half way and it comes out wrong');
    expect(stands(say('no'))).toBe('p_hem_stitches');
    expect(stands(say('220'))).toBe('p_hem');
  });

  it('answers the question after all: her answer is taken, and nothing more is offered', () => {
    const { say } = inTheMidst('hem', ...HEM);
    say('how much yarn do I need');
    expect(stands(say('220'))).toBe('p_hem');
  });

  it('asks for another chapter without saying which, and is to be shown what there is', () => {
    const { say } = inTheMidst('hem', ...HEM);
    expect(buttons(say('another chapter'))).toEqual(['Show me what else there is', 'No, go on here']);
    expect(say('yes').at(-1)).toMatchObject({ reply: 'rest', how: 'paused', elsewhere: { flow: null } });
  });

  it('may say so on the page of her answers too', () => {
    const { say } = inTheMidst('spread', '80', '+10', 'make one', 'in the round');
    expect(buttons(say('where do the buttonholes go'))).toEqual([
      'Begin: Place buttonholes',
      'No, go on here',
    ]);
  });

  it.each([
    ['hem', 'rides up at the back', 'the wish of this very chapter'],
    ['hem', 'size', 'a word alone'],
    ['hem', 'tight sleeves', 'two words'],
    ['hem', 'xyzzy plugh foo', 'no wish at all'],
    ['whole', 'my sleeves are too tight', 'a wish that this way has too'],
  ])('in %s is offered nothing else for “%s”: %s', (flow, text) => {
    const typed = flow === 'whole' ? ['sample', 'in the round', 'yes'] : HEM;
    const { say } = inTheMidst(flow, ...typed);
    const replies = say(text);
    expect(stands(replies)).not.toBe('check');
    expect(replies[0]).toMatchObject({ reply: 'say', tone: 'refused' });
  });

  it('is answered where the question takes her words, whatever else they could mean', () => {
    const { say } = inTheMidst('ease', 'women', '96.5 cm');
    expect(stands(say('practice'))).toBe('gauge');
  });
});
