/** What the rules need to know of a message that is sent or edited. */
import type { Message } from '../messages.ts';
import type { Platform } from '../platform.ts';
import type { FilePart } from '../rules/files.ts';
import type { MessageSetting, MessageWay } from '../rules/messages.ts';

/** `standing` is the message before an edit, undefined for a new one. */
export function messageSetting(
  platform: Platform,
  way: MessageWay,
  sent: readonly FilePart[],
  standing: Message | undefined,
): MessageSetting {
  return {
    way,
    sent,
    standing,
    before: new Map(standing?.attachments.map((file) => [file.id, file])),
    silenceDemanded: platform.settings.silence === 'demanded',
  };
}
