import type { Verdict } from '../../src/kernel/assessment/assessment.ts';
import { absorption } from './absorption.ts';
import { bendTest } from './bend-test.ts';
import { brake } from './brake.ts';
import { brakingCircuit } from './braking-circuit.ts';
import { bridge } from './bridge.ts';
import { bridgeDiode } from './bridge-diode.ts';
import { cableLength } from './cable-length.ts';
import { coreResistance } from './core-resistance.ts';
import { Dice } from './dice.ts';
import { discharge } from './discharge.ts';
import { inputCircuit } from './input-circuit.ts';
import { insulation } from './insulation.ts';
import { isolation } from './isolation.ts';
import { poisoned } from './poison.ts';
import type { Subject } from './subject.ts';
import { testVoltage } from './test-voltage.ts';
import { trend } from './trend.ts';
import { winding } from './winding.ts';

/** A set for which a rule broke a condition, readable in a test's output. */
interface Unexplained {
  why:
    | 'go not allowed'
    | 'go beside an impossible figure'
    | 'go with something lacking'
    | 'worse raised it'
    | 'go rested on what is not needed'
    | 'thrown';
  input: unknown;
  changed?: unknown;
}

export interface Outcome {
  name: string;
  count: Record<Verdict, number>;
  /** How many sets were also tried with each kind of change. */
  changes: number;
  unexplained: number;
  /** The first few of these. */
  examples: Unexplained[];
}

const rank: Record<Verdict, number> = { 'no-go': 0, undecided: 1, go: 2 };

/** Tries one calculator with many sets: each is judged, then judged again with one change. */
export function tryOut<Input extends object>(subject: Subject<Input>, sets: number, seed: number): Outcome {
  const dice = new Dice(seed);
  const outcome: Outcome = {
    name: subject.name,
    count: { go: 0, 'no-go': 0, undecided: 0 },
    changes: 0,
    unexplained: 0,
    examples: [],
  };
  const note = (one: Unexplained) => {
    outcome.unexplained++;
    if (outcome.examples.length < 3) outcome.examples.push(one);
  };
  for (let set = 0; set < sets; set++) {
    const input = subject.make(dice);
    let changed: Input | undefined;
    try {
      const before = subject.verdict(input);
      outcome.count[before]++;
      if (before === 'go' && !subject.mayGo(input)) note({ why: 'go not allowed', input });
      const kind = dice.pick(['poisoned', 'lacking', 'worse', 'plain'] as const);
      if (kind === 'poisoned') changed = poisoned(input, dice, subject.signed);
      else if (kind === 'plain') changed = before === 'go' ? subject.plain?.(input) : undefined;
      else changed = subject[kind]?.(input, dice);
      if (changed === undefined) continue;
      outcome.changes++;
      const after = subject.verdict(changed);
      if (kind === 'poisoned' && after === 'go') note({ why: 'go beside an impossible figure', input, changed });
      if (kind === 'lacking' && after === 'go') note({ why: 'go with something lacking', input, changed });
      if (kind === 'worse' && rank[after] > rank[before]) note({ why: 'worse raised it', input, changed });
      if (kind === 'plain' && after !== 'go') note({ why: 'go rested on what is not needed', input, changed });
      if (after === 'go' && !subject.mayGo(changed)) note({ why: 'go not allowed', input: changed });
    } catch (error) {
      note({ why: 'thrown', input, changed: changed ?? String(error) });
    }
  }
  return outcome;
}

/** All calculators of the module, each with its own sets. */
export function tryOutAll(sets: number, seed: number): (() => Outcome)[] {
  const one =
    <Input extends object>(subject: Subject<Input>) =>
    () =>
      tryOut(subject, sets, seed);
  return [
    one(bridge),
    one(bridgeDiode),
    one(insulation),
    one(isolation),
    one(winding),
    one(absorption),
    one(discharge),
    one(testVoltage),
    one(cableLength),
    one(trend),
    one(brake),
    one(brakingCircuit),
    one(inputCircuit),
    one(coreResistance),
    one(bendTest),
  ];
}
