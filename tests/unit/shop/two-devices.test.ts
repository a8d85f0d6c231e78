import { expect, test } from 'vitest';
import { runShop } from './support/shop-run.ts';

// The bench runs a thousand of these: npm run bench -- shop.
test('200 changes on two devices, interleaved at random over a folder that is late, cut off and in conflict: 50 runs', async () => {
  let apart = 0;
  let kept = 0;
  for (let seed = 1; seed <= 50; seed += 1) {
    const result = await runShop(seed, 200);
    expect(result.problems, `seed ${seed}`).toEqual([]);
    apart += result.apart;
    kept += result.keptAfterDeletion;
  }
  // Otherwise the runs would have tried nothing.
  expect(apart).toBeGreaterThan(50);
  expect(kept).toBeGreaterThan(20);
}, 300_000);
