import { parseReading } from '../../kernel/reading/parse-reading.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';

const quantities: Quantity[] = ['resistance', 'voltage', 'temperature', 'percent', 'duration', 'length', 'diameter'];

/** Units that no form reads but an invented example may show. */
const otherUnits =
  /^(?:[kmµn]?A|[kmµ]?W|[kM]?Hz|[mµn]?s|days?|weeks?|months?|years?|shifts?|[kmµnp]?F|[mµ]?H|k?J|N·m|[km]?V|k?N|k?g|mm²|m\/s|r\/min|k?V\/µs|°|times|counts?|axes)$/;
const numberAndUnit = /^[<>±+−-]?\s?\d+(?:\.\d+)?(?: to \d+(?:\.\d+)?)?\s(\S+)$/;

/**
 * Whether a text is what an instrument, a label or a person could show in an example: `450 kΩ`, `>700 MΩ`, `OL`, `2.4
 * V`, `48 °C`, `35 A`, `3 to 4 MΩ`. A bare number does not count, since the reader would have to guess its unit.
 */
export function isExampleReading(text: string): boolean {
  const typed = text.replaceAll(/\s/g, ' ').trim();
  if (typed === '' || /^[-–—]+$/.test(typed) || /^[−-]?[\d.,]+$/.test(typed)) return false;
  const [, unit] = numberAndUnit.exec(typed) ?? [];
  if (unit !== undefined && otherUnits.test(unit)) return true;
  // Only the upper end of a range is read; the lower one shares its unit.
  const upper = typed.replace(/^\d+(?:\.\d+)? to (?=\d)/, '');
  return quantities.some((quantity) => parseReading(upper, quantity).ok);
}
