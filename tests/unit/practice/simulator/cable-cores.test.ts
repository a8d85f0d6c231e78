import { describe, expect, test } from 'vitest';
import { phases } from '../../../../src/kernel/electrics/phases.ts';
import { seeded } from '../../../../src/kernel/random.ts';
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

  test('on the drive, a phase core that is shorted to it ties the output stage to the brake circuit', () => {
    const power = { ...found, supply: true, enabled: true };
    const apart = (bad: Bad) => {
      const at = operatingPoint(axisNetwork(axisOf({ idleCores }, bad), power));
      expect(at('drive.brake+')).toBeCloseTo(typical.brakeVolts, 0);
      return Math.abs(at('drive.U') - at('drive.brake+'));
    };
    expect(apart({})).toBeGreaterThan(100);
    expect(apart(leak('brake+', 10))).toBeLessThan(1);
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
