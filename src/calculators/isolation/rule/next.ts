import { type Step, step } from '../../../kernel/assessment/assessment.ts';
import { idleCoresTested } from '../../../kernel/assessment/cable-ends.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import type { IsolationFinding, IsolationInput, IsolationStepCode } from './input.ts';
import type { PartReadings } from './part-readings.ts';
import { type IsolationState, joinedStatus } from './verdict.ts';

/** What to measure or replace next, most pressing first. */
export function nextSteps(state: IsolationState, findings: readonly IsolationFinding[]): Step<IsolationStepCode>[] {
  const { joined, joinedPe, cable, motor, input } = state;
  const { windingTemperature } = input;
  const has = (code: IsolationFinding['code']) => findings.some((one) => one.code === code);
  const status = joinedStatus(state);
  const codes: (IsolationStepCode | false)[] = [
    joined.findings.some(({ code }) => code === 'stage-incomplete') && 'measure-joined',
    (joinedPe === 'missing' || joinedPe === 'not-proven' || joinedPe === 'higher-than-expected') &&
      'measure-pe-low-range',
    has('test-voltage-missing') && 'state-test-voltage',
    has('test-voltage-too-low') && 'use-insulation-tester',
    joinedPe === 'not-short' && !state.peMended && !state.peTwice && 'read-pe-again',
    joinedPe === 'not-short' && 'find-broken-pe',
    has('filter-fitted') && 'take-filter-off',
    !idleCoresTested(input.idleCores) && 'join-idle-cores',
  ];
  if (status === 'undecided') {
    const unclear = joined.findings.some(
      ({ code, severity }) => severity === 'undecided' && !temperatureAlone.has(code) && code !== 'stage-incomplete',
    );
    const unstated = windingTemperature.kind !== 'value';
    codes.push(unstated && 'state-winding-temperature', unclear && 'repeat-joined');
    codes.push(...otherTemperature(joined.findings, windingTemperature));
  }
  const contradiction =
    has('good-joined-bad-part') || findings.some((f) => f.code.startsWith('joined-too') && f.severity === 'undecided');
  codes.push((contradiction || has('bad-joined-good-parts')) && 're-measure-contradiction');
  const begun = [cable, motor].some((part) => part.status !== 'not-taken');
  const goOn = status !== 'undecided' || input.suspectedAnyway || begun;
  if (goOn) {
    codes.push(input.suspectedAnyway && status === 'good' && 'flex-cable');
    codes.push(...cableSteps(input, cable, has), ...motorSteps(state, has));
    codes.push(...evidenceSteps(findings, input, contradiction && status === 'good'));
    codes.push(replacement(cable.convicted, motor.convicted, contradiction && status === 'good'));
  }
  if (status === 'good' && !codes.some(Boolean)) codes.push('neither-suspect');
  return [...new Set(codes.filter((code) => code !== false))].map((code) => step(code));
}

/** Readings that need another motor temperature, or a stated one, to be clear. */
const temperatureAlone = new Set<IsolationFinding['code']>(['stage-hot', 'stage-cold', 'stage-methods-differ']);

/** The methods differ less, the nearer the winding is to room temperature. */
function otherTemperature(findings: readonly IsolationFinding[], winding: Reading): (IsolationStepCode | false)[] {
  const has = (code: IsolationFinding['code']) => findings.some((one) => one.code === code);
  const warm = winding.kind === 'value' && winding.value > limitValue('reference-temperature-after-trip');
  const differ = has('stage-methods-differ');
  return [
    (has('stage-hot') || (differ && warm)) && 'let-motor-cool',
    (has('stage-cold') || (differ && !warm)) && 'let-motor-warm',
  ];
}

/**
 * A second reading that is clear as read and not as corrected: taken again at the same temperature it would be no
 * clearer, while at room temperature nothing is corrected. Water and carbon follow no rule made for insulation.
 */
function otherTemperatureForSecond(
  { motor, motorTemperature, input }: IsolationState,
  has: (code: IsolationFinding['code']) => boolean,
): (IsolationStepCode | false)[] {
  const unclear = motor.findings.some(({ code }) => code === 'again-unclear');
  const tested = !has('test-voltage-missing') && !has('test-voltage-too-low');
  if (!unclear || !tested || motorTemperature.kind !== 'value') return [];
  const again = intervalOf(input.moreOfMotor?.again ?? missing, input.instrument);
  const point = limitValue('after-trip-point');
  const clearAsRead = again.hi < point || again.lo >= point;
  const warm = motorTemperature.value > limitValue('reference-temperature-after-trip');
  return [clearAsRead && (warm ? 'let-motor-cool' : 'let-motor-warm')];
}

function cableSteps(
  { cable, bonded }: IsolationInput,
  part: PartReadings,
  has: (code: IsolationFinding['code']) => boolean,
): (IsolationStepCode | false)[] {
  if (part.status === 'not-taken') return ['test-cable-alone', has('joined-good') && 'take-bonded-row'];
  const incomplete =
    cable === undefined || has('cable-pe-missing') || (part.status === 'undecided' && bonded !== undefined);
  return [
    has('cable-pe-low') && 'check-ends-free',
    incomplete && 'complete-cable',
    bonded === undefined && !isBad(part) && 'take-bonded-row',
  ];
}

function motorSteps(
  state: IsolationState,
  has: (code: IsolationFinding['code']) => boolean,
): (IsolationStepCode | false)[] {
  const { motor, cable, motorTemperature } = state;
  // The cable is listed first, because it is forgotten once the motor is found bad.
  if (motor.status === 'not-taken') return [cable.status !== 'not-taken' && 'test-motor-alone'];
  return [
    motor.findings.some(({ code }) => code === 'motor-pe-not-short') && 'mend-motor-pe',
    ...otherTemperature(motor.findings, motorTemperature),
    ...otherTemperatureForSecond(state, has),
    motor.findings.some(({ code }) => code === 'motor-pins-mistaken')
      ? 'check-pin-order'
      : motor.status === 'undecided' && 'complete-motor',
  ];
}

/** The evidence that a part lacks which fails, or which passed only once it was dry. */
function evidenceSteps(
  findings: readonly IsolationFinding[],
  { cableMetres = missing }: IsolationInput,
  contradicted: boolean,
): (IsolationStepCode | false)[] {
  if (contradicted) return [];
  const suspects = findings.flatMap((one) => (one.code === 'part-suspect' ? [one] : []));
  return [
    cableMetres.kind === 'missing' && findings.some(mayBeLength) && 'state-cable-length',
    ...suspects.map(({ part, lacks }) =>
      lacks === 'comparison' ? (`compare-${part}` as const) : (`read-${part}-again` as const),
    ),
    findings.some(({ code }) => explainedByLength.has(code)) && 'compare-cable',
    findings.some(({ code }) => code === 'dried-and-good') && 'find-the-water',
  ];
}

/** A cable reading below the after-trip limit that a length could explain; below the machine’s minimum none does. */
function mayBeLength(one: IsolationFinding): boolean {
  if (one.code !== 'stage-bad' || (one.stage !== 'cable' && one.stage !== 'bonded')) return false;
  return (one.lowestOhms ?? 0) >= limitValue('machine-minimum-60204');
}

const explainedByLength = new Set<IsolationFinding['code']>(['stage-length-explains', 'cable-pe-length-explains']);

function isBad({ status }: PartReadings): boolean {
  return status === 'bad';
}

function replacement(cableBad: boolean, motorBad: boolean, contradicted: boolean): IsolationStepCode | false {
  if (contradicted) return false;
  if (cableBad && motorBad) return 'replace-both';
  return cableBad ? 'replace-cable' : motorBad && 'replace-motor';
}
