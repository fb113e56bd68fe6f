/** The direct message, where what is written is an answer. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Person } from '../../stand-in/person.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import {
  type Circle,
  circle,
  command,
  nothingForbidden,
  press,
  questionOf,
  read,
  sessionOf,
  typedBy,
} from './circle.ts';

const POST = 'POST /channels/:channel/messages';

let here: Circle;
let anna: Person;
beforeEach(async () => {
  here = await circle();
  anna = here.standIn.person('Anna');
  anna.goTo(anna.dm);
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const typed = (message: SeenMessage) => typedBy(here, sessionOf(message)).map(([, text]) => text);

/** Writes, and reads what comes. */
async function write(text: string): Promise<SeenMessage> {
  const said = anna.say(text);
  return anna.waitFor((m) => BigInt(m.id) > BigInt(said.id), 'an answer');
}

describe('written words', () => {
  it('answer the question that she saw last, whichever way she came to it', async () => {
    const sleeve = await command(anna, 'fit start', { wish: 'sleeve' });
    await write('inches');
    const spacing = await command(anna, 'fit start', { wish: 'spacing' });
    await write('50');
    expect(typed(spacing)).toEqual(['50']);
    const menu = await command(anna, 'fit start');
    const goOn = menu.buttons.find(({ label }) => label.startsWith('Go on: Re-space'));
    await press(anna, menu, goOn?.label ?? '');
    expect(questionOf(await write('from the cuff, flat'))).toBe('gauge');
    expect(typed(sleeve)).toEqual(['inches', 'from the cuff, flat']);
    expect(typed(spacing)).toEqual(['50']);
  });

  it('lead to another chapter where they surely mean one, once she says so; the one before is kept', async () => {
    const hem = await command(anna, 'fit start', { wish: 'hem' });
    for (const text of ['cm', 'hem round', '22 sts and 30 rows to 10 cm']) await write(text);
    const offered = await write('my sleeves are too tight');
    expect(read(offered)).toContain('Do you mean this: My sleeves are too tight');
    const sleeve = await press(anna, offered, 'Begin: Re-space a sleeve');
    expect(questionOf(sleeve)).toBe('sleeve_made');
    expect(read(sleeve)).toContain('“Lower the hem at the back” is paused.');
    expect(questionOf(await write('flat'))).toBe('gauge');
    expect(typed(hem)).toEqual(['cm', 'hem round', '22 sts and 30 rows to 10 cm']);
    const asked = await write('another chapter');
    const menu = await press(anna, asked, 'Show me what else there is');
    const goOn = menu.buttons.find(({ label }) => label.startsWith('Go on: Lower the hem'));
    expect(questionOf(await press(anna, menu, goOn?.label ?? ''))).toBe('p_hem_stitches');
  });

  it('that mean another chapter change nothing where she says no', async () => {
    await command(anna, 'fit start', { wish: 'hem' });
    for (const text of ['cm', 'hem round', '22 sts and 30 rows to 10 cm']) await write(text);
    await write('how much yarn do I need');
    expect(questionOf(await write('no'))).toBe('p_hem_stitches');
  });

  it('are commands as well as answers', async () => {
    await command(anna, 'fit start', { wish: 'sleeve' });
    await write('inches');
    expect(read(await write('why?'))).toContain('It tells on which rows shaping may fall');
    expect(questionOf(await write('back'))).toBe('unit');
    expect(read(await write('pause'))).toMatch(/^Paused\.[\s\S]*: \/fit go-on$/);
    expect(questionOf(await write('inches'))).toBe('sleeve_made');
  });

  it('that were written before the question was there are no answer to it: twice the same is one answer', async () => {
    const first = await command(anna, 'fit start', { wish: 'spacing' });
    here.standIn.faults.onRequest(POST, { kind: 'delay', ms: 400 });
    anna.say('50');
    await new Promise((later) => setTimeout(later, 100));
    anna.say('50');
    const shown = await anna.waitFor((m) => read(m).includes('before I had asked this'), 'the second reply');
    expect(questionOf(shown)).toBe('spacing_to');
    expect(typed(first)).toEqual(['50']);
    expect(questionOf(await write('72'))).toBe('spacing_rows');
    expect(typed(first)).toEqual(['50', '72']);
  });

  it('without an interview bring the menu, and so does a word of greeting', async () => {
    expect((await write('my sleeves are too tight')).selects.length).toBeGreaterThan(0);
    await command(anna, 'fit start', { wish: 'spacing' });
    expect((await write('Hello!')).selects.length).toBeGreaterThan(0);
    expect(questionOf(await write('50'))).toBe('spacing_to');
  });

  it('of somebody whose interview was deleted bring the menu', async () => {
    const first = await command(anna, 'fit start', { wish: 'spacing' });
    const owner = `discord:${anna.id}`;
    await expect.poll(() => here.kept.chat.bookmarkOf(owner)).toBeDefined();
    const bookmark = here.kept.chat.bookmarkOf(owner);
    here.kept.store.forget(owner);
    if (bookmark !== undefined) here.kept.chat.setBookmark(owner, bookmark);
    const menu = await write('50');
    expect(read(menu)).toContain('That interview is no longer here.');
    expect(sessionOf(first)).toBe(bookmark?.session);
  });

  it('that are none, a picture alone, are asked for in words', async () => {
    await command(anna, 'fit start', { wish: 'spacing' });
    anna.say('', [{ name: 'swatch.jpg', contentType: 'image/jpeg', bytes: Buffer.from('x') }]);
    await anna.waitFor((m) => read(m).includes('I can read words only'), 'the request');
  });

  it('in a server are not heard, and are nobody’s business', async () => {
    await command(anna, 'fit start', { wish: 'spacing' });
    const before = here.standIn.record.requests.length;
    anna.goTo(here.standIn.channelOf()).say('50');
    expect(questionOf(await write2('72'))).toBe('spacing_to');
    expect(here.standIn.record.requests.length).toBeGreaterThan(before);
    expect(anna.sees(here.standIn.channelOf()).filter((m) => m.isFromApp)).toEqual([]);
  });

  /** Writes in the direct message again. */
  function write2(text: string): Promise<SeenMessage> {
    anna.goTo(anna.dm);
    return write(text);
  }
});

it('the interview that was open is not answered by words that were meant for the one that is being shown', async () => {
  const sleeve = await command(anna, 'fit start', { wish: 'sleeve' });
  await write('inches');
  const { chat } = here.kept;
  const setBookmark = chat.setBookmark;
  Object.assign(chat, {
    setBookmark: () => {
      throw new Error('killed just now');
    },
  });
  await command(anna, 'fit start', { wish: 'spacing' });
  Object.assign(chat, { setBookmark });
  await here.restart();
  expect((await write('50')).selects.length).toBeGreaterThan(0);
  expect(typed(sleeve)).toEqual(['inches']);
});
