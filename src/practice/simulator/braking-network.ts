import type { BuiltAxis } from './axis-defects.ts';
import type { AxisState } from './axis-state.ts';
import { junction } from './drive-network.ts';
import { type Element, ground, resistor } from './network.ts';
import { typical } from './typical.ts';

/**
 * Chopper of the drive, open at rest, and the braking resistor from `braking.plus` to `braking.minus`, in a housing on
 * ground. On the drive its leads end at `DC+` and `braking.chopper`.
 */
export function brakingNetwork({ parameters, broken }: BuiltAxis, state: AxisState): Element[] {
  const { brakingOhms, switchLeakOhms } = parameters;
  if (brakingOhms === undefined) return [];
  const { grown, saturation, slope } = junction(parameters, state);
  return [
    resistor('braking.chopper', 'DC-', switchLeakOhms / grown),
    { kind: 'diode', anode: 'braking.chopper', cathode: 'DC+', saturation, slope },
    { kind: 'diode', anode: 'DC-', cathode: 'braking.chopper', saturation, slope },
    ...(broken.includes('braking.resistor') ? [] : [resistor('braking.plus', 'braking.minus', brakingOhms)]),
    resistor('braking.minus', ground, typical.brakingInsulationOhms),
    ...(state.brakingResistor
      ? [
          resistor('DC+', 'braking.plus', typical.contactOhms),
          resistor('braking.minus', 'braking.chopper', typical.contactOhms),
        ]
      : []),
  ];
}
