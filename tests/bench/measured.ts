/**
 * A bench is a file `<subject>.bench.ts` in this folder that exports `bench`. It measures and never judges: benches are
 * no tests, since a time depends on the machine and on what else it does.
 */
export interface Bench {
  /** What is measured, in a few words. */
  name: string;
  run: () => Promise<Measured[]>;
}

/** One line of the report. */
export interface Measured {
  what: string;
  value: number;
  unit: 's' | 'ms' | 'B' | '%' | '×' | '';
  /** What it should stay below, or reach with `least`; only printed. */
  budget?: number;
  least?: number;
}

/**
 * The shortest of several runs, in milliseconds: other work on the machine only ever adds to a time. The first run, which
 * warms up, is not counted.
 */
export async function milliseconds(work: () => unknown, runs = 5): Promise<number> {
  await work();
  let shortest = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const begin = performance.now();
    await work();
    shortest = Math.min(shortest, performance.now() - begin);
  }
  return shortest;
}
