import { afterEach, expect, test, vi } from 'vitest';
import { callHash, callIn, nameInAddress } from '../../../../src/call/app/route.ts';

afterEach(() => vi.unstubAllGlobals());

test('a fragment names a call, and is read back', () => {
  expect(callIn(callHash('0a1b2c'))).toBe('0a1b2c');
  expect(callIn('')).toBeNull();
  expect(callIn('#content')).toBeNull();
});

test('the address is changed once for a call, however many keys are pressed', () => {
  const place = { hash: '' };
  const changes: string[] = [];
  vi.stubGlobal('location', place);
  vi.stubGlobal('history', {
    replaceState: (_state: null, _title: string, hash: string) => {
      changes.push(hash);
      place.hash = hash;
    },
  });
  for (let key = 0; key < 200; key += 1) nameInAddress('0a1b2c');
  nameInAddress('3d4e5f');
  expect(changes).toEqual(['#call=0a1b2c', '#call=3d4e5f']);
});
