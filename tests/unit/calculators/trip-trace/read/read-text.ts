import type { DecimalMark } from '../../../../../src/calculators/trip-trace/read/number-cell.ts';
import { TraceReader } from '../../../../../src/calculators/trip-trace/read/trace-reader.ts';
import type { TraceFile } from '../../../../../src/calculators/trip-trace/read/trace-table.ts';

/** Reads bytes in pieces of this size. */
export function readBytes(bytes: Uint8Array, piece = 1 << 16, mark?: DecimalMark): TraceFile {
  const reader = new TraceReader(mark);
  for (let at = 0; at < bytes.length; at += piece) if (!reader.push(bytes.subarray(at, at + piece))) break;
  return reader.end();
}

export const readText = (text: string, piece?: number, mark?: DecimalMark): TraceFile =>
  readBytes(new TextEncoder().encode(text), piece, mark);

/** Rows of a trace of three currents: time in ms and currents that add up to zero. */
export function rows(count = 40, separator = ';', mark = '.', end = '\n'): string {
  const number = (value: number) => value.toFixed(3).replace('.', mark);
  return Array.from({ length: count }, (_, i) => {
    const angle = i / 5;
    const currents = [0, 1, 2].map((phase) => number(8 * Math.cos(angle - (phase * 2 * Math.PI) / 3)));
    return [number(i * 0.125), ...currents].join(separator);
  }).join(end);
}
