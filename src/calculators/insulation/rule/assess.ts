import { findingMaker, type Severity, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeFilter, judgeIdleCores } from '../../../kernel/assessment/cable-ends.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { judgePe, type PeJudgement, peLimits, peRemarks } from '../../../kernel/assessment/protective-conductor.ts';
import { testReminders } from '../../../kernel/assessment/test-reminders.ts';
import { judgeSuitability, judgeTestVoltage } from '../../../kernel/assessment/test-voltage.ts';
import { phases } from '../../../kernel/electrics/phases.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { intervalOf } from '../../../kernel/reading/interval.ts';
import type {
  InsulationAssessment,
  InsulationFinding,
  InsulationInput,
  InsulationPayloads,
  InsulationStepCode,
} from './input.ts';
import { judgePhases } from './phases.ts';

/**
 * Judges insulation, after a trip or in routine monitoring. An impossible figure (not finite, or negative where it
 * can't be) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessInsulation(input: InsulationInput): InsulationAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return { verdict: 'undecided', findings: impossible, next: nextSteps(impossible) };
  const findings: InsulationFinding[] = [
    ...judgePhases(input),
    judgePePin(input),
    ...peRemarks(input.pe, input.peConductor, input.frameEarthed ?? 'not-stated'),
    judgeIdleCores(input.idleCores),
    ...judgeFilter(input.filter),
    ...judgeTestVoltage(input.testVoltage),
    ...judgeSuitability(input.testVoltage, input.ratedVoltage),
    ...judgeDifference(input),
    ...judgeClass(input),
  ];
  const verdict = verdictOf(findings);
  if (verdict === 'go') findings.push(finding('insulation-passed', 'note'));
  if (findings.some(({ code }) => code === 'phase-bad')) findings.push(finding('insulation-failed', 'note'));
  findings.push(...reminders(input));
  return { verdict, findings, next: nextSteps(findings) };
}

const finding = findingMaker<InsulationPayloads>();

const peSeverity: Record<PeJudgement, Severity> = {
  short: 'pass',
  'higher-than-expected': 'undecided',
  'not-short': 'fail',
  'not-proven': 'undecided',
  missing: 'undecided',
};

function judgePePin({ pe, peConductor }: InsulationInput): InsulationFinding {
  const judgement = judgePe(pe, peConductor);
  return finding(`pe-${judgement}`, peSeverity[judgement], { readings: ['PE'], limits: peLimits(peConductor) });
}

/** The windings meet in a star point, so their readings to PE should be alike at any level. */
function judgeDifference({ readings, instrument, filter }: InsulationInput): InsulationFinding[] {
  if (filter === 'fitted') return [];
  // A missing reading leaves everything open, so it differs from none.
  const intervals = phases.map((p) => intervalOf(readings[p], instrument));
  const highest = Math.max(...intervals.map(({ lo }) => lo));
  const lowest = Math.min(...intervals.map(({ hi }) => hi));
  const ratio = limitValue('phase-difference');
  if (highest <= lowest * ratio) return [];
  return [finding('phases-differ', 'caution', { readings: [...phases], limits: ['phase-difference'], ratio })];
}

function judgeClass({ occasion, machineClass, ratedVoltage }: InsulationInput): InsulationFinding[] {
  const unlikely =
    occasion === 'routine' &&
    machineClass === 'form-wound' &&
    ratedVoltage.kind === 'value' &&
    ratedVoltage.value < 1000;
  return unlikely ? [finding('form-wound-below-1-kv', 'caution', { limits: ['ieee43-minimum-random-wound'] })] : [];
}

function reminders({ occasion, testMinutes }: InsulationInput): InsulationFinding[] {
  const charts: InsulationFinding[] = occasion === 'after-trip' ? [finding('charts-do-not-apply', 'note')] : [];
  return [...charts, ...testReminders(testMinutes.kind === 'value' ? testMinutes.value : undefined)];
}

const stepAfter: Partial<Record<InsulationFinding['code'], InsulationStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'phase-missing': ['measure-phases'],
  'together-missing': ['measure-together'],
  'idle-cores-free': ['join-idle-cores'],
  'idle-cores-not-stated': ['join-idle-cores'],
  'filter-fitted': ['take-filter-off'],
  'pe-missing': ['measure-pe'],
  'pe-not-proven': ['measure-pe-low-range'],
  'pe-higher-than-expected': ['measure-pe-low-range'],
  'pe-not-short': ['mend-pe', 'repeat-after-pe'],
  'temperature-missing': ['measure-temperature'],
  'temperature-out-of-validity': ['other-method-or-temperature'],
  'test-voltage-missing': ['state-test-voltage'],
  'test-voltage-too-low': ['use-insulation-tester'],
  'rated-voltage-missing': ['state-rated-voltage'],
  'dew-point-incomplete': ['measure-air'],
  'air-not-stated': ['measure-air'],
  'winding-at-dew-point': ['dry-first'],
  'phase-hot': ['let-cool'],
  'phase-cold': ['let-warm'],
  'phase-too-close': ['repeat-more-exactly'],
  'phase-bound-too-low': ['note-range'],
  'phase-bound-too-high': ['repeat-more-exactly'],
  'phases-differ': ['find-contact'],
  'insulation-failed': ['separate-cable-and-motor'],
  'insulation-passed': ['keep-as-baseline'],
};

/** After a trip, undecided only because the winding is warm or cold: measured at room temperature it would be clear. */
function otherTemperature(one: InsulationFinding): InsulationStepCode[] {
  if (one.code === 'phase-methods-differ') {
    if (one.occasion === 'routine') return ['repeat-near-reference'];
    return one.corrected !== undefined && one.corrected.factor > 1 ? ['let-cool'] : ['let-warm'];
  }
  if (one.code !== 'phase-too-close' || one.occasion !== 'after-trip' || one.corrected === undefined) return [];
  const { factor, ohms } = one.corrected;
  if (factor > 1 && ohms >= one.limitOhms) return ['let-cool'];
  return factor < 1 && ohms < one.limitOhms ? ['let-warm'] : [];
}

function nextSteps(findings: readonly InsulationFinding[]): Step<InsulationStepCode>[] {
  const codes = findings.flatMap((one) => [...otherTemperature(one), ...(stepAfter[one.code] ?? [])]);
  return [...new Set(codes)].map((code) => step(code));
}
