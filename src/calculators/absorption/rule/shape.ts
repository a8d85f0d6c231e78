import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { lastIn } from '../../../kernel/reading/last-in.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import {
  type AbsorptionFinding,
  type AbsorptionInput,
  type AbsorptionPayloads,
  absorptionField,
  absorptionTimes,
} from './input.ts';
import { ratioOf } from './ratios.ts';

const finding = findingMaker<AbsorptionPayloads>();

/** Ratio of a later reading to an earlier one from which the curve counts as changed. */
const level = 1 + limitValue('curve-level-change') / 100;

/**
 * What the curve shows, and no more: it falls, rises and falls, stays level or rises. Each is said only if the accuracy
 * of the readings leaves no other answer. Moisture, dirt and heat pull a curve down alike.
 */
export function describeShape(input: AbsorptionInput): AbsorptionFinding[] {
  const { instrument } = input;
  const taken = takenOf(input);
  const [first, last] = [taken[0], lastIn(taken)];
  if (first === undefined || last === undefined || taken.length < 2) return [];
  const change = ratioOf(last[1], first[1], instrument);
  const parts = {
    readings: taken.map(([seconds]) => absorptionField(seconds)),
    fromSeconds: first[0],
    toSeconds: last[0],
  };
  if (change === undefined) return [];
  if (change.hi < 1) return [finding('curve-falls', 'caution', parts)];
  const drops = taken.flatMap(([seconds, reading], index) => {
    const before = taken.slice(0, index).some(([, earlier]) => (ratioOf(reading, earlier, instrument)?.hi ?? 1) < 1);
    return before ? [seconds] : [];
  });
  if (drops[0] !== undefined) {
    return [finding('curve-uneven', 'caution', { ...parts, atSeconds: drops[0] })];
  }
  if (change.hi < level && last[0] / first[0] >= limitValue('flat-curve-span')) {
    return [finding('curve-flat', 'caution', { ...parts, limits: ['curve-level-change'] })];
  }
  return change.lo > 1 ? [finding('curve-rises', 'note', parts)] : [];
}

/**
 * A reading that is lower than an earlier one by more than a level curve allows: the voltage was not steady, or the
 * insulation broke down. An index with such a fall beside it passes nothing. The accuracy of the tester does not count
 * here: its error is much the same from one minute to the next, and a worse tester must not pass what a better one does
 * not.
 */
export function judgeSteadiness(input: AbsorptionInput): AbsorptionFinding[] {
  const taken = takenOf(input);
  const broken = taken.flatMap(([seconds, reading], index) => {
    const falls = taken
      .slice(0, index)
      .some(([, earlier]) => (ratioOf(asItStands(reading), asItStands(earlier), {})?.hi ?? 1) * level < 1);
    return falls ? [seconds] : [];
  });
  if (broken[0] === undefined) return [];
  return [
    finding('curve-breaks', 'undecided', {
      readings: broken.map(absorptionField),
      limits: ['curve-level-change'],
      atSeconds: broken[0],
    }),
  ];
}

/** Without a known step of the display, the figure itself: a wide guess of the step would hide the fall. */
function asItStands(reading: Reading): Reading {
  return reading.kind === 'value' && reading.resolution === undefined ? { ...reading, resolution: 0 } : reading;
}

function takenOf({ readings }: AbsorptionInput): [number, Reading][] {
  return absorptionTimes.flatMap((seconds): [number, Reading][] => {
    const reading = readings[seconds];
    return reading === undefined || reading.kind === 'missing' ? [] : [[seconds, reading]];
  });
}
