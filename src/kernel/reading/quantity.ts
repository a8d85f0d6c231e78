import { quantitiesOfParts } from './quantities-of-parts.ts';
import { never, type Quantity, type QuantityRule } from './quantity-rule.ts';
import { lookUp, resistanceWords, scale, temperatureWords, type UnitMeaning, voltageWords } from './unit-words.ts';

export type { Quantity, UnitMeaning };

export const quantityRules: Record<Quantity, QuantityRule> = {
  resistance: {
    unit: 'Ω',
    example: '450k, 2.2 MΩ, 2M2, OL or >700M',
    accepts: 'entry-resistance',
    bareDecimals: never,
    units: ['Ω', 'kΩ', 'MΩ'],
    asks: true,
    dangerAbove: ['pe-dead-short'],
    overRange: true,
    meaning: (text) => lookUp(text, resistanceWords),
  },
  voltage: {
    unit: 'V',
    example: '0.02, 500 V, 30 mV or 1 kV',
    accepts: 'entry-voltage',
    bareDecimals: 0,
    units: ['mV', 'V', 'kV'],
    dangerAbove: ['resistance-residual-voltage', 'touch-voltage'],
    usualTo: 'low-voltage-dc',
    overRange: true,
    meaning: (text) => lookUp(text, voltageWords),
  },
  diode: {
    unit: 'V',
    example: '0.412, 412 mV or OL',
    accepts: 'entry-diode',
    bareDecimals: 1,
    units: ['V', 'mV'],
    asks: true,
    signed: true,
    dangerAbove: ['diode-short'],
    overRange: true,
    meaning: (text) => lookUp(text, voltageWords),
  },
  temperature: {
    unit: '°C',
    example: '25, 25 °C or 77 °F',
    accepts: 'entry-temperature',
    bareDecimals: 0,
    units: ['°C', '°F'],
    signed: true,
    overRange: false,
    meaning: (text) => lookUp(text, temperatureWords),
  },
  percent: {
    unit: '%',
    example: '10 or 1.5 %',
    accepts: 'entry-percent',
    bareDecimals: 0,
    units: [],
    overRange: false,
    meaning: (text) => lookUp(text, [[/^(%|percent)( ?rh)?$/i, scale(0)]]),
  },
  counts: {
    unit: 'counts',
    example: '3',
    accepts: 'entry-counts',
    bareDecimals: 0,
    units: [],
    overRange: false,
    meaning: (text) => lookUp(text, [[/^(counts?|digits?|dgts?|d)$/i, scale(0)]]),
  },
  duration: {
    unit: 'min',
    example: '1, 60 s or 10 min',
    accepts: 'entry-duration',
    bareDecimals: 0,
    units: ['s', 'min'],
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(m|min|mins|minutes?)$/i, scale(0)],
        [/^(s|secs?|seconds?)$/i, { kind: 'convert', toBase: (seconds) => seconds / 60 }],
        [/^(h|hrs?|hours?)$/i, { kind: 'convert', toBase: (hours) => hours * 60 }],
      ]),
  },
  seconds: {
    unit: 's',
    example: '30, 30 s or 2 min',
    accepts: 'entry-seconds',
    bareDecimals: 0,
    units: ['s', 'min', 'h'],
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(s|secs?|seconds?)$/i, scale(0)],
        [/^(ms|milliseconds?)$/, scale(-3)],
        [/^([uµ]s|microseconds?)$/, scale(-6)],
        [/^(min|mins|minutes?)$/i, { kind: 'convert', toBase: (minutes) => minutes * 60 }],
        [/^(h|hrs?|hours?)$/i, { kind: 'convert', toBase: (hours) => hours * 3600 }],
      ]),
  },
  ...quantitiesOfParts,
};

/** The quantity of a unit text, to distinguish a reading typed into the wrong field from a typing error. */
export function quantityOfUnit(text: string): Quantity | undefined {
  const order: Quantity[] = ['resistance', 'voltage', 'temperature', 'percent', 'duration'];
  return order.find((quantity) => quantityRules[quantity].meaning(text).kind !== 'unknown');
}
