import { assessBridge } from '../../../calculators/bridge/rule/assess.ts';
import { type Rail, rails } from '../../../calculators/bridge/rule/switch-position.ts';
import type { Verdict } from '../../../kernel/assessment/assessment.ts';
import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { figureOf, type Reading, volts } from '../../../kernel/reading/reading.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { exactInstruments, leadsOffAt20, middle, middleAxis } from '../middle-axis.ts';

/** A transistor that leaks, by rail and terminal, and the ohms of the leak; Infinity is sound. */
export interface Leak {
  rail: Rail;
  phase: Phase;
  ohms: number;
}

export interface SixReadings {
  leak: Leak;
  readings: Record<Rail, Phases<Measurement>>;
  /** Largest difference within the rail of the leak, in percent of the smallest; Infinity beside a reading of zero. */
  spreadPercent: number;
  verdict: Verdict;
}

const node: Record<Rail, string> = { plus: 'DC+', minus: 'DC-' };

/** The measuring circuits of this drive are not alike above and below, so that the two rails read differently. */
const legOhms = { upper: 800e3, lower: 250e3 };

/** What the axis of this figure is, with one transistor leaky. */
export function leakyStage({ rail, phase, ohms }: Leak) {
  const each = (value: number): Phases<number> => ({ U: value, V: value, W: value });
  const axis = middleAxis({ upperOhms: each(legOhms.upper), lowerOhms: each(legOhms.lower) });
  const leaks = Number.isFinite(ohms) ? [{ a: node[rail], b: `drive.${phase}`, ohms }] : [];
  return { ...axis, leaks };
}

/** The six settled readings in ohms, taken as the article says, and what the calculator says to them. */
export function sixReadings(leak: Leak): SixReadings {
  const axis = leakyStage(leak);
  const reading = (rail: Rail, phase: Phase): Measurement => {
    // The diodes block: plus on DC+, and plus on the terminal against DC−.
    const leads = rail === 'plus' ? ['DC+', `drive.${phase}`] : [`drive.${phase}`, 'DC-'];
    const [red, black] = leads as [string, string];
    return measure(axis, leadsOffAt20, exactInstruments, 'ohms', { red, black }, middle);
  };
  const row = (rail: Rail): Phases<Measurement> => ({
    U: reading(rail, 'U'),
    V: reading(rail, 'V'),
    W: reading(rail, 'W'),
  });
  const readings = { plus: row('plus'), minus: row('minus') };
  return { leak, readings, spreadPercent: spreadOf(readings[leak.rail]), verdict: verdictOf(readings) };
}

function spreadOf(row: Phases<Measurement>): number {
  const figures = phases.map((phase) => figureOf(row[phase].reading) ?? 0);
  return (100 * (Math.max(...figures) - Math.min(...figures))) / Math.min(...figures);
}

function verdictOf(readings: SixReadings['readings']): Verdict {
  const of = (rail: Rail): Phases<Reading> => ({
    U: readings[rail].U.reading,
    V: readings[rail].V.reading,
    W: readings[rail].W.reading,
  });
  const [dcPlus, dcMinus] = rails.map(of) as [Phases<Reading>, Phases<Reading>];
  return assessBridge({
    busVoltage: volts(0),
    motorLeads: 'off',
    dcPlus,
    dcMinus,
    plusAgain: dcPlus.U,
    minusAgain: dcMinus.U,
    alsoOnBus: 'nothing',
  }).verdict;
}
