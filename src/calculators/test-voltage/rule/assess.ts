import { findingMaker, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { testVoltageRow } from '../../../kernel/assessment/test-voltage.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import type {
  PlainStepCode,
  TestObject,
  TestVoltageChoice,
  TestVoltageChoiceFinding,
  TestVoltageChoicePayloads,
  TestVoltageInput,
  TestVoltageStep,
} from './input.ts';

const finding = findingMaker<TestVoltageChoicePayloads>();

interface Row {
  voltage: LimitId;
  /** The least resistance that the same table requires. */
  minimum?: LimitId;
}

const wiringRow: Row = { voltage: 'test-voltage-wiring-500', minimum: 'installation-minimum-500' };
const highWiringRow: Row = { voltage: 'test-voltage-wiring-above-500', minimum: 'installation-minimum-above-500' };
const extraLowRow: Row = { voltage: 'test-voltage-extra-low', minimum: 'installation-minimum-extra-low' };
const machineRow: Row = { voltage: 'test-voltage-machine-circuits', minimum: 'machine-minimum-60204' };

/**
 * The test voltage by the published tables, and whether the voltage set on the tester fits it. Go means: as far as
 * stated, the test may be made with this voltage. A drive that is still connected stops everything, because the test
 * destroys it; for electronics no test voltage is right. An impossible figure (not finite, or negative) gives
 * `figure-impossible`: undecided, and no row is named.
 */
export function assessTestVoltage(input: TestVoltageInput): TestVoltageChoice {
  if (input.object === 'feedback') {
    const findings = [finding('never-on-electronics', 'fail')];
    return { verdict: verdictOf(findings), findings, next: [step('check-feedback-otherwise')] };
  }
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return { verdict: 'undecided', findings: impossible, next: [step('read-figure-again')] };
  const findings = [...judgeConnected(input), ...judgeRated(input)];
  const row = rowOf(input);
  if (row !== undefined) findings.push(...judgeSet(input, row), ...minimumOf(input.object, row));
  return {
    verdict: verdictOf(findings),
    findings,
    next: stepsFor(input, findings, row),
    ...(row && { row: row.voltage }),
  };
}

function judgeConnected({ drive, sensitive }: TestVoltageInput): TestVoltageChoiceFinding[] {
  const found: TestVoltageChoiceFinding[] = [];
  if (drive === 'connected') found.push(finding('drive-connected', 'stop', { readings: ['drive'] }));
  else if (drive !== 'off') found.push(finding('drive-not-stated', 'undecided', { readings: ['drive'] }));
  if (sensitive === 'connected') {
    const limits: LimitId[] = ['test-voltage-sensitive'];
    found.push(finding('lower-for-sensitive', 'caution', { readings: ['sensitive'], limits }));
  } else if (sensitive !== 'off') {
    found.push(finding('sensitive-not-stated', 'undecided', { readings: ['sensitive'] }));
  }
  return found;
}

function judgeRated({ object, rated }: TestVoltageInput): TestVoltageChoiceFinding[] {
  const readings = ['rated'];
  if (rated.kind !== 'value' || rated.value === 0) {
    return [finding('rated-voltage-not-stated', 'undecided', { readings })];
  }
  const ratedVolts = rated.value;
  if (object === 'extra-low' && rated.value > limitValue('extra-low-end')) {
    return [finding('not-extra-low', 'undecided', { readings, limits: ['extra-low-end'], ratedVolts })];
  }
  if (object !== 'winding' && rated.value > limitValue('low-voltage-end')) {
    return [finding('beyond-tables', 'undecided', { readings, limits: ['low-voltage-end'], ratedVolts })];
  }
  if (!onlyDc(rated.value)) return [];
  const limits: LimitId[] = ['extra-low-end-ac', 'extra-low-end'];
  if (object === 'extra-low') return [finding('extra-low-only-dc', 'caution', { readings, limits, ratedVolts })];
  return object === 'brake-coil'
    ? [finding('brake-supply-unknown', 'undecided', { readings, limits, ratedVolts })]
    : [];
}

/** Extra-low as DC but not as AC. Coils of this voltage are often fed from the mains through a half-wave rectifier. */
function onlyDc(rated: number): boolean {
  return rated > limitValue('extra-low-end-ac') && rated <= limitValue('extra-low-end');
}

function rowOf({ object, rated, sensitive }: TestVoltageInput): Row | undefined {
  if (rated.kind !== 'value' || rated.value === 0) return undefined;
  const full = fullRow(object, rated.value);
  if (full === undefined || sensitive !== 'connected') return full;
  return { ...full, voltage: 'test-voltage-sensitive' };
}

function fullRow(object: TestObject, rated: number): Row | undefined {
  const extraLow = rated <= limitValue('extra-low-end');
  if (object === 'winding') return { voltage: testVoltageRow(rated) };
  if (object === 'extra-low') return extraLow ? extraLowRow : undefined;
  if (rated > limitValue('low-voltage-end')) return undefined;
  if (object === 'machine-circuits') return machineRow;
  if (object === 'brake-coil' && extraLow) return onlyDc(rated) ? undefined : extraLowRow;
  return rated <= limitValue('wiring-row-boundary') ? wiringRow : highWiringRow;
}

function judgeSet({ set }: TestVoltageInput, { voltage }: Row): TestVoltageChoiceFinding[] {
  const readings = ['set'];
  const { from, to } = limitRange(voltage);
  const limits = [voltage];
  if (set.kind !== 'value') {
    return [finding('set-voltage-missing', 'undecided', { readings, limits, fromVolts: from, toVolts: to })];
  }
  const parts = { readings, limits, setVolts: set.value, fromVolts: from, toVolts: to };
  if (set.value > to) return [finding('set-too-high', 'fail', parts)];
  return [set.value < from ? finding('set-too-low', 'undecided', parts) : finding('set-fits', 'pass', parts)];
}

function minimumOf(object: TestObject, { minimum }: Row): TestVoltageChoiceFinding[] {
  if (minimum === undefined || object === 'brake-coil') return [finding('winding-minimum-elsewhere', 'note')];
  return [finding('minimum-of-table', 'note', { limits: [minimum], minimumOhms: limitValue(minimum) })];
}

const stepAfter: Partial<Record<TestVoltageChoiceFinding['code'], PlainStepCode>> = {
  'drive-connected': 'take-drive-off',
  'drive-not-stated': 'take-drive-off',
  'sensitive-not-stated': 'take-sensitive-off',
  'rated-voltage-not-stated': 'state-rated',
  'not-extra-low': 'choose-object-again',
  'brake-supply-unknown': 'choose-by-supply',
  'beyond-tables': 'ask-for-procedure',
};

function stepsFor(
  { object, drive, sensitive }: TestVoltageInput,
  findings: TestVoltageChoiceFinding[],
  row: Row | undefined,
): TestVoltageStep[] {
  const steps: TestVoltageStep[] = findings.flatMap(({ code }) => stepAfter[code] ?? []).map((code) => step(code));
  if (object === 'brake-coil') steps.push(step('take-brake-parts-off'));
  // Never ask anybody to press the button before it is known what is connected to the conductors.
  if (row !== undefined && drive === 'off' && sensitive !== 'unknown') {
    const reduced = sensitive === 'connected';
    if (reduced) steps.push(step('join-conductors'));
    const { from: volts } = limitRange(row.voltage);
    steps.push({ ...step('set-the-tester'), volts }, step('discharge-afterwards'));
    if (reduced) steps.push(step('repeat-at-full-voltage'));
  }
  return steps;
}
