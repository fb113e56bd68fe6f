import { describe, expect, it } from 'vitest';
import { lessonCalled, wordLesson } from '../../src/dialogue/lessons.ts';
import type { Turn } from '../../src/dialogue/scene.ts';
import { AT_THE_START, type Session } from '../../src/dialogue/session.ts';
import { turn } from '../../src/dialogue/turn.ts';
import { loadFlows } from '../../src/library.ts';

function sleeveFlow() {
  const flow = loadFlows().get('sleeve');
  if (flow === undefined) throw new Error('there is a flow for sleeves');
  return flow;
}
const sleeve = sleeveFlow();
const { lessons } = sleeve.book;
const FRESH: Session = { id: 't', owner: 'o', flow: 'sleeve', version: 1, log: [], place: AT_THE_START };

/** The last turn of a conversation that begins with a fresh interview. */
function talk(...said: readonly string[]): Turn {
  const none: Turn = { session: FRESH, added: [], replies: [] };
  return said.reduce((now, text) => turn(sleeve, now.session, { text }, 1), none);
}

const textOf = (id: string) => {
  const lesson = lessons.get(id);
  if (lesson === undefined) throw new Error(`there is no lesson '${id}'`);
  return wordLesson(lesson);
};

describe('a lesson', () => {
  it('of the question is a button, and is shown before the same question', () => {
    const { replies, session } = talk('cm', 'lesson');
    expect(replies[0]).toEqual({ reply: 'say', tone: 'explain', text: textOf('construction') });
    const ask = replies[1];
    if (ask?.reply !== 'ask') throw new Error('the question is asked again');
    expect(ask.question).toBe('sleeve_made');
    expect(ask.help).toContainEqual({ label: 'Lesson: How sweaters are made', send: 'lesson' });
    expect(session.log).toHaveLength(1);
  });

  it.each(['lesson', 'Teach me', 'tell me more', 'Tell me more about this'])(
    'is asked for by “%s”',
    (words) => {
      expect(talk('cm', words).replies[0]).toMatchObject({ text: textOf('construction') });
    },
  );

  it.each([
    ['lesson ease', 'ease'],
    ['teach me about short rows', 'short_rows'],
    ['What is gauge?', 'gauge'],
    ['what is tension', 'gauge'],
    ['lesson swatching in the round', 'swatch_round'],
    ['lesson seams', 'finishing'],
    ['tell me more about blocking', 'blocking'],
    ['lesson waist', 'waist'],
  ])('can be had at any question: “%s”', (words, id) => {
    expect(talk('cm', words).replies[0]).toMatchObject({ tone: 'explain', text: textOf(id) });
  });

  it('is found by its title in small or large letters', () => {
    for (const { lesson, title } of lessons.values())
      expect(lessonCalled(lessons, title.toUpperCase())?.lesson).toBe(lesson);
  });

  it('is one of a list, each line of which is what to type', () => {
    const [list, ask] = talk('lessons').replies;
    if (list?.reply !== 'say') throw new Error('the list is told');
    const lines = list.text.split('\n').flatMap((line) => (line.startsWith('- ') ? [line.slice(2)] : []));
    expect(lines).toHaveLength(lessons.size);
    for (const line of lines) expect(talk(line).replies[0]).toMatchObject({ tone: 'explain' });
    expect(lines.map((line) => lessonCalled(lessons, line.replace('lesson ', ''))?.lesson)).toEqual([
      ...lessons.keys(),
    ]);
    expect(ask).toMatchObject({ reply: 'ask', question: 'unit' });
  });

  it('that is not there is said to be missing, and the list is shown', () => {
    expect(talk('lesson socks').replies.map((r) => ('text' in r ? r.text : ''))).toEqual([
      "There is no lesson called 'socks'.",
      expect.stringContaining('- lesson ease'),
      expect.any(String),
    ]);
  });

  it('does not end the interview, whatever question it was asked at', () => {
    const after = talk('cm', 'lesson ease', 'From the cuff, flat');
    expect(after.added).toHaveLength(1);
  });
});
