import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { storedEnergy } from '../../../kernel/electrics/discharge-law.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { EnergyFinding, EnergyPayloads } from './input.ts';

const finding = findingMaker<EnergyPayloads>();

interface EnergyClass {
  code: EnergyFinding['code'];
  voltage: LimitId;
  energy: LimitId;
  holds: (volts: number, joules: number) => boolean;
}

const v = limitValue;

/**
 * The published classes, the most dangerous first. Each begins at its energy, except the reflex hazard, which begins at
 * its voltage.
 */
const classes: EnergyClass[] = [
  {
    code: 'energy-arc',
    voltage: 'capacitor-shock-voltage',
    energy: 'capacitor-arc-energy',
    holds: (volts, joules) => volts >= v('capacitor-shock-voltage') && joules >= v('capacitor-arc-energy'),
  },
  {
    code: 'energy-shock',
    voltage: 'capacitor-shock-voltage',
    energy: 'capacitor-shock-energy-later',
    holds: (volts, joules) => volts >= v('capacitor-shock-voltage') && joules >= v('capacitor-shock-energy-later'),
  },
  {
    code: 'energy-reflex',
    voltage: 'capacitor-reflex-voltage',
    energy: 'capacitor-reflex-energy',
    holds: (volts, joules) => volts > v('capacitor-reflex-voltage') && joules >= v('capacitor-reflex-energy'),
  },
  {
    code: 'energy-burn',
    voltage: 'capacitor-shock-voltage',
    energy: 'capacitor-burn-energy',
    holds: (volts, joules) => volts < v('capacitor-shock-voltage') && joules >= v('capacitor-burn-energy'),
  },
];

/** The hazard class of a charged capacitor of `farads` at `volts`: the most dangerous one that it reaches. */
export function judgeEnergy(farads: number, volts: number): EnergyFinding {
  const energy = storedEnergy(farads, volts);
  const readings = ['capacitance', 'startVoltage'];
  const stored = { joules: energy, volts };
  const found = classes.find(({ holds }) => holds(volts, energy));
  if (found === undefined) {
    const limits: LimitId[] = ['capacitor-shock-voltage', 'capacitor-shock-energy-later', 'capacitor-reflex-energy'];
    return finding('energy-below', 'note', { readings, limits, ...stored });
  }
  return finding(found.code, 'caution', { readings, limits: [found.voltage, found.energy], ...stored });
}
