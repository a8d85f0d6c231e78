import { limitFigure } from '../exercises/exercise-value.ts';
import type { Piece } from '../exercises/fill.ts';

/** A paragraph of a case with limits such as `{after-trip-point}` filled in. Throws for an unknown limit. */
export function casePieces(text: string): Piece[] {
  return text
    .split(/\{([\w-]+)\}/)
    .map((part, index) => (index % 2 === 0 ? { text: part } : { text: limitFigure(part).text, limit: part }));
}
