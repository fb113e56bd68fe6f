/** The check that every test of the bot ends with, tried on payloads that are wrong. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { SILENT } from '../../stand-in/bad/row.ts';
import { RawApp } from '../../stand-in/raw-app.ts';
import { type StandIn, startStandIn } from '../../stand-in/stand-in.ts';
import { nothingForbidden } from './circle.ts';

let standIn: StandIn;
let folder: string;
beforeEach(async () => {
  standIn = await startStandIn({ silence: 'not demanded' });
  folder = mkdtempSync(join(tmpdir(), 'easewright-forbidden-'));
});
afterEach(async () => {
  await standIn.close();
  rmSync(folder, { recursive: true, force: true });
});

function send(body: object): Promise<unknown> {
  const anna = standIn.person('Anna');
  return new RawApp(standIn).send('POST', `/channels/${anna.dm.id}/messages`, body);
}

/** A description in the platform's form, in which a message is shorter than it is for us. */
function description(): string {
  const path = join(folder, 'openapi.json');
  const MessageCreateRequest = { type: 'object', properties: { content: { type: 'string', maxLength: 5 } } };
  writeFileSync(
    path,
    JSON.stringify({ openapi: '3.1.0', components: { schemas: { MessageCreateRequest } } }),
  );
  return path;
}

it('fails where a payload breaks one of our rules', async () => {
  await send({ content: 'x'.repeat(2001), ...SILENT });
  expect(() => nothingForbidden({ standIn })).toThrow(/content .*2000/);
});

it('fails where somebody would have been called by name', async () => {
  await send({ content: '@everyone', allowed_mentions: { parse: ['everyone'] } });
  expect(() => nothingForbidden({ standIn })).toThrow(/would have called @?everyone/);
});

it('fails where the platform’s own description refuses what our rules let through', async () => {
  await send({ content: 'longer', ...SILENT });
  expect(() => nothingForbidden({ standIn }, description())).toThrow(
    /MessageCreateRequest\/content must NOT have more than 5 characters/,
  );
});

it('passes what all of them take', async () => {
  await send({ content: 'short', ...SILENT });
  expect(() => nothingForbidden({ standIn }, description())).not.toThrow();
});
