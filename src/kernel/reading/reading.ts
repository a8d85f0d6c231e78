/** What an instrument showed. Values are in the base unit of the quantity. */
export type Unit = 'Ω' | 'V' | '°C' | '%' | 'counts' | 'min' | 'm' | 'mm' | 's' | 'F' | 'J' | 'C' | 'W' | 'H' | 'A';

/** `resolution` is the step of the last digit shown, in the same unit; an accuracy in counts needs it. */
export interface ValueReading {
  kind: 'value';
  value: number;
  unit: Unit;
  resolution?: number;
}

/** Over-range: a lower bound. `atLeast` is absent when the range was not noted. */
interface OverReading {
  kind: 'over';
  unit: Unit;
  atLeast?: number;
}

/** Under-range: an upper bound. `atMost` is absent when it was not noted. */
interface UnderReading {
  kind: 'under';
  unit: Unit;
  atMost?: number;
}

interface MissingReading {
  kind: 'missing';
}

export type Reading = ValueReading | OverReading | UnderReading | MissingReading;

export const missing: MissingReading = { kind: 'missing' };

/** A reading of `value` ohms; `resolution` is the step of the last digit, in ohms. */
export function ohms(value: number, resolution?: number): ValueReading {
  return valueReading(value, 'Ω', resolution);
}

/** A reading of `value` volts. */
export function volts(value: number, resolution?: number): ValueReading {
  return valueReading(value, 'V', resolution);
}

/** A figure of `value` watts. */
export function watts(value: number, resolution?: number): ValueReading {
  return valueReading(value, 'W', resolution);
}

/** A length of `value` metres. */
export function metres(value: number, resolution?: number): ValueReading {
  return valueReading(value, 'm', resolution);
}

/** A reading of `value` degrees Celsius. */
export function celsius(value: number, resolution?: number): ValueReading {
  return valueReading(value, '°C', resolution);
}

/** Over-range in ohms, with the lower bound if the range was noted. */
export function overOhms(atLeast?: number): OverReading {
  return atLeast === undefined ? { kind: 'over', unit: 'Ω' } : { kind: 'over', unit: 'Ω', atLeast };
}

/** Under-range in ohms, with the upper bound if it was noted. */
export function underOhms(atMost?: number): UnderReading {
  return atMost === undefined ? { kind: 'under', unit: 'Ω' } : { kind: 'under', unit: 'Ω', atMost };
}

function valueReading(value: number, unit: Unit, resolution?: number): ValueReading {
  return resolution === undefined ? { kind: 'value', value, unit } : { kind: 'value', value, unit, resolution };
}

/** The number in a reading, in its base unit: a value, or the bound that the instrument showed. */
export function figureOf(reading: Reading): number | undefined {
  switch (reading.kind) {
    case 'value':
      return reading.value;
    case 'over':
      return reading.atLeast;
    case 'under':
      return reading.atMost;
    case 'missing':
      return undefined;
  }
}
