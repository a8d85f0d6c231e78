import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import type { LeakPath, SeriesOhms } from '../../../../src/practice/simulator/axis-defects.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { type AxisState, asFound, cableFree, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { type Mode, measure } from '../../../../src/practice/simulator/measure.ts';
import { source } from '../../../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../../../src/practice/simulator/operating-point.ts';
import { type AxisParameters, drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { typical } from '../../../../src/practice/simulator/typical.ts';

const found = asFound(20, 20);
const exact = { ...drawInstruments(seeded(1)), error: 0, leadOhms: 0 };

interface Bad {
  leaks?: LeakPath[];
  contacts?: SeriesOhms[];
  broken?: string[];
}

function axisOf(parameters: Partial<AxisParameters>, bad: Bad = {}) {
  const random = seeded(31);
  return { ...faultedAxis('nuisance', { ...drawAxis(random), ...parameters }, random), ...bad };
}

type Axis = ReturnType<typeof axisOf>;

/** Resistance between two nodes from `volts` behind a resistor of the expected value. */
function ohmsBetween(axis: Axis, state: AxisState, a: string, b: string, about: number, volts = 1) {
  const at = operatingPoint([...axisNetwork(axis, state), source(a, b, volts, about)]);
  const across = at(a) - at(b);
  return (across * about) / (volts - across);
}

const shown = (axis: Axis, state: AxisState, mode: Mode, red: string, black: string): number => {
  const { reading } = measure(axis, state, exact, mode, { red, black }, seeded(3));
  return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
};

describe('defects that need something', () => {
  test('bent: the leak and the open core are there only while the cable is held bent', () => {
    const leak = axisOf({}, { leaks: [{ a: 'cable.U', b: 'cable.PE', ohms: 1e4, condition: 'bent' }] });
    const open = axisOf({}, { contacts: [{ core: 'PE', place: 'in-cable', ohms: 1e9, condition: 'bent' }] });
    const off = leadsOff(found);
    const bent = { ...off, bent: true };
    expect(shown(leak, off, 'insulation', 'cable.drive.U', 'ground')).toBeGreaterThan(100e6);
    expect(shown(leak, bent, 'insulation', 'cable.drive.U', 'ground')).toBeLessThan(20e3);
    expect(shown(open, off, 'ohms', 'cable.drive.PE', 'ground')).toBeLessThan(1);
    expect(shown(open, bent, 'ohms', 'cable.drive.PE', 'ground')).toBeGreaterThan(1e6);
  });

  test('hot: the winding leaks from its temperature on', () => {
    const axis = axisOf({}, { leaks: [{ a: 'motor.U', b: 'motor.frame', ohms: 1e4, condition: 'hot' }] });
    const at = (windingCelsius: number) =>
      shown(axis, cableFree({ ...found, windingCelsius }), 'insulation', 'motor.U', 'motor.frame');
    expect(at(typical.hotCelsius - 1)).toBeGreaterThan(10e6);
    expect(at(typical.hotCelsius)).toBeLessThan(20e3);
  });

  test('above 200 V: an insulation tester finds it, a multimeter and 100 V do not', () => {
    const axis = axisOf({}, { leaks: [{ a: 'cable.U', b: 'ground', ohms: 5e6, condition: 'above-200V' }] });
    const off = cableFree(found);
    expect(shown(axis, off, 'insulation', 'cable.drive.U', 'ground') / 5e6).toBeCloseTo(1, 1);
    expect(shown(axis, off, 'ohms', 'cable.drive.U', 'ground')).toBe(Number.POSITIVE_INFINITY);
    expect(ohmsBetween(axis, off, 'cable.drive.U', 'ground', 1e7, 150)).toBeGreaterThan(100e6);
    expect(ohmsBetween(axis, off, 'cable.drive.U', 'ground', 1e7, -500) / 5e6).toBeCloseTo(1, 1);
  });
});

describe('what else hangs on motor cable and bus', () => {
  test('a filter reads its resistors to PE at the free end, until it is taken off', () => {
    const axis = axisOf({ filterOhms: 4.7e6 });
    const free = cableFree(found);
    expect(shown(axis, free, 'insulation', 'cable.drive.U', 'ground') / 4.7e6).toBeCloseTo(1, 1);
    expect(shown(axis, { ...free, filter: false }, 'insulation', 'cable.drive.U', 'ground')).toBeGreaterThan(100e6);
  });

  test('PVC halves with each step of warmth, and with double length', () => {
    const pvc = { insulationOhmMetres: 10e9, cableMetres: 50, cableKelvinPerHalving: 7 };
    const at = (celsius: number, change: Partial<AxisParameters> = {}) =>
      ohmsBetween(
        axisOf({ ...pvc, ...change }),
        cableFree({ ...found, airCelsius: celsius }),
        'cable.drive.U',
        'cable.drive.V',
        2e8,
      );
    expect(at(20) / at(27)).toBeCloseTo(2, 3);
    expect(at(20) / at(20, { cableMetres: 100 })).toBeCloseTo(2, 1);
  });

  test('PE of 85 m and 1.5 mm² reads more than an ohm and is sound', () => {
    const axis = axisOf({ cableMetres: 85, peOhmsPerMetre: 13.3e-3 });
    expect(ohmsBetween(axis, leadsOff(found), 'cable.drive.PE', 'ground', 1)).toBeCloseTo(1.13, 1);
  });

  test('the braking resistor reads its ohms, open if it is broken, and reaches PE if it is earthed', () => {
    const off = { ...leadsOff(found), brakingResistor: false };
    const at = (bad: Bad, a: string, b: string) => shown(axisOf({ brakingOhms: 40 }, bad), off, 'ohms', a, b);
    expect(at({}, 'braking.plus', 'braking.minus')).toBeCloseTo(40, 0);
    expect(at({ broken: ['braking.resistor'] }, 'braking.plus', 'braking.minus')).toBe(Number.POSITIVE_INFINITY);
    expect(at({}, 'braking.plus', 'ground')).toBe(Number.POSITIVE_INFINITY);
    const earthed = { leaks: [{ a: 'braking.minus', b: 'ground', ohms: 20 }] };
    expect(at(earthed, 'braking.plus', 'ground')).toBeCloseTo(60, 0);
    const chopper = { leaks: [{ a: 'braking.chopper', b: 'DC-', ohms: 1 }] };
    expect(at(chopper, 'braking.chopper', 'DC-')).toBeCloseTo(1, 0);
    expect(at({}, 'braking.chopper', 'DC-')).toBeGreaterThan(100e3);
  });

  test('the motor of the other axis is on its terminals until its leads are off', () => {
    const neighbour = { windingOhms: 1.5, frameInsulationOhms: 1e9, gravityLoaded: false };
    const axis = axisOf({ neighbour }, { leaks: [{ a: 'neighbour.motor.V', b: 'ground', ohms: 100 }] });
    expect(ohmsBetween(axis, found, 'neighbour.U', 'neighbour.V', 3)).toBeCloseTo(3 + 2 * typical.contactOhms, 2);
    expect(shown(axis, found, 'ohms', 'neighbour.U', 'ground')).toBeLessThan(110);
    expect(shown(axis, { ...found, neighbourLeads: false }, 'ohms', 'neighbour.U', 'ground')).toBeGreaterThan(100e3);
  });

  test('the drives on a link are in parallel with the bus', () => {
    const link = { farads: 1e-3, bleedOhms: 50e3 };
    const at = (dcLink: boolean) =>
      ohmsBetween(axisOf({ link }), { ...leadsOff(found), dcLink }, 'DC+', 'DC-', 1e5, 0.3);
    expect(at(true) * (1 / at(false) + 1 / 50e3)).toBeCloseTo(1, 2);
  });

  test('one resistor of its own at a terminal is the only thing that differs', () => {
    const lowerOhms = { U: 39e3, V: 47e3, W: 47e3 };
    const axis = axisOf({ lowerOhms, upperOhms: { U: 900e3, V: 900e3, W: 900e3 } });
    const [U, V, W] = ['U', 'V', 'W'].map((phase) => shown(axis, leadsOff(found), 'ohms', `drive.${phase}`, 'DC-'));
    expect((V as number) / (W as number)).toBeCloseTo(1, 1);
    expect((U as number) / (V as number)).toBeLessThan(0.87);
  });
});
