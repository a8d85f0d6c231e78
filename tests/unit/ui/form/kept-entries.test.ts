import { afterEach, describe, expect, test, vi } from 'vitest';
import { keepEntries, keptEntries, storedTexts, storeTexts } from '../../../../src/ui/form/kept-entries.ts';

function storage(): Storage & { size: () => number } {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
    size: () => held.size,
  } as unknown as Storage & { size: () => number };
}

/** A new tab of the same browser: `localStorage` is shared, `sessionStorage` is its own. */
function newTab(): void {
  vi.stubGlobal('sessionStorage', storage());
}

afterEach(() => vi.unstubAllGlobals());

describe('what was typed into a calculator is kept on the device', () => {
  const now = new Date('2026-03-02T05:58:00Z');

  test('it comes back in the same tab and in a later one, with its time; cleared, nothing is left', () => {
    const device = storage();
    vi.stubGlobal('localStorage', device);
    newTab();
    keepEntries('bridge', { plusU: '450k' }, now);
    expect(keptEntries('bridge', now)?.typed).toEqual({ plusU: '450k' });
    newTab();
    expect(keptEntries('bridge')?.typed).toEqual({ plusU: '450k' });
    expect(new Date(keptEntries('bridge')?.at ?? '').getTime()).toBe(now.getTime());
    expect(keptEntries('insulation')).toBeUndefined();
    keepEntries('bridge', undefined, now);
    expect(device.size()).toBe(0);
    expect(keptEntries('bridge')).toBeUndefined();
  });

  test('the bus voltage and the leads of an earlier stretch of work are not, nor is the time renewed by looking', () => {
    vi.stubGlobal('localStorage', storage());
    newTab();
    const typed = { busVoltage: '0.2 V', motorLeads: 'off', plusU: '450k' };
    const later = (minutes: number) => new Date(now.getTime() + minutes * 60_000);
    keepEntries('bridge', typed, now);
    expect(keptEntries('bridge', later(5))).toMatchObject({ typed, outdated: false });
    keepEntries('bridge', typed, later(5));
    expect(new Date(keptEntries('bridge', later(6))?.at ?? '').getTime()).toBe(now.getTime());
    for (const moment of [later(24 * 60), later(120), later(-1)])
      expect(keptEntries('bridge', moment)).toMatchObject({ typed: { plusU: '450k' }, outdated: true });
    expect(keptEntries('bridge', later(120))?.typed).not.toHaveProperty('busVoltage');
  });

  test('a tab gets back its own entries, not those of another tab', () => {
    vi.stubGlobal('localStorage', storage());
    newTab();
    keepEntries('bridge', { plusU: '450k' }, now);
    const first = sessionStorage;
    newTab();
    keepEntries('bridge', { plusU: '0.3' }, now);
    vi.stubGlobal('sessionStorage', first);
    expect(keptEntries('bridge')?.typed).toEqual({ plusU: '450k' });
  });

  test('a browser that refuses or is full does no harm', () => {
    const refuse = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    for (const where of ['sessionStorage', 'localStorage'])
      vi.stubGlobal(where, { getItem: refuse, setItem: refuse, removeItem: refuse });
    expect(() => keepEntries('bridge', { plusU: '450k' }, now)).not.toThrow();
    expect(keptEntries('bridge')).toBeUndefined();
  });

  test.each(['{', 'null', '7', '[]', '{"plusU":7,"plusV":{"a":1}}'])('damaged storage is no entry: %s', (text) => {
    vi.stubGlobal('localStorage', { getItem: () => text });
    expect(storedTexts('bridge', 'localStorage')).toEqual({});
  });

  test('each storage can be used by itself', () => {
    vi.stubGlobal('localStorage', storage());
    storeTexts('practice', { code: 'A' }, 'localStorage');
    expect(storedTexts('practice', 'localStorage')).toEqual({ code: 'A' });
  });

  test('after a break, what is off and what is supported is asked again in every calculator', () => {
    vi.stubGlobal('localStorage', storage());
    newTab();
    const states = {
      motorLeads: 'off',
      supplyLeads: 'off',
      others: 'off',
      plugAndLeads: 'off',
      axis: 'held',
      end: 'off',
    };
    keepEntries('any', { ...states, ohms: '0.1' }, now);
    const nextDay = new Date('2026-03-03T05:58:00Z');
    expect(keptEntries('any', nextDay)).toMatchObject({ typed: { ohms: '0.1' }, outdated: true });
    expect(Object.keys(keptEntries('any', nextDay)?.typed ?? {})).toEqual(['ohms']);
  });
});
