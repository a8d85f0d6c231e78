import { type LimitId, limitRange, limitValue } from '../limits.ts';
import type { Reading } from '../reading/reading.ts';
import { type FindingOf, findingMaker, type Nothing } from './assessment.ts';

export interface TestVoltagePayloads {
  'test-voltage-missing': Nothing;
  'test-voltage-too-low': { setVolts: number; lowestVolts: number };
  /** `fromVolts` to `toVolts`: the range in the table. */
  'test-voltage-unsuited': { setVolts: number; ratedVolts: number; fromVolts: number; toVolts: number };
  'rated-voltage-missing': Nothing;
}

export type TestVoltageFinding = FindingOf<TestVoltagePayloads>;

const finding = findingMaker<TestVoltagePayloads>();

/** Row of the published table (IEEE 43-2000, table 1) for a rated line-to-line voltage in V. */
export function testVoltageRow(ratedVolts: number): LimitId {
  if (ratedVolts < 1000) return 'test-voltage-below-1000';
  if (ratedVolts <= 2500) return 'test-voltage-1000-2500';
  if (ratedVolts <= 5000) return 'test-voltage-2501-5000';
  return ratedVolts <= 12000 ? 'test-voltage-5001-12000' : 'test-voltage-above-12000';
}

/** A few volts of a multimeter can show a bad insulation but never pass one, so a low test voltage bars `go` alone. */
export function judgeTestVoltage(testVoltage: Reading): TestVoltageFinding[] {
  const readings = ['testVoltage'];
  if (testVoltage.kind !== 'value') return [finding('test-voltage-missing', 'undecided', { readings })];
  const lowest = limitValue('test-voltage-lowest');
  if (testVoltage.value >= lowest) return [];
  return [
    finding('test-voltage-too-low', 'undecided', {
      readings,
      limits: ['test-voltage-lowest'],
      setVolts: testVoltage.value,
      lowestVolts: lowest,
    }),
  ];
}

/** Test voltage against the rated voltage by the published table: a caution, not a verdict. */
export function judgeSuitability(testVoltage: Reading, ratedVoltage: Reading): TestVoltageFinding[] {
  if (ratedVoltage.kind !== 'value') {
    return [finding('rated-voltage-missing', 'undecided', { readings: ['ratedVoltage'] })];
  }
  if (testVoltage.kind !== 'value') return [];
  const row = testVoltageRow(ratedVoltage.value);
  const { from, to } = limitRange(row);
  if (testVoltage.value >= from && testVoltage.value <= to) return [];
  const volts = { setVolts: testVoltage.value, ratedVolts: ratedVoltage.value, fromVolts: from, toVolts: to };
  return [
    finding('test-voltage-unsuited', 'caution', { readings: ['testVoltage', 'ratedVoltage'], limits: [row], ...volts }),
  ];
}
