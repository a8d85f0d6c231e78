import { describe, expect, it } from 'vitest';
import { type CableBuild, cableFloor, lengthExplains } from '../../../../src/kernel/assessment/cable-floor.ts';
import { missing } from '../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../support/typed.ts';

const floorOf = (metres: string, material: CableBuild['material'], temperature: string) =>
  cableFloor({ metres: typed(metres, 'length'), material, temperature: typed(temperature, 'temperature') });
const exactly = (ohms: number) => ({ lo: ohms, hi: ohms });

describe('the floor of a sound cable in service', () => {
  // R = K · log10(D/d) per length (ICEA, K = 500 MΩ·kft for PVC, recalled), thinnest wall 0.15, a tenth of it in service:
  // 0.1 · 500 MΩ · 0.15 · 304.8 m / 56 m = 40.8 MΩ.
  it('follows length and material', () => {
    expect(floorOf('56 m', 'pvc', '15.6 °C')?.ohms).toBeCloseTo(40.8e6, -5);
    expect(floorOf('112 m', 'pvc', '15.6 °C')?.ohms).toBeCloseTo(20.4e6, -5);
    expect(floorOf('56 m', 'xlpe', '15.6 °C')?.ohms).toBeCloseTo(1633e6, -6);
  });

  it('names the limits behind it', () => {
    expect(floorOf('56 m', 'pvc', '20 °C')?.limits).toEqual([
      'cable-constant-pvc',
      'cable-thin-wall',
      'cable-in-service',
      'cable-conversion-thermoplastic',
    ]);
    expect(floorOf('56 m', 'xlpe', '20 °C')?.limits).toEqual([
      'cable-constant-xlpe',
      'cable-thin-wall',
      'cable-in-service',
    ]);
  });

  it('is unknown without a length or a material', () => {
    expect(cableFloor({ metres: missing, material: 'pvc', temperature: typed('20', 'temperature') })).toBeUndefined();
    expect(floorOf('0 m', 'pvc', '20 °C')).toBeUndefined();
    expect(floorOf('56 m', 'not-stated', '20 °C')).toBeUndefined();
  });
});

describe('a reading below the after-trip limit', () => {
  it.each([
    // 26 °C: by the table of FED-STD-228A between 2.39 at 25 °C and 2.93 at 26.7 °C; 40.8 MΩ / 2.70 is 15.1 MΩ.
    ['56 m', 'pvc', '26 °C', 77e6, true],
    ['56 m', 'pvc', '26 °C', 15.5e6, true],
    ['56 m', 'pvc', '26 °C', 14.5e6, false],
    // Warmer than the table: only the last factor is sure.
    ['56 m', 'pvc', '40 °C', 14.5e6, true],
    ['56 m', 'pvc', '40 °C', 13.5e6, false],
    // Without a temperature neither.
    ['56 m', 'pvc', '', 77e6, false],
    // The floor of 10 m lies above the after-trip limit: length explains nothing there.
    ['10 m', 'pvc', '20 °C', 90e6, false],
    ['56 m', 'xlpe', '20 °C', 90e6, false],
    ['56 m', 'xlpe', '15 °C', 90e6, false],
    // Below the minimum of the machine standard no length explains a reading.
    ['3000 m', 'pvc', '20 °C', 0.9e6, false],
    ['3000 m', 'pvc', '20 °C', 1e6, true],
  ] as const)('%s of %s at “%s”, %d Ω: explained %s', (metres, material, at, ohms, explained) => {
    const floor = floorOf(metres, material, at);
    expect(lengthExplains(exactly(ohms), floor)).toBe(explained);
  });

  it('whose bounds lie on both sides is not explained', () => {
    const floor = floorOf('56 m', 'pvc', '26 °C');
    expect(lengthExplains({ lo: 14e6, hi: 16e6 }, floor)).toBe(false);
  });

  it('of a cable whose length is unknown is not explained', () => {
    expect(lengthExplains(exactly(90e6), undefined)).toBe(false);
  });
});
