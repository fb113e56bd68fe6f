/** Command definitions the documentation forbids (page `interactions/application-commands`). */
import { type BadPayload, bad, times } from './row.ts';

const command = (own: object = {}) => ({ name: 'fit', description: 'Fits.', ...own });
const option = (own: object = {}) => ({ type: 3, name: 'yarn', description: 'Which.', ...own });
const withOptions = (...options: unknown[]) => [command({ options })];
const choice = (n: number) => ({ name: `c${n}`, value: `${n}` });
const first = '0.options.0';

export const BAD_COMMANDS: readonly BadPayload[] = [
  bad('a name of 33 characters', [command({ name: 'x'.repeat(33) })], 'too-long 0.name', 'bad-format 0.name'),
  bad('a name with a space', [command({ name: 'fit me' })], 'bad-format 0.name'),
  bad('a capital in a name', [command({ name: 'Fit' })], 'not-lower-case 0.name'),
  bad('no description', [{ name: 'fit' }], 'missing 0.description'),
  bad('an empty description', [command({ description: '' })], 'too-short 0.description'),
  bad('a description of 101', [command({ description: 'x'.repeat(101) })], 'too-long 0.description'),
  bad('a menu entry with a description', [command({ type: 2 })], 'unknown-key 0.description'),
  bad('a key that does not exist', [command({ cost: 1 })], 'unknown-key 0.cost'),
  bad('a name twice', [command(), command()], 'command-name-twice 1'),
  bad(
    '101 chat commands',
    times(101, (n) => command({ name: `c${n}` })),
    'too-many-of-a-kind',
  ),
  bad(
    '16 menu entries',
    times(16, (n) => ({ type: 3, name: `Entry ${n}` })),
    'too-many-of-a-kind',
  ),
  bad('a context that does not exist', [command({ contexts: [3] })], 'not-one-of 0.contexts.0'),
  bad('no context', [command({ contexts: [] })], 'too-few 0.contexts'),
  bad('a context twice', [command({ contexts: [0, 0] })], 'choice-twice 0.contexts'),
  bad(
    'private channels for servers only',
    [command({ contexts: [0, 2], integration_types: [0] })],
    'private-channel-needs-user-install 0',
  ),
  bad('26 options', withOptions(...times(26, (n) => option({ name: `o${n}` }))), 'too-many 0.options'),
  bad('an option name twice', withOptions(option(), option()), 'option-name-twice 0.options.1'),
  bad('an option name with a capital', withOptions(option({ name: 'Yarn' })), `not-lower-case ${first}.name`),
  bad(
    'a required option after an optional one',
    withOptions(option(), option({ name: 'b', required: true })),
    'required-after-optional 0.options.1',
  ),
  bad('26 choices', withOptions(option({ choices: times(26, choice) })), `too-many ${first}.choices`),
  bad(
    'a choice name of 101',
    withOptions(option({ choices: [{ name: 'x'.repeat(101), value: 'a' }] })),
    `too-long ${first}.choices.0.name`,
  ),
  bad(
    'a choice value of 101',
    withOptions(option({ choices: [{ name: 'a', value: 'x'.repeat(101) }] })),
    `too-long ${first}.choices.0.value`,
  ),
  bad(
    'a number among texts',
    withOptions(option({ choices: [{ name: 'a', value: 1 }] })),
    `choice-of-wrong-type ${first}.choices.0.value`,
  ),
  bad(
    'a choice value twice',
    withOptions(option({ choices: [choice(1), { ...choice(1), name: 'b' }] })),
    `choice-twice ${first}.choices`,
  ),
  bad(
    'choices and autocompletion',
    withOptions(option({ choices: [choice(1)], autocomplete: true })),
    `choices-with-autocomplete ${first}`,
  ),
  bad('a longest length of 6001', withOptions(option({ max_length: 6001 })), `too-large ${first}.max_length`),
  bad(
    'least over most',
    withOptions(option({ type: 10, min_value: 2, max_value: 1 })),
    `minimum-over-maximum ${first}`,
  ),
  bad(
    'lengths of a number',
    withOptions(option({ type: 4, max_length: 5 })),
    `unknown-key ${first}.max_length`,
  ),
  bad(
    'a value beside a subcommand',
    withOptions({ type: 1, name: 'a', description: 'A.' }, option()),
    'subcommands-mixed 0.options',
  ),
  bad(
    'a group in a group',
    withOptions({
      type: 2,
      name: 'a',
      description: 'A.',
      options: [{ type: 2, name: 'b', description: 'B.', options: [] }],
    }),
    `not-allowed-here ${first}.options.0.type`,
  ),
  bad(
    'an empty group',
    withOptions({ type: 2, name: 'a', description: 'A.', options: [] }),
    `too-few ${first}.options`,
  ),
  bad(
    'more than 8000 characters',
    withOptions(
      ...times(5, (n) =>
        option({
          name: `o${n}`,
          choices: times(25, (c) => ({ name: `${c}`.padStart(78, '-'), value: `${c}` })),
        }),
      ),
    ),
    'texts-over-8000 0',
  ),
];

export const BAD_GUILD_COMMANDS: readonly BadPayload[] = [
  bad('contexts in one server', [command({ contexts: [0] })], 'only-in-global-commands 0.contexts'),
  bad(
    'install types in one server',
    [command({ integration_types: [0] })],
    'only-in-global-commands 0.integration_types',
  ),
];
