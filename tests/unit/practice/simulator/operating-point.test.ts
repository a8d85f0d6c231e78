import { describe, expect, test } from 'vitest';
import { type Element, partAround, resistor, source } from '../../../../src/practice/simulator/network.ts';
import { operatingPoint } from '../../../../src/practice/simulator/operating-point.ts';

test('a divider of 1 kΩ and 3 kΩ at 12 V by hand: 9 V', () => {
  const volts = operatingPoint([source('top', 'ground', 12, 1e3), resistor('top', 'ground', 3e3)]);
  expect(volts('top')).toBeCloseTo(9, 9);
  expect(volts('ground')).toBe(0);
});

test('a bridge out of balance by hand: 10 V, arms 1k/2k and 3k/4k, 0.952 V between the middles', () => {
  const volts = operatingPoint([
    source('top', 'ground', 10, 1e-6),
    resistor('top', 'left', 1e3),
    resistor('left', 'ground', 2e3),
    resistor('top', 'right', 3e3),
    resistor('right', 'ground', 4e3),
  ]);
  expect(volts('left') - volts('right')).toBeCloseTo(10 * (2 / 3 - 4 / 7), 6);
});

test('a star of three 9 MΩ to ground reads 3 MΩ if small windings join it', () => {
  const probe = source('U', 'ground', 500, 1e6);
  const windings = ['U', 'V', 'W'].flatMap((pin) => [resistor(pin, 'star', 1.5), resistor(pin, 'ground', 9e6)]);
  const volts = operatingPoint([probe, ...windings]);
  const amperes = (500 - volts('U')) / 1e6;
  expect(volts('U') / amperes / 3e6).toBeCloseTo(1, 5);
});

const diode: Element = { kind: 'diode', anode: 'a', cathode: 'ground', saturation: 1e-9, slope: 0.03 };

test('a diode in series by hand: at 1 mA it drops slope · ln(I/Is + 1) = 0.4145 V', () => {
  const drop = 0.03 * Math.log(1e-3 / 1e-9 + 1);
  const volts = operatingPoint([source('a', 'ground', drop + 1, 1e3), diode]);
  expect(volts('a')).toBeCloseTo(drop, 7);
});

test.each([1, 50, 1000])('a diode in reverse at %d V carries its saturation current', (applied) => {
  const volts = operatingPoint([source('a', 'ground', -applied, 1e6), diode]);
  // The node itself leaks to ground, 100 TΩ.
  expect((volts('a') + applied) / 1e6).toBeCloseTo(1e-9 + applied / 1e14, 15);
});

test('a thousand volts forward converge too', () => {
  const volts = operatingPoint([source('a', 'ground', 1000, 1), diode]);
  expect(volts('a')).toBeGreaterThan(0.5);
  expect(volts('a')).toBeLessThan(1.2);
});

test('a floating part carries no current: both ends have the same voltage', () => {
  const volts = operatingPoint([source('red', 'black', 500, 1e6), resistor('red', 'x', 1e3)]);
  expect(volts('red') - volts('black')).toBeCloseTo(500, 3);
  expect(volts('x') - volts('red')).toBeCloseTo(0, 6);
});

test('a capacitor at rest carries no current, and an unconnected node is at ground', () => {
  const volts = operatingPoint([
    source('a', 'ground', 5, 1e3),
    { kind: 'capacitor', a: 'a', b: 'ground', farads: 1e-6, volts: 3 },
  ]);
  expect(volts('a')).toBeCloseTo(5, 6);
  expect(volts('nowhere')).toBe(0);
});

describe('a gap', () => {
  const behind = (volts: number, ohms: number): Element[] => [
    source('top', 'ground', volts, 1e3),
    { kind: 'gap', a: 'top', b: 'ground', ohms, volts: 200 },
  ];

  test('below its voltage it is open, from it on it is a resistor, either way round', () => {
    expect(operatingPoint(behind(199, 1e3))('top')).toBeCloseTo(199, 3);
    expect(operatingPoint(behind(201, 1e3))('top')).toBeCloseTo(100.5, 3);
    expect(operatingPoint(behind(-400, 1e3))('top')).toBeCloseTo(-200, 3);
  });

  test('one that has broken down stays so, though its voltage is low then', () => {
    expect(operatingPoint(behind(300, 1))('top')).toBeCloseTo(300 / 1001, 5);
  });

  test('one can make the next break down', () => {
    const volts = operatingPoint([
      source('top', 'ground', 300, 1e3),
      { kind: 'gap', a: 'top', b: 'middle', ohms: 1e3, volts: 200 },
      resistor('middle', 'ground', 1e6),
      { kind: 'gap', a: 'middle', b: 'ground', ohms: 1e3, volts: 250 },
    ]);
    expect(volts('top')).toBeCloseTo(200, 0);
    expect(volts('middle')).toBeCloseTo(100, 0);
  });
});

test('only what is connected without passing ground decides a voltage', () => {
  const near = [source('a', 'ground', 1, 1e3), resistor('a', 'b', 1e3), resistor('b', 'ground', 2e3)];
  const far = [source('far', 'ground', 9, 1), resistor('far', 'ground', 5)];
  expect(partAround([...far, ...near], ['b'])).toEqual(near);
  expect(operatingPoint(partAround([...far, ...near], ['b']))('b')).toBeCloseTo(0.5, 6);
});
