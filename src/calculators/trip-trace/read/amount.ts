import { type DecimalMark, numberIn } from './number-cell.ts';

/** A number as a person types it, with either decimal mark; undefined if it is none. */
export function typedNumber(text: string): number | undefined {
  const mark: DecimalMark = text.includes(',') && !text.includes('.') ? ',' : '.';
  if (!/^\s*[+\-−]?\s*[\d.,]+(e[+-]?\d+)?\s*$/i.test(text)) return undefined;
  const value = numberIn(text.replace(/\s/g, ''), mark);
  return Number.isFinite(value) ? value : undefined;
}
