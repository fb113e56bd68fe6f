import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BAD_COMMANDS, BAD_GUILD_COMMANDS } from './bad/commands.ts';
import { BAD_CONTROLS, BAD_LAYOUTS } from './bad/components.ts';
import { BAD_FILES, BAD_MESSAGES } from './bad/messages.ts';
import { BAD_MODALS } from './bad/modals.ts';
import { type BadPayload, bad, SILENT, times } from './bad/row.ts';
import type { Interaction } from './interactions.ts';
import type { Person } from './person.ts';
import { type RawAnswer, RawApp } from './raw-app.ts';
import { VIOLATION_CODES } from './rules/spot.ts';
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

/** The 400 that says so, and the violations recorded, no more and no fewer. */
function expectRefusal(answer: RawAnswer, { breaches }: BadPayload): void {
  expect(answer.breaches).toEqual(breaches);
  expect(answer.recorded.verdict.kind).toBe('refused');
  expect([400, 413]).toContain(answer.status);
  expect(answer.body.code).toEqual(expect.any(Number));
}

const perMessage: readonly [string, readonly BadPayload[]][] = [
  ['messages', BAD_MESSAGES],
  ['files', BAD_FILES],
  ['buttons and selects', BAD_CONTROLS],
  ['components V2', BAD_LAYOUTS],
];

describe.each(perMessage)('the stand-in refuses, of %s,', (_, rows) => {
  it.each(rows)('$what', async (row) => {
    const path = `/channels/${anna.dm.id}/messages`;
    expectRefusal(await app.send('POST', path, row.body, row.files), row);
  });
});

describe('the stand-in refuses, of commands,', () => {
  it.each(BAD_COMMANDS)('$what', async (row) => {
    expectRefusal(await app.send('PUT', `/applications/${standIn.appId}/commands`, row.body), row);
  });

  it.each(BAD_GUILD_COMMANDS)('$what', async (row) => {
    const path = `/applications/${standIn.appId}/guilds/${standIn.guild.id}/commands`;
    expectRefusal(await app.send('PUT', path, row.body), row);
  });
});

const BAD_CALLBACKS: readonly BadPayload[] = [
  bad('a message as an update of nothing', { type: 7, data: {} }, 'callback-not-for-this-interaction type'),
  bad(
    'choices where nothing is completed',
    { type: 8, data: { choices: [] } },
    'callback-not-for-this-interaction type',
  ),
  bad('a type that does not exist', { type: 99 }, 'callback-not-for-this-interaction type'),
  bad('no object', [], 'wrong-type'),
  bad('a reply without data', { type: 4 }, 'missing data'),
  bad('a deferral with content', { type: 5, data: { content: 'a' } }, 'unknown-key data.content'),
  bad('a deferral with other flags', { type: 5, data: { flags: 1 << 15 } }, 'flag-not-allowed data.flags'),
  bad(
    '2001 characters',
    { type: 4, data: { content: 'x'.repeat(2001), ...SILENT } },
    'too-long data.content',
  ),
  bad(
    'a voice message',
    { type: 4, data: { content: 'a', ...SILENT, flags: 1 << 13 } },
    'flag-not-allowed data.flags',
  ),
];

const choices = (...list: object[]) => ({ type: 8, data: { choices: list } });
const BAD_CHOICES: readonly BadPayload[] = [
  bad('26', choices(...times(26, (n) => ({ name: `${n}`, value: `${n}` }))), 'too-many data.choices'),
  bad('a name of 101', choices({ name: 'x'.repeat(101), value: 'a' }), 'too-long data.choices.0.name'),
  bad('an empty name', choices({ name: '', value: 'a' }), 'too-short data.choices.0.name'),
  bad('a value of 101', choices({ name: 'a', value: 'x'.repeat(101) }), 'too-long data.choices.0.value'),
  bad('a number for a text', choices({ name: 'a', value: 1 }), 'choice-of-wrong-type data.choices.0.value'),
  bad(
    'a name twice',
    choices({ name: 'a', value: 'a' }, { name: 'a', value: 'b' }),
    'choice-twice data.choices',
  ),
  bad('a reply', { type: 4, data: { content: 'a', ...SILENT } }, 'callback-not-for-this-interaction type'),
];

describe('the stand-in refuses, of answers to interactions,', () => {
  const option = { type: 3, name: 'yarn', description: 'Which.', autocomplete: true };
  const open = (deed: 'command' | 'autocomplete'): Interaction =>
    standIn.interactions.open({
      deed,
      what: 'test',
      by: anna.account,
      channel: anna.channel,
      source: undefined,
      focusedType: option.type,
      onlyUserInstalled: false,
    });

  it.each(BAD_CALLBACKS)('to a command, $what', async (row) => {
    expectRefusal(await app.answer(open('command'), row.body), row);
  });
  it.each(BAD_CHOICES)('of completions, $what', async (row) => {
    expectRefusal(await app.answer(open('autocomplete'), row.body), row);
  });
  it.each(BAD_MODALS)('of forms, $what', async (row) => {
    expectRefusal(await app.answer(open('command'), { type: 9, data: row.body }), row);
  });
});

describe('the stand-in refuses, of edits,', () => {
  it('taking components V2 off again, and content beside them', async () => {
    const path = `/channels/${anna.dm.id}/messages`;
    const sent = await app.send('POST', path, {
      flags: 1 << 15,
      components: [{ type: 10, content: 'a' }],
      ...SILENT,
    });
    const off = await app.send('PATCH', `${path}/${sent.body.id}`, { flags: 0 });
    expectRefusal(off, bad('', {}, 'flag-taken-off flags'));
    const content = await app.send('PATCH', `${path}/${sent.body.id}`, { content: 'a', ...SILENT });
    expectRefusal(content, bad('', {}, 'not-with-components-v2 content'));
  });

  it('leaving nothing in the message', async () => {
    const path = `/channels/${anna.dm.id}/messages`;
    const sent = await app.send('POST', path, { content: 'a', ...SILENT });
    expectRefusal(
      await app.send('PATCH', `${path}/${sent.body.id}`, { content: null }),
      bad('', {}, 'empty-message'),
    );
  });
});

it('refuses a route that does not exist and says so', async () => {
  const answer = await app.send('POST', '/guilds/1/prune');
  expect(answer.status).toBe(404);
  expect(answer.breaches).toEqual(['unknown-route']);
});

it('has a row in these tables for every code of violation', () => {
  const committed = new Set(standIn.record.violations.map((violation) => violation.code));
  expect(VIOLATION_CODES.filter((code) => !committed.has(code))).toEqual([]);
});
