/** A bot's work that shows each way of answering once. */
import {
  ActionRowBuilder,
  type ApplicationCommandDataResolvable,
  ApplicationCommandOptionType,
  ApplicationIntegrationType,
  AttachmentBuilder,
  ButtonBuilder,
  ButtonStyle,
  type Interaction,
  InteractionContextType,
  LabelBuilder,
  MessageFlags,
  ModalBuilder,
  StringSelectMenuBuilder,
  TextInputBuilder,
  TextInputStyle,
} from 'discord.js';

export const SAMPLER_COMMANDS: readonly ApplicationCommandDataResolvable[] = [
  {
    name: 'wool',
    description: 'Says what wool.',
    options: [
      {
        name: 'wool',
        description: 'Which.',
        type: ApplicationCommandOptionType.String,
        autocomplete: true,
      },
    ],
    contexts: [
      InteractionContextType.Guild,
      InteractionContextType.BotDM,
      InteractionContextType.PrivateChannel,
    ],
    integrationTypes: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  },
  { name: 'slow', description: 'Thinks first.' },
];

const buttons = new ActionRowBuilder<ButtonBuilder>().addComponents(
  new ButtonBuilder().setCustomId('form').setLabel('Fill in a form').setStyle(ButtonStyle.Primary),
  new ButtonBuilder().setCustomId('change').setLabel('Change this').setStyle(ButtonStyle.Secondary),
  new ButtonBuilder().setCustomId('later').setLabel('Later').setStyle(ButtonStyle.Secondary),
);
const select = new ActionRowBuilder<StringSelectMenuBuilder>().addComponents(
  new StringSelectMenuBuilder()
    .setCustomId('unit')
    .addOptions({ label: 'Inches', value: 'in' }, { label: 'Centimetres', value: 'cm' }),
);
const form = new ModalBuilder()
  .setCustomId('gauge form')
  .setTitle('Your swatch')
  .addLabelComponents(
    new LabelBuilder()
      .setLabel('Stitches')
      .setTextInputComponent(new TextInputBuilder().setCustomId('stitches').setStyle(TextInputStyle.Short)),
  );

export async function sampler(interaction: Interaction): Promise<unknown> {
  if (interaction.isAutocomplete()) {
    return interaction.respond([{ name: `completes ${interaction.options.getFocused()}`, value: 'whole' }]);
  }
  if (interaction.isChatInputCommand()) {
    if (interaction.commandName === 'slow') {
      await interaction.deferReply({ flags: MessageFlags.Ephemeral });
      await interaction.editReply({ content: 'worked out' });
      return interaction.followUp({
        content: 'and a file',
        files: [new AttachmentBuilder(Buffer.from('plan'), { name: 'plan.txt', description: 'the plan' })],
      });
    }
    const wool = interaction.options.getString('wool') ?? 'no wool';
    return interaction.reply({ content: `you said ${wool}`, components: [buttons, select] });
  }
  if (interaction.isButton() && interaction.customId === 'form') return interaction.showModal(form);
  if (interaction.isButton() && interaction.customId === 'change')
    return interaction.update({ content: 'changed', components: [] });
  if (interaction.isButton()) {
    await interaction.deferUpdate();
    return interaction.editReply({ content: 'changed later' });
  }
  if (interaction.isStringSelectMenu())
    return interaction.reply({
      content: `chose ${interaction.values.join()}`,
      flags: MessageFlags.Ephemeral,
    });
  if (interaction.isModalSubmit())
    return interaction.reply(`${interaction.fields.getTextInputValue('stitches')} stitches`);
  throw new Error('unforeseen');
}
