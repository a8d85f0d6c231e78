import { describe, expect, it } from 'vitest';
import { axisNetwork } from '../../src/practice/simulator/axis-network.ts';
import { chargeAfter } from '../../src/practice/simulator/discharge.ts';
import type { Capacitor } from '../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../src/practice/simulator/operating-point.ts';
import { chargesAfter } from '../../src/practice/simulator/transient.ts';
import { hasNgspice } from './ngspice/networks.ts';
import { dischargeCases, dischargeSeconds, restCases } from './simulator-ngspice/cases.ts';
import { chargeCases } from './simulator-ngspice/field-cases.ts';
import { type Recorded, simulateAll } from './simulator-ngspice/record.ts';
import recordedValues from './simulator-ngspice/recorded.json' with { type: 'json' };

/**
 * Source: ngspice, a circuit simulator, on decks that are generated from the same networks. If it is installed the
 * voltages are computed again; otherwise the recorded ones are used.
 */
const recorded: Recorded = recordedValues;

/** Required agreement, as a share of the value. */
const agreement = 0.005;

const off = (ours: number, theirs: number) => Math.abs(ours / theirs - 1);

it('every case has its recorded values, and there are at least twenty faulted networks', () => {
  const names = [...restCases, ...dischargeCases, ...chargeCases].map(({ name }) => name);
  expect(Object.keys(recorded)).toEqual(names);
  expect(names.filter((name) => !name.endsWith('nuisance')).length).toBeGreaterThanOrEqual(20);
});

it.runIf(hasNgspice)('ngspice gives the recorded values again', () => {
  const again = simulateAll();
  for (const [name, values] of Object.entries(recorded)) {
    expect(Object.keys(again[name] ?? {})).toEqual(Object.keys(values));
    // Voltages below a femtovolt are only rounding.
    for (const [key, value] of Object.entries(values)) {
      if (Math.abs(value) > 1e-15)
        expect(off(again[name]?.[key] ?? Number.NaN, value), `${name} ${key}`).toBeLessThan(1e-5);
    }
  }
});

describe('voltages at rest agree with ngspice', () => {
  it.each(restCases)('$name', ({ name, asked }) => {
    expect(Object.keys(recorded[name] ?? {})).toEqual(asked.map((one) => one.name));
    for (const { name: key, elements, red, black } of asked) {
      const volts = operatingPoint(elements);
      expect(off(volts(red) - volts(black), recorded[name]?.[key] ?? Number.NaN), key).toBeLessThan(agreement);
    }
  });
});

/** Below this the bus counts as empty in both, in volts: a tenth of what falsifies a resistance (content/limits). */
const empty = 0.01;

describe('the bus discharges as ngspice says', () => {
  it.each(dischargeCases)('$name', ({ name, axis, state }) => {
    const network = axisNetwork(axis, state);
    const bus = network.find((element): element is Capacitor => element.kind === 'capacitor');
    if (bus === undefined) throw new Error('no bus');
    for (const seconds of dischargeSeconds) {
      const theirs = recorded[name]?.[`after${seconds}`] ?? Number.NaN;
      const ours = chargeAfter(network, bus, seconds);
      if (theirs < empty) expect(ours).toBeLessThan(empty);
      else expect(off(ours, theirs), `after ${seconds} s`).toBeLessThan(agreement);
    }
  });
});

describe('the bus charges from a meter, and two capacitors share it, as ngspice says', () => {
  it.each(chargeCases)('$name', ({ name, elements, seconds, position }) => {
    const capacitors = elements.filter((element): element is Capacitor => element.kind === 'capacitor');
    for (const time of seconds) {
      const ours = chargesAfter(elements, capacitors, time)[position] ?? Number.NaN;
      expect(off(ours, recorded[name]?.[`after${time}`] ?? Number.NaN), `after ${time} s`).toBeLessThan(agreement);
    }
  });
});
