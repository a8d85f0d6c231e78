import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { coreResistance } from '../../../kernel/electrics/core-resistance.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalShown } from '../../../kernel/reading/interval.ts';
import type { BrakeCable, BrakeFinding, BrakeInput, BrakePayloads } from './input.ts';

const finding = findingMaker<BrakePayloads>();

/** What both cores may have, there and back, in Ω: by the table at 20 °C, at the most, and beyond what they can. */
export interface CoreSpan {
  table: number;
  most: number;
  beyond: number;
}

export const coreLimits: LimitId[] = ['pe-core-resistance', 'pe-core-tolerance', 'pe-contacts', 'pe-dead-short'];

/** Both brake cores in series, with the allowances of a protective conductor for each. Undefined without their data. */
export function brakeCores({ metres, squareMillimetres }: BrakeCable): CoreSpan | undefined {
  const known = metres.kind === 'value' && squareMillimetres !== undefined;
  const one = known ? coreResistance(metres.value, squareMillimetres) : undefined;
  if (one === undefined) return undefined;
  const warm = 2 * one * (1 + limitValue('pe-core-tolerance') / 100);
  return {
    table: 2 * one,
    most: warm + 2 * limitValue('pe-contacts'),
    beyond: warm + 2 * limitValue('pe-dead-short'),
  };
}

/** `a` less `b`, never below zero. */
export function less(a: Interval, b: Interval): Interval {
  return { lo: Math.max(0, a.lo - b.hi), hi: Math.max(0, a.hi - b.lo) };
}

/** The reading at the drive beside that at the motor: what the two cores add, or take away. */
export function judgeCoreOhms(input: BrakeInput, cores: CoreSpan | undefined): BrakeFinding[] {
  const { atMotor, atDrive, instrument } = input;
  if (atMotor.kind !== 'value' || atDrive.kind === 'missing') return [];
  const readings = ['atDrive', 'atMotor'];
  const coil = intervalShown(atMotor, instrument);
  const through = intervalShown(atDrive, instrument);
  if (isOpenCircuit(atDrive, 2 * coil.hi + (cores?.beyond ?? 0), instrument)) {
    return [finding('brake-core-open', 'fail', { readings, limits: ['open-on-any-range'] })];
  }
  if (atDrive.kind === 'over') return [finding('brake-coil-over-range', 'undecided', { readings: ['atDrive'] })];
  if (through.hi < coil.lo * (1 - limitValue('brake-coil-tolerance') / 100)) {
    return [finding('brake-cores-touch', 'fail', { readings, limits: ['brake-coil-tolerance'] })];
  }
  const again: LimitId = 'winding-again-agreement';
  // Cores only add. Water in the mated connector is gone once it is open.
  if (through.hi < coil.lo * (1 - limitValue(again) / 100)) {
    return [finding('brake-cores-below', 'undecided', { readings, limits: [again, 'brake-coil-tolerance'] })];
  }
  if (cores === undefined) {
    return [finding('brake-cable-not-stated', 'undecided', { readings: ['metres', 'squareMillimetres'] })];
  }
  const added = less(through, coil);
  const limits = coreLimits;
  const figures = { readings, limits, addedOhms: added.lo / 2 + added.hi / 2, explainedOhms: cores.most };
  // What may be lower by more than a coil that cools passes nothing, however coarse the meter.
  const mayBeBelow = through.lo < coil.hi * (1 - limitValue(again) / 100);
  if (added.hi <= cores.most && !mayBeBelow) return [finding('brake-cores-fit', 'pass', figures)];
  // A coil that cools by some kelvins between the readings changes by more than the cores have.
  const proven = added.lo > Math.max(cores.beyond, (coil.hi * limitValue(again)) / 100);
  if (proven && Number.isFinite(added.hi)) {
    return [finding('brake-cores-high', 'fail', { ...figures, limits: [...limits, again] })];
  }
  const used = mayBeBelow ? [...limits, again] : limits;
  return [finding('brake-cores-too-close', 'undecided', { readings, limits: used, explainedOhms: cores.most })];
}

/** Each other, U, V, W and PE: no path. A path convicts nothing, since cable and motor are both on it. */
export function judgeIsolation(input: BrakeInput): BrakeFinding[] {
  const least = limitValue('idle-core-free');
  const fields = (['coresApart', 'toPhases', 'toPe'] as const).map((field) => ({
    field,
    reading: input[field],
    ...intervalShown(input[field], input.instrument),
  }));
  const limits: LimitId[] = ['idle-core-free'];
  const named = (some: typeof fields) => some.map(({ field }) => field);
  const absent = fields.filter(({ reading }) => reading.kind === 'missing');
  const path = fields.filter(({ hi }) => hi < least);
  const unclear = fields.filter(({ reading, lo, hi }) => reading.kind !== 'missing' && lo < least && hi >= least);
  const found: BrakeFinding[] = [];
  if (path.length > 0) {
    found.push(finding('brake-core-path', 'fail', { readings: named(path), limits, leastOhms: least }));
  }
  if (unclear.length > 0) {
    found.push(finding('brake-core-unclear', 'undecided', { readings: named(unclear), limits, leastOhms: least }));
  }
  if (absent.length > 0) {
    found.push(finding('brake-cores-not-measured', 'undecided', { readings: named(absent), limits }));
  }
  return found.length > 0 ? found : [finding('brake-cores-free', 'pass', { limits, leastOhms: least })];
}
