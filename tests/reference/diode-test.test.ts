import { bignumber, evaluate, exp } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { suspectPositions } from '../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessBridgeDiode, type BridgeDiodeAssessment } from '../../src/calculators/bridge-diode/rule/assess.ts';
import { mapPhases } from '../../src/kernel/electrics/phases.ts';
import { limitRange, limitValue } from '../../src/kernel/limits.ts';
import { type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { operatingPoint } from '../../src/practice/simulator/operating-point.ts';
import { typical } from '../../src/practice/simulator/typical.ts';
import { askedOf, celsius, diodeCases, diodeRange, simulateDiodeCase } from './diode-ngspice/cases.ts';
import recordedValues from './diode-ngspice/recorded.json' with { type: 'json' };
import { hasNgspice } from './ngspice/networks.ts';

const recorded: Record<string, Record<string, number>> = recordedValues;

/** As the display of a diode range shows it: three decimals, and OL above the range. */
const shown = (value: number): Reading =>
  value > diodeRange.fullScale ? { kind: 'over', unit: 'V' } : volts(Number(value.toFixed(3)), 0.001);

function judged(name: string): BridgeDiodeAssessment {
  const of = (prefix: string) =>
    mapPhases({ U: 'u', V: 'v', W: 'w' }, (phase) => shown(recorded[name]?.[prefix + phase] ?? Number.NaN));
  return assessBridgeDiode({
    busVoltage: volts(0.02, 0.01),
    motorLeads: 'off',
    steadiness: 'steady',
    plus: { forward: of('plusforward'), reverse: of('plusreverse') },
    minus: { forward: of('minusforward'), reverse: of('minusreverse') },
  });
}

/** Source: ngspice, a circuit simulator, on an output stage with the test source of a diode range across the leads. */
describe('twelve readings by ngspice', () => {
  it.runIf(hasNgspice)('are the recorded ones', () => {
    for (const one of diodeCases) {
      for (const [name, value] of Object.entries(simulateDiodeCase(one)))
        expect(Math.abs(value - (recorded[one.name]?.[name] ?? Number.NaN)), `${one.name} ${name}`).toBeLessThan(1e-6);
    }
  });

  it.each(diodeCases)('$name: the simulator agrees within half a millivolt', (one) => {
    for (const { name, elements, red, black } of askedOf(one)) {
      const at = operatingPoint(elements);
      expect(Math.abs(at(red) - at(black) - (recorded[one.name]?.[name] ?? Number.NaN)), name).toBeLessThan(5e-4);
    }
  });

  it('a sound stage passes', () => {
    expect(judged('sound').verdict).toBe('go');
  });

  it.each(diodeCases.filter(({ name }) => name.startsWith('short')))('only $name fails', ({ name, across }) => {
    const { verdict, findings } = judged(name);
    expect([verdict, suspectPositions(findings)]).toEqual(['no-go', [across?.at]]);
  });

  it('a leak of 1.5 kΩ fails, one of 20 kΩ passes with the caution that it can', () => {
    const strong = judged('leak of 1.5 kΩ at minusV');
    expect([strong.verdict, suspectPositions(strong.findings)]).toEqual(['no-go', ['minusV']]);
    const weak = judged('leak of 20 kΩ at plusW');
    expect(weak.verdict).toBe('go');
    expect(weak.findings.map(({ code }) => code)).toContain('diode-blind-to-leaks');
  });
});

/** Boltzmann constant and elementary charge: exact since the SI of 2019, here from the library. */
const thermal = (kelvin: number): number =>
  evaluate(`(boltzmann / elementaryCharge * ${kelvin} K) to V`).toNumber('V') as number;

/** The voltage at which a Shockley diode carries the current of the source, by bisection, with 64 digits. */
function dropByMathjs(saturation: number, slope: number, sourceVolts: number, sourceOhms: number): number {
  let [low, high] = [bignumber(0), bignumber(sourceVolts)];
  for (let step = 0; step < 80; step++) {
    const middle = low.plus(high).div(2);
    const through = exp(middle.div(slope)).minus(1).times(saturation);
    const left = bignumber(sourceVolts).minus(middle).div(sourceOhms);
    if (through.greaterThan(left)) high = middle;
    else low = middle;
  }
  return low.toNumber();
}

/** Reference library: mathjs, constants and big numbers. Equation: Shockley, I = Is·(exp(V/nVT) − 1). */
describe('the drop of one diode by the Shockley equation', () => {
  const saturation = typical.diodeSaturation * 2 ** ((celsius - 25) / typical.kelvinPerDoubling);
  const slope = typical.diodeIdeality * thermal(celsius + 273.15);

  it.each(['minusforwardu', 'minusforwardv', 'plusforwardw'])('%s of a sound stage is that drop', (name) => {
    const expected = dropByMathjs(saturation, slope, diodeRange.sourceVolts, diodeRange.sourceOhms);
    // The resistors beside the diode take a few microamperes of the milliampere.
    expect(Math.abs((recorded.sound?.[name] ?? Number.NaN) - expected)).toBeLessThan(5e-4);
  });

  it('lies within the usual drops from 5 to 35 °C', () => {
    const { from, to } = limitRange('diode-forward-typical');
    for (const degrees of [5, 20, 35]) {
      const warm = typical.diodeSaturation * 2 ** ((degrees - 25) / typical.kelvinPerDoubling);
      const drop = dropByMathjs(warm, typical.diodeIdeality * thermal(degrees + 273.15), 3, 2500);
      expect(drop).toBeGreaterThan(from);
      expect(drop).toBeLessThan(to);
    }
  });

  it('falls by nVT·ln 10, a little more than the allowed difference, at a tenth of the current', () => {
    const [ideal, real] = [thermal(293.15) * Math.log(10), slope * Math.log(10)];
    expect(ideal).toBeCloseTo(0.0582, 4);
    expect(limitValue('diode-balance')).toBeLessThan(real);
    expect(limitValue('diode-balance')).toBeLessThan(ideal);
  });
});
