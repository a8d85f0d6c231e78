import { measureTrace } from '../../src/calculators/trip-trace/measure/measure-trace.ts';
import { medianStep, type Trace } from '../../src/calculators/trip-trace/measure/trace.ts';
import { findTrip } from '../../src/calculators/trip-trace/read/find-trip.ts';
import { assessTripTrace } from '../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceAssessment, TripTraceInput } from '../../src/calculators/trip-trace/rule/input.ts';
import { seeded } from '../../src/kernel/random.ts';
import { type AxisInMotion, drawAxisInMotion } from '../../src/practice/simulator/trip-run/axis-in-motion.ts';
import {
  drawRecorder,
  type Recorder,
  type Recording,
  recordRun,
} from '../../src/practice/simulator/trip-run/recorder.ts';
import { type Run, runAxis } from '../../src/practice/simulator/trip-run/run-axis.ts';
import { drawStatedData, type StatedData } from '../../src/practice/simulator/trip-run/stated-data.ts';
import { drawDisturbance, type TripClass } from '../../src/practice/simulator/trip-run/trip-classes.ts';

export interface SimulatedTrip {
  kind: TripClass;
  axis: AxisInMotion;
  recorder: Recorder;
  recording: Recording;
  stated: StatedData;
}

/** Samples that a recording must have: a page refuses shorter ones. */
const leastSamples = 20;

/** A trip of this class, drawn until the drive trips; the seed gives the same one everywhere. */
export function simulatedTrip(kind: TripClass, seed: number): SimulatedTrip {
  const random = seeded(seed);
  for (let tries = 0; tries < 200; tries++) {
    const axis = drawAxisInMotion(random);
    const recorder = drawRecorder(random, axis);
    const stated = drawStatedData(random, axis, recorder);
    const run = stopped(kind, runAxis(axis, drawDisturbance(random, kind, axis), 0.8), axis);
    // Without its fault the axis must run on, or something else tripped it.
    if (run.trip === undefined || runAxis(axis, { begins: Number.POSITIVE_INFINITY }, 0.8).trip !== undefined) continue;
    const recording = recordRun(run, recorder, axis, random);
    if (recording.seconds.length >= leastSamples) return { kind, axis, recorder, recording, stated };
  }
  throw new Error(`no trip of ${kind} from seed ${seed}`);
}

/** A supply fault may stop the axis by another message than overcurrent: under- or overvoltage, as every drive watches it. */
function stopped(kind: TripClass, run: Run, axis: AxisInMotion): Run {
  if (run.trip !== undefined || kind !== 'supply-braking') return run;
  const at = run.moments.findIndex(
    ({ bus }, i) => i > 100 && (bus > (axis.brakingShare + 0.1) * axis.bus || bus < 0.65 * axis.bus),
  );
  return { ...run, trip: at < 0 ? undefined : at };
}

/** The trace that the page makes of the file with what the person states. */
export function traceOf({ recording, stated }: SimulatedTrip): Trace {
  const time = Float64Array.from(recording.seconds);
  const step = medianStep(time);
  const [u, second, third] = recording.currents.map((one) => Float64Array.from(one)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const [v, w] = stated.exchanged ? [third, second] : [second, third];
  const currents = [u, v, stated.hasW ? w : u.map((one, i) => -one - (v[i] ?? 0))] as const;
  const sign = stated.speedReversed ? -1 : 1;
  return {
    file: 'simulated.csv',
    ...{ time, step, currents },
    inAmperes: stated.inAmperes,
    measured: stated.hasW ? 3 : 2,
    ...(stated.hasBus && { bus: Float64Array.from(recording.bus) }),
    busInVolts: stated.hasBus,
    ...(stated.hasSpeed && { speed: Float64Array.from(recording.speed, (one) => one * sign) }),
    speedInRpm: stated.hasSpeed && stated.speedInRpm,
    ...(stated.hasTorque && { torque: Float64Array.from(recording.torque, (one) => one * sign) }),
    ...findTrip(time, currents, step),
    ...(stated.polePairs !== undefined && { polePairs: stated.polePairs }),
  };
}

/** What the rules say of a simulated trip, with what the person states. */
export const assessed = (trip: SimulatedTrip): TripTraceAssessment => assessTripTrace(inputOf(trip));

export function inputOf(trip: SimulatedTrip, trace = traceOf(trip)): TripTraceInput {
  const { inductance, inductanceIs, busVolts, tripAmps, polePairs, stored, sensors } = trip.stated;
  const known = { inductance, inductanceIs, busVolts, tripAmps, polePairs, stored, sensors };
  return {
    figures: measureTrace(trace),
    ...(Object.fromEntries(
      Object.entries(known).filter(([, value]) => value !== undefined),
    ) as typeof known extends infer K ? { [name in keyof K]?: Exclude<K[name], undefined> } : never),
  };
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
