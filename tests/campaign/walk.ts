/** A random walk through an interview: whatever is said, it goes on, loses nothing, and can be brought to its end. */
import type { Earlier } from '../../src/dialogue/earlier.ts';
import type { Message, Reply } from '../../src/dialogue/message.ts';
import { AT_THE_START, answersOf, type Session } from '../../src/dialogue/session.ts';
import { show } from '../../src/dialogue/show.ts';
import { turn } from '../../src/dialogue/turn.ts';
import { earlierFor } from '../../src/earlier.ts';
import type { Outcome } from '../../src/fit/plan.ts';
import { parsePlan } from '../../src/fit/plan-schema.ts';
import type { CompiledFlow, Flows } from '../../src/flow/compile.ts';
import { outcomeText } from '../../src/present/plan-text.ts';
import { sumQuestion, sumSaid, wordTally } from '../../src/present/sum-text.ts';
import { chance } from './chance.ts';
import { buttonsOf, nextSaid, sensible } from './sayings.ts';

/** Longest reply in words: what was typed is never thrown back at length. */
const LONGEST_REPLY = 6_000;

export class Walk {
  readonly met = new Map<string, number>();
  readonly said: string[] = [];
  session: Session;
  private typed = '';
  private replies: readonly Reply[];

  private readonly read = new WeakSet<Outcome>();

  /** `others`: interviews from before, out of which she may take answers along. */
  constructor(
    private readonly flow: CompiledFlow,
    others: readonly Session[],
    flows: Flows,
  ) {
    let earlier: readonly Earlier[] | undefined;
    this.session = {
      id: 'w',
      owner: 'o',
      flow: flow.file.id,
      version: flow.file.version,
      log: [],
      place: AT_THE_START,
      earlier: () => {
        earlier ??= earlierFor(flow, others, flows);
        return earlier;
      },
    };
    this.replies = show(flow, this.session);
    this.look();
  }

  /** Says so many things by chance, then answers what is asked until there is an outcome. */
  go(seed: number, messages: number): void {
    const dice = chance(seed);
    const temper = dice.one([0, 0.05, 0.3, 0.8]);
    for (let i = 0; i < messages; i++) {
      this.say(nextSaid(this.screen, temper, dice));
      if (i % 10 === 9) this.resume();
    }
    this.finish();
  }

  private get screen(): Reply {
    const last = this.replies.at(-1);
    if (last === undefined || last.reply === 'say') throw new Error('nothing is shown to go on from');
    return last;
  }

  private say(message: Message): void {
    this.said.push(JSON.stringify(message).slice(0, 200));
    this.typed = message.text;
    const before = this.session;
    const frozen = JSON.stringify(before.log);
    const next = turn(this.flow, before, message, this.said.length);
    check(JSON.stringify(before.log) === frozen, 'the turn changed the session that it was given');
    const [old, added] = [
      next.session.log.slice(0, before.log.length),
      next.session.log.slice(before.log.length),
    ];
    check(JSON.stringify(old) === frozen, 'lines of the log were lost');
    check(JSON.stringify(added) === JSON.stringify(next.added), 'lines were added that are not to be stored');
    if (added.every((line) => line.line === 'answer'))
      for (const question of Object.keys(answersOf(before.log)))
        check(answersOf(next.session.log)[question] !== undefined, `the answer to '${question}' was lost`);
    this.session = next.session;
    this.replies = next.replies;
    this.look();
  }

  /** What is on the screen can be gone on from, says something, and names an example where it refuses. */
  private look(): void {
    const { screen } = this;
    this.meet(screen.reply);
    for (const reply of this.replies) {
      const text = wordsOf(reply);
      check(text.trim() !== '', `an empty ${reply.reply}`);
      check(reply.reply === 'review' || text.length <= LONGEST_REPLY, `a reply of ${text.length} characters`);
      // What a person typed herself may well be 'undefined'.
      const holes = text.match(/\bNaN\b|\bundefined\b|\[object|Infinity|\bnull\b/g) ?? [];
      check(
        holes.every((hole) => this.typed.includes(hole)),
        `'${text.slice(0, 300)}'`,
      );
      if (reply.reply === 'say' && reply.tone === 'refused') {
        this.meet('refused');
        check(
          /(?:for example|like this): \S/i.test(text),
          `a refusal without an example: '${text.slice(0, 300)}'`,
        );
      }
    }
    if (screen.reply === 'ask') {
      check(screen.example.trim() !== '', `question '${screen.question}' has no example`);
      check(screen.progress.number >= 1 && screen.progress.toGo >= 0, 'the count of questions is off');
    }
    if (screen.reply === 'check') check(buttonsOf(screen).length >= 2, 'a check that cannot be answered');
    if (screen.reply === 'outcome' && !this.read.has(screen.outcome)) {
      readable(screen.outcome);
      this.read.add(screen.outcome);
    }
  }

  /** Taken up again from what is stored, it stands where it stood. */
  private resume(): void {
    const { earlier } = this.session;
    const stored: Session = { ...JSON.parse(JSON.stringify(this.session)), earlier };
    if (['outcome', 'tally', 'rest'].includes(this.screen.reply)) return;
    check(
      JSON.stringify(show(this.flow, stored).at(-1)) === JSON.stringify(this.screen),
      'taken up again it stands elsewhere',
    );
  }

  /** By examples, yes and 'I don't know' alone there is an end, within a few turns a question. */
  private finish(): void {
    const most = 6 * this.flow.stops.length + 40;
    for (let i = 0; i < most; i++) {
      const { screen } = this;
      if (screen.reply === 'outcome') {
        this.meet(`outcome: ${screen.outcome.kind}`);
        return;
      }
      if (screen.reply === 'rest') this.say({ text: screen.how === 'cancelled' ? 'start over' : 'review' });
      else {
        const at = screen.reply === 'ask' ? screen.question : screen.reply;
        this.say(sensible(screen, 0));
        const now = this.screen;
        const stays = now.reply === 'ask' && now.question === at;
        if (stays || (now.reply === 'check' && screen.reply === 'check')) this.say({ text: "I don't know" });
      }
    }
    throw new Error(`no end within ${most} turns; it stands at ${JSON.stringify(this.screen).slice(0, 300)}`);
  }

  private meet(what: string): void {
    this.met.set(what, (this.met.get(what) ?? 0) + 1);
  }
}

function check(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}

function wordsOf(reply: Reply): string {
  if ('text' in reply) return reply.text;
  if (reply.reply === 'review')
    return reply.lines.map((line) => `${line.label}: ${line.shown}`).join('\n') || 'review';
  if (reply.reply === 'sum') return sumQuestion(reply.sum, reply.terms);
  if (reply.reply === 'sum said') return sumSaid(reply.sum, reply.said, reply.terms);
  return reply.reply === 'tally' ? wordTally(reply.tally) : reply.outcome.kind;
}

/** A plan keeps to its published shape; either outcome reads without a hole in it, in both dialects. */
function readable(outcome: Outcome): void {
  if (outcome.kind === 'plan') parsePlan(JSON.parse(JSON.stringify(outcome.plan)));
  for (const dialect of ['us', 'uk'] as const) {
    const text = outcomeText(outcome, { dialect, workings: true });
    check(
      !/\bNaN\b|\bundefined\b|\[object|Infinity|\{[a-z]+\}/.test(text),
      `an outcome that cannot be read: ${text.slice(0, 500)}`,
    );
  }
}
