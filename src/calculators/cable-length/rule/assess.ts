import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { cableConstantOf, cableFactor } from '../../../kernel/assessment/cable-floor.ts';
import { judgeAfterTrip } from '../../../kernel/assessment/judge-insulation.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { coreInsulationInterval, lengthForResistance } from '../../../kernel/electrics/cable-insulation.ts';
import { correctionFactor } from '../../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import { everything, type Interval, intervalOf, times } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type {
  CableLengthAssessment,
  CableLengthFinding,
  CableLengthInput,
  CableLengthPayloads,
  CableLengthStepCode,
} from './input.ts';

const finding = findingMaker<CableLengthPayloads>();

/**
 * One core of a cable against the go/no-go point after a trip and against the least resistance that a new cable of its
 * length has. At or above both is good, below both is bad. Below the limit, but not below what the length explains, is
 * undecided: one figure neither condemns nor passes such a run. K of new cable is a minimum of the specification, so a
 * cable that reaches the after-trip limit but not that minimum is used with a caution. Below the minimum of the machine standard
 * it is bad at any length and temperature. An impossible figure (not finite, or negative where it can't be) gives
 * `figure-impossible`: undecided, nothing is judged.
 */
export function assessCableLength(input: CableLengthInput): CableLengthAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return { verdict: 'undecided', findings: impossible, next: steps(impossible) };
  const expected = expectedOf(input);
  const floor = belowMachineMinimum(input);
  if (floor !== undefined) {
    const findings = [floor, ...(expected ? remarks(input, expected) : [])];
    return { verdict: verdictOf(findings), findings, next: steps(findings), ...(expected && { expected }) };
  }
  if (expected === undefined || input.reading.kind === 'missing') return incomplete(input, expected);
  const raw = intervalOf(input.reading, input.instrument);
  const factor = cableFactor(input.insulation, input.temperature);
  const corrected = times(raw, factor);
  const findings: CableLengthFinding[] = [];
  if (input.temperature.kind !== 'value') findings.push(finding('cable-temperature-missing', 'undecided'));
  findings.push(judge(input, raw, corrected, expected), ...remarks(input, expected));
  return { verdict: verdictOf(findings), findings, next: steps(findings), expected, corrected };
}

/** The minimum of the machine standard holds for any length and needs neither table nor cable data. */
function belowMachineMinimum({ reading, instrument }: CableLengthInput): CableLengthFinding | undefined {
  const minimum = limitValue('machine-minimum-60204');
  const { hi } = intervalOf(reading, instrument);
  if (hi >= minimum) return undefined;
  const parts = { readings: ['reading'], limits: ['machine-minimum-60204' as const], minimumOhms: minimum };
  return finding('cable-below-machine-minimum', 'fail', parts);
}

function expectedOf({ insulation, insulationDiameter, conductorDiameter, length }: CableLengthInput) {
  const data = [insulationDiameter, conductorDiameter, length];
  const { from, to } = limitRange(cableConstantOf[insulation]);
  // A diameter or a length is as accurate as its last digit. One that is missing or a bound leaves no figure below.
  const [outer, inner, metres] = data.map((reading) => intervalOf(reading, { counts: 1 }));
  if (!outer || !inner || !metres) return undefined;
  const expected = coreInsulationInterval({ lo: from, hi: to }, outer, inner, metres);
  return expected.lo > 0 && Number.isFinite(expected.hi) ? expected : undefined;
}

function incomplete(input: CableLengthInput, expected: Interval | undefined): CableLengthAssessment {
  const findings: CableLengthFinding[] = [];
  if (expected === undefined) {
    const data = [input.insulationDiameter, input.conductorDiameter, input.length];
    const whole = data.every((reading) => reading.kind === 'value');
    findings.push(finding(whole ? 'diameters-impossible' : 'cable-data-missing', 'undecided'));
  }
  if (input.reading.kind === 'missing') findings.push(finding('cable-reading-missing', 'undecided'));
  if (expected !== undefined) findings.push(...remarks(input, expected));
  return { verdict: 'undecided', findings, next: steps(findings), ...(expected && { expected }) };
}

function judge(input: CableLengthInput, raw: Interval, corrected: Interval, expected: Interval): CableLengthFinding {
  const point = limitValue('after-trip-point');
  const conversion: LimitId[] = input.insulation === 'pvc' ? ['cable-conversion-thermoplastic'] : [];
  const limits: LimitId[] = ['after-trip-point', 'halving-rule', cableConstantOf[input.insulation], ...conversion];
  const parts = { readings: ['reading'], limits, pointOhms: point, newOhms: expected };
  const judgement = judgeAfterTrip(input.reading, raw, point, factorToPoint(input.temperature));
  if (judgement === 'good') {
    return finding(corrected.lo >= expected.hi ? 'cable-passes-both' : 'cable-below-new', 'pass', parts);
  }
  if (judgement === 'bad' && corrected.hi < expected.lo) return finding('cable-fails', 'fail', parts);
  // The length explains a reading below the limit only if the minimum for that length is below the after-trip limit too.
  const explains = judgement === 'bad' && expected.lo < point;
  return finding(explains ? 'cable-long-enough-to-explain' : 'cable-too-close', 'undecided', parts);
}

/** Factor to the temperature of the go/no-go point, by the rule of the insulation calculator. */
function factorToPoint(temperature: Reading): Interval {
  if (temperature.kind !== 'value') return everything;
  const factor = correctionFactor('halving', temperature.value, limitValue('reference-temperature-after-trip'));
  return factor === undefined ? everything : { lo: factor, hi: factor };
}

/**
 * The length up to which the go/no-go point is below the minimum of a new cable: up to there the point applies
 * unchanged.
 */
function remarks(input: CableLengthInput, expected: Interval): CableLengthFinding[] {
  const { insulationDiameter: outer, conductorDiameter: inner, length } = input;
  if (outer.kind !== 'value' || inner.kind !== 'value' || length.kind !== 'value') return [];
  const point = limitValue('after-trip-point');
  const constant = limitRange(cableConstantOf[input.insulation]).from;
  const metres = lengthForResistance(constant, outer.value, inner.value, point);
  const limits: LimitId[] = ['after-trip-point'];
  const parts = { limits, holdsToMetres: metres, lengthMetres: length.value };
  const holds = expected.lo >= point;
  return [
    holds ? finding('point-still-holds', 'note', parts) : finding('point-holds-no-more', 'caution', parts),
    finding('constant-recalled', 'note', { limits: [cableConstantOf[input.insulation]] }),
  ];
}

const stepAfter: Partial<Record<CableLengthFinding['code'], CableLengthStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'cable-data-missing': ['measure-cable-data'],
  'diameters-impossible': ['measure-cable-data'],
  'cable-reading-missing': ['measure-cable'],
  'cable-temperature-missing': ['measure-cable-temperature'],
  'cable-below-new': ['compare-with-earlier'],
  'cable-long-enough-to-explain': ['compare-cores', 'test-parts-of-run', 'compare-with-earlier'],
  'cable-too-close': ['measure-cable-temperature', 'repeat-cable-exactly', 'compare-cores'],
};

function steps(findings: readonly CableLengthFinding[]): Step<CableLengthStepCode>[] {
  return [...new Set(findings.flatMap(({ code }) => stepAfter[code] ?? []))].map((code) => step(code));
}
