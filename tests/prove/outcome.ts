import type { DecisionKind } from '../../src/guide/decision.ts';
import type { Part } from '../../src/guide/evidence.ts';
import { faultedAxis } from '../../src/simulator/faulted-axis.ts';
import { drawInstruments } from '../../src/simulator/instruments.ts';
import { drawAxis } from '../../src/simulator/parameters.ts';
import { between, seeded } from '../../src/simulator/random.ts';
import { Robot, type Visit } from './robot.ts';
import { World } from './world.ts';

/** One visit to one faulty axis, held against the truth. */
export interface Outcome {
  fault: string;
  seed: number;
  kind: DecisionKind;
  named: Part[];
  overCalled: Part[];
  missed: Part[];
  steps: number;
  unsafe: string[];
  hidden: boolean;
  visit: Visit;
  moment: string;
}

/** Winding from 5 to 80 °C; the air as in a workshop, and no warmer than a cold winding. */
export function play(fault: string, seed: number): Outcome {
  const random = seeded(seed);
  const axis = faultedAxis(fault, drawAxis(random), random);
  const winding = between(random, 5, 80);
  const air = Math.min(winding, between(random, 10, 35));
  const world = new World(axis, drawInstruments(random), winding, air, random);
  const visit = new Robot(world).visit();
  const { kind, replace } = visit.decision;
  const named = replace.map(({ part }) => part);
  // By exclusion is not by proof: it is counted apart, and neither as named nor as over-called.
  const proven = kind === 'replace' ? named : [];
  return {
    fault,
    seed,
    kind,
    named,
    overCalled: proven.filter((part) => !axis.bad.includes(part)),
    missed: axis.bad.filter((part) => !named.includes(part)),
    steps: visit.steps,
    unsafe: world.unsafe,
    hidden: axis.hidden.length > 0,
    visit,
    moment: axis.moment,
  };
}
