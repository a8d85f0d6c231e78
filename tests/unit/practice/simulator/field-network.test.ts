import { describe, expect, test } from 'vitest';
import { phases } from '../../../../src/kernel/electrics/phases.ts';
import type { LeakPath, SeriesOhms } from '../../../../src/practice/simulator/axis-defects.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import {
  type AxisState,
  asFound,
  bondedExcept,
  cableFree,
  idleCores,
  leadsOff,
} from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { type Mode, measure } from '../../../../src/practice/simulator/measure.ts';
import { source } from '../../../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../../../src/practice/simulator/operating-point.ts';
import { type AxisParameters, drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { seeded } from '../../../../src/practice/simulator/random.ts';
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

describe('idle cores', () => {
  const leak = (core: string, ohms = 5e3): Bad => ({ leaks: [{ a: 'cable.U', b: `cable.${core}`, ohms }] });
  const joined = (axis: Axis, state: AxisState, phase = 'U') =>
    shown(axis, state, 'insulation', `cable.drive.${phase}`, 'ground');

  test.each(idleCores)(
    'a phase core shorted to %s passes while it hangs free, and fails on the protective bar',
    (core) => {
      const axis = axisOf({ idleCores }, leak(core));
      const off = leadsOff(found);
      expect(off.idleCores).toBe('free');
      expect(joined(axis, off)).toBeGreaterThan(100e6);
      expect(joined(axis, { ...off, idleCores: 'to-pe' })).toBeLessThan(20e3);
    },
  );

  test('in the bonded row with the idle cores on the bar only the core that leaks is bad', () => {
    const axis = axisOf({ idleCores }, leak('sensor+'));
    const row = phases.map((phase) => {
      const state = cableFree({ ...found, idleCores: 'to-pe' });
      return joined(axis, { ...state, jumpers: bondedExcept(phase) }, phase);
    });
    expect(row[0]).toBeLessThan(20e3);
    expect(Math.min(row[1] as number, row[2] as number)).toBeGreaterThan(100e6);
  });

  test('on the drive, an idle core carries the voltage of a phase core that is shorted to it', () => {
    const axis = axisOf({ idleCores }, leak('brake+', 10));
    const power = { ...found, supply: true, enabled: true };
    const [sound, bad] = [axisOf({ idleCores }), axis].map((one) => {
      const at = operatingPoint(axisNetwork(one, power));
      return at('drive.brake+') - at('drive.brake-');
    });
    expect(sound).toBeCloseTo(typical.brakeVolts, 0);
    expect(Math.abs((bad ?? 0) - typical.brakeVolts)).toBeGreaterThan(0.01);
  });

  test('brake coil and sensor are measured from the drive end, and not on a plug that is off', () => {
    const axis = axisOf({ idleCores });
    const metres = axis.parameters.cableMetres;
    const cores = 2 * metres * typical.idleCoreOhmsPerMetre;
    const off = leadsOff(found);
    expect(ohmsBetween(axis, off, 'cable.drive.brake+', 'cable.drive.brake-', 24)).toBeCloseTo(
      typical.brakeOhms + cores + 2 * typical.contactOhms,
      3,
    );
    expect(ohmsBetween(axis, off, 'cable.drive.sensor+', 'cable.drive.sensor-', 600)).toBeCloseTo(
      typical.sensorOhms + cores + 2 * typical.contactOhms,
      2,
    );
    expect(ohmsBetween(axis, cableFree(found), 'cable.drive.brake+', 'cable.drive.brake-', 1e9)).toBeGreaterThan(1e9);
  });
});

describe('contacts', () => {
  const contact = (place: SeriesOhms['place']): Bad => ({ contacts: [{ core: 'U', place, ohms: 2 }] });
  const winding = (axis: Axis, state: AxisState, at: string) => ohmsBetween(axis, state, `${at}.U`, `${at}.V`, 3);
  const more = (place: SeriesOhms['place']) => ({
    throughCable:
      winding(axisOf({}, contact(place)), leadsOff(found), 'cable.drive') -
      winding(axisOf({}), leadsOff(found), 'cable.drive'),
    atMotor:
      winding(axisOf({}, contact(place)), cableFree(found), 'motor') - winding(axisOf({}), cableFree(found), 'motor'),
    ofCore:
      ohmsBetween(axisOf({}, contact(place)), cableFree(found), 'cable.drive.U', 'cable.motor.U', 1) -
      ohmsBetween(axisOf({}), cableFree(found), 'cable.drive.U', 'cable.motor.U', 1),
  });

  test.each([
    ['drive-terminal', 0, 0, 0],
    ['in-cable', 2, 0, 2],
    ['cable-half', 2, 0, 2],
    ['mated', 2, 0, 0],
    ['motor-half', 2, 2, 0],
  ] as const)(
    '2 Ω at %s: %d Ω more through the cable, %d Ω at the motor, %d Ω along the core',
    (place, throughCable, atMotor, ofCore) => {
      const change = more(place);
      expect(change.throughCable).toBeCloseTo(throughCable, 4);
      expect(change.atMotor).toBeCloseTo(atMotor, 4);
      expect(change.ofCore).toBeCloseTo(ofCore, 4);
    },
  );

  test('at the terminal of the drive it is between lead and terminal', () => {
    const axis = axisOf({}, contact('drive-terminal'));
    expect(ohmsBetween(axis, found, 'drive.U', 'cable.drive.U', 2)).toBeCloseTo(2, 1);
  });
});

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
