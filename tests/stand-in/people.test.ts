import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isObject, objectIn, objectsIn } from './json.ts';
import type { Person } from './person.ts';
import { RawApp } from './raw-app.ts';
import { RawGateway } from './raw-gateway.ts';
import { type StandIn, startStandIn } from './stand-in.ts';

let standIn: StandIn;
let app: RawApp;
let gateway: RawGateway;
let anna: Person;

beforeEach(async () => {
  standIn = await startStandIn();
  app = new RawApp(standIn);
  gateway = new RawGateway(standIn);
  await gateway.ready();
  anna = standIn.person('Anna', 'de');
});
afterEach(() => standIn.close());

const option = (type: number, name: string, own: object = {}) => ({
  type,
  name,
  description: 'A value.',
  ...own,
});

describe('a command', () => {
  it('reaches the app filled in, with who, where and by whose leave', async () => {
    await app.register({
      name: 'fit',
      options: [
        option(3, 'text', { required: true }),
        option(4, 'count'),
        option(5, 'flat'),
        option(6, 'friend'),
        option(11, 'chart'),
      ],
    });
    const chart = { name: 'chart.txt', bytes: Buffer.from('knit') };
    anna.command('fit', { text: '5½', count: 4, flat: true, friend: anna, chart }).catch(() => {});
    const event = await gateway.interaction();
    expect(event).toMatchObject({
      type: 2,
      context: 0,
      locale: 'de',
      guild_id: standIn.guild.id,
      member: { user: { id: anna.id } },
      entitlements: [],
      authorizing_integration_owners: { '0': standIn.guild.id },
    });
    const data = objectIn(event, 'data');
    expect(
      objectsIn(data, 'options')
        .map(({ name, value }) => [name, value])
        .slice(0, 4),
    ).toEqual([
      ['text', '5½'],
      ['count', 4],
      ['flat', true],
      ['friend', anna.id],
    ]);
    const [file] = Object.values(objectIn(objectIn(data, 'resolved'), 'attachments')).filter(isObject);
    expect(await (await fetch(`${file?.url}`)).text()).toBe('knit');
  });

  it('carries its group and subcommand', async () => {
    const sub = { type: 1, name: 'sleeve', description: 'Sleeve.', options: [option(10, 'width')] };
    await app.register({
      name: 'fit',
      options: [{ type: 2, name: 'change', description: 'Change.', options: [sub] }],
    });
    anna.command('fit change sleeve', { width: 30.5 }).catch(() => {});
    expect(objectIn(await gateway.interaction(), 'data').options).toEqual([
      {
        name: 'change',
        type: 2,
        options: [{ name: 'sleeve', type: 1, options: [{ name: 'width', type: 10, value: 30.5 }] }],
      },
    ]);
    await expect(anna.command('fit')).rejects.toThrow('without one of its subcommands');
    await expect(anna.command('fit hem')).rejects.toThrow("There is no subcommand 'hem'.");
  });

  it('comes only where it may be used: by context, and by how the app was installed', async () => {
    await app.register(
      { name: 'here', contexts: [0] },
      { name: 'own', contexts: [0, 1, 2], integration_types: [1] },
    );
    await expect(anna.goTo(anna.dm).command('here')).rejects.toThrow("no command 'here' here");
    await expect(anna.command('own')).rejects.toThrow("no command 'own' here");
    anna.account.hasApp = true;
    anna.goTo(standIn.world.privateChannel([anna.account, standIn.person('Berta').account]));
    anna.command('own').catch(() => {});
    expect(await gateway.interaction()).toMatchObject({
      context: 2,
      user: { id: anna.id },
      authorizing_integration_owners: { '1': anna.id },
    });
    expect(() => standIn.person('Clara').goTo(anna.channel)).toThrow('not in that channel');
  });

  it.each<[string, object, Parameters<Person['command']>[1]]>([
    ['a required option left out', { required: true }, {}],
    ['an option that does not exist', {}, { other: 'a' }],
    ['a text too short', { min_length: 3 }, { it: 'ab' }],
    ['a text too long', { max_length: 3 }, { it: 'abcd' }],
    ['a text not among the choices', { choices: [{ name: 'a', value: 'a' }] }, { it: 'b' }],
    ['a number for a text', {}, { it: 4 }],
    ['a fraction for a whole number', { type: 4 }, { it: 4.5 }],
    ['a number too small', { type: 10, min_value: 1 }, { it: 0.5 }],
    ['a number too large', { type: 10, max_value: 1 }, { it: 1.5 }],
  ])('is not sent with %s', async (_, own, values) => {
    await app.register({ name: 'fit', options: [option(3, 'it', own)] });
    await expect(anna.command('fit', values)).rejects.toThrow(/'it'|'other'/);
  });
});

it('offers completions as they are typed, whatever else is missing', async () => {
  const options = [option(3, 'yarn', { required: true, autocomplete: true }), option(3, 'other')];
  await app.register({ name: 'fit', options });
  const choices = [{ name: 'Tweed', value: 'tweed' }];
  const offered = app.answering(gateway, anna.autocomplete('fit', { yarn: 'tw' }, 'yarn'), {
    type: 8,
    data: { choices },
  });
  expect(await offered).toEqual(choices);
  expect(objectIn(await gateway.interaction(), 'data').options).toEqual([
    { name: 'yarn', type: 3, value: 'tw', focused: true },
  ]);
  await expect(anna.autocomplete('fit', {}, 'other')).rejects.toThrow("completes no option 'other'");
});
