/** Plans: in parts, with pictures, sheet and file, with workings behind a button, shared and sent. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { outcomeText } from '../../../src/present/plan-text.ts';
import { FOLLOW_UPS } from '../../../src/transport/discord/limits.ts';
import { runScript } from '../../../src/transport/script/run.ts';
import { everyWish } from '../../dialogue/every-wish.ts';
import { WHOLE } from '../../dialogue/whole.ts';
import { messageOf } from '../../stand-in/answer.ts';
import type { Person } from '../../stand-in/person.ts';
import { missingPermissions } from '../../stand-in/refusal.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import { forbid } from '../../stand-in/world.ts';
import {
  type Circle,
  circle,
  command,
  flows,
  nothingForbidden,
  planFile,
  press,
  read,
  sessionOf,
} from './circle.ts';

const FOLLOW_UP = 'POST /webhooks/:app/:token';

let here: Circle;
let anna: Person;
const start = async (settings: Parameters<typeof circle>[0] = {}) => {
  here = await circle(settings);
  anna = here.standIn.person('Anna *the knitter*');
};
afterEach(async () => {
  nothingForbidden(here);
  await here.stop();
});

/** A plan as it is shown to her; its answers are put in through the desk. */
async function planned(flow: string, typed: readonly (readonly [string, string])[]): Promise<SeenMessage> {
  const { desk } = here;
  const owner = `discord:${anna.id}`;
  const { session } = desk.begin(owner, flow);
  for (const [, text] of typed) desk.say(owner, session, { text });
  desk.say(owner, session, { text: 'yes' });
  return command(anna, 'fit plan');
}

function textOf(flow: string, typed: readonly (readonly [string, string])[], workings: boolean): string {
  const compiled = flows.get(flow);
  if (compiled === undefined) throw new Error(`no flow '${flow}'`);
  const result = runScript(compiled, Object.fromEntries(typed.map(([id, text]) => [id, [text]])));
  if (result.result !== 'outcome') throw new Error(JSON.stringify(result));
  return outcomeText(result.outcome, { dialect: 'us', workings });
}

const SPACING = [
  ['spacing_from', '50'],
  ['spacing_to', '72'],
  ['spacing_rows', '84'],
  ['spacing_worked', 'back and forth, at both edges'],
  ['spacing_plain', '0'],
] as const;

describe('a plan', () => {
  it('comes with its pictures, each with a text that says the same, its sheet, and a file of the whole text', async () => {
    await start({ draw: true, patienceMs: 50_000 });
    const shown = await planned('whole', WHOLE);
    const pictures = shown.files.filter(({ name }) => name.endsWith('.png'));
    expect(pictures.map(({ name }) => name)).toContain('schematic-sleeve.png');
    for (const { altText, bytes } of pictures) {
      expect(altText.length).toBeGreaterThan(40);
      expect(Buffer.from(bytes.subarray(1, 4)).toString()).toBe('PNG');
    }
    const sheet = shown.files.find(({ name }) => name === 'plan.pdf');
    expect(Buffer.from(sheet?.bytes.subarray(0, 5) ?? []).toString()).toBe('%PDF-');
    expect(planFile(shown)).toBe(textOf('whole', WHOLE, false));
    expect(await press(anna, await press(anna, shown, 'Next part'), 'Part before')).toMatchObject({
      files: shown.files.map(({ name }) => ({ name })),
    });
  });

  it('shows its workings behind a button, and hides them again', async () => {
    await start();
    const shown = await planned('spacing', SPACING);
    expect(read(shown)).not.toContain('Workings');
    const worked = await press(anna, shown, 'Show the workings');
    expect(planFile(worked)).toBe(textOf('spacing', SPACING, true));
    expect(read(worked)).toContain('shaping rows = 22 stitches');
    expect(read(await press(anna, worked, 'Hide the workings'))).toBe(read(shown));
  });

  it('shows all its sums on one page, with the answers they start from, and the plan again', async () => {
    await start();
    const shown = await planned('spacing', SPACING);
    const sums = await press(anna, shown, 'All the sums on one page');
    expect(read(sums)).toContain('It starts from:\n- Stitches now: 50 stitches');
    expect(read(sums)).toContain('(1) stitches to gain = 72 stitches');
    expect(sums.files.map(({ name }) => name)).toEqual(['sums.txt']);
    expect(read(await press(anna, sums, 'Show the plan'))).toBe(read(shown));
  });

  it('leads to one answer to be changed, and to the new plan', async () => {
    await start();
    const shown = await planned('spacing', SPACING);
    const review = await press(anna, shown, 'Change an answer');
    const [list] = review.selects;
    const asked = messageOf(await anna.select(review, list?.customId ?? '', ['Stitches wanted']));
    expect(asked.buttons.map(({ label }) => label)).toContain('Keep: 72 stitches');
    const form = await anna.press(asked, 'Type my answer');
    if (form.kind !== 'modal') throw new Error('a form was expected');
    const after = messageOf(await anna.submit(form.modal, { answer: '70' }));
    const changed = await press(anna, after, 'Make my plan');
    const answers = SPACING.map(([id, text]) => [id, id === 'spacing_to' ? '70' : text] as const);
    expect(planFile(changed)).toBe(textOf('spacing', answers, false));
  });

  it('that cannot be made says why, and offers no sharing', async () => {
    await start();
    const skipped = SPACING.map(([id]) => [id, 'skip'] as const);
    const shown = await planned('spacing', skipped);
    expect(planFile(shown)).toBe(textOf('spacing', skipped, false));
    expect(read(shown)).toContain('This cannot be planned.');
    expect(shown.buttons.map(({ label }) => label)).not.toContain('Share in this channel');
  });
});

describe('a plan that is shared', () => {
  beforeEach(() => start());

  it('is seen by all, with figures of the garment alone, and calls nobody by name', async () => {
    const shown = await planned('whole', WHOLE);
    const choice = await press(anna, shown, 'Share in this channel');
    const berta = here.standIn.person('Berta');
    expect(berta.sees()).toEqual([]);
    await press(anna, choice, 'Share, without my measurements');
    const seen = berta.sees();
    expect(seen.length).toBeGreaterThan(0);
    const [first] = seen;
    expect(first && read(first)).toContain('Anna *the knitter* shares a plan · The whole way');
    const all = seen.map(read).join('\n');
    expect(all).toContain('Cast on 220 stitches.');
    expect(all).not.toContain('wanted');
    expect(planFile(first as SeenMessage)).not.toContain('wanted');
    expect(seen.flatMap(({ buttons }) => buttons)).toEqual([]);
  });

  it('holds the measurements where she says so', async () => {
    const choice = await press(anna, await planned('whole', WHOLE), 'Share in this channel');
    await press(anna, choice, 'Share, with my measurements');
    const [first] = here.standIn.person('Berta').sees();
    expect(planFile(first as SeenMessage)).toBe(textOf('whole', WHOLE, false));
  });

  it('asks nothing about measurements where there are none, and may be kept back', async () => {
    const shown = await planned('spacing', SPACING);
    const choice = await press(anna, shown, 'Share in this channel');
    expect(choice.buttons.map(({ label }) => label)).toEqual(['Share', 'No, back to my plan']);
    expect(read(await press(anna, choice, 'No, back to my plan'))).toBe(read(shown));
    expect(here.standIn.person('Berta').sees()).toEqual([]);
  });

  it('comes without files where the app may not attach any', async () => {
    forbid(here.standIn.channelOf(), 'attach files');
    const choice = await press(anna, await planned('spacing', SPACING), 'Share in this channel');
    await press(anna, choice, 'Share');
    const [first] = here.standIn.person('Berta').sees();
    expect(first?.files).toEqual([]);
    expect(first && read(first)).toContain('Increase 1 stitch');
  });

  it('that is longer than may be posted by an app of hers alone ends with where the rest is; elsewhere it is whole', async () => {
    const knitter = {
      stitches: 22,
      rows: 30,
      bust: 96,
      longer: 0,
      pattern: 'Pennywhin, in pieces',
      unit: 'in',
    } as const;
    const typed = Object.entries(everyWish(knitter));
    const choice = await press(anna, await planned('whole', typed), 'Share in this channel');
    await press(anna, choice, 'Share, without my measurements');
    const berta = here.standIn.person('Berta');
    const isWhole = (m: SeenMessage | undefined) => m !== undefined && read(m).includes('Take care:');
    await expect.poll(() => isWhole(berta.sees().at(-1)), { timeout: 20_000 }).toBe(true);
    expect(berta.sees().length).toBeGreaterThan(FOLLOW_UPS);
    anna.account.hasApp = true;
    const group = here.standIn.world.privateChannel([anna.account, berta.account]);
    anna.goTo(group);
    const again = await press(anna, await command(anna, 'fit plan'), 'Share in this channel');
    await anna.press(again, 'Share, without my measurements');
    await expect.poll(() => berta.sees(group).length, { timeout: 20_000 }).toBe(FOLLOW_UPS);
    const last = berta.sees(group).at(-1) as SeenMessage;
    expect(read(last)).toMatch(/The whole plan is in the file plan\.txt above\.$/);
    expect(planFile(berta.sees(group)[0] as SeenMessage)).toContain('Take care:');
  });

  it('that may not be posted is told to her, with what a host can do, and is kept', async () => {
    const choice = await press(anna, await planned('spacing', SPACING), 'Share in this channel');
    here.standIn.faults.onRequest(FOLLOW_UP, { kind: 'refusal', refusal: missingPermissions() });
    const told = messageOf(await anna.press(choice, 'Share'));
    expect(read(told)).toContain('A host can allow it');
    expect(told.isEphemeral).toBe(true);
    expect(planFile(await command(anna, 'fit plan'))).toBe(textOf('spacing', SPACING, false));
  });

  it('of which Discord did not say whether it was posted is not posted twice', async () => {
    const choice = await press(anna, await planned('spacing', SPACING), 'Share in this channel');
    here.standIn.faults.onRequest(FOLLOW_UP, { kind: 'answer lost' });
    await anna.press(choice, 'Share');
    const told = await anna.waitFor((message) => read(message).includes('did not say'), 'the doubt');
    expect(told.isEphemeral).toBe(true);
    expect(here.standIn.person('Berta').sees()).toHaveLength(1);
  });
});

describe('a plan that is sent to her', () => {
  beforeEach(() => start());

  it('lies whole in her direct messages', async () => {
    const shown = await planned('whole', WHOLE);
    const told = messageOf(await anna.press(shown, 'Send it to me'));
    expect(read(told)).toContain('I have sent it');
    const sent = anna.sees(anna.dm);
    const text = sent.map((message) => read(message).split('\n').slice(1).join('\n')).join('\n\n');
    expect(`${text}\n`).toBe(textOf('whole', WHOLE, false));
    expect(planFile(sent[0] as SeenMessage)).toBe(`${text}\n`);
  });

  it('stays where it is where her direct messages are closed, and she is told where to find it', async () => {
    anna.account.takesDirectMessages = false;
    const shown = await planned('spacing', SPACING);
    const told = messageOf(await anna.press(shown, 'Send it to me'));
    expect(read(told)).toContain('Your direct messages are closed to me');
    expect(anna.now(shown)?.files.map(({ name }) => name)).toEqual(['plan.txt']);
  });
});

it('how to measure comes with a picture, whose text says the same, and goes with the next question', async () => {
  await start({ draw: true, patienceMs: 50_000 });
  const asked = await press(anna, await command(anna, 'fit measure', { what: 'Wrist' }), 'Centimetres');
  const wrist = await press(anna, asked, "Women's");
  const how = await press(anna, wrist, 'How do I find it?');
  expect(how.files).toMatchObject([{ name: 'measure-wrist.png' }]);
  expect(how.files[0]?.altText).toContain('wrist');
  expect((await press(anna, how, 'Why do you ask?')).files).toEqual([]);
});

it('a plan is called back after private messages have vanished: the newest, or one by its name', async () => {
  await start();
  const spacing = await planned('spacing', SPACING);
  const whole = await planned('whole', WHOLE);
  expect(sessionOf(whole)).not.toBe(sessionOf(spacing));
  anna.loseEphemerals();
  const choices = await anna.autocomplete('fit plan', { which: 'space' }, 'which');
  expect(choices.map(({ name }) => name)).toEqual([expect.stringContaining('Space increases or decreases')]);
  const [choice] = choices;
  const again = await command(anna, 'fit plan', { which: `${choice?.value}` });
  expect(sessionOf(again)).toBe(sessionOf(spacing));
  expect(sessionOf(await command(anna, 'fit plan', { which: 'the whole way' }))).toBe(sessionOf(whole));
  expect(sessionOf(await command(anna, 'fit plan'))).toBe(sessionOf(whole));
  expect(read(await command(anna, 'fit plan', { which: 'socks' }))).toContain(
    "I find no plan called 'socks'",
  );
});
