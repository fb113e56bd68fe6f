/**
 * A knitter who goes the whole way through an interview, in a server or in the direct message, and is not put off: where
 * nothing comes back she does the same again, on the last message that she saw.
 */

import { messageOf, modalOf, NeverAnswered } from '../../stand-in/answer.ts';
import { InteractionFailed } from '../../stand-in/interactions.ts';
import type { Person } from '../../stand-in/person.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import { press, questionOf, read, sessionOf } from './circle.ts';

export interface Errand {
  /** The wish, and what she types at each question. */
  readonly flow: string;
  readonly answers: ReadonlyMap<string, string>;
  readonly where: 'server' | 'direct message';
}

const SAID = /^(Noted:|That was answered already:)/;

export class Knitter {
  readonly person: Person;
  private readonly errand: Errand;
  /** The last message that she saw. */
  message: SeenMessage | undefined;
  /** What she was shown to be taken, in order; each question with what she typed. */
  readonly taken: [question: string, typed: string][] = [];
  /** What she tried, without a sign whether it was taken. */
  unsure: [question: string, typed: string] | undefined;
  /** Deeds that came to nothing. */
  readonly failed: (InteractionFailed | NeverAnswered)[] = [];
  plan: SeenMessage | undefined;
  private byForm = false;

  constructor(person: Person, errand: Errand) {
    this.person = person;
    this.errand = errand;
    if (errand.where === 'direct message') person.goTo(person.dm);
  }

  get session(): string | undefined {
    return this.message === undefined ? undefined : sessionOf(this.message);
  }

  /** One deed. False where nothing came of it. */
  async step(): Promise<boolean> {
    try {
      await this.deed();
      return true;
    } catch (error) {
      if (!(error instanceof InteractionFailed || error instanceof NeverAnswered)) throw error;
      this.failed.push(error);
      return false;
    }
  }

  /** Deed after deed until she holds her plan. */
  async goAllTheWay(): Promise<void> {
    while (this.plan === undefined) await this.step();
  }

  /** What she gave up waiting for may have come by now: as a change of the message, or below it. */
  private lookAgain(): void {
    const { message, unsure } = this;
    if (message === undefined) return;
    const now =
      this.errand.where === 'server'
        ? this.person.now(message)
        : this.person.sees().findLast((m) => m.isFromApp && m.buttons.length > 0);
    if (now === undefined || (now.id === message.id && now.version === message.version)) return;
    if (unsure !== undefined && questionOf(now) !== unsure[0] && SAID.test(read(now))) this.took(unsure);
    this.message = now;
    if (now.files.length > 0) this.plan = now;
  }

  private took(answer: [question: string, typed: string]): void {
    this.taken.push(answer);
    this.unsure = undefined;
    this.byForm = false;
  }

  private async deed(): Promise<void> {
    this.lookAgain();
    if (this.plan !== undefined) return;
    const { message, person } = this;
    if (message === undefined) {
      const begun = messageOf(await person.command('fit start', { wish: this.errand.flow }));
      this.message = begun;
      return;
    }
    const question = questionOf(message);
    if (question === undefined) {
      const shown = await press(person, message, message.buttons[0]?.label ?? '');
      this.message = shown;
      if (shown.files.length > 0) this.plan = shown;
      return;
    }
    const typed = this.errand.answers.get(question);
    if (typed === undefined) throw new Error(`she knows no answer to '${question}'`);
    this.unsure ??= [question, typed];
    const shown = await this.answer(message, typed);
    if (questionOf(shown) === question) {
      // Taken for an answer to the question before, and so not taken: she is asked once more.
      this.message = shown;
      return;
    }
    if (read(shown).startsWith('What would you like to do?')) {
      // The menu: the bot ended before it knew what she would answer here. The buttons above still do.
      this.byForm = true;
      return;
    }
    // She reads either that it was noted, or that it was answered already: taken in both.
    if (!SAID.test(read(shown))) throw new Error(`unforeseen: ${read(shown)}`);
    this.took([question, typed]);
    this.message = shown;
  }

  private async answer(message: SeenMessage, typed: string): Promise<SeenMessage> {
    const { person } = this;
    if (this.errand.where === 'direct message' && !this.byForm) {
      const said = person.say(typed);
      return person.waitFor((m) => BigInt(m.id) > BigInt(said.id), 'an answer');
    }
    const form = modalOf(await person.press(message, 'Type my answer', { evenIfGone: true }));
    return messageOf(await person.submit(form, { answer: typed }));
  }
}
