import { measureTrace } from '../../src/calculators/trip-trace/measure/measure-trace.ts';
import type { Trace } from '../../src/calculators/trip-trace/measure/trace.ts';
import { findTrip } from '../../src/calculators/trip-trace/read/find-trip.ts';
import { assessTripTrace } from '../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceAssessment } from '../../src/calculators/trip-trace/rule/input.ts';
import { seeded } from '../../src/practice/simulator/random.ts';
import { type AxisInMotion, drawAxisInMotion } from '../../src/practice/simulator/trip-run/axis-in-motion.ts';
import {
  drawRecorder,
  type Recorder,
  type Recording,
  recordRun,
} from '../../src/practice/simulator/trip-run/recorder.ts';
import { runAxis } from '../../src/practice/simulator/trip-run/run-axis.ts';
import { drawDisturbance, type TripClass } from '../../src/practice/simulator/trip-run/trip-classes.ts';

export interface SimulatedTrip {
  kind: TripClass;
  axis: AxisInMotion;
  recorder: Recorder;
  recording: Recording;
}

/** A trip of this class, drawn until the drive trips; the seed gives the same one everywhere. */
export function simulatedTrip(kind: TripClass, seed: number): SimulatedTrip {
  const random = seeded(seed);
  for (let tries = 0; tries < 60; tries++) {
    const axis = drawAxisInMotion(random);
    const recorder = drawRecorder(random, axis);
    const run = runAxis(axis, drawDisturbance(random, kind, axis), recorder.twoSensors, 0.6);
    // Supply faults and a load may stop the axis by another message than overcurrent: the recording ends there all the same.
    if (run.trip === undefined && !stopsAnyway(kind)) continue;
    const stopped =
      run.trip === undefined
        ? {
            ...run,
            trip: anotherStop(
              run.moments.map(({ bus }) => bus),
              axis,
            ),
          }
        : run;
    if (stopped.trip === undefined) continue;
    return { kind, axis, recorder, recording: recordRun(stopped, recorder, axis, random) };
  }
  throw new Error(`no trip of ${kind} from seed ${seed}`);
}

const stopsAnyway = (kind: TripClass) => kind === 'supply-braking';

/** Under- or overvoltage of the bus, as every drive watches it. */
function anotherStop(bus: readonly number[], axis: AxisInMotion): number | undefined {
  const at = bus.findIndex((one, i) => i > 100 && (one > 1.3 * axis.bus || one < 0.65 * axis.bus));
  return at < 0 ? undefined : at;
}

export function traceOf({ axis, recorder, recording }: SimulatedTrip): Trace {
  const time = Float64Array.from(recording.seconds);
  const [u, v, w] = recording.currents.map((one) => Float64Array.from(one));
  const currents = [u ?? time, v ?? time, w ?? time] as const;
  return {
    file: 'simulated.csv',
    time,
    step: Math.max(recorder.sampleSeconds, axis.controlSeconds),
    currents,
    inAmperes: true,
    measured: 3,
    bus: Float64Array.from(recording.bus),
    busInVolts: true,
    speed: Float64Array.from(recording.speed),
    speedInRpm: true,
    torque: Float64Array.from(recording.torque),
    ...findTrip(time, currents, recorder.sampleSeconds),
    polePairs: axis.polePairs,
  };
}

/** What the rules say of a simulated trip, with the data of the motor as a type plate has them. */
export function assessed(trip: SimulatedTrip): TripTraceAssessment {
  const { axis, recorder } = trip;
  return assessTripTrace({
    figures: measureTrace(traceOf(trip)),
    inductance: 2 * axis.inductance,
    busVolts: axis.bus,
    tripAmps: axis.tripCurrent,
    polePairs: axis.polePairs,
    stored: recorder.filterSeconds > 0 ? 'filtered' : 'raw',
    sensors: recorder.twoSensors ? 'two' : 'three',
  });
}

/** The recording as a file: semicolons, and units in the names. */
export function csvOf({ recording }: SimulatedTrip): string {
  const { seconds, currents, bus, speed, torque } = recording;
  const rows = seconds.map((one, i) =>
    [one * 1000, currents[0][i], currents[1][i], currents[2][i], bus[i], speed[i], torque[i]]
      .map((value) => String(Number((value ?? 0).toFixed(4))))
      .join(';'),
  );
  return ['t [ms];iU [A];iV [A];iW [A];Bus voltage [V];Speed actual [rpm];Torque command [Nm]', ...rows].join('\n');
}
