import type { Damage, InspectedPart, Part, Symptom } from '../../kernel/vocabulary.ts';
import type { Circuit, Fault } from './fault-types.ts';
import { combinations, singleFaults } from './faults.ts';
import type { MotorChange } from './motor-network.ts';
import type { AxisParameters } from './parameters.ts';
import { between, betweenDecades, chance, oneOf, type Random } from './random.ts';

/** An axis with its faults, every figure drawn: truth and behaviour. What is connected is in `AxisState`. */
export interface FaultedAxis {
  id: string;
  label: string;
  parameters: AxisParameters;
  leaks: { a: string; b: string; ohms: number }[];
  broken: string[];
  motor: MotorChange;
  /** When it tripped, in the operator's words. */
  moment: Symptom;
  trips: { circuit: Circuit; moment: Symptom; repeats: number }[];
  seen: Record<InspectedPart, Damage>;
  bad: Part[];
  hidden: Fault['hidden'][];
}

/** Ids of all single faults and combinations. */
export const faultIds: readonly string[] = [...singleFaults, ...combinations].map(({ id }) => id);

function faultsOf(id: string): { label: string; faults: Fault[] } {
  const combination = combinations.find((one) => one.id === id);
  const ids = combination?.of ?? [id];
  const faults = ids.map((part) => {
    const found = singleFaults.find((fault) => fault.id === part);
    if (found === undefined) throw new Error(`no fault ${part}`);
    return found;
  });
  return { label: combination?.label ?? faults[0]?.label ?? id, faults };
}

/** Draws the figures of a fault, or of a combination, on this axis. Throws for an unknown id. */
export function faultedAxis(id: string, parameters: AxisParameters, random: Random): FaultedAxis {
  const { label, faults } = faultsOf(id);
  const moment = oneOf(random, faults[0]?.moments ?? []);
  const seen: Record<InspectedPart, Damage> = {
    drive: 'nothing',
    motor: 'nothing',
    motorCable: 'nothing',
    feedbackCable: 'nothing',
  };
  for (const one of faults.flatMap((fault) => fault.seen)) {
    if (chance(random, one.chance)) seen[one.part] = one.damage;
  }
  const shorted = faults.flatMap((fault) => Object.entries(fault.shortedShare));
  return {
    id,
    label,
    parameters,
    leaks: faults.flatMap(({ leaks }) =>
      leaks.map(({ a, b, ohms }) => ({ a, b, ohms: betweenDecades(random, ...ohms) })),
    ),
    broken: faults.flatMap(({ broken }) => broken),
    motor: {
      shortedShare: Object.fromEntries(
        shorted.map(([phase, range]) => [phase, between(random, ...(range ?? ([0, 0] as const)))]),
      ),
      insulationFactor: faults.reduce((factor, fault) => factor * betweenDecades(random, ...fault.insulationFactor), 1),
    },
    moment,
    // With the control off no voltage reaches the motor, so a consequence of the first fault shows only at the enable.
    trips: faults.map(({ circuit, repeats }, position) => ({
      circuit,
      repeats,
      moment: position > 0 && moment === 'control-off' ? 'on-enable' : moment,
    })),
    seen,
    bad: [...new Set(faults.flatMap(({ bad }) => bad))],
    hidden: faults.flatMap(({ hidden }) => (hidden === undefined ? [] : [hidden])),
  };
}
