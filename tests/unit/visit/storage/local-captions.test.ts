import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { forgetLocalCaptions, keepLocalCaption, localCaptions } from '../../../../src/visit/storage/local-captions.ts';

const typed = { caption: 'Core W', changedAt: '2026-03-03T06:00:00+01:00' };
let stored: Map<string, string>;

beforeEach(() => {
  stored = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => stored.get(key) ?? null,
    setItem: (key: string, value: string) => stored.set(key, value),
    removeItem: (key: string) => stored.delete(key),
  });
});

afterEach(() => {
  vi.unstubAllGlobals();
});

test('a caption is there at once, for its visit only, until it is removed', () => {
  keepLocalCaption('visit-1', 'photograph-1', typed);
  keepLocalCaption('visit-1', 'photograph-2', { ...typed, caption: '' });
  expect(localCaptions('visit-1')).toEqual({ 'photograph-1': typed, 'photograph-2': { ...typed, caption: '' } });
  expect(localCaptions('visit-2')).toEqual({});
  keepLocalCaption('visit-1', 'photograph-1', undefined);
  expect(Object.keys(localCaptions('visit-1'))).toEqual(['photograph-2']);
  forgetLocalCaptions('visit-1');
  expect(stored.size).toBe(0);
});

test.each([
  'no JSON',
  '[]',
  '{"photograph-1":"Core W"}',
  '{"photograph-1":{"caption":7,"changedAt":"2026-03-03T06:00:00+01:00"}}',
  '{"photograph-1":{"caption":"x","changedAt":"yesterday"}}',
])('what can’t be read counts as nothing: %s', (text) => {
  stored.set('fieldbook-captions-visit-1', text);
  expect(localCaptions('visit-1')).toEqual({});
});

test('a browser that refuses this storage is no error', () => {
  vi.stubGlobal('localStorage', {
    getItem() {
      throw new DOMException('', 'SecurityError');
    },
    setItem() {
      throw new DOMException('', 'QuotaExceededError');
    },
  });
  keepLocalCaption('visit-1', 'photograph-1', typed);
  expect(localCaptions('visit-1')).toEqual({});
});
