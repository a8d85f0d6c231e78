import { phases } from '../../kernel/electrics/phases.ts';
import type { AxisState } from './axis-state.ts';
import { copperOhms } from './copper.ts';
import { type Element, ground, resistor } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** How a fault changes the motor itself: shares of a winding shorted, and what water leaves of its insulation. */
export interface MotorChange {
  shortedShare: Partial<Record<string, number>>;
  insulationFactor: number;
}

/**
 * Star-connected motor: pins `motor.U` … `motor.W`, the middle of each winding `motor.mid.U` …, `motor.star`,
 * `motor.PE` and `motor.frame`. `testSeconds` is how long a test voltage has been on: absorption fades with it.
 */
export function motorNetwork(
  axis: AxisParameters,
  state: AxisState,
  change: MotorChange,
  testSeconds: number,
): Element[] {
  const warmth = 2 ** ((20 - state.windingCelsius) / axis.kelvinPerHalving);
  const absorption = testSeconds ** typical.absorptionPower / typical.absorptionConductance;
  return [
    ...phases.flatMap((phase) => {
      const sound = copperOhms(axis.windingOhms[phase], state.windingCelsius);
      const turns = sound * (1 - (change.shortedShare[phase] ?? 0));
      return [
        resistor(`motor.${phase}`, `motor.mid.${phase}`, turns / 2),
        resistor(`motor.mid.${phase}`, 'motor.star', turns / 2),
        resistor(`motor.${phase}`, 'motor.frame', axis.frameInsulationOhms[phase] * warmth * change.insulationFactor),
        resistor(`motor.${phase}`, 'motor.frame', absorption),
      ];
    }),
    resistor('motor.PE', 'motor.frame', typical.motorPeOhms),
    resistor('motor.frame', ground, typical.frameBondOhms),
  ];
}
