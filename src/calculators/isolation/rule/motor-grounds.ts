import { judgeWinding } from '../../../kernel/assessment/winding-insulation.ts';
import {
  correctionFactor,
  correctionMethods,
  limitsOfMethod,
} from '../../../kernel/electrics/temperature-correction.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { ohms, type Reading } from '../../../kernel/reading/reading.ts';
import type { Grounds } from './conviction.ts';
import type { IsolationInput } from './input.ts';

/**
 * What convicts a motor whose winding is at `temperature` (°C): the published minimum of a random-wound winding at its
 * own reference temperature, by every method that is valid there.
 */
export function motorGrounds({ correction }: IsolationInput, temperature: Reading): Grounds {
  const minimum = limitValue('ieee43-minimum-random-wound');
  const reference = limitValue('reference-temperature-routine');
  const conditions = { occasion: 'routine', limit: minimum, reference, temperature, correction } as const;
  const toPoint = limitValue('reference-temperature-after-trip');
  const factors =
    temperature.kind === 'value'
      ? correctionMethods.flatMap((method) => correctionFactor(method, temperature.value, toPoint) ?? [])
      : [];
  return {
    // The highest value that the reading leaves open, taken as read: an open end is never below.
    belowMinimum: ({ hi }) => Number.isFinite(hi) && judgeWinding(ohms(hi), conditions).judgement === 'bad',
    minimum: {
      ohms: minimum,
      limits: ['ieee43-minimum-random-wound', 'reference-temperature-routine', ...limitsOfMethod[correction]],
    },
    most: ({ hi }) => (factors.length === 0 ? Number.POSITIVE_INFINITY : hi * Math.max(1, ...factors)),
  };
}
