import { expect, it } from 'vitest';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceInput } from '../../../../../src/calculators/trip-trace/rule/input.ts';
import type { Computed } from '../figures.ts';
import { atRest, drive, judged, noisy, rising } from './worked.ts';

// When the slope says nothing. The sources are named in worked.ts.

const short: Computed = {
  ...atRest,
  currents: noisy(rising(() => 26)),
  tripAt: 0.300125,
};
const why = (data: Partial<TripTraceInput>, computed: Computed = short) =>
  judged(computed, data).findings.find(({ code }) => code.startsWith('slope'));

it.each([
  ['inductance', 'no-inductance'],
  ['busVolts', 'no-bus'],
] as const)('says nothing on the slope without %s', (lacking, reason) => {
  const { [lacking]: _, ...rest } = drive;
  const { bus: __, ...noBus } = short;
  expect(why(rest, noBus)).toMatchObject({
    code: 'slope-nothing',
    why: reason,
  });
});

it('says nothing against a short circuit if the recorder filters, or may filter', () => {
  const slow: Computed = {
    ...atRest,
    currents: rising((t) => 2000 * t),
    tripAt: 0.3132,
    seconds: 0.32,
  };
  expect(why({ ...drive, stored: 'filtered' }, slow)).toMatchObject({
    code: 'slope-nothing',
    why: 'filtered',
  });
  const { stored: _, ...unknown } = drive;
  expect(why(unknown, slow)).toMatchObject({
    code: 'slope-nothing',
    why: 'filtered',
  });
});

it('says nothing at a sampling at which the motor could do it', () => {
  expect(why(drive, { ...short, step: 0.001, tripAt: 0.301 })).toMatchObject({
    code: 'slope-nothing',
  });
});

it('with one sensor that jumped alone, names the sensor too', () => {
  const one: Computed = {
    ...atRest,
    tripAt: 0.300125,
    currents: (t) => [4 + (t > 0.3 ? 26 : 0), -2, -2],
  };
  expect(judged(one).points).toContain('sensing');
});

it('says nothing without a file', () => {
  expect(assessTripTrace(drive)).toMatchObject({
    verdict: 'undecided',
    points: [],
    next: [{ code: 'open-the-file' }],
  });
});
