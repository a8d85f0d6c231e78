import { describe, expect, test } from 'vitest';
import { figureOf } from '../../../../src/kernel/reading/reading.ts';
import { exactInstruments, middle } from '../../../../src/practice/figures/middle-axis.ts';
import {
  ringAmperes,
  shownInductance,
  type Winding,
} from '../../../../src/practice/figures/shorted-turn/inductance.ts';
import { shortedMotor, shortedWinding } from '../../../../src/practice/figures/shorted-turn/model.ts';
import { asFound, cableFree } from '../../../../src/practice/simulator/axis-state.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const winding: Winding = { turns: 100, henries: 8e-3, ohms: 1.6 };

test.each([0, 1, 5, 40])('the resistances with %d shorted turns are those of the simulator', (turns) => {
  const state = cableFree(asFound(20, 20));
  const leads = { red: 'motor.W', black: 'motor.U' };
  const again = measure(shortedMotor(turns), state, exactInstruments, 'milliohms', leads, middle);
  const { ohms } = shortedWinding(turns, 1000);
  expect(ohms['W–U'].text).toBe(again.text);
  // Each shorted turn takes a hundredth of one of the two windings between the leads.
  const sound = figureOf(ohms['V–W'].reading) ?? 0;
  expect((figureOf(ohms['U–V'].reading) ?? 0) / sound).toBeCloseTo(1 - turns / 200, 3);
});

test('one shorted turn passes the limit for the balance, and twenty fail it', () => {
  expect(shortedWinding(1, 1000).unbalancePercent).toBeLessThan(2);
  expect(shortedWinding(20, 1000).unbalancePercent).toBeGreaterThan(5);
  expect(shortedWinding(0, 1000).unbalancePercent).toBeCloseTo(0, 9);
});

/** Solves the two loops of the coupled coils in complex numbers, as an independent check of the formula. */
function byLoops({ turns, henries, ohms }: Winding, shorted: number, hertz: number): number {
  const omega = 2 * Math.PI * hertz;
  const [l1, l2] = [henries * (1 - shorted / turns) ** 2, henries * (shorted / turns) ** 2];
  const m = 0.9 * Math.sqrt(l1 * l2);
  const r2 = (ohms * shorted) / turns;
  // 1 A in the first coil; 0 = (r2 + jωl2)·i2 + jωm·1.
  const size = r2 ** 2 + (omega * l2) ** 2;
  const i2 = { re: (-omega * m * omega * l2) / size, im: (-omega * m * r2) / size };
  return (omega * l1 + omega * m * i2.re) / omega;
}

describe('the inductance of a winding with shorted turns', () => {
  test.each([
    [1, 100],
    [1, 1000],
    [5, 1000],
    [40, 1000],
  ])('%d turns at %d Hz: as the two loops solved in complex numbers', (shorted, hertz) => {
    expect(shownInductance(winding, shorted, hertz)).toBeCloseTo(byLoops(winding, shorted, hertz), 9);
  });

  test('with no turn shorted it is that of the winding, at any frequency', () => {
    expect(shownInductance(winding, 0, 100)).toBe(8e-3);
    expect(shownInductance(winding, 0, 1000)).toBe(8e-3);
  });

  test('it falls with each turn, and further at a higher frequency', () => {
    const falls = [0, 1, 2, 5, 12, 40].map((shorted) => shownInductance(winding, shorted, 1000));
    expect(falls).toEqual([...falls].sort((a, b) => b - a));
    expect(shownInductance(winding, 1, 1000)).toBeLessThan(shownInductance(winding, 1, 100));
  });

  test('a perfect ring leaves 1 − k² of the rest', () => {
    const cold = { ...winding, ohms: 1e-9 };
    expect(shownInductance(cold, 10, 1000) / (8e-3 * 0.9 ** 2)).toBeCloseTo(1 - 0.9 ** 2, 6);
  });
});

test('the ring of one turn: a hundredth of the volts over a hundredth of the ohms', () => {
  // 0.6 V, 16 mΩ, 0.8 µH at 67 Hz: 0.34 mΩ.
  expect(ringAmperes(winding, 1, 60, 67)).toBeCloseTo(37.49, 2);
  expect(ringAmperes(winding, 0, 60, 67)).toBe(0);
});
