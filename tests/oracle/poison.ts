import type { Dice } from './dice.ts';
import { absurd } from './readings.ts';

/** Places in a record, notes: no figure that anything is computed with. */
const noFigures = ['line', 'cells', 'keptOut'];

interface Place {
  holder: Record<string, unknown>;
  key: string;
  signed: boolean;
}

/**
 * A copy in which one figure is no number, endless or negative; undefined where there is none. Degrees, days and
 * `signed` fields may be negative, so they only become NaN or endless.
 */
export function poisoned<Input extends object>(
  input: Input,
  dice: Dice,
  signed: readonly string[] = [],
): Input | undefined {
  const copy = structuredClone(input);
  const places: Place[] = [];
  collect(copy as Record<string, unknown>, signed, false, places);
  if (places.length === 0) return undefined;
  const { holder, key, signed: maySign } = dice.pick(places);
  const figures = absurd.filter((figure) => !maySign || !Number.isFinite(figure));
  holder[key] = dice.pick(figures);
  return copy;
}

function collect(holder: Record<string, unknown>, signed: readonly string[], inside: boolean, places: Place[]): void {
  for (const [key, value] of Object.entries(holder)) {
    if (noFigures.includes(key)) continue;
    const maySign = (inside || signed.includes(key)) && !['resolution', 'atLeast'].includes(key);
    const degrees = holder.unit === '°C' && key === 'value';
    if (typeof value === 'number') places.push({ holder, key, signed: maySign || degrees });
    else if (typeof value === 'object' && value !== null) {
      collect(value as Record<string, unknown>, signed, inside || signed.includes(key), places);
    }
  }
}
