import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { oneAtATime } from '../../../src/ui/one-at-a-time.ts';

// Common practice, no source.

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('a double tap begins one visit, also if the second tap comes after the first was stored', async () => {
  const begin = oneAtATime();
  const stored: string[] = [];
  const save = async () => {
    await new Promise((done) => setTimeout(done, 300));
    stored.push('visit');
  };
  begin(save);
  begin(save);
  await vi.advanceTimersByTimeAsync(400);
  begin(save);
  await vi.advanceTimersByTimeAsync(400);
  expect(stored).toHaveLength(1);
});

test('a person who comes back to the page can begin another one', async () => {
  const begin = oneAtATime();
  const save = vi.fn(async () => undefined);
  begin(save);
  await vi.advanceTimersByTimeAsync(2000);
  begin(save);
  expect(save).toHaveBeenCalledTimes(2);
});
