import { describe, expect, it } from 'vitest';
import type { Desk } from '../../../src/transport/contract.ts';
import { chosen, type Entry, type List } from '../../../src/transport/terminal/beginning.ts';
import type { Person } from '../../../src/transport/terminal/conversation.ts';
import { fakeDesk } from './fake-desk.ts';

/** What is chosen where she picks these one after another: a line's number as a number, words as words. */
async function choose(...picks: readonly (number | string)[]) {
  return chooseAt(fakeDesk().desk, picks);
}

async function chooseAt(desk: Desk, picks: readonly (number | string)[]) {
  const shown: List[] = [];
  const told: string[] = [];
  const left = [...picks];
  const person: Person = {
    tell: (paragraphs) => void told.push(...paragraphs.map(({ text }) => text)),
    columns: () => 80,
    pick: async (list): Promise<Entry | string | undefined> => {
      shown.push(list);
      const next = left.shift();
      return typeof next === 'number' ? list.entries[next - 1] : next;
    },
    answer: async () => undefined,
    part: () => undefined,
  };
  const deed = await chosen(desk, 'ada', person);
  return { deed, told, titles: shown.map(({ title }) => title), lists: shown };
}

describe('the beginning in a terminal', () => {
  it('lists what is wished most often, the rest in groups, and sheets', async () => {
    const { lists } = await choose();
    expect(lists[0]?.entries.map(({ label }) => label)).toEqual([
      'I want a wristlet that fits',
      'One sum: stitches, rows, buttons, bands and yarn …',
      'Sheets to print and fill in by hand: measurements, and the sums',
    ]);
  });

  it('leads through a group to what is in it, and back', async () => {
    const { deed, titles } = await choose(2, 2, 2, 1);
    expect(titles).toEqual([
      'What would you like to do?',
      'One sum: stitches, rows, buttons, bands and yarn',
      'What would you like to do?',
      'One sum: stitches, rows, buttons, bands and yarn',
    ]);
    expect(deed).toEqual({ do: 'begin', flow: 'mitten' });
  });

  it('takes a flow by its name from any list', async () => {
    expect((await choose(2, 'wristlet')).deed).toEqual({ do: 'begin', flow: 'wristlet' });
  });

  it('says what it takes words of her own for, and begins when she agrees', async () => {
    const { deed, titles, lists } = await choose('my wrists are so cold!', 'yes');
    expect(titles[1]).toBe('I take it that you want this:');
    expect(lists[1]?.entries.map(({ label }) => label)).toEqual([
      'I want a wristlet that fits',
      'None of these: show me the list',
    ]);
    expect(deed).toEqual({ do: 'begin', flow: 'wristlet' });
  });

  it('shows the list again where it took her wrong', async () => {
    const { deed, titles } = await choose('my wrists are cold', 'no', 3);
    expect(titles[2]).toBe('What would you like to do?');
    expect(deed).toEqual({ do: 'print' });
  });

  it('offers the likeliest where her words may mean more than one', async () => {
    const { deed, titles, lists } = await choose('too long for my wrist', 'mitten');
    expect(titles[1]).toBe('Do you mean one of these?');
    expect(lists[1]?.entries.map(({ label }) => label)).toEqual([
      'I want a wristlet that fits',
      'My mittens are too long or too short for my hands',
      'None of these: show me the list',
    ]);
    expect(deed).toEqual({ do: 'begin', flow: 'mitten' });
  });

  it('says so where her words tell nothing, with an example, and asks again', async () => {
    const { deed, told, titles } = await choose('zebra', 1);
    expect(told).toEqual([
      'I do not know what to do about that. Say it in other words, such as "my sleeves are too tight", or take one of these.',
    ]);
    expect(titles).toEqual(['What would you like to do?', 'What would you like to do?']);
    expect(deed).toEqual({ do: 'begin', flow: 'wristlet' });
  });

  it('is left by the word that stands on its button, or by the end of the input', async () => {
    expect((await choose('leave')).deed).toBeUndefined();
    expect((await choose(2, ' Leave ')).deed).toBeUndefined();
    expect((await choose()).deed).toBeUndefined();
  });

  it('lists what can be practised in the same groups, and says of an open exercise that it is one', async () => {
    const { desk } = fakeDesk();
    const [flow] = desk.flows();
    if (flow === undefined) throw new Error('the desk has flows');
    const practising: Desk = {
      ...desk,
      flows: () => desk.flows().map((f) => ({ ...f, exercise: f.id === 'mitten' })),
      open: () => [{ session: 's', flow, lastAt: Date.UTC(2025, 4, 3, 12), answered: 2, practice: true }],
    };
    const { deed, lists } = await chooseAt(practising, ['practise', 1, 1]);
    expect(lists[0]?.entries.map(({ label }) => label).slice(0, 3)).toEqual([
      'Go on: Practice, A wristlet (3 May 2025, 2 answered)',
      'I want a wristlet that fits',
      'Practise: every figure is given, and the worked answer shown …',
    ]);
    expect(lists[1]?.entries.map(({ label }) => label)).toEqual([
      'One sum: stitches, rows, buttons, bands and yarn …',
      'Back to the beginning',
    ]);
    expect(lists[2]?.entries.map(({ label }) => label)).toEqual(['A mitten', 'Back to the beginning']);
    expect(deed).toEqual({ do: 'practise', flow: 'mitten' });
  });
});
