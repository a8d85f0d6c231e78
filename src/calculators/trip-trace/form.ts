import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { tripTrace } from './about.ts';
import { tripTraceFields } from './fields.ts';
import { tripTraceHeadline } from './headline.ts';
import { readKeptTrace } from './kept-trace.ts';
import { assessTripTrace } from './rule/assess.ts';
import type { TripTraceAssessment, TripTraceInput } from './rule/input.ts';
import { tripTraceFindings, tripTraceSteps } from './words.ts';

export function tripTraceInput({ readings, choices, texts }: ReadForm): TripTraceInput {
  const figure = (id: string) => {
    const reading = readings[id];
    return reading?.kind === 'value' && reading.value > 0 ? reading.value : undefined;
  };
  const figures = readKeptTrace(texts.trace ?? '')?.figures;
  const { stored, sensors, inductanceIs } = choices;
  const input: Record<keyof TripTraceInput, unknown> = {
    figures,
    inductance: figure('inductance'),
    inductanceIs: inductanceIs === 'smaller' ? 'smaller' : undefined,
    busVolts: figure('busVoltage'),
    tripAmps: figure('tripCurrent'),
    // What was measured with other pole pairs does not fit the new ones; the file is measured again if it is open.
    polePairs: figures?.polePairs,
    stored: stored === 'raw' || stored === 'filtered' ? stored : undefined,
    sensors: sensors === 'two' || sensors === 'three' ? sensors : undefined,
  };
  return Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined)) as TripTraceInput;
}

export const calculator = defineCalculator<TripTraceAssessment>({
  ...tripTrace,
  fields: tripTraceFields,
  assess: (read) => assessTripTrace(tripTraceInput(read)),
  findingTexts: tripTraceFindings,
  stepTexts: tripTraceSteps,
  headline: tripTraceHeadline,
  inSight: ['points-only', 'slope-against', 'sum-against', 'zero-against', 'oscillation-against', 'bus-against'],
  opens: {
    'check-bridge': { calculator: 'bridge', words: 'Output stage' },
    'measure-insulation': { calculator: 'insulation', words: 'Insulation to earth' },
    'measure-winding': { calculator: 'winding', words: 'Winding balance' },
  },
});
