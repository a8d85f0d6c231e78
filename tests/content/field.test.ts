import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import minuteData from '../../content/field/minutes.json' with { type: 'json' };
import { fieldSchema } from '../../src/library/tables/field-schema.ts';
import { allFaultIds } from '../../src/practice/simulator/faulted-axis.ts';
import { fieldFaults } from '../../src/practice/simulator/field-faults.ts';
import { fieldCauses } from '../../src/practice/world/field-mix.ts';
import { stepIds } from '../../src/visit/steps/ids.ts';
import { filesOf } from './support/files.ts';

const files = filesOf('content/field/*.json');

describe.each(files.map(({ path }) => path))('%s', (path) => {
  test('fits its schema', () => {
    expect(fieldSchema.safeParse(JSON.parse(readFileSync(path, 'utf8'))).error?.issues ?? []).toEqual([]);
  });
});

test('there is a file of causes, one of prevalences and one of minutes', () => {
  expect(files.map(({ path }) => path).sort()).toEqual([
    'content/field/causes.json',
    'content/field/minutes.json',
    'content/field/prevalences.json',
  ]);
});

test('minutes are given for steps that a visit has', () => {
  expect(Object.keys(minuteData.minutes.steps).filter((id) => !(stepIds as readonly string[]).includes(id))).toEqual(
    [],
  );
});

test('each cause names faults that the simulator knows, and none twice', () => {
  const named = fieldCauses.flatMap(({ faults }) => faults);
  expect(named.filter((id) => !allFaultIds.includes(id))).toEqual([]);
  expect(new Set(named).size).toBe(named.length);
});

test('every fault and combination of the simulator has a cause with a weight', () => {
  const named = new Set(fieldCauses.flatMap(({ faults }) => faults));
  expect(allFaultIds.filter((id) => !named.has(id))).toEqual([]);
  expect(fieldFaults.length).toBeGreaterThan(40);
});

test('the weights are per cent of visits: together about a hundred', () => {
  const sum = fieldCauses.reduce((total, { weight }) => total + weight, 0);
  expect(Math.abs(sum - 100)).toBeLessThan(3);
});
