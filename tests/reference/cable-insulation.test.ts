import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { coreInsulation } from '../../src/kernel/electrics/cable-insulation.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limitPoints, limitRange, limitValue } from '../../src/kernel/limits.ts';

/** The constant K in MΩ·1000 ft for a resistivity in Ω·m, from R = ρ/(2πL)·ln(D/d). */
const constantFromResistivity = (ohmMetres: number) => (ohmMetres * Math.LN10) / (2 * Math.PI * 304.8 * 1e6);

/**
 * Source: textbooks on cables, R = ρ/(2πL)·ln(D/d), read; evaluated here by mathjs with units, apart from our code.
 * The law is the same as R = K·log10(D/d) for 1000 ft.
 */
describe('the formula against the textbook law, in units', () => {
  it.each([
    ['PVC', 1e13, 3.4, 2, 100],
    ['PVC', 1e13, 5.2, 3.6, 35],
    ['cross-linked polyethylene', 1e14, 3.4, 2, 100],
    ['cross-linked polyethylene', 1e14, 12.4, 8, 820],
  ])('%s of %d Ω·m, %d over %d mm, %d m', (_name, resistivity, outer, inner, metres) => {
    const scope = { rho: resistivity, D: outer, d: inner, L: metres };
    const ohms = evaluate('(rho ohm m / (2 pi L m) * log((D mm) / (d mm))) to ohm', scope).toNumber('ohm');
    expect(coreInsulation(constantFromResistivity(resistivity), outer, inner, metres) / ohms).toBeCloseTo(1, 9);
  });

  it('is inversely proportional to the length', () => {
    expect(coreInsulation(500, 3.4, 2, 200)).toBeCloseTo(coreInsulation(500, 3.4, 2, 100) / 2, 6);
  });
});

/** Source: FED-STD-228A, table I, to 15.6 °C (60 °F); read. Repeated here on purpose. */
describe('the conversion table of cable insulation', () => {
  it.each([
    ['cable-conversion-rubber', [0.6, 1, 1.48, 2.29, 2.65]],
    ['cable-conversion-thermoplastic', [0.79, 1, 1.33, 2.39, 2.93]],
    ['cable-conversion-heat-resistant-rubber', [0.73, 1, 1.28, 1.69, 1.86]],
  ] as const)('%s', (id, factors) => {
    const celsius = [10, 15.6, 20, 25, 26.7];
    expect(limitPoints(id)).toEqual(celsius.map((temperature, row) => [temperature, factors[row]]));
    expect(limitLabels[id].recalled).toBe(false);
  });
});

/** Source: ICEA and IPCEA specifications; recalled from memory. Resistivities: textbooks; read. */
describe('the constants K', () => {
  it('are floors: far below what dry insulation of a textbook has', () => {
    expect(constantFromResistivity(limitValue('cable-resistivity-pvc'))).toBeCloseTo(12_023, 0);
    expect(constantFromResistivity(limitValue('cable-resistivity-xlpe'))).toBeCloseTo(120_232, 0);
    const typical = { pvc: limitValue('cable-resistivity-pvc'), xlpe: limitValue('cable-resistivity-xlpe') };
    expect(limitRange('cable-constant-pvc').to).toBeLessThan(constantFromResistivity(typical.pvc));
    expect(limitRange('cable-constant-xlpe').to).toBeLessThan(constantFromResistivity(typical.xlpe));
  });

  it('say that they were recalled', () => {
    expect(limitLabels['cable-constant-pvc'].recalled).toBe(true);
    expect(limitLabels['cable-constant-xlpe'].recalled).toBe(true);
  });
});
