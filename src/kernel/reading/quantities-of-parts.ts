import { never, type Quantity, type QuantityRule } from './quantity-rule.ts';
import { lookUp, scale } from './unit-words.ts';

type OfParts = Extract<Quantity, 'capacitance' | 'length' | 'diameter' | 'inductance' | 'current' | 'power'>;

/** What is known of a part: from its plate, its data sheet, a drawing, or a clamp meter. */
export const quantitiesOfParts: Record<OfParts, QuantityRule> = {
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
  inductance: {
    unit: 'H',
    example: '12.5 mH, 800 µH or 0.0125 H',
    accepts: 'entry-inductance',
    bareDecimals: never,
    units: ['mH', 'µH'],
    asks: true,
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(H|henr(y|ys|ies))$/, scale(0)],
        [/^(mH|millihenr(y|ys|ies))$/, scale(-3)],
        [/^([uµ]H?|microhenr(y|ys|ies))$/, scale(-6)],
      ]),
  },
  current: {
    unit: 'A',
    example: '12.5, 12.5 A or 800 mA',
    accepts: 'entry-current',
    bareDecimals: 0,
    units: ['A', 'mA'],
    printed: true,
    overRange: false,
    meaning: (text) =>
      lookUp(text, [
        [/^(A|amps?|amperes?)$/i, scale(0)],
        [/^(mA|milliamps?)$/, scale(-3)],
        [/^kA$/, scale(3)],
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
