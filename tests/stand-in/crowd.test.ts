import { ActionRowBuilder, ButtonBuilder, ButtonStyle, type Interaction, MessageFlags } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { messageOf } from './answer.ts';
import type { Person } from './person.ts';
import { type StandIn, startStandIn } from './stand-in.ts';
import { type TinyBot, tinyBot } from './tiny-bot.ts';

const PEOPLE = 500;
const PRESSES = 5;

/** Counts a person's presses in the button's custom id. */
async function counter(interaction: Interaction): Promise<unknown> {
  if (interaction.isChatInputCommand()) {
    return interaction.reply({ ...counted(0), flags: MessageFlags.Ephemeral });
  }
  if (interaction.isButton()) return interaction.update(counted(Number(interaction.customId) + 1));
  throw new Error('unforeseen');
}

function counted(count: number): { content: string; components: ActionRowBuilder<ButtonBuilder>[] } {
  const button = new ButtonBuilder().setCustomId(`${count}`).setLabel('More').setStyle(ButtonStyle.Primary);
  return {
    content: `pressed ${count}`,
    components: [new ActionRowBuilder<ButtonBuilder>().addComponents(button)],
  };
}

let standIn: StandIn;
let bot: TinyBot;

beforeEach(async () => {
  // The crowd shares this machine with the app, so the three seconds of the platform are not the measure here.
  standIn = await startStandIn({ acknowledgeWithinMs: 60_000, patienceMs: 60_000 });
  bot = await tinyBot(standIn, counter);
  await bot.client.application.commands.set([{ name: 'count', description: 'Counts.' }]);
});
afterEach(async () => {
  await bot.stop();
  await standIn.close();
});

async function walk(person: Person): Promise<string> {
  let message = messageOf(await person.command('count'));
  for (let pressed = 0; pressed < PRESSES; pressed += 1)
    message = messageOf(await person.press(message, 'More'));
  return message.text;
}

const crowd = () => Array.from({ length: PEOPLE }, (_, number) => standIn.person(`Knitter ${number}`));

describe('a crowd', () => {
  it('of 500 people is served at once, each with what is hers alone', async () => {
    const people = crowd();
    const texts = await Promise.all(people.map(walk));
    expect(new Set(texts)).toEqual(new Set([`pressed ${PRESSES}`]));
    expect(people.map((person) => person.sees().length)).toEqual(people.map(() => 1));
    expect(standIn.record.requests.length).toBe(PEOPLE * (PRESSES + 1) + 2);
    expect(standIn.record.violations).toEqual([]);
    expect(bot.errors).toEqual([]);
  });

  it('of 500 people is served through cuts, doubled, delayed and reordered events', async () => {
    standIn.faults.atRandom({
      seed: 7,
      rate: 0.05,
      requests: [
        { kind: 'delay', ms: 20 },
        { kind: 'server error', status: 503 },
      ],
      events: [{ kind: 'delay', ms: 20 }, { kind: 'after the next' }, { kind: 'twice' }],
    });
    const walking = Promise.all(crowd().map(walk));
    standIn.gateway.cut(4000);
    expect(new Set(await walking)).toEqual(new Set([`pressed ${PRESSES}`]));
    const refused = standIn.record.requests.flatMap(({ verdict }) =>
      verdict.kind === 'refused' ? [verdict.code] : [],
    );
    expect(new Set(refused)).toEqual(new Set([40060]));
  });
});
