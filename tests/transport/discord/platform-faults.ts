/** What the platform would say of a page as a new message, by the stand-in's rules. */
import { type Page, payload } from '../../../src/transport/discord/page.ts';
import { message } from '../../stand-in/rules/messages.ts';
import { inspect, type Violation } from '../../stand-in/rules/spot.ts';

const TYPES = new Map([
  ['png', 'image/png'],
  ['pdf', 'application/pdf'],
]);

export function platformFaults(page: Page): Violation[] {
  const { body, files } = payload(page);
  const sent = files.map((file, n) => ({
    key: `${n}`,
    name: file.name,
    contentType: TYPES.get(file.name.split('.').at(-1) ?? '') ?? 'text/plain',
    bytes: Buffer.from(file.data as string | Uint8Array),
  }));
  const setting = {
    way: 'reply',
    sent,
    standing: undefined,
    before: new Map(),
    silenceDemanded: true,
  } as const;
  return inspect(JSON.parse(JSON.stringify(body)), message(setting));
}
