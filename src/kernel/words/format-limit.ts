import { formatQuantity } from '../reading/format-reading.ts';

export const limitUnits = [
  'V',
  'Ω',
  '°C',
  '%',
  '×',
  'min',
  's',
  'A',
  'W',
  'H',
  'J',
  'C',
  'F',
  'B',
  'counts',
  'axes',
  'positions',
  'characters',
  'entries',
  'years',
  'm',
  'mm',
  'MΩ·kft',
  'Ω·m',
  'Ω/km',
  'mm²',
  'px',
] as const;

type Unit = (typeof limitUnits)[number];

interface Range {
  from?: number | undefined;
  to?: number | undefined;
}

/**
 * The parts of a limit that make its printed figure; a limit of content/limits fits, and so does one of
 * `kernel/limits.ts`.
 */
interface LimitFigure {
  unit: string;
  inputUnit?: string | undefined;
  value?: number | undefined;
  range?: Range | undefined;
  points?: readonly (readonly number[])[] | undefined;
  constants?: Record<string, number> | undefined;
}

/**
 * The figure of a limit for a sentence or a table: `100 MΩ`, `100 kΩ up to open`, `−20 to 60 °C`. Number and unit are
 * joined by a no-break space.
 */
export function formatLimit(limit: LimitFigure): string {
  const unit = limit.unit as Unit;
  if (limit.value !== undefined) return formatFigure(limit.value, unit);
  if (limit.range !== undefined) return formatRange(limit.range, unit);
  if (limit.points !== undefined) return formatExtent(limit.points, (limit.inputUnit ?? unit) as Unit);
  return formatConstants(limit.constants ?? {});
}

/**
 * `k = 4230, from 40 to 85 °C`: in a formula, `from` and `to` are the winding temperatures in °C for which it is valid.
 */
function formatConstants({ from, to, ...constants }: Record<string, number>): string {
  const named = Object.entries(constants).map(([name, constant]) => `${name}\u00a0=\u00a0${numeral(constant)}`);
  const validity = from === undefined || to === undefined ? [] : [`from ${formatRange({ from, to }, '°C')}`];
  return [...named, ...validity].join(', ');
}

/** A number in base unit `unit` with the prefix that people use for it. */
export function formatFigure(value: number, unit: Unit): string {
  switch (unit) {
    case '×':
      return `${numeral(value)}\u00a0times`;
    case 'axes':
    case 'positions':
    case 'counts':
    case 'characters':
    case 'entries':
    case 'px':
    case 'MΩ·kft':
    case 'Ω/km':
    case 'mm²':
      return `${numeral(value)}\u00a0${unit}`;
    case 'years':
      return value === 1 ? '1\u00a0year' : `${numeral(value)}\u00a0years`;
    case 'A':
    case 'C':
    case 'F':
    case 'J':
    case 'B':
    case 's':
      // Amperes, bytes, coulombs, joules and seconds use the same prefixes as ohms.
      return tidy(formatQuantity(value, 'Ω').replace('Ω', unit));
    case 'Ω·m':
      return tidy(formatQuantity(value, 'Ω').replace('Ω', unit));
    default:
      return tidy(formatQuantity(value, unit));
  }
}

function formatRange({ from, to }: Range, unit: Unit): string {
  if (from === undefined) return to === undefined ? 'any' : `up to ${formatFigure(to, unit)}`;
  // A resistance range without an upper end goes up to an open circuit, which is what the meter shows.
  if (to === undefined)
    return unit === 'Ω' ? `${formatFigure(from, unit)} up to open` : `${formatFigure(from, unit)} or more`;
  if (from === to) return formatFigure(from, unit);
  const [low, lowUnit] = formatFigure(from, unit).split('\u00a0');
  const high = formatFigure(to, unit);
  const sameUnit = from === 0 || lowUnit === high.split('\u00a0')[1];
  return `${sameUnit ? low : formatFigure(from, unit)} to ${high}`;
}

function formatExtent(points: readonly (readonly number[])[], inputUnit: Unit): string {
  const inputs = points.map(([input = Number.NaN]) => input);
  const extent = formatRange({ from: Math.min(...inputs), to: Math.max(...inputs) }, inputUnit);
  return `${points.length} points, ${extent}`;
}

/** Factors of one column get the same number of decimals, so that they align; other units are formatted one by one. */
export function formatColumn(values: readonly number[], unit: Unit): string[] {
  if (unit !== '×') return values.map((value) => formatFigure(value, unit));
  const decimals = Math.max(...values.map((value) => String(value).split('.')[1]?.length ?? 0));
  return values.map((value) => value.toFixed(decimals));
}

/** A plain number with a true minus sign. */
function numeral(value: number): string {
  return String(value).replace('-', '−');
}

function tidy(text: string): string {
  return text.replace('-', '−').replace(' ', '\u00a0');
}
