import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { missing, volts } from '../../../../src/kernel/reading/reading.ts';
import type { Form } from '../../../../src/visit/steps/fields.ts';
import {
  busPoints,
  groupReading,
  highestOf,
  outputPoints,
  supplyPoints,
} from '../../../../src/visit/steps/lockout/points.ts';
import { busAgain, firstLockout } from '../../../../src/visit/steps/lockout/question.ts';
import { busProblem, lockoutProblem } from '../../../../src/visit/steps/lockout/rule.ts';
import { runs } from '../../../support/runs.ts';

// Project judgement: each point is measured, the highest counts, and a point that is not measured is not proved.

const ticks: Form = { lockedOut: 'yes', waited: 'yes', meterProved: 'yes', peProved: 'yes' };
const groups = [supplyPoints, outputPoints, busPoints];
const points = groups.flatMap((group) => group.points.map(({ id }) => id));
const every: Form = { ...ticks, ...Object.fromEntries(points.map((id) => [id, '0.1 V'])) };

const problemOf = (form: Form) => {
  const answer = firstLockout.read(form);
  return answer === undefined ? 'incomplete' : (lockoutProblem(answer) ?? 'dead');
};

test('there is a row for each point: supply and U V W, AC and DC, and three of the bus', () => {
  expect(groups.map((group) => group.points.map(({ label }) => label))).toEqual([
    ['AC, each to each', 'AC, each to PE', 'DC, each to each', 'DC, each to PE'],
    ['AC, each to each', 'AC, each to PE', 'DC, each to each', 'DC, each to PE'],
    ['DC+ to DC−', 'DC+ to PE', 'DC− to PE'],
  ]);
});

test('the statement on empty rows asks nothing once every row is typed, and says so while one is empty', () => {
  for (const { moot, points: rows, rest } of groups) {
    expect(moot?.(every)).toBe(rest.id);
    expect(moot?.({ ...every, [rest.id]: 'yes' })).toBeUndefined();
    for (const { id } of rows) expect(moot?.({ ...every, [id]: ' ' })).toBeUndefined();
  }
});

test('every point low: the drive is proved dead', () => {
  expect(problemOf(every)).toBe('dead');
});

describe.each(points)('%s', (id) => {
  const [group] = groups.filter((one) => one.points.some((point) => point.id === id));
  const rest = group?.rest.id ?? '';

  test('left empty, it is not proved', () => {
    expect(problemOf({ ...every, [id]: '' })).toMatch(/-not-measured$/);
  });

  test('left empty, with the statement that it read no higher than the others', () => {
    expect(problemOf({ ...every, [id]: '', [rest]: 'yes' })).toBe('dead');
  });

  test('a dash there is no reading: it is not proved, whatever is stated', () => {
    expect(problemOf({ ...every, [id]: '-' })).toMatch(/-not-measured$/);
    expect(problemOf({ ...every, [id]: '---', [rest]: 'yes' })).toMatch(/-not-measured$/);
  });

  test.each(['50 V', '320 V', 'OL', '>20 V', '<600 V'])(
    '%s there is live, whatever else is typed or stated',
    (text) => {
      expect(problemOf({ ...every, [id]: text, [rest]: 'yes' })).toMatch(/-live$|-not-discharged$/);
      expect(problemOf({ ...ticks, [id]: text, ...lowElsewhere(id) })).toMatch(/-live$|-not-discharged$/);
    },
  );
});

/** The other groups complete, the own one with this point alone. */
function lowElsewhere(id: string): Form {
  const own = groups.find((one) => one.points.some((point) => point.id === id));
  const others = groups.filter((one) => one !== own).flatMap((one) => one.points);
  return Object.fromEntries(others.map((point) => [point.id, '0.1 V']));
}

test('the statement alone, without a reading, proves nothing', () => {
  expect(problemOf({ ...ticks, supplyRest: 'yes', outputRest: 'yes', busRest: 'yes' })).toBe('supply-not-measured');
});

test('the highest reading counts, with its text', () => {
  expect(highestOf({ busBetween: '0.2 V', busPlusPe: '12 V', busMinusPe: '3 V' }, busPoints)).toMatchObject({
    id: 'busPlusPe',
    text: '12 V',
  });
});

test('an entry that can’t be read gives no answer', () => {
  expect(problemOf({ ...every, busPlusPe: 'dead' })).toBe('incomplete');
  expect(highestOf({ busPlusPe: 'dead' }, busPoints)).toBeUndefined();
});

test('a record of the older form, one reading for all points of a group, means what it said', () => {
  const older = { supplyVoltage: '0.1 V', outputVoltage: '0.05 V', busVoltage: '0.03 V' };
  expect(problemOf({ ...ticks, ...older })).toBe('dead');
  expect(problemOf({ ...ticks, ...older, outputVoltage: '' })).toBe('output-not-measured');
  expect(problemOf({ ...ticks, ...older, outputVoltage: '-' })).toBe('output-not-measured');
  expect(problemOf({ ...every, busMinusPe: '', busVoltage: '-' })).toBe('bus-not-measured');
  expect(problemOf({ ...ticks, ...older, busPlusPe: '60 V' })).toBe('bus-not-discharged');
  expect(groupReading(older, busPoints)).toEqual(volts(0.03, 0.01));
});

test('the bus once more: three points', () => {
  const measured = { meterProved: 'yes', busBetween: '0.1 V', busPlusPe: '0.2 V', busMinusPe: '0.1 V' };
  const problem = (form: Form) => {
    const answer = busAgain.read(form);
    return answer && (busProblem(answer) ?? 'dead');
  };
  expect(problem(measured)).toBe('dead');
  expect(problem({ ...measured, busMinusPe: '' })).toBe('bus-not-measured');
  expect(problem({ ...measured, busMinusPe: '', busRest: 'yes' })).toBe('dead');
  expect(problem({ ...measured, busMinusPe: '400 V' })).toBe('bus-not-discharged');
});

test('no statement, point or older reading less, and no reading higher, proves more', () => {
  const ids = [...points, ...groups.flatMap(({ rest, older }) => [rest.id, older.id]), ...Object.keys(ticks)];
  const text = fc.constantFrom('', '-', '0.1 V', '12 V', '49 V', '<1', '60 V', 'OL', 'yes');
  fc.assert(
    fc.property(fc.tuple(...ids.map(() => text)), fc.constantFrom(...ids), fc.boolean(), (texts, id, higher) => {
      const form = Object.fromEntries(ids.map((one, index) => [one, texts[index] ?? '']));
      const isReading = id.endsWith('Voltage') || points.includes(id);
      const worse = { ...form, [id]: isReading && higher ? '500 V' : '' };
      // Without its dash a point counts as empty, of which the statement speaks.
      fc.pre(form[id] !== '-' || worse[id] !== '');
      if (problemOf(form) !== 'dead') expect(problemOf(worse)).not.toBe('dead');
    }),
    { numRuns: runs },
  );
});

test('what is dangerous is said even while other points are missing', () => {
  expect(groupReading({ supplyEachAc: '400 V' }, supplyPoints)).toEqual(volts(400, 1));
  expect(groupReading({ supplyEachAc: '0.4 V' }, supplyPoints)).toEqual(missing);
});
