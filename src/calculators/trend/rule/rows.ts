import type { CorrectionMethod } from '../../../kernel/electrics/correction-validity.ts';
import { correctionFactor } from '../../../kernel/electrics/temperature-correction.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import { figureOf, type Reading } from '../../../kernel/reading/reading.ts';
import { type CorrectedBounds, findDrops } from './drops.ts';
import type { CorrectedRow, KeptOutCode, KeptOutRow, TrendRow } from './input.ts';

interface Corrected {
  rows: CorrectedRow[];
  /** Excludes rows without a figure, or at a temperature outside the method: nothing is extrapolated. */
  keptOut: KeptOutRow[];
}

/** Corrects every row to one temperature (°C), and marks sudden falls. `rows` in order of time. */
export function correctRows(rows: readonly TrendRow[], method: CorrectionMethod, toCelsius: number): Corrected {
  const keptOut: KeptOutRow[] = [];
  const corrected = rows.flatMap((row): CorrectedRow[] => {
    const { line, cells, day, temperature } = row;
    const reading = asBound(row.reading);
    const without = (code: KeptOutCode): CorrectedRow[] => {
      keptOut.push({ line, cells, day, code });
      return [];
    };
    if (reading.kind === 'missing') return without('reading-missing');
    const ohms = figureOf(reading);
    if (ohms === undefined) return without('bound-not-noted');
    if (temperature.kind !== 'value') return without('temperature-missing');
    const factor = correctionFactor(method, temperature.value, toCelsius);
    if (factor === undefined) return without('temperature-out-of-validity');
    // Never infinite: no line fits such a point, and half of the reading would then look better.
    const correctedOhms = Math.min(ohms * factor, Number.MAX_VALUE);
    return [{ ...row, reading, kind: reading.kind, corrected: correctedOhms, drop: false }];
  });
  const drops = new Set(findDrops(corrected.map(boundsOf)).map(({ index }) => index));
  return { rows: corrected.map((row, index) => ({ ...row, drop: drops.has(index) })), keptOut };
}

/**
 * A reading below one step of its display, zero above all, is only an upper bound, since a logarithmic axis has no
 * zero. One ohm if the step is unknown.
 */
function asBound(reading: Reading): Reading {
  if (reading.kind !== 'value') return reading;
  const step = reading.resolution || 1;
  return reading.value < step ? { kind: 'under', unit: reading.unit, atMost: step } : reading;
}

export function boundsOf({ kind, corrected }: CorrectedRow): CorrectedBounds {
  return {
    least: kind === 'under' ? 0 : corrected,
    most: kind === 'over' ? Number.POSITIVE_INFINITY : corrected,
  };
}

/** All rows of the last day, at any time of day. `rows` in order of time. */
export function newestRows<Row extends { day: number }>(rows: readonly Row[]): Row[] {
  const last = Math.floor(lastIn(rows)?.day ?? 0);
  return rows.filter(({ day }) => Math.floor(day) === last);
}
