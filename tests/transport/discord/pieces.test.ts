/** The small parts of which messages are made. */
import type { GatewayDispatchPayload } from 'discord.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeId, readId, wordsOf } from '../../../src/transport/discord/custom-id.ts';
import { CUSTOM_ID } from '../../../src/transport/discord/limits.ts';
import { inParts } from '../../../src/transport/discord/split.ts';
import { Threads } from '../../../src/transport/discord/threads.ts';
import { SeenBefore, Turns } from '../../../src/transport/discord/turns.ts';
import { asTyped, atMost } from '../../../src/transport/discord/typed.ts';

/** What a reader sees of a text with marks of escape. */
const shown = (text: string) => text.replace(/\\([^0-9A-Za-z\s])/g, '$1');

describe('typed text', () => {
  it.each([
    ['@everyone <@1> <#2> <:wool:3>'],
    ['**bold** __under__ ~~struck~~ ||hidden|| `code`'],
    ['# Title\n> quote\n- list\n1. first\n-# small'],
    ['[press me](https://example.org)'],
    ['a \\* back'],
  ])('is shown as it was typed: %s', (text) => {
    const sent = asTyped(text);
    expect(shown(sent)).toBe(text);
    expect(sent.replace(/\\./gs, 'x')).not.toMatch(/[`*_~|<>@#[\]]|:\/\/|^\s*[-+]\s|^\s*\d+[.)]\s/m);
  });

  it('is shown as it was typed, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(shown(asTyped(text))).toBe(text);
      }),
    );
  });

  it('is cut with a mark, and never inside a letter', () => {
    expect(atMost('wool', 4)).toBe('wool');
    expect(atMost('woollen', 4)).toBe('woo…');
    expect(atMost('12🧶4', 4)).toBe('12…');
  });
});

describe('what a control carries', () => {
  const session = 'A'.repeat(22);

  it('is read back', () => {
    const id = makeId('answer', session, 'upper_arm', '31 cm');
    expect(readId(id)).toEqual({ act: 'answer', session, question: 'upper_arm', what: { words: '31 cm' } });
  });

  it('fits the platform, whatever words it stands for, and the words are found among those offered', () => {
    const long = `Back and forth, at both edges, wrong-side rows too: ${'|='.repeat(40)}`;
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.boolean(), (text, isLong) => {
        const words = isLong ? long + text : text;
        const id = makeId('answer', session, 'q'.repeat(40), words);
        expect(id.length).toBeLessThanOrEqual(CUSTOM_ID);
        const what = readId(id)?.what;
        expect(what && wordsOf(what, () => ['no', words, 'yes'])).toBe(words);
        if (what !== undefined && 'digest' in what)
          expect(wordsOf(what, () => ['no', 'yes'])).toBeUndefined();
      }),
    );
  });

  it.each([[''], ['more'], ['2a|s|q|=x'], ['1?|s|q|=x'], ['1a|s|q']])('is not read from: %s', (id) => {
    expect(readId(id)).toBeUndefined();
  });
});

describe('a long text in parts', () => {
  it('is split between its paragraphs, and is itself when put together', () => {
    const paragraphs = fc.array(fc.stringMatching(/^[a-z]{1,8}( [a-z]{1,8}){0,5}(\n {3}[a-z]{1,8}){0,3}$/), {
      minLength: 1,
      maxLength: 20,
    });
    fc.assert(
      fc.property(paragraphs, fc.integer({ min: 120, max: 300 }), (all, most) => {
        const text = all.join('\n\n');
        const parts = inParts(`${text}\n`, most);
        expect(parts.join('\n\n')).toBe(text);
        expect(parts.every((part) => part.length <= most)).toBe(true);
      }),
    );
  });

  it('loses nothing of a paragraph that is too long itself', () => {
    const words = Array.from({ length: 300 }, (_, i) => `${i}`);
    const parts = inParts(words.join(' '), 50);
    expect(parts.join(' ').split(/\s+/)).toEqual(words);
    expect(inParts('x'.repeat(120), 50).map((part) => part.length)).toEqual([50, 50, 20]);
  });
});

describe('turns', () => {
  it('are taken one after another for one person, and beside each other for two; a failed one stops nobody', async () => {
    const turns = new Turns();
    const done: string[] = [];
    let letGo = () => {};
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const say =
      (word: string, before: Promise<void> = Promise.resolve()) =>
      async () => {
        await before;
        done.push(word);
      };
    const first = turns.of('ada', say('ada 1', held));
    const failed = turns.of('ada', () => Promise.reject(new Error('dropped a stitch')));
    const last = turns.of('ada', say('ada 2'));
    await turns.of('bea', say('bea'));
    expect(done).toEqual(['bea']);
    letGo();
    await expect(failed).rejects.toThrow('dropped a stitch');
    await Promise.all([first, last]);
    expect(done).toEqual(['bea', 'ada 1', 'ada 2']);
  });

  it('of what is delivered twice are taken once', () => {
    const seen = new SeenBefore(2);
    expect(['a', 'a', 'b', 'a', 'c', 'b'].map((id) => seen.isNew(id))).toEqual([
      true,
      false,
      true,
      false,
      true,
      false,
    ]);
    expect(seen.isNew('a')).toBe(true);
  });
});

describe('a thread', () => {
  const deed = (channel: object) =>
    ({ op: 0, s: 1, t: 'INTERACTION_CREATE', d: { channel } }) as unknown as GatewayDispatchPayload;

  it('counts as the channel in which it hangs, once a deed in it was heard of', () => {
    const threads = new Threads();
    expect(threads.homeOf('thread')).toBe('thread');
    threads.hear(deed({ id: 'thread', type: 11, parent_id: 'forum', thread_metadata: {} }));
    expect(threads.homeOf('thread')).toBe('forum');
  });

  it('is not what a channel in a category is', () => {
    const threads = new Threads();
    threads.hear(deed({ id: 'general', type: 0, parent_id: 'category' }));
    expect(threads.homeOf('general')).toBe('general');
  });
});
