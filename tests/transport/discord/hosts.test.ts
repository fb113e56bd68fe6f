/** What the hosts of a server set, and what it changes for its members. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { hostOf, NOTHING_SET } from '../../../src/transport/discord/host.ts';
import { messageOf } from '../../stand-in/answer.ts';
import type { Person } from '../../stand-in/person.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import {
  type Circle,
  circle,
  command,
  flows,
  nothingForbidden,
  pick,
  questionOf,
  read,
  sessionOf,
  typedBy,
} from './circle.ts';

const MANAGE_SERVER = 1n << 5n;
const SPACING = { 'stitches-now': '50', 'stitches-wanted': '72', rows: '84' };

let here: Circle;
let host: Person;
let anna: Person;
beforeEach(async () => {
  here = await circle();
  host = here.standIn.person('Hilde');
  host.account.permissions |= MANAGE_SERVER;
  anna = here.standIn.person('Anna');
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const set = () => hostOf(here.kept.chat, here.standIn.guild.id);

async function settings(): Promise<SeenMessage> {
  return command(host, 'host');
}

describe('settings', () => {
  it('are shown to those who may manage the server, and to them alone', async () => {
    const shown = await settings();
    expect(shown.isEphemeral).toBe(true);
    expect(read(shown)).toContain('Settings of this server');
    expect(read(await command(anna, 'host'))).toContain('Only those who may manage this server');
  });

  it('are not changed by a press of one who may no longer manage the server', async () => {
    const shown = await settings();
    host.account.permissions &= ~MANAGE_SERVER;
    const told = await pick(host, shown, 'Units', 'Inches');
    expect(read(told)).toContain('Only those who may manage this server');
    expect(set()).toEqual(NOTHING_SET);
  });

  it('are saved as they are made, and shown as they are', async () => {
    const shown = await pick(host, await settings(), 'Units', 'Inches');
    expect(read(shown)).toContain('Saved.');
    await pick(host, shown, 'Terms', 'cast off, tension (UK)');
    expect(set()).toEqual({ ...NOTHING_SET, unit: 'in', terms: 'uk' });
    const again = await settings();
    const chosen = again.selects.map(({ options }) => options.filter((o) => o.chosen).map((o) => o.label));
    expect(chosen.slice(0, 2)).toEqual([['Inches'], ['cast off, tension (UK)']]);
    await pick(host, again, 'Units', 'Ask each person');
    expect(set().unit).toBeNull();
    await here.restart();
    expect(set()).toEqual({ ...NOTHING_SET, terms: 'uk' });
  });
});

describe('units and terms', () => {
  it('come first for those who have chosen none', async () => {
    const shown = await settings();
    await pick(host, shown, 'Units', 'Inches');
    await pick(host, shown, 'Terms', 'cast off, tension (UK)');
    const begun = await command(anna, 'fit start', { wish: 'sleeve' });
    expect(questionOf(begun)).toBe('sleeve_made');
    expect(typedBy(here, sessionOf(begun))).toEqual([['unit', 'in']]);
    expect(here.kept.store.preferencesOf(`discord:${anna.id}`).unit).toBeNull();
    here.kept.store.prefer(`discord:${anna.id}`, { unit: 'cm', terms: 'us' });
    const own = await command(anna, 'fit start', { wish: 'sleeve' });
    expect(typedBy(here, sessionOf(own))).toEqual([['unit', 'cm']]);
  });
});

describe('chapters', () => {
  it('that are not offered are not listed, and are not begun; in direct messages all are open', async () => {
    const shown = await settings();
    await chapters(shown, ['Measure the body', 'Re-space a sleeve']);
    const menu = await command(anna, 'fit start');
    expect(menu.selects.flatMap(({ options }) => options.map(({ value }) => value))).toEqual([
      'sleeve',
      'body',
    ]);
    expect(await anna.autocomplete('fit start', { wish: 'whole' }, 'wish')).toEqual([]);
    const exercises = await command(anna, 'fit practise');
    expect(exercises.selects.flatMap(({ options }) => options.map(({ value }) => value))).toEqual(['sleeve']);
    expect(read(await command(anna, 'sums spacing', SPACING))).toContain('not offered here');
    expect(questionOf(await command(anna, 'fit start', { wish: 'sleeve' }))).toBe('unit');
    anna.goTo(anna.dm);
    expect(questionOf(await command(anna, 'fit start', { wish: 'whole' }))).toBe('unit');
  });

  it('are all offered again when all are picked', async () => {
    await chapters(await settings(), ['Measure the body']);
    expect(set().chapters).toEqual(['body']);
    await chapters(
      await settings(),
      [...flows.values()].map(({ file }) => file.title),
    );
    expect(set().chapters).toBeNull();
  });

  it('may be none: then nothing is offered to begin, and it is said where all is open', async () => {
    await chapters(await settings(), []);
    const menu = await command(anna, 'fit start');
    expect(menu.selects).toEqual([]);
    expect(read(menu)).toContain('In a direct message with me all is open.');
  });

  /** Picks these, and no others, in the lists of chapters. */
  async function chapters(message: SeenMessage, titles: readonly string[]): Promise<void> {
    for (const { customId, placeholder, options } of message.selects) {
      if (!placeholder.startsWith('Chapters')) continue;
      const mine = options.flatMap(({ label }) => (titles.includes(label) ? [label] : []));
      await host.select(message, customId, mine);
    }
  }
});

describe('public answers', () => {
  it('are kept to the channels that the hosts pick', async () => {
    const { standIn } = here;
    const sums = standIn.world.addChannel(standIn.guild, 'sums');
    const where = await pick(host, await settings(), 'Public answers', 'Only in channels that I pick');
    const list = where.selects.find(({ type }) => type === 8);
    await host.select(where, list?.customId ?? '', [sums.id]);
    expect(set().public).toEqual([sums.id]);
    const hidden = await command(anna, 'sums spacing', SPACING);
    expect(hidden.isEphemeral).toBe(true);
    anna.goTo(sums);
    expect((await command(anna, 'sums spacing', SPACING)).isEphemeral).toBe(false);
    const again = (await settings()).selects.find(({ type }) => type === 8);
    expect(again).toBeDefined();
  });

  it('may be nowhere: sums and plans are then seen by her alone', async () => {
    await pick(host, await settings(), 'Public answers', 'Nowhere: always by the asker alone');
    expect((await command(anna, 'sums spacing', SPACING)).isEphemeral).toBe(true);
    const owner = `discord:${anna.id}`;
    const { session } = here.desk.begin(owner, 'spacing');
    for (const text of ['50', '72', '84', 'flat', '0', 'yes']) here.desk.say(owner, session, { text });
    const told = messageOf(await anna.press(await command(anna, 'fit plan'), 'Share in this channel'));
    expect(read(told)).toContain('keep answers in public to other channels');
    expect(here.standIn.person('Berta').sees()).toEqual([]);
  });

  it('are public everywhere where nothing is set, and in direct messages and groups', async () => {
    expect((await command(anna, 'sums spacing', SPACING)).isEphemeral).toBe(false);
    await pick(host, await settings(), 'Public answers', 'Nowhere: always by the asker alone');
    anna.goTo(anna.dm);
    expect((await command(anna, 'sums spacing', SPACING)).isEphemeral).toBe(false);
  });
});

it('settings that cannot be read count as not set', () => {
  here.kept.chat.setHost('old', '{"unit":"ells"}');
  expect(hostOf(here.kept.chat, 'old')).toEqual(NOTHING_SET);
  expect(hostOf(here.kept.chat, null)).toEqual(NOTHING_SET);
});
