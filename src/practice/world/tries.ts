import { triesNeeded } from '../../visit/guide/tries.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { Reach, Trip } from '../simulator/trip.ts';
import type { FieldMachine } from './field-machine.ts';

/**
 * Tries as often as the guide asks, or once, and writes down what came. With the motor on the drive the first trip is
 * enough. A message of missing feedback is no trip with the control off; at the enable another message may be taken for it.
 */
export function tryAgain(machine: FieldMachine, reach: Reach, stopAtTrip = false): RetryAnswer {
  const { slips } = machine;
  if (slips.notPermitted) return { powerAllowed: false, result: 'not-done' };
  const needed = slips.triedOnce ? 1 : (triesNeeded(slips.count?.came, slips.count?.of) ?? 1);
  const seen: (Trip | undefined)[] = [];
  do {
    machine.retry(reach, seen.length > 0);
    seen.push(machine.lastTrip);
  } while (seen.length < needed && !(stopAtTrip && seen.some((trip) => trip !== undefined)));
  const came = seen.flatMap((trip) => (trip !== undefined && isNoted(trip, machine) ? [trip] : []));
  const tried = { powerAllowed: true, tries: seen.length, trips: came.length };
  const [first] = came;
  if (first !== undefined) return { ...tried, result: 'trips', stage: first.stage };
  const other = seen.some((trip) => trip?.message === 'other' && trip.stage !== 'at-power');
  return { ...tried, result: other ? 'other-message' : 'no-trip' };
}

function isNoted({ message, stage }: Trip, { slips }: FieldMachine): boolean {
  return message === 'same' || (slips.otherMessageNoted && stage === 'at-enable');
}
