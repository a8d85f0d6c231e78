import { ratioOf } from './absorption-index.ts';
import { type AbsorptionCode, type AbsorptionInput, absorptionField, absorptionTimes } from './absorption-input.ts';
import { type Finding, finding } from './assessment.ts';
import { limitRange, limitValue } from './limits.ts';
import type { Reading } from './reading.ts';

/**
 * What the curve shows, and no more: it falls, it goes up and down, it stays level or it rises. Each is said only where
 * the accuracy of the readings leaves no other answer. Moisture, dirt and heat pull a curve down alike.
 */
export function describeShape({ readings, instrument }: AbsorptionInput): Finding<AbsorptionCode>[] {
  const taken = absorptionTimes.flatMap((seconds): [number, Reading][] => {
    const reading = readings[seconds];
    return reading === undefined || reading.kind === 'missing' ? [] : [[seconds, reading]];
  });
  const [first, last] = [taken[0], taken.at(-1)];
  if (first === undefined || last === undefined || taken.length < 2) return [];
  const change = ratioOf(last[1], first[1], instrument);
  const parts = {
    readings: taken.map(([seconds]) => absorptionField(seconds)),
    numbers: { from: first[0], to: last[0] },
  };
  if (change === undefined) return [];
  if (change.hi < 1) return [finding('curve-falls', 'caution', parts)];
  const drops = taken.flatMap(([seconds, reading], index) => {
    const before = taken.slice(0, index).some(([, earlier]) => (ratioOf(reading, earlier, instrument)?.hi ?? 1) < 1);
    return before ? [seconds] : [];
  });
  if (drops[0] !== undefined) {
    return [finding('curve-uneven', 'caution', { ...parts, numbers: { ...parts.numbers, at: drops[0] } })];
  }
  const level = limitRange('absorption-ratio-bad').to;
  if (change.hi < level && last[0] / first[0] >= limitValue('flat-curve-span')) {
    return [finding('curve-flat', 'caution', { ...parts, limits: ['absorption-ratio-bad'] })];
  }
  return change.lo > 1 ? [finding('curve-rises', 'note', parts)] : [];
}
