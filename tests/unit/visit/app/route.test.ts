import { expect, test } from 'vitest';
import { shownTime } from '../../../../src/kernel/time/iso-time.ts';
import { instrumentRows, notedInstruments } from '../../../../src/visit/app/details-fields.ts';
import { listHash, reportHash, routeOf, visitHash } from '../../../../src/visit/app/route.ts';
import { visitTitle } from '../../../../src/visit/app/visit-summary.ts';

test.each([
  ['', { view: 'list' }],
  ['#', { view: 'list' }],
  [listHash, { view: 'list' }],
  [visitHash('a-visit-1'), { view: 'visit', id: 'a-visit-1' }],
  [reportHash('a-visit-1'), { view: 'report', id: 'a-visit-1' }],
  ['#share=1.abc', { view: 'shared', share: '1.abc' }],
  // A link that holds both is shown before anything is opened.
  ['#visit=a-visit-1&share=1.abc', { view: 'shared', share: '1.abc' }],
  ['#share=', { view: 'shared', share: '' }],
  ['#visit=', undefined],
  ['#content', undefined],
])('the fragment %j asks for %j', (hash, route) => {
  expect(routeOf(hash)).toEqual(route);
});

test('the name of a visit is machine and axis, if they are known', () => {
  expect(visitTitle({ machine: 'Line 2 ', axis: 'Lift' })).toBe('Line 2, Lift');
  expect(visitTitle({ machine: '', axis: 'Lift' })).toBe('Lift');
  expect(visitTitle({ machine: ' ', axis: '' })).toBe('Visit without a name');
});

test('a time is shown in the local time of the place where it was recorded', () => {
  expect(shownTime('2026-03-03T05:58:00+01:00')).toBe('2026-03-03, 05:58');
});

test('the usual instruments are asked for; only rows with an entry are kept', () => {
  const noted = { what: 'Multimeter', identification: 'M-07', accuracy: '' };
  const other = { what: 'Clamp meter', identification: '', accuracy: '' };
  const rows = instrumentRows([other, noted]);
  expect(rows.map(({ what }) => what)).toEqual(['Multimeter', 'Insulation tester', 'Milliohm meter', 'Clamp meter']);
  expect(notedInstruments(rows)).toEqual([noted, other]);
  expect(notedInstruments([{ what: ' ', identification: '', accuracy: ' ' }])).toEqual([]);
});
