/** A conversation with the bare dialogue: no desk, no store, no transport. */
import type { Message, Reply } from '../../src/dialogue/message.ts';
import { AT_THE_START, answersOf, type Session } from '../../src/dialogue/session.ts';
import { show } from '../../src/dialogue/show.ts';
import { standing } from '../../src/dialogue/standing.ts';
import { turn } from '../../src/dialogue/turn.ts';
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';

export const flows = loadFlows();

function flowOf(id: string): CompiledFlow {
  const flow = flows.get(id);
  if (flow === undefined) throw new Error(`there is no flow '${id}'`);
  return flow;
}

/** A conversation in one flow: what was said last, and where it stands. */
export class Talk {
  session: Session;
  replies: readonly Reply[] = [];

  constructor(
    readonly flow: CompiledFlow,
    private readonly clock = () => 1,
  ) {
    this.session = { id: 't', owner: 'o', flow: flow.file.id, version: 1, log: [], place: AT_THE_START };
    this.replies = show(flow, this.session);
  }

  say(...messages: (string | Message)[]): this {
    for (const message of messages) {
      const next = turn(
        this.flow,
        this.session,
        typeof message === 'string' ? { text: message } : message,
        this.clock(),
      );
      this.session = next.session;
      this.replies = next.replies;
    }
    return this;
  }

  get at(): string {
    const now = standing(this.flow, this.session);
    return now.at === 'question' ? now.stop.id : now.at;
  }

  get text(): string {
    return this.replies.map((r) => ('text' in r ? r.text : r.reply)).join('\n');
  }

  answer(question: string): unknown {
    const answer = answersOf(this.session.log)[question];
    return answer?.given === 'value' ? answer.value : answer?.given;
  }
}

export const start = (id: string) => new Talk(flowOf(id));
