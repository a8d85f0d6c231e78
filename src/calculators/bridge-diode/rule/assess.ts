import {
  type Assessment,
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
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { assessBridge, suspectPositions } from '../../bridge/rule/assess.ts';
import type { MotorLeadsPayloads } from '../../bridge/rule/findings.ts';
import {
  type DiodePlace,
  diodeField,
  diodeWays,
  partsOfPosition,
  type SwitchPosition,
  switchPositions,
} from '../../bridge/rule/switch-position.ts';
import { type AgreementPayloads, compareTests } from './agreement.ts';
import { type DiodeRail, diodePositions, judgeDiodeRail } from './rail.ts';
import type { DiodeRailPayloads } from './rail-findings.ts';

interface BridgeDiodePayloads
  extends FigurePayloads,
    BusPayloads,
    DiodeRailPayloads,
    AgreementPayloads,
    MotorLeadsPayloads {
  'diode-negative': { places: DiodePlace[] };
  'diode-drifting': Nothing;
  'diode-steadiness-not-stated': Nothing;
  'diode-more-than-one': Nothing;
  'diode-blind-to-leaks': Nothing;
  'diode-failed': Nothing;
  'diode-passed': Nothing;
}

export type BridgeDiodeFinding = FindingOf<BridgeDiodePayloads>;

const finding = findingMaker<BridgeDiodePayloads>();

export type BridgeDiodeStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'discharge-residual'
  | 'take-motor-leads-off'
  | 'state-motor-leads'
  | 'let-readings-settle'
  | 'measure-missing'
  | 'exchange-leads'
  | 'hold-tips-together'
  | 'repeat-position'
  | 'repeat-more-exactly'
  | 'take-resistances'
  | 'complete-resistances'
  | 'repeat-both-tests'
  | 'compare-known-good'
  | 'replace-complete-drive'
  | 'test-motor-and-cable'
  | 'test-insulation-next';

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
}

export type BridgeDiodeAssessment = Assessment<BridgeDiodeFinding, Step<BridgeDiodeStepCode>>;

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
  }
  if (input.motorLeads !== 'off')
    findings.push(finding('motor-leads-not-stated', 'undecided', { readings: ['motorLeads'] }));
  if (input.steadiness !== 'steady')
    findings.push(finding('diode-steadiness-not-stated', 'undecided', { readings: ['steadiness'] }));
  return conclude(findings);
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

const stepAfter: Partial<Record<BridgeDiodeFinding['code'], BridgeDiodeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['discharge-residual'],
  'diode-negative': ['wait-and-measure-bus'],
  'diode-drifting': ['wait-and-measure-bus'],
  'motor-leads-connected': ['take-motor-leads-off'],
  'motor-leads-not-stated': ['state-motor-leads'],
  'diode-steadiness-not-stated': ['let-readings-settle'],
  'diode-incomplete': ['measure-missing'],
  'diode-rows-swapped': ['exchange-leads'],
  'diode-one-way': ['repeat-position'],
  'diode-forward-open': ['repeat-position'],
  'diode-all-alike': ['exchange-leads'],
  'diode-short-possible': ['repeat-more-exactly'],
  'diode-too-close': ['repeat-more-exactly'],
  'diode-reverse-unclear': ['let-readings-settle', 'take-resistances'],
  'diode-forward-all-open': ['hold-tips-together', 'compare-known-good'],
  'diode-drop-unusual': ['compare-known-good'],
  'tests-contradict': ['repeat-both-tests'],
  'resistance-undecided': ['complete-resistances'],
  'diode-blind-to-leaks': ['take-resistances'],
  'diode-failed': ['replace-complete-drive', 'test-motor-and-cable'],
  'diode-passed': ['test-insulation-next'],
};

function conclude(findings: BridgeDiodeFinding[]): BridgeDiodeAssessment {
  const verdict = verdictOf(findings);
  const summary: BridgeDiodeFinding[] = [];
  if (verdict === 'no-go') {
    if (suspectPositions(findings).length > 1) summary.push(finding('diode-more-than-one', 'caution'));
    summary.push(finding('diode-failed', 'note'));
  }
  if (verdict === 'go') summary.push(finding('diode-passed', 'note'));
  // A stage that is proven bad needs no finer test.
  const kept = verdict === 'no-go' ? findings.filter(({ code }) => code !== 'diode-blind-to-leaks') : findings;
  const all = [...kept, ...summary];
  const codes = all.flatMap(({ code }) => stepAfter[code] ?? []);
  return { verdict, findings: all, next: [...new Set(codes)].map((code): Step<BridgeDiodeStepCode> => step(code)) };
}
