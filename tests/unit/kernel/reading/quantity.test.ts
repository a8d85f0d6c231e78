import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type Quantity, quantityOfUnit, quantityRules } from '../../../../src/kernel/reading/quantity.ts';

const scaleOf = (quantity: Quantity, text: string) => {
  const meaning = quantityRules[quantity].meaning(text);
  return meaning.kind === 'scale' ? meaning.exponent : meaning.kind;
};

describe('the units that people write', () => {
  const rows: [Quantity, number | string, string[]][] = [
    ['resistance', 0, ['Ω', 'ohm', 'ohms', 'Ohm', 'OHM', 'R', 'r', 'ω']],
    ['resistance', 3, ['k', 'K', 'kΩ', 'kohm', 'KOHM', 'k ohm', 'k-ohm', 'kilo', 'kilohm', 'kilo ohms', 'k Ω']],
    ['resistance', 6, ['M', 'MΩ', 'Mohm', 'MOHM', 'MOhms', 'M Ω', 'meg', 'MEG', 'megohm', 'mega', 'Megaohm']],
    ['resistance', 9, ['G', 'g', 'GΩ', 'Gohm', 'gig', 'giga', 'gigaohm', 'G Ω']],
    ['resistance', 12, ['T', 'TΩ', 'tera', 'teraohm']],
    ['resistance', -3, ['mΩ', 'milliohm', 'milliohms', 'milli ohm', 'milli', 'Milliohm', 'MILLIOHM']],
    ['resistance', -6, ['uΩ', 'uohm', 'microohm', 'Microohm', 'micro ohm']],
    ['resistance', 'unknown', ['V', 'U', 'UΩ', 'x', 'MM', 'kk', 'Ωk', 'mega mega', '°C', '%', 'k k', 'ohmmeter']],
    ['voltage', 0, ['V', 'v', 'volt', 'Volts', 'VDC', 'V dc', 'V AC', 'vac']],
    ['voltage', -3, ['mV', 'millivolt', 'millivolts', 'mV dc']],
    ['voltage', 3, ['kV', 'KV', 'kv', 'k', 'kilovolts', 'kV DC']],
    ['voltage', 'unknown', ['Ω', 'uV', 'A', '°', 'Mv']],
    ['temperature', 0, ['°C', 'C', 'c', 'deg C', 'celsius', 'degC', '° c']],
    ['temperature', 'convert', ['°F', 'F', 'f', 'fahrenheit', 'deg F']],
    ['temperature', 'unknown', ['K', 'kelvin', '°', 'Ω', 'm°C']],
    ['percent', 0, ['%', 'percent', '% RH', '%rh']],
    ['percent', 'unknown', ['ppm', 'RH', '‰']],
    ['counts', 0, ['counts', 'count', 'digits', 'digit', 'd', 'dgt', 'dgts']],
    ['duration', 0, ['min', 'm', 'mins', 'minute', 'minutes']],
    ['duration', 'convert', ['s', 'sec', 'secs', 'seconds', 'h', 'hr', 'hours']],
    ['length', 0, ['m', 'metre', 'meters']],
    ['length', 3, ['km', 'kilometres']],
    ['length', 'convert', ['ft', 'feet', 'foot']],
    ['length', 'unknown', ['mm', 'yd', 'Ω']],
    ['diameter', 0, ['mm', 'millimetres']],
    ['diameter', 1, ['cm']],
    ['diameter', 'convert', ['in', 'inches']],
    ['diameter', 'unknown', ['m', 'ft', 'AWG']],
    ['duration', 'unknown', ['d', 'ms', 'minuteses']],
    ['power', 0, ['W', 'w', 'watt', 'Watts']],
    ['power', 3, ['kW', 'KW', 'k W', 'kilowatts']],
    ['power', 'unknown', ['mW', 'MW', 'V', 'hp', 'VA']],
    ['seconds', -6, ['µs', 'us', 'microseconds']],
    ['inductance', -3, ['mH', 'millihenries']],
    ['inductance', -6, ['µH', 'uH', 'µ']],
    ['inductance', 'unknown', ['m', 'MH', 'mh', 'Ω']],
    ['current', 0, ['A', 'amps', 'ampere']],
    ['current', -3, ['mA']],
    ['current', 3, ['kA']],
    ['current', 'unknown', ['m', 'MA', 'V', 'Ah']],
  ];
  for (const [quantity, meaning, texts] of rows) {
    it.each(texts)(`of ${quantity}: “%s” is ${meaning}`, (text) => {
      expect(scaleOf(quantity, text)).toBe(meaning);
    });
  }
});

describe('milli and mega', () => {
  it.each(['m', 'm Ω', 'm-Ω', 'mohm', 'm ohm', 'mOhm', 'mOHM', 'mohms', 'm-ohms', 'mω'])('“%s” asks', (text) => {
    expect(scaleOf('resistance', text)).toBe('milli-or-mega');
  });

  it.each(['m', 'MV', 'mv'])('of a voltage: “%s” asks', (text) => {
    expect(scaleOf('voltage', text)).toBe('milli-or-mega');
  });

  it('no text that begins with a small m and no more letters of mega is a megohm', () => {
    const tails = ['', 'Ω', 'ω', 'ohm', 'Ohm', 'OHM', 'ohms', 'OHMS', 'oHm'];
    const texts = tails.flatMap((tail) => ['', ' ', '-'].map((gap) => `m${gap}${tail}`));
    expect(texts.filter((text) => scaleOf('resistance', text) === 6)).toEqual([]);
  });
});

describe('conversions', () => {
  const base = (quantity: Quantity, text: string, value: number) => {
    const meaning = quantityRules[quantity].meaning(text);
    return meaning.kind === 'convert' ? meaning.toBase(value) : Number.NaN;
  };

  it.each([
    [32, 0],
    [212, 100],
    [77, 25],
    [-40, -40],
    [98.6, 37],
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(base('temperature', '°F', fahrenheit)).toBeCloseTo(celsius, 10);
  });

  it('seconds and hours become minutes', () => {
    expect(base('duration', 's', 90)).toBe(1.5);
    expect(base('duration', 'h', 2)).toBe(120);
  });
});

describe('the quantity that a unit belongs to', () => {
  it.each([
    ['kΩ', 'resistance'],
    ['M', 'resistance'],
    ['V', 'voltage'],
    ['mV', 'voltage'],
    ['°F', 'temperature'],
    ['%', 'percent'],
    ['min', 'duration'],
    ['seconds', 'duration'],
  ] as const)('“%s”: %s', (text, quantity) => {
    expect(quantityOfUnit(text)).toBe(quantity);
  });

  it('is unknown for a unit that no field takes', () => {
    expect(quantityOfUnit('A')).toBeUndefined();
    expect(quantityOfUnit('furlong')).toBeUndefined();
  });
});

/** Source: the unit prefixes of mathjs, an independent library. Only texts that both know are compared. */
describe('scale factors against mathjs', () => {
  const prefixes = ['', 'u', 'm', 'k', 'M', 'G', 'T', 'micro', 'milli', 'kilo', 'mega', 'giga', 'tera'];
  const names: [Quantity, string[], string][] = [
    ['resistance', ['Ω', 'ohm', 'ohms'], 'ohm'],
    ['voltage', ['V', 'volt', 'volts'], 'V'],
  ];
  const rows = names.flatMap(([quantity, words, baseUnit]) =>
    prefixes.flatMap((prefix) => words.map((word) => [quantity, `${prefix}${word}`, baseUnit] as const)),
  );
  /** Undefined where mathjs does not know the text as this kind of unit. */
  const exponentByMathjs = (text: string, baseUnit: string): number | undefined => {
    try {
      return Math.round(Math.log10(unit(1, text.replace('Ω', 'ohm')).toNumber(baseUnit)));
    } catch {
      return undefined;
    }
  };
  const known = rows.filter(
    ([quantity, text, baseUnit]) =>
      typeof scaleOf(quantity, text) === 'number' && exponentByMathjs(text, baseUnit) !== undefined,
  );

  it('meet in most of the texts', () => {
    expect(known.length).toBeGreaterThan(30);
  });

  it.each(known)('%s: “%s”', (quantity, text, baseUnit) => {
    expect(scaleOf(quantity, text)).toBe(exponentByMathjs(text, baseUnit));
  });

  it('agree on temperatures', () => {
    const meaning = quantityRules.temperature.meaning('°F');
    for (const fahrenheit of [-40, 0, 32, 77, 140, 300]) {
      const ours = meaning.kind === 'convert' ? meaning.toBase(fahrenheit) : Number.NaN;
      expect(ours).toBeCloseTo(unit(fahrenheit, 'degF').toNumber('degC'), 9);
    }
  });
});
