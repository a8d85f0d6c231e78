import { expect, it } from 'vitest';
import { href } from '../../../src/ui/href.ts';

it.each([
  ['/', '/', '/'],
  ['/tables/#after-trip-point', '/', '/tables/#after-trip-point'],
  ['/', '/fieldbook/', '/fieldbook/'],
  ['/tables/', '/fieldbook', '/fieldbook/tables/'],
])('%s below %s is %s', (path, base, address) => {
  expect(href(path, base)).toBe(address);
});
