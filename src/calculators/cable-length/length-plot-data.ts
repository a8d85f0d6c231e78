import { coreInsulation } from '../../kernel/electrics/cable-insulation.ts';
import { limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import type { CableLengthInput } from './rule/input.ts';

type Pair = readonly [metres: number, ohms: number];

interface LengthPlotData {
  /** The least value of a new cable over its length, for the lowest and the highest constant. */
  least: Pair[];
  most: Pair[];
  /** The go/no-go point after a trip, in Ω. */
  point: number;
  /** The uncorrected reading, if it is a plain value. */
  taken?: Pair;
  rows: string[][];
}

const factors = [0.1, 0.2, 0.5, 1, 2, 5, 10];

/** Undefined if the cable data give no curve. */
export function lengthPlotData(input: CableLengthInput): LengthPlotData | undefined {
  const { insulation, insulationDiameter: outer, conductorDiameter: inner, length, reading } = input;
  if (outer.kind !== 'value' || inner.kind !== 'value' || length.kind !== 'value') return undefined;
  const { from, to } = limitRange(insulation === 'pvc' ? 'cable-constant-pvc' : 'cable-constant-xlpe');
  const lengths = factors.map((factor) => factor * length.value);
  const curve = (constant: number) =>
    lengths.map((metres): Pair => [metres, coreInsulation(constant, outer.value, inner.value, metres)]);
  const least = curve(from);
  const most = curve(to);
  if (least.some(([, ohms]) => Number.isNaN(ohms))) return undefined;
  const taken = reading.kind === 'value' && reading.value > 0 ? { taken: [length.value, reading.value] as Pair } : {};
  const rows = lengths.map((metres, index) => [
    formatRounded(metres, 'm'),
    formatRounded(least[index]?.[1] ?? 0, 'Ω'),
    formatRounded(most[index]?.[1] ?? 0, 'Ω'),
  ]);
  return { least, most, point: limitValue('after-trip-point'), ...taken, rows };
}
