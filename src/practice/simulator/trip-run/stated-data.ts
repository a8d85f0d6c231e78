import { between, chance, oneOf, type Random } from '../../../kernel/random.ts';
import type { AxisInMotion } from './axis-in-motion.ts';
import type { Recorder } from './recorder.ts';

/** What the person knows and states about motor, drive and file; absent: not known, or no such column. */
export interface StatedData {
  /** Between two terminals, in H. */
  inductance?: number;
  /** It is the smaller of two that the data sheet states. */
  inductanceIs?: 'smaller';
  busVolts?: number;
  tripAmps?: number;
  polePairs?: number;
  stored?: 'raw' | 'filtered';
  sensors?: 'two' | 'three';
  /** The scale of the currents is known. */
  inAmperes: boolean;
  hasW: boolean;
  hasBus: boolean;
  hasSpeed: boolean;
  speedInRpm: boolean;
  hasTorque: boolean;
  /** V and W are exchanged, as a motor that turns the other way has them; the speed has the other sign. */
  exchanged: boolean;
  speedReversed: boolean;
}

/** Draws a person with a data sheet: some figures are missing, off by their tolerance, or of a neighbouring kind. */
export function drawStatedData(random: Random, axis: AxisInMotion, recorder: Recorder): StatedData {
  const known = (share: number) => chance(random, share);
  // A data sheet states the inductance at any position of a salient rotor, within its tolerance.
  const position = between(random, -axis.saliency, axis.saliency);
  const isSmaller = known(0.3);
  const inductance = 2 * axis.inductance * (1 + (isSmaller ? -axis.saliency : position)) * between(random, 0.8, 1.2);
  const wrongPairs = axis.polePairs * oneOf(random, [2, 0.5]);
  const filters = recorder.filterSeconds > recorder.sampleSeconds / 2;
  return {
    ...(known(0.8) && { inductance, ...(isSmaller && { inductanceIs: 'smaller' as const }) }),
    ...(known(0.8) && { busVolts: oneOf(random, [axis.bus, axis.bus * 1.1, axis.bus * 0.9]) }),
    // Some take the peak current for the trip level.
    ...(known(0.8) && { tripAmps: known(0.85) ? axis.tripCurrent : axis.peakCurrent }),
    ...(known(0.8) && { polePairs: known(0.95) ? axis.polePairs : wrongPairs }),
    ...(known(0.7) && { stored: filters && known(0.9) ? 'filtered' : 'raw' }),
    ...(known(0.6) && { sensors: axis.sensors.computed === undefined ? 'three' : 'two' }),
    inAmperes: known(0.9),
    hasW: known(0.85),
    hasBus: known(0.7),
    hasSpeed: known(0.75),
    speedInRpm: known(0.9),
    hasTorque: known(0.6),
    exchanged: known(0.15),
    speedReversed: known(0.15),
  };
}
