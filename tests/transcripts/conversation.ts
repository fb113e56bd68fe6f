/** Whole conversations, from the first question to the outcome, held by a desk on a store of its own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDesk } from '../../src/desk.ts';
import type { Reply } from '../../src/dialogue/message.ts';
import type { Outcome } from '../../src/fit/plan.ts';
import { loadFlows } from '../../src/library.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { sumQuestion, sumSaid, wordTally } from '../../src/present/sum-text.ts';
import { openStore } from '../../src/store/sqlite.ts';
import type { Desk } from '../../src/transport/contract.ts';

/**
 * What stands on the screen, what she types there, and words that she must be told in return. What stands is the id of a
 * question, or `check` (a reading put back to her), `review`, `plan`, `cannot`, `paused` or `cancelled`. Where nothing is
 * to be told, the answer must be taken without a refusal.
 */
export type Line = readonly [stands: string, typed: string, told?: string];

export interface Conversation {
  /** What she is at, in our words. */
  readonly situation: string;
  readonly flow: string;
  /** The exercise of the flow. */
  readonly practice?: true;
  readonly lines: readonly Line[];
  readonly ends: 'plan' | 'cannot';
  /** What the outcome says, among other things. */
  readonly says: readonly string[];
  /** What its workings say. */
  readonly works?: readonly string[];
}

/** Typed in place of an answer: the program ends, and she comes back to it a day later. */
export const COMES_BACK = '(comes back the next day)';

const DAY_MS = 24 * 3600 * 1000;
const OWNER = 'knitter';
const flows = loadFlows();

/** Holds the conversation: the first place where it departs from what is written down, in words; none where it does not. */
export function departures({ flow, practice, lines, ends, says, works = [] }: Conversation): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-conversation-'));
  const talk = new Talk(join(folder, 'talk.sqlite'), flow, practice === true ? 'practise' : 'begin');
  try {
    for (const [stands, typed, told] of lines) {
      if (talk.stands !== stands) return [`before '${typed}' stands ${talk.stands}, not ${stands}`];
      talk.say(typed);
      if (told === undefined && talk.refusals.length > 0)
        return [`'${typed}' is refused: ${talk.refusals.join(' ')}`];
      if (told !== undefined && !talk.told.includes(told))
        return [`'${typed}' is not told "${told}" but: ${talk.told}`];
    }
    if (talk.stands !== ends) return [`it ends at ${talk.stands}, not ${ends}`];
    return [
      ...says.filter((said) => !talk.outcome(false).includes(said)).map((said) => `not said: ${said}`),
      ...works.filter((sum) => !talk.outcome(true).includes(sum)).map((sum) => `not worked: ${sum}`),
    ];
  } finally {
    talk.end();
    rmSync(folder, { recursive: true });
  }
}

class Talk {
  private now = Date.UTC(2026, 4, 3);
  private store;
  private desk: Desk;
  private readonly session: string;
  private replies: readonly Reply[];

  constructor(
    private readonly file: string,
    flow: string,
    how: 'begin' | 'practise',
  ) {
    this.store = openStore(file);
    this.desk = this.openedDesk();
    const { session, replies } = this.desk[how](OWNER, flow);
    this.session = session;
    this.replies = replies;
  }

  say(typed: string): void {
    if (typed === COMES_BACK) this.comeBack();
    else this.replies = this.desk.say(OWNER, this.session, { text: typed });
  }

  get stands(): string {
    const screen = this.replies.at(-1);
    if (screen?.reply === 'ask') return screen.question;
    if (screen?.reply === 'outcome') return screen.outcome.kind;
    if (screen?.reply === 'rest') return screen.how;
    return screen?.reply ?? 'nothing';
  }

  /** All that she is told, a line each; of a review what it lists. */
  get told(): string {
    return this.replies.map(wordsOf).join('\n');
  }

  get refusals(): string[] {
    return this.replies.flatMap((r) => (r.reply === 'say' && r.tone === 'refused' ? [r.text] : []));
  }

  outcome(workings: boolean): string {
    const last = this.replies.at(-1);
    if (last?.reply !== 'outcome') throw new Error('there is no outcome yet');
    return outcomeText(last.outcome satisfies Outcome, { dialect: 'us', workings });
  }

  end(): void {
    this.store.close();
  }

  private comeBack(): void {
    this.store.close();
    this.now += DAY_MS;
    this.store = openStore(this.file);
    this.desk = this.openedDesk();
    this.replies = this.desk.resume(OWNER, this.session);
  }

  private openedDesk(): Desk {
    return openDesk({
      flows,
      store: this.store,
      clock: () => this.now,
      newId: () => 'talk',
      unit: null,
      terms: 'us',
    });
  }
}

function wordsOf(reply: Reply): string {
  switch (reply.reply) {
    case 'ask':
      return [reply.text, ...reply.buttons.map(({ label, note = '' }) => `${label} ${note}`)].join('\n');
    case 'review':
      return reply.lines.map(({ label, shown }) => `${label}: ${shown}`).join('\n');
    case 'outcome':
      return reply.outcome.kind;
    case 'check':
      return [reply.text, ...reply.buttons.map(({ label }) => label)].join('\n');
    case 'sum':
      return sumQuestion(reply.sum, reply.terms);
    case 'sum said':
      return sumSaid(reply.sum, reply.said, reply.terms);
    case 'tally':
      return wordTally(reply.tally);
    case 'say':
    case 'rest':
      return reply.text;
    default:
      return reply satisfies never;
  }
}
