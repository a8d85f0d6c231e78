import { expect, test } from 'vitest';
import { exactInstruments, leadsOffAt20, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { held, heldAxis, hookUps, type Tips } from '../../../../src/practice/figures/probe-climb/model.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const every: readonly Tips[] = ['plus-to-U', 'U-to-minus', 'U-to-plus'];

test.each(every)(
  '%s: it shows what the simulator measures after that time, and in the end the settled figure',
  (tips) => {
    const again = (options: object) =>
      measure(heldAxis(), leadsOffAt20, exactInstruments, 'ohms', hookUps[tips], middle, options);
    expect(held(tips, 20).text).toBe(again({ heldSeconds: 20 }).text);
    const settled = again({}).reading;
    if (settled.kind !== 'value') throw new Error('over-range');
    expect(held(tips, 1200).ohms / settled.value).toBeCloseTo(1, 2);
  },
);

test.each(every)('%s: the figure climbs, and the current into the capacitor dies away', (tips) => {
  const course = [0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300].map((seconds) => held(tips, seconds));
  for (const [index, now] of course.entries()) {
    const before = course[index - 1];
    if (before === undefined) continue;
    expect(now.ohms).toBeGreaterThan(before.ohms);
    expect(now.chargingAmperes).toBeLessThan(before.chargingAmperes);
    expect(now.chargingAmperes).toBeLessThan(now.amperes);
  }
  expect(course[course.length - 1]?.chargingAmperes).toBeLessThan(1e-9);
});

// I = C·dV/dt, any textbook of circuits.
test.each(every)('%s: the current into the capacitor is its capacitance times the rise of its voltage', (tips) => {
  const [before, now, after] = [held(tips, 9.5), held(tips, 10), held(tips, 10.5)];
  const rise = Math.abs(after.busVolts - before.busVolts);
  expect(now.chargingAmperes / (heldAxis().parameters.busFarads * rise)).toBeCloseTo(1, 1);
});
