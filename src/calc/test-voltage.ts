import { type Finding, finding } from './assessment.ts';
import { type LimitId, limitRange, limitValue } from './limits.ts';
import type { Reading } from './reading.ts';

export type TestVoltageCode =
  | 'test-voltage-missing'
  | 'test-voltage-too-low'
  | 'test-voltage-unsuited'
  | 'rated-voltage-missing';

/** Row of the published table (IEEE 43-2000, table 1) for a rated line-to-line voltage in V. */
export function testVoltageRow(ratedVolts: number): LimitId {
  if (ratedVolts < 1000) return 'test-voltage-below-1000';
  if (ratedVolts <= 2500) return 'test-voltage-1000-2500';
  if (ratedVolts <= 5000) return 'test-voltage-2501-5000';
  return ratedVolts <= 12000 ? 'test-voltage-5001-12000' : 'test-voltage-above-12000';
}

/** A few volts of a multimeter can show a bad insulation but never pass one, so a low test voltage bars `go` alone. */
export function judgeTestVoltage(testVoltage: Reading): Finding<TestVoltageCode>[] {
  const readings = ['testVoltage'];
  if (testVoltage.kind !== 'value') return [finding('test-voltage-missing', 'undecided', { readings })];
  const lowest = limitValue('test-voltage-lowest');
  if (testVoltage.value >= lowest) return [];
  const numbers = { testVoltage: testVoltage.value, lowest };
  return [finding('test-voltage-too-low', 'undecided', { readings, limits: ['test-voltage-lowest'], numbers })];
}

/** Test voltage against the rated voltage by the published table: a caution, not a verdict. */
export function judgeSuitability(testVoltage: Reading, ratedVoltage: Reading): Finding<TestVoltageCode>[] {
  if (ratedVoltage.kind !== 'value') {
    return [finding('rated-voltage-missing', 'undecided', { readings: ['ratedVoltage'] })];
  }
  if (testVoltage.kind !== 'value') return [];
  const row = testVoltageRow(ratedVoltage.value);
  const { from, to } = limitRange(row);
  if (testVoltage.value >= from && testVoltage.value <= to) return [];
  const numbers = { testVoltage: testVoltage.value, ratedVoltage: ratedVoltage.value, from, to };
  return [
    finding('test-voltage-unsuited', 'caution', { readings: ['testVoltage', 'ratedVoltage'], limits: [row], numbers }),
  ];
}
