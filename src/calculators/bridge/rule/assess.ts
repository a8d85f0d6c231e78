import { type Assessment, findingMaker, type Step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import type { Phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { judgeBusOhms } from './bus-ohms.ts';
import { type Lacking, lackingForConviction } from './conviction.ts';
import type { BridgeFinding, BridgePayloads } from './findings.ts';
import { type BridgeStepCode, nextSteps } from './next-steps.ts';
import { judgeRail, shortedTerminals } from './rail.ts';
import type { RailRow } from './rail-reading.ts';
import { type SecondReadings, weighSecondReadings, worstPosition } from './second-readings.ts';
import { suspectPositions } from './suspect-positions.ts';

const finding = findingMaker<BridgePayloads>();

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
  /** The first terminal of the rail, U, read once more after V and W, in Ω. */
  plusAgain?: Reading;
  minusAgain?: Reading;
  /** U with the two leads exchanged, in Ω: separates three shorts from three diodes that conduct. */
  plusExchanged?: Reading;
  minusExchanged?: Reading;
  /** The lowest short, or the lowest odd reading, once more with the tips lifted in between, in Ω. */
  worstAgain?: Reading;
  /** DC+ to DC−, in Ω. */
  dcBus?: Reading;
  /** Whether the six readings of a sound drive of the same model show the same pattern. */
  sister?: 'alike' | 'differs' | 'not-compared';
  /** Braking resistor, DC link to neighbours, capacitor module: still on DC+ or DC−. */
  alsoOnBus?: 'nothing' | 'something' | 'not-stated';
  tolerancePercent?: number;
  instrument?: Instrument;
}

/**
 * `drive`: what the readings prove of it. `no-go` alone makes it `suspect`: it gets no power. `convicted` takes a second
 * reading and more. `open`: nothing decided.
 */
export interface BridgeAssessment extends Assessment<BridgeFinding, Step<BridgeStepCode>> {
  drive: 'sound' | 'convicted' | 'suspect' | 'open';
}

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
  const evidence = secondReadings(input, tolerance, instrument);
  const { plus, minus } = evidence.rows;
  // A shorted transistor joins its terminal to one end of the bus, so the other rail reads the same terminal through the
  // bleed resistor.
  const judged = [
    ...judgeRail('plus', plus, tolerance, instrument, shortedTerminals(minus, instrument)),
    ...judgeRail('minus', minus, tolerance, instrument, shortedTerminals(plus, instrument)),
  ];
  const dcBus = input.dcBus ?? missing;
  const findings: BridgeFinding[] = [
    discharge,
    ...weighSecondReadings(judged, evidence),
    ...judgeBusOhms(dcBus, instrument),
  ];
  findings.push(...judgeAllOpen(findings, input.tipsTogether ?? missing));
  if (input.motorLeads !== 'off') {
    findings.push(finding('motor-leads-not-stated', 'undecided', { readings: ['motorLeads'] }));
  }
  const { motorLeads, alsoOnBus } = input;
  const conditions = { motorLeads, alsoOnBus, dcBus, worst: worstPosition(judged, evidence) };
  return conclude(findings, lackingForConviction(findings, evidence, conditions));
}

function secondReadings(input: BridgeInput, tolerancePercent: number, instrument: Instrument): SecondReadings {
  const row = (readings: Phases<Reading>, again?: Reading, exchanged?: Reading): RailRow => ({
    readings,
    again: again ?? missing,
    exchanged: exchanged ?? missing,
  });
  return {
    rows: {
      plus: row(input.dcPlus, input.plusAgain, input.plusExchanged),
      minus: row(input.dcMinus, input.minusAgain, input.minusExchanged),
    },
    worstAgain: input.worstAgain ?? missing,
    sister: input.sister ?? 'not-compared',
    instrument,
    tolerancePercent,
  };
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

function conclude(findings: BridgeFinding[], lacking: Lacking[] = []): BridgeAssessment {
  const verdict = verdictOf(findings);
  const summary: BridgeFinding[] = [];
  const convicted = verdict === 'no-go' && lacking.length === 0;
  if (verdict === 'no-go') {
    if (suspectPositions(findings).length > 1) summary.push(finding('bridge-more-than-one', 'caution'));
    summary.push(
      convicted ? finding('bridge-failed', 'note') : finding('bridge-suspect', 'note', { lacking, limits: [] }),
    );
  }
  if (verdict === 'go') summary.push(finding('bridge-passed', 'note'));
  const all = [...findings, ...summary];
  const drive = { go: 'sound', 'no-go': convicted ? 'convicted' : 'suspect', undecided: 'open' } as const;
  return { verdict, findings: all, next: nextSteps(all), drive: drive[verdict] };
}
