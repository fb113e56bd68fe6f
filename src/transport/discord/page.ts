/** A message as it is shown: texts and controls in order, with its files. Built as the platform's own data, and as nothing else. */
import {
  type APIActionRowComponent,
  type APIButtonComponent,
  type APIComponentInMessageActionRow,
  type APIMessageTopLevelComponent,
  type APISelectMenuOption,
  ButtonStyle,
  ComponentType,
  MessageFlags,
  type RawFile,
} from 'discord.js';
import { ALTERNATIVE, BUTTON_LABEL, BUTTONS_IN_ROW, OPTION_TEXT, SELECT_OPTIONS } from './limits.ts';
import { atMost } from './typed.ts';

export interface Page {
  readonly parts: readonly APIMessageTopLevelComponent[];
  readonly files: readonly PageFile[];
}

export interface PageFile {
  readonly name: string;
  readonly data: Uint8Array | string;
  /** Says what a picture shows; '' for a file that is text itself. */
  readonly alternative: string;
}

export function page(parts: readonly APIMessageTopLevelComponent[], files: readonly PageFile[] = []): Page {
  return { parts, files };
}

/** A paragraph in the platform's markup: what was typed goes through `asTyped` first. */
export function text(content: string): APIMessageTopLevelComponent {
  return { type: ComponentType.TextDisplay, content };
}

/** A file to open or keep. */
export function shownFile(name: string): APIMessageTopLevelComponent {
  return { type: ComponentType.File, file: { url: `attachment://${name}` } };
}

/** Pictures beside each other, each with its text alternative. */
export function gallery(pictures: readonly PageFile[]): APIMessageTopLevelComponent {
  return {
    type: ComponentType.MediaGallery,
    items: pictures.map(({ name, alternative }) => ({
      media: { url: `attachment://${name}` },
      description: atMost(alternative, ALTERNATIVE),
    })),
  };
}

/** A page of one paragraph. */
export function note(content: string): Page {
  return page([text(content)]);
}

export interface Control {
  readonly label: string;
  readonly id: string;
  readonly style?: 'first' | 'plain' | 'careful';
}

const STYLES = {
  first: ButtonStyle.Primary,
  plain: ButtonStyle.Secondary,
  careful: ButtonStyle.Danger,
} as const;

/** Buttons in rows of five; of two that do the same, the first. */
export function buttons(controls: readonly Control[]): APIMessageTopLevelComponent[] {
  const made = distinct(controls, ({ id }) => id).map(
    ({ label, id, style = 'plain' }): APIButtonComponent => ({
      type: ComponentType.Button,
      style: STYLES[style],
      label: atMost(label, BUTTON_LABEL),
      custom_id: id,
    }),
  );
  return inGroups(made, BUTTONS_IN_ROW).map(row);
}

export interface Choice {
  readonly label: string;
  readonly value: string;
  readonly about?: string;
  readonly chosen?: boolean;
}

export interface Choosing {
  readonly id: (list: number) => string;
  readonly hint: string;
  /** How many may be picked together; one where it is left out. */
  readonly most?: number;
  readonly least?: number;
}

/** Choices as lists to pick from, as many lists as it takes. */
export function lists(choices: readonly Choice[], { id, hint, most = 1, least = 1 }: Choosing) {
  const groups = inGroups(
    distinct(choices, ({ value }) => value),
    SELECT_OPTIONS,
  );
  return groups.map((group, i): APIMessageTopLevelComponent => {
    const options = group.map(
      ({ label, value, about, chosen }): APISelectMenuOption => ({
        label: atMost(label, OPTION_TEXT),
        value,
        ...(about === undefined ? {} : { description: atMost(about, OPTION_TEXT) }),
        ...(chosen === true ? { default: true } : {}),
      }),
    );
    return row([
      {
        type: ComponentType.StringSelect,
        custom_id: id(i),
        placeholder: atMost(groups.length > 1 ? `${hint} (${i + 1} of ${groups.length})` : hint, OPTION_TEXT),
        options,
        min_values: least,
        max_values: Math.min(most, options.length),
      },
    ]);
  });
}

export function row(
  components: APIComponentInMessageActionRow[],
): APIActionRowComponent<APIComponentInMessageActionRow> {
  return { type: ComponentType.ActionRow, components };
}

/** Who sees a message; it is chosen when it is sent, and cannot be changed. */
export type Seen = 'by all' | 'by her alone';

/** What is sent: nothing in it calls anybody by name. Old files of an edited message go. */
export function payload({ parts, files }: Page, seen: Seen = 'by all') {
  return {
    body: {
      flags: MessageFlags.IsComponentsV2 | (seen === 'by all' ? 0 : MessageFlags.Ephemeral),
      components: parts,
      allowed_mentions: { parse: [] },
      attachments: files.map(({ alternative }, n) => ({
        id: `${n}`,
        ...(alternative === '' ? {} : { description: atMost(alternative, ALTERNATIVE) }),
      })),
    },
    files: files.map(
      ({ name, data }): RawFile => ({ name, data: typeof data === 'string' ? data : Buffer.from(data) }),
    ),
  };
}

function distinct<T>(items: readonly T[], key: (item: T) => string): T[] {
  const first = new Map<string, T>();
  for (const item of items) if (!first.has(key(item))) first.set(key(item), item);
  return [...first.values()];
}

function inGroups<T>(items: readonly T[], most: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / most) }, (_, i) =>
    items.slice(i * most, (i + 1) * most),
  );
}
