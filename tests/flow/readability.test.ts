/** How easily the texts are read by someone who has never altered a pattern. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DIALECTS } from '../../src/present/terms.ts';
import { type Text, textsOfFlows, textsOfPlans } from './texts.ts';

const texts = DIALECTS.flatMap((dialect) => [...textsOfFlows(dialect), ...textsOfPlans(dialect)]);

/**
 * Plain-language practice is 15 to 20 words on average (Plain English Campaign, How to write in plain English, from
 * memory). Here it is the limit: she reads on a phone, with the needles in her hands.
 */
const LONGEST = 20;
/** What joins a second idea to the first; a list of things, or 'in which', joins none. */
const JOINS =
  /, which\b|\b(?:because|although|though|while|unless|whereas)\b|, (?:and|but|or|so)\b|\bso that\b|;/gi;

const sentences = texts.flatMap(({ where, text }) =>
  text.split(/(?<=[.?!:])\s+/).map((sentence) => ({ where, sentence })),
);
const found = (bad: (sentence: string) => boolean) => [
  ...new Set(sentences.filter(({ sentence }) => bad(sentence)).map((s) => `${s.where}: ${s.sentence}`)),
];

describe('every sentence', () => {
  it(`has at most ${LONGEST} words`, () => {
    expect(found((sentence) => sentence.split(/\s+/).length > LONGEST)).toEqual([]);
  });

  it('says one thing, and at most one more', () => {
    expect(
      found((sentence) => (sentence.replaceAll(', so that', ' so that').match(JOINS) ?? []).length > 1),
    ).toEqual([]);
  });

  it('is set cleanly: single spaces, none before a full stop, no mark of a term', () => {
    expect(found((sentence) => /\s{2}|\s[.,;:?!]|[[\]]|^\s|\s$/.test(sentence))).toEqual([]);
  });
});

describe('every word', () => {
  const words = (all: readonly Text[]) =>
    new Set(
      all.flatMap(({ text }) =>
        text
          .replace(/\{\w+#?\}/g, ' ')
          .toLowerCase()
          .replaceAll('’', "'")
          .split(/[^a-zé'-]+/)
          .map((word) => word.replace(/^['-]+|['-]+$/g, ''))
          .filter((word) => word !== ''),
      ),
    );
  const used = words(texts);
  const known = readFileSync(join(import.meta.dirname, 'words.txt'), 'utf8')
    .split(/\s+/)
    .filter((w) => w !== '');

  it('is spelt as in the list of words, to which a new one is added on purpose', () => {
    expect([...used].filter((word) => !known.includes(word)).sort()).toEqual([]);
  });

  it('of the list is used, and stands there once, in order', () => {
    expect(known.filter((word) => !used.has(word))).toEqual([]);
    expect(known).toEqual([...new Set(known)].sort());
  });

  it('has the one spelling that was chosen, the British one', () => {
    const american =
      /^(?:\w*color\w*|centers?|centered|gr[a]ys?|\w*meters?|fibers?|favor\w*|neighbor\w*|\w+ize[ds]?|\w+izing|\w*mold\w*|practic(?:ed|ing)|labeled|canceled|catalog|program)$/;
    const kept = new Set(['size', 'sizes', 'sized', 'oversized']);
    expect([...used].filter((word) => american.test(word) && !kept.has(word))).toEqual([]);
  });
});
