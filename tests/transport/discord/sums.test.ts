/** One sum in one line, for all to see. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { outcomeText } from '../../../src/present/plan-text.ts';
import { nameOf, sumFlows, sumOptions } from '../../../src/transport/discord/sums-options.ts';
import { runScript } from '../../../src/transport/script/run.ts';
import type { Person } from '../../stand-in/person.ts';
import { type Circle, circle, command, flows, nothingForbidden, read } from './circle.ts';

let here: Circle;
let anna: Person;
beforeEach(async () => {
  here = await circle();
  anna = here.standIn.person('Anna');
});
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

const SPACING = { 'stitches-now': '50', 'stitches-wanted': '72', rows: '84' };

function workedOut(): string {
  const flow = flows.get('spacing');
  if (flow === undefined) throw new Error('there is no spacing');
  const result = runScript(flow, {
    spacing_from: ['50'],
    spacing_to: ['72'],
    spacing_rows: ['84'],
    spacing_worked: ["I don't know"],
    spacing_plain: ["I don't know"],
  });
  if (result.result !== 'outcome') throw new Error(JSON.stringify(result));
  return outcomeText(result.outcome, { dialect: 'us', workings: true });
}

describe('a sum', () => {
  it('is answered at once, in public, with what was asked and its workings', async () => {
    const shown = await command(anna, 'sums spacing', SPACING);
    expect(shown.isEphemeral).toBe(false);
    expect(read(shown)).toContain('Stitches now: 50 · Stitches wanted: 72 · Rows: 84');
    const [berta] = [here.standIn.person('Berta')];
    const text = berta
      .sees()
      .map((message) => read(message).replace(/^-# .*\n/, ''))
      .join('\n\n');
    expect(`${text}\n`).toBe(workedOut());
    expect(text).toContain('Workings');
    expect(here.desk.open(`discord:${anna.id}`)).toEqual([]);
  });

  it('that cannot be read is refused to her alone, with an example, every fault at once', async () => {
    const shown = await command(anna, 'sums spacing', {
      ...SPACING,
      'stitches-now': 'many',
      rows: '@everyone',
    });
    expect(shown.isEphemeral).toBe(true);
    expect(read(shown)).toContain("stitches-now: 'many' was not taken.");
    expect(read(shown)).toContain("rows: '@everyone' was not taken.");
    expect(read(shown)).toContain('For example: 50');
    expect(here.standIn.person('Berta').sees()).toEqual([]);
  });

  it('shows what was typed as it was typed', async () => {
    const shown = await command(anna, 'sums spacing', { ...SPACING, rows: '84 **rows**' });
    expect(shown.text).not.toContain('**');
    expect(read(shown)).toContain('84 **rows**');
  });

  it('is offered for every flow of few questions that asks for no body, and for no other', () => {
    const offered = sumFlows(flows);
    expect(offered.map(({ file }) => file.id)).toEqual(expect.arrayContaining(['spacing', 'stitches']));
    for (const flow of offered) {
      const options = sumOptions(flow);
      expect(new Set(options.map(({ name }) => name)).size).toBe(options.length);
      expect(options.length).toBe(flow.questions.size);
      expect([...flow.questions.values()].flatMap(({ measurement }) => measurement ?? [])).toEqual([]);
    }
  });

  it('is answered by every one of them, from the examples of its questions', async () => {
    for (const flow of sumFlows(flows)) {
      const values = Object.fromEntries(
        sumOptions(flow).map(({ name, question }) => [
          name,
          question.choices?.[0]?.label ?? question.example,
        ]),
      );
      const shown = await command(anna, `sums ${nameOf(flow.file.id)}`, values);
      expect(read(shown)).not.toContain('was not taken');
      expect(shown.isEphemeral).toBe(false);
    }
  });

  it('in her own unit, or the one that she names', async () => {
    here.kept.store.prefer(`discord:${anna.id}`, { unit: 'in', terms: null });
    const flow = flows.get('stitches');
    if (flow === undefined) throw new Error('there are no stitches');
    const values = Object.fromEntries(
      sumOptions(flow).flatMap(({ id, name, question }) =>
        id === 'unit' ? [] : [[name, question.choices?.[0]?.label ?? question.example]],
      ),
    );
    expect(read(await command(anna, 'sums stitches', values))).toMatch(/\d in\b/);
    expect(read(await command(anna, 'sums stitches', { ...values, unit: 'Centimetres' }))).toMatch(/\d cm\b/);
  });
});
