import { limitRange } from '../limits.ts';
import type { Reading } from '../reading/reading.ts';
import { type FindingOf, findingMaker } from './assessment.ts';

/** Every calculator has this finding and this step. */
export interface FigurePayloads {
  /** Paths of the figures in the input. */
  'figure-impossible': { readings: string[] };
}

export type FigureFinding = FindingOf<FigurePayloads>;
export type FigureStepCode = 'read-figure-again';

/**
 * Whether an instrument can have shown this: a finite figure, not below zero. Degrees may be below zero, and so may a
 * voltage that is `signed`, since the sign only shows the polarity of the leads; a percentage ends at a hundred.
 */
export function isPossible(reading: Reading, signed = false): boolean {
  switch (reading.kind) {
    case 'missing':
      return true;
    case 'over':
      return reading.atLeast === undefined || isFigure(reading.atLeast);
    case 'under':
      return reading.atMost === undefined || isFigure(reading.atMost);
    case 'value': {
      const { value, unit, resolution = 0 } = reading;
      if (!isFigure(resolution)) return false;
      if (unit === '%') return isPercentage(value);
      return unit === '°C' || (unit === 'V' && signed) ? Number.isFinite(value) : isFigure(value);
    }
    default:
      return false;
  }
}

/**
 * The first check of every assessment: one finding that names all figures that are not finite, or negative where they
 * can't be, by their path (`dcPlus.U`, `instrument.percent`); empty if all are possible. It makes the verdict undecided
 * and nothing else is judged, so that no rule ever computes with NaN. `signed` are the fields whose voltages may have a
 * sign.
 */
export function impossibleFigures(input: object, signed: readonly string[] = []): FigureFinding[] {
  const readings = Object.entries(input).flatMap(([field, one]) => impossibleIn(one, field, signed.includes(field)));
  return readings.length === 0 ? [] : [finding('figure-impossible', 'undecided', { readings })];
}

const finding = findingMaker<FigurePayloads>();

function impossibleIn(one: unknown, path: string, signed: boolean): string[] {
  if (typeof one === 'number') {
    const possible = path.toLowerCase().endsWith('percent') ? isPercentage(one) : isFigure(one);
    return possible ? [] : [path];
  }
  if (typeof one !== 'object' || one === null) return [];
  if ('kind' in one) return isPossible(one as Reading, signed) ? [] : [path];
  return Object.entries(one).flatMap(([name, part]) => impossibleIn(part, `${path}.${name}`, signed));
}

function isFigure(value: number): boolean {
  return Number.isFinite(value) && value >= 0;
}

function isPercentage(value: number): boolean {
  const { from, to } = limitRange('entry-percent');
  return value >= from && value <= to;
}
