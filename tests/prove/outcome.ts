import type { Cause, Part } from '../../src/kernel/vocabulary.ts';
import { drawMachine } from '../../src/practice/case/draw-machine.ts';
import type { Unsafe } from '../../src/practice/case/unsafe-acts.ts';
import { Robot } from '../../src/practice/robot/robot.ts';
import type { Fault } from '../../src/practice/simulator/fault-types.ts';
import type { DecisionKind } from '../../src/visit/guide/decision.ts';
import type { OpenItem } from '../../src/visit/guide/open-items.ts';
import { clocked } from './clock.ts';

/** One visit to one faulty axis, compared with the truth. */
export interface Outcome {
  label: string;
  seed: number;
  kind: DecisionKind;
  named: Part[];
  open: OpenItem[];
  /** Families of causes that no reading excludes. */
  possible: Cause[];
  /** Every bad part is proven, and no other. */
  exact: boolean;
  /** Proven bad, but actually sound. */
  overCalled: Part[];
  /** Actually bad, but not proven. */
  missed: Part[];
  steps: number;
  /** Minutes at the machine, and how often it was switched on. */
  minutes: number;
  powerUps: number;
  unsafe: Unsafe[];
  hidden: Fault['hidden'];
}

export function play(fault: string, seed: number): Outcome {
  const machine = drawMachine(fault, seed);
  const { axis } = machine;
  const { decision, steps, answers } = new Robot(machine).visit();
  const named = decision.replace.map(({ part }) => part);
  const proven = decision.kind === 'replace' ? named : [];
  const overCalled = proven.filter((part) => !axis.bad.includes(part));
  const missed = axis.bad.filter((part) => !proven.includes(part));
  const judged = decision.kind === 'replace' || axis.bad.length === 0;
  return {
    label: axis.label,
    seed,
    kind: decision.kind,
    named,
    open: decision.open,
    possible: decision.possible,
    exact: judged && named.length === proven.length && overCalled.length === 0 && missed.length === 0,
    overCalled,
    missed,
    steps,
    ...clocked(answers),
    unsafe: machine.unsafe,
    hidden: axis.hidden[0],
  };
}
