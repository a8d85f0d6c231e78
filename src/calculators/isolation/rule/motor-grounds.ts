import { judgeWinding } from '../../../kernel/assessment/winding-insulation.ts';
import { correctionMethods } from '../../../kernel/electrics/correction-validity.ts';
import { correctionFactor, limitsOfMethod } from '../../../kernel/electrics/temperature-correction.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import { ohms, type Reading } from '../../../kernel/reading/reading.ts';
import type { Grounds } from './conviction.ts';
import type { IsolationInput } from './input.ts';

/**
 * What convicts a motor whose winding is at `temperature` (°C): the published minimum of a random-wound winding at its
 * own reference temperature, by every method that is valid there, and as read. A rule of thumb alone condemns none: a
 * sound old winding of 20 MΩ at 20 °C counts as 5 MΩ at 40 °C.
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
  const most = ({ hi }: Interval) => (factors.length === 0 ? Number.POSITIVE_INFINITY : hi * Math.max(1, ...factors));
  const hot = temperature.kind === 'value' && temperature.value > reference;
  return {
    // The highest value that the reading leaves open. Of a winding hotter than the reference, the least favorable method
    // can say too little by a power of ten: it must be below even at room temperature by the most generous one.
    belowMinimum: (reading) =>
      reading.hi < minimum &&
      judgeWinding(ohms(reading.hi), conditions).judgement === 'bad' &&
      (!hot || most(reading) < minimum),
    minimum: {
      ohms: minimum,
      limits: ['ieee43-minimum-random-wound', 'reference-temperature-routine', ...limitsOfMethod[correction]],
    },
    most,
  };
}
