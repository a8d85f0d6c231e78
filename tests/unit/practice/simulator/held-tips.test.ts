import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { type AxisState, asFound, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { afterWaiting, charged } from '../../../../src/practice/simulator/discharge.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments, type Instruments } from '../../../../src/practice/simulator/instruments.ts';
import { type HookUp, measure } from '../../../../src/practice/simulator/measure.ts';
import { type Capacitor, resistor, source } from '../../../../src/practice/simulator/network.ts';
import { type AxisParameters, drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { chargesAfter } from '../../../../src/practice/simulator/transient.ts';

const off = leadsOff(asFound(20, 20));
const alike = (ohms: number) => ({ U: ohms, V: ohms, W: ohms });

/** One common design: 900 kΩ above, 47 kΩ below, 470 kΩ across a bus of 235 µF. */
const design: Partial<AxisParameters> = {
  busFarads: 235e-6,
  bleedOhms: 470e3,
  upperOhms: alike(900e3),
  lowerOhms: alike(47e3),
};

const axisOf = (parameters: Partial<AxisParameters> = {}) => {
  const random = seeded(8);
  return faultedAxis('nuisance', { ...drawAxis(random), ...design, ...parameters }, random);
};

const exact: Instruments = { ...drawInstruments(seeded(2)), error: 0, leadOhms: 0 };

/** A meter with these volts in each range; its display keeps its error of some counts. */
const meterOf = (volts: number, ranging: 'up' | 'down' = 'down'): Instruments => ({
  ...exact,
  ohms: { ...exact.ohms, ranging, ranges: exact.ohms.ranges.map((range) => ({ ...range, sourceVolts: volts })) },
});

function read(axis: ReturnType<typeof axisOf>, state: AxisState, leads: HookUp, held: number, meter = meterOf(0.3)) {
  const shown = measure(axis, state, meter, 'ohms', leads, seeded(3), { heldSeconds: held });
  const ohms = shown.reading.kind === 'value' ? shown.reading.value : Number.POSITIVE_INFINITY;
  return { ohms, after: { ...state, ...shown.bus } };
}

const plus = (phase: string): HookUp => ({ red: 'DC+', black: `drive.${phase}` });

describe('charging, against the closed solution', () => {
  const capacitor: Capacitor = { kind: 'capacitor', a: 'top', b: 'ground', farads: 235e-6, volts: 0 };

  test.each([0.5, 5, 50, 500])('100 kΩ and 0.5 V into 235 µF for %d s: V·(1 − exp(−t/RC))', (seconds) => {
    const [volts] = chargesAfter([source('top', 'ground', 0.5, 100e3)], [capacitor], seconds);
    expect((volts ?? 0) / (0.5 * -Math.expm1(-seconds / 23.5))).toBeCloseTo(1, 3);
  });

  test('two in series take the charge of one, each its share; a resistor across one lets it lose its share', () => {
    const upper: Capacitor = { kind: 'capacitor', a: 'top', b: 'middle', farads: 400e-6, volts: 300 };
    const lower: Capacitor = { kind: 'capacitor', a: 'middle', b: 'ground', farads: 400e-6, volts: 300 };
    const [left, kept] = charged([resistor('top', 'middle', 100e3)], [upper, lower], 80);
    expect((left?.volts ?? 0) / (300 * Math.exp(-2))).toBeCloseTo(1, 2);
    expect(kept?.volts).toBeCloseTo(300, 2);
  });
});

describe('the first reading of a row', () => {
  test('in one range it begins near the resistors of the terminal alone, and climbs for minutes', () => {
    const range = exact.ohms.ranges.filter(({ fullScale }) => fullScale === 720e3);
    const meter = { ...exact, ohms: { ...exact.ohms, ranges: range } };
    const at = (seconds: number) => read(axisOf(), off, plus('U'), seconds, meter).ohms;
    // An empty capacitor joins the rails: 900 kΩ and 47 kΩ in parallel.
    expect(at(0) / (1 / (1 / 900e3 + 1 / 47e3))).toBeCloseTo(1, 1);
    const climbing = [0, 10, 30, 60, 120].map(at);
    expect(climbing).toEqual([...climbing].sort((a, b) => a - b));
    expect(climbing[1]).toBeLessThan(0.75 * (climbing[4] as number));
    // Settled: 47 kΩ and what the bus has, 470 kΩ beside the legs of the other two terminals, with 900 kΩ across both.
    const bus = 1 / (1 / 470e3 + 2 / 947e3);
    expect(at(600) / (1 / (1 / 900e3 + 1 / (47e3 + bus)))).toBeCloseTo(1, 1);
  });

  test('read too soon it is far below the same one read again after the next', () => {
    const first = read(axisOf(), off, plus('U'), 3);
    const second = read(axisOf(), first.after, plus('V'), 240);
    const again = read(axisOf(), second.after, plus('U'), 240);
    expect(first.ohms).toBeLessThan(0.5 * again.ohms);
    expect(second.ohms / again.ohms).toBeCloseTo(1, 1);
  });

  test('the other rail hardly moves', () => {
    const low = (seconds: number) => read(axisOf(), off, { red: 'drive.U', black: 'DC-' }, seconds).ohms;
    expect(low(3) / low(300)).toBeGreaterThan(0.9);
  });
});

describe('what a meter leaves on the bus', () => {
  test('with plus on DC+ it is positive, with minus on red it is negative, and both fade', () => {
    const axis = axisOf();
    const positive = read(axis, off, { red: 'DC+', black: 'DC-' }, 30).after;
    const negative = read(axis, off, { red: 'DC+', black: 'DC-' }, 30, meterOf(-0.3)).after;
    expect(positive.busVolts).toBeGreaterThan(0.05);
    expect(negative.busVolts).toBeLessThan(-0.05);
    expect(Math.abs(afterWaiting(axis, negative, 300).busVolts)).toBeLessThan(0.02);
  });

  test('points that do not reach the bus leave it alone', () => {
    const before = { ...off, busVolts: 0.2 };
    const shown = measure(
      axisOf(),
      before,
      exact,
      'ohms',
      { red: 'cable.drive.U', black: 'cable.drive.V' },
      seeded(3),
      {
        heldSeconds: 1,
      },
    );
    expect(shown.bus?.busVolts).toBeLessThan(0.2);
    expect(shown.bus?.busVolts).toBeGreaterThan(0.19);
  });
});

describe('meters of either polarity', () => {
  test('on a plain resistor polarity and volts do not matter', () => {
    const axis = { ...axisOf(), leaks: [{ a: 'one', b: 'other', ohms: 5e3 }] };
    const at = (volts: number) => read(axis, off, { red: 'one', black: 'other' }, 1, meterOf(volts)).ohms;
    expect([at(0.3), at(3), at(-0.5)].map((ohms) => Math.round(ohms / 100))).toEqual([50, 50, 50]);
  });

  test('with 3 V the wrong way round all terminals of a sound drive look alike and shorted, below a kilohm', () => {
    const axis = axisOf();
    const forward = (phase: string) => read(axis, off, plus(phase), 1, meterOf(-3, 'up')).ohms;
    for (const phase of ['U', 'V', 'W']) {
      expect(forward(phase)).toBeLessThan(1e3);
      expect(forward(phase) / forward('U')).toBeCloseTo(1, 1);
    }
  });
});

describe('two capacitors in series', () => {
  const parameters = { upperOhms: alike(1e9), lowerOhms: alike(1e9) };
  const charge = { ...off, busVolts: 565 };

  test('with both balancing resistors they discharge alike', () => {
    const axis = axisOf({ ...parameters, balance: { upperOhms: 100e3, lowerOhms: 100e3 } });
    const later = afterWaiting(axis, charge, 47);
    // 470 µF and 100 kΩ each: one time constant.
    expect(later.busVolts / (565 * Math.exp(-1))).toBeCloseTo(1, 2);
    expect((later.lowerBusVolts ?? 0) / later.busVolts).toBeCloseTo(0.5, 3);
  });

  test('with one of them open the bus falls to half, and stands there after the time on the label', () => {
    const axis = axisOf({ ...parameters, balance: { upperOhms: 100e3, lowerOhms: 1e9 } });
    const later = afterWaiting(axis, charge, 600);
    expect(later.busVolts / 565).toBeGreaterThan(0.48);
    expect(later.busVolts / 565).toBeLessThan(0.51);
    expect(later.lowerBusVolts).toBeCloseTo(later.busVolts, 0);
  });
});
