import { expect, test } from 'vitest';
import { assessInsulation } from '../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationInput } from '../../../src/calculators/insulation/rule/input.ts';
import { assessIsolation } from '../../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../../src/calculators/isolation/rule/input.ts';
import type { TestVoltageInput } from '../../../src/calculators/test-voltage/rule/input.ts';
import { validityOf } from '../../../src/kernel/electrics/correction-validity.ts';
import { limitLabels } from '../../../src/kernel/limit-labels.ts';
import { type LimitId, limit, limitIds } from '../../../src/kernel/limits.ts';
import { cableLength } from '../../oracle/cable-length.ts';
import { Dice } from '../../oracle/dice.ts';
import { discharge } from '../../oracle/discharge.ts';
import { insulation } from '../../oracle/insulation.ts';
import { isolation } from '../../oracle/isolation.ts';
import type { Subject } from '../../oracle/subject.ts';
import { testVoltage } from '../../oracle/test-voltage.ts';

// Own condition, no source: a figure that nobody has read may make a verdict undecided, never go or no-go, and it
// proves no part good or bad.

const recalled = limitIds.filter((id) => limitLabels[id].recalled);
const sets = Number(process.env.FIELDBOOK_RUNS ?? 2500);

/** What `run` gives with the figure at `times` its size. */
function withFigure<T>(id: LimitId, times: number, run: () => T): T {
  const { value, range } = limit(id);
  const scale = (end: number | undefined) => (end === undefined ? undefined : end * times);
  Object.assign(
    limit(id),
    value === undefined ? { range: { from: scale(range?.from), to: scale(range?.to) } } : { value: value * times },
  );
  try {
    return run();
  } finally {
    Object.assign(limit(id), value === undefined ? { range } : { value });
  }
}

/** Only decisions count: what becomes undecided is not a decision. */
const decided = (verdict: string) => (verdict === 'undecided' || verdict === 'suspect' ? undefined : verdict);

/** Every decision that the rule makes with the figure stands without it. */
function standsWithout<Input extends object>(
  { make }: Pick<Subject<Input>, 'make'>,
  decisions: (input: Input) => string[],
  without: (input: Input) => string[],
) {
  const dice = new Dice(7);
  let count = 0;
  for (let set = 0; set < sets; set++) {
    const input = make(dice);
    const other = without(input);
    for (const [index, one] of decisions(input).entries()) {
      if (decided(one) === undefined) continue;
      count++;
      expect({ input, decision: other[index] }).toEqual({ input, decision: one });
    }
  }
  expect(count).toBeGreaterThan(sets / 20);
}

function whateverItsSize<Input extends object>(id: LimitId, { make, verdict }: Subject<Input>) {
  for (const times of [1e-3, 1e3]) {
    standsWithout(
      { make },
      (input) => [verdict(input)],
      (input) => [withFigure(id, times, () => verdict(input))],
    );
  }
}

const partsOf = (input: IsolationInput) => {
  const { parts } = assessIsolation(input);
  return [parts.cable, parts.motor, parts.protectiveConductor].map((one) => one.replace('not-tested', 'undecided'));
};

/** A part is proven good or bad as well if nobody stated what its cable is made of. */
function lengthProvesNothing() {
  const cables: Pick<Subject<IsolationInput>, 'make'> = {
    make: (dice) => {
      const low = () => ({ kind: 'value', value: 10 ** (4 + 5 * dice.roll()), unit: 'Ω', resolution: 1 }) as const;
      const { motor: _motor, ...rest } = isolation.make(dice);
      const row = { U: low(), V: low(), W: low() };
      return {
        ...rest,
        ...{ cable: { ...row, PE: low() }, bonded: row, cableEndsChecked: true, idleCores: 'to-pe', filter: 'none' },
        moreOfCable: {
          again: low(),
          dried: dice.pick(['yes', 'no'] as const),
          ...(dice.chance(0.5) && { sister: low() }),
        },
        cableMetres: { kind: 'value', value: dice.log(1, 500), unit: 'm', resolution: 1 },
        cableMaterial: dice.pick(['pvc', 'xlpe'] as const),
        cableTemperature: { kind: 'value', value: dice.pick([10, 15.6, 20, 25]), unit: '°C', resolution: 0.1 },
      };
    },
  };
  standsWithout(cables, partsOf, (input) => partsOf({ ...input, cableMaterial: 'not-stated' }));
}

/** Where a recalled correction is valid, the rule that was read is valid too, and both must say the same. */
function correctionsAgree() {
  const byHalving = <Input extends { correction: string }>(input: Input): Input => ({
    ...input,
    correction: 'halving',
  });
  const within = ({ windingTemperature, correction }: Pick<InsulationInput, 'windingTemperature' | 'correction'>) => {
    const { from, to } = validityOf(correction);
    return windingTemperature.kind === 'value' && windingTemperature.value >= from && windingTemperature.value <= to;
  };
  const apart = (input: IsolationInput) => [assessIsolation(input).verdict, ...partsOf(input)];
  standsWithout(
    isolation,
    (input) => (within(input) ? apart(input) : []),
    (input) => apart(byHalving(input)),
  );
  const judged = (input: InsulationInput) => [assessInsulation(input).verdict];
  standsWithout(insulation, judged, (input) => judged(byHalving(input)));
}

/** How each recalled figure may enter a verdict. One that is not listed has not been thought of. */
const proofs: Partial<Record<LimitId, () => void>> = {
  'cable-constant-pvc': lengthProvesNothing,
  'cable-constant-xlpe': lengthProvesNothing,
  'thermosetting-hot': correctionsAgree,
  'thermosetting-cool': correctionsAgree,
  'solid-insulation-to-20': correctionsAgree,
  'low-voltage-end': () => {
    const { verdict } = testVoltage;
    const unbounded = (input: TestVoltageInput) => [withFigure('low-voltage-end', 1e9, () => verdict(input))];
    standsWithout(testVoltage, (input) => [verdict(input)], unbounded);
  },
  'insulation-tester-short-circuit': () => whateverItsSize('insulation-tester-short-circuit', insulation),
  'discharge-after-test': () => whateverItsSize('discharge-after-test', insulation),
  'capacitor-time-high': () => whateverItsSize('capacitor-time-high', discharge),
  'capacitor-shock-energy-later': () => whateverItsSize('capacitor-shock-energy-later', discharge),
};

test('at most twelve figures are recalled, and how each enters a verdict is known', () => {
  expect(recalled.length).toBeLessThanOrEqual(12);
  expect(Object.keys(proofs).sort()).toEqual([...recalled].sort());
});

test.each(Object.entries(proofs))('%s decides no verdict alone', (_, proof) => proof());

test('a cable alone is good by the after-trip limit and bad by it, whatever its constant', () => {
  const { make, verdict } = cableLength;
  // K bars a decision, so the smallest one, which explains nothing, keeps every go, and the largest one every no-go.
  for (const [id, times, kept] of [
    ['cable-constant-pvc', 1e-6, 'go'],
    ['cable-constant-xlpe', 1e-6, 'go'],
    ['cable-constant-pvc', 1e6, 'no-go'],
    ['cable-constant-xlpe', 1e6, 'no-go'],
  ] as const) {
    const dice = new Dice(3);
    for (let set = 0; set < sets; set++) {
      const input = make(dice);
      if (verdict(input) !== kept) continue;
      const without = withFigure(id, times, () => verdict(input));
      expect({ input, verdict: without }).toEqual({ input, verdict: kept });
    }
  }
});
