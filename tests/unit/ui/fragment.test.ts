import { expect, test } from 'vitest';
import { fragment } from '../../../src/ui/fragment.ts';

test.each([
  ['', ''],
  ['#', ''],
  ['#when-hot', 'when-hot'],
  ['#7K3%2DA', '7K3-A'],
  ['#50%', '50%'],
  ['#%E0%A4', '%E0%A4'],
])('%s names %j', (hash, text) => {
  expect(fragment(hash)).toBe(text);
});
