/** The `fit` command: lists flows, prints a flow's questions, or answers flows from a file or in one line. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { ReviewLine } from '../../dialogue/message.ts';
import type { Plan } from '../../fit/plan.ts';
import type { Dialect } from '../../fit/terms.ts';
import type { CompiledFlow, Flows } from '../../flow/compile.ts';
import type { Print, Wording } from '../contract.ts';
import { AnswerFileFault, readScripts } from './files.ts';
import { optionNames, readOneLine } from './one-line.ts';
import { type BlankWish, readBlank, readPrint, readTerms } from './print-options.ts';
import { runScript, type ScriptResult } from './run.ts';

export const EXIT = { plan: 0, fault: 1, refused: 2, open: 3, cannot: 4 } as const;

export interface WantedFiles extends Print {
  readonly picture?: string | undefined;
  readonly sheet?: string | undefined;
  readonly terms: Dialect;
  /** Answers to be printed before the workings. */
  readonly from?: readonly ReviewLine[];
}

export interface CommandSurroundings {
  readonly flows: Flows;
  readonly wordingIn: (terms: Dialect) => Wording;
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** Keeps a plan's pictures and its sheet as files, and gives the names of the files. */
  readonly keep: (plan: Plan, files: WantedFiles) => Promise<readonly string[]>;
  /** Keeps a sheet that is filled in by hand, and gives the name of its file. */
  readonly keepBlank: (wish: BlankWish, terms: Dialect) => Promise<readonly string[]>;
}

const USAGE = `Use it like this:
  npm run -s fit -- --flows
  npm run -s fit -- --flow ID --questions
  npm run -s fit -- --flow ID --answers FILE [--json] [--key] [--picture FILE.png] [--sheet FILE.pdf]
  npm run -s fit -- --flow ID NAME=VALUE ... [--json] [--key] [--picture FILE.png] [--sheet FILE.pdf]
  npm run -s fit -- --blank SHEET --sheet FILE.pdf [--unit cm|in]
SHEET, to be filled in by hand: measuring, rows, stitches, waist or wedge.
With every --sheet: [--paper A4|Letter] [--type normal|large].
With all of them: [--terms us|uk], such as gauge or tension; both are understood in any answer.
FILE is YAML or JSON: question ids with what a person would type.
--key prints the answers and every working, numbered, in place of the plan; with --sheet both stand on its last pages.
NAME is a question's option in a flow of few questions, as --questions lists it.
Exit code 0: a plan. 2: an answer was refused. 3: questions are open. 4: it cannot be planned. 1: a fault.
`;

/** Runs the command and returns its exit code. */
export async function runCommand(args: readonly string[], around: CommandSurroundings): Promise<number> {
  const read = readArgs(args);
  if (typeof read === 'string') return complain(around, `${read}\n${USAGE}`);
  const { values: parsed, positionals: typed } = read;
  const print = readPrint(parsed);
  if (typeof print === 'string') return complain(around, `${print}\n`);
  const given = readTerms(parsed.terms);
  if (typeof given === 'string') return complain(around, `${given}\n`);
  const { terms } = given;
  if (parsed.blank !== undefined) return keepBlank(parsed, { ...print, terms }, around);
  if (parsed.json === true && parsed.key === true)
    return complain(around, 'Take --json or --key: the data hold every working already.\n');
  const wanted = { ...parsed, ...print, terms };
  if (parsed.flows === true) {
    for (const { file } of inTerms(around.flows, terms))
      around.out(`${file.id}\t${file.title}\t${file.wish}\n`);
    return EXIT.plan;
  }
  const flow = around.flows.get(parsed.flow ?? '')?.inTerms(terms);
  if (flow === undefined) {
    const known = [...around.flows.keys()].join(', ');
    return complain(
      around,
      parsed.flow === undefined ? USAGE : `There is no flow '${parsed.flow}'. There are: ${known}.\n`,
    );
  }
  if (parsed.questions === true) {
    around.out(`${JSON.stringify(questionsOf(flow, around.flows), null, 2)}\n`);
    return EXIT.plan;
  }
  if (parsed.answers !== undefined) return answerAll(flow, parsed.answers, wanted, around);
  if (typed.length === 0) return complain(around, USAGE);
  const script = readOneLine(flow, around.flows, typed);
  if (typeof script === 'string') return complain(around, `${script}\n`);
  return tellOne(
    runScript(flow, script, terms),
    { ...wanted, options: optionNames(flow, around.flows) },
    around,
  );
}

async function keepBlank(
  parsed: Parameters<typeof readBlank>[0],
  { terms, ...print }: Print & { readonly terms: Dialect },
  around: CommandSurroundings,
): Promise<number> {
  const wish = readBlank(parsed, print);
  if (typeof wish === 'string') return complain(around, `${wish}\n`);
  return written(around, EXIT.plan, () => around.keepBlank(wish, terms));
}

/** Names the files that were written; the exit code, or that of a fault where they cannot be. */
async function written(
  around: CommandSurroundings,
  code: number,
  keep: () => Promise<readonly string[]>,
): Promise<number> {
  try {
    for (const file of await keep()) around.error(`Written: ${file}\n`);
    return code;
  } catch (error) {
    if (isFileTrouble(error)) return complain(around, `${error.message}\n`);
    throw error;
  }
}

function readArgs(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        flows: { type: 'boolean' },
        flow: { type: 'string' },
        questions: { type: 'boolean' },
        answers: { type: 'string' },
        json: { type: 'boolean' },
        key: { type: 'boolean' },
        picture: { type: 'string' },
        sheet: { type: 'string' },
        blank: { type: 'string' },
        paper: { type: 'string' },
        type: { type: 'string' },
        unit: { type: 'string' },
        terms: { type: 'string' },
      },
    });
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function complain({ error }: CommandSurroundings, text: string): number {
  error(text);
  return EXIT.fault;
}

function inTerms(flows: Flows, terms: Dialect): CompiledFlow[] {
  return [...flows.values()].map((flow) => flow.inTerms(terms));
}

/** The questions of a flow in order: id, option, kind, wording, conditions, choices. */
function questionsOf(flow: CompiledFlow, flows: Flows) {
  const names = optionNames(flow, flows);
  return flow.stops.map(({ id, question, when }) => ({
    id,
    option: names.get(id),
    ...question,
    ...(when === undefined ? {} : { when }),
  }));
}

interface Wanted extends WantedFiles {
  readonly json?: boolean | undefined;
  readonly key?: boolean | undefined;
  /** What the questions are called in one line. */
  readonly options?: ReadonlyMap<string, string>;
}

async function answerAll(
  flow: CompiledFlow,
  file: string,
  wanted: Wanted,
  around: CommandSurroundings,
): Promise<number> {
  let scripts: ReturnType<typeof readScripts>;
  try {
    scripts = readScripts(readFileSync(file === '-' ? 0 : file, 'utf8'), file);
  } catch (error) {
    if (error instanceof AnswerFileFault || isFileTrouble(error))
      return complain(around, `${error.message}\n`);
    throw error;
  }
  const results = scripts.map((script) => runScript(flow, script, wanted.terms));
  const [only] = results;
  if (only !== undefined && results.length === 1) return await tellOne(only, wanted, around);
  for (const result of results) around.out(`${JSON.stringify(asData(result))}\n`);
  const codes = results.map(exitCode);
  return [EXIT.refused, EXIT.open, EXIT.cannot].find((code) => codes.includes(code)) ?? EXIT.plan;
}

function isFileTrouble(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'code' in error && typeof error.code === 'string';
}

async function tellOne(result: ScriptResult, wanted: Wanted, around: CommandSurroundings): Promise<number> {
  const code = tell(result, wanted, around);
  if (result.result !== 'outcome' || result.outcome.kind !== 'plan') return code;
  const { plan } = result.outcome;
  const files = wanted.key === true ? { ...wanted, from: result.answers } : wanted;
  return written(around, code, () => around.keep(plan, files));
}

function tell(
  result: ScriptResult,
  { json, key, options, terms }: Wanted,
  around: CommandSurroundings,
): number {
  const { out, error } = around;
  const named = (question: string) => options?.get(question) ?? question;
  if (result.result === 'outcome') {
    if (json === true) out(`${JSON.stringify(asData(result), null, 2)}\n`);
    else out(around.wordingIn(terms)(result.outcome, true, key === true ? result.answers : undefined));
  } else if (result.result === 'refused') {
    for (const r of result.refused) error(`${named(r.question)}: '${r.answer}' was not taken. ${r.reason}\n`);
  } else {
    for (const o of result.open)
      error(`${named(o.question)} is open: ${o.ask} (for example: ${o.example})\n`);
  }
  return exitCode(result);
}

/** A plan follows the published schema; anything else is an object that says what it is. */
function asData(result: ScriptResult): unknown {
  if (result.result !== 'outcome') return result;
  return result.outcome.kind === 'plan' ? result.outcome.plan : result.outcome;
}

function exitCode(result: ScriptResult): number {
  if (result.result !== 'outcome') return EXIT[result.result];
  return result.outcome.kind === 'plan' ? EXIT.plan : EXIT.cannot;
}
