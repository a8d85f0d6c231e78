import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalShown } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type CoreSpan, coreLimits } from './cable.ts';
import type { BrakeFinding, BrakeInput, BrakePayloads } from './input.ts';

const finding = findingMaker<BrakePayloads>();

/** What the supply is judged with, beside the input. */
interface Circuit {
  /** Coil by its plate, in Ω. */
  expectedOhms: number | undefined;
  cores: CoreSpan | undefined;
  /** The cores were measured, and have what their length explains. */
  coresFit: boolean;
}

/**
 * The voltage at the brake against its rated one, with the brake connected and released. Not measured there, it is
 * computed from that at the source if the cores were measured. The manual's tolerance counts before that of the project,
 * up to the difference that always fails.
 */
export function judgeSupply(input: BrakeInput, circuit: Circuit): BrakeFinding[] {
  const { ratedVolts, plugVolts, sourceVolts, supplyTolerance } = input;
  if (ratedVolts.kind !== 'value' || ratedVolts.value === 0) return [];
  const rated = ratedVolts.value;
  const measured = plugVolts.kind !== 'missing';
  // 0.1 kV is no proof of 96 V.
  const at = measured ? intervalShown(plugVolts) : behindCores(sourceVolts, circuit);
  const drop = [...expectedDrop(rated, circuit), ...measuredDrop(input, rated, circuit)];
  if (at === undefined) return [finding('brake-supply-missing', 'undecided', { readings: ['plugVolts'] }), ...drop];
  const off = limitValue('brake-supply-off');
  const stated = supplyTolerance.kind === 'value' ? Math.min(supplyTolerance.value, off) : undefined;
  const tolerance = stated ?? limitValue('brake-supply-tolerance');
  const fails = stated ?? off;
  const limits: LimitId[] =
    stated === undefined ? ['brake-supply-tolerance', 'brake-supply-off'] : ['brake-supply-off'];
  const readings = measured ? ['plugVolts', 'ratedVolts'] : ['sourceVolts', 'ratedVolts'];
  const shown = Number.isFinite(at.hi) ? { volts: at.lo / 2 + at.hi / 2 } : {};
  const figures = { readings, limits, ...shown, ratedVolts: rated, tolerancePercent: tolerance };
  const part = (percent: number) => rated * (1 + percent / 100);
  if (at.hi < part(-fails)) return [finding('brake-supply-low', 'fail', figures), ...drop];
  if (at.lo > part(fails)) return [finding('brake-supply-high', 'fail', figures), ...drop];
  if (at.lo >= part(-tolerance) && at.hi <= part(tolerance)) {
    return [finding('brake-supply-fits', 'pass', { ...figures, computed: !measured }), ...drop];
  }
  return [finding('brake-supply-too-close', 'undecided', figures), ...drop];
}

/** Undefined unless the cores are known and were measured. */
function behindCores(source: Reading, { expectedOhms, cores, coresFit }: Circuit): Interval | undefined {
  if (source.kind !== 'value' || expectedOhms === undefined || cores === undefined || !coresFit) return undefined;
  const { lo, hi } = intervalShown(source);
  return { lo: (lo * expectedOhms) / (expectedOhms + cores.most), hi };
}

/** What the two cores take by the table if their source gives the rated voltage, and the coil is at 20 °C. */
function expectedDrop(rated: number, { expectedOhms, cores }: Circuit): BrakeFinding[] {
  if (expectedOhms === undefined || cores === undefined) return [];
  const volts = (rated * cores.table) / (expectedOhms + cores.table);
  const percent = (volts / rated) * 100;
  const severity = percent > limitValue('brake-supply-tolerance') ? 'caution' : 'note';
  const limits: LimitId[] = ['pe-core-resistance', 'brake-supply-tolerance'];
  return [finding('brake-drop-expected', severity, { readings: ['metres'], limits, volts, percent })];
}

/**
 * Source less plug, against the current of the coil through the cores. Two readings of one voltage differ by their digits
 * and a share of it, so what is beyond the cores by less decides nothing.
 */
function measuredDrop(
  { sourceVolts, plugVolts }: BrakeInput,
  rated: number,
  { expectedOhms, cores }: Circuit,
): BrakeFinding[] {
  if (sourceVolts.kind !== 'value' || plugVolts.kind !== 'value') return [];
  const readings = ['sourceVolts', 'plugVolts'];
  const volts = sourceVolts.value - plugVolts.value;
  const limits: LimitId[] = ['brake-supply-tolerance'];
  if (volts < -(rated * limitValue('brake-supply-tolerance')) / 100) {
    return [finding('brake-drop-contradicts', 'undecided', { readings, limits })];
  }
  const parts = { readings, volts: Math.max(0, volts), percent: (Math.max(0, volts) / rated) * 100 };
  if (expectedOhms === undefined || cores === undefined) return [finding('brake-drop', 'note', parts)];
  const coldest = expectedOhms * (1 - limitValue('brake-coil-off-plate') / 100);
  const beyond = (Math.max(sourceVolts.value, rated) / coldest) * cores.beyond;
  if (volts <= beyond) return [finding('brake-drop', 'note', parts)];
  const shown = intervalShown(sourceVolts).lo - intervalShown(plugVolts).hi;
  const used: LimitId[] = [...coreLimits, 'voltage-twice'];
  return shown - (rated * limitValue('voltage-twice')) / 100 > beyond
    ? [finding('brake-drop-high', 'fail', { ...parts, limits: used })]
    : [finding('brake-drop-unclear', 'undecided', { ...parts, limits: used })];
}
