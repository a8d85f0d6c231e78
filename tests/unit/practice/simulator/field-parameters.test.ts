import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { seeded } from '../../../../src/kernel/random.ts';
import { asFound, cableFree, leadsOff, reconnected, stripped } from '../../../../src/practice/simulator/axis-state.ts';
import { anyCanFall, axisFalls } from '../../../../src/practice/simulator/brake.ts';
import { afterWaiting } from '../../../../src/practice/simulator/discharge.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { field, fieldShares, type PropertyShares } from '../../../../src/practice/simulator/field-figures.ts';
import { drawFieldAxis, equippedFor } from '../../../../src/practice/simulator/field-parameters.ts';
import { drawFieldInstruments, drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

const draws = 600;
const axes = Array.from({ length: draws }, (_, seed) => drawFieldAxis(seeded(seed)));
const shareOf = (holds: (axis: (typeof axes)[number]) => boolean) => axes.filter(holds).length / draws;

/** Only these properties, for sure. */
const only = (...names: (keyof PropertyShares)[]): PropertyShares => ({
  ...(Object.fromEntries(Object.keys(fieldShares).map((name) => [name, 0])) as unknown as PropertyShares),
  ...Object.fromEntries(names.map((name) => [name, 1])),
});

const soundWith = (seed: number, ...names: (keyof PropertyShares)[]) => {
  const random = seeded(seed);
  return faultedAxis('nuisance', drawFieldAxis(random, only(...names)), random);
};

describe('the axes of the field', () => {
  test('the same seed gives the same axis', () => {
    expect(drawFieldAxis(seeded(3))).toEqual(drawFieldAxis(seeded(3)));
  });

  test.each([
    ['neighbour', ({ neighbour }) => neighbour !== undefined],
    ['brakingResistor', ({ brakingOhms }) => brakingOhms !== undefined],
    ['seriesCapacitors', ({ balance }) => balance !== undefined],
    ['oldMotor', ({ frameInsulationOhms }) => frameInsulationOhms.U < 300e6],
    ['oneCable', ({ oneCable }) => oneCable],
  ] satisfies [keyof PropertyShares, (axis: (typeof axes)[number]) => boolean][])(
    '%s is as common as its share says',
    (name, holds) => {
      const share = fieldShares[name];
      // Four standard deviations of a count.
      expect(Math.abs(shareOf(holds) - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / draws));
    },
  );

  test('an axis that can fall has its brake in the motor cable', () => {
    expect(axes.every(({ gravityLoaded, idleCores }) => !gravityLoaded || idleCores.includes('brake+'))).toBe(true);
  });

  test('every bus is below what falsifies a resistance after the time on the label, but with a balance open', () => {
    for (const [seed, parameters] of axes.slice(0, 60).entries()) {
      const axis = faultedAxis('nuisance', parameters, seeded(seed));
      const { upperOhms = 0, lowerOhms = 0 } = parameters.balance ?? {};
      const later = afterWaiting(axis, { ...asFound(20, 20), busVolts: parameters.supplyVolts }, 600);
      const isOpen = Math.max(upperOhms, lowerOhms) === field.openOhms;
      expect(Math.abs(later.busVolts) < 0.1 || isOpen, `seed ${seed}: ${later.busVolts} V`).toBe(true);
    }
  });

  test('an old motor and a PVC cable read below the after-trip point, and a long thin PE about an ohm, though all are sound', () => {
    const exact = { ...drawInstruments(seeded(1)), error: 0, leadOhms: 0 };
    const found = asFound(26, 26);
    const read = (seed: number, name: keyof PropertyShares) => {
      const axis = soundWith(seed, name);
      const free = cableFree(found);
      const [state, red] =
        name === 'oldMotor'
          ? [free, 'motor.U']
          : [{ ...free, jumpers: [['cable.drive.screen', 'ground'] as [string, string]] }, 'cable.drive.U'];
      const { reading } = measure(axis, state, exact, 'insulation', { red, black: 'ground' }, seeded(2));
      return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
    };
    const seeds = Array.from({ length: 40 }, (_, seed) => seed);
    const low = (name: keyof PropertyShares) =>
      seeds.filter((seed) => read(seed, name) < limitValue('after-trip-point'));
    expect(low('oldMotor').length).toBeGreaterThan(30);
    expect(low('pvcCable').length).toBeGreaterThan(0);
    expect(Math.min(...seeds.map((seed) => read(seed, 'oldMotor')))).toBeGreaterThan(5e6);
    const metres = soundWith(1, 'longCable', 'thinPe').parameters;
    expect(metres.cableMetres * metres.peOhmsPerMetre).toBeGreaterThan(0.5);
  });

  test('what a fault needs is fitted, and nothing else changes', () => {
    const plain = drawAxis(seeded(4));
    expect(equippedFor(plain, ['cable.U', 'ground'], seeded(1))).toEqual(plain);
    const fitted = equippedFor(plain, ['cable.brake+', 'braking.minus', 'neighbour.motor.V'], seeded(1));
    expect(fitted.idleCores).toEqual(['brake+', 'brake-']);
    expect(fitted.brakingOhms).toBeGreaterThan(0);
    expect(fitted.neighbour?.windingOhms).toBeGreaterThan(0);
  });
});

test('meters of the field have 0.3 to 3 V of either polarity, and seek their range from either end', () => {
  const meters = Array.from({ length: 300 }, (_, seed) => drawFieldInstruments(seeded(seed)).ohms);
  const volts = meters.flatMap(({ ranges }) => ranges.map(({ sourceVolts }) => sourceVolts));
  expect(volts.every((one) => Math.abs(one) >= 0.3 && Math.abs(one) <= 3)).toBe(true);
  expect(volts.some((one) => one < 0) && volts.some((one) => one > 2)).toBe(true);
  expect(new Set(meters.map(({ ranging }) => ranging))).toEqual(new Set(['up', 'down']));
  // Within one meter the polarity is one.
  expect(
    meters.every(({ ranges }) => new Set(ranges.map(({ sourceVolts }) => Math.sign(sourceVolts))).size === 1),
  ).toBe(true);
});

describe('the other axis falls too', () => {
  const neighbour = { windingOhms: 1.6, frameInsulationOhms: 1e9, gravityLoaded: true };
  const axis = { ...drawAxis(seeded(1)), gravityLoaded: false, neighbour };
  const enabled = { ...asFound(20, 20), supply: true, enabled: true };

  test('at an enable that trips, or with its leads off; not on its support', () => {
    expect(anyCanFall(axis)).toBe(true);
    expect(axisFalls(axis, enabled, false)).toBe(false);
    expect(axisFalls(axis, enabled, true)).toBe(true);
    expect(axisFalls(axis, { ...enabled, neighbourLeads: false }, false)).toBe(true);
    expect(axisFalls(axis, { ...enabled, neighbourLeads: false, axisSupported: true }, true)).toBe(false);
    expect(axisFalls({ ...axis, neighbour: { ...neighbour, gravityLoaded: false } }, enabled, true)).toBe(false);
  });
});

test('stripped, nothing but the supply is left on the drive; reconnected, it is as it was found', () => {
  const found = { ...asFound(30, 20), axisSupported: true, busVolts: 0.2 };
  const bare = stripped(found);
  expect(bare).toMatchObject({
    driveEnd: { U: false, V: false, W: false },
    idleCores: 'to-pe',
    feedbackAtDrive: false,
    brakingResistor: false,
    dcLink: false,
    neighbourLeads: false,
    neighbourFeedback: false,
  });
  expect(reconnected({ ...leadsOff(bare), bent: true, jumpers: [['cable.drive.U', 'ground']] })).toEqual(found);
});
