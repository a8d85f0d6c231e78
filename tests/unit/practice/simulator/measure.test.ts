import { describe, expect, test } from 'vitest';
import { limitRange, limitValue } from '../../../../src/kernel/limits.ts';
import { seeded } from '../../../../src/kernel/random.ts';
import { type AxisState, asFound, cableFree, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { switchedOn } from '../../../../src/practice/simulator/discharge.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments, insulationTester } from '../../../../src/practice/simulator/instruments.ts';
import { type Mode, measure } from '../../../../src/practice/simulator/measure.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

const random = seeded(21);
const sound = faultedAxis('nuisance', drawAxis(random), random);
/** An instrument without error, so that its figures can be worked out by hand. */
const exact = { ...drawInstruments(seeded(2)), error: 0, leadOhms: 0 };
const found = asFound(20, 20);

/** A known resistor between two nodes that nothing else is connected to. */
function ofResistor(ohms: number, mode: Mode, instruments = exact) {
  const axis = { ...sound, leaks: [{ a: 'one', b: 'other', ohms }] };
  return measure(axis, found, instruments, mode, { red: 'one', black: 'other' }, seeded(5));
}

describe('known resistors at the edges of every range', () => {
  const cases = (['ohms', 'milliohms', 'insulation'] as const).flatMap((mode) =>
    exact[mode].ranges.map((range): [Mode, number] => [mode, range.fullScale]),
  );

  test.each(cases)('%s, %d Ω at full scale', (mode, full) => {
    const meter = exact[mode];
    const last = meter.ranges.at(-1)?.fullScale === full;
    for (const share of [0.11, 0.5, 0.99]) {
      const { reading } = ofResistor(full * share, mode);
      if (reading.kind !== 'value') throw new Error(`${mode} shows no value at ${full * share}`);
      const error = (full * share * meter.percent) / 100 + (meter.counts + 1) * (reading.resolution ?? 0);
      expect(Math.abs(reading.value - full * share)).toBeLessThanOrEqual(error);
    }
    const above = ofResistor(full * 1.01, mode).reading;
    expect(above.kind).toBe(last ? 'over' : 'value');
    if (above.kind === 'over') expect(above.atLeast).toBe(full);
  });

  test('open leads are over-range, a wire is zero', () => {
    expect(ofResistor(1e13, 'ohms').reading.kind).toBe('over');
    expect(ofResistor(1e-6, 'ohms').text).toMatch(/^0\.[0-2] Ω$/);
  });

  test('leads are measured too, unless they are zeroed', () => {
    const leads = { ...exact, leadOhms: 0.4 };
    expect(ofResistor(10, 'ohms', leads).reading).toMatchObject({ kind: 'value' });
    const axis = { ...sound, leaks: [{ a: 'one', b: 'other', ohms: 10 }] };
    const read = (zeroed: boolean) =>
      measure(axis, found, leads, 'ohms', { red: 'one', black: 'other' }, seeded(5), { zeroed }).reading;
    const [raw, zeroed] = [read(false), read(true)];
    expect(raw.kind === 'value' && zeroed.kind === 'value' && raw.value - zeroed.value).toBeCloseTo(0.4, 1);
  });
});

describe('a sound axis reads what common practice expects', () => {
  const off = leadsOff(found);
  const read = (state: AxisState, mode: Mode, red: string, black: string) =>
    measure(sound, state, exact, mode, { red, black }, seeded(3)).reading;
  const value = (state: AxisState, mode: Mode, red: string, black: string) => {
    const reading = read(state, mode, red, black);
    return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
  };

  test.each(['U', 'V', 'W'])('rails to %s, in the usual ranges of content/limits', (phase) => {
    const plus = limitRange('bridge-dc-plus-typical');
    const minus = limitRange('bridge-dc-minus-typical');
    expect(value(off, 'ohms', 'DC+', `drive.${phase}`)).toBeGreaterThan(plus.from);
    expect(value(off, 'ohms', `drive.${phase}`, 'DC-')).toBeGreaterThan(minus.from);
  });

  test('a rail reads 40 to 300 kΩ, and either rail is the larger in some drives', () => {
    const rails = Array.from({ length: 200 }, (_, seed) => {
      const random = seeded(seed);
      const axis = faultedAxis('nuisance', drawAxis(random), random);
      const ohms = (red: string, black: string) => {
        const { reading } = measure(axis, off, exact, 'ohms', { red, black }, random);
        return reading.kind === 'value' ? reading.value : Number.NaN;
      };
      return { plus: ohms('DC+', 'drive.V'), minus: ohms('drive.V', 'DC-') };
    });
    for (const ohms of rails.flatMap(({ plus, minus }) => [plus, minus])) {
      expect(ohms).toBeGreaterThan(40e3);
      expect(ohms).toBeLessThan(300e3);
    }
    expect(rails.some(({ plus, minus }) => plus > 2 * minus)).toBe(true);
    expect(rails.some(({ plus, minus }) => minus > 2 * plus)).toBe(true);
  });

  test('a free-wheeling diode drops 0.3 to 0.5 V forward and blocks in reverse', () => {
    const forward = value(off, 'diode', 'DC-', 'drive.U');
    expect(forward).toBeGreaterThan(0.3);
    expect(forward).toBeLessThan(0.5);
    expect(read(off, 'diode', 'drive.U', 'DC-').kind).toBe('over');
  });

  test('with the motor on, a short of one switch looks the same from all three terminals', () => {
    const axis = { ...sound, leaks: [{ a: 'DC-', b: 'drive.V', ohms: 0.5 }] };
    const shown = (state: AxisState) =>
      ['U', 'V', 'W'].map((phase) => {
        const leads = { red: `drive.${phase}`, black: 'DC-' };
        const { reading } = measure(axis, state, exact, 'ohms', leads, seeded(3));
        return reading.kind === 'value' && reading.value < limitValue('bridge-short');
      });
    expect(shown(found)).toEqual([true, true, true]);
    expect(shown(off)).toEqual([false, true, false]);
  });

  test('a cable that is free at both ends hides a leak to its own screen, and the bonded row shows it', () => {
    const axis = { ...sound, leaks: [{ a: 'cable.U', b: 'cable.screen', ohms: 1e6 }] };
    const free = cableFree(found);
    const leads = { red: 'cable.drive.U', black: 'ground' };
    const bonded: AxisState = { ...free, jumpers: [['cable.drive.screen', 'ground']] };
    expect(measure(axis, free, exact, 'insulation', leads, seeded(3)).reading.kind).toBe('over');
    expect(measure(axis, bonded, exact, 'insulation', leads, seeded(3)).text).toMatch(/^(0\.9|1\.0)\d MΩ$/);
  });

  test('one lead in the air reads open, both leads on one point read zero', () => {
    expect(read(off, 'ohms', 'DC+', 'nowhere').kind).toBe('over');
    expect(value(off, 'ohms', 'DC+', 'DC+')).toBeLessThan(1);
  });
});

describe('a wrong hook-up gives the reading that it really would', () => {
  const live = switchedOn(sound, found);

  test('a live bus shows its voltage, and an ohmmeter on it no resistance', () => {
    const volts = measure(sound, live, exact, 'volts', { red: 'DC+', black: 'DC-' }, seeded(3));
    expect(volts.reading.kind === 'value' && volts.reading.value).toBeCloseTo(565, -1);
    const ohms = measure(sound, live, exact, 'ohms', { red: 'DC+', black: 'DC-' }, seeded(3));
    expect(ohms.reading.kind).toBe('over');
    expect(ohms.voltsPresent).toBeGreaterThan(limitValue('touch-voltage'));
  });

  test('with the leads exchanged a voltage is negative', () => {
    expect(measure(sound, live, exact, 'volts', { red: 'DC-', black: 'DC+' }, seeded(3)).text).toMatch(/^-56\d\.\d V$/);
  });

  test('a residual voltage falsifies a resistance', () => {
    const clean = measure(sound, leadsOff(found), exact, 'ohms', { red: 'DC+', black: 'drive.U' }, seeded(3));
    const charged = { ...leadsOff(found), busVolts: 0.3 };
    const falsified = measure(sound, charged, exact, 'ohms', { red: 'DC+', black: 'drive.U' }, seeded(3));
    expect(falsified.text).not.toBe(clean.text);
  });

  test('an insulation test through the connected drive reads the drive, far below a sound motor', () => {
    const leads = { red: 'motor.U', black: 'ground' };
    const { reading } = measure(sound, found, exact, 'insulation', leads, seeded(3));
    expect(reading.kind === 'value' && reading.value).toBeLessThan(limitValue('after-trip-point'));
  });

  test('with the axis enabled a terminal has half the bus voltage', () => {
    const enabled = { ...live, enabled: true };
    const { reading } = measure(sound, enabled, exact, 'volts', { red: 'drive.U', black: 'DC-' }, seeded(3));
    expect(reading.kind === 'value' && reading.value).toBeCloseTo(565 / 2, -1);
  });
});

describe('absorption', () => {
  test('a sound winding reads higher the longer the test lasts, a bad one does not', () => {
    const tester = { ...exact, insulation: insulationTester(500, 14e9, 0.01) };
    const read = (leaks: typeof sound.leaks, testSeconds: number) => {
      const leads = { red: 'motor.U', black: 'motor.frame' };
      const axis = { ...sound, leaks };
      const { reading } = measure(axis, cableFree(found), tester, 'insulation', leads, seeded(3), { testSeconds });
      return reading.kind === 'value' ? reading.value : Number.NaN;
    };
    expect(read([], 60) / read([], 10)).toBeGreaterThan(1.2);
    const bad = [{ a: 'motor.U', b: 'motor.frame', ohms: 2e6 }];
    expect(read(bad, 60) / read(bad, 10)).toBeCloseTo(1, 1);
  });
});

// Source: IEC 61557-2 (content/limits): at least 1 mA at the nominal voltage, at most 15 mA short-circuited.
test('the insulation tester gives a current that the standard allows', () => {
  const [range] = insulationTester(500, 1.8e9, 3.8).ranges;
  const amperes = 500 / (range?.sourceOhms ?? 0);
  expect(amperes).toBeGreaterThanOrEqual(limitValue('insulation-tester-current'));
  expect(amperes).toBeLessThanOrEqual(limitValue('insulation-tester-short-circuit'));
});
