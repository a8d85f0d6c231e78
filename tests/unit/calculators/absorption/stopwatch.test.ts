import { describe, expect, test } from 'vitest';
import { absorptionTimes } from '../../../../src/calculators/absorption/rule/input.ts';
import { markName, stopwatchAt } from '../../../../src/calculators/absorption/stopwatch.ts';
import { clockFace } from '../../../../src/kernel/reading/format-reading.ts';

const start = 1_700_000_000_000;
const at = (seconds: number) => stopwatchAt(start, start + seconds * 1000, absorptionTimes, 5);

describe('the stopwatch, by a clock of its own', () => {
  test.each<[number, string, number | undefined]>([
    [0, 'wait', 15],
    [9.9, 'wait', 15],
    [10, 'soon', 15],
    [14.9, 'soon', 15],
    [15, 'now', 15],
    [19.9, 'now', 15],
    [20, 'wait', 30],
    [25, 'soon', 30],
    [60, 'now', 60],
    [600, 'now', 600],
    [604.9, 'now', 600],
    [605, 'over', undefined],
    [86_400, 'over', undefined],
  ])('after %d s: %s', (seconds, phase, mark) => {
    expect(at(seconds)).toMatchObject({ phase, ...(mark !== undefined && { mark }) });
    expect(at(seconds).elapsed).toBeCloseTo(seconds, 6);
  });

  test('a tab that slept from the start to the fourth minute is right when it wakes', () => {
    expect(at(2)).toMatchObject({ phase: 'wait', mark: 15 });
    expect(at(237)).toMatchObject({ phase: 'soon', mark: 240 });
  });

  test('a clock that was set back shows zero, not less', () => {
    expect(at(-30)).toEqual({ elapsed: 0, phase: 'wait', mark: 15 });
  });

  test('its face and its names', () => {
    expect([0, 7.9, 59.99, 60, 605].map(clockFace)).toEqual(['0:00', '0:07', '0:59', '1:00', '10:05']);
    expect([15, 30, 60, 600].map(markName)).toEqual(['15 s', '30 s', '1 min', '10 min']);
  });
});
