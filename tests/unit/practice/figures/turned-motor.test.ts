import { expect, test } from 'vitest';
import { leadsOffAt20, middleAxis } from '../../../../src/practice/figures/middle-axis.ts';
import { peakVolts, turnedMotor } from '../../../../src/practice/figures/turned-motor/model.ts';
import { busCapacitors, driveNetwork } from '../../../../src/practice/simulator/drive-network.ts';
import { source } from '../../../../src/practice/simulator/network.ts';
import { chargesAfter } from '../../../../src/practice/simulator/transient.ts';

test('the peak between two leads: √2 times the data sheet’s volts, in proportion to the speed', () => {
  expect(peakVolts(1000, 100)).toBeCloseTo(141.42, 2);
  expect(peakVolts(120, 100)).toBeCloseTo(16.97, 2);
});

// The other solver of the simulator: the capacitor charges from empty in small steps of time.
test.each([120, 500, 1000])('at %d min⁻¹ the bus is where the charging of its capacitor leads', (speed) => {
  const axis = middleAxis();
  const motor = source('drive.U', 'drive.V', peakVolts(speed, 100), 3.2);
  const capacitors = busCapacitors(axis.parameters, leadsOffAt20);
  const [charged = 0] = chargesAfter([...driveNetwork(axis, leadsOffAt20), motor], capacitors, 0.03);
  const { busVolts } = turnedMotor('on', speed, 100);
  expect(charged / busVolts).toBeCloseTo(1, 1);
  expect(charged).toBeLessThan(busVolts);
});

test('the bus stays below the peak by what two diodes drop', () => {
  for (const speed of [60, 300, 1000]) {
    const { peakVolts: peak, busVolts } = turnedMotor('on', speed, 150);
    expect(peak - busVolts).toBeGreaterThan(0.2);
    expect(peak - busVolts).toBeLessThan(2);
  }
});

test('with the leads off the bus stays empty, and the ends of the motor have their voltage', () => {
  expect(turnedMotor('off', 1000, 150)).toMatchObject({ busVolts: 0, joules: 0 });
  expect(turnedMotor('off', 1000, 150).lineVolts).toBeCloseTo(150, 9);
});

test('the energy: half of C·V²', () => {
  const { busVolts, joules } = turnedMotor('on', 1000, 100);
  expect(joules).toBeCloseTo((235e-6 * busVolts ** 2) / 2, 9);
});
