import type { AxisState } from './axis-state.ts';
import { type Element, ground, resistor, source } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/**
 * Supply of the feedback: `feedback.supply` and ground at the drive, the two cores `feedback.cable.plus` and
 * `feedback.cable.minus`, and the device behind them. The drive feeds it whenever it has power, even with the control off.
 */
export function feedbackNetwork(axis: AxisParameters, state: AxisState): Element[] {
  const { contactOhms, feedbackCableOhms, feedbackSupplyOhms } = typical;
  const supply = state.supply
    ? source('feedback.supply', ground, axis.feedbackVolts, feedbackSupplyOhms)
    : resistor('feedback.supply', ground, 10e3);
  return [
    supply,
    ...(state.feedbackAtDrive
      ? [
          resistor('feedback.supply', 'feedback.cable.plus', contactOhms),
          resistor('feedback.cable.minus', ground, contactOhms),
        ]
      : []),
    ...(state.feedbackAtDevice
      ? [
          resistor('feedback.cable.plus', 'feedback.device.plus', feedbackCableOhms),
          resistor('feedback.cable.minus', 'feedback.device.minus', feedbackCableOhms),
        ]
      : []),
    resistor('feedback.device.plus', 'feedback.device.minus', axis.feedbackDeviceOhms),
  ];
}
