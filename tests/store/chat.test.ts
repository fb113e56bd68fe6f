import { describe, expect, it } from 'vitest';
import { AT_THE_START } from '../../src/dialogue/session.ts';
import { openChatStore } from '../../src/store/chat.ts';
import { openStore } from '../../src/store/sqlite.ts';
import { databases } from './folder.ts';
import { lengthLine, session } from './samples.ts';

const newFile = databases();
const AT_WRIST = { session: 's1', question: 'wrist', channel: 'c1', message: 'm1', shownAt: 1000 };

describe('a bookmark', () => {
  it('is found again by another process, and moves with the question', () => {
    const file = newFile();
    const chat = openChatStore(file, 50);
    expect(chat.bookmarkOf('ada')).toBeUndefined();
    chat.setBookmark('ada', AT_WRIST);
    expect(openChatStore(file, 50).bookmarkOf('ada')).toEqual(AT_WRIST);
    chat.setBookmark('ada', { ...AT_WRIST, question: 'bust', message: 'm2' });
    expect(chat.bookmarkOf('ada')).toEqual({ ...AT_WRIST, question: 'bust', message: 'm2' });
    expect(chat.bookmarkOf('bea')).toBeUndefined();
    chat.dropBookmark('ada');
    expect(chat.bookmarkOf('ada')).toBeUndefined();
  });

  it('is forgotten with everything else of its owner, and with nothing of others', () => {
    const file = newFile();
    const [store, chat] = [openStore(file), openChatStore(file, 50)];
    store.create(session('s1', 'ada', [lengthLine('wrist', 16, 1)]), 0);
    store.append('s1', 1, [lengthLine('bust', 96, 2)], AT_THE_START);
    chat.setBookmark('ada', AT_WRIST);
    chat.setBookmark('bea', AT_WRIST);
    store.forget('ada');
    expect(chat.bookmarkOf('ada')).toBeUndefined();
    expect(chat.bookmarkOf('bea')).toEqual(AT_WRIST);
  });
});

describe('what hosts have set', () => {
  it('is kept for each community, and must be JSON', () => {
    const chat = openChatStore(newFile(), 50);
    expect(chat.hostOf('circle')).toBeUndefined();
    chat.setHost('circle', '{"unit":"in"}');
    chat.setHost('circle', '{"unit":"cm"}');
    expect(chat.hostOf('circle')).toBe('{"unit":"cm"}');
    expect(chat.hostOf('guild')).toBeUndefined();
    expect(() => chat.setHost('circle', '{')).toThrow('CHECK');
  });
});

describe('a gate', () => {
  it('lets one pass at a time, over all processes; a gate of another name is another gate', () => {
    const file = newFile();
    const [one, other] = [openChatStore(file, 50), openChatStore(file, 50)];
    expect(one.passAt('identify 0', 5000, 1000)).toBe(1000);
    expect(other.passAt('identify 0', 5000, 1200)).toBe(6000);
    expect(one.passAt('identify 0', 5000, 1300)).toBe(11_000);
    expect(one.passAt('identify 1', 5000, 1300)).toBe(1300);
    expect(other.passAt('identify 0', 5000, 60_000)).toBe(60_000);
  });
});

it('names what is wrong with a database that cannot be opened', () => {
  expect(() => openChatStore('/dev/null/no.sqlite', 50)).toThrow(
    expect.objectContaining({ name: 'StoreTrouble', trouble: 'cannot open' }),
  );
});
