import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/**
 * How the test leads were kept out of the readings: four leads, two that were zeroed with the tips together, or two
 * whose own reading is subtracted here. Not stated counts as two, and nothing passes.
 */
export type LeadHandling = 'four' | 'zeroed' | 'subtract' | 'not-stated';

export interface LeadPayloads {
  'winding-leads-not-stated': Nothing;
  'winding-leads-subtracted': { leadOhms: number };
  'winding-leads-missing': Nothing;
  /** No `leadOhms` if the tips held together did not read a plain figure. */
  'winding-leads-contradict': { leadOhms?: number };
  'winding-leads-exceed': { leadOhms: number };
}

type LeadFinding = FindingOf<LeadPayloads>;

const finding = findingMaker<LeadPayloads>();

export interface Leads {
  /** What the leads can have added to each reading, in Ω. */
  interval: Interval;
  /** What is subtracted for display, in Ω. */
  value: number;
  findings: LeadFinding[];
}

const none: Interval = { lo: 0, hi: 0 };

/**
 * What the leads have added to readings whose lowest is `least` Ω. A contradictory statement is taken both ways: it
 * rules out go, and never lifts a no-go.
 */
export function leadsOf(handling: LeadHandling, reading: Reading, instrument: Instrument, least: number): Leads {
  const readings = ['leadOhms'];
  if (handling === 'not-stated') {
    const findings = [finding('winding-leads-not-stated', 'undecided', { readings: ['leads'] })];
    const most = reading.kind === 'value' ? intervalOf(reading, instrument).hi : least;
    return { interval: reading.kind === 'missing' ? none : { lo: 0, hi: most }, value: 0, findings };
  }
  if (reading.kind === 'missing') {
    if (handling !== 'subtract') return { interval: none, value: 0, findings: [] };
    const findings = [finding('winding-leads-missing', 'undecided', { readings })];
    return { interval: { lo: 0, hi: least }, value: 0, findings };
  }
  if (reading.kind !== 'value') {
    const findings = [finding('winding-leads-contradict', 'undecided', { readings })];
    return { interval: { lo: 0, hi: least }, value: 0, findings };
  }
  const interval = intervalOf(reading, instrument);
  const leadOhms = reading.value;
  if ((handling === 'four' || handling === 'zeroed') && reading.value > 0) {
    const findings = [finding('winding-leads-contradict', 'undecided', { readings, leadOhms })];
    return { interval: { lo: 0, hi: interval.hi }, value: 0, findings };
  }
  const code = interval.lo > least ? 'winding-leads-exceed' : 'winding-leads-subtracted';
  const severity = code === 'winding-leads-exceed' ? 'undecided' : 'note';
  return { interval, value: reading.value, findings: [finding(code, severity, { readings, leadOhms })] };
}
