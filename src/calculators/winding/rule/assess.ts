import {
  type Assessment,
  type FindingOf,
  findingMaker,
  type Nothing,
  type Step,
  step,
  verdictOf,
} from '../../../kernel/assessment/assessment.ts';
import {
  type FigurePayloads,
  type FigureStepCode,
  impossibleFigures,
} from '../../../kernel/assessment/possible-figures.ts';
import type { Conductor } from '../../../kernel/electrics/conductor-temperature.ts';
import type { Phase } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { type BalancePayloads, judgeBalance, lessBy } from './balance.ts';
import { type LeadHandling, type LeadPayloads, leadsOf } from './leads.ts';
import { type Pairs, sharedTerminal, type WindingPair, windingPairs } from './phases.ts';
import { type CorrectTo, compareWithReference, correctedFinding, type ReferencePayloads } from './reference.ts';
import { type Connection, phaseValues, type SuspectPayloads, suspects } from './suspect.ts';

/**
 * Line-to-line resistances in Ω, as the meter showed them; `instrument` describes the meter. What is left out is
 * unknown: without a statement of the leads nothing passes, an unknown connection is answered for star and delta,
 * without a winding temperature (°C) nothing is corrected, and without a nameplate or earlier value (Ω line to line,
 * with its temperature) nothing is compared.
 */
export interface WindingInput {
  readings: Pairs<Reading>;
  instrument?: Instrument;
  leads?: LeadHandling;
  /** The tips held together, in Ω. */
  leadOhms?: Reading;
  kind?: 'random-wound' | 'form-wound';
  connection?: Connection;
  conductor?: Conductor;
  temperature?: Reading;
  correctTo?: CorrectTo;
  reference?: Reading;
  referenceTemperature?: Reading;
}

interface WindingPayloads extends FigurePayloads, BalancePayloads, LeadPayloads, ReferencePayloads, SuspectPayloads {
  'winding-incomplete': { readings: WindingPair[] };
  'winding-open': { readings: WindingPair[] };
  'winding-open-phase': { terminal: Phase };
  'winding-open-alone': { readings: WindingPair[] };
  'winding-range-not-noted': { readings: WindingPair[] };
  'winding-passed': Nothing;
  'winding-failed': Nothing;
}

export type WindingFinding = FindingOf<WindingPayloads>;

const finding = findingMaker<WindingPayloads>();

export type WindingStepCode =
  | FigureStepCode
  | 'measure-pairs'
  | 'note-winding-range'
  | 'use-milliohm-meter'
  | 'use-four-leads'
  | 'state-leads'
  | 'read-leads-together'
  | 'repeat-pair'
  | 'note-temperatures'
  | 'compare-at-motor'
  | 'measure-at-motor'
  | 'ask-for-surge-test';

export type WindingAssessment = Assessment<WindingFinding, Step<WindingStepCode>>;

/**
 * Whether the three windings are alike: the largest deviation from the mean (arithmetic of NEMA MG 1) passes up to one
 * published limit, fails above another, and is undecided between them. An open winding fails. One step of the display
 * always counts as error, because servo windings read fractions of an ohm and a multimeter shows few digits of it. An
 * impossible figure (not finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is
 * judged.
 */
export function assessWinding(input: WindingInput): WindingAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return conclude(impossible);
  const { readings, instrument = {} } = input;
  const meter = { ...instrument, counts: Math.max(1, instrument.counts ?? 0) };
  const present = windingPairs.filter((pair) => readings[pair].kind !== 'missing');
  const absent = windingPairs.filter((pair) => readings[pair].kind === 'missing');
  const findings: WindingFinding[] = [];
  if (absent.length > 0) findings.push(finding('winding-incomplete', 'undecided', { readings: [...absent] }));
  const intervals: Pairs<Interval> = {
    UV: intervalOf(readings.UV, meter),
    VW: intervalOf(readings.VW, meter),
    WU: intervalOf(readings.WU, meter),
  };
  const open = present.filter((pair) => isOpen(readings[pair], intervals[pair]));
  if (open.length > 0) findings.push(...openFindings(open, absent.length));
  const unnoted = present.filter((pair) => !open.includes(pair) && intervals[pair].hi === Number.POSITIVE_INFINITY);
  if (unnoted.length > 0) findings.push(finding('winding-range-not-noted', 'undecided', { readings: [...unnoted] }));
  const all = open.length === 0 && unnoted.length === 0 && absent.length === 0;
  return conclude(all ? [...findings, ...judgeAll(input, intervals, meter)] : findings);
}

/** OL between two terminals of a winding of a few ohms is an open circuit on any range. */
function isOpen(reading: Reading, interval: Interval): boolean {
  if (reading.kind === 'over' && reading.atLeast === undefined) return true;
  return reading.kind !== 'missing' && interval.lo > limitValue('winding-open');
}

function openFindings(open: WindingPair[], absent: number): WindingFinding[] {
  const found: WindingFinding[] = [finding('winding-open', 'fail', { readings: [...open], limits: ['winding-open'] })];
  const terminal = sharedTerminal(open);
  if (absent > 0) return found;
  if (terminal !== undefined) found.push(finding('winding-open-phase', 'note', { terminal }));
  // Between two terminals the current also flows through the third one.
  if (open.length === 1) found.push(finding('winding-open-alone', 'caution', { readings: [...open] }));
  return found;
}

/** Three finite readings: leads, balance, each winding by itself, temperature, comparison. */
function judgeAll(input: WindingInput, intervals: Pairs<Interval>, meter: Instrument): WindingFinding[] {
  const { connection = 'unknown', conductor = 'copper', temperature = missing } = input;
  const least = Math.min(...windingPairs.map((pair) => intervals[pair].hi));
  const leads = leadsOf(input.leads ?? 'not-stated', input.leadOhms ?? missing, meter, least);
  const net = netValues(input.readings, leads.value);
  const goodLimit: LimitId = input.kind === 'form-wound' ? 'winding-unbalance-good-form' : 'winding-unbalance-good';
  const balance = judgeBalance({
    intervals,
    leads: leads.interval,
    fourLeads: input.leads === 'four',
    goodLimit,
    net: net && windingPairs.map((pair) => net[pair]),
  });
  const findings: WindingFinding[] = [...leads.findings, balance];
  const unlike = balance.code === 'winding-unbalanced' || balance.code === 'winding-between-limits';
  const middle = (leads.interval.lo + leads.interval.hi) / 2;
  const lines: Pairs<Interval> = {
    UV: lessBy(intervals.UV, middle),
    VW: lessBy(intervals.VW, middle),
    WU: lessBy(intervals.WU, middle),
  };
  if (unlike) findings.push(...suspects(lines, connection));
  if (net !== undefined) {
    findings.push(...phaseValues(net, connection));
    findings.push(...correctedFinding(net, temperature, conductor, input.correctTo ?? 'to-20'));
  }
  const mean = {
    lo: windingPairs.reduce((sum, pair) => sum + Math.max(0, intervals[pair].lo - leads.interval.hi), 0) / 3,
    hi: windingPairs.reduce((sum, pair) => sum + Math.max(0, intervals[pair].hi - leads.interval.lo), 0) / 3,
  };
  const { reference = missing, referenceTemperature = missing } = input;
  findings.push(...compareWithReference({ mean, temperature, conductor, reference, referenceTemperature }));
  return findings;
}

function netValues(readings: Pairs<Reading>, leads: number): Pairs<number> | undefined {
  const [UV, VW, WU] = windingPairs.map((pair) => {
    const reading = readings[pair];
    return reading.kind === 'value' ? reading.value - leads : Number.NaN;
  });
  if (UV === undefined || VW === undefined || WU === undefined) return undefined;
  return UV > 0 && VW > 0 && WU > 0 ? { UV, VW, WU } : undefined;
}

const stepAfter: Partial<Record<WindingFinding['code'], WindingStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'winding-incomplete': ['measure-pairs'],
  'winding-range-not-noted': ['note-winding-range'],
  'winding-open-alone': ['repeat-pair'],
  'winding-sum-of-others': ['repeat-pair'],
  'winding-leads-not-stated': ['state-leads'],
  'winding-leads-missing': ['read-leads-together'],
  'winding-leads-contradict': ['read-leads-together'],
  'winding-leads-exceed': ['read-leads-together'],
  'winding-needs-four-leads': ['use-four-leads'],
  'winding-too-coarse': ['use-milliohm-meter'],
  'winding-between-limits': ['ask-for-surge-test'],
  'winding-not-corrected': ['note-temperatures'],
  'winding-reference-no-temperature': ['note-temperatures'],
  'winding-reference-differs': ['compare-at-motor'],
  'winding-reference-too-close': ['compare-at-motor'],
  'winding-failed': ['measure-at-motor'],
};

function conclude(findings: WindingFinding[]): WindingAssessment {
  const verdict = verdictOf(findings);
  const summary: WindingFinding[] = [];
  if (verdict === 'go') summary.push(finding('winding-passed', 'note'));
  if (verdict === 'no-go') summary.push(finding('winding-failed', 'note'));
  const all = [...findings, ...summary];
  const codes = all.flatMap(({ code }) => stepAfter[code] ?? []);
  return { verdict, findings: all, next: [...new Set(codes)].map((code): Step<WindingStepCode> => step(code)) };
}
