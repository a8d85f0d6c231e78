import { limitFigure } from '../exercises/exercise-value.ts';
import type { Piece } from '../exercises/fill.ts';

/** A paragraph of a case with its limits in place: `{after-trip-point}`. Throws where there is no such limit. */
export function casePieces(text: string): Piece[] {
  return text
    .split(/\{([\w-]+)\}/)
    .map((part, index) => (index % 2 === 0 ? { text: part } : { text: limitFigure(part).text, limit: part }));
}
