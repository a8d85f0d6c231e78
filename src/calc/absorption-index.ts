import { type AbsorptionCode, type AbsorptionInput, absorptionField } from './absorption-input.ts';
import { type Finding, finding } from './assessment.ts';
import { type Interval, intervalOf } from './interval.ts';
import { limitRange, limitValue } from './limits.ts';
import { missing, type Reading } from './reading.ts';

/** What a reading leaves open: as stated for the tester, and never less than half a step of its last digit. */
export function shownOhms(reading: Reading, instrument: AbsorptionInput['instrument'] = {}): Interval {
  return intervalOf(reading, { ...instrument, counts: Math.max(0.5, instrument.counts ?? 0) });
}

/**
 * The later resistance over the earlier, with both errors at their worst against each other. Undefined where one is
 * missing, or where both may be zero or both endless: such a ratio can be anything.
 */
export function ratioOf(later: Reading, earlier: Reading, instrument: AbsorptionInput['instrument']) {
  if (later.kind === 'missing' || earlier.kind === 'missing') return undefined;
  const [above, below] = [shownOhms(later, instrument), shownOhms(earlier, instrument)];
  const lo = below.hi === Number.POSITIVE_INFINITY || above.lo === 0 ? 0 : above.lo / below.hi;
  const hi = above.hi === Number.POSITIVE_INFINITY || below.lo === 0 ? Number.POSITIVE_INFINITY : above.hi / below.lo;
  return { lo, hi };
}

/** Whether the polarization index reaches its limit, and whether it says anything at all. */
export function judgeIndex(input: AbsorptionInput, index: Interval | undefined): Finding<AbsorptionCode>[] {
  const times = { first: limitValue('index-first-time'), last: limitValue('index-last-time') };
  const readings = [times.first, times.last].map(absorptionField);
  if (index === undefined) return [finding('index-incomplete', 'undecided', { readings })];
  const limitId = input.thermalClass === 'A' ? 'polarization-index-a' : 'polarization-index-bfh';
  const wanted = limitValue(limitId);
  const numbers = { lo: index.lo, hi: index.hi, wanted };
  const oneMinute = shownOhms(input.readings[times.first] ?? missing, input.instrument);
  const high = limitValue('polarization-index-high-value');
  if (oneMinute.hi > high) {
    const limits = ['polarization-index-high-value' as const];
    return [finding('index-says-nothing', 'undecided', { readings, limits, numbers: { ...numbers, high } })];
  }
  const parts = { readings, limits: [limitId] as const, numbers };
  const found: Finding<AbsorptionCode>[] = [];
  const floor = limitValue('one-minute-floor');
  if (oneMinute.lo < floor) {
    const limits = ['one-minute-floor' as const];
    found.push(finding('one-minute-low', 'undecided', { readings, limits, numbers: { floor } }));
  }
  if (input.windingKind === 'random-wound') found.push(judged('index-not-for-random-wound', 'undecided'));
  else if (index.lo >= wanted) found.push(judged('index-meets', 'pass'));
  else if (index.hi < wanted) found.push(judged('index-below', 'fail'));
  else found.push(judged('index-too-close', 'undecided'));
  const dry = limitValue('polarization-index-dry');
  if (index.lo > dry) found.push(finding('index-dry', 'caution', { readings, limits: ['polarization-index-dry'] }));
  return found;

  function judged(code: AbsorptionCode, severity: Finding['severity']) {
    return finding(code, severity, { ...parts, limits: [...parts.limits] });
  }
}

/** The dielectric absorption ratio, stated and not judged: publications draw its borders differently. */
export function describeRatio(ratio: Interval | undefined): Finding<AbsorptionCode>[] {
  if (ratio === undefined) return [];
  const readings = [limitValue('ratio-first-time'), limitValue('index-first-time')].map(absorptionField);
  const { from, to } = limitRange('absorption-ratio-span');
  const numbers = { lo: ratio.lo, hi: ratio.hi, from, to };
  return [finding('ratio-stated', 'note', { readings, limits: ['absorption-ratio-span'], numbers })];
}
