import { between, chance, oneOf, type Random } from '../../../kernel/random.ts';

type Three = readonly [number, number, number];

/** Gain and offset (A) of a sensor that reads wrong. */
export interface SensorFault {
  phase: 0 | 1 | 2;
  gain: number;
  offset: number;
}

/** The current sensors of a sound drive: gains near one, offsets in A, and the phase that has none, if it has two of them. */
export interface CurrentSensors {
  gains: Three;
  offsets: Three;
  computed?: 0 | 1 | 2;
}

export function drawCurrentSensors(random: Random, tripCurrent: number): CurrentSensors {
  const three = (of: () => number): Three => [of(), of(), of()];
  const spread = between(random, 0.002, 0.02);
  return {
    gains: three(() => 1 + between(random, -spread, spread)),
    offsets: three(() => between(random, -spread, spread) * 0.5 * tripCurrent),
    ...(chance(random, 0.4) && { computed: oneOf(random, [0, 1, 2, 2, 2] as const) }),
  };
}

/** What the drive takes the currents for. */
export function sense(
  true_: Three,
  { gains, offsets, computed }: CurrentSensors,
  { sensor }: { sensor?: SensorFault },
): [number, number, number] {
  const one = (phase: 0 | 1 | 2) => true_[phase] * gains[phase] + offsets[phase];
  const shown: [number, number, number] = [one(0), one(1), one(2)];
  if (sensor !== undefined) shown[sensor.phase] = shown[sensor.phase] * sensor.gain + sensor.offset;
  if (computed !== undefined) withoutSensor(shown, computed);
  return shown;
}

/** Fills in the third current of a drive with two sensors. */
export function withoutSensor(shown: [number, number, number], computed: 0 | 1 | 2): void {
  shown[computed] = 0;
  shown[computed] = -shown[0] - shown[1] - shown[2];
}
