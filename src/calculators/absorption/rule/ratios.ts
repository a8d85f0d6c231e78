import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { type AbsorptionFinding, type AbsorptionInput, type AbsorptionPayloads, absorptionField } from './input.ts';

const finding = findingMaker<AbsorptionPayloads>();

/** The interval of a reading: the stated accuracy of the tester, and never less than half a step of its last digit. */
function shownOhms(reading: Reading, instrument: AbsorptionInput['instrument'] = {}): Interval {
  return intervalOf(reading, { ...instrument, counts: Math.max(0.5, instrument.counts ?? 0) });
}

/**
 * The later resistance over the earlier, with both errors at their worst against each other. Undefined if one is
 * missing, or if both may be zero or both infinite: such a ratio can be anything.
 */
export function ratioOf(later: Reading, earlier: Reading, instrument: AbsorptionInput['instrument']) {
  if (later.kind === 'missing' || earlier.kind === 'missing') return undefined;
  const [above, below] = [shownOhms(later, instrument), shownOhms(earlier, instrument)];
  const lo = below.hi === Number.POSITIVE_INFINITY || above.lo === 0 ? 0 : above.lo / below.hi;
  const hi = above.hi === Number.POSITIVE_INFINITY || below.lo === 0 ? Number.POSITIVE_INFINITY : above.hi / below.lo;
  return { lo, hi };
}

/** Whether the polarization index reaches its limit, and whether it says anything at all. */
export function judgeIndex(input: AbsorptionInput, index: Interval | undefined): AbsorptionFinding[] {
  const times = { first: limitValue('index-first-time'), last: limitValue('index-last-time') };
  const readings = [times.first, times.last].map(absorptionField);
  if (index === undefined) return [finding('index-incomplete', 'undecided', { readings })];
  const limitId: LimitId = input.thermalClass === 'A' ? 'polarization-index-a' : 'polarization-index-bfh';
  const wanted = limitValue(limitId);
  const oneMinute = shownOhms(input.readings[times.first] ?? missing, input.instrument);
  const high = limitValue('polarization-index-high-value');
  if (oneMinute.hi > high) {
    const limits = ['polarization-index-high-value' as const];
    return [finding('index-says-nothing', 'undecided', { readings, limits, index, highOhms: high })];
  }
  const parts = { readings, limits: [limitId], index, wanted };
  const found: AbsorptionFinding[] = [];
  const floor = limitValue('one-minute-floor');
  if (oneMinute.lo < floor) {
    const limits = ['one-minute-floor' as const];
    found.push(finding('one-minute-low', 'undecided', { readings, limits, floorOhms: floor }));
  }
  if (input.windingKind === 'random-wound') found.push(finding('index-not-for-random-wound', 'undecided', parts));
  else if (index.lo >= wanted) found.push(finding('index-meets', 'pass', parts));
  else if (index.hi < wanted) found.push(finding('index-below', 'fail', parts));
  else found.push(finding('index-too-close', 'undecided', parts));
  const dry = limitValue('polarization-index-dry');
  if (index.lo > dry) found.push(finding('index-dry', 'caution', { readings, limits: ['polarization-index-dry'] }));
  return found;
}

/** The dielectric absorption ratio, stated and not judged, because publications disagree about its limits. */
export function describeRatio(ratio: Interval | undefined): AbsorptionFinding[] {
  if (ratio === undefined) return [];
  const readings = [limitValue('ratio-first-time'), limitValue('index-first-time')].map(absorptionField);
  const { from, to } = limitRange('absorption-ratio-span');
  return [finding('ratio-stated', 'note', { readings, limits: ['absorption-ratio-span'], ratio, from, to })];
}
