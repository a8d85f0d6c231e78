import { runShop } from '../unit/shop/support/shop-run.ts';
import type { Bench } from './measured.ts';

/** Runs, or fewer with FIELDBOOK_SETS; the seed of the first with FIELDBOOK_SEED. */
const runs = Number(process.env.FIELDBOOK_SETS ?? 1000);
const seed = Number(process.env.FIELDBOOK_SEED ?? 1);
const changes = 200;
/** By which the clock of the second tablet is wrong, in turn. */
const hours = [1, 9, -9, 0];

export const bench: Bench = {
  name: `${runs} runs of ${changes} changes on two devices, one with a wrong clock, interleaved at random over a shared folder`,
  run: async () => {
    let [lost, apart, kept] = [0, 0, 0];
    for (let run = 0; run < runs; run += 1) {
      const result = await runShop(seed + run, changes, hours[run % hours.length]);
      if (result.problems.length > 0) console.log(`  seed ${seed + run}: ${result.problems.slice(0, 3).join('; ')}`);
      lost += result.problems.length;
      apart += result.apart;
      kept += result.keptAfterDeletion;
    }
    return [
      { what: 'lost, differing or back again', value: lost, unit: '', budget: 0 },
      { what: 'both versions kept', value: apart, unit: '' },
      { what: 'kept although deleted elsewhere', value: kept, unit: '' },
    ];
  },
};
