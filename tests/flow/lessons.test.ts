import { describe, expect, it } from 'vitest';
import { wordLesson } from '../../src/dialogue/lessons.ts';
import { DIALECTS } from '../../src/fit/terms.ts';
import { loadFlows } from '../../src/library.ts';
import { wrap } from '../../src/transport/terminal/wrap.ts';

const [flow] = loadFlows().values();
if (flow === undefined) throw new Error('there are flows');
const lessons = [...flow.book.lessons.values()];
const said = DIALECTS.flatMap((dialect) =>
  [...flow.inTerms(dialect).book.lessons.values()].map(
    (lesson) => [`${lesson.title} (${dialect})`, lesson] as const,
  ),
);

describe('the lessons', () => {
  it('are these, in this order', () => {
    expect(lessons.map(({ title }) => title)).toEqual([
      'Gauge',
      'Swatching flat',
      'Swatching in the round',
      'Blocking',
      'How sweaters are made',
      'Ease',
      'Choosing a size',
      'Where waist shaping goes',
      'Short rows',
      'Seams and finishing',
      "Reading a pattern's numbers",
    ]);
  });

  it.each(said)(
    '%s has at most 150 words, and leaves eight lines of a small terminal for the question',
    (_, lesson) => {
      const text = wordLesson(lesson);
      expect(text.split(/\s+/).length).toBeLessThanOrEqual(150);
      expect(wrap(text, 80).length).toBeLessThanOrEqual(24 - 8);
    },
  );

  it.each(said)('%s has short sentences and says what to take care of', (_, lesson) => {
    const sentences = lesson.teaches.flatMap((text) => text.split(/(?<=[.:?])\s+/));
    expect(sentences.filter((one) => one.split(' ').length > 25)).toEqual([]);
    expect(lesson.care).toMatch(/\.$/);
  });

  it('leave no term in brackets, and say each in the reader’s own words', () => {
    const textIn = (dialect: 'us' | 'uk') =>
      [...flow.inTerms(dialect).book.lessons.values()].map(wordLesson).join('\n');
    expect(textIn('us')).not.toMatch(/\[|\]/);
    expect(textIn('us')).toMatch(/Gauge is how many stitches/);
    expect(textIn('us')).not.toMatch(/tension|cast off|stocking stitch/i);
    expect(textIn('uk')).toMatch(/Tension is how many stitches/);
    expect(textIn('uk')).not.toMatch(/gauge|bind off|stockinette/i);
  });

  it('are each linked from a question that some flow asks', () => {
    const asked = [...loadFlows().values()].flatMap(({ stops }) =>
      stops.map(({ question }) => question.lesson),
    );
    expect(lessons.filter(({ lesson }) => !asked.includes(lesson))).toEqual([]);
  });
});

describe('sums in the lessons', () => {
  const textOf = (id: string) => {
    const lesson = flow.book.lessons.get(id);
    return lesson === undefined ? '' : wordLesson(lesson);
  };

  it.each([
    ['gauge', '220 stitches measure 100 cm', 220 / (22 / 10), 100],
    ['gauge', 'same\n220 stitches measure 110 cm'.replace('\n', ' '), 220 / (20 / 10), 110],
    ['swatch_flat', 'that is 33 stitches', 15 * (22 / 10), 33],
    ['ease', '8 cm of ease', 105 - 97, 8],
    ['numbers', 'span 43 rows', 7 * 6 + 1, 43],
    ['numbers', 'Multiple of 4 plus 1" is a count such as 41', 10 * 4 + 1, 41],
  ])('%s: %s', (lesson, words, worked, told) => {
    expect(textOf(lesson)).toContain(words);
    expect(worked).toBeCloseTo(told, 9);
  });
});
