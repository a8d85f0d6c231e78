import { unitSymbol } from './format-reading.ts';
import { letterAsMark } from './parse-reading.ts';
import { type Quantity, quantityRules } from './quantity.ts';
import { tidy } from './typed-text.ts';

/**
 * The unit in a text that reads as a figure, as its full symbol: `kΩ` for `450k`, `2k2` and `> 3 kohm`. Undefined if no
 * unit was typed, and for one that is not a prefix away from the base unit (°F, ft).
 */
export function typedUnit(text: string, quantity: Quantity): string | undefined {
  const typed = tidy(text);
  const lettered = quantity === 'resistance' ? letterAsMark.exec(typed.replace(/^\D*/, ''))?.[2] : undefined;
  const unitText = lettered ?? /\d[\d.,' ]*(?:e[-+]?\d+)? ?([^\d.,' ]\D*)$/i.exec(typed)?.[1];
  if (unitText === undefined) return undefined;
  const { meaning, unit } = quantityRules[quantity];
  const found = meaning(unitText.trim());
  return found.kind === 'scale' ? unitSymbol(found.exponent, unit) : undefined;
}
