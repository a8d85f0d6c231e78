import {
  type Assessment,
  type Finding,
  type FindingOf,
  findingMaker,
  type Nothing,
  type Step,
  step,
  verdictOf,
} from '../../../kernel/assessment/assessment.ts';
import { type BusPayloads, judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import {
  type FigurePayloads,
  type FigureStepCode,
  impossibleFigures,
} from '../../../kernel/assessment/possible-figures.ts';
import type { Phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { judgeRail, shortedTerminals } from './rail.ts';
import type { RailPayloads } from './rail-findings.ts';
import type { SwitchPosition } from './switch-position.ts';

export interface MotorLeadsPayloads {
  'motor-leads-connected': Nothing;
  'motor-leads-not-stated': Nothing;
}

interface BridgePayloads extends FigurePayloads, BusPayloads, RailPayloads, MotorLeadsPayloads {
  'all-open': Nothing;
  'tips-together-proven': Nothing;
  'bridge-more-than-one': Nothing;
  'bridge-failed': Nothing;
  'bridge-passed': Nothing;
}

export type BridgeFinding = FindingOf<BridgePayloads>;

const finding = findingMaker<BridgePayloads>();

export type BridgeStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'discharge-residual'
  | 'take-motor-leads-off'
  | 'state-motor-leads'
  | 'hold-tips-together'
  | 'check-polarity'
  | 'measure-missing'
  | 'use-higher-range'
  | 'repeat-short'
  | 'repeat-more-exactly'
  | 'compare-known-good'
  | 'replace-complete-drive'
  | 'test-motor-and-cable'
  | 'test-insulation-next';

/**
 * The six-reading check of a drive's output stage, by multimeter in resistance mode, readings in ohms.
 * `busVoltage` (V) is measured just before; the motor leads are off the drive, since a winding joins
 * the three terminals and makes any fault look balanced. `tolerancePercent` is 10 % unless changed.
 * `instrument` describes the multimeter. Common practice, no source; decision rule: JCGM 106:2012.
 */
export interface BridgeInput {
  busVoltage: Reading;
  motorLeads: 'off' | 'connected' | 'not-stated';
  dcPlus: Phases<Reading>;
  dcMinus: Phases<Reading>;
  /**
   * The two meter tips held together, in Ω: separates an open stage from an open lead. Needed if all six are
   * over-range.
   */
  tipsTogether?: Reading;
  tolerancePercent?: number;
  instrument?: Instrument;
}

export type BridgeAssessment = Assessment<BridgeFinding, Step<BridgeStepCode>>;

/**
 * An impossible figure (not finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is
 * judged.
 */
export function assessBridge(input: BridgeInput): BridgeAssessment {
  const impossible = impossibleFigures(input, ['busVoltage']);
  if (impossible.length > 0) return conclude(impossible);
  const discharge = judgeDischarge(input.busVoltage);
  // No resistance is judged beside a bus that may be charged, nor through a motor that joins the terminals.
  if (discharge.severity !== 'pass') return conclude([discharge]);
  if (input.motorLeads === 'connected') {
    return conclude([finding('motor-leads-connected', 'undecided', { readings: ['motorLeads'] })]);
  }
  const tolerance = input.tolerancePercent ?? limitValue('bridge-tolerance');
  const instrument = input.instrument ?? {};
  // A shorted switch joins its terminal to one end of the bus, so the other rail reads the same terminal through the
  // bleed resistor.
  const plus = judgeRail('plus', input.dcPlus, tolerance, instrument, shortedTerminals(input.dcMinus, instrument));
  const minus = judgeRail('minus', input.dcMinus, tolerance, instrument, shortedTerminals(input.dcPlus, instrument));
  const findings: BridgeFinding[] = [discharge, ...plus, ...minus];
  findings.push(...judgeAllOpen(findings, input.tipsTogether ?? missing));
  if (input.motorLeads !== 'off') {
    findings.push(finding('motor-leads-not-stated', 'undecided', { readings: ['motorLeads'] }));
  }
  return conclude(findings);
}

/** A broken lead or a slipped tip gives six over-range readings too. */
function judgeAllOpen(findings: readonly BridgeFinding[], tips: Reading): BridgeFinding[] {
  if (findings.filter(({ code }) => code === 'rail-open').length < 2) return [];
  const limits: LimitId[] = ['tips-together'];
  const joined = tips.kind !== 'missing' && intervalOf(tips).hi <= limitValue('tips-together');
  const readings = ['tipsTogether'];
  if (joined) return [finding('tips-together-proven', 'pass', { readings, limits })];
  return [finding('all-open', 'undecided', { readings, limits })];
}

/** The positions that failed, for the drawing and the text. */
export function suspectPositions(
  findings: readonly (Finding | (Finding & { suspects: readonly SwitchPosition[] }))[],
): SwitchPosition[] {
  const named = findings.flatMap((one) => (one.severity === 'fail' && 'suspects' in one ? one.suspects : []));
  return [...new Set(named)];
}

function conclude(findings: BridgeFinding[]): BridgeAssessment {
  const verdict = verdictOf(findings);
  const summary: BridgeFinding[] = [];
  if (verdict === 'no-go') {
    if (suspectPositions(findings).length > 1) summary.push(finding('bridge-more-than-one', 'caution'));
    summary.push(finding('bridge-failed', 'note'));
  }
  if (verdict === 'go') summary.push(finding('bridge-passed', 'note'));
  const all = [...findings, ...summary];
  return { verdict, findings: all, next: nextSteps(all) };
}

const stepAfter: Partial<Record<BridgeFinding['code'], BridgeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['discharge-residual'],
  'all-open': ['hold-tips-together'],
  'rail-all-short': ['check-polarity'],
  'motor-leads-connected': ['take-motor-leads-off'],
  'motor-leads-not-stated': ['state-motor-leads'],
  'rail-incomplete': ['measure-missing'],
  'rail-range-too-low': ['use-higher-range'],
  'rail-range-not-noted': ['use-higher-range'],
  'rail-short-possible': ['repeat-short'],
  'rail-too-close': ['repeat-more-exactly'],
  'rail-lower-than-usual': ['compare-known-good'],
  'bridge-failed': ['replace-complete-drive', 'test-motor-and-cable'],
  'bridge-passed': ['test-insulation-next'],
};

function nextSteps(findings: readonly BridgeFinding[]): Step<BridgeStepCode>[] {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  return [...new Set(codes)].map((code) => step(code));
}
