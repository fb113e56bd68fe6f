/**
 * Writes tools/mutation-report.md from what Stryker measured:
 *   node --import tsx tools/mutation-report.ts reports/mutation.json reports/other.json
 * Several results, with different tests, are taken together: a mutant that any of them killed is killed. Only results of
 * a file's text as it is at HEAD count, or at the commit that `--at=` names; what changed since then is listed.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import * as z from 'zod';
import { reasonFor } from './mutation-reasons.ts';

const FOLDER = 'src/fit';
const REPORT = 'tools/mutation-report.md';
const AT = process.argv.find((one) => one.startsWith('--at='))?.slice('--at='.length) ?? 'HEAD';

const place = z.object({ line: z.number(), column: z.number() });
const mutant = z.object({
  mutatorName: z.string(),
  replacement: z.string(),
  status: z.enum([
    'Killed',
    'Timeout',
    'Survived',
    'NoCoverage',
    'Ignored',
    'CompileError',
    'RuntimeError',
    'Pending',
  ]),
  location: z.object({ start: place, end: place }),
});
const result = z.object({
  files: z.record(z.string(), z.object({ source: z.string(), mutants: z.array(mutant) })),
  framework: z.object({ version: z.string().optional() }).optional(),
});

type Mutant = z.infer<typeof mutant>;
type Result = z.infer<typeof result>;

interface Measured {
  readonly source: string;
  readonly mutants: ReadonlyMap<string, Mutant>;
}

function keyOf({ location: { start, end }, mutatorName, replacement }: Mutant): string {
  return [start.line, start.column, end.line, end.column, mutatorName, replacement].join(' ');
}

const now = git('ls-tree', '-r', '--name-only', AT, FOLDER)
  .split('\n')
  .filter((name) => name.endsWith('.ts'))
  .sort();

/** From what tells least of a mutant to what tells most. */
const RANK: readonly Mutant['status'][] = [
  'Pending',
  'NoCoverage',
  'Ignored',
  'Survived',
  'RuntimeError',
  'Timeout',
  'Killed',
];

/** What each file's mutants came to, over all results. String literals, which are not mutated, are left out. */
function joined(results: readonly Result[]): Map<string, Measured> {
  const files = new Map<string, Measured>();
  for (const { files: part } of results)
    for (const [name, { source, mutants }] of Object.entries(part)) {
      if (textOf(name) !== source) continue;
      const found = new Map(files.get(name)?.mutants);
      for (const one of mutants.filter(({ mutatorName }) => mutatorName !== 'StringLiteral')) {
        const before = found.get(keyOf(one));
        if (before === undefined || RANK.indexOf(one.status) > RANK.indexOf(before.status))
          found.set(keyOf(one), one);
      }
      files.set(name, { source, mutants: found });
    }
  return files;
}

function git(...args: readonly string[]): string {
  return execFileSync('git', args, { encoding: 'utf8', maxBuffer: 2 ** 26 });
}

/** The file at the commit; undefined where it is not there. */
function textOf(name: string): string | undefined {
  return now.includes(name) ? git('show', `${AT}:${name}`) : undefined;
}

/** Killed and timed out are noticed; survived and no coverage are not; ignored is what loads before any test. */
type Tally = Readonly<Record<'killed' | 'timeout' | 'survived' | 'uncovered' | 'ignored', number>>;

function tallyOf(mutants: Iterable<Mutant>): Tally {
  const all = [...mutants];
  const count = (...statuses: Mutant['status'][]) =>
    all.filter((one) => statuses.includes(one.status)).length;
  return {
    killed: count('Killed'),
    timeout: count('Timeout'),
    survived: count('Survived', 'RuntimeError', 'Pending'),
    uncovered: count('NoCoverage'),
    ignored: count('Ignored'),
  };
}

/** In per cent, as Stryker reckons it: a mutant that no test reaches counts as unnoticed. */
function score({ killed, timeout, survived, uncovered }: Tally): string {
  const tried = killed + timeout + survived + uncovered;
  return tried === 0 ? '–' : ((100 * (killed + timeout)) / tried).toFixed(1);
}

function row(name: string, tally: Tally): string {
  const { killed, timeout, survived, uncovered, ignored } = tally;
  return `| ${[name, killed, timeout, survived, uncovered, ignored, score(tally)].join(' | ')} |`;
}

/** The mutated text on one line. */
function original(source: string, { start, end }: Mutant['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, index) =>
      line.slice(index === 0 ? start.column - 1 : 0, index === last ? end.column - 1 : undefined),
    )
    .join(' ');
}

const LONGEST_QUOTE = 80;

function quoted(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ').replaceAll('`', "'").trim();
  return `\`${line.length > LONGEST_QUOTE ? `${line.slice(0, LONGEST_QUOTE)}…` : line}\``;
}

function survivorsOf(name: string, { source, mutants }: Measured): string[] {
  const alive = [...mutants.values()].filter(
    (one) => one.status === 'Survived' || one.status === 'NoCoverage',
  );
  if (alive.length === 0) return [];
  const line = (one: Mutant) => {
    const was = original(source, one.location);
    const reason = reasonFor({
      file: name,
      was,
      becomes: one.replacement,
      reached: one.status === 'Survived',
    });
    return `- ${one.location.start.line}: ${quoted(was)} → ${quoted(one.replacement)}: ${reason}`;
  };
  return [`### ${name}`, '', ...alive.map(line), ''];
}

function versionOf(name: string): string {
  return z
    .object({ version: z.string() })
    .parse(JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8'))).version;
}

const since = git('diff', '--name-only', AT, 'HEAD', '--', FOLDER)
  .split('\n')
  .filter((name) => name.endsWith('.ts'));
const results = process.argv
  .slice(2)
  .filter((one) => !one.startsWith('--'))
  .map((path) => result.parse(JSON.parse(readFileSync(path, 'utf8'))));
const measured = [...joined(results)].sort(([a], [b]) => a.localeCompare(b));
const unmeasured = now.filter((name) => !measured.some(([other]) => other === name));
const whole = tallyOf(measured.flatMap(([, { mutants }]) => [...mutants.values()]));

function listed(names: readonly string[]): string {
  return names.length === 0 ? 'none' : names.join(', ');
}

const report = [
  '# What mutation testing of the engine found',
  '',
  `Stryker ${versionOf('@stryker-mutator/core')}, vitest ${versionOf('vitest')}, fast-check ${versionOf('fast-check')}, Node ${process.versions.node}; written ${new Date().toISOString().slice(0, 10)}. \`npm run mutate\` measures it again.`,
  '',
  `**${score(whole)} %** of the mutants tried in ${FOLDER} are noticed by a test: ${whole.killed + whole.timeout} of ${whole.killed + whole.timeout + whole.survived + whole.uncovered}. ${whole.survived} survived, ${whole.uncovered} stand where no test comes.`,
  '',
  'Not tried: string literals (they are keys of wordings, held by the types and by the tests of the wordings), and the mutants marked "before tests", which act while a module loads (tables, mostly).',
  '',
  `Files measured: ${measured.length} of ${now.length}. No result (mostly files of types and names, which have nothing to mutate): ${listed(unmeasured)}.`,
  '',
  `Measured at commit ${git('log', '-1', '--format=%h (%s)', AT).trim()}. Changed since then: ${listed(since)}.`,
  '',
  '| file | killed | timed out | survived | no coverage | before tests | score |',
  '| --- | ---: | ---: | ---: | ---: | ---: | ---: |',
  ...measured.map(([name, { mutants }]) => row(name, tallyOf(mutants.values()))),
  row('**all**', whole),
  '',
  '## Survivors',
  '',
  ...measured.flatMap(([name, file]) => survivorsOf(name, file)),
].join('\n');

writeFileSync(REPORT, `${report.trimEnd()}\n`);
