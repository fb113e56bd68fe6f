/** Prints how fast the engine and a turn of the talk are on this machine: npm run bench. */
import { loadavg } from 'node:os';
import type { Message } from '../src/dialogue/message.ts';
import { AT_THE_START, answersOf, type Session } from '../src/dialogue/session.ts';
import { turn } from '../src/dialogue/turn.ts';
import { shapeBody } from '../src/fit/body-shaping.ts';
import { bodyPart } from '../src/fit/body-steps.ts';
import { cap } from '../src/fit/cap.ts';
import { type Gauge, rateAsPrinted } from '../src/fit/gauge.ts';
import { shapeSleeve } from '../src/fit/sleeve.ts';
import { sleevePart } from '../src/fit/sleeve-steps.ts';
import { space } from '../src/fit/spacing.ts';
import { cm, rows, stitches } from '../src/fit/units.ts';
import { loadFlows } from '../src/library.ts';
import { planText } from '../src/present/plan-text.ts';
import { WHOLE } from '../tests/dialogue/whole.ts';

const write = (line: string): void => void process.stdout.write(`${line}\n`);

/** Runs the work for about a second, after a warm-up, and gives the milliseconds of each run, shortest first. */
function times(work: () => void, seconds = 1): number[] {
  const until = performance.now() + 200;
  while (performance.now() < until) work();
  const taken: number[] = [];
  const end = performance.now() + seconds * 1000;
  while (performance.now() < end) {
    const start = performance.now();
    work();
    taken.push(performance.now() - start);
  }
  return taken.sort((a, b) => a - b);
}

function report(what: string, taken: readonly number[]): void {
  const at = (share: number) => (taken[Math.floor((taken.length - 1) * share)] ?? 0).toFixed(3);
  const total = taken.reduce((a, b) => a + b, 0);
  write(
    `${what}: ${Math.round((taken.length / total) * 1000)} a second; median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms`,
  );
}

/** A garment of so many times the rows and stitches of a common one. */
function garment(scale: number): () => void {
  const rate = (count: number) => rateAsPrinted({ count: count * scale, span: cm(10), unit: 'cm' });
  const gauge: Gauge = { stitches: rate(22), rows: rate(30), worked: 'round' };
  const count = (n: number) => stitches(n * scale);
  return () => {
    const body = shapeBody({
      gauge,
      direction: 'up',
      edge: 0,
      pattern: { hem: count(220), bust: count(220), length: cm(38), edging: cm(6) },
      length: cm(40),
      waist: { around: cm(88), belowUnderarm: cm(18) },
      hip: null,
    });
    const sleeve = shapeSleeve({
      gauge,
      direction: 'up',
      edge: 0,
      pattern: { wrist: count(44), upperArm: count(74), length: cm(44), cuff: cm(6) },
      wrist: cm(20),
      upperArm: cm(35),
      length: cm(45),
      cuffRepeat: { multiple: 2, plus: 0 },
    });
    if (body.kind !== 'body' || sleeve.kind !== 'sleeve')
      throw new Error('the garment of the benchmark can be drawn');
    bodyPart(body, null);
    sleevePart(sleeve, { wrist: null, upperArm: null });
  };
}

/** A cap of so many times the rows and stitches of a common one, into the same armhole. */
function solved(scale: number): () => void {
  const rate = (count: number) => rateAsPrinted({ count: count * scale, span: cm(10), unit: 'cm' });
  const gauge: Gauge = { stitches: rate(22), rows: rate(30), worked: 'flat' };
  const ask = {
    upperArm: stitches(74 * scale),
    armhole: { front: cm(23), back: cm(23) },
    depth: cm(20),
    bindOff: stitches(6 * scale),
    gauge,
  };
  if (cap(ask).kind !== 'cap') throw new Error('the cap of the benchmark can be shaped');
  return () => void cap(ask);
}

write(
  `Node ${process.version}, load ${loadavg()
    .map((l) => l.toFixed(1))
    .join(' ')}`,
);

const ask = {
  rows: rows(118),
  from: stitches(46),
  to: stitches(80),
  perRow: 2,
  lead: rows(0),
  trail: rows(8),
};
report(
  'spacing of a sleeve',
  times(() => void space({ ...ask, carriers: 'odd rows', order: 'grouped' })),
);
report('cap of a sleeve solved to its armhole', times(solved(1)));
report('plan of a body and a sleeve', times(garment(1)));
for (const scale of [2, 4, 8]) {
  report(`the plan with ${scale} times the stitches and rows`, times(garment(scale)));
  report(`the cap with ${scale} times the stitches and rows`, times(solved(scale)));
}

const whole = loadFlows().get('whole');
if (whole === undefined) throw new Error('there is a whole way');
let session: Session = { id: 'b', owner: 'b', flow: 'whole', version: 1, log: [], place: AT_THE_START };
const turns: number[] = [];
for (let round = 0; round < 20; round += 1) {
  session = { ...session, log: [], place: AT_THE_START };
  for (const [, text] of WHOLE) {
    const message: Message = { text };
    const start = performance.now();
    session = turn(whole, session, message, 0).session;
    if (round > 2) turns.push(performance.now() - start);
  }
}
report(
  'a turn of the whole way, nothing stored',
  turns.sort((a, b) => a - b),
);
report(
  'the whole way from its answers',
  times(() => void whole.outcome({ ...answersOf(session.log) })),
);
const outcome = whole.outcome(answersOf(session.log));
if (outcome.kind !== 'plan') throw new Error('the whole way ends in a plan');
report(
  'its text with workings',
  times(() => void planText(outcome.plan, { dialect: 'us', workings: true })),
);
