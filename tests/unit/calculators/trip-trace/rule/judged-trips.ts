import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import type { Trace } from '../../../../../src/calculators/trip-trace/measure/trace.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceFinding, TripTraceInput } from '../../../../../src/calculators/trip-trace/rule/input.ts';
import { tripClasses } from '../../../../../src/practice/simulator/trip-run/trip-classes.ts';
import { runs } from '../../../../support/runs.ts';
import { inputOf, type SimulatedTrip, simulatedTrip, traceOf } from '../../../../support/trip-recordings.ts';

const each = Math.max(2, Math.min(10, Math.round(runs / 250)));

/** As much as a person can state, so that there are statements to lose. */
const wellStated = (trip: SimulatedTrip): SimulatedTrip => ({
  ...trip,
  stated: {
    ...trip.stated,
    inductance: 2 * trip.axis.inductance * (1 - trip.axis.saliency),
    inductanceIs: 'smaller',
    busVolts: trip.axis.bus,
    tripAmps: trip.axis.tripCurrent,
    polePairs: trip.axis.polePairs,
    stored: trip.recorder.filterSeconds > 0 ? 'filtered' : 'raw',
    sensors: trip.axis.sensors.computed === undefined ? 'three' : 'two',
    ...{ inAmperes: true, hasW: true, hasBus: true, hasSpeed: true, speedInRpm: true, hasTorque: true },
  },
});

const trips = tripClasses.flatMap((kind, row) =>
  Array.from({ length: each }, (_, index) => wellStated(simulatedTrip(kind, 400_000 + row * 1000 + index))),
);

export interface Case {
  trip: SimulatedTrip;
  trace: Trace;
  input: TripTraceInput;
  says: Set<string>;
}

const isStatement = ({ code }: TripTraceFinding) =>
  code !== 'points-only' && code !== 'trace-read' && code !== 'trip-not-recorded' && !code.endsWith('-nothing');

export const statements = (input: TripTraceInput) =>
  new Set<string>(
    assessTripTrace(input)
      .findings.filter(isStatement)
      .map(({ code }) => code),
  );

const judged = (trip: SimulatedTrip): Case => {
  const trace = traceOf(trip);
  const input = inputOf(trip, trace);
  return { trip, trace, input, says: statements(input) };
};
export const cases = trips.map(judged);

export const statementsOf = ({ input }: Case, trace: Trace, changed: Partial<TripTraceInput> = {}) =>
  statements({ ...input, ...changed, figures: measureTrace(trace) });
