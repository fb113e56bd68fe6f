import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { messageOf, modalOf } from './answer.ts';
import { SILENT } from './bad/row.ts';
import { objectIn, objectsIn } from './json.ts';
import type { FieldValues } from './modal-input.ts';
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
  anna = standIn.person('Anna');
});
afterEach(() => standIn.close());

describe('a select', () => {
  const shown = async (...components: object[]) => {
    await app.register({ name: 'fit' });
    const rows = components.map((component) => ({ type: 1, components: [component] }));
    const data = { content: 'choose', components: rows, ...SILENT };
    return messageOf(await app.answering(gateway, anna.command('fit'), { type: 4, data }));
  };

  it('sends values, people, and what the ids stand for', async () => {
    const options = ['a', 'b', 'c'].map((value) => ({ label: value.toUpperCase(), value }));
    const message = await shown(
      { type: 3, custom_id: 'sizes', options, max_values: 2 },
      { type: 5, custom_id: 'who' },
      { type: 8, custom_id: 'where' },
      { type: 6, custom_id: 'role' },
    );
    anna.select(message, 'sizes', ['A', 'b']).catch(() => {});
    expect(objectIn(await gateway.interaction(2), 'data')).toMatchObject({
      component_type: 3,
      values: ['a', 'b'],
    });
    anna.select(message, 'who', [anna.id]).catch(() => {});
    expect(objectIn(await gateway.interaction(3), 'data')).toMatchObject({
      resolved: { users: { [anna.id]: {} }, members: {} },
    });
    anna.select(message, 'where', [anna.channel.id]).catch(() => {});
    expect(objectIn(await gateway.interaction(4), 'data')).toMatchObject({
      resolved: { channels: { [anna.channel.id]: {} } },
    });
    anna.select(message, 'role', [standIn.guild.id]).catch(() => {});
    expect(objectIn(await gateway.interaction(5), 'data')).toMatchObject({
      resolved: { roles: { [standIn.guild.id]: {} } },
    });
  });

  it('takes neither too many choices nor strange ones, and not when it is disabled', async () => {
    const options = [{ label: 'A', value: 'a' }];
    const message = await shown(
      { type: 3, custom_id: 'sizes', options },
      { type: 3, custom_id: 'off', options, disabled: true },
    );
    await expect(anna.select(message, 'sizes', ['a', 'a'])).rejects.toThrow('takes 1 to 1 choices');
    await expect(anna.select(message, 'sizes', ['d'])).rejects.toThrow("no option 'd'");
    await expect(anna.select(message, 'off', ['a'])).rejects.toThrow("no live select 'off'");
    await expect(standIn.person('Berta').press(message, 'sizes')).rejects.toThrow('no live button');
  });
});

describe('a form', () => {
  const label = (component: object) => ({ type: 18, label: 'It', component });
  const options = ['a', 'b'].map((value) => ({ label: value, value }));
  const opened = async (component: object) => {
    await app.register({ name: 'fit' });
    const data = {
      custom_id: 'form',
      title: 'A form',
      components: [label({ custom_id: 'it', ...component })],
    };
    return modalOf(await app.answering(gateway, anna.command('fit'), { type: 9, data }));
  };

  it.each<[string, object, FieldValues, object]>([
    ['a text', { type: 4, style: 1 }, { it: '22' }, { value: '22' }],
    ['a text left as it was', { type: 4, style: 1, value: '20' }, {}, { value: '20' }],
    ['an optional text left empty', { type: 4, style: 1, required: false }, {}, { value: '' }],
    ['a select', { type: 3, options }, { it: ['b'] }, { values: ['b'] }],
    ['a radio choice', { type: 21, options }, { it: 'b' }, { value: 'b' }],
    ['an optional radio choice', { type: 21, options, required: false }, {}, { value: null }],
    ['ticked boxes', { type: 22, options }, { it: ['a', 'b'] }, { values: ['a', 'b'] }],
    ['a ticked box', { type: 23 }, { it: true }, { value: true }],
    ['a box left alone', { type: 23, default: true }, {}, { value: true }],
  ])('sends %s', async (_, component, values, sent) => {
    anna.submit(await opened(component), values).catch(() => {});
    const event = await gateway.interaction(2);
    const [part] = objectsIn(objectIn(event, 'data'), 'components');
    expect(event.type).toBe(5);
    expect(part).toMatchObject({ type: 18, component: { custom_id: 'it', ...sent } });
  });

  it('sends a file', async () => {
    const modal = await opened({ type: 19 });
    anna.submit(modal, { it: [{ name: 'a.txt', bytes: new Uint8Array(3) }] }).catch(() => {});
    const data = objectIn(await gateway.interaction(2), 'data');
    const [file] = Object.values(objectIn(objectIn(data, 'resolved'), 'attachments'));
    expect(file).toMatchObject({ filename: 'a.txt', size: 3 });
  });

  it.each<[string, object, FieldValues]>([
    ['a required text left empty', { type: 4, style: 1 }, {}],
    ['a text too short', { type: 4, style: 1, min_length: 3 }, { it: 'ab' }],
    ['a text too long', { type: 4, style: 1, max_length: 3 }, { it: 'abcd' }],
    ['a field that does not exist', { type: 4, style: 1 }, { it: 'a', other: 'b' }],
    ['no choice where one is due', { type: 3, options }, { it: [] }],
    ['two choices where one may be', { type: 3, options }, { it: ['a', 'b'] }],
    ['a choice that does not exist', { type: 21, options }, { it: 'c' }],
    ['no file', { type: 19 }, { it: [] }],
  ])('cannot be sent with %s', async (_, component, values) => {
    await expect(anna.submit(await opened(component), values)).rejects.toThrow(/'it'|'other'/);
  });
});
