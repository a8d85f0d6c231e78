import { inVolts } from '../../kernel/reading/format-reading.ts';

/** "500 V", "500 V to 1 kV". */
export function voltageSpan(from: number, to: number): string {
  return from === to ? inVolts(from) : `${inVolts(from)} to ${inVolts(to)}`;
}
