/** What a person reads on her screen: messages with their controls, and forms. */
import type { Interaction } from './interactions.ts';
import { isObject, type JsonObject, numberIn, objectIn, objectsIn, textIn } from './json.ts';
import { isEphemeral, LOADING, type Message } from './messages.ts';
import { textsOfEmbed } from './rules/embeds.ts';
import { displayedTexts, everyComponent } from './rules/tree.ts';
import type { Channel } from './world.ts';

export interface SeenButton {
  readonly customId: string | undefined;
  readonly label: string;
  readonly style: number;
  readonly url: string | undefined;
  readonly disabled: boolean;
}

export interface SeenSelect {
  readonly customId: string;
  /** Component type: 3 options, 5 people, 6 roles, 7 people and roles, 8 channels. */
  readonly type: number;
  readonly placeholder: string;
  readonly minValues: number;
  readonly maxValues: number;
  readonly disabled: boolean;
  readonly options: readonly SeenOption[];
}

export interface SeenOption {
  readonly label: string;
  readonly value: string;
  readonly description: string;
  readonly chosen: boolean;
}

export interface SeenFile {
  readonly name: string;
  /** The text read aloud in the picture's stead, '' for none. */
  readonly altText: string;
  readonly contentType: string;
  readonly bytes: Uint8Array;
}

/** One state of a message, as somebody saw it; a later edit makes another one. */
export class SeenMessage {
  readonly stored: Message;

  constructor(stored: Message) {
    this.stored = stored;
  }

  get id(): string {
    return this.stored.id;
  }

  get channel(): Channel {
    return this.stored.channel;
  }

  get content(): string {
    return this.stored.content;
  }

  get embeds(): readonly JsonObject[] {
    return this.stored.embeds;
  }

  get components(): readonly JsonObject[] {
    return this.stored.components;
  }

  /** Counts from 1, one more with each edit. */
  get version(): number {
    return this.stored.version;
  }

  get isEphemeral(): boolean {
    return isEphemeral(this.stored);
  }

  /** A deferred reply that says 'thinking'. */
  get isLoading(): boolean {
    return (this.stored.flags & LOADING) !== 0;
  }

  get isFromApp(): boolean {
    return this.stored.author.isApp;
  }

  /** Everything legible: content, embeds, displayed texts, in that order, a line each. */
  get text(): string {
    const parts = [this.content, ...this.embeds.flatMap(textsOfEmbed), ...displayedTexts(this.components)];
    return parts.filter((part) => part !== '').join('\n');
  }

  get buttons(): readonly SeenButton[] {
    return this.ofTypes([2]).map((button) => ({
      customId: typeof button.custom_id === 'string' ? button.custom_id : undefined,
      label: textIn(button, 'label') || textIn(objectIn(button, 'emoji'), 'name'),
      style: numberIn(button, 'style') ?? 0,
      url: typeof button.url === 'string' ? button.url : undefined,
      disabled: button.disabled === true,
    }));
  }

  get selects(): readonly SeenSelect[] {
    return this.ofTypes([3, 5, 6, 7, 8]).map(seenSelect);
  }

  get files(): readonly SeenFile[] {
    return this.stored.attachments.map((file) => ({
      name: file.filename,
      altText: file.description ?? '',
      contentType: file.contentType,
      bytes: file.bytes,
    }));
  }

  private ofTypes(types: readonly number[]): readonly JsonObject[] {
    return [...everyComponent(this.components)].filter((part) => types.includes(numberIn(part, 'type') ?? 0));
  }
}

function seenSelect(select: JsonObject): SeenSelect {
  return {
    customId: textIn(select, 'custom_id'),
    type: numberIn(select, 'type') ?? 0,
    placeholder: textIn(select, 'placeholder'),
    minValues: numberIn(select, 'min_values') ?? 1,
    maxValues: numberIn(select, 'max_values') ?? 1,
    disabled: select.disabled === true,
    options: objectsIn(select, 'options').map((option) => ({
      label: textIn(option, 'label'),
      value: textIn(option, 'value'),
      description: textIn(option, 'description'),
      chosen: option.default === true,
    })),
  };
}

/** A form that opened over the chat. */
export class SeenModal {
  readonly definition: JsonObject;
  /** The interaction it answered. */
  readonly openedBy: Interaction;

  constructor(definition: JsonObject, openedBy: Interaction) {
    this.definition = definition;
    this.openedBy = openedBy;
  }

  get customId(): string {
    return textIn(this.definition, 'custom_id');
  }

  get title(): string {
    return textIn(this.definition, 'title');
  }

  /** Labels and text of the form, a line each. */
  get text(): string {
    const parts = [...everyComponent(this.definition.components)].flatMap((part) => [
      textIn(part, 'label'),
      textIn(part, 'description'),
      part.type === 10 ? textIn(part, 'content') : '',
    ]);
    return parts.filter((part) => part !== '').join('\n');
  }

  /** The fields to fill in, in order. */
  get fields(): readonly JsonObject[] {
    return [...everyComponent(this.definition.components)].filter(
      (part) => isObject(part) && typeof part.custom_id === 'string',
    );
  }
}
