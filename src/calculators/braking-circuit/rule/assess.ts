import { findingMaker, type Severity, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import { isBelowZero, judgePair, pairLimits } from '../../../kernel/assessment/diode-pair.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import type {
  BrakingAssessment,
  BrakingCircuitInput,
  BrakingFinding,
  BrakingPayloads,
  BrakingStepCode,
  ChopperPath,
} from './input.ts';
import { judgeHousing, judgeResistor, judgeThermal } from './resistor.ts';

const finding = findingMaker<BrakingPayloads>();

const diodeReadings = ['upperConducting', 'upperBlocking', 'lowerConducting', 'lowerBlocking'] as const;

/**
 * The braking circuit of a drive, dead: the resistor (Ω) against its plate and its housing, its lead, its thermal switch,
 * and the chopper by diode test (V), resistor off. Nothing is judged beside a bus that may be charged. A fail names what is
 * suspect and proves nothing until it was read again. An impossible figure (not finite, or negative where it can't be)
 * gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessBrakingCircuit(input: BrakingCircuitInput): BrakingAssessment {
  const impossible = impossibleFigures(input, ['busVoltage', ...diodeReadings]);
  if (impossible.length > 0) return conclude(input, impossible);
  const discharge = judgeDischarge(input.busVoltage);
  if (discharge.severity === 'stop') return conclude(input, [discharge]);
  const below = diodeReadings.filter((field) => isBelowZero(input[field]));
  if (below.length > 0) return conclude(input, [finding('chopper-negative', 'stop', { readings: below })]);
  if (discharge.severity !== 'pass') return conclude(input, [discharge]);
  return conclude(input, [
    discharge,
    ...judgeResistor(input),
    ...judgeHousing(input),
    judgeThermal(input),
    judgeChopper(input, 'upper'),
    judgeChopper(input, 'lower'),
  ]);
}

function judgeChopper(input: BrakingCircuitInput, path: ChopperPath): BrakingFinding {
  const [conducting, blocking] = [`${path}Conducting`, `${path}Blocking`] as const;
  const readings = [conducting, blocking];
  const parts = { readings, limits: [...pairLimits], path };
  const judgement = judgePair({ conducting: input[conducting], blocking: input[blocking] }, input.instrument);
  const plain = (code: PlainChopperCode, severity: Severity) => finding(code, severity, parts);
  switch (judgement) {
    case 'sound':
      return plain('chopper-sound', 'pass');
    case 'short-both-ways':
    case 'short-one-way':
      return finding('chopper-short', 'fail', { ...parts, bothWays: judgement === 'short-both-ways' });
    case 'leaky':
      return plain('chopper-leaky', 'fail');
    case 'open':
      return plain('chopper-open', 'undecided');
    case 'exchanged':
      return plain('chopper-exchanged', 'undecided');
    case 'unclear':
      return plain('chopper-unclear', 'undecided');
    case 'missing':
      return plain('chopper-missing', 'undecided');
  }
}

type PlainChopperCode = Exclude<
  Extract<BrakingFinding['code'], `chopper-${string}`>,
  'chopper-short' | 'chopper-negative'
>;

function conclude({ again }: BrakingCircuitInput, findings: BrakingFinding[]): BrakingAssessment {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  const failed = findings.filter(({ severity }) => severity === 'fail');
  if (failed.length > 0) codes.push(...(again ? failed.flatMap(convictionStep) : (['read-twice'] as const)));
  if (findings.some(({ code }) => code.startsWith('chopper-') && code !== 'chopper-missing'))
    codes.push('measure-bus-again');
  const next: Step<BrakingStepCode>[] = [...new Set(codes)].map((code) => step(code));
  return { verdict: verdictOf(findings), findings, next };
}

/** What a second reading makes of a fail. */
function convictionStep(one: BrakingFinding): BrakingStepCode[] {
  // The resistor still on, or DC+ taken for B, reads a short to DC+ too, so only the other path convicts.
  if (one.code === 'chopper-short')
    return one.bothWays && one.path === 'lower' ? ['replace-drive'] : ['measure-chopper', 'compare-chopper'];
  if (one.code === 'chopper-leaky') return ['compare-chopper'];
  if (one.code === 'thermal-open') return ['look-at-thermal'];
  return one.code === 'resistor-lead-jumps' ? ['read-at-resistor'] : ['read-at-resistor', 'replace-resistor'];
}

const stepAfter: Partial<Record<BrakingFinding['code'], BrakingStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['wait-and-measure-bus'],
  'chopper-negative': ['wait-and-measure-bus'],
  'resistor-plate-missing': ['read-resistor-plate'],
  'resistor-missing': ['measure-resistor'],
  'resistor-over-range': ['note-resistor-range'],
  'resistor-too-close': ['read-at-resistor'],
  'resistor-lead-not-stated': ['measure-resistor'],
  'housing-missing': ['measure-housing'],
  'housing-unclear': ['measure-housing'],
  'housing-insulation-missing': ['test-housing'],
  'housing-insulation-unclear': ['test-housing'],
  'thermal-unclear': ['look-at-thermal'],
  'thermal-other': ['look-at-thermal'],
  'thermal-not-stated': ['look-at-thermal'],
  'chopper-missing': ['measure-chopper'],
  'chopper-open': ['compare-chopper'],
  'chopper-exchanged': ['measure-chopper'],
  'chopper-unclear': ['measure-chopper'],
};
