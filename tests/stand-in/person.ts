/** A person at her screen: she uses commands and controls, types, and sees what comes. */
import { type Answer, type Choice, type Manner, NeverAnswered, seenOutcome } from './answer.ts';
import { fillIn, type OptionValues } from './command-input.ts';
import { interactionEvent } from './events.ts';
import { type GivenFile, keptFile, NotPossible, Resolved } from './given.ts';
import type { Opening } from './interactions.ts';
import type { JsonObject } from './json.ts';
import { type FieldValues, submission } from './modal-input.ts';
import type { Platform } from './platform.ts';
import { owners } from './registry.ts';
import { SeenMessage, type SeenModal } from './seen.ts';
import type { Account, Channel } from './world.ts';

export class Person {
  readonly account: Account;
  private readonly platform: Platform;
  private place: Channel;

  constructor(platform: Platform, account: Account, place: Channel) {
    this.platform = platform;
    this.account = account;
    this.place = place;
  }

  get id(): string {
    return this.account.id;
  }

  /** Her direct message with the app. */
  get dm(): Channel {
    return this.platform.world.botDm(this.account);
  }

  /** Where she is typing now. */
  get channel(): Channel {
    return this.place;
  }

  goTo(channel: Channel): this {
    const isHers = channel.people.length === 0 || channel.people.includes(this.account);
    if (!isHers) throw new NotPossible(`${this.account.name} is not in that channel.`);
    this.place = channel;
    return this;
  }

  /** Calls a chat command, subcommands after a space: 'fit sleeve'. Rejects with InteractionFailed. */
  async command(path: string, values: OptionValues = {}, manner: Manner = {}): Promise<Answer> {
    return this.call('command', path, values, undefined, manner);
  }

  /** Types in an option and gets what the app offers to complete it. */
  async autocomplete(path: string, values: OptionValues, focused: string): Promise<readonly Choice[]> {
    const answer = await this.call('autocomplete', path, values, focused, {});
    return answer.kind === 'choices' ? answer.choices : [];
  }

  /** Presses a button by its custom id or its label. */
  async press(message: SeenMessage, which: string, manner: Manner = {}): Promise<Answer> {
    const isMeant = (button: { customId: string | undefined; label: string }) =>
      button.customId === which || button.label === which;
    const now = this.control(message, manner);
    const button = now.buttons.find((one) => one.customId === which) ?? now.buttons.find(isMeant);
    const gone = !button || button.disabled || button.customId === undefined;
    if (gone && !manner.evenIfGone) throw new NotPossible(`There is no live button '${which}'.`);
    const old = message.buttons.find(isMeant);
    const data = { component_type: 2, custom_id: button?.customId ?? old?.customId ?? which };
    return this.act('component', `button '${which}'`, message, data, manner);
  }

  /** Chooses in a select by option values or labels; people, roles and channels by id. */
  async select(
    message: SeenMessage,
    which: string,
    chosen: readonly string[],
    manner: Manner = {},
  ): Promise<Answer> {
    const select = this.control(message, manner).selects.find((one) => one.customId === which);
    if (!select || (select.disabled && !manner.evenIfGone)) {
      throw new NotPossible(`There is no live select '${which}'.`);
    }
    if (chosen.length < select.minValues || chosen.length > select.maxValues) {
      throw new NotPossible(`'${which}' takes ${select.minValues} to ${select.maxValues} choices.`);
    }
    const resolved = this.resolved(message.channel);
    const values = chosen.map((one) => {
      if (select.type !== 3) return resolved.mention(one);
      const option = select.options.find(({ value, label }) => value === one || label === one);
      if (!option) throw new NotPossible(`'${which}' has no option '${one}'.`);
      return option.value;
    });
    const data = { component_type: select.type, custom_id: which, values, ...resolved.onWire() };
    return this.act('component', `select '${which}'`, message, data, manner);
  }

  /** Sends a form off. To close it instead, do nothing: the app hears nothing of that either. */
  async submit(modal: SeenModal, values: FieldValues, manner: Manner = {}): Promise<Answer> {
    const { source, channel } = modal.openedBy;
    const data = submission(modal, values, this.resolved(channel));
    const opening = { what: `form '${modal.customId}'`, channel, source, focusedType: undefined };
    return this.open({ ...opening, deed: source ? 'modal from a message' : 'modal' }, data, manner);
  }

  /** Writes a message where she is. */
  say(text: string, files: readonly GivenFile[] = []): SeenMessage {
    const message = this.platform.messages.post({
      channel: this.place,
      author: this.account,
      content: text,
      embeds: [],
      components: [],
      attachments: files.map(keptFile),
      flags: 0,
      onlyFor: undefined,
      interactionId: undefined,
      replyTo: undefined,
    });
    return new SeenMessage(message);
  }

  /** Everything she sees where she is (or elsewhere): what all see, then what only she sees, oldest first. */
  sees(channel = this.place): readonly SeenMessage[] {
    return this.platform.messages.visibleTo(this.account, channel).map((message) => new SeenMessage(message));
  }

  /** A message as it is by now, or undefined where she cannot see it any more. */
  now(message: SeenMessage): SeenMessage | undefined {
    const stored = this.platform.messages.seen(this.account, message.stored);
    return stored && new SeenMessage(stored);
  }

  /** The newest message of the app's that is so, waiting for one to come where there is none. */
  async waitFor(
    isSo: (message: SeenMessage) => boolean,
    what = 'message',
    channel = this.place,
  ): Promise<SeenMessage> {
    const fits = (message: SeenMessage) => message.isFromApp && isSo(message);
    const there = this.sees(channel).findLast(fits);
    if (there) return there;
    const { messages, patience } = this.platform;
    let stop = () => {};
    const coming = new Promise<SeenMessage>((found) => {
      stop = messages.listen(channel, ({ kind, message }) => {
        const isHers = !message.onlyFor || message.onlyFor === this.account;
        const seen = new SeenMessage(message);
        if (kind !== 'removed' && isHers && fits(seen)) found(seen);
      });
    });
    const nothing = () => new NeverAnswered(`${this.account.name} waited in vain for: ${what}.`);
    return patience.wait(coming, nothing).finally(() => stop());
  }

  /** Ephemeral messages are gone from her screen, as after a restart of her client. */
  loseEphemerals(): void {
    this.platform.messages.vanishFor(this.account);
  }

  private async call(
    deed: 'command' | 'autocomplete',
    path: string,
    values: OptionValues,
    focused: string | undefined,
    manner: Manner,
  ): Promise<Answer> {
    const [name = '', ...below] = path.split(' ');
    const command = this.platform.registry.usable(name, this.account, this.place);
    if (!command) throw new NotPossible(`${this.account.name} has no command '${name}' here.`);
    const resolved = this.resolved(this.place);
    const { data, focusedType } = fillIn(command, below, { values, focused, resolved });
    const opening = { deed, what: `command '${path}'`, channel: this.place, source: undefined, focusedType };
    const types = command.definition.integration_types;
    return this.open(opening, data, manner, Array.isArray(types) ? types : [0]);
  }

  private act(
    deed: 'component',
    what: string,
    message: SeenMessage,
    data: JsonObject,
    manner: Manner,
  ): Promise<Answer> {
    const { channel, stored: source } = message;
    return this.open({ deed, what, channel, source, focusedType: undefined }, data, manner);
  }

  private async open(
    opening: Omit<Opening, 'by' | 'onlyUserInstalled'>,
    data: JsonObject,
    manner: Manner,
    installTypes?: readonly unknown[],
  ): Promise<Answer> {
    const { interactions, gateway } = this.platform;
    const by = this.account;
    const onlyUserInstalled = !('0' in owners(by, opening.channel));
    const interaction = interactions.open({ ...opening, by, onlyUserInstalled });
    gateway.dispatch(interactionEvent(this.platform, interaction, data, installTypes));
    const type = await interaction.acknowledged.promise;
    if (manner.until === 'acknowledged') return { kind: 'acknowledged', type, interaction };
    const silence = () =>
      new NeverAnswered(`The ${opening.what} was acknowledged with type ${type}, then nothing came.`);
    const outcome = await this.platform.patience.wait(interaction.outcome.promise, silence);
    return seenOutcome(outcome, interaction);
  }

  /** The message whose control is used: as it is now, or as she saw it where that may be out of date. */
  private control(message: SeenMessage, manner: Manner): SeenMessage {
    if (manner.evenIfGone) return message;
    const now = this.now(message);
    if (!now) throw new NotPossible('The message is gone.');
    return now;
  }

  private resolved(channel: Channel): Resolved {
    const { world, messages, address } = this.platform;
    return new Resolved(world, messages, address.http, channel);
  }
}
