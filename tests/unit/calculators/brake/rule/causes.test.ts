import { describe, expect, it } from 'vitest';
import { causeOf, judgeRelease } from '../../../../../src/calculators/brake/rule/release.ts';
import type { Finding, Severity } from '../../../../../src/kernel/assessment/assessment.ts';

// Common practice, no source: what leaves the coil of a holding brake less current.

const one = (code: string, severity: Severity, ...readings: string[]): Finding => ({
  code,
  severity,
  readings,
  limits: [],
});
const fail = (...codes: string[]) => codes.map((code) => one(code, 'fail'));
const atPlug = one('brake-supply-fits', 'pass', 'plugVolts', 'ratedVolts');
const atSource = one('brake-supply-fits', 'pass', 'sourceVolts', 'ratedVolts');
const coilAndCores = [one('brake-coil-fits', 'pass'), one('brake-cores-free', 'pass')];

describe('why a brake stays shut', () => {
  const rows: [code: string, otherwise: string, fed: string][] = [
    ['brake-coil-open', 'coil', 'coil'],
    ['brake-coil-high', 'coil', 'coil'],
    ['brake-coil-low', 'coil', 'unknown'],
    ['brake-core-open', 'cores', 'cores'],
    ['brake-cores-high', 'cores', 'unknown'],
    ['brake-cores-touch', 'cores', 'unknown'],
    ['brake-core-path', 'unknown', 'unknown'],
    ['brake-supply-low', 'supply', 'unknown'],
    ['brake-supply-high', 'unknown', 'unknown'],
    ['brake-drop-high', 'supply', 'unknown'],
  ];
  it.each(rows)('%s: %s, and %s with the voltage right at the plug', (code, otherwise, fed) => {
    expect(causeOf(fail(code))).toBe(otherwise);
    expect(causeOf([...fail(code), atSource])).toBe(otherwise);
    expect(causeOf([...fail(code), atPlug])).toBe(fed);
    // What does not fail explains nothing.
    expect(causeOf([one(code, 'undecided')])).toBe('unknown');
    expect(causeOf([one(code, 'undecided'), atPlug])).toBe('unknown');
  });

  it('the first circuit on the way back from the coil explains it', () => {
    expect(causeOf(fail('brake-supply-low', 'brake-core-open', 'brake-coil-low'))).toBe('coil');
    expect(causeOf(fail('brake-supply-low', 'brake-core-open'))).toBe('cores');
    expect(causeOf([...fail('brake-core-open', 'brake-coil-open'), atPlug])).toBe('coil');
    expect(causeOf([...fail('brake-coil-low', 'brake-core-open'), atPlug])).toBe('cores');
  });

  it('the brake itself only if coil, cores and supply pass and nothing is open', () => {
    for (const supply of [atPlug, atSource]) {
      const all = [...coilAndCores, supply];
      expect(causeOf(all)).toBe('brake');
      for (const left of all) expect(causeOf(all.filter((finding) => finding !== left))).toBe('unknown');
      expect(causeOf([...all, one('brake-leads-not-stated', 'undecided')])).toBe('unknown');
      expect(causeOf([...all, one('brake-not-extra-low', 'caution')])).toBe('brake');
    }
    expect(causeOf([])).toBe('unknown');
  });

  it.each(['brake-drop-high', 'brake-cores-high', 'brake-cores-touch'])(
    '%s clears nobody, though coil, cores and supply pass',
    (code) => {
      expect(causeOf([...coilAndCores, atPlug, ...fail(code)])).toBe('unknown');
    },
  );
});

describe('what was seen of the release', () => {
  const all = [...coilAndCores, atPlug];
  const rows = [
    ['opens', { code: 'brake-opens', severity: 'pass' }],
    ['shut', { code: 'brake-stays-shut', severity: 'fail', cause: 'brake' }],
    ['drags', { code: 'brake-drags', severity: 'fail', cause: 'brake' }],
    ['not-tried', { code: 'brake-release-not-tried', severity: 'undecided' }],
  ] as const;
  it.each(rows)('%s', (release, expected) => {
    expect(judgeRelease(release, all)).toEqual({ readings: ['release'], limits: [], ...expected });
  });
});
