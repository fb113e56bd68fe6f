import { Events, type Message } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { messageOf, modalOf } from './answer.ts';
import { SAMPLER_COMMANDS, sampler } from './sampler.ts';
import { openApiPath, schemasIn } from './schemas.ts';
import { type StandIn, startStandIn } from './stand-in.ts';
import { type TinyBot, tinyBot } from './tiny-bot.ts';

let standIn: StandIn;
let bot: TinyBot;

beforeEach(async () => {
  standIn = await startStandIn();
  bot = await tinyBot(standIn, sampler);
  await bot.client.application.commands.set(SAMPLER_COMMANDS);
});

afterEach(async () => {
  await bot.stop();
  await standIn.close();
});

describe('a real discord.js client on the stand-in', () => {
  it('logs in, knows its server and registers commands', async () => {
    expect(bot.client.user.id).toBe(standIn.appId);
    expect(bot.client.guilds.cache.map((guild) => guild.name)).toEqual(['a knitting circle']);
    expect(
      [...(await bot.client.application.commands.fetch()).values()].map((command) => command.name),
    ).toEqual(['wool', 'slow']);
  });

  it('receives a command and replies', async () => {
    const anna = standIn.person('Anna');
    const message = messageOf(await anna.command('wool', { wool: 'tweed' }));
    expect(message.text).toBe('you said tweed');
    expect(message.buttons.map((button) => button.label)).toEqual(['Fill in a form', 'Change this', 'Later']);
    expect(message.selects[0]?.options.map((option) => option.value)).toEqual(['in', 'cm']);
    expect(message.isFromApp).toBe(true);
  });

  it('completes what is typed', async () => {
    const choices = await standIn.person('Anna').autocomplete('wool', { wool: 'twe' }, 'wool');
    expect(choices).toEqual([{ name: 'completes twe', value: 'whole' }]);
  });

  it('opens a form from a button and takes its submission', async () => {
    const anna = standIn.person('Anna');
    const start = messageOf(await anna.command('wool'));
    const modal = modalOf(await anna.press(start, 'Fill in a form'));
    expect(modal.title).toBe('Your swatch');
    expect(messageOf(await anna.submit(modal, { stitches: '22' })).text).toBe('22 stitches');
  });

  it('changes the message a button stands on, at once and after a deferral', async () => {
    const anna = standIn.person('Anna');
    const start = messageOf(await anna.command('wool'));
    const later = await anna.press(start, 'later');
    expect(later.kind).toBe('update');
    expect(messageOf(later).text).toBe('changed later');
    const changed = messageOf(await anna.press(messageOf(later), 'change'));
    expect(changed).toMatchObject({ text: 'changed', buttons: [], version: 3, id: start.id });
    expect(anna.now(start)?.text).toBe('changed');
  });

  it('answers a choice in private', async () => {
    const anna = standIn.person('Anna');
    const berta = standIn.person('Berta');
    const start = messageOf(await anna.command('wool'));
    const reply = messageOf(await anna.select(start, 'unit', ['Centimetres']));
    expect(reply.text).toBe('chose cm');
    expect(reply.isEphemeral).toBe(true);
    expect(anna.sees().map((message) => message.text)).toContain('chose cm');
    expect(berta.sees().map((message) => message.text)).toEqual(['you said no wool']);
    anna.loseEphemerals();
    expect(anna.now(reply)).toBeUndefined();
    expect(anna.sees()).toHaveLength(1);
  });

  it('defers, fills in, and follows up with a file', async () => {
    const anna = standIn.person('Anna');
    const reply = messageOf(await anna.command('slow'));
    expect(reply).toMatchObject({ text: 'worked out', isEphemeral: true, isLoading: false });
    const file = await anna.waitFor((message) => message.files.length > 0, 'the file');
    expect(file.text).toBe('and a file');
    expect(file.files).toMatchObject([{ name: 'plan.txt', altText: 'the plan' }]);
    expect(Buffer.from(file.files[0]?.bytes ?? []).toString()).toBe('plan');
  });

  it('works in a direct message with the app and in a private channel without it', async () => {
    const anna = standIn.person('Anna');
    const berta = standIn.person('Berta');
    anna.goTo(anna.dm);
    const inDm = messageOf(await anna.command('wool'));
    expect(messageOf(await anna.press(inDm, 'change')).text).toBe('changed');
    const group = standIn.world.privateChannel([anna.account, berta.account]);
    anna.account.hasApp = true;
    anna.goTo(group);
    const inGroup = messageOf(await anna.command('wool'));
    expect(
      berta
        .goTo(group)
        .sees()
        .map((message) => message.text),
    ).toEqual(['you said no wool']);
    expect(modalOf(await anna.press(inGroup, 'form')).title).toBe('Your swatch');
  });

  it('hears what is typed in a direct message, and answers there', async () => {
    bot.client.on(Events.MessageCreate, (message: Message) => {
      if (!message.author.bot)
        message.reply(`heard ${message.content}`).catch((error) => bot.errors.push(error));
    });
    const anna = standIn.person('Anna');
    anna.goTo(anna.dm).say('5½ sts');
    expect((await anna.waitFor((message) => message.text.includes('heard'))).text).toBe('heard 5½ sts');
  });

  it('writes a direct message unasked, edits and deletes it', async () => {
    const anna = standIn.person('Anna');
    const user = await bot.client.users.createDM(anna.id);
    const sent = await user.send({ content: 'a reminder' });
    await sent.edit({ content: 'a gentler reminder' });
    expect(anna.sees(anna.dm).map((message) => message.text)).toEqual(['a gentler reminder']);
    await sent.delete();
    expect(anna.sees(anna.dm)).toEqual([]);
  });

  afterEach(() => {
    expect(bot.errors).toEqual([]);
    expect(standIn.record.violations).toEqual([]);
    expect(standIn.record.mentions).toEqual([]);
    const path = openApiPath();
    if (path) expect(schemasIn(path).faults(standIn.record.requests)).toEqual([]);
  });
});
