import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { type AxisState, asFound, cableFree, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { copperOhms } from '../../../../src/practice/simulator/copper.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { source } from '../../../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../../../src/practice/simulator/operating-point.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { typical } from '../../../../src/practice/simulator/typical.ts';

const draw = (id: string) => {
  const random = seeded(31);
  return faultedAxis(id, drawAxis(random), random);
};
const sound = draw('nuisance');
const found = asFound(20, 20);

/** Resistance between two nodes, measured with one volt behind a resistor of the expected value. */
function ohmsBetween(axis: typeof sound, state: AxisState, a: string, b: string, about: number, testSeconds?: number) {
  const volts = operatingPoint([...axisNetwork(axis, state, testSeconds), source(a, b, 1, about)]);
  const across = volts(a) - volts(b);
  return (across * about) / (1 - across);
}

describe('the motor', () => {
  test.each([5, 20, 80])('phase to phase reads two windings, at %d °C', (celsius) => {
    const state = cableFree({ ...found, windingCelsius: celsius });
    const { U, V } = sound.parameters.windingOhms;
    const expected = copperOhms(U + V, celsius);
    expect(ohmsBetween(sound, state, 'motor.U', 'motor.V', 3) / expected).toBeCloseTo(1, 6);
  });

  test('insulation to the frame is three phases in parallel, and halves for each kelvinPerHalving', () => {
    const { U, V, W } = sound.parameters.frameInsulationOhms;
    const together = 1 / (1 / U + 1 / V + 1 / W);
    const late = 1e7;
    const at = (celsius: number) => {
      const state = cableFree({ ...found, windingCelsius: celsius });
      return ohmsBetween(sound, state, 'motor.U', 'motor.frame', 1e9, late);
    };
    expect(at(20) / together).toBeCloseTo(1, 2);
    expect(at(20) / at(20 + sound.parameters.kelvinPerHalving)).toBeCloseTo(2, 2);
  });

  test('shorted turns lower both pairs of their winding equally, and not the third', () => {
    const axis = draw('turns-U-many');
    const share = axis.motor.shortedShare.U ?? 0;
    const { U, V, W } = axis.parameters.windingOhms;
    const at = (pair: string) => ohmsBetween(axis, cableFree(found), `motor.${pair[0]}`, `motor.${pair[1]}`, 3);
    expect(at('UV')).toBeCloseTo(U * (1 - share) + V, 5);
    expect(at('WU')).toBeCloseTo(U * (1 - share) + W, 5);
    expect(at('VW')).toBeCloseTo(V + W, 5);
  });
});

describe('the cable', () => {
  const { coreOhmsPerMetre, cableMetres, insulationOhmMetres } = sound.parameters;

  test('a winding measured through it includes two cores', () => {
    const more =
      ohmsBetween(sound, leadsOff(found), 'cable.drive.U', 'cable.drive.V', 3) -
      ohmsBetween(sound, cableFree(found), 'motor.U', 'motor.V', 3);
    expect(more).toBeCloseTo(2 * coreOhmsPerMetre * cableMetres + 2 * typical.contactOhms, 3);
  });

  test('its insulation falls with its length', () => {
    const long = { ...sound, parameters: { ...sound.parameters, cableMetres: cableMetres * 2 } };
    const at = (axis: typeof sound) =>
      ohmsBetween(axis, cableFree(found), 'cable.drive.U', 'cable.drive.V', insulationOhmMetres / cableMetres);
    expect(at(sound) / at(long)).toBeCloseTo(2, 1);
  });

  test('the PE core reads its copper to the frame, and open if it is broken', () => {
    const pe = (axis: typeof sound) => ohmsBetween(axis, leadsOff(found), 'cable.drive.PE', 'ground', 1);
    expect(pe(sound)).toBeLessThan(1);
    expect(pe(sound)).toBeGreaterThan(coreOhmsPerMetre * cableMetres);
    expect(pe(draw('pe-broken'))).toBeGreaterThan(1e6);
  });

  test('with the leads off only the screen joins cable and drive', () => {
    expect(leadsOff(found).driveEnd).toMatchObject({ U: false, V: false, W: false });
    expect(ohmsBetween(sound, leadsOff(found), 'cable.drive.U', 'drive.U', 1e6)).toBeGreaterThan(1e8);
    expect(ohmsBetween(sound, leadsOff(found), 'cable.drive.screen', 'ground', 1)).toBeLessThan(0.01);
    expect(ohmsBetween(sound, found, 'cable.drive.U', 'drive.U', 1)).toBeLessThan(0.01);
  });
});

test('a wet connector leaks only while it is plugged', () => {
  const axis = draw('connector-wet');
  const at = (state: AxisState) => ohmsBetween(axis, state, 'motor.U', 'motor.frame', 1e7);
  expect(at(leadsOff(found))).toBeLessThan(20e6);
  expect(at(cableFree(found))).toBeGreaterThan(100e6);
});

test('the feedback has its supply voltage, and loses it under a short until it is unplugged', () => {
  const powered = { ...found, supply: true };
  const at = (axis: typeof sound, state: AxisState) => operatingPoint(axisNetwork(axis, state))('feedback.supply');
  expect(at(sound, powered)).toBeGreaterThan(4.5);
  expect(at(draw('feedback-cable-short'), powered)).toBeLessThan(4.5);
  expect(at(draw('feedback-cable-short'), { ...powered, feedbackAtDrive: false })).toBeCloseTo(5, 2);
  expect(at(draw('feedback-device'), { ...powered, feedbackAtDevice: false })).toBeCloseTo(5, 2);
});

test('with the axis enabled the brake has its voltage', () => {
  const at = (state: AxisState) => {
    const volts = operatingPoint(axisNetwork(sound, state));
    return volts('motor.brake+') - volts('motor.brake-');
  };
  expect(at({ ...found, supply: true })).toBeCloseTo(0, 6);
  expect(at({ ...found, supply: true, enabled: true })).toBeGreaterThan(23);
});

test('the brake coil reads its resistance, and is insulated from the frame', () => {
  expect(ohmsBetween(sound, found, 'motor.brake+', 'motor.brake-', 24)).toBeCloseTo(typical.brakeOhms, 6);
  expect(ohmsBetween(sound, found, 'motor.brake+', 'motor.frame', 1e9)).toBeGreaterThan(100e6);
});
