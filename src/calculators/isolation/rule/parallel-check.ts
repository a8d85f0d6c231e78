import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { besideKnown, parallel, parallelInterval } from '../../../kernel/electrics/parallel-law.ts';
import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { asRead, byLastDigit, type Interval, intervalOf, times } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** What a part alone would read; a missing end is unbounded. */
interface Implied {
  lowestOhms?: number;
  highestOhms?: number;
}

export interface FitPayloads {
  fit: Nothing;
  /** `mostOhms`: the most that cable and motor in parallel can read. */
  'joined-too-high': { phase: Phase; mostOhms: number; joinedOhms: number };
  /** `leastOhms`: the least that cable and motor in parallel can read. */
  'joined-too-low': { phase: Phase; leastOhms: number; joinedOhms: number };
  'joined-needs-bonded': { phase: Phase };
  'implied-motor': Implied;
  'implied-cable': Implied;
}

export type FitFinding = FindingOf<FitPayloads>;

const finding = findingMaker<FitPayloads>();

interface Rows {
  joined: Phases<Reading>;
  cable?: Phases<Reading> | undefined;
  bonded?: Phases<Reading> | undefined;
  motor?: Phases<Reading> | undefined;
}

const limits: LimitId[] = ['insulation-tester-error'];

/**
 * Cross-check by the parallel law, always with the widest error that an insulation tester may have: insulation readings
 * taken minutes apart rarely agree better, and stating a wider accuracy must not switch the check off. The windings
 * meet in the motor, so a joined reading is at most one core in parallel with the motor, and at least all cores in
 * parallel with the motor. `motorChange` converts the motor's readings to the temperature at which the joined ones were
 * taken.
 */
export function checkFit({ joined, cable, bonded, motor }: Rows, motorChange: Interval = asRead): FitFinding[] {
  const cores =
    cable && phases.map((phase) => lower(readingBounds(cable[phase]), bonded && readingBounds(bonded[phase])));
  const windings = motor && phases.map((phase) => times(readingBounds(motor[phase]), motorChange));
  const complete = (row: Phases<Reading> | undefined) => row && phases.every((phase) => row[phase].kind !== 'missing');
  const worst = lowestPhase(joined);
  if (worst === undefined) return [];
  if (cores && windings) {
    const allKnown = complete(cable) === true && complete(motor) === true;
    return compare(joined, cores, windings, allKnown, complete(bonded) === true);
  }
  const index = phases.indexOf(worst);
  if (cores && complete(cable)) return implied('implied-motor', worst, readingBounds(joined[worst]), cores, index);
  // Each motor reading already covers all three windings, so only one counts.
  const winding = windings?.slice(index, index + 1);
  if (winding && complete(motor)) return implied('implied-cable', worst, readingBounds(joined[worst]), winding, 0);
  return [];
}

/**
 * The interval with the widest error, or with half a step of the last digit if that is more: `1G` is at least half a
 * gigohm, never zero.
 */
export function readingBounds(reading: Reading): Interval {
  const wide = intervalOf(reading, { percent: limitValue('insulation-tester-error') });
  if (reading.kind !== 'value') return wide;
  const digit = byLastDigit(reading);
  return { lo: Math.min(wide.lo, digit.lo), hi: Math.max(wide.hi, digit.hi) };
}

/**
 * Whether a joined reading can be one step of the display above `most`: on a short a tester shows 0.00 or 0.01 MΩ.
 * Only for figures below the minimum of the machine standard; above it a step counts as read.
 */
function oneStepAbove(reading: Reading, most: number): boolean {
  if (reading.kind !== 'value' || reading.resolution === undefined) return false;
  const { value, resolution } = reading;
  return value - resolution <= most && value + resolution <= limitValue('machine-minimum-60204');
}

function lower(a: Interval, b: Interval | undefined): Interval {
  return b === undefined ? a : { lo: Math.min(a.lo, b.lo), hi: Math.min(a.hi, b.hi) };
}

function lowestPhase(row: Phases<Reading>): Phase | undefined {
  const measured = phases.filter((phase) => row[phase].kind !== 'missing');
  return measured.sort((a, b) => readingBounds(row[a]).lo - readingBounds(row[b]).lo)[0];
}

function compare(
  joined: Phases<Reading>,
  cores: Interval[],
  windings: Interval[],
  allKnown: boolean,
  bondedKnown: boolean,
): FitFinding[] {
  // Only the lowest motor reading counts, since each covers all three windings.
  const motor = Math.min(...windings.map(({ lo }) => lo));
  const least = allKnown ? parallel([...cores.map(({ lo }) => lo), motor]) : 0;
  const found: FitFinding[] = [];
  for (const [index, phase] of phases.entries()) {
    const [core, winding] = [cores[index], windings[index]];
    if (joined[phase].kind === 'missing' || core === undefined || winding === undefined) continue;
    const together = readingBounds(joined[phase]);
    const most = parallelInterval([core, winding]).hi;
    const readings = [`joined${phase}`, `cable${phase}`, `motor${phase}`];
    const asRead = intervalOf(joined[phase]);
    // Beyond the widest error, or good although cable and motor together can't be: one of the readings is wrong.
    const passes = asRead.lo >= limitValue('after-trip-point');
    const beyond = together.lo > most && !oneStepAbove(joined[phase], most);
    const tooHigh = beyond || (passes && most < limitValue('after-trip-point'));
    const parts = { readings, limits, phase };
    if (tooHigh) {
      found.push(finding('joined-too-high', 'caution', { ...parts, mostOhms: most, joinedOhms: asRead.lo }));
    } else if (together.hi < least) {
      found.push(
        bondedKnown
          ? finding('joined-too-low', 'caution', { ...parts, leastOhms: least, joinedOhms: asRead.hi })
          : finding('joined-needs-bonded', 'caution', parts),
      );
    }
  }
  if (found.length === 0 && allKnown) return [finding('fit', 'note', { limits })];
  return found;
}

function implied(
  code: 'implied-motor' | 'implied-cable',
  phase: Phase,
  joined: Interval,
  known: Interval[],
  index: number,
): FitFinding[] {
  const own = known[index];
  if (own === undefined) return [];
  // At least one core of the cable is in parallel, at most all three; both bounds are kept.
  const lowest = besideKnown(joined, [own]).lo;
  const highest = besideKnown(joined, known).hi;
  const ends = {
    ...(Number.isFinite(lowest) && { lowestOhms: lowest }),
    ...(Number.isFinite(highest) && { highestOhms: highest }),
  };
  return [finding(code, 'note', { readings: [`joined${phase}`], limits, ...ends })];
}
