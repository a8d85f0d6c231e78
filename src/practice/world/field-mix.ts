import causeData from '../../../content/field/causes.json' with { type: 'json' };
import prevalenceData from '../../../content/field/prevalences.json' with { type: 'json' };
import { chance, oneOf, type Random } from '../../kernel/random.ts';

/** A cause of the field. `weight`: per cent of visits, judgement; `faults` share it equally. */
export interface FieldCause {
  id: string;
  label: string;
  weight: number;
  faults: string[];
}

export const fieldCauses: readonly FieldCause[] = Object.entries(causeData.causes).map(([id, cause]) => ({
  id,
  ...cause,
}));

/** A property of an axis or a slip of a person, whose share of visits content/field gives. */
export type Prevalence = keyof typeof prevalenceData.prevalences;

const total = fieldCauses.reduce((sum, { weight }) => sum + weight, 0);

/** A cause by its weight, and one of its faults. */
export function drawCause(random: Random): { cause: FieldCause; fault: string } {
  let left = random() * total;
  const cause = fieldCauses.find(({ weight }) => {
    left -= weight;
    return left < 0;
  }) as FieldCause;
  return { cause, fault: oneOf(random, cause.faults) };
}

/** Whether this visit has the property or the slip. */
export function meets(random: Random, prevalence: Prevalence): boolean {
  return chance(random, prevalenceData.prevalences[prevalence].share);
}
