/**
 * Times a schematic and a plan sheet, cold and warm: npx tsx tools/bench-pictures.ts
 * On a machine that is busy elsewhere the processor's own time, of all threads, tells more than the clock.
 */
import { picturesOf, render, sheetOf } from '../src/present/pictures.ts';
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

async function schematic(): Promise<void> {
  const [body] = picturesOf(plan, 'us');
  if (body === undefined) throw new Error('the sample has no schematic');
  await render({ make: 'png', drawing: body.drawing, theme: 'light', scale: 2 });
}

async function sheet(): Promise<void> {
  await render({ make: 'pdf', sheet: sheetOf(plan, options) });
}

function drawing(): void {
  picturesOf(plan, 'us');
}

function layingOut(): void {
  sheetOf(plan, options);
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
  const sorted = rest.sort((a, b) => a - b);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(1);
  process.stdout.write(
    `${name}: first ${first.toFixed(0)} ms, then ${at(0.5)} ms (9 of 10 within ${at(0.9)} ms, processor ${each} ms); ${target}\n`,
  );
}

await time('all drawings of the plan, in the turn', 'no target', drawing);
await time('a plan sheet laid out, in the turn', 'no target', layingOut);
await time('a schematic as PNG, from plan to bytes', 'target 100 ms', schematic);
await time('a plan sheet as PDF, from plan to bytes', 'target 700 ms', sheet);
