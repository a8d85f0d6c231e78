import { describe, expect, it } from 'vitest';
import { assessBendTest } from '../../src/calculators/bend-test/rule/assess.ts';
import { type BendInput, type LoopId, loopIds, type Sweep } from '../../src/calculators/bend-test/rule/input.ts';
import { limit } from '../../src/kernel/limits.ts';
import { metres, missing, ohms, volts } from '../../src/kernel/reading/reading.ts';

/** Three positions that hold, and four loops of these ohms at rest and while moved. */
function moved(loopOhms: number, length: number, section: number): BendInput {
  const one = ohms(loopOhms, 0.001);
  const sweep: Sweep = { rest: one, lowest: one, highest: one, after: one };
  const none: Sweep = { rest: missing, lowest: missing, highest: missing, after: missing };
  const loops = (used: readonly LoopId[]) =>
    Object.fromEntries(loopIds.map((id) => [id, used.includes(id) ? sweep : none])) as Record<LoopId, Sweep>;
  const good = { U: ohms(1.8e9), V: ohms(1.8e9), W: ohms(1.8e9) };
  return {
    ...{ end: 'off', meter: 'hold', moved: 'twice', screen: 'none', idle: 'none', movedAgain: 'not-stated' },
    ...{ loops: loops(['UV', 'VW', 'WU', 'PE']), again: loops([]), whileOn: 'at-rest', testVoltage: volts(500) },
    ...{ positions: [good, good, good], badAgain: { U: missing, V: missing, W: missing } },
    ...{ metres: metres(length), squareMillimetres: section },
  };
}

/** Source: IEC 60228, class 5, Ω/km at 20 °C, read in two texts that reprint the tables. There and back. */
describe('a loop of two sound cores at rest, IEC 60228', () => {
  it.each([
    [20, 1.5, 13.3],
    [60, 2.5, 7.98],
    [100, 4, 4.95],
    [40, 6, 3.3],
    [25, 10, 1.91],
  ])('%d m of %d mm²', (length, section, perKilometre) => {
    const copper = (2 * perKilometre * length) / 1000;
    expect(assessBendTest(moved(copper, length, section)).verdict).toBe('go');
    const solved = assessBendTest(moved(copper, length, section)).findings.find((one) => one.code === 'bend-core-ohms');
    expect(solved?.ohms.U).toBeCloseTo((perKilometre * length) / 1000, 9);
    expect(solved?.table).toBeCloseTo((perKilometre * length) / 1000, 12);
    // A core at 70 °C has a fifth more than at 20 °C (α of copper 0.00393 per kelvin, IEC 60028).
    expect(assessBendTest(moved(copper * (1 + 0.00393 * 50), length, section)).verdict).toBe('go');
    // Two and a half times as much, and a third, belong to no such cable.
    expect(assessBendTest(moved(copper * 2.5 + 0.3, length, section)).verdict).toBe('undecided');
    expect(assessBendTest(moved(copper / 3, length, section)).verdict).toBe('undecided');
  });
});

/** Source: IEC 60204-1, 18.3: 500 V DC, 1 MΩ; the clause number is from memory. */
it('the test at rest has the voltage and the minimum of the machine standard', () => {
  expect(limit('test-voltage-machine-circuits')).toMatchObject({
    range: { from: 500, to: 500 },
    source: 'iec-60204-1',
  });
  expect(limit('machine-minimum-60204')).toMatchObject({ value: 1e6, source: 'iec-60204-1' });
});

/**
 * Source: the law of loops itself. Any three cores, joined at the far end, are found again from the three loops by half of
 * two less the third.
 */
it('three loops give three cores', () => {
  const cores = { U: 0.21, V: 0.64, W: 0.33 };
  const sweep = (one: number): Sweep => {
    const read = ohms(one, 0.0001);
    return { rest: read, lowest: read, highest: read, after: read };
  };
  const input = moved(0.5, 20, 1.5);
  const loops = {
    ...input.loops,
    ...{ UV: sweep(cores.U + cores.V), VW: sweep(cores.V + cores.W), WU: sweep(cores.W + cores.U) },
  };
  const solved = assessBendTest({ ...input, loops }).findings.find((one) => one.code === 'bend-core-ohms');
  for (const phase of ['U', 'V', 'W'] as const) expect(solved?.ohms[phase]).toBeCloseTo(cores[phase], 9);
});
