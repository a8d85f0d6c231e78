import type { Instrument } from '../reading/interval.ts';
import { numberOf } from './instrument.ts';
import type { ReadForm } from './read-form.ts';

/** The instrument as the form states it. */
export function instrumentOf({ readings }: ReadForm): Instrument {
  const percent = numberOf(readings.accuracyPercent);
  const counts = numberOf(readings.accuracyCounts);
  const upperLimit = numberOf(readings.upperLimit);
  return {
    ...(percent !== undefined && { percent }),
    ...(counts !== undefined && { counts }),
    ...(upperLimit !== undefined && { upperLimit }),
  };
}
