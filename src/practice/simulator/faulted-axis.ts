import { between, betweenDecades, chance, oneOf, type Random } from '../../kernel/random.ts';
import type { Cause, Damage, InspectedPart, Part, Symptom } from '../../kernel/vocabulary.ts';
import type { BuiltAxis } from './axis-defects.ts';
import { noDamage } from './fault-figures.ts';
import type { Circuit, Fault, Feel } from './fault-types.ts';
import { combinations, singleFaults } from './faults.ts';
import { fieldFaults } from './field-faults.ts';
import type { AxisParameters } from './parameters.ts';

/** An axis with its faults, every figure drawn: truth and behaviour. What is connected is in `AxisState`. */
export interface FaultedAxis extends BuiltAxis {
  id: string;
  label: string;
  /** Family of the first fault. */
  cause: Cause;
  /** When it tripped. What the operator says may be wrong. */
  moment: Symptom;
  trips: { circuit: Circuit; moment: Symptom; every: number }[];
  /** Messages that this drive gives besides the trip: enabled without a motor, powered without feedback. */
  otherMessages: { withoutMotor: boolean; withoutFeedback: boolean };
  seen: Record<InspectedPart, Damage>;
  /** What a hand feels at rest. */
  feel: Feel;
  /** Something was changed before the first trip. */
  changed: boolean;
  bad: Part[];
  hidden: Fault['hidden'][];
}

/** Ids of the tidy faults and combinations, in the order that decides which case is drawn. */
export const faultIds: readonly string[] = [...singleFaults, ...combinations].map(({ id }) => id);

/** Every id that `faultedAxis` knows. */
export const allFaultIds: readonly string[] = [...faultIds, ...fieldFaults.map(({ id }) => id)];

const byId = new Map([...singleFaults, ...fieldFaults].map((fault) => [fault.id, fault]));

function faultsOf(id: string): { label: string; faults: Fault[] } {
  const combination = combinations.find((one) => one.id === id);
  const faults = (combination?.of ?? [id]).map((part) => {
    const found = byId.get(part);
    if (found === undefined) throw new Error(`no fault ${part}`);
    return found;
  });
  return { label: combination?.label ?? faults[0]?.label ?? id, faults };
}

/** Draws the figures of a fault, or of a combination, on this axis. Throws for an unknown id. */
export function faultedAxis(id: string, parameters: AxisParameters, random: Random): FaultedAxis {
  const { label, faults } = faultsOf(id);
  const [first] = faults as [Fault, ...Fault[]];
  const moment = oneOf(random, first.moments);
  const seen = { ...noDamage };
  for (const one of faults.flatMap((fault) => fault.seen)) {
    if (chance(random, one.chance)) seen[one.part] = one.damage;
  }
  const shorted = faults.flatMap((fault) => Object.entries(fault.shortedShare));
  const drawn = <Defect extends { ohms: [number, number] }>(defect: Defect) => ({
    ...defect,
    ohms: betweenDecades(random, ...defect.ohms),
  });
  return {
    id,
    label,
    cause: first.cause,
    parameters,
    leaks: faults.flatMap(({ leaks }) => leaks.map(drawn)),
    broken: faults.flatMap(({ broken }) => broken),
    motor: {
      shortedShare: Object.fromEntries(
        shorted.map(([phase, range]) => [phase, between(random, ...(range ?? ([0, 0] as const)))]),
      ),
      insulationFactor: faults.reduce((factor, fault) => factor * betweenDecades(random, ...fault.insulationFactor), 1),
    },
    contacts: faults.flatMap(({ contacts = [] }) => contacts.map(drawn)),
    moment,
    trips: faults.map(({ circuit, every }) => ({ circuit, every, moment })),
    otherMessages: { withoutMotor: false, withoutFeedback: false },
    seen,
    feel: first.feels !== undefined && chance(random, first.feels.chance) ? first.feels.feel : 'free',
    changed: first.changed !== undefined && chance(random, first.changed),
    bad: [...new Set(faults.flatMap(({ bad }) => bad))],
    hidden: faults.flatMap(({ hidden }) => (hidden === undefined ? [] : [hidden])),
  };
}

/** The same axis before anything was bad. */
export function withoutFault(axis: FaultedAxis): FaultedAxis {
  return { ...axis, leaks: [], broken: [], contacts: [], motor: { shortedShare: {}, insulationFactor: 1 } };
}
