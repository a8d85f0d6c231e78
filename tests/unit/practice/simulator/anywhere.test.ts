import fc from 'fast-check';
import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { asFound, cores } from '../../../../src/practice/simulator/axis-state.ts';
import { allFaultIds, faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawFieldAxis } from '../../../../src/practice/simulator/field-parameters.ts';
import { drawFieldInstruments, drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { type Mode, measure } from '../../../../src/practice/simulator/measure.ts';
import { nodeIndex } from '../../../../src/practice/simulator/network.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { runs } from '../../../support/runs.ts';

type World = 'tidy' | 'field';

const axisOf = (fault: string, seed: number, world: World) => {
  const random = seeded(seed);
  return faultedAxis(fault, world === 'tidy' ? drawAxis(random) : drawFieldAxis(random), random);
};
const allNodes = (world: World) =>
  [0, 1, 2, 3, 4, 5, 6, 7].flatMap((seed) => [
    ...nodeIndex(axisNetwork(axisOf('nuisance', seed, world), asFound(20, 20))).keys(),
  ]);
const nodes = [...new Set(['ground', 'nowhere', ...allNodes('tidy'), ...allNodes('field')])];

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

const allOff = { U: false, V: false, W: false, PE: false, screen: false };
/** At a node between two blocking diodes, rounding alone moved the solution for ever. */
const betweenBlockingDiodes = {
  driveEnd: { ...allOff, U: true, W: true },
  motorEnd: allOff,
  idleCores: 'connected' as const,
  feedbackAtDrive: false,
  feedbackAtDevice: false,
  brakingResistor: false,
  dcLink: false,
  neighbourLeads: false,
  neighbourFeedback: false,
  filter: false,
  bent: false,
  jumpers: [],
  supply: false,
  enabled: false,
  axisSupported: false,
  busVolts: 0 as const,
  windingCelsius: 5,
  airCelsius: 5,
};

test('two leads anywhere, in any state of the axis, give a reading that the site can read', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...allFaultIds),
      fc.nat(),
      state,
      fc.constantFrom<Mode>('ohms', 'diode', 'volts', 'milliohms', 'insulation'),
      fc.record({ red: node, black: node }),
      fc.constantFrom<World>('tidy', 'field'),
      fc.constantFrom(undefined, 0, 3, 90),
      (fault, seed, now, mode, leads, world, held) => {
        const random = seeded(seed);
        const instruments = world === 'tidy' ? drawInstruments(random) : drawFieldInstruments(random);
        const { text, reading } = measure(axisOf(fault, seed, world), now, instruments, mode, leads, random, {
          ...(held !== undefined && { heldSeconds: held }),
        });
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
    {
      numRuns: runs,
      examples: [
        [
          'core-W-brake',
          1362967040,
          betweenBlockingDiodes,
          'milliohms',
          { red: 'ground', black: 'drive.V' },
          'field',
          3,
        ],
      ],
    },
  );
});
