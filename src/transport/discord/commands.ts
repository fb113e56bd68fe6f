/** The commands, in the trade's words; made from the flows, so that a chapter that is there can be asked for. */
import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  PermissionFlagsBits,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js';
import { type Flows, lessonsOf } from '../../flow/compile.ts';
import { SELECT_OPTIONS } from './limits.ts';
import { SHEET_OPTIONS } from './sheets.ts';
import { asOption, nameOf, sumFlows, sumOptions } from './sums-options.ts';

/** Flows and questions that have commands of their own, where they are there. */
export const RECHECK = 'recheck';
export const MEASURE = { flow: 'measure', what: 'measure_what', table: 'table' } as const;
export const PATTERN = 'pattern';
export const LESSON = 'about';

export type Command = RESTPostAPIChatInputApplicationCommandsJSONBody;

/** `/fit` for herself, `/sums` for others, `/host` for those who manage a server. */
export function commandsFor(flows: Flows): Command[] {
  return [fitCommand(flows), ...sums(flows), host()];
}

const EVERYWHERE: Pick<Command, 'type' | 'contexts' | 'integration_types'> = {
  type: ApplicationCommandType.ChatInput,
  contexts: [
    InteractionContextType.Guild,
    InteractionContextType.BotDM,
    InteractionContextType.PrivateChannel,
  ],
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
};

function fitCommand(flows: Flows): Command {
  return {
    ...EVERYWHERE,
    name: 'fit',
    description:
      'Fit a knitting pattern to a body: an interview, seen by you alone, that ends in a numbered plan.',
    options: [
      sub('start', 'Begin: say what you would like, or leave it empty to choose.', [
        completed('wish', 'What you would like to do'),
        completed('pattern', 'The pattern that you knit from'),
      ]),
      sub('go-on', 'Go on where you stopped. The open question is shown again.', [
        completed('interview', 'Which interview; the last one where you leave it empty'),
      ]),
      ...(flows.has(RECHECK)
        ? [sub('recheck', 'In the middle of knitting: does it still come out right?')]
        : []),
      ...measure(flows),
      sub('plan', 'Show your plan again, with pictures and workings.', [
        completed('which', 'Which plan; the newest where you leave it empty'),
      ]),
      ...(canBePractised(flows)
        ? [
            sub('practise', 'An exercise: every figure is given, and the worked answer is shown.', [
              completed('chapter', 'What to practise; leave it empty to choose'),
            ]),
          ]
        : []),
      ...lessons(flows),
      sheets(),
      sub('my-data', 'What is kept of you: take it with you, delete it, choose units and terms.'),
      sub('help', 'What you can do here, in one page.'),
    ],
  };
}

function measure(flows: Flows): APIApplicationCommandSubcommandOption[] {
  const questions = flows.get(MEASURE.flow)?.questions;
  const what = questions?.get(MEASURE.what)?.choices;
  if (questions === undefined || what === undefined) return [];
  const table = questions.get(MEASURE.table)?.choices ?? [];
  const option = (
    name: string,
    description: string,
    from: readonly { label: string }[],
    required: boolean,
  ) => ({
    type: ApplicationCommandOptionType.String as const,
    name,
    description,
    required,
    choices: from.slice(0, SELECT_OPTIONS).map(({ label }) => ({ name: label, value: label })),
  });
  return [
    sub('measure', 'Measure one thing: where, how, and how it compares with the tables.', [
      option('what', 'What to measure', what, true),
      ...(table.length === 0 ? [] : [option('table', 'Which size table to compare with', table, false)]),
    ]),
  ];
}

function lessons(flows: Flows): APIApplicationCommandSubcommandOption[] {
  const choices = [...lessonsOf(flows, 'us').values()].map(({ lesson, title }) => ({
    name: title,
    value: lesson,
  }));
  if (choices.length === 0) return [];
  const about = {
    type: ApplicationCommandOptionType.String as const,
    name: LESSON,
    description: 'What you would like to learn',
    required: true,
    choices: choices.slice(0, SELECT_OPTIONS),
  };
  return [sub('lesson', 'Learn one thing in one screen: gauge, ease, short rows and more.', [about])];
}

function sheets(): APIApplicationCommandSubcommandOption {
  const options = Object.entries(SHEET_OPTIONS).map(([name, { description, words }]) => ({
    type: ApplicationCommandOptionType.String as const,
    name,
    description,
    choices: words.map((word) => ({ name: word, value: word })),
  }));
  return sub('sheets', 'Sheets to print and fill in by hand: measurements, and the sums.', options);
}

function canBePractised(flows: Flows): boolean {
  return [...flows.values()].some(({ book, file }) => book.exercises.has(file.id));
}

function sums(flows: Flows): Command[] {
  const made = sumFlows(flows);
  if (made.length === 0) return [];
  return [
    {
      ...EVERYWHERE,
      name: 'sums',
      description: 'One sum in one line, answered for all to see, workings included.',
      options: made
        .slice(0, SELECT_OPTIONS)
        .map((flow) => sub(nameOf(flow.file.id), flow.file.title, sumOptions(flow).map(asOption))),
    },
  ];
}

function host(): Command {
  return {
    type: ApplicationCommandType.ChatInput,
    contexts: [InteractionContextType.Guild],
    integration_types: [ApplicationIntegrationType.GuildInstall],
    name: 'host',
    description: 'Settings for this server: units, terms, chapters, and where answers may be public.',
    default_member_permissions: `${PermissionFlagsBits.ManageGuild}`,
  };
}

function sub(
  name: string,
  description: string,
  options: APIApplicationCommandBasicOption[] = [],
): APIApplicationCommandSubcommandOption {
  return { type: ApplicationCommandOptionType.Subcommand, name, description, options };
}

function completed(name: string, description: string): APIApplicationCommandBasicOption {
  return { type: ApplicationCommandOptionType.String, name, description, autocomplete: true };
}
