/** Starts the program: an interview in the terminal, or the `fit` command for scripts. The only file that knows every floor. */
import { loadFlows } from './library.ts';
import { outcomeText } from './present/plan-text.ts';

const [, , command, ...args] = process.argv;

if (command === 'fit') {
  const { runCommand } = await import('./transport/script/command.ts');
  process.exitCode = runCommand(args, {
    flows: loadFlows(),
    wording: (outcome) => outcomeText(outcome, { dialect: 'us', workings: true }),
    out: (text) => process.stdout.write(text),
    error: (text) => process.stderr.write(text),
  });
}
