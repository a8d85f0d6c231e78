import { limitValue } from '../../kernel/limits.ts';
import { formatReading } from '../../kernel/reading/format-reading.ts';
import { missing } from '../../kernel/reading/reading.ts';
import type { Point } from '../../ui/plot/Points.tsx';
import { type AbsorptionInput, absorptionTimes } from './rule/input.ts';
import { markName } from './stopwatch.ts';

interface CurveData {
  /** In s and Ω, of plain values above zero. */
  curve: [seconds: number, ohms: number][];
  points: Point[];
  /** The two readings that make the index, marked in the plot. */
  marks: [first: number, last: number];
  rows: string[][];
}

/** Undefined with fewer than two readings that can be drawn. */
export function curveData({ readings }: AbsorptionInput): CurveData | undefined {
  const points: Point[] = [];
  const curve: [number, number][] = [];
  const rows: string[][] = [];
  for (const seconds of absorptionTimes) {
    const reading = readings[seconds] ?? missing;
    if (reading.kind === 'missing') continue;
    rows.push([markName(seconds), formatReading(reading)]);
    if (reading.kind === 'value' && reading.value > 0) {
      curve.push([seconds, reading.value]);
      points.push({ x: seconds, y: reading.value, shape: 'dot' });
    } else if (reading.kind === 'over' && reading.atLeast) {
      points.push({ x: seconds, y: reading.atLeast, shape: 'above' });
    } else if (reading.kind === 'under' && reading.atMost) {
      points.push({ x: seconds, y: reading.atMost, shape: 'below' });
    }
  }
  if (points.length < 2) return undefined;
  return { curve, points, marks: [limitValue('index-first-time'), limitValue('index-last-time')], rows };
}
