import { afterEach, describe, expect, test, vi } from 'vitest';
import { caseInAddress } from '../../../src/islands/form/address.ts';
import { keepTyped, keptTyped } from '../../../src/islands/form/keep.ts';

function useStorage(storage: Partial<Storage>) {
  vi.stubGlobal('sessionStorage', storage);
}

afterEach(() => vi.unstubAllGlobals());

describe('what was typed is kept for the tab', () => {
  test('and comes back; forgetting leaves nothing', () => {
    const held = new Map<string, string>();
    useStorage({
      getItem: (key) => held.get(key) ?? null,
      setItem: (key, value) => void held.set(key, value),
      removeItem: (key) => void held.delete(key),
    });
    keepTyped('bridge', { plusU: '450k' });
    expect(keptTyped('bridge')).toEqual({ plusU: '450k' });
    expect(keptTyped('insulation')).toEqual({});
    keepTyped('bridge', undefined);
    expect(held.size).toBe(0);
  });

  test('a browser that refuses or is full does no harm', () => {
    const refuse = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    useStorage({ getItem: refuse, setItem: refuse, removeItem: refuse });
    expect(() => keepTyped('bridge', { plusU: '450k' })).not.toThrow();
    expect(keptTyped('bridge')).toEqual({});
  });

  test.each(['{', 'null', '7', '[]', '{"plusU":7,"plusV":{"a":1}}'])('damaged storage is no entry: %s', (text) => {
    useStorage({ getItem: () => text });
    expect(keptTyped('bridge')).toEqual({});
  });
});

test('the address names a case, or none', () => {
  expect(caseInAddress('#case=marrow-bay-lift')).toBe('marrow-bay-lift');
  expect(caseInAddress('#how-it-judges')).toBeNull();
  expect(caseInAddress('')).toBeNull();
});
