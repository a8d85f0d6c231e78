import { betweenDecades, type Random } from '../../kernel/random.ts';
import { type FaultedAxis, faultedAxis } from '../simulator/faulted-axis.ts';
import { field } from '../simulator/field-figures.ts';
import { drawFieldAxis, equippedFor } from '../simulator/field-parameters.ts';
import { meets } from './field-mix.ts';

/** An axis of the field with this fault and the equipment that the fault needs. Throws for an unknown fault. */
export function drawAxisOfField(fault: string, random: Random): FaultedAxis {
  const drawn = faultedAxis(fault, drawFieldAxis(random), random);
  const equipped = equippedFor(drawn.parameters, needed(drawn), random);
  const withFilter = drawn.cause === 'output-filter' && equipped.filterOhms === undefined;
  const filterOhms = betweenDecades(random, ...field.filterOhms);
  return {
    ...drawn,
    parameters: withFilter ? { ...equipped, filterOhms } : equipped,
    otherMessages: {
      withoutMotor: meets(random, 'message-without-motor'),
      withoutFeedback: meets(random, 'message-without-feedback'),
    },
  };
}

/** Nodes that the axis must have for its fault. */
function needed({ leaks, broken, trips, cause }: FaultedAxis): string[] {
  const neighbour = trips.some(({ circuit }) => circuit.startsWith('neighbour'));
  return [
    ...leaks.flatMap(({ a, b }) => [a, b]),
    ...broken,
    ...(neighbour ? ['neighbour.'] : []),
    ...(cause === 'braking-circuit' ? ['braking.'] : []),
  ];
}
