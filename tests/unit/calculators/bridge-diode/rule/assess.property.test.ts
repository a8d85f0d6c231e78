import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBridgeDiode, type BridgeDiodeInput } from '../../../../../src/calculators/bridge-diode/rule/assess.ts';
import { missing, volts } from '../../../../../src/kernel/reading/reading.ts';
import { bothTests, diodeTest, place, withDrop } from '../../../../support/arbitrary-diode.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

const verdict = (input: BridgeDiodeInput) => assessBridgeDiode(input).verdict;

describe('a worse reading never turns the verdict of a diode test towards go', () => {
  it('turned into a short', () => {
    const met = tally();
    fc.assert(
      fc.property(diodeTest, place, fc.constantFrom(0, 0.003, 0.05), (input, at, drop) => {
        const before = verdict(input);
        met.add(before);
        expect(rank[verdict(withDrop(input, at, volts(drop, 0.001)))]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met);
  });

  it('a blocking reading lowered', () => {
    fc.assert(
      fc.property(diodeTest, place, fc.constantFrom(0.2, 0.41, 1.2, 1.49, 1.6), (input, { at }, drop) => {
        const rail = at.rail === 'dcPlus' ? input.plus : input.minus;
        const was = rail.reverse[at.phase];
        // The mirror of a sound rail counts as exchanged leads, which is not better evidence.
        if (was.kind === 'under' || was.kind === 'missing' || (was.kind === 'value' && was.value < drop)) return;
        const mirrored = (['U', 'V', 'W'] as const).every((phase) => rail.forward[phase].kind === 'over');
        if (mirrored) return;
        // One that is above the others and is lowered towards them gets more alike, which is no worse.
        const others = (['U', 'V', 'W'] as const)
          .filter((phase) => phase !== at.phase)
          .map((phase) => rail.reverse[phase]);
        if (others.every((one) => one.kind === 'value' && one.value <= drop)) return;
        const lower = withDrop(input, { at, way: 'reverse' }, volts(drop, 0.001));
        expect(rank[verdict(lower)]).toBeLessThanOrEqual(rank[verdict(input)]);
      }),
      { numRuns: runs },
    );
  });

  it('a reading below zero, or drifting readings, stop it whatever else was read', () => {
    fc.assert(
      fc.property(bothTests, place, (input, at) => {
        for (const worse of [withDrop(input, at, volts(-0.3, 0.001)), { ...input, steadiness: 'drifting' as const }]) {
          const { findings } = assessBridgeDiode(worse);
          expect(findings.some(({ severity }) => severity === 'stop')).toBe(true);
          expect(verdict(worse)).toBe('undecided');
        }
      }),
      { numRuns: runs },
    );
  });
});

describe('weaker evidence never makes a verdict of a diode test', () => {
  const weaker: [string, fc.Arbitrary<(input: BridgeDiodeInput) => BridgeDiodeInput>][] = [
    ['the bus reading removed', fc.constant((input) => ({ ...input, busVoltage: missing }))],
    ['not said whether readings stand still', fc.constant((input) => ({ ...input, steadiness: 'not-stated' }))],
    [
      'a wider stated accuracy',
      fc.constantFrom(1, 5, 20).map((percent) => (input) => ({
        ...input,
        instrument: { percent: (input.instrument?.percent ?? 0) + percent, counts: input.instrument?.counts ?? 0 },
      })),
    ],
  ];

  it.each(weaker)('%s', (name, change) => {
    fc.assert(
      fc.property(diodeTest, change, (input, weaken) => {
        if (name.startsWith('not said') && input.steadiness === 'drifting') return;
        const before = verdict(input);
        expect([before, 'undecided']).toContain(verdict(weaken(input)));
      }),
      { numRuns: runs },
    );
  });

  it('a reading removed is never go', () => {
    fc.assert(
      fc.property(bothTests, place, (input, at) => {
        expect(verdict(withDrop(input, at, missing))).not.toBe('go');
      }),
      { numRuns: runs },
    );
  });
});

it('the resistances beside it never make a go of what the diode test alone does not pass', () => {
  const met = tally();
  fc.assert(
    fc.property(bothTests, (input) => {
      const { resistance: _both, ...alone } = input;
      const together = verdict(input);
      met.add(verdict(alone));
      if (together === 'go') expect(verdict(alone)).toBe('go');
    }),
    { numRuns: runs },
  );
  meetsAllVerdicts(met);
});

it('a go rests on drops that agree and on blocking, at both rails', () => {
  fc.assert(
    fc.property(fc.oneof(diodeTest, bothTests), (input) => {
      const assessment = assessBridgeDiode(input);
      if (assessment.verdict !== 'go') return;
      const passed = assessment.findings.flatMap((one) => ('rail' in one ? [`${one.code} ${one.rail}`] : []));
      for (const rail of ['plus', 'minus']) {
        expect(passed).toContain(`diode-balanced ${rail}`);
        expect(passed).toContain(`diode-blocks ${rail}`);
      }
    }),
    { numRuns: runs },
  );
});

it('the order of phases and of rails makes no difference to the verdict', () => {
  fc.assert(
    fc.property(diodeTest, (input) => {
      const turn = ({ U, V, W }: BridgeDiodeInput['plus']['forward']) => ({ U: V, V: W, W: U });
      const turned = ({ forward, reverse }: BridgeDiodeInput['plus']) => ({
        forward: turn(forward),
        reverse: turn(reverse),
      });
      expect(verdict({ ...input, plus: turned(input.minus), minus: turned(input.plus) })).toBe(verdict(input));
    }),
    { numRuns: runs },
  );
});

it('a suspect position is named whenever something fails', () => {
  fc.assert(
    fc.property(bothTests, (input) => {
      for (const one of assessBridgeDiode(input).findings) {
        if (one.severity === 'fail') expect('suspects' in one && one.suspects.length > 0).toBe(true);
      }
    }),
    { numRuns: runs },
  );
});
