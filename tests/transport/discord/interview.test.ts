import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { outcomeText } from '../../../src/present/plan-text.ts';
import { runScript } from '../../../src/transport/script/run.ts';
import { WHOLE } from '../../dialogue/whole.ts';
import type { Person } from '../../stand-in/person.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import {
  type Circle,
  circle,
  command,
  flows,
  nothingForbidden,
  planFile,
  press,
  questionOf,
  read,
  type,
} from './circle.ts';

let here: Circle;
beforeEach(async () => {
  here = await circle();
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const TYPED = new Map(WHOLE);

/** The plan of the same answers, run from a script. */
function scripted(): string {
  const flow = flows.get('whole');
  if (flow === undefined) throw new Error('there is no whole way');
  const result = runScript(flow, Object.fromEntries(WHOLE.map(([id, typed]) => [id, [typed]])));
  if (result.result !== 'outcome') throw new Error(JSON.stringify(result));
  return outcomeText(result.outcome, { dialect: 'us', workings: false });
}

/** All parts of a plan, one after another. */
async function wholePlan(person: Person, first: SeenMessage): Promise<string> {
  const parts: string[] = [];
  for (let shown = first; ; shown = await press(person, shown, 'Next part')) {
    parts.push(read(shown).split('\n').slice(1).join('\n'));
    if (!shown.buttons.some(({ label }) => label === 'Next part')) return parts.join('\n\n');
  }
}

describe('the whole way', () => {
  it('in a server is one private message, edited in place, and ends in the plan of a scripted run', async () => {
    const anna = here.standIn.person('Anna');
    let message = await command(anna, 'fit start', { wish: 'whole' });
    const { id } = message;
    for (let question = questionOf(message); question !== undefined; question = questionOf(message))
      message = await type(anna, message, TYPED.get(question) ?? 'skip');
    expect(read(message)).toContain('your answers');
    message = await press(anna, message, 'Make my plan');
    expect(message.id).toBe(id);
    expect(message.isEphemeral).toBe(true);
    expect(anna.sees()).toHaveLength(1);
    expect(here.standIn.person('Berta').sees()).toEqual([]);
    expect(planFile(message)).toBe(scripted());
    expect(`${await wholePlan(anna, message)}\n`).toBe(scripted());
  });

  it('in a direct message is written as in a chat, and ends in the same plan', async () => {
    const anna = here.standIn.person('Anna');
    anna.goTo(anna.dm);
    let message = await command(anna, 'fit start', { wish: 'whole' });
    expect(message.isEphemeral).toBe(false);
    for (let question = questionOf(message); question !== undefined; question = questionOf(message)) {
      const before = message;
      anna.say(TYPED.get(question) ?? 'skip');
      message = await anna.waitFor(
        (m) => m.id !== before.id && BigInt(m.id) > BigInt(before.id),
        'an answer',
      );
    }
    message = await press(anna, message, 'Make my plan');
    expect(planFile(message)).toBe(scripted());
    const left = () => anna.sees().filter((m) => m.isFromApp && m.id !== message.id);
    await expect.poll(() => left().flatMap((m) => m.buttons), { timeout: 20_000 }).toEqual([]);
    expect(left().map(read)).toContain('How far is it around the waist?\n-# Noted: 30 in (76.2 cm)');
  });
});
