import type { LimitId } from '../limits.ts';
import type { Unit } from './reading.ts';
import { lookUp, resistanceWords, scale, temperatureWords, type UnitMeaning, voltageWords } from './unit-words.ts';

export type { UnitMeaning };

export type Quantity =
  | 'resistance'
  | 'voltage'
  | 'diode'
  | 'temperature'
  | 'percent'
  | 'counts'
  | 'duration'
  | 'seconds'
  | 'capacitance'
  | 'length'
  | 'diameter'
  | 'power';

interface QuantityRule {
  unit: Unit;
  /** Shown in messages. */
  example: string;
  /** The range that a form accepts, in content/limits. */
  accepts: LimitId;
  /**
   * How many decimals a bare number must have to be understood in the base unit. `never` for resistance: k, M and Ω
   * are all usual. One for the diode test: meters show it in volts with two to four decimals, or in whole millivolts,
   * so that 0.512 can only be volts, and 2 is a blocking 2 V or a short of 2 mV.
   */
  bareDecimals: number;
  /** The units that instruments and labels show: the keys of a keypad, and the question. */
  units: readonly string[];
  /** A bare number may be in any of the units, so the person is asked. */
  asks?: true;
  /** May be negative: a diode test beside a charged bus reads below zero, which must be reported, not refused. */
  signed?: true;
  /** Taken from a label, a drawing or a clock, not from a display, whose point is always the decimal mark. */
  printed?: true;
  /** At or below is safe, above is dangerous: a figure that may be on either side is asked about. */
  dangerAbove?: LimitId[];
  /** The highest figure that such a machine has, if a form accepts more. */
  usualTo?: LimitId;
  /** Whether an instrument can show over-range for it. */
  overRange: boolean;
  meaning: (unitText: string) => UnitMeaning;
}

/** For a quantity that always needs a unit. */
const never = Number.POSITIVE_INFINITY;

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
        [/^(min|mins|minutes?)$/i, { kind: 'convert', toBase: (minutes) => minutes * 60 }],
        [/^(h|hrs?|hours?)$/i, { kind: 'convert', toBase: (hours) => hours * 3600 }],
      ]),
  },
  capacitance: {
    unit: 'F',
    example: '1500 µF, 1.5 mF or 0.0015 F',
    accepts: 'entry-capacitance',
    bareDecimals: never,
    units: ['µF', 'mF'],
    asks: true,
    printed: true,
    overRange: false,
    // MFD, MF and mfd mean micro on old labels and milli elsewhere, so they are refused.
    meaning: (text) =>
      lookUp(text, [
        [/^(F|farads?)$/, scale(0)],
        [/^(mF|millifarads?)$/, scale(-3)],
        [/^([uµ][Ff]?|[Mm]icrofarads?)$/, scale(-6)],
        [/^(nF|nanofarads?)$/, scale(-9)],
      ]),
  },
  length: {
    unit: 'm',
    example: '35, 35 m or 115 ft',
    accepts: 'entry-length',
    bareDecimals: 0,
    units: ['m', 'ft'],
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(m|met(er|re)s?)$/i, scale(0)],
        [/^(km|kilomet(er|re)s?)$/i, scale(3)],
        [/^(ft|feet|foot|['′])$/i, { kind: 'convert', toBase: (feet) => feet * 0.3048 }],
      ]),
  },
  diameter: {
    unit: 'mm',
    example: '2.8, 2.8 mm or 0.11 in',
    accepts: 'entry-diameter',
    bareDecimals: 0,
    units: ['mm', 'in'],
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(mm|millimet(er|re)s?)$/i, scale(0)],
        [/^(cm|centimet(er|re)s?)$/i, scale(1)],
        [/^(in|inch|inches|["″])$/i, { kind: 'convert', toBase: (inches) => inches * 25.4 }],
      ]),
  },
  power: {
    unit: 'W',
    example: '12, 12 W or 1.2 kW',
    accepts: 'entry-power',
    bareDecimals: 0,
    units: ['W', 'kW'],
    printed: true,
    overRange: false,
    // MW and mW are refused: no plate has either, and one is easily taken for the other.
    meaning: (text) =>
      lookUp(text, [
        [/^(w|watts?)$/i, scale(0)],
        [/^(k[ -]?w|kilowatts?)$/i, scale(3)],
      ]),
  },
};

/** The quantity of a unit text, to distinguish a reading typed into the wrong field from a typing error. */
export function quantityOfUnit(text: string): Quantity | undefined {
  const order: Quantity[] = ['resistance', 'voltage', 'temperature', 'percent', 'duration'];
  return order.find((quantity) => quantityRules[quantity].meaning(text).kind !== 'unknown');
}
