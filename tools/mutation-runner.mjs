/**
 * Runs the engine's tests against mutants within one process, for Stryker (a plugin of its kind TestRunner).
 * The tests are loaded once, and a mutant costs what its tests cost: milliseconds, where a new run of vitest costs
 * half a second. A mutant is seen where it is read while a test runs; those of the modules' first lines are not tried
 * (`ignoreStatic`).
 * Tests that killed a mutant lately run first, then the quickest. Random examples come from a fixed seed, and a failing
 * one is not made smaller. Where a module remembers anything, a test that fails with a mutant must pass again without it:
 * else the mutant has left something behind, and the next is tried in a new process.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { declareFactoryPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  MutantRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { collectTests, getFn } from '@vitest/runner';
import { getTests } from '@vitest/runner/utils';
import fc from 'fast-check';

const SEED = 20_261_125;
const EXAMPLES = whole('EASEWRIGHT_EXAMPLES', 20);
const FLOORS = ['fit', 'truth', 'simulator', 'oracle', 'chapters'];
const MEASURED = 'tests-measured.json';
/** Milliseconds of the processor. Longer tests are tried only on what no quicker test covers, the LONG quickest of them. */
const LONGEST = whole('EASEWRIGHT_LONGEST', 60);
const LONG = 2;
/** What remembers anything from one call to the next: a mutant there can outlive its own turn. */
const REMEMBERING = ['src/fit/formula.ts'];
/** How many of the last tests to have killed a mutant are tried before all others. */
const LATELY = 4;

function whole(name, usual) {
  return Number(process.env[name] ?? usual);
}

/** Where instrumented code reads which mutant is active, and counts what it meets. */
globalThis.__stryker__ ??= {};
const stryker = globalThis.__stryker__;

function testFiles() {
  const chosen = process.env.EASEWRIGHT_TESTS;
  if (chosen !== undefined) return chosen.split(',').map((file) => resolve(file));
  return FLOORS.flatMap((floor) =>
    readdirSync(`tests/${floor}`, { recursive: true })
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => resolve('tests', floor, name)),
  );
}

/** What vitest's collector asks of whoever collects. */
const collector = {
  config: {
    root: process.cwd(),
    sequence: {},
    setupFiles: [],
    testTimeout: 0,
    hookTimeout: 0,
    tags: [],
    allowOnly: true,
  },
  trace: (_name, attributes, work) => (work ?? attributes)(),
  importFile: (file) => import(pathToFileURL(file).href),
};

/** Ends each property after EXAMPLES of its examples, however many it asks for. */
function shorten() {
  const prototype = Object.getPrototypeOf(fc.property(fc.constant(0), () => true));
  const { run } = prototype;
  const tried = new WeakMap();
  prototype.run = function shortened(value) {
    const before = tried.get(this) ?? 0;
    tried.set(this, before + 1);
    return before < EXAMPLES ? run.call(this, value) : null;
  };
}

async function load() {
  fc.configureGlobal({ seed: SEED, endOnFailure: true });
  shorten();
  const files = await collectTests(testFiles(), collector);
  for (const file of files)
    if (file.result?.state === 'fail') throw new Error(`${file.name}: ${file.result.errors?.[0]?.message}`);
  return named(getTests(files));
}

/** Tests by their full names, the second of a name with a 2 behind it. */
function named(tests) {
  const byName = new Map();
  for (const test of tests) {
    const name = test.fullName.slice(test.fullName.indexOf('tests/'));
    let id = name;
    for (let next = 2; byName.has(id); next++) id = `${name} ${next}`;
    byName.set(id, getFn(test));
  }
  return byName;
}

async function run(id, test) {
  const start = process.cpuUsage();
  const told = (rest) => ({ id, name: id, timeSpentMs: process.cpuUsage(start).user / 1000, ...rest });
  try {
    await test();
    return told({ status: TestStatus.Success });
  } catch (error) {
    return told({ status: TestStatus.Failed, failureMessage: String(error).slice(0, 300) });
  }
}

/** Takes from what the long tests cover all that is covered by quicker ones. */
function spareLongTests(results, perTest) {
  const covered = new Map();
  for (const { id, timeSpentMs } of [...results].sort((a, b) => a.timeSpentMs - b.timeSpentMs))
    for (const mutant of Object.keys(perTest[id] ?? {})) {
      const before = covered.get(mutant) ?? { quick: 0, long: 0 };
      if (timeSpentMs <= LONGEST) before.quick += 1;
      else if (before.quick > 0 || before.long === LONG) delete perTest[id][mutant];
      else before.long += 1;
      covered.set(mutant, before);
    }
}

/** Mutants that an earlier run killed, with the test that did (EASEWRIGHT_KILLED, a file); they are not tried again. */
const killedBefore = process.env.EASEWRIGHT_KILLED
  ? JSON.parse(readFileSync(process.env.EASEWRIGHT_KILLED, 'utf8'))
  : {};

function killerOf({ fileName, location: { start, end }, mutatorName, replacement }) {
  const place = [start.line, start.column, end.line, end.column].join(':');
  return killedBefore[[fileName.slice(fileName.indexOf('src/')), place, mutatorName, replacement].join(' ')];
}

class Runner {
  killers = [];
  /**
   * Tests that fail without a mutant, as they ask for more examples than they are given here (that all pass in full is
   * `npm test`'s to say): of them only a property that fails counts, not a count that falls short.
   */
  needsAll = [];
  triedBefore = false;
  soiled = false;

  capabilities() {
    // Nothing needs a new process but what expectCleanAfter finds: static mutants are not tried.
    return { reloadEnvironment: true };
  }

  async dryRun() {
    this.tests = await load();
    stryker.activeMutant = undefined;
    const results = [];
    this.times = {};
    for (const [id, test] of this.tests) {
      stryker.currentTestId = id;
      const result = await run(id, test);
      stryker.currentTestId = undefined;
      if (result.status === TestStatus.Failed) this.needsAll.push(id);
      this.times[id] = result.timeSpentMs;
      results.push({ ...result, status: TestStatus.Success });
    }
    spareLongTests(results, stryker.mutantCoverage?.perTest ?? {});
    writeFileSync(MEASURED, JSON.stringify({ times: this.times, needsAll: this.needsAll }));
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage: stryker.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const killer = killerOf(activeMutant);
    if (killer !== undefined)
      return {
        status: MutantRunStatus.Killed,
        killedBy: [killer],
        failureMessage: 'in an earlier run',
        nrOfTests: 0,
      };
    if (this.soiled) process.exit(1);
    this.tests ??= await load();
    if (this.times === undefined) Object.assign(this, JSON.parse(readFileSync(MEASURED, 'utf8')));
    const results = [];
    for (const id of this.ordered(testFilter ?? Object.keys(this.times))) {
      Object.assign(stryker, {
        activeMutant: activeMutant.id,
        hitCount: results.length === 0 ? 0 : stryker.hitCount,
        hitLimit,
      });
      const result = await this.tried(id);
      stryker.activeMutant = undefined;
      results.push(result);
      if (result.status === TestStatus.Failed) {
        this.killers = [id, ...this.killers.filter((other) => other !== id)].slice(0, LATELY);
        if (REMEMBERING.some((name) => activeMutant.fileName.endsWith(name))) await this.expectCleanAfter(id);
        break;
      }
    }
    this.triedBefore = true;
    return toMutantRunResult(
      determineHitLimitReached(stryker.hitCount, hitLimit) ?? {
        status: DryRunStatus.Complete,
        tests: results,
      },
    );
  }

  async tried(id) {
    const result = await run(id, this.tests.get(id));
    const short = this.needsAll.includes(id) && !result.failureMessage?.includes('Property failed');
    return short ? { ...result, status: TestStatus.Success } : result;
  }

  ordered(ids) {
    const rank = (id) => this.killers.indexOf(id) + 1 || this.killers.length + 1;
    return [...ids].sort((a, b) => rank(a) - rank(b) || this.times[a] - this.times[b]);
  }

  /**
   * Where the test fails without any mutant too, an earlier mutant may have been the cause: this process ends, and
   * Stryker tries the mutant again in another. In that one nothing came before it, so there it is the cause itself.
   */
  async expectCleanAfter(id) {
    const { hitCount } = stryker;
    stryker.hitCount = undefined;
    const { status } = await this.tried(id);
    stryker.hitCount = hitCount;
    if (status === TestStatus.Failed && this.triedBefore) process.exit(1);
    this.soiled = status === TestStatus.Failed;
  }
}

function createRunner() {
  return new Runner();
}
createRunner.inject = [];

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, 'one-process', createRunner)];
