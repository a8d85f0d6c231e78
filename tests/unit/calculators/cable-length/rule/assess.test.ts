import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessCableLength } from '../../../../../src/calculators/cable-length/rule/assess.ts';
import type { CableLengthInput } from '../../../../../src/calculators/cable-length/rule/input.ts';
import { type CableInsulation, lengthForResistance } from '../../../../../src/kernel/electrics/cable-insulation.ts';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
} from '../../../../../src/kernel/reading/reading.ts';
import { runs } from '../../../../support/runs.ts';
import { rank } from '../../../../support/verdict-rank.ts';

const millimetres = (value: number): Reading => ({ kind: 'value', value, unit: 'mm', resolution: 0.01 });
const metres = (value: number): Reading => ({ kind: 'value', value, unit: 'm', resolution: 1 });

/** A core of 2.5 mm²: conductor 2.00 mm, over the insulation 3.40 mm, log10 of the ratio 0.2304. */
const run = (
  length: number,
  reading: Reading,
  temperature: Reading = celsius(20),
  insulation: CableInsulation = 'pvc',
): CableLengthInput => ({
  insulation,
  insulationDiameter: millimetres(3.4),
  conductorDiameter: millimetres(2),
  length: metres(length),
  reading,
  temperature,
});

const codes = (input: CableLengthInput) => assessCableLength(input).findings.map(({ code }) => code);

describe('assessCableLength', () => {
  it.each<[string, CableLengthInput, string, string]>([
    // The least value of a new PVC core of 30 m is 500 · 0.2304 · 304.8 / 30 = 1170 MΩ.
    ['short and high', run(30, ohms(9e9)), 'go', 'cable-passes-both'],
    ['short, at the point, below a new cable', run(30, ohms(200e6)), 'go', 'cable-below-new'],
    ['short and below the after-trip limit', run(30, ohms(60e6)), 'no-go', 'cable-fails'],
    // 1000 m: 500 · 0.2304 · 0.3048 = 35 MΩ.
    ['long, explained by its length', run(1000, ohms(60e6)), 'undecided', 'cable-long-enough-to-explain'],
    ['long, below what its length explains', run(1000, ohms(10e6)), 'no-go', 'cable-fails'],
    ['long and above the after-trip limit', run(1000, ohms(180e6)), 'go', 'cable-passes-both'],
    ['a cold cable flatters', run(30, ohms(120e6), celsius(5)), 'undecided', 'cable-too-close'],
    ['a bound below the after-trip limit', run(30, overOhms(50e6)), 'undecided', 'cable-too-close'],
    ['over-range on a range not noted', run(30, overOhms()), 'undecided', 'cable-too-close'],
    ['a bound above all limits', run(30, overOhms(4e9)), 'go', 'cable-passes-both'],
    ['under-range', run(30, underOhms(1000)), 'no-go', 'cable-below-machine-minimum'],
    ['no temperature, far below', run(30, ohms(1e3), missing), 'no-go', 'cable-below-machine-minimum'],
    [
      'no temperature, below the after-trip limit',
      run(30, ohms(9e6), missing),
      'undecided',
      'cable-temperature-missing',
    ],
    ['no temperature, far above', run(30, ohms(9e9), missing), 'undecided', 'cable-temperature-missing'],
    // The table ends at 26.7 °C; the minimum of the machine standard does not need it.
    ['nearly a short, warmer than the table', run(30, ohms(5e3), celsius(30)), 'no-go', 'cable-below-machine-minimum'],
    ['cross-linked, nearly a short', run(30, ohms(5e3), celsius(20), 'xlpe'), 'no-go', 'cable-below-machine-minimum'],
    ['a short and no length', { ...run(30, ohms(5e3)), length: missing }, 'no-go', 'cable-below-machine-minimum'],
    ['at the minimum of machines', run(30, ohms(1e6), celsius(30)), 'undecided', 'cable-too-close'],
    ['no reading', run(30, missing), 'undecided', 'cable-reading-missing'],
    ['no length', { ...run(30, ohms(9e9)), length: missing }, 'undecided', 'cable-data-missing'],
    [
      'a conductor wider than its insulation',
      { ...run(30, ohms(9e9)), conductorDiameter: millimetres(3.4) },
      'undecided',
      'diameters-impossible',
    ],
  ])('%s', (_name, input, verdict, code) => {
    expect(assessCableLength(input).verdict).toBe(verdict);
    expect(codes(input)).toContain(code);
  });

  it('applies the point to a short run, and says from which length it does not', () => {
    expect(codes(run(30, ohms(9e9)))).toContain('point-still-holds');
    expect(codes(run(1000, ohms(9e9)))).toContain('point-holds-no-more');
    // 500 · log10(1.7) · 304.8 m / 100 MΩ
    expect(lengthForResistance(500, 3.4, 2, 100e6)).toBeCloseTo(351.2, 1);
  });

  it('corrects a PVC reading by the table, and never beyond it', () => {
    const at = (temperature: number) => assessCableLength(run(30, ohms(1e9), celsius(temperature))).corrected;
    expect(at(20)).toEqual({ lo: 1.33e9, hi: 1.33e9 });
    expect(at(30)).toEqual({ lo: 2.93e9, hi: Number.POSITIVE_INFINITY });
    expect(at(5)).toEqual({ lo: 0, hi: 0.79e9 });
  });

  it('uses only that warmth lowers the reading for cross-linked polyethylene', () => {
    const at = (temperature: number) => assessCableLength(run(30, ohms(1e9), celsius(temperature), 'xlpe')).corrected;
    expect(at(15.6)).toEqual({ lo: 1e9, hi: 1e9 });
    expect(at(30)).toEqual({ lo: 1e9, hi: Number.POSITIVE_INFINITY });
    expect(at(5)).toEqual({ lo: 0, hi: 1e9 });
  });
});

const anyRun = fc.record({
  insulation: fc.constantFrom<CableInsulation>('pvc', 'xlpe'),
  length: fc.integer({ min: 2, max: 3000 }),
  reading: fc.double({ min: 3, max: 11, noNaN: true }).map((power) => 10 ** power),
  temperature: fc.integer({ min: -10, max: 50 }),
});

describe('monotone safety', () => {
  it('a lower reading, a wider accuracy or a missing figure never leads nearer to go', () => {
    fc.assert(
      fc.property(
        anyRun,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ insulation, length, reading, temperature }, share) => {
          const input = run(length, ohms(reading), celsius(temperature), insulation);
          const { verdict } = assessCableLength(input);
          expect(rank[assessCableLength({ ...input, reading: ohms(reading * share) }).verdict]).toBeLessThanOrEqual(
            rank[verdict],
          );
          for (const weaker of [
            { ...input, instrument: { percent: 30 } },
            { ...input, temperature: missing },
            { ...input, length: missing },
            { ...input, reading: missing },
            { ...input, reading: overOhms(reading * share) },
          ]) {
            const after = assessCableLength(weaker).verdict;
            if (after === 'go') expect(verdict).toBe('go');
          }
        },
      ),
      { numRuns: runs },
    );
  });

  it('no length makes a go of a reading below the after-trip limit', () => {
    fc.assert(
      fc.property(anyRun, ({ insulation, length, reading, temperature }) => {
        const input = run(length, ohms(Math.min(reading, 99e6)), celsius(temperature), insulation);
        expect(assessCableLength(input).verdict).not.toBe('go');
      }),
      { numRuns: runs },
    );
  });
});
