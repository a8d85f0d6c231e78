import { phases } from '../../kernel/electrics/phases.ts';
import { type BuiltAxis, seriesOhms } from './axis-defects.ts';
import type { AxisState } from './axis-state.ts';
import { copperOhms } from './copper.ts';
import { type Element, ground, resistor, source } from './network.ts';
import { typical } from './typical.ts';

/**
 * Star-connected motor: pins `motor.U` … `motor.W`, the middle of each winding `motor.mid.U` …, `motor.star`,
 * `motor.PE` and `motor.frame`. `testSeconds` is how long a test voltage has been on: absorption fades with it.
 */
export function motorNetwork(axis: BuiltAxis, state: AxisState, testSeconds: number): Element[] {
  const { parameters, motor } = axis;
  const warmth = 2 ** ((20 - state.windingCelsius) / parameters.kelvinPerHalving);
  const absorption = testSeconds ** typical.absorptionPower / typical.absorptionConductance;
  return [
    ...phases.flatMap((phase) => {
      const sound = copperOhms(parameters.windingOhms[phase], state.windingCelsius);
      const turns = sound * (1 - (motor.shortedShare[phase] ?? 0));
      const insulation = parameters.frameInsulationOhms[phase] * warmth * motor.insulationFactor;
      return [
        resistor(`motor.${phase}`, `motor.mid.${phase}`, turns / 2 + seriesOhms(axis, state, phase, 'motor-half')),
        resistor(`motor.mid.${phase}`, 'motor.star', turns / 2),
        resistor(`motor.${phase}`, 'motor.frame', insulation),
        resistor(`motor.${phase}`, 'motor.frame', absorption),
      ];
    }),
    resistor('motor.PE', 'motor.frame', typical.motorPeOhms + seriesOhms(axis, state, 'PE', 'motor-half')),
    resistor('motor.frame', ground, typical.frameBondOhms),
    ...sensor(axis, state),
  ];
}

/** A temperature sensor within the winding, on the drive's input through the motor cable. */
function sensor(axis: BuiltAxis, state: AxisState): Element[] {
  if (!axis.parameters.idleCores.includes('sensor+')) return [];
  const contacts = seriesOhms(axis, state, 'sensor+', 'motor-half') + seriesOhms(axis, state, 'sensor-', 'motor-half');
  const { sensorOhms, sensorInsulationOhms, sensorVolts, sensorInputOhms, groundedOhms } = typical;
  return [
    resistor('motor.sensor+', 'motor.sensor-', sensorOhms + contacts),
    resistor('motor.sensor-', 'motor.star', sensorInsulationOhms),
    resistor('motor.sensor-', 'motor.frame', sensorInsulationOhms),
    source('drive.sensor+', 'drive.sensor-', state.supply ? sensorVolts : 0, sensorInputOhms),
    resistor('drive.sensor-', ground, groundedOhms),
  ];
}
