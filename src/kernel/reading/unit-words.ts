/** How a written unit relates to the base unit: a power of ten, or a function if it is not a power. */
export type UnitMeaning =
  | { kind: 'scale'; exponent: number }
  | { kind: 'convert'; toBase: (value: number) => number }
  /** Could be milli as well as mega: the person is asked. */
  | { kind: 'milli-or-mega' }
  | { kind: 'unknown' };

export const scale = (exponent: number): UnitMeaning => ({ kind: 'scale', exponent });
const unknown: UnitMeaning = { kind: 'unknown' };

export const resistanceWords: [RegExp, UnitMeaning][] = [
  [/^(Ω|ohms?|r)$/i, scale(0)],
  [/^(kilohms?|(k|kilo)[ -]?(Ω|ohms?)?)$/i, scale(3)],
  // `mΩ` in full is the SI symbol; `m`, `m Ω` and `mohm` may be a hurried form of mega.
  [/^mΩ$/, scale(-3)],
  [/^milli[ -]?(Ω|ohms?)?$/i, scale(-3)],
  [/^m[ -]?([Ωω]|[Oo][Hh][Mm][Ss]?)?$/, { kind: 'milli-or-mega' }],
  [/^(M[ -]?(Ω|ohms?)?|meg[ -]?(Ω|ohms?)?|mega[ -]?(Ω|ohms?)?)$/i, scale(6)],
  [/^(g|gig|giga)[ -]?(Ω|ohms?)?$/i, scale(9)],
  [/^(t|tera)[ -]?(Ω|ohms?)?$/i, scale(12)],
  // A capital U is the phase, not the micro sign.
  [/^(u|µ|[Mm]icro)[ -]?(Ω|[Oo]hms?)?$/, scale(-6)],
];

export const voltageWords: [RegExp, UnitMeaning][] = [
  [/^(v|volts?)( ?[da]c)?$/i, scale(0)],
  [/^(mV|millivolts?)( ?[da]c)?$/, scale(-3)],
  [/^(m|MV|mv)$/, { kind: 'milli-or-mega' }],
  [/^(k|kilo)[ -]?(v|volts?)?( ?[da]c)?$/i, scale(3)],
];

export const temperatureWords: [RegExp, UnitMeaning][] = [
  [/^(°|deg)? ?(c|celsius)$/i, scale(0)],
  [/^(°|deg)? ?(f|fahrenheit)$/i, { kind: 'convert', toBase: (f) => (f - 32) / 1.8 }],
];

/** The first meaning whose pattern fits. */
export function lookUp(text: string, words: [RegExp, UnitMeaning][]): UnitMeaning {
  return words.find(([pattern]) => pattern.test(text))?.[1] ?? unknown;
}
