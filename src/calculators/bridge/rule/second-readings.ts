import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { Instrument, Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { isLeak } from './agreement.ts';
import type { RailFinding, RailPayloads } from './rail-findings.ts';
import {
  agree,
  counted,
  disagree,
  isBelow,
  isShort,
  isSteady,
  isTaken,
  type RailRow,
  railReading,
  settled,
  takenReadings,
} from './rail-reading.ts';
import { partsOfPosition, type Rail, rails, type SwitchPosition } from './switch-position.ts';

export interface SecondPayloads {
  'again-contradicts': { position: SwitchPosition };
  'again-does-not-fit': Nothing;
  'sister-differs': Nothing;
}

type SecondFinding = FindingOf<SecondPayloads>;
const second = findingMaker<SecondPayloads>();
const finding = findingMaker<RailPayloads>();

/** What was read once more, and what a sound drive of the same model shows. Readings in Ω. */
export interface SecondReadings {
  rows: Record<Rail, RailRow>;
  worstAgain: Reading;
  sister: 'alike' | 'differs' | 'not-compared';
  instrument: Instrument;
  tolerancePercent: number;
}

type Odd = Extract<RailFinding, { code: 'rail-unbalanced' | 'rail-uneven' }>;
type Off = Odd | Extract<RailFinding, { code: 'rail-short' }>;
const isOdd = (one: RailFinding): one is Odd => one.code === 'rail-unbalanced' || one.code === 'rail-uneven';
const positionsOf = (one: Off): readonly SwitchPosition[] => ('odd' in one ? one.odd : one.suspects);

/** The position that `worstAgain` belongs to: the lowest short, else the lowest that is odd. */
export function worstPosition(
  findings: readonly RailFinding[],
  { rows, instrument }: Pick<SecondReadings, 'rows' | 'instrument'>,
): SwitchPosition | undefined {
  for (const code of ['rail-short', 'rail-unbalanced', 'rail-uneven'] as const) {
    const sorted = findings
      .filter((one): one is Off => one.code === code)
      .flatMap(positionsOf)
      .sort((one, other) => intervalAt(one, rows, instrument).lo - intervalAt(other, rows, instrument).lo);
    if (sorted[0] !== undefined) return sorted[0];
  }
  return undefined;
}

/** Weighs the findings of both rails with what was read once more, and with the sister. */
export function weighSecondReadings(
  findings: readonly RailFinding[],
  evidence: SecondReadings,
): (RailFinding | SecondFinding)[] {
  const { worstAgain, sister } = evidence;
  const worst = worstPosition(findings, evidence);
  const added: SecondFinding[] = [];
  // Below the range of the meter, without its limit, may be a short.
  const shortNow = worstAgain.kind === 'under' || isShort(counted(railReading('U', worstAgain, evidence.instrument)));
  if (isTaken(worstAgain) && worst === undefined && (shortNow || !fitsAny(evidence)))
    added.push(second('again-does-not-fit', 'undecided', { readings: ['worstAgain'] }));
  // It takes no fail back: which of the two readings was the slip, a third one tells.
  // A short that was none at first is no second reading of the same.
  const newShort = shortNow && !findings.some(({ code }) => code === 'rail-short');
  const contradicted =
    isTaken(worstAgain) && worst !== undefined && (newShort || !isStillOff(worst, findings, evidence));
  if (contradicted)
    added.push(second('again-contradicts', 'undecided', { readings: [worst, 'worstAgain'], position: worst }));
  const weighed = findings.map((one) => (isOdd(one) ? besideSister(one, evidence, worst) : byModel(one, sister)));
  const passes = weighed.some(({ code }) => code === 'rail-balanced' || code === 'rail-open');
  if (sister === 'differs' && passes && !weighed.some(({ severity }) => severity === 'fail'))
    added.push(second('sister-differs', 'undecided', { readings: ['sister'] }));
  return [...weighed, ...added];
}

/** Odd, but no short and no leak: the pattern may be that of the model. */
function besideSister(one: Odd, evidence: SecondReadings, worst: SwitchPosition | undefined): RailFinding {
  const { readings, limits, rail, tolerancePercent, high, differences } = one;
  const parts = { readings, limits, rail, tolerancePercent, high, ...(differences && { differences }) };
  const odd = [...positionsOf(one)];
  const { rows, instrument } = evidence;
  const stands = isSteady(rows[rail], tolerancePercent, instrument);
  if (one.code === 'rail-uneven' && evidence.sister === 'differs' && stands)
    return finding('rail-unbalanced', 'fail', { ...parts, suspects: odd, leaks: [] });
  const isOfModel = evidence.sister === 'alike' && ('odd' in one || one.leaks.length === 0);
  if (!isOfModel) return one;
  // An over-range that is compared with figures says nothing without its range.
  const hasRanges = takenReadings(settled(rows[rail]), instrument).every(({ rangeUnknown }) => !rangeUnknown);
  return stands && hasRanges && odd.some((position) => isConfirmed(position, evidence, worst))
    ? finding('rail-as-sister', 'pass', { ...parts, odd })
    : finding('rail-uneven', 'undecided', { ...parts, odd });
}

function byModel(one: RailFinding, sister: SecondReadings['sister']): RailFinding {
  return one.code === 'rail-lower-than-usual' && sister === 'alike' ? { ...one, severity: 'caution' } : one;
}

/** Whether a second reading of this position shows the same: of U by `again`, of the worst by `worstAgain`. */
export function isConfirmed(position: SwitchPosition, evidence: SecondReadings, worst?: SwitchPosition): boolean {
  const is = intervalAt(position, evidence.rows, evidence.instrument);
  return secondReadings(position, evidence, worst).some((one) => agree(is, one, evidence.tolerancePercent));
}

/** The same, for a reading that only a bad transistor explains: a short, or a leak below two others, which agree: `noTwoAgree` is asked first. */
export function isProvenTwice(position: SwitchPosition, evidence: SecondReadings, worst?: SwitchPosition): boolean {
  const { rows, instrument } = evidence;
  const is = intervalAt(position, rows, instrument);
  const beside = others(position, evidence);
  const isSameLeak = (one: Interval) =>
    isLeak(is, beside) && isLeak(one, beside) && agree(is, one, evidence.tolerancePercent);
  return secondReadings(position, evidence, worst).some((one) => (isShort(is) ? isShort(one) : isSameLeak(one)));
}

function secondReadings(position: SwitchPosition, evidence: SecondReadings, worst?: SwitchPosition): Interval[] {
  const { rows, instrument, worstAgain } = evidence;
  const { rail, phase } = partsOfPosition[position];
  const { again, readings } = rows[rail];
  const list = phase === 'U' && isTaken(again) ? [readings.U] : [];
  if (worst === position) list.push(worstAgain);
  return list.filter(isTaken).map((one) => counted(railReading(phase, one, instrument)));
}

/** Still a short, or still as far off on the same side; otherwise the first reading was a slip, or the second one is. */
function isStillOff(position: SwitchPosition, findings: readonly RailFinding[], evidence: SecondReadings): boolean {
  const { phase } = partsOfPosition[position];
  const again = counted(railReading(phase, evidence.worstAgain, evidence.instrument));
  if (isShort(again)) return true;
  const uneven = findings.some((one) => one.code === 'rail-uneven' && one.odd.includes(position));
  return isOddAgain(position, again, evidence, uneven ? evidence.tolerancePercent : limitValue('bridge-clearly-off'));
}

function isOddAgain(position: SwitchPosition, again: Interval, evidence: SecondReadings, percent: number): boolean {
  const is = intervalAt(position, evidence.rows, evidence.instrument);
  return others(position, evidence).some(
    (other) =>
      (isBelow(is, other, percent) && isBelow(again, other, percent)) ||
      (isBelow(other, is, percent) && isBelow(other, again, percent)),
  );
}

function intervalAt(position: SwitchPosition, rows: Record<Rail, RailRow>, instrument: Instrument): Interval {
  const { rail, phase } = partsOfPosition[position];
  const [one] = takenReadings(settled(rows[rail]), instrument).filter((other) => other.phase === phase);
  return one === undefined ? { lo: 0, hi: Number.POSITIVE_INFINITY } : counted(one);
}

function others(position: SwitchPosition, { rows, instrument }: SecondReadings): Interval[] {
  const { rail, phase } = partsOfPosition[position];
  return takenReadings(settled(rows[rail]), instrument)
    .filter((one) => one.phase !== phase)
    .map(counted);
}

/** All three terminals of the rail read otherwise. */
export function noTwoAgree(rail: Rail, { rows, instrument, tolerancePercent }: SecondReadings): boolean {
  const three = takenReadings(settled(rows[rail]), instrument).map(counted);
  const agreeing = (one: Interval) => three.filter((other) => !disagree(one, other, tolerancePercent));
  return three.length === 3 && three.every((one) => agreeing(one).length === 1);
}

/** A reading that was taken once more although nothing is odd agrees with all three of a rail. */
function fitsAny({ rows, worstAgain, instrument, tolerancePercent }: SecondReadings): boolean {
  const again = counted(railReading('U', worstAgain, instrument));
  return rails.some((rail) =>
    takenReadings(settled(rows[rail]), instrument).every((one) => agree(again, counted(one), tolerancePercent)),
  );
}
