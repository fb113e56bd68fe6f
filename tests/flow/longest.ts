/** The longest way through a flow: as many questions as any answers can bring. */
import type { Answer, Answers } from '../../src/flow/answer.ts';
import type { CompiledFlow, Stop } from '../../src/flow/compile.ts';
import { answersTo, telling } from './telling.ts';

/** The questions of one way, in order. */
export type Way = readonly string[];

interface Walker {
  /** Answered before the first question. */
  readonly known: Answers;
  /** The only answer that is given to a question. */
  readonly says?: Answers;
  /** Further answers that come with the answer to a question. */
  readonly brings?: (stop: Stop) => Answers;
}

/** Every answer that tells ways apart is tried; 'I don't know' and leaving out are among them. */
export function longestWay(flow: CompiledFlow, { known, says = {}, brings = () => ({}) }: Walker): Way {
  const done = new Map<string, Way>();
  const from = (answers: Answers): Way => {
    const stop = flow.stops.find((s) => flow.asks(s, answers) && !flow.fits(s, answers));
    if (stop === undefined) return [];
    const key = `${stop.state} ${telling(flow, answers, stop.state)}`;
    const before = done.get(key);
    if (before !== undefined) return before;
    const said = says[stop.id];
    const tried: readonly Answer[] = said === undefined ? answersTo(flow, stop, answers) : [said];
    const ways = tried.map((answer) => from({ ...brings(stop), ...answers, [stop.id]: answer }));
    const longest = [stop.id, ...ways.reduce((a, b) => (b.length > a.length ? b : a))];
    done.set(key, longest);
    return longest;
  };
  return from(known);
}
