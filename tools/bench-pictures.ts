/**
 * Times a schematic and a plan sheet, cold and warm, and the turns of other people meanwhile: npm run bench
 * On a machine that is busy elsewhere the processor's own time, of all threads, tells more than the clock.
 */
import { loadavg } from 'node:os';
import { AT_THE_START, type Session } from '../src/dialogue/session.ts';
import { turn } from '../src/dialogue/turn.ts';
import { loadFlows } from '../src/library.ts';
import { schematicsOf } from '../src/present/pictures/of-plan.ts';
import { picturesOf, render } from '../src/present/pictures.ts';
import { WHOLE } from '../tests/dialogue/whole.ts';
import { samplePlan } from './sample-garment.ts';

const ROUNDS = 20;
const plan = samplePlan();
const options = {
  project: 'Sample sweater',
  date: '2025-03-01',
  paper: 'A4',
  type: 'normal',
  dialect: 'us',
} as const;

const write = (line: string): void => void process.stdout.write(`${line}\n`);

async function schematic(): Promise<void> {
  const [body] = schematicsOf(plan, { unit: plan.unit, dialect: 'us' });
  if (body === undefined) throw new Error('the sample has no schematic');
  await render({ make: 'png', drawing: body.drawing, theme: 'light', scale: 2 });
}

async function sheet(): Promise<void> {
  await render({ make: 'plan sheet', plan, options });
}

function drawing(): void {
  picturesOf(plan, 'us');
}

function middle(taken: readonly number[], share = 0.5): number {
  return [...taken].sort((a, b) => a - b)[Math.floor(share * (taken.length - 1))] ?? 0;
}

async function time(name: string, target: string, work: () => void | Promise<void>): Promise<void> {
  const taken: number[] = [];
  let busy = process.cpuUsage();
  for (let i = 0; i <= ROUNDS; i++) {
    const begun = performance.now();
    await work();
    taken.push(performance.now() - begun);
    if (i === 0) busy = process.cpuUsage();
  }
  const { user, system } = process.cpuUsage(busy);
  const each = ((user + system) / 1000 / ROUNDS).toFixed(1);
  const [first = 0, ...rest] = taken;
  write(
    `${name}: first ${first.toFixed(0)} ms, then ${middle(rest).toFixed(1)} ms (9 of 10 within ${middle(rest, 0.9).toFixed(1)} ms, processor ${each} ms); ${target}`,
  );
}

const whole = loadFlows().get('whole');
if (whole === undefined) throw new Error('there is a whole way');

/** An interview of the whole way, its turns a few milliseconds apart; how long each took from when it was due. */
async function interview(flow: typeof whole & object): Promise<number[]> {
  let session: Session = { id: 'b', owner: 'b', flow: 'whole', version: 1, log: [], place: AT_THE_START };
  const taken: number[] = [];
  for (const [, text] of WHOLE) {
    const due = performance.now() + 5;
    await new Promise((resolve) => setTimeout(resolve, 5));
    session = turn(flow, session, { text }, 0).session;
    taken.push(performance.now() - due);
  }
  return taken;
}

async function interviews(flow: typeof whole & object, times: number): Promise<number[]> {
  const all: number[] = [];
  for (let i = 0; i < times; i++) all.push(...(await interview(flow)));
  return all;
}

/** Turns alone, then while one picture or sheet after another is asked for. */
async function turnsMeanwhile(flow: typeof whole & object): Promise<void> {
  await interviews(flow, 3);
  const alone = await interviews(flow, 5);
  let drawn = 0;
  let going = true;
  const work = (async () => {
    for (; going; drawn += 1) await (drawn % 2 === 0 ? schematic() : sheet());
  })();
  const meanwhile = await interviews(flow, 5);
  going = false;
  await work;
  const times = (middle(meanwhile) / middle(alone)).toFixed(2);
  write(
    `a turn of another person: alone ${middle(alone).toFixed(2)} ms (95th percentile ${middle(alone, 0.95).toFixed(1)}), while ${drawn} pictures and sheets are drawn ${middle(meanwhile).toFixed(2)} ms (${middle(meanwhile, 0.95).toFixed(1)}), ${times} times; target 1.5 times`,
  );
}

write(`pictures, load ${loadavg()[0]?.toFixed(1)}`);
await time('all drawings of the plan, in the turn', 'no target', drawing);
await time('a schematic as PNG, from plan to bytes', 'target 100 ms', schematic);
await time('a plan sheet as PDF, from plan to bytes', 'target 700 ms', sheet);
await turnsMeanwhile(whole);
