import { type Assessment, findingMaker, type Step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import type { Phases } from '../../../kernel/electrics/phases.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { assessBridge } from '../../bridge/rule/assess.ts';
import { suspectPositions } from '../../bridge/rule/suspect-positions.ts';
import {
  type DiodePlace,
  diodeField,
  diodeWays,
  partsOfPosition,
  rails,
  type SwitchPosition,
  switchPositions,
} from '../../bridge/rule/switch-position.ts';
import { compareTests } from './agreement.ts';
import type { BridgeDiodeFinding, BridgeDiodePayloads } from './findings.ts';
import { type BridgeDiodeStepCode, nextSteps } from './next-steps.ts';
import {
  type DiodePosition,
  type DiodeRail,
  diodePositions,
  isShortBothWays,
  isSound,
  judgeDiodeRail,
} from './rail.ts';

const finding = findingMaker<BridgeDiodePayloads>();

/**
 * The output stage by the diode test of a multimeter, readings in V. `forward`: red on the terminal and black on DC+,
 * or red on DC− and black on the terminal. `reverse`: leads exchanged. `busVoltage` (V) is measured just before, and
 * the motor leads are off. `instrument` describes the diode range. `resistance` is the other variant of the check, in
 * Ω, if it was taken too. Common practice, no source; decision rule: JCGM 106:2012.
 */
export interface BridgeDiodeInput {
  busVoltage: Reading;
  motorLeads: 'off' | 'connected' | 'not-stated';
  steadiness: 'steady' | 'drifting' | 'not-stated';
  plus: DiodeRail;
  minus: DiodeRail;
  instrument?: Instrument;
  resistance?: { dcPlus: Phases<Reading>; dcMinus: Phases<Reading> };
  /** Whether the blocking readings, which charge the bus by some volts, can have falsified the resistances. */
  resistanceOrder?: 'first' | 'bus-measured-between' | 'after' | 'not-stated';
}

/** `drive` as for the bridge: a failed test is proven by two readings of one position. */
export interface BridgeDiodeAssessment extends Assessment<BridgeDiodeFinding, Step<BridgeDiodeStepCode>> {
  drive: 'sound' | 'convicted' | 'suspect' | 'open';
}

/**
 * An impossible figure (not finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is
 * judged.
 */
export function assessBridgeDiode(input: BridgeDiodeInput): BridgeDiodeAssessment {
  const danger = chargedBus(input);
  const impossible = impossibleFigures(input, ['busVoltage', 'plus', 'minus']);
  if (impossible.length > 0) return conclude([...impossible, ...danger]);
  const discharge = judgeDischarge(input.busVoltage);
  if (discharge.severity !== 'pass' || danger.length > 0) return conclude([discharge, ...danger]);
  if (input.motorLeads === 'connected')
    return conclude([finding('motor-leads-connected', 'undecided', { readings: ['motorLeads'] })]);
  const { instrument = {} } = input;
  const plus = diodePositions('plus', input.plus, instrument);
  const minus = diodePositions('minus', input.minus, instrument);
  const judged = [...judgeDiodeRail('plus', plus), ...judgeDiodeRail('minus', minus)];
  const findings: BridgeDiodeFinding[] = [discharge, ...judged];
  if (input.resistance === undefined) findings.push(finding('diode-blind-to-leaks', 'caution'));
  else {
    const { dcPlus, dcMinus } = input.resistance;
    const { busVoltage, motorLeads } = input;
    const { found, contradicted } = compareTests({
      findings: judged,
      diode: [...plus, ...minus],
      resistance: assessBridge({ busVoltage, motorLeads, dcPlus, dcMinus }),
      readings: {
        plusU: dcPlus.U,
        plusV: dcPlus.V,
        plusW: dcPlus.W,
        minusU: dcMinus.U,
        minusV: dcMinus.V,
        minusW: dcMinus.W,
      },
    });
    findings.splice(0, findings.length, ...findings.map((one) => withoutSuspects(one, contradicted)), ...found);
    const { resistanceOrder: order } = input;
    if (order !== 'first' && order !== 'bus-measured-between')
      findings.push(finding('resistances-after-diodes', 'caution', { readings: ['resistanceOrder'] }));
  }
  if (input.motorLeads !== 'off')
    findings.push(finding('motor-leads-not-stated', 'undecided', { readings: ['motorLeads'] }));
  if (input.steadiness !== 'steady')
    findings.push(finding('diode-steadiness-not-stated', 'undecided', { readings: ['steadiness'] }));
  const certain = input.motorLeads === 'off' && input.steadiness === 'steady';
  return conclude(findings, certain && shortBothWays(findings, [...plus, ...minus]));
}

/** A short that was read with the leads both ways round, beside a position of its rail that is none. */
function shortBothWays(findings: readonly BridgeDiodeFinding[], positions: readonly DiodePosition[]): boolean {
  return rails.some((rail) => {
    const own = positions.filter(({ position }) => partsOfPosition[position].rail === rail);
    const suspects = suspectPositions(findings.filter(({ code }) => code === 'diode-short'));
    const both = own.filter((one) => suspects.includes(one.position) && isShortBothWays(one));
    return both.length > 0 && own.some(isSound);
  });
}

/** What a charged bus does to the readings, whatever was measured before; the danger is reported first. */
function chargedBus({ steadiness, plus, minus }: BridgeDiodeInput): BridgeDiodeFinding[] {
  const found: BridgeDiodeFinding[] = [];
  const rows = { plus, minus };
  const negative = switchPositions.flatMap((position): DiodePlace[] => {
    const { rail, phase } = partsOfPosition[position];
    return diodeWays.flatMap((way) => (isNegative(rows[rail][way][phase]) ? [{ position, way }] : []));
  });
  if (negative.length > 0) {
    found.push(finding('diode-negative', 'stop', { readings: negative.map(diodeField), places: negative }));
  }
  if (steadiness === 'drifting') found.push(finding('diode-drifting', 'stop', { readings: ['steadiness'] }));
  return found;
}

const isNegative = (reading: Reading) =>
  (reading.kind === 'value' && reading.value < 0) || (reading.kind === 'under' && (reading.atMost ?? 0) < 0);

/** A reading that the other test contradicts proves nothing until it is repeated. */
function withoutSuspects(one: BridgeDiodeFinding, contradicted: readonly SwitchPosition[]): BridgeDiodeFinding {
  if (one.severity !== 'fail' || !('suspects' in one)) return one;
  const suspects = one.suspects.filter((position) => !contradicted.includes(position));
  return suspects.length > 0 ? { ...one, suspects } : { ...one, severity: 'caution' };
}

function conclude(findings: BridgeDiodeFinding[], proven = false): BridgeDiodeAssessment {
  const verdict = verdictOf(findings);
  const summary: BridgeDiodeFinding[] = [];
  if (verdict === 'no-go') {
    if (suspectPositions(findings).length > 1) summary.push(finding('diode-more-than-one', 'caution'));
    summary.push(finding(proven ? 'diode-failed' : 'diode-suspect', 'note'));
  }
  if (verdict === 'go') summary.push(finding('diode-passed', 'note'));
  // A stage that is proven bad needs no finer test.
  const kept = verdict === 'no-go' ? findings.filter(({ code }) => code !== 'diode-blind-to-leaks') : findings;
  const all = [...kept, ...summary];
  const drive = { go: 'sound', 'no-go': proven ? 'convicted' : 'suspect', undecided: 'open' } as const;
  return { verdict, findings: all, next: nextSteps(all), drive: drive[verdict] };
}
