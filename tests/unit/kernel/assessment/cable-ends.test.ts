import { expect, it } from 'vitest';
import { idleCoresTested, judgeFilter, judgeIdleCores } from '../../../../src/kernel/assessment/cable-ends.ts';

it.each([
  ['to-pe', 'idle-cores-at-pe', 'pass', true],
  ['none', 'idle-cores-none', 'pass', true],
  ['free', 'idle-cores-free', 'undecided', false],
  ['not-stated', 'idle-cores-not-stated', 'undecided', false],
  [undefined, 'idle-cores-not-stated', 'undecided', false],
] as const)('idle cores %s: %s', (idleCores, code, severity, tested) => {
  expect(judgeIdleCores(idleCores)).toEqual({ code, severity, readings: ['idleCores'], limits: [] });
  expect(idleCoresTested(idleCores)).toBe(tested);
});

it('only a filter that is fitted leaves the readings undecided', () => {
  const fitted = { code: 'filter-fitted', severity: 'undecided', readings: ['filter'], limits: [] };
  expect(judgeFilter('fitted')).toEqual([fitted]);
  for (const filter of ['none', 'not-stated', undefined] as const) expect(judgeFilter(filter)).toEqual([]);
});
