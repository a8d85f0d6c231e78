import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type AgreementContext, judgeAgreement } from './agreement.ts';
import { stillMoves } from './in-time.ts';
import type { RailFinding, RailPayloads } from './rail-findings.ts';
import {
  disagree,
  isComparable,
  isMetal,
  isShort,
  isTaken,
  mayBeShort,
  type RailReading,
  type RailRow,
  railReading,
  settled,
  takenReadings,
} from './rail-reading.ts';
import type { Rail, SwitchPosition } from './switch-position.ts';

const finding = findingMaker<RailPayloads>();
const shortLimit: LimitId[] = ['bridge-short'];

/**
 * Judges the readings of one rail by themselves, in ohms: no short, and agreement within `tolerancePercent` (pairwise,
 * against the smaller). Names the suspect positions as `plusU` … `minusW`. `carried` are the terminals with a short on
 * the other rail: what is read at them here is the resistors of the bus, not their own switches, so they are neither
 * suspect nor compared with.
 */
export function judgeRail(
  rail: Rail,
  row: RailRow,
  tolerancePercent: number,
  instrument: Instrument,
  carried: readonly Phase[] = [],
): RailFinding[] {
  const readings = settled(row);
  const at = (list: readonly { phase: Phase }[]) => list.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const present = takenReadings(readings, instrument);
  const absent = phases.filter((phase) => !isTaken(readings[phase])).map((phase) => ({ phase }));
  const found: RailFinding[] = [];
  if (absent.length > 0) found.push(finding('rail-incomplete', 'undecided', { readings: at(absent), rail }));
  found.push(...judgeFirst(rail, row, tolerancePercent, instrument));

  // Low and alike can be three sound diodes; one that is low beside others is not.
  if (present.length > 0 && present.every(mayBeShort))
    return [...found, ...judgeAllShort(rail, row, present, instrument)];
  const shorted = present.filter(({ interval }) => isShort(interval));
  const rest = present.filter((one) => !shorted.includes(one));
  if (shorted.length > 0) found.push(shorts(rail, shorted));
  const own = rest.filter(({ phase }) => !carried.includes(phase));
  const moves = stillMoves(row, own, tolerancePercent, instrument);
  if (moves !== undefined) {
    const limits: LimitId[] = ['bridge-tolerance'];
    return [...found, finding(moves, 'undecided', { readings: [...at(own), `${rail}Again`], limits, rail })];
  }
  const possible = rest.filter(mayBeShort);
  if (possible.length > 0) {
    found.push(finding('rail-short-possible', 'undecided', { readings: at(possible), limits: shortLimit, rail }));
  }
  const { exchanged } = row;
  const context: AgreementContext = { tolerancePercent, instrument, carried, exchanged };
  return [...found, ...judgeAgreement(rail, rest.filter(isComparable), context)];
}

/** The terminals of a rail that read a short, beside one that does not: three alike shorts may be diodes. */
export function shortedTerminals(row: RailRow, instrument: Instrument): Phase[] {
  const present = takenReadings(settled(row), instrument);
  if (present.every(mayBeShort)) return [];
  return present.filter(({ interval }) => isShort(interval)).map(({ phase }) => phase);
}

/** What U showed first, if it was read again. */
function judgeFirst(rail: Rail, row: RailRow, tolerance: number, instrument: Instrument): RailFinding[] {
  const { again } = row;
  const { U: before } = row.readings;
  if (!isTaken(again) || !isTaken(before)) return [];
  const [first, last] = [intervalOf(before, instrument), intervalOf(again, instrument)];
  const readings = [`${rail}U`, `${rail}Again`];
  // A capacitor that charges reads a hundred ohms and more, so it does not explain a reading of some ohms.
  const wasMetal = before.kind !== 'over' && first.lo <= limitValue('bridge-metal');
  if (wasMetal && !isShort(last))
    return [finding('rail-first-contradicts', 'undecided', { readings, limits: ['bridge-metal'], rail })];
  return disagree(first, last, tolerance) ? [finding('rail-first-replaced', 'caution', { readings, rail })] : [];
}

function shorts(rail: Rail, shorted: readonly RailReading[]): RailFinding {
  const suspects = shorted.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  // The figure, if there was one: 3.8 Ω says more than "below the limit".
  const values = shorted.flatMap(({ reading }) => (reading.kind === 'value' ? [reading.value] : []));
  const lowest = values.length > 0 ? { lowestOhms: Math.min(...values) } : {};
  return finding('rail-short', 'fail', { readings: suspects, limits: shortLimit, rail, suspects, ...lowest });
}

/** No reading of the rail is above a short, so it can't be told from the others of its rail. */
function judgeAllShort(rail: Rail, row: RailRow, present: RailReading[], instrument: Instrument): RailFinding[] {
  const readings = present.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const limits = shortLimit;
  if (!present.some(({ interval }) => isShort(interval)))
    return [finding('rail-short-possible', 'undecided', { readings, limits, rail })];
  const metal = present.filter(({ interval }) => isMetal(interval));
  const isUnlike = present.some(({ interval }) => interval.lo > limitValue('bridge-metal'));
  if (metal.length > 0 && isUnlike)
    return [shorts(rail, metal), finding('rail-all-short', 'caution', { readings, limits, rail })];
  return [judgeExchanged(rail, row.exchanged, present, instrument) ?? allShort(rail, readings)];
}

const allShort = (rail: Rail, readings: SwitchPosition[]) =>
  finding('rail-all-short', 'undecided', { readings, limits: shortLimit, rail });

/** U with the leads exchanged: one of the two ways blocks, so a short is one both ways. */
function judgeExchanged(
  rail: Rail,
  reading: Reading,
  present: readonly RailReading[],
  instrument: Instrument,
): RailFinding | undefined {
  const first = present.find(({ phase }) => phase === 'U');
  if (!isTaken(reading) || first === undefined || !isShort(first.interval)) return undefined;
  const other = railReading('U', reading, instrument);
  const position: SwitchPosition = `${rail}U`;
  const readings = [position, `${rail}Exchanged`];
  if (isShort(other.interval)) {
    const metal = isMetal(other.interval) && isMetal(first.interval);
    return finding('rail-short-both-ways', 'fail', { readings, limits: shortLimit, rail, suspects: [position], metal });
  }
  return mayBeShort(other)
    ? undefined
    : finding('rail-read-forward', 'undecided', { readings, limits: shortLimit, rail });
}
