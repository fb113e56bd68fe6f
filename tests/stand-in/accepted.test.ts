import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SILENT, times } from './bad/row.ts';
import type { Person } from './person.ts';
import { RawApp } from './raw-app.ts';
import { openApiPath, Schemas, schemaFor, schemasIn } from './schemas.ts';
import { type StandIn, startStandIn } from './stand-in.ts';

let standIn: StandIn;
let app: RawApp;
let anna: Person;

beforeAll(async () => {
  standIn = await startStandIn({ requestsPerSecond: 10_000, perRoute: { limit: 10_000, windowMs: 1000 } });
  app = new RawApp(standIn);
  anna = standIn.person('Anna');
});
afterAll(() => standIn.close());

const x = (length: number) => 'x'.repeat(length);
const button = (n: number) => ({ type: 2, style: 1, label: x(80), custom_id: `${n}`.padEnd(100, 'x') });
const text = (length: number) => ({ type: 10, content: x(length) });
const option = (n: number) => ({
  label: x(100),
  value: `${n}`.padEnd(100, 'x'),
  description: x(100),
  emoji: { name: '🧶' },
});

/** Messages at the very limits of the documentation. */
const MESSAGES: readonly [string, object][] = [
  ['2000 characters', { content: x(2000), ...SILENT }],
  [
    '5 rows of 5 buttons',
    {
      content: 'a',
      ...SILENT,
      components: times(5, (r) => ({ type: 1, components: times(5, (n) => button(5 * r + n)) })),
    },
  ],
  [
    'a select of 25',
    {
      components: [
        {
          type: 1,
          components: [
            {
              type: 3,
              custom_id: 's',
              placeholder: x(150),
              min_values: 0,
              max_values: 25,
              options: times(25, option),
            },
          ],
        },
      ],
    },
  ],
  [
    'an embed of 25 fields',
    {
      embeds: [
        {
          title: x(256),
          footer: { text: x(100) },
          fields: times(25, () => ({ name: x(100), value: x(100) })),
        },
      ],
    },
  ],
  ['6000 characters in embeds', { embeds: [{ description: x(4096) }, { description: x(1904) }] }],
  ['10 embeds', { embeds: times(10, () => ({ title: 'a' })) }],
  [
    '40 components V2 of 4000 characters',
    {
      flags: 1 << 15,
      ...SILENT,
      components: [{ type: 17, components: [text(3962), ...times(38, () => text(1))] }],
    },
  ],
  [
    'a section, a gallery and a separator',
    {
      flags: 1 << 15,
      ...SILENT,
      components: [
        {
          type: 9,
          components: times(3, () => text(1)),
          accessory: { type: 11, media: { url: 'https://a.test/a.png' }, description: x(1024) },
        },
        { type: 12, items: times(10, () => ({ media: { url: 'https://a.test/a.png' } })) },
        { type: 14, divider: true, spacing: 2 },
      ],
    },
  ],
];

const label = (component: object) => ({ type: 18, label: x(45), description: x(100), component });
const MODAL = {
  custom_id: x(100),
  title: x(45),
  components: [
    label({
      type: 4,
      custom_id: 'a',
      style: 2,
      min_length: 0,
      max_length: 4000,
      value: x(4000),
      placeholder: x(100),
    }),
    label({
      type: 3,
      custom_id: 'b',
      options: times(25, option),
      min_values: 0,
      max_values: 25,
      required: false,
    }),
    label({ type: 21, custom_id: 'c', options: times(10, (n) => ({ label: x(100), value: `${n}` })) }),
    label({ type: 22, custom_id: 'd', options: times(10, (n) => ({ label: x(100), value: `${n}` })) }),
    { type: 10, content: x(4000) },
  ],
};

const COMMANDS = times(100, (n) => ({
  name: `${n}`.padStart(32, '-'),
  description: x(100),
  contexts: [0, 1, 2],
  integration_types: [0, 1],
  options: times(25, (o) => ({
    type: 3,
    name: `o${o}`,
    description: x(100),
    required: o < 5,
    max_length: 6000,
  })),
}));

async function sendAll(): Promise<void> {
  for (const [, body] of MESSAGES) await app.send('POST', `/channels/${anna.dm.id}/messages`, body);
  await app.send('PUT', `/applications/${standIn.appId}/commands`, COMMANDS);
  const opening = {
    what: 'test',
    by: anna.account,
    channel: anna.channel,
    source: undefined,
    onlyUserInstalled: false,
  };
  await app.answer(standIn.interactions.open({ ...opening, deed: 'command', focusedType: undefined }), {
    type: 9,
    data: MODAL,
  });
  const choices = times(25, (n) => ({ name: `${n}`.padEnd(100, 'x'), value: `${n}`.padEnd(100, 'x') }));
  await app.answer(standIn.interactions.open({ ...opening, deed: 'autocomplete', focusedType: 3 }), {
    type: 8,
    data: { choices },
  });
}

it('takes what is just within the limits, and so does the platform’s own description where it is at hand', async () => {
  await sendAll();
  const verdicts = standIn.record.requests.map((request) => request.verdict.kind);
  expect(verdicts).toEqual(times(MESSAGES.length + 3, () => 'accepted'));
  expect(standIn.record.violations).toEqual([]);
  const path = openApiPath();
  if (path) expect(schemasIn(path).faults(standIn.record.requests)).toEqual([]);
});

describe('a description in the platform’s form', () => {
  const content = { type: 'object', properties: { content: { type: 'string', maxLength: 5 } } };
  const path = join(mkdtempSync(join(tmpdir(), 'openapi-')), 'openapi.json');
  const schemas = {
    MessageCreateRequest: content,
    ModalInteractionCallbackRequest: { type: 'object', required: ['data'] },
  };
  writeFileSync(path, JSON.stringify({ openapi: '3.1.0', components: { schemas } }));

  it('is asked about the schema that belongs to a request', async () => {
    const long = await app.send('POST', `/channels/${anna.dm.id}/messages`, { content: 'longer', ...SILENT });
    const short = await app.send('POST', `/channels/${anna.dm.id}/messages`, { content: 'short', ...SILENT });
    const modal = await app.answer({ id: '1', token: 'a' }, { type: 9 });
    expect([long, short, modal].map((answer) => schemaFor(answer.recorded))).toEqual([
      'MessageCreateRequest',
      'MessageCreateRequest',
      'ModalInteractionCallbackRequest',
    ]);
    const faults = new Schemas(path).faults([long.recorded, short.recorded, modal.recorded]);
    expect(faults.map(({ path: where, says }) => `${where} ${says}`)).toEqual([
      '/content must NOT have more than 5 characters',
      " must have required property 'data'",
    ]);
  });

  it('is not asked about other requests', async () => {
    const answer = await app.send('GET', '/users/@me');
    expect(schemaFor(answer.recorded)).toBeUndefined();
    expect(new Schemas(path).faults([answer.recorded])).toEqual([]);
  });
});
