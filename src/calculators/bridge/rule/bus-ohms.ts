import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import type { LimitId } from '../../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { isMetal, isTaken, mayBeShort } from './rail-reading.ts';

export interface BusOhmsPayloads {
  'bus-shorted': Nothing;
  'bus-low': Nothing;
  'bus-not-shorted': Nothing;
}

const finding = findingMaker<BusOhmsPayloads>();

/** DC+ to DC− in Ω, red on DC+. A capacitor that charges reads low at first, and exchanged leads read the diodes. */
export function judgeBusOhms(dcBus: Reading, instrument: Instrument): FindingOf<BusOhmsPayloads>[] {
  if (!isTaken(dcBus)) return [];
  const readings = ['dcBus'];
  const interval = intervalOf(dcBus, instrument);
  const limits: LimitId[] = ['bridge-short'];
  if (isMetal(interval)) return [finding('bus-shorted', 'fail', { readings, limits: ['bridge-metal'] })];
  if (mayBeShort({ reading: dcBus, interval })) return [finding('bus-low', 'undecided', { readings, limits })];
  return [finding('bus-not-shorted', 'pass', { readings, limits })];
}
