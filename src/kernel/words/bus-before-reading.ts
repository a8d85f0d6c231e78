import type { FindingOf, Step } from '../assessment/assessment.ts';
import type { BusPayloads } from '../assessment/bus-discharge.ts';
import { inVolts } from '../reading/format-reading.ts';
import type { ShortWords } from './headlines.ts';
import type { FindingSentences, StepSentences } from './sentences.ts';

/** What calculators of the bus and its neighbours say about the bus that was measured before their readings. */
export const busBeforeFindings: FindingSentences<FindingOf<BusPayloads>> = {
  'bus-not-measured': () => 'The DC-bus voltage has not been measured. No reading is judged without it.',
  'bus-not-discharged': ({ volts, touchVolts }) =>
    volts === undefined
      ? `Stop. The bus is not discharged: the meter is over-range. Work begins below ${inVolts(touchVolts)}.`
      : `Stop. The bus is not shown to be discharged: up to ${inVolts(volts)} is on it, and work begins below ${inVolts(touchVolts)}.`,
  'bus-residual-voltage': ({ volts, falsifyingVolts }) =>
    `Up to ${inVolts(volts)} is left on the bus. Above ${inVolts(falsifyingVolts)} it falsifies the readings, so nothing is judged.`,
  'bus-discharged': () => 'The bus was measured and is discharged.',
};

export const busBeforeFound: ShortWords<FindingOf<BusPayloads>> = {
  'bus-not-discharged': ({ volts }) =>
    volts === undefined ? 'the bus is not discharged' : `up to ${inVolts(volts)} on the bus`,
  'bus-residual-voltage': ({ volts }) => `${inVolts(volts)} left on the bus falsifies the readings`,
};

export const busBeforeMissing: ShortWords<FindingOf<BusPayloads>> = {
  'bus-not-measured': () => 'the DC-bus voltage',
};

export type BusStepCode = 'measure-bus' | 'wait-and-measure-bus' | 'measure-bus-again';

export const busBeforeSteps: StepSentences<Step<BusStepCode>> = {
  'measure-bus': () => 'Measure the DC bus, DC+ to DC−, with a meter that you have just proved on a known source.',
  'wait-and-measure-bus': () =>
    'Keep away from the terminals. Make sure that the supply is locked out, wait the time on the warning label, and measure the bus again. If it stays up, find out what feeds it.',
  'measure-bus-again': () =>
    'Measure DC+ to DC− again in volts before you touch or connect anything: the meter charges the bus.',
};
