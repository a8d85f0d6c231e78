import type { Reading, Unit } from './reading.ts';

const prefixes: [number, string][] = [
  [12, 'T'],
  [9, 'G'],
  [6, 'M'],
  [3, 'k'],
  [0, ''],
  [-3, 'm'],
  [-6, 'µ'],
];

/** Prefixes people use with a unit: nobody writes m°C or k%. */
const smallestExponent: Record<Unit, number> = {
  ...{ Ω: -6, V: -3, '°C': 0, '%': 0, counts: 0, min: 0, m: 0, mm: 0 },
  ...{ s: -6, F: -6, J: -3, C: -6, W: 0, H: -6, A: -3 },
};
const largestExponent: Record<Unit, number> = {
  ...{ Ω: 12, V: 3, '°C': 0, '%': 0, counts: 0, min: 0, m: 3, mm: 0 },
  ...{ s: 0, F: 0, J: 3, C: 0, W: 3, H: 0, A: 3 },
};

/**
 * From here on a resistance below one ohm is shown in ohms, as most meters show it: 0.4 Ω. `mΩ` is left to what needs
 * it: it is easily taken for `MΩ`.
 */
const ohmsFrom = 0.1;

/** The symbol of a unit with the prefix of this power of ten: `kΩ` for 3. Undefined if no prefix has it. */
export function unitSymbol(exponent: number, unit: Unit): string | undefined {
  const prefix = prefixes.find(([e]) => e === exponent);
  return prefix && prefix[1] + unit;
}

/** A reading as a person would note it: `450 kΩ`, `>700 MΩ`, `OL`; empty for a missing one. `parseReading` reads it back, or asks about its point. */
export function formatReading(reading: Reading): string {
  switch (reading.kind) {
    case 'missing':
      return '';
    case 'over':
      return reading.atLeast === undefined ? 'OL' : `>${formatQuantity(reading.atLeast, reading.unit)}`;
    case 'under':
      return reading.atMost === undefined ? 'under range' : `<${formatQuantity(reading.atMost, reading.unit)}`;
    case 'value':
      return formatQuantity(reading.value, reading.unit, reading.resolution);
  }
}

/**
 * A number in the base unit with the prefix that keeps it between 1 and 1000. With `resolution` (base unit) it shows
 * the digits that were read, without it as many as the number needs. Infinity means "no upper limit".
 */
export function formatQuantity(value: number, unit: Unit, resolution?: number): string {
  if (!Number.isFinite(value)) return value > 0 ? '∞' : '−∞';
  const exponent = prefixExponent(value, unit, resolution);
  const numeral = resolution === undefined ? shifted(value, exponent) : withStep(value, exponent, resolution);
  return `${numeral} ${unitSymbol(exponent, unit)}`;
}

/** For sentences: three significant digits, as accurate as such an instrument is. */
export function formatRounded(value: number, unit: Unit): string {
  const rounded = Number(value.toPrecision(3));
  // The largest figures round up to infinity.
  return formatQuantity(Number.isFinite(rounded) ? rounded : value, unit);
}

export const inOhms = (ohms: number) => formatRounded(ohms, 'Ω');
export const inVolts = (volts: number) => formatRounded(volts, 'V');
export const inCelsius = (celsius: number) => formatRounded(celsius, '°C');

function prefixExponent(value: number, unit: Unit, resolution?: number): number {
  const magnitude = Math.abs(value);
  const whole = magnitude === 0 || (unit === 'Ω' && magnitude >= ohmsFrom && magnitude < 1);
  const wanted = whole ? 0 : prefixes.find(([e]) => magnitude >= 10 ** e)?.[0];
  // A step coarser than the prefix would need digits that were not read: 0.01 MΩ is not 10 kΩ.
  const forStep = resolution === undefined ? -Infinity : Math.ceil(roundedLog10(resolution) / 3) * 3;
  const exponent = Math.max(wanted ?? smallestExponent[unit], forStep);
  return Math.min(Math.max(exponent, smallestExponent[unit]), largestExponent[unit]);
}

function roundedLog10(value: number): number {
  const log = Math.log10(value);
  return Math.abs(log - Math.round(log)) < 1e-9 ? Math.round(log) : log;
}

/** The shortest decimal numeral of `value` with its mark moved by `exponent` places: no arithmetic, so nothing is rounded. */
function shifted(value: number, exponent: number): string {
  const [mantissa = '0', power = '0'] = value.toExponential().split('e');
  const sign = mantissa.startsWith('-') ? '-' : '';
  const digits = mantissa.replaceAll(/[-.]/g, '');
  const whole = Number(power) - exponent + 1;
  if (whole <= 0) return `${sign}0.${'0'.repeat(-whole)}${digits}`;
  if (whole >= digits.length) return sign + digits.padEnd(whole, '0');
  return `${sign}${digits.slice(0, whole)}.${digits.slice(whole)}`;
}

function withStep(value: number, exponent: number, resolution: number): string {
  const decimals = Math.max(0, Math.ceil(exponent - roundedLog10(resolution) - 1e-9));
  const [mantissa = '0', power = '0'] = value.toExponential().split('e');
  return Number(`${mantissa}e${Number(power) - exponent}`).toFixed(Math.min(decimals, 20));
}

/** A time for sentences: `4.2 s`, `2 min 5 s`, `3 h 20 min`. Rounded up, since a wait must not be too short. */
export function formatSeconds(seconds: number): string {
  if (!Number.isFinite(seconds)) return 'no end';
  if (seconds < 100) return `${Math.ceil(seconds * 10 - 1e-9) / 10} s`;
  const whole = Math.ceil(seconds - 1e-9);
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return hours > 0 ? `${hours} h ${minutes + (whole % 60 > 0 ? 1 : 0)} min` : `${minutes} min ${whole % 60} s`;
}

/** `0:07`, `9:59`, as a stopwatch shows it: full seconds. */
export function clockFace(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
