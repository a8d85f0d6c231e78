import type { LimitId } from './limits.ts';
import type { Unit } from './reading.ts';

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
  | 'diameter';

/** How a unit that people write relates to the base unit: a power of ten, or a function where it is no power. */
export type UnitMeaning =
  | { kind: 'scale'; exponent: number }
  | { kind: 'convert'; toBase: (value: number) => number }
  /** Could be milli as well as mega: the person is asked. */
  | { kind: 'milli-or-mega' }
  | { kind: 'unknown' };

interface QuantityRule {
  unit: Unit;
  /** Shown in messages. */
  example: string;
  /** The range that a form accepts, in content/limits. */
  accepts: LimitId;
  /** Whether a bare number is understood to be in the base unit. Never for resistance: k, M and Ω are all usual. */
  bareNumber: boolean;
  /** The units offered where one is missing. */
  asked?: string[];
  /** Whether an instrument can show over-range for it. */
  overRange: boolean;
  meaning: (unitText: string) => UnitMeaning;
}

const scale = (exponent: number): UnitMeaning => ({ kind: 'scale', exponent });
const unknown: UnitMeaning = { kind: 'unknown' };

const resistanceWords: [RegExp, UnitMeaning][] = [
  [/^(Ω|ohms?|r)$/i, scale(0)],
  [/^(kilohms?|(k|kilo)[ -]?(Ω|ohms?)?)$/i, scale(3)],
  // `mΩ` in full is the SI symbol; `m`, `m Ω` and `mohm` are what a hurried thumb makes of mega.
  [/^mΩ$/, scale(-3)],
  [/^milli[ -]?(Ω|ohms?)?$/i, scale(-3)],
  [/^m[ -]?([Ωω]|[Oo][Hh][Mm][Ss]?)?$/, { kind: 'milli-or-mega' }],
  [/^(M[ -]?(Ω|ohms?)?|meg[ -]?(Ω|ohms?)?|mega[ -]?(Ω|ohms?)?)$/i, scale(6)],
  [/^(g|gig|giga)[ -]?(Ω|ohms?)?$/i, scale(9)],
  [/^(t|tera)[ -]?(Ω|ohms?)?$/i, scale(12)],
  // A capital U is the phase, not the micro sign.
  [/^(u|[Mm]icro)[ -]?(Ω|[Oo]hms?)?$/, scale(-6)],
];

const voltageWords: [RegExp, UnitMeaning][] = [
  [/^(v|volts?)( ?[da]c)?$/i, scale(0)],
  [/^(mV|millivolts?)( ?[da]c)?$/, scale(-3)],
  [/^(m|MV|mv)$/, { kind: 'milli-or-mega' }],
  [/^(k|kilo)[ -]?(v|volts?)?( ?[da]c)?$/i, scale(3)],
];

const temperatureWords: [RegExp, UnitMeaning][] = [
  [/^(°|deg)? ?(c|celsius)$/i, scale(0)],
  [/^(°|deg)? ?(f|fahrenheit)$/i, { kind: 'convert', toBase: (f) => (f - 32) / 1.8 }],
];

export const quantityRules: Record<Quantity, QuantityRule> = {
  resistance: {
    unit: 'Ω',
    example: '450k, 2.2 MΩ, 2M2, OL or >700M',
    accepts: 'entry-resistance',
    bareNumber: false,
    asked: ['Ω', 'kΩ', 'MΩ'],
    overRange: true,
    meaning: (text) => lookUp(text, resistanceWords),
  },
  voltage: {
    unit: 'V',
    example: '0.02, 500 V, 30 mV or 1 kV',
    accepts: 'entry-voltage',
    bareNumber: true,
    overRange: true,
    meaning: (text) => lookUp(text, voltageWords),
  },
  diode: {
    unit: 'V',
    example: '0.412, 412 mV or OL',
    accepts: 'entry-diode',
    bareNumber: true,
    overRange: true,
    meaning: (text) => lookUp(text, voltageWords),
  },
  temperature: {
    unit: '°C',
    example: '25, 25 °C or 77 °F',
    accepts: 'entry-temperature',
    bareNumber: true,
    overRange: false,
    meaning: (text) => lookUp(text, temperatureWords),
  },
  percent: {
    unit: '%',
    example: '10 or 1.5 %',
    accepts: 'entry-percent',
    bareNumber: true,
    overRange: false,
    meaning: (text) => lookUp(text, [[/^(%|percent)( ?rh)?$/i, scale(0)]]),
  },
  counts: {
    unit: 'counts',
    example: '3',
    accepts: 'entry-counts',
    bareNumber: true,
    overRange: false,
    meaning: (text) => lookUp(text, [[/^(counts?|digits?|dgts?|d)$/i, scale(0)]]),
  },
  duration: {
    unit: 'min',
    example: '1, 60 s or 10 min',
    accepts: 'entry-duration',
    bareNumber: true,
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
    bareNumber: true,
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
    bareNumber: false,
    asked: ['µF', 'mF'],
    overRange: false,
    // MFD, MF and mfd stand for micro on old labels and for milli elsewhere: not read.
    meaning: (text) =>
      lookUp(text, [
        [/^(F|farads?)$/, scale(0)],
        [/^(mF|millifarads?)$/, scale(-3)],
        [/^(u[Ff]?|[Mm]icrofarads?)$/, scale(-6)],
        [/^(nF|nanofarads?)$/, scale(-9)],
      ]),
  },
  length: {
    unit: 'm',
    example: '35, 35 m or 115 ft',
    accepts: 'entry-length',
    bareNumber: true,
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
    bareNumber: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(mm|millimet(er|re)s?)$/i, scale(0)],
        [/^(cm|centimet(er|re)s?)$/i, scale(1)],
        [/^(in|inch|inches|["″])$/i, { kind: 'convert', toBase: (inches) => inches * 25.4 }],
      ]),
  },
};

function lookUp(text: string, words: [RegExp, UnitMeaning][]): UnitMeaning {
  return words.find(([pattern]) => pattern.test(text))?.[1] ?? unknown;
}

/** The quantity that a unit text belongs to, to tell a reading typed into the wrong field from a slip. */
export function quantityOfUnit(text: string): Quantity | undefined {
  const order: Quantity[] = ['resistance', 'voltage', 'temperature', 'percent', 'duration'];
  return order.find((quantity) => quantityRules[quantity].meaning(text).kind !== 'unknown');
}
