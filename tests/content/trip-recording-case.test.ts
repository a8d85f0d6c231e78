import { expect, test } from 'vitest';
import { readKeptTrace } from '../../src/calculators/trip-trace/kept-trace.ts';
import { assessTripTrace } from '../../src/calculators/trip-trace/rule/assess.ts';
import { jsonOf } from './support/files.ts';

interface Filled {
  forms?: Record<string, Record<string, string>>;
}

// A recording that can't be read any more is undecided too, so the verdict of a case does not notice it.
test('the recording of each worked case that has one can be read, and speaks for something', () => {
  const recordings = jsonOf('content/cases/*.json').flatMap(({ data }) => {
    const trace = (data as Filled).forms?.['trip-trace']?.trace;
    return trace === undefined ? [] : [trace];
  });
  expect(recordings.length).toBeGreaterThan(0);
  for (const recording of recordings) {
    const figures = readKeptTrace(recording)?.figures;
    expect(figures).toBeDefined();
    if (figures === undefined) continue;
    const { findings } = assessTripTrace({ figures, tripAmps: figures.peaks.atTrip });
    expect(findings.map(({ code }) => code)).toContain('motion-lost');
  }
});
