import { globSync } from 'node:fs';
import type { InstrumenterContext } from '@stryker-mutator/api/core';
import { declareFactoryPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  type CompleteDryRunResult,
  type DryRunResult,
  DryRunStatus,
  determineHitLimitReached,
  type MutantRunOptions,
  type MutantRunResult,
  MutantRunStatus,
  type TestResult,
  type TestRunner,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import fc from 'fast-check';
import { installLoading, type LoadedTest, loadTests } from './loading.ts';

/**
 * Runs the tests of one target in its own process, where rules and tests stay loaded: a change then takes milliseconds
 * instead of the second in which Vitest starts a worker. Only for tests that need nothing but `describe`, `it` and
 * `expect`.
 */
class InProcessRunner implements TestRunner {
  readonly #copy = process.cwd();
  readonly #files = globSync(JSON.parse(process.env.FIELDBOOK_MUTATION_TESTS ?? '[]')).sort();
  readonly #instrumented: InstrumenterContext;
  readonly #milliseconds = new Map<string, number>();
  #tests: LoadedTest[] = [];

  constructor() {
    const shared = globalThis as { __stryker__?: InstrumenterContext };
    shared.__stryker__ ??= {};
    this.#instrumented = shared.__stryker__;
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init(): Promise<void> {
    // The same cases for every change, or its end would be a matter of luck; the first bad one is enough.
    fc.configureGlobal({ seed: 20261128, endOnFailure: true });
    installLoading(this.#copy);
    this.#tests = await loadTests(this.#copy, this.#files);
  }

  async dryRun(): Promise<DryRunResult> {
    const result = await this.#run(this.#tests, false);
    for (const { id, timeSpentMs } of result.tests) this.#milliseconds.set(id, timeSpentMs);
    const { mutantCoverage } = this.#instrumented;
    return { ...result, ...(mutantCoverage && { mutantCoverage }) };
  }

  async mutantRun(given: MutantRunOptions): Promise<MutantRunResult> {
    const instrumented = this.#instrumented;
    Object.assign(instrumented, { hitCount: 0, hitLimit: given.hitLimit, activeMutant: undefined });
    const isStatic = given.mutantActivation === 'static';
    if (isStatic) instrumented.activeMutant = given.activeMutant.id;
    // Stryker asks for no reload in a new process, but `init` has loaded everything without the change.
    if (isStatic || given.reloadEnvironment) {
      const errorMessage = await failureOf(async () => {
        this.#tests = await loadTests(this.#copy, this.#files);
      });
      if (errorMessage !== undefined) return { status: MutantRunStatus.Error, errorMessage };
    }
    instrumented.activeMutant = given.activeMutant.id;
    const wanted = given.testFilter && new Set(given.testFilter);
    const time = ({ id }: LoadedTest) => this.#milliseconds.get(id) ?? 0;
    const tests = this.#tests.filter(({ id }) => wanted === undefined || wanted.has(id));
    const result = await this.#run(
      tests.sort((a, b) => time(a) - time(b)),
      true,
    );
    return toMutantRunResult(determineHitLimitReached(instrumented.hitCount, given.hitLimit) ?? result);
  }

  async #run(tests: readonly LoadedTest[], untilFailure: boolean): Promise<CompleteDryRunResult> {
    const results: TestResult[] = [];
    for (const { id, body } of tests) {
      this.#instrumented.currentTestId = id;
      const begun = performance.now();
      const failureMessage = await failureOf(body);
      const common = { id, name: id, timeSpentMs: performance.now() - begun };
      if (failureMessage === undefined) results.push({ ...common, status: TestStatus.Success });
      else {
        results.push({ ...common, status: TestStatus.Failed, failureMessage });
        if (untilFailure) break;
      }
    }
    Object.assign(this.#instrumented, { currentTestId: undefined });
    return { status: DryRunStatus.Complete, tests: results };
  }
}

async function failureOf(body: () => unknown): Promise<string | undefined> {
  try {
    await body();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, 'in-process', () => new InProcessRunner())];
