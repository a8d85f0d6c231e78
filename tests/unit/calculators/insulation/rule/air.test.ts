import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../../../../src/kernel/electrics/dew-point.ts';
import { celsius, missing } from '../../../../../src/kernel/reading/reading.ts';
import { air, alike, assess, codes, find, winding } from './sound.ts';

describe('air of which nothing is stated', () => {
  it('is a caution beside a winding below room temperature, and none at it', () => {
    expect(find(winding('19 °C'), 'air-not-stated')).toEqual({
      code: 'air-not-stated',
      severity: 'caution',
      readings: ['ambient', 'humidity'],
      limits: [],
    });
    expect(codes(winding('20 °C'))).not.toContain('air-not-stated');
    expect(codes({ windingTemperature: missing })).not.toContain('air-not-stated');
  });
});

describe('air of which half is stated', () => {
  it.each([
    ['21 °C', 'caution'],
    ['20 °C', 'undecided'],
  ])('beside a winding at %s and air at 20 °C: %s', (at, severity) => {
    const change = { ...air('20 °C', ''), ...winding(at) };
    expect(find(change, 'dew-point-incomplete')).toEqual({
      code: 'dew-point-incomplete',
      severity,
      readings: ['ambient', 'humidity'],
      limits: [],
    });
  });
});

describe('a winding at the dew point', () => {
  it('is wet at just that temperature', () => {
    const dew = dewPoint(25, 80) ?? Number.NaN;
    const at = (value: number) => ({ ...air('25 °C', '80 %'), windingTemperature: celsius(value) });
    expect(find(at(dew), 'winding-at-dew-point')).toEqual({
      code: 'winding-at-dew-point',
      severity: 'undecided',
      readings: ['windingTemperature', 'ambient', 'humidity'],
      limits: ['magnus'],
      windingCelsius: dew,
      dewPointCelsius: dew,
    });
    expect(codes(at(dew + 0.001))).not.toContain('winding-at-dew-point');
  });

  it('is not said of a winding whose temperature nobody measured', () => {
    const change = { ...air('25 °C', '80 %'), windingTemperature: missing };
    expect(codes(change)).not.toContain('winding-at-dew-point');
    expect(assess({ ...change, ...alike('1k') }).verdict).toBe('no-go');
  });

  it('is not said of a dry one, of which the air adds nothing', () => {
    expect(codes({ ...air('25 °C', '50 %') })).toEqual(codes({}));
  });
});
