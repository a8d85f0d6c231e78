import { between, seeded } from '../../kernel/random.ts';
import { faultedAxis } from '../simulator/faulted-axis.ts';
import { drawFieldInstruments, drawInstruments } from '../simulator/instruments.ts';
import { drawAxis } from '../simulator/parameters.ts';
import { drawAxisOfField } from '../world/field-axis.ts';
import { FieldMachine } from '../world/field-machine.ts';
import { noSlips } from '../world/slips.ts';
import { Machine } from './machine.ts';

const prefix = 'field-';

/** The id of a case with this fault on an axis of the field, with the instruments that people bring there. */
export const inField = (fault: string): string => `${prefix}${fault}`;

export const isInField = (fault: string): boolean => fault.startsWith(prefix);

/**
 * A machine with this fault, all figures drawn from `seed`. `windingCelsius` is drawn from 5 to 80 °C if it is not given;
 * the air has 10 to 35 °C and is never warmer than the winding. Throws for an unknown fault.
 */
export function drawMachine(fault: string, seed: number, windingCelsius?: number): Machine {
  const random = seeded(seed);
  const ofField = isInField(fault);
  const axis = ofField
    ? drawAxisOfField(fault.slice(prefix.length), random)
    : faultedAxis(fault, drawAxis(random), random);
  const drawn = between(random, 5, 80);
  const winding = windingCelsius ?? drawn;
  const air = Math.min(winding, between(random, 10, 35));
  if (!ofField) return new Machine(axis, drawInstruments(random), winding, air, random);
  return new FieldMachine(noSlips(axis, random), axis, drawFieldInstruments(random), winding, air, random);
}
