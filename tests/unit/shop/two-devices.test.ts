import { expect, test } from 'vitest';
import { runShop } from './support/shop-run.ts';

// The bench runs a thousand of these: npm run bench -- shop.
test.each([
  ['an hour ahead', 1],
  ['nine hours ahead', 9],
  ['nine hours behind', -9],
])(
  '200 changes on two devices, one with its clock %s, over a folder that is late, cut off and in conflict: 17 runs',
  async (_, hours) => {
    let apart = 0;
    let kept = 0;
    for (let seed = 1; seed <= 17; seed += 1) {
      const result = await runShop(seed, 200, hours);
      expect(result.problems, `seed ${seed}`).toEqual([]);
      apart += result.apart;
      kept += result.keptAfterDeletion;
    }
    // Otherwise the runs would have tried nothing.
    expect(apart).toBeGreaterThan(15);
    expect(kept).toBeGreaterThan(5);
  },
  300_000,
);
