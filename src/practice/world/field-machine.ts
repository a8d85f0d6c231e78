import { Machine } from '../case/machine.ts';
import type { Setting } from '../case/setting.ts';
import { type FaultedAxis, faultedAxis } from '../simulator/faulted-axis.ts';
import { drawInstruments } from '../simulator/instruments.ts';
import type { Measurement, Mode } from '../simulator/measure.ts';
import { drawAxis } from '../simulator/parameters.ts';
import { between, type Random } from '../simulator/random.ts';
import { meets } from './field-mix.ts';
import { drawSlips, type Slips } from './slips.ts';

/** The machine as this person handles it: slips of the hands happen here, so that each reading is the real one. */
export class FieldMachine extends Machine {
  readonly slips: Slips;

  constructor(slips: Slips, ...machine: ConstructorParameters<typeof Machine>) {
    super(...machine);
    this.slips = slips;
  }

  override measure(mode: Mode, red: string, black: string, setting: Setting = {}): Measurement {
    const exchanged =
      this.slips.leadsExchanged && (mode === 'ohms' || mode === 'diode') && (isRail(red) || isRail(black));
    return exchanged ? super.measure(mode, black, red, setting) : super.measure(mode, red, black, setting);
  }
}

const isRail = (node: string) => node === 'DC+' || node === 'DC-';

/** An axis of the field with this fault and the person who works on it; every figure is drawn. Throws for an unknown fault. */
export function drawFieldMachine(fault: string, random: Random): FieldMachine {
  const drawn = faultedAxis(fault, drawAxis(random), random);
  const axis: FaultedAxis = {
    ...drawn,
    otherMessages: {
      withoutMotor: meets(random, 'message-without-motor'),
      withoutFeedback: meets(random, 'message-without-feedback'),
    },
  };
  const winding = between(random, 5, 80);
  const air = Math.min(winding, between(random, 10, 35));
  return new FieldMachine(drawSlips(axis, random), axis, drawInstruments(random), winding, air, random);
}
