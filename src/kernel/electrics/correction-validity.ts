import { limitConstant, limitPoints, limitRange } from '../limits.ts';

/** How a change of temperature changes insulation resistance. */
export type CorrectionMethod = 'halving' | 'thermosetting' | 'table';

export const correctionMethods: readonly CorrectionMethod[] = ['halving', 'thermosetting', 'table'];

/** Winding temperatures in °C for which the method is published, or used here; outside them nothing is computed. */
export function validityOf(method: CorrectionMethod): { from: number; to: number } {
  switch (method) {
    case 'halving':
      return limitRange('halving-validity');
    case 'thermosetting':
      return { from: limitConstant('thermosetting-cool', 'from'), to: limitConstant('thermosetting-hot', 'to') };
    case 'table':
      return rangeOf(limitPoints('solid-insulation-to-20'));
  }
}

function rangeOf(points: readonly (readonly [number, number])[]): { from: number; to: number } {
  const inputs = points.map(([input]) => input);
  return { from: Math.min(...inputs), to: Math.max(...inputs) };
}
