import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { Stryker } from '@stryker-mutator/core';
import type { Change } from './equivalents.ts';
import type { Target } from './targets.ts';

/** A change that was tried, the number of its line, and whether a test failed with it. */
export interface Tried extends Change {
  at: number;
  noticed: boolean;
  /** It ran out of time: on a loaded machine one that no test notices may. */
  ranOut: boolean;
}

/** Cases of a property that stands among the tables, the same ones each time; fewer are too few for its shares. */
const runs = '300';

/** Tries every change of the target's files whose names end in one of `endings`, or of all if none is given. */
export async function runTarget({ mutate, tests }: Target, endings: readonly string[]): Promise<Tried[]> {
  process.env.FIELDBOOK_MUTATION_TESTS = JSON.stringify(tests);
  process.env.FIELDBOOK_RUNS = runs;
  const chosen = mutate.filter((file) => endings.length === 0 || endings.some((end) => file.endsWith(end)));
  if (chosen.length === 0) throw new Error(`no file of this target ends in ${endings.join(' or ')}`);
  const stryker = new Stryker({
    plugins: [join(import.meta.dirname, 'runner/in-process-runner.ts')],
    testRunner: 'in-process',
    mutate: chosen,
    coverageAnalysis: 'perTest',
    ignorePatterns: ['dist', 'tests/out', '.astro', 'content/articles', 'src/pages', 'src/site'],
    tempDirName: 'tests/out/mutate',
    reporters: ['progress-append-only'],
    concurrency: 1,
    timeoutMS: 4000,
    checkers: [],
    allowConsoleColors: false,
  });
  const results = await stryker.runMutationTest();
  return results
    .filter((one) => one.status !== 'Ignored')
    .map(({ fileName, location, replacement, status }) => {
      const lines = readFileSync(fileName, 'utf8').split('\n');
      return {
        file: relative(process.cwd(), fileName),
        at: location.start.line,
        line: (lines[location.start.line - 1] ?? '').trim(),
        from: inOneLine(between(lines, location)),
        to: inOneLine(replacement),
        // A test file that can't be loaded with the change fails as well.
        ranOut: status === 'Timeout',
        noticed: status === 'Killed' || status === 'Timeout' || status === 'RuntimeError',
      };
    });
}

/** Both counted from 1. */
interface Place {
  line: number;
  column: number;
}

function between(lines: readonly string[], { start, end }: { start: Place; end: Place }): string {
  const whole = lines.slice(start.line - 1, end.line);
  const last = whole.length - 1;
  whole[last] = (whole[last] ?? '').slice(0, end.column - 1);
  whole[0] = (whole[0] ?? '').slice(start.column - 1);
  return whole.join('\n');
}

const inOneLine = (text: string) => text.replaceAll(/\s+/g, ' ').slice(0, 100);
