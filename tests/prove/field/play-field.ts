import { seeded } from '../../../src/kernel/random.ts';
import type { Cause, Part } from '../../../src/kernel/vocabulary.ts';
import type { Unsafe } from '../../../src/practice/case/unsafe-acts.ts';
import { Robot } from '../../../src/practice/robot/robot.ts';
import { drawFieldMachine } from '../../../src/practice/world/field-machine.ts';
import { drawCause } from '../../../src/practice/world/field-mix.ts';
import { asTold } from '../../../src/practice/world/person.ts';
import type { Slips } from '../../../src/practice/world/slips.ts';
import type { DecisionKind } from '../../../src/visit/guide/decision.ts';
import { type FieldResult, judgeVisit, possibleIn } from './judge-visit.ts';

/** One visit to an axis of the field, compared with the truth. */
export interface FieldOutcome {
  /** Id of the cause in content/field. */
  cause: string;
  fault: string;
  seed: number;
  result: FieldResult;
  kind: DecisionKind;
  named: Part[];
  bad: Part[];
  family: Cause;
  possible: readonly Cause[];
  steps: number;
  slips: Slips;
  unsafe: Unsafe[];
}

/** The visit of this number: cause, axis and person are drawn from it. */
export function playField(seed: number): FieldOutcome {
  const random = seeded(seed);
  const { cause, fault } = drawCause(random);
  const machine = drawFieldMachine(fault, random);
  const robot = new Robot(machine, (id, act) => asTold(id, act, machine));
  const { decision, steps } = played(robot, `visit ${seed}, ${fault}`);
  return {
    cause: cause.id,
    fault,
    seed,
    result: judgeVisit(machine.axis, decision),
    kind: decision.kind,
    named: decision.replace.map(({ part }) => part),
    bad: machine.axis.bad,
    family: machine.axis.cause,
    possible: possibleIn(decision),
    steps,
    slips: machine.slips,
    unsafe: machine.unsafe,
  };
}

function played(robot: Robot, visit: string): ReturnType<Robot['visit']> {
  try {
    return robot.visit();
  } catch (cause) {
    throw new Error(`${visit} came to no decision`, { cause });
  }
}
