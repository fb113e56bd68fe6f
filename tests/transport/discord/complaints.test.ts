/** What people complain of in bots that interview them, collected from public bug reports: each turned round. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { MORE } from '../../../src/transport/discord/screen.ts';
import { WHOLE } from '../../dialogue/whole.ts';
import { messageOf, modalOf } from '../../stand-in/answer.ts';
import type { Person } from '../../stand-in/person.ts';
import { unknownInteraction } from '../../stand-in/refusal.ts';
import type { SeenMessage } from '../../stand-in/seen.ts';
import {
  type Circle,
  circle,
  command,
  nothingForbidden,
  pick,
  planFile,
  press,
  questionOf,
  read,
  sessionOf,
  type,
  typedBy,
} from './circle.ts';

const CALLBACK = 'POST /interactions/:id/:token/callback';
const EDIT = 'PATCH /webhooks/:app/:token/messages/:message';
const LATE = { evenIfGone: true } as const;

let here: Circle;
let anna: Person;
let people = 0;
beforeAll(async () => {
  here = await circle({ acknowledgeWithinMs: 1500 });
});
afterAll(async () => {
  nothingForbidden(here);
  await here.stop();
});
beforeEach(() => {
  people += 1;
  anna = here.standIn.person(`Anna ${people}`);
  here.standIn.faults.clear();
});

/** A sleeve in inches, at how it is knitted. */
async function atSleeve(person = anna): Promise<SeenMessage> {
  return press(person, await command(person, 'fit start', { wish: 'sleeve' }), 'Inches');
}

/** The same sleeve at the gauge, which is typed. */
async function atGauge(): Promise<SeenMessage> {
  return press(anna, await atSleeve(), 'From the cuff, flat');
}

/** A plan of bare counts, as it is shown to her. */
async function planned(): Promise<SeenMessage> {
  const owner = `discord:${anna.id}`;
  const { session } = here.desk.begin(owner, 'spacing');
  for (const text of ['50', '72', '84', 'flat', '0', 'yes']) here.desk.say(owner, session, { text });
  return command(anna, 'fit plan');
}

const typed = (message: SeenMessage) => typedBy(here, sessionOf(message)).map(([, text]) => text);

describe('forms', () => {
  it('closed by mistake lose nothing: each holds one answer, and those before are saved', async () => {
    const message = await atGauge();
    const form = modalOf(await anna.press(message, 'Type my answer'));
    expect(form.fields).toHaveLength(1);
    anna.loseEphemerals();
    expect(questionOf(await command(anna, 'fit go-on'))).toBe('gauge');
    expect(typed(message)).toEqual(['Inches', 'From the cuff, flat']);
  });

  it('opened again after they were closed are taken, the newer one like the older', async () => {
    const message = await atGauge();
    const older = modalOf(await anna.press(message, 'Type my answer'));
    const newer = modalOf(await anna.press(message, 'Type my answer'));
    expect(questionOf(messageOf(await anna.submit(newer, { answer: '22 sts and 30 rows = 4"' })))).toBe(
      'table',
    );
    expect(read(messageOf(await anna.submit(older, { answer: '20 sts' })))).toContain('answered already');
  });

  it('that cannot be opened are not the only way: the question comes as a message to write under', async () => {
    const message = await atGauge();
    here.standIn.faults.onRequest(CALLBACK, { kind: 'refusal', refusal: unknownInteraction() });
    const failing = expect(anna.press(message, 'Type my answer')).rejects.toThrow('This interaction failed');
    await anna.waitFor((m) => questionOf(m) === 'gauge', 'the question', anna.dm);
    await failing;
  });

  it('say plainly what was saved', async () => {
    const shown = await type(anna, await atGauge(), '22 sts and 30 rows = 4"');
    expect(read(shown)).toMatch(/^Noted: 22 stitches and 30 rows over 4 in/);
  });
});

describe('buttons', () => {
  it('never wait for anything before they are acknowledged, so that no success looks like a failure', async () => {
    const message = await atSleeve();
    here.standIn.faults.onRequest(EDIT, { kind: 'delay', ms: 2000 });
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  });

  it('do not expire: they carry what they mean', async () => {
    const message = await atSleeve();
    here.standIn.interactions.expireTokens();
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  });

  it('are not left behind where they are dead: a message that was answered in writing has none', async () => {
    anna.goTo(anna.dm);
    const message = await atSleeve();
    anna.say('from the cuff, flat');
    await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    await expect.poll(() => anna.now(message)?.buttons).toEqual([]);
  });

  it('of old messages find their interview after a restart', async () => {
    const message = await atSleeve();
    await here.restart();
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  });

  it('tapped twice are one answer', async () => {
    const message = await atSleeve();
    await Promise.all([
      anna.press(message, 'From the cuff, flat', LATE),
      anna.press(message, 'From the cuff, flat', LATE),
    ]);
    expect(typed(message)).toEqual(['Inches', 'From the cuff, flat']);
  });

  it('of her interview are hers alone: others get a friendly word in private', async () => {
    const message = await atSleeve();
    const berta = here.standIn.person('Berta');
    const told = messageOf(await berta.press(message, 'From the cuff, flat', LATE));
    expect(told.isEphemeral).toBe(true);
    expect(read(told)).toContain('To begin your own: /fit start');
    expect(typed(message)).toEqual(['Inches']);
  });

  it('lead to the interview that they stand under, not to the newest', async () => {
    const sleeve = await atSleeve();
    const spacing = await command(anna, 'fit start', { wish: 'spacing' });
    await press(anna, sleeve, 'From the cuff, flat');
    expect(typed(sleeve)).toEqual(['Inches', 'From the cuff, flat']);
    expect(typed(spacing)).toEqual([]);
  });
});

describe('typed answers', () => {
  it('are taken after everything else on the screen has vanished', async () => {
    anna.goTo(anna.dm);
    await atSleeve();
    await here.restart();
    anna.say('from the cuff, flat');
    const shown = await anna.waitFor((m) => questionOf(m) === 'gauge', 'the next question');
    expect(typed(shown)).toEqual(['Inches', 'from the cuff, flat']);
  });

  it('may hold a decimal comma, and are repeated as they were understood', async () => {
    const asked = await command(anna, 'fit measure', { what: 'Wrist', table: "Women's" });
    const shown = await type(anna, await press(anna, asked, 'Centimetres'), '16,5');
    expect(read(shown)).toContain('16.5 cm');
  });

  it('that cannot be read are answered with an example, and spoil nothing', async () => {
    const message = await atGauge();
    const shown = await type(anna, message, 'rather tight');
    expect(read(shown)).toMatch(/^Not taken: .*For example: 22/);
    expect(questionOf(shown)).toBe('gauge');
    expect(typed(message)).toEqual(['Inches', 'From the cuff, flat']);
  });

  it('are shown with their unit, and in the unit that she has chosen', async () => {
    const asked = await command(anna, 'fit measure', { what: 'Wrist', table: "Women's" });
    const inches = await type(anna, await press(anna, asked, 'Inches'), '16.5 cm');
    expect(read(inches)).toContain('Noted: 6.5 in (16.5 cm)');
  });
});

describe('private messages', () => {
  it('that vanish are called back with one command, a plan as well as a question', async () => {
    const plan = await planned();
    const asked = await atSleeve();
    anna.loseEphemerals();
    expect(anna.sees()).toEqual([]);
    expect(read(await command(anna, 'fit plan'))).toBe(read(plan));
    expect(read(await command(anna, 'fit go-on')).replace(/^.*\n/, '')).toBe(
      read(asked).replace(/^(.*\n){2}/, ''),
    );
  });

  it('are not the only copy of a plan: it is a file, can be sent, and can be posted', async () => {
    const plan = await planned();
    expect(planFile(plan)).not.toBe('');
    expect(plan.buttons.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['Share in this channel', 'Send it to me']),
    );
  });

  it('have no timer: a question stands until it is answered', async () => {
    const message = await atSleeve();
    const { requests } = here.standIn.record;
    const before = requests.length;
    here.standIn.interactions.expireTokens();
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(requests.length).toBe(before);
    expect(anna.now(message)).toBeDefined();
  });

  it('where direct messages are closed are not missed: she is told in the channel, and goes on there', async () => {
    anna.account.takesDirectMessages = false;
    const told = messageOf(await anna.press(await planned(), 'Send it to me'));
    expect(read(told)).toContain('Your direct messages are closed to me');
  });
});

describe('an interview', () => {
  it('survives any single step that fails', async () => {
    const message = await atSleeve();
    here.standIn.faults.onRequest(CALLBACK, { kind: 'refusal', refusal: unknownInteraction() });
    await expect(anna.press(message, 'Why do you ask?')).rejects.toThrow();
    here.standIn.faults.onRequest(EDIT, { kind: 'server error', status: 500 }, 2);
    expect(questionOf(await press(anna, message, 'From the cuff, flat'))).toBe('gauge');
  });

  it('is kept on the disk after each answer', async () => {
    const message = await atSleeve();
    await here.restart();
    expect(questionOf(await command(anna, 'fit go-on'))).toBe('sleeve_made');
    expect(typed(message)).toEqual(['Inches']);
  });

  it('can be started over, cancelled and asked for help wherever it stands, a cancelled one too', async () => {
    const message = await atGauge();
    expect(read(await type(anna, message, 'help'))).toContain('start over, cancel');
    const sure = await pick(anna, message, 'More', 'Cancel this interview');
    const cancelled = await press(anna, sure, 'Yes, cancel it');
    expect(read(cancelled)).toContain('Nothing more is asked.');
    expect(questionOf(await press(anna, cancelled, 'Start over'))).toBe('unit');
    anna.goTo(anna.dm);
    await command(anna, 'fit start', { wish: 'sleeve' });
    anna.say('cancel');
    await anna.waitFor((m) => read(m).startsWith('Cancelled.'), 'the end');
    anna.say('start over');
    await anna.waitFor(
      (m) => questionOf(m) === 'unit' && read(m).includes('We start over.'),
      'the first question',
    );
  });

  it('can be begun anew while another is open, by a word in the direct message too', async () => {
    await atSleeve();
    expect(questionOf(await command(anna, 'fit start', { wish: 'spacing' }))).toBe('spacing_from');
    anna.goTo(anna.dm).say('start');
    const menu = await anna.waitFor((m) => m.selects.length > 0, 'the menu');
    expect(menu.buttons.map(({ label }) => label)).toEqual([
      expect.stringContaining('Go on: Re-space a sleeve'),
    ]);
  });

  it('has an exit from every question, and explains instead of repeating itself', async () => {
    const message = await atGauge();
    const labels = message.buttons.map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining(["I don't know", 'Back', 'Why do you ask?', 'How do I find it?', 'Pause']),
    );
    expect(message.selects.at(-1)?.options.map(({ label }) => label)).toEqual(MORE.map(({ label }) => label));
  });

  it('shows where it stands and how much is to come', async () => {
    expect(read(await atSleeve())).toContain('question 2, about 9 to go');
  });

  it('is resumed with its date and the next question, each interview at its own', async () => {
    await atSleeve();
    await press(anna, await command(anna, 'fit start', { wish: 'spacing' }), "I don't know");
    const names = (await anna.autocomplete('fit go-on', { interview: '' }, 'interview')).map(
      ({ name }) => name,
    );
    expect(names).toEqual([
      expect.stringMatching(/^Space increases .* \(\d+ \w+ \d{4}, 1 answered\)$/),
      expect.stringMatching(/^Re-space a sleeve \(\d+ \w+ \d{4}, 1 answered\)$/),
    ]);
  });

  it('lets a wrong answer be corrected at any time: the one before, or any by its name', async () => {
    const message = await atGauge();
    const back = await press(anna, message, 'Back');
    expect(back.buttons[0]?.label).toBe('Keep: From the cuff, flat');
    const answers = await pick(anna, back, 'More', 'Show or change my answers');
    expect(questionOf(await pick(anna, answers, 'Change an answer', 'Unit'))).toBe('unit');
  });

  it('keeps every answer that still fits when one is changed, and goes on where it was', async () => {
    const message = await atGauge();
    const answers = await pick(anna, message, 'More', 'Show or change my answers');
    const unit = await pick(anna, answers, 'Change an answer', 'Unit');
    expect(questionOf(await press(anna, unit, 'Centimetres'))).toBe('gauge');
  });

  it('from the finished plan leads to one answer, and back to the plan', async () => {
    const review = await press(anna, await planned(), 'Change an answer');
    const asked = await pick(anna, review, 'Change an answer', 'Rows');
    const again = await type(anna, asked, '90');
    expect(planFile(await press(anna, again, 'Make my plan'))).toContain('You end with 72 stitches.');
  });

  it('asks for the unit once, and takes either in any answer', async () => {
    await atSleeve();
    expect(questionOf(await command(anna, 'fit start', { wish: 'sleeve' }))).toBe('sleeve_made');
  });

  it('says thanks only when the answer is stored', async () => {
    const message = await atSleeve();
    const { store } = here.kept;
    const append = store.append.bind(store);
    Object.assign(store, {
      append: () => {
        throw Object.assign(new Error('no space left'), { code: 'ENOSPC' });
      },
    });
    const told = messageOf(await anna.press(message, 'From the cuff, flat'));
    Object.assign(store, { append });
    expect(read(told)).toContain('could not be saved just now, so it was not taken');
    expect(typed(message)).toEqual(['Inches']);
  });
});

describe('lists', () => {
  it('of more than twenty-five are paged, and what is not listed may be typed', async () => {
    const menu = await command(anna, 'fit start');
    for (const { options } of menu.selects) expect(options.length).toBeLessThanOrEqual(25);
    expect(menu.selects.flatMap(({ options }) => options)).toHaveLength(here.desk.flows().length);
    expect(questionOf(await command(anna, 'fit start', { wish: 'one thing again' }))).toBe('unit');
  });

  it('from which nothing is wanted can be passed: leaving out is a choice of its own', async () => {
    const owner = `discord:${anna.id}`;
    const { session } = here.desk.begin(owner, 'whole');
    for (const [id, text] of WHOLE) {
      if (id === 'wishes') break;
      here.desk.say(owner, session, { text });
    }
    const asked = await command(anna, 'fit go-on');
    expect(asked.selects[0]).toMatchObject({ minValues: 1, maxValues: 10 });
    const shown = await pick(anna, asked, 'More', 'Leave this out for now');
    expect(read(shown)).toContain('Left out for now.');
  });
});

describe('what is not known', () => {
  it('can be said at every question, and the stand-in is named', async () => {
    const shown = await press(anna, await atSleeve(), "I don't know");
    expect(read(shown)).toMatch(/^Noted: That is fine\. I take From the cuff, flat/);
  });

  it('is marked in the plan, and never passed off as an answer', async () => {
    const owner = `discord:${anna.id}`;
    const { session } = here.desk.begin(owner, 'spacing');
    for (const text of ['50', '72', '84', "I don't know", 'skip', 'yes'])
      here.desk.say(owner, session, { text });
    const plan = planFile(await command(anna, 'fit plan'));
    const granted = plan.slice(plan.indexOf('Taken for granted:'));
    expect(granted).toContain('- Where it shapes: Back and forth, at both edges');
    expect(granted).toContain('- Plain rows at each end: 0 rows');
  });
});

describe('long texts', () => {
  it('are split between steps, and whole in a file', async () => {
    const owner = `discord:${anna.id}`;
    const { session } = here.desk.begin(owner, 'whole');
    for (const [, text] of WHOLE) here.desk.say(owner, session, { text });
    here.desk.say(owner, session, { text: 'yes' });
    const worked = await press(anna, await command(anna, 'fit plan'), 'Show the workings');
    expect(read(worked)).toMatch(/part 1 of [3-9]/);
    const second = await press(anna, worked, 'Next part');
    expect(read(second).split('\n')[1]).toMatch(/^\d+\. /);
    expect(planFile(worked).length).toBeGreaterThan(12_000);
  });

  it('are plain: words in paragraphs, no table, no picture without its words', async () => {
    const plan = await planned();
    expect(plan.text).not.toMatch(/```|\|/);
    for (const { name, altText } of plan.files) expect(name === 'plan.txt' || altText !== '').toBe(true);
  });
});
