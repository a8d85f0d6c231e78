import { describe, expect, it } from 'vitest';
import { judgeRail } from '../../../../../src/calculators/bridge/rule/rail.ts';
import type { Rail } from '../../../../../src/calculators/bridge/rule/switch-position.ts';
import type { Instrument } from '../../../../../src/kernel/reading/interval.ts';
import { found } from '../../../../support/found.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

/** `U | V | W`, then U read again and U with the leads exchanged, if they were taken. */
const judge = (rail: Rail, readings: string, instrument: Instrument = {}, tolerance = 10) => {
  const [again = '', exchanged = ''] = readings.split('|').slice(3);
  const row = { readings: typedPhases(readings), again: typed(again), exchanged: typed(exchanged) };
  return judgeRail(rail, row, tolerance, instrument);
};

const outcome = (...parameters: Parameters<typeof judge>) =>
  judge(...parameters).map(({ code, severity }) => `${severity} ${code}`);

const suspects = (...parameters: Parameters<typeof judge>) =>
  judge(...parameters).flatMap((one) => ('suspects' in one ? one.suspects : []));

describe('a sound rail', () => {
  it.each([
    ['plus', '450k | 455k | 460k'],
    ['plus', '100k | 105k | 110k'],
    ['plus', '5M | 5.2M | 5.1M'],
    ['minus', '45k | 46k | 47k'],
    ['minus', '10k | 10.5k | 11k'],
    ['minus', '91k | 95k | 100k'],
  ] as const)('%s %s is balanced', (rail, readings) => {
    expect(outcome(rail, readings)).toEqual(['pass rail-balanced']);
  });

  it('passes exactly at the tolerance, despite binary rounding', () => {
    expect(outcome('plus', '300k | 330k | 310k')).toEqual(['pass rail-balanced']);
    expect(outcome('minus', '70k | 77k | 70k')).toEqual(['pass rail-balanced']);
  });

  it('gives both usual figures of spread', () => {
    const balanced = found(judge('plus', '400k | 410k | 420k'), 'rail-balanced');
    expect(balanced).toMatchObject({ tolerancePercent: 10, differences: { spreadPercent: 5 } });
    expect(balanced.differences.deviationPercent).toBeCloseTo(2.4390244, 7);
    expect(balanced.limits).toEqual(['bridge-tolerance']);
    expect(balanced.readings).toEqual(['plusU', 'plusV', 'plusW']);
  });

  it('is open if all three are over-range on a range that could have shown a usual reading', () => {
    expect(outcome('plus', '>10M | >10M | >10M')).toEqual(['pass rail-open']);
    expect(outcome('minus', '>1M | >1M | >1M')).toEqual(['pass rail-open']);
    expect(outcome('plus', '>10M | >72M | >72M')).toEqual(['pass rail-open']);
  });

  it('is open with a caution if the range was not noted', () => {
    expect(outcome('plus', 'OL | OL | OL')).toEqual(['pass rail-open', 'caution rail-range-not-noted']);
    expect(outcome('plus', '>72M | OL | >72M')).toEqual(['pass rail-open', 'caution rail-range-not-noted']);
    expect(outcome('plus', 'OL | OL | OL', { upperLimit: 72e6 })).toEqual(['pass rail-open']);
  });
});

describe('a size that is not usual, though balanced', () => {
  it.each([
    ['plus', '9k | 9.2k | 9.4k'],
    ['minus', '9.9k | 10k | 10.1k'],
  ] as const)('%s %s may be diodes that conduct and hide a leak: undecided', (rail, readings) => {
    expect(outcome(rail, readings)).toEqual(['pass rail-balanced', 'undecided rail-lower-than-usual']);
  });

  it.each(['9k | 9.2k | 9.4k | | 9.1k', '9k | 9.2k | 9.4k | | 2k', '9k | 9.2k | 9.4k | 9.1k | 0.46k'])(
    '%s: the other way reads no more, so this way blocks, and it passes with a caution',
    (readings) => {
      expect(outcome('minus', readings)).toEqual(['pass rail-balanced', 'caution rail-lower-than-usual']);
    },
  );

  it.each(['9k | 9.2k | 9.4k | | 45k', '9k | 9.2k | 9.4k | | OL', '2k | 2.01k | 2.02k | | 190k'])(
    '%s was read with the diodes conducting',
    (readings) => {
      expect(outcome('plus', readings)).toEqual(['pass rail-balanced', 'undecided rail-read-forward']);
    },
  );

  it('is still in doubt if the accuracy does not tell which way reads more', () => {
    expect(outcome('plus', '9k | 9.2k | 9.4k | | 9.8k', { percent: 2 })).toEqual([
      'pass rail-balanced',
      'undecided rail-lower-than-usual',
    ]);
  });

  it.each(['45k | 46k | 47k', '99k | 100k | 101k', '450k | 455k | 460k'])(
    '%s is usual on either rail: it depends on the model',
    (readings) => {
      for (const rail of ['plus', 'minus'] as const) expect(outcome(rail, readings)).toEqual(['pass rail-balanced']);
    },
  );

  it('open is usual on either rail', () => {
    for (const rail of ['plus', 'minus'] as const)
      expect(outcome(rail, '>72M | >72M | >72M')).toEqual(['pass rail-open']);
  });
});

describe('shorts', () => {
  it.each([
    ['0.3 Ω | 450k | 455k', ['plusU']],
    ['450k | 0 | 455k', ['plusV']],
    ['450k | 455k | 1k', ['plusW']],
    ['450k | 455k | <1k', ['plusW']],
    ['0.3 Ω | 0.2 Ω | 455k', ['plusU', 'plusV']],
    ['0.3 Ω | OL | OL', ['plusU']],
    ['0.3 Ω | | 455k', ['plusU']],
    ['500 Ω | 450k | 455k', ['plusU']],
  ])('%s', (readings, positions) => {
    expect(outcome('plus', readings)).toContain('fail rail-short');
    expect(suspects('plus', readings)).toEqual(positions);
  });

  it.each(['0.3 Ω | 0.3 Ω | 0.3 Ω', '458 Ω | 457 Ω | 456 Ω', '0.3 Ω | 0.3 Ω | ', '0.3 Ω |  | ', '0 | 0 | 0 | 0'])(
    'low and alike, %s: undecided, since sound diodes read so with the leads exchanged',
    (readings) => {
      expect(outcome('minus', readings)).toContain('undecided rail-all-short');
      expect(suspects('minus', readings)).toEqual([]);
    },
  );

  it('low both ways is a short; high the other way was three diodes', () => {
    expect(outcome('minus', '0.3 Ω | 0.3 Ω | 0.3 Ω | | 0.4 Ω')).toEqual(['fail rail-short-both-ways']);
    expect(suspects('minus', '458 Ω | 457 Ω | 456 Ω | | 450 Ω')).toEqual(['minusU']);
    expect(outcome('minus', '458 Ω | 457 Ω | 456 Ω | | 45k')).toEqual(['undecided rail-read-forward']);
    expect(outcome('minus', '458 Ω | 457 Ω | 456 Ω | | 0.99k', { percent: 2 })).toEqual(['undecided rail-all-short']);
  });

  it('less than a diode shows, beside diodes that conduct, is a short whichever way the leads are', () => {
    expect(outcome('plus', '458 Ω | 0.3 Ω | 460 Ω')).toEqual(['fail rail-short', 'caution rail-all-short']);
    expect(suspects('plus', '458 Ω | 0.3 Ω | 460 Ω')).toEqual(['plusV']);
  });

  it('are named together with a disagreement of the other two', () => {
    expect(outcome('plus', '0.3 Ω | 450k | 4k')).toEqual(['fail rail-short', 'fail rail-unbalanced']);
    expect(outcome('plus', '0.3 Ω | 4k | 450k')).toEqual(['fail rail-short', 'undecided rail-first-odd']);
  });

  it('are not proven if the reading allows more', () => {
    expect(outcome('plus', '450k | <2k | 455k')).toContain('undecided rail-short-possible');
    expect(outcome('plus', '1.05k | 1.05k | 1.05k', { percent: 10 })).toContain('undecided rail-short-possible');
    expect(outcome('plus', '1k | 1k | 1k', { percent: 1 })).not.toContain('fail rail-short');
    expect(outcome('plus', '450k | <1k | 455k', { percent: 1 })).toContain('undecided rail-short-possible');
  });

  it('just above the limit are judged by balance', () => {
    expect(outcome('minus', '1.01k | 1.02k | 1.03k')).toEqual([
      'pass rail-balanced',
      'undecided rail-lower-than-usual',
    ]);
  });

  it('under-range without a figure may be shorts, never open circuits', () => {
    expect(outcome('plus', 'under range | under range | under range')).toEqual(['undecided rail-short-possible']);
    expect(outcome('plus', 'under range | OL | OL')).toEqual(['undecided rail-short-possible']);
    expect(outcome('plus', 'under range | 450k | 5k')).toEqual([
      'undecided rail-short-possible',
      'fail rail-unbalanced',
    ]);
  });
});

describe('a disagreement', () => {
  it.each([
    ['450k | 20k | 455k', ['plusV'], ['plusV']],
    ['450k | 455k | 30k', ['plusW'], ['plusW']],
    ['450k | 455k | 31k', ['plusW'], []],
    ['450k | 455k | 200k', ['plusW'], []],
    ['20k | 450k | 455k | 20.1k', ['plusU'], ['plusU']],
    ['450k | 5M | 455k', ['plusV'], []],
    ['450k | OL | 455k', ['plusV'], []],
    ['OL | 450k | OL', ['plusV'], []],
    ['OL | 20k | OL', ['plusV'], ['plusV']],
    ['450k | OL | OL | 452k', ['plusU'], []],
    ['450k | 455k | OL | 452k', ['plusW'], []],
    ['450k | >2M | >2M | 450k', ['plusU'], []],
    ['>2M | >72M | 450k', ['plusW'], []],
    [' | 450k | 5k', ['plusV', 'plusW'], []],
    ['300k | 20k | 120k', ['plusV'], ['plusV']],
    ['300k | 40k | 120k', ['plusU', 'plusV', 'plusW'], []],
  ])('%s is clearly off: %o, of them leaks %o', (readings, positions, leaks) => {
    const unbalanced = found(judge('plus', readings), 'rail-unbalanced');
    expect(unbalanced.severity).toBe('fail');
    expect(unbalanced.suspects).toEqual(positions);
    expect(unbalanced.leaks).toEqual(leaks);
    expect(unbalanced.limits).toEqual(['bridge-tolerance', 'bridge-clearly-off', 'bridge-switch-leak']);
  });

  it.each([
    ['450k | 455k | 300k', ['plusW']],
    ['450k | 700k | 455k', ['plusV']],
    ['300k | 450k | 455k | 302k', ['plusU']],
    ['140k | 120k | 100k', ['plusU', 'plusV', 'plusW']],
    ['39.21k | 44.75k | 44.09k | 39.2k', ['plusU']],
  ])('%s, at most twice as much, may belong to the model: %o', (readings, odd) => {
    const uneven = found(judge('plus', readings), 'rail-uneven');
    expect(uneven.severity).toBe('undecided');
    expect(uneven.odd).toEqual(odd);
    expect(uneven.limits).toEqual(['bridge-tolerance', 'bridge-clearly-off']);
  });

  it('is high if the odd one reads more: then no switch leaks', () => {
    expect(found(judge('plus', '450k | OL | 455k'), 'rail-unbalanced').high).toBe(true);
    expect(found(judge('plus', '450k | 20k | 455k'), 'rail-unbalanced').high).toBe(false);
    expect(found(judge('plus', '300k | 20k | 120k'), 'rail-unbalanced').high).toBe(false);
  });

  it('gives its size, against the smaller and from the mean', () => {
    const { differences } = found(judge('plus', '300k | 360k | 300k'), 'rail-uneven');
    expect(differences).toEqual({ spreadPercent: 20, deviationPercent: 12.5 });
  });

  it('beside an over-range has no size', () => {
    const unbalanced = found(judge('plus', '450k | >2M | 455k'), 'rail-unbalanced');
    expect(unbalanced.tolerancePercent).toBe(10);
    expect(unbalanced.differences).toBeUndefined();
  });

  it('depends on the tolerance that was set', () => {
    expect(outcome('plus', '300k | 360k | 300k', {}, 25)).toEqual(['pass rail-balanced']);
    expect(outcome('plus', '420k | 410k | 400k | 420k', {}, 4)).toEqual(['undecided rail-uneven']);
  });
});

// Source: readings of a simulated sound drive, DC+ to U, V, W by a meter of 0.5 V that was held 3 or 10 s on each.
describe('a bus capacitor that charges from the meter', () => {
  it.each(['53.79k | 179.7k | 184.9k', '44.54k | 47.20k | 50.32k', '51.49k | 174.5k | 177.5k', '80k | 107k | 129k'])(
    '%s: asks for U again before anything is said',
    (readings) => {
      const findings = judge('plus', readings);
      expect(findings.map(({ code, severity }) => `${severity} ${code}`)).toEqual(['undecided rail-first-odd']);
      expect(findings[0]?.readings).toEqual(['plusU', 'plusV', 'plusW', 'plusAgain']);
    },
  );

  it.each(['450k | 455k | OL', '2M | OL | OL', '900k | 450k | 455k', '20k | 455k | ', '450k | 5k | '])(
    '%s: an odd first reading of any size is read again',
    (readings) => {
      expect(outcome('plus', readings)).toContain('undecided rail-first-odd');
    },
  );

  it('counts the second reading of U once it agrees', () => {
    expect(outcome('plus', '53.79k | 179.7k | 184.9k | 190k')).toEqual([
      'caution rail-first-replaced',
      'pass rail-balanced',
    ]);
    expect(outcome('plus', '500 Ω | 450k | 455k | 460k')).toEqual([
      'caution rail-first-replaced',
      'pass rail-balanced',
    ]);
    expect(outcome('plus', '450k | 455k | 460k | 452k')).toEqual(['pass rail-balanced']);
    expect(outcome('plus', '5k | OL | OL | OL', { upperLimit: 72e6 })).toEqual([
      'caution rail-first-replaced',
      'pass rail-open',
    ]);
  });

  it.each(['53.79k | 179.7k | 184.9k | 210k', '44.54k | 47.20k | 50.32k | 53k', '500 Ω | 5k | 20k | 60k'])(
    '%s still climbs',
    (readings) => {
      expect(outcome('plus', readings)).toContain('undecided rail-still-climbing');
      expect(suspects('plus', readings)).toEqual([]);
    },
  );

  it.each([
    ['54k | 20k | 185k | 210k', ['plusV']],
    ['18k | 180k | 185k | 20k', ['plusU']],
    ['450k | 455k | 460k | 20k', ['plusU']],
  ])('%s: what falls in time is no capacitor: %o', (readings, positions) => {
    expect(suspects('plus', readings)).toEqual(positions);
  });

  it('does not explain a reading of some ohms that is gone the second time', () => {
    expect(outcome('plus', '0.3 Ω | 450k | 455k | 452k')).toEqual([
      'undecided rail-first-contradicts',
      'pass rail-balanced',
    ]);
    expect(outcome('plus', '0.3 Ω | 450k | 455k | 0.4 Ω')).toEqual(['caution rail-first-replaced', 'fail rail-short']);
  });
});

describe('too close or out of range to decide', () => {
  it('an over-range beside a value just below its bound needs a higher range', () => {
    expect(outcome('plus', '700k | 705k | >720k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', '700k | >720k | >720k')).toEqual(['undecided rail-range-too-low']);
  });

  it('is a disagreement once the gap to the bound exceeds the tolerance', () => {
    expect(outcome('plus', '654k | >720k | 654k')).toEqual(['undecided rail-uneven']);
    expect(outcome('plus', '655k | 655k | >720k')).toEqual(['undecided rail-range-too-low']);
  });

  it('three over-ranges on a range below the usual readings prove nothing', () => {
    expect(outcome('plus', '>72k | >72k | >72k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('minus', '>6k | >6k | >6k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('minus', '>720k | >720k | >720k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', '>0 | >0 | >0')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', 'OL | OL | OL', { upperLimit: 72e3 })).toEqual(['undecided rail-range-too-low']);
  });

  it('values above the meter’s own limit contradict it', () => {
    expect(outcome('plus', '80M | 81M | 82M', { upperLimit: 72e6 })).toEqual(['undecided rail-range-too-low']);
  });

  it('a spread that the accuracy may carry over the tolerance is too close to call', () => {
    const { range } = found(judge('plus', '400k | 430k | 432k', { percent: 2 }), 'rail-too-close');
    expect(range?.leastPercent).toBeCloseTo(((432 * 0.98) / (400 * 1.02)) * 100 - 100, 9);
    expect(range?.mostPercent).toBeCloseTo(((432 * 1.02) / (400 * 0.98)) * 100 - 100, 9);
  });

  it('counts of the last digit matter as much as percent', () => {
    expect(outcome('minus', '20k | 21.5k | 21.8k')).toEqual(['pass rail-balanced']);
    expect(outcome('minus', '20k | 21k | 22k', { counts: 3 })).toEqual(['undecided rail-too-close']);
    expect(outcome('minus', '20.00k | 21.00k | 21.50k', { counts: 3 })).toEqual(['pass rail-balanced']);
  });

  it('a disagreement that no accuracy explains fails all the same; less is not clearly off', () => {
    expect(outcome('plus', '450k | 455k | 200k', { percent: 2, counts: 3 })).toEqual(['fail rail-unbalanced']);
    expect(outcome('plus', '450k | 455k | 223k', { percent: 2, counts: 3 })).toEqual(['undecided rail-uneven']);
  });
});

describe('missing readings', () => {
  it.each([
    ['450k | 455k | ', ['minusW']],
    ['450k |  | ', ['minusV', 'minusW']],
    [' |  | ', ['minusU', 'minusV', 'minusW']],
    ['OL | OL | ', ['minusW']],
  ])('%s are named and bar every pass', (readings, absent) => {
    const findings = judge('minus', readings);
    expect(findings.map(({ code }) => code)).toEqual(['rail-incomplete']);
    expect(findings[0]?.readings).toEqual(absent);
  });
});
