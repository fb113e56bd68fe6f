/** Darts that run up and down beside sides that are shaped: what is said of both is held against the body that was knitted. */
import type { Phrase, Step } from '../../src/fit/plan.ts';
import type { Knitting } from './knitting.ts';
import { figure } from './whole-checks.ts';

export function dartsBeside(knitting: Knitting): void {
  for (const step of knitting.plan.steps) {
    const said = (name: Phrase['say']) => step.notes.find(({ say }) => say === name);
    const begin = said('note: darts begin after');
    if (begin !== undefined) begins(knitting, begin);
    const both = said('note: sides gain beside the darts') ?? said('note: sides lose beside the darts');
    if (both !== undefined) addsUp(knitting, step, both, begin);
  }
}

/** Stitches of the front after so many rows of the body, darts left out; undefined where that was not knitted plainly. */
function frontAfter({ bench, printed }: Knitting, row: number): number | undefined {
  const round = printed.body.worked === 'round';
  const counts = round ? bench.counts.get('body') : (bench.counts.get('front') ?? bench.counts.get('back'));
  const count = row === 0 ? undefined : counts?.[row - 1];
  return count === undefined ? undefined : round ? Math.floor(count / 2) : count;
}

function begins(knitting: Knitting, note: Phrase): void {
  const front = frontAfter(knitting, figure(note, 'begins'));
  if (front === undefined) return;
  knitting.findings.meet('darts that begin beside shaped sides');
  knitting.findings.same(figure(note, 'front'), front, 'front where the darts begin');
}

function addsUp(knitting: Knitting, step: Step, note: Phrase, begin: Phrase | undefined): void {
  const { bench, findings } = knitting;
  const wide = step.instead.flatMap((one) =>
    one.do === 'say' && 'rows' in one.phrase.with ? [one.phrase] : [],
  );
  const [over] = wide;
  if (step.where.say !== 'where: widen to the bust' || over === undefined) return;
  const front = frontAfter(
    knitting,
    (begin === undefined ? 0 : figure(begin, 'begins')) + figure(over, 'rows'),
  );
  const darts = bench.at('darts');
  if (front === undefined || darts === undefined) return;
  const added = Math.max(...darts.needle.counts) - (bench.dartFront ?? 0);
  findings.meet('darts and sides added up');
  findings.same(figure(note, 'all'), front + added, 'front at the bust with its darts');
}
