import { describe, expect, it } from 'vitest';
import { assessBridge, type BridgeInput } from '../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessIsolation } from '../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput, StageReadings } from '../../src/calculators/isolation/rule/input.ts';
import { parallel } from '../../src/kernel/electrics/parallel-law.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import { celsius, ohms, overOhms, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { hasNgspice, networks, simulate } from './ngspice/networks.ts';
import recordedValues from './ngspice/recorded.json' with { type: 'json' };

/**
 * Source: ngspice, a circuit simulator, on the netlists in tests/reference/ngspice. If it is installed the values are
 * computed again; otherwise the recorded ones are used.
 */
const recorded: Record<string, Record<string, number>> = recordedValues;

it('every netlist has its recorded values', () => {
  expect(Object.keys(recorded).sort()).toEqual(networks);
  expect(networks.length).toBeGreaterThanOrEqual(8);
});

describe.runIf(hasNgspice)('the recorded values come out again', () => {
  it.each(networks)('%s', (network) => {
    const again = simulate(network);
    expect(Object.keys(again)).toEqual(Object.keys(recorded[network] ?? {}));
    for (const [name, value] of Object.entries(recorded[network] ?? {})) {
      expect(Math.abs((again[name] ?? Number.NaN) / value - 1)).toBeLessThan(1e-6);
    }
  });
});

const value = (network: string, name: string): number => recorded[network]?.[name.toLowerCase()] ?? Number.NaN;

/** What a display of four digits shows up to the limit of the instrument; over-range beyond. */
function shown(resistance: number, upperLimit: number): Reading {
  if (resistance > upperLimit) return overOhms(upperLimit);
  const place = Math.floor(Math.log10(resistance)) - 3;
  return ohms(Number(`${Math.round(resistance / 10 ** place)}e${place}`), Number(`1e${place}`));
}

function row(network: string, name: string, upperLimit: number): Phases<Reading> {
  const one = (phase: string) => shown(value(network, `${name}${phase}`), upperLimit);
  return { U: one('U'), V: one('V'), W: one('W') };
}

describe('a bridge read by an ohmmeter', () => {
  const read = (network: string): BridgeInput => ({
    busVoltage: volts(0.02, 0.01),
    motorLeads: 'off',
    dcPlus: row(network, 'plus', 72e6),
    dcMinus: row(network, 'minus', 72e6),
    // A network at rest reads the same again.
    plusAgain: row(network, 'plus', 72e6).U,
    minusAgain: row(network, 'minus', 72e6).U,
  });

  it.each(['bridge-sound', 'bridge-open-upper'])('%s is go, without a caution', (network) => {
    const { verdict, findings } = assessBridge(read(network));
    expect(verdict).toBe('go');
    expect(findings.filter(({ severity }) => severity === 'caution')).toEqual([]);
  });

  it('bridge-leaky-lower-u is no-go, and the leaky switch is named alone', () => {
    const { verdict, findings } = assessBridge(read('bridge-leaky-lower-u'));
    expect(verdict).toBe('no-go');
    expect(suspectPositions(findings)).toEqual(['minusU']);
  });

  it('bridge-leaky-upper-w reads a little over half of its sisters: undecided, and the leaky switch is the odd one', () => {
    const { verdict, findings } = assessBridge(read('bridge-leaky-upper-w'));
    expect(verdict).toBe('undecided');
    expect(findings.flatMap((one) => (one.code === 'rail-uneven' ? one.odd : []))).toEqual(['plusW']);
  });

  it.each([
    ['bridge-short-lower-v', 'minusV'],
    ['bridge-short-upper-u', 'plusU'],
  ])('%s is no-go, and the short is named: %s', (network, position) => {
    const { verdict, findings } = assessBridge(read(network));
    expect(verdict).toBe('no-go');
    expect(findings.flatMap((one) => (one.code === 'rail-short' ? one.suspects : []))).toEqual([position]);
  });
});

describe('cable and motor read by an insulation tester', () => {
  const tester = 14e9;
  const pe = ohms(0.2, 0.1);

  function read(network: string, taken: ('cable' | 'bonded' | 'motor')[]): IsolationInput {
    const stage = (name: string, core: Reading): StageReadings => ({ ...row(network, name, tester), PE: core });
    return {
      joined: stage('joined', pe),
      ...(taken.includes('cable') ? { cable: stage('cable', shown(value(network, 'cablePE'), tester)) } : {}),
      ...(taken.includes('bonded') ? { bonded: row(network, 'bonded', tester) } : {}),
      ...(taken.includes('motor') ? { motor: stage('motor', pe) } : {}),
      idleCores: 'none',
      filter: 'none',
      cableMetres: { kind: 'value', value: 20, unit: 'm' },
      cableMaterial: 'pvc',
      cableTemperature: celsius(20, 1),
      moreOfCable: {
        again: lowest(network, taken.includes('bonded') ? ['cable', 'bonded'] : ['cable']),
        dried: 'yes',
        sister: lowest('isolation-sound', ['cable', 'bonded']),
      },
      moreOfMotor: { again: lowest(network, ['motor']), dried: 'yes' },
      cableEndsChecked: true,
      suspectedAnyway: false,
      testVoltage: volts(500, 1),
      windingTemperature: celsius(20, 1),
      correction: 'halving',
    };
  }

  /** The lowest reading of these rows, taken once more. */
  function lowest(network: string, rows: string[]): Reading {
    const all = rows.flatMap((name) => ['U', 'V', 'W'].map((phase) => value(network, `${name}${phase}`)));
    return shown(Math.min(...all), tester);
  }

  const faults: [string, { verdict: string; cable: string; motor: string; step: string }][] = [
    ['isolation-sound', { verdict: 'go', cable: 'proven-good', motor: 'proven-good', step: 'neither-suspect' }],
    ['isolation-motor-bad', { verdict: 'no-go', cable: 'proven-good', motor: 'proven-bad', step: 'replace-motor' }],
    ['isolation-cable-bad', { verdict: 'no-go', cable: 'proven-bad', motor: 'proven-good', step: 'replace-cable' }],
    [
      'isolation-cable-blind-spot',
      { verdict: 'no-go', cable: 'proven-bad', motor: 'proven-good', step: 'replace-cable' },
    ],
    ['isolation-both-bad', { verdict: 'no-go', cable: 'proven-bad', motor: 'proven-bad', step: 'replace-both' }],
    [
      'isolation-wet-connector',
      { verdict: 'undecided', cable: 'undecided', motor: 'undecided', step: 're-measure-contradiction' },
    ],
  ];

  it.each(faults)('%s, all stages taken, is judged as the netlist is: %o', (network, expected) => {
    const { verdict, parts, next } = assessIsolation(read(network, ['cable', 'bonded', 'motor']));
    expect({ verdict, cable: parts.cable, motor: parts.motor }).toEqual({
      verdict: expected.verdict,
      cable: expected.cable,
      motor: expected.motor,
    });
    expect(next.map(({ code }) => code)).toContain(expected.step);
  });

  it.each(faults)(
    '%s, joined alone, clears the parts only where nothing is bad, and is never go',
    (network, expected) => {
      const { verdict, parts } = assessIsolation(read(network, []));
      expect(verdict).toBe(expected.verdict === 'go' ? 'undecided' : 'no-go');
      expect(parts.cable === 'not-suspect').toBe(expected.verdict === 'go');
    },
  );

  it('the free cable does not show a leak to its own PE core, the bonded row does', () => {
    const network = 'isolation-cable-blind-spot';
    expect(value(network, 'cableV')).toBeGreaterThan(1e9);
    expect(value(network, 'bondedV')).toBeLessThan(2e6);
    const free = assessIsolation(read(network, ['cable', 'motor']));
    expect(free.parts.cable).toBe('undecided');
    expect(free.next.map(({ code }) => code)).toContain('take-bonded-row');
  });

  it.each(faults.filter(([network]) => network !== 'isolation-wet-connector'))(
    '%s fits the parallel law: joined is all cores, bonded, beside the motor',
    (network) => {
      const findings = assessIsolation(read(network, ['cable', 'bonded', 'motor'])).findings.map(({ code }) => code);
      expect(findings).toContain('fit');
    },
  );

  it('the wet connector does not fit', () => {
    const { findings } = assessIsolation(read('isolation-wet-connector', ['cable', 'bonded', 'motor']));
    expect(findings.map(({ code }) => code)).toContain('joined-too-low');
  });
});

describe('the parallel law', () => {
  it.each(networks.filter((network) => network.startsWith('isolation')))('gives what %s reads', (network) => {
    const wet = network === 'isolation-wet-connector' ? 20e6 : 1e12;
    const cores = ['bondedU', 'bondedV', 'bondedW', 'motorU'].map((name) => value(network, name));
    // The law only leaves out the few ohms of the windings between the terminals.
    expect(parallel([...cores, wet]) / value(network, 'joinedU')).toBeCloseTo(1, 5);
  });

  it('joins the three leaks of a star winding into one', () => {
    expect(parallel([9e9, 9e9, 9e9]) / value('isolation-sound', 'motorV')).toBeCloseTo(1, 5);
  });

  it('gives the two resistances of an ohmmeter’s view of a sound bridge', () => {
    // Upper and lower arm of a phase in series, three such arms in parallel with the bleed resistor.
    const arms = [960e3, 970.5e3, 966e3];
    const busAlone = parallel([...arms, 1e6]);
    expect(value('bridge-sound', 'plusU') + value('bridge-sound', 'minusU')).toBeGreaterThan(busAlone);
    expect(value('bridge-open-upper', 'minusU')).toBeCloseTo(60e3, 0);
  });
});
