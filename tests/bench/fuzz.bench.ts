import { tryOutAll } from '../oracle/try-out.ts';
import type { Bench, Measured } from './measured.ts';

/** Sets a calculator: `npm run bench -- fuzz`, or fewer with FIELDBOOK_SETS. The seed makes them the same each time. */
const sets = Number(process.env.FIELDBOOK_SETS ?? 1_000_000);
const seed = Number(process.env.FIELDBOOK_SEED ?? 1);

/** For a set in which a figure is NaN or endless. */
const inWords = (_: string, value: unknown) =>
  typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;

export const bench: Bench = {
  name: `${sets.toLocaleString('en')} sets a calculator, seed ${seed}, against an oracle that shares no code with the rules`,
  run: async () =>
    tryOutAll(sets, seed).flatMap((tryOne): Measured[] => {
      const { name, count, changes, unexplained, examples } = tryOne();
      for (const example of examples) console.log(`  ${name}: ${JSON.stringify(example, inWords)}`);
      const line = (what: string, value: number): Measured => ({ what: `${name}: ${what}`, value, unit: '' });
      return [
        line('go', count.go),
        line('no-go', count['no-go']),
        line('undecided', count.undecided),
        line('judged once more with a change', changes),
        { ...line('unexplained', unexplained), budget: 0 },
      ];
    }),
};
