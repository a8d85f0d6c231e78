import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { asFound, cores } from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis, faultIds } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { type Mode, measure } from '../../../../src/practice/simulator/measure.ts';
import { nodeIndex } from '../../../../src/practice/simulator/network.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { seeded } from '../../../../src/practice/simulator/random.ts';
import { runs } from '../../../support/runs.ts';

const axisOf = (fault: string, seed: number) => {
  const random = seeded(seed);
  return faultedAxis(fault, drawAxis(random), random);
};
const nodes = ['ground', 'nowhere', ...nodeIndex(axisNetwork(axisOf('nuisance', 1), asFound(20, 20))).keys()];

const node = fc.constantFrom(...nodes);
const end = fc.record(Object.fromEntries(cores.map((core) => [core, fc.boolean()]))) as fc.Arbitrary<
  Record<(typeof cores)[number], boolean>
>;
const state = fc.record({
  driveEnd: end,
  motorEnd: end,
  idleCores: fc.constantFrom('connected' as const, 'free' as const, 'to-pe' as const),
  feedbackAtDrive: fc.boolean(),
  feedbackAtDevice: fc.boolean(),
  brakingResistor: fc.boolean(),
  dcLink: fc.boolean(),
  neighbourLeads: fc.boolean(),
  neighbourFeedback: fc.boolean(),
  filter: fc.boolean(),
  bent: fc.boolean(),
  jumpers: fc.array(fc.tuple(node, node), { maxLength: 3 }),
  supply: fc.boolean(),
  enabled: fc.boolean(),
  axisSupported: fc.boolean(),
  busVolts: fc.constantFrom(0, 0.3, 60, 565),
  windingCelsius: fc.integer({ min: 5, max: 80 }),
  airCelsius: fc.integer({ min: 5, max: 40 }),
});

test('two leads anywhere, in any state of the axis, give a reading that the site can read', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...faultIds),
      fc.nat(),
      state,
      fc.constantFrom<Mode>('ohms', 'diode', 'volts', 'milliohms', 'insulation'),
      fc.record({ red: node, black: node }),
      (fault, seed, now, mode, leads) => {
        const random = seeded(seed);
        const { text, reading } = measure(
          axisOf(fault, seed),
          { ...asFound(20, 20), ...now },
          drawInstruments(random),
          mode,
          leads,
          random,
        );
        const quantity = mode === 'volts' || mode === 'diode' ? 'voltage' : 'resistance';
        // The site takes a voltage without its sign, which only shows how the leads were placed.
        const shown = text.replace('-', '');
        const asRead = parseReading(shown, quantity);
        // A point without a figure before it is ambiguous: it is typed as the form suggests, with a leading zero.
        const isAsked = !asRead.ok && asRead.error.code === 'ambiguous-point';
        const parsed = isAsked ? parseReading(shown.replace(/\d/, '0$&'), quantity) : asRead;
        expect(parsed.ok, text).toBe(true);
        expect(parsed.ok && parsed.reading.kind).toBe(reading.kind);
      },
    ),
    { numRuns: runs },
  );
});
