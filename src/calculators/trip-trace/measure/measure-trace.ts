import type { TraceFigures } from '../rule/figures.ts';
import { busOf } from './bus.ts';
import { motionOf, torqueCurrent } from './motion.ts';
import { oscillationOf } from './oscillation.ts';
import { clippedAt, peaksOf, slopesOf } from './peaks.ts';
import { rotationOf, speedJumpOf } from './rotation.ts';
import { mean, noiseOf } from './statistics.ts';
import { sumOf } from './sum.ts';
import { lastMoments, type Trace } from './trace.ts';
import { currentVector } from './vector.ts';
import { zeroPhase } from './zero-phase.ts';

/** Measures everything that a rule may need in a trace. Nothing is judged here. */
export function measureTrace(trace: Trace): TraceFigures {
  const { time, step, trip, currents, measured } = trace;
  const { from, to } = lastMoments(trace);
  const noise = Math.max(...currents.slice(0, measured).map((one) => noiseOf(one, from)));
  const peaks = peaksOf(trace);
  const vector = currentVector(trace);
  const along = torqueCurrent(trace, vector);
  const rotation = rotationOf(trace, vector, noise, peaks.atTrip);
  const clipped = clippedAt(trace, peaks.atTrip, noise);
  const parts = {
    clippedAt: clipped,
    polePairs: trace.polePairs,
    sum: sumOf(trace, noise, peaks.atTrip),
    zero: zeroPhase(trace, noise, peaks.atTrip),
    rotation,
    speedJump: speedJumpOf(trace),
    oscillation: oscillationOf(
      trace,
      signals(trace, vector.magnitude, along),
      rotation ? Math.abs(rotation.lastHertz) : hertzBySpeed(trace),
    ),
    motion: motionOf(trace, vector, along),
    bus: busOf(trace, vector),
  };
  let gapAtTrip = false;
  for (let i = from; i <= to; i++) gapAtTrip ||= (time[i] ?? 0) - (time[i - 1] ?? 0) > 1.5 * step;
  return {
    file: trace.file,
    rows: time.length,
    sampleSeconds: step,
    spanSeconds: (time[time.length - 1] ?? 0) - (time[0] ?? 0),
    tripSeconds: time[trip] ?? 0,
    tripFrom: trace.tripFrom,
    samplesAfter: time.length - 1 - trip,
    inAmperes: trace.inAmperes,
    busInVolts: trace.busInVolts,
    speedInRpm: trace.speedInRpm,
    measured,
    noise,
    gapAtTrip,
    peaks,
    slope: slopesOf(trace),
    ...(Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Partial<TraceFigures>),
  };
}

/** Frequency that the currents of a synchronous motor have by its speed, if the currents themselves don't show it. */
function hertzBySpeed({ speed, speedInRpm, polePairs, trip, step }: Trace): number | undefined {
  if (speed === undefined || !speedInRpm || polePairs === undefined) return undefined;
  const from = Math.max(0, trip - Math.round(0.06 / step));
  return (Math.abs(mean(speed, from, trip)) / 60) * polePairs;
}

function signals(
  { torque, speed }: Trace,
  magnitude: Float64Array,
  along: Float64Array | undefined,
): Parameters<typeof oscillationOf>[1] {
  return [
    ...(along ? [{ of: 'torque-current' as const, values: along }] : []),
    ...(torque ? [{ of: 'torque' as const, values: torque }] : []),
    ...(speed ? [{ of: 'speed' as const, values: speed }] : []),
    { of: 'current' as const, values: magnitude },
  ];
}
