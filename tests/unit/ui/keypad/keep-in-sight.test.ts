import { expect, test } from 'vitest';
import { scrollToShow } from '../../../../src/ui/keypad/keep-in-sight.ts';

const free = { top: 0, bottom: 400 };
const band = (top: number, height = 100) => ({ top, bottom: top + height });

test.each([
  ['all in sight', band(150), [band(50), band(250)], 0],
  ['the neighbour below is hidden', band(250), [band(150), band(350)], 58],
  ['the neighbour above is hidden', band(20), [band(-80), band(120)], -88],
  ['no room for all: the field in the middle', band(300, 200), [band(100, 200), band(500, 200)], 200],
  ['a field without neighbours', band(380), [], 88],
  ['far below', band(3000), [], 2708],
])('%s', (_, field, neighbours, by) => {
  expect(scrollToShow(field, neighbours, free)).toBe(by);
});

test('a header that stays at the top is not free', () => {
  expect(scrollToShow(band(30), [], { top: 60, bottom: 400 })).toBe(-38);
});
