import { type BuiltAxis, seriesOhms } from './axis-defects.ts';
import type { AxisState } from './axis-state.ts';
import { type Element, ground, resistor, source } from './network.ts';
import { typical } from './typical.ts';

/**
 * Supply of the feedback: `feedback.supply` and ground at the drive, the two cores `feedback.cable.plus` and
 * `feedback.cable.minus`, and the device behind them. The drive feeds it whenever it has power, even with the control off.
 */
export function feedbackNetwork(axis: BuiltAxis, state: AxisState): Element[] {
  const { contactOhms, feedbackCableOhms, feedbackSupplyOhms } = typical;
  const { feedbackVolts, feedbackDeviceOhms } = axis.parameters;
  const supply = state.supply
    ? source('feedback.supply', ground, feedbackVolts, feedbackSupplyOhms)
    : resistor('feedback.supply', ground, 10e3);
  const core = (name: 'feedback+' | 'feedback-') =>
    feedbackCableOhms +
    (['in-cable', 'cable-half', 'mated', 'motor-half'] as const).reduce(
      (sum, place) => sum + seriesOhms(axis, state, name, place),
      0,
    );
  return [
    supply,
    ...(state.feedbackAtDrive
      ? [
          resistor(
            'feedback.supply',
            'feedback.cable.plus',
            contactOhms + seriesOhms(axis, state, 'feedback+', 'drive-terminal'),
          ),
          resistor(
            'feedback.cable.minus',
            ground,
            contactOhms + seriesOhms(axis, state, 'feedback-', 'drive-terminal'),
          ),
        ]
      : []),
    ...(deviceOn(axis, state)
      ? [
          resistor('feedback.cable.plus', 'feedback.device.plus', core('feedback+')),
          resistor('feedback.cable.minus', 'feedback.device.minus', core('feedback-')),
        ]
      : []),
    resistor('feedback.device.plus', 'feedback.device.minus', feedbackDeviceOhms),
  ];
}

/** With one cable for all, the motor connector carries the feedback too. */
export function deviceOn({ parameters }: Pick<BuiltAxis, 'parameters'>, state: AxisState): boolean {
  return state.feedbackAtDevice && (!parameters.oneCable || state.motorEnd.U);
}
