/**
 * A bench is a file `<subject>.bench.ts` in this folder that exports `bench`. It measures and never fails: a time
 * depends on the machine and its other work, so benches are not tests.
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
  /** The upper bound, or with `least` the lower one; only printed. */
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
