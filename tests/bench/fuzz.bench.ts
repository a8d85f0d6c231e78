import { tryOutAll } from '../oracle/try-out.ts';
import type { Bench, Measured } from './measured.ts';

/** Sets for each calculator: `npm run bench -- fuzz`, or fewer with FIELDBOOK_SETS. The seed makes runs repeatable. */
const sets = Number(process.env.FIELDBOOK_SETS ?? 1_000_000);
const seed = Number(process.env.FIELDBOOK_SEED ?? 1);

/** Prints NaN and infinite figures of a set. */
const inWords = (_: string, value: unknown) =>
  typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;

export const bench: Bench = {
  name: `${sets.toLocaleString('en')} sets for each calculator, seed ${seed}, against an oracle that shares no code with the rules`,
  run: async () =>
    tryOutAll(sets, seed).flatMap((tryOne): Measured[] => {
      const { name, count, changes, unexplained, examples } = tryOne();
      for (const example of examples) console.log(`  ${name}: ${JSON.stringify(example, inWords)}`);
      const line = (what: string, value: number): Measured => ({ what: `${name}: ${what}`, value, unit: '' });
      return [
        line('go', count.go),
        line('no-go', count['no-go']),
        line('undecided', count.undecided),
        line('judged again with a change', changes),
        { ...line('unexplained', unexplained), budget: 0 },
      ];
    }),
};
