import { type FindingOf, findingMaker } from '../../../kernel/assessment/assessment.ts';
import type { Phase } from '../../../kernel/electrics/phases.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type WindingPair, windingPairs } from './pairs.ts';
import { type Pairs, sharedTerminal } from './phases.ts';

export interface OpenPayloads {
  'winding-incomplete': { readings: WindingPair[] };
  'winding-open': { readings: WindingPair[] };
  'winding-open-phase': { terminal: Phase };
  'winding-open-alone': { readings: WindingPair[] };
  'winding-range-not-noted': { readings: WindingPair[] };
}

type OpenFinding = FindingOf<OpenPayloads>;

const finding = findingMaker<OpenPayloads>();

interface Continuity {
  findings: OpenFinding[];
  /** The pairs that are open. */
  open: WindingPair[];
}

/** Which pairs were not measured, are open, or are over-range on a range that does not tell. */
export function judgeContinuity(readings: Pairs<Reading>, intervals: Pairs<Interval>): Continuity {
  const present = windingPairs.filter((pair) => readings[pair].kind !== 'missing');
  const absent = windingPairs.filter((pair) => readings[pair].kind === 'missing');
  const findings: OpenFinding[] = [];
  if (absent.length > 0) findings.push(finding('winding-incomplete', 'undecided', { readings: [...absent] }));
  const open = present.filter((pair) => isOpen(readings[pair], intervals[pair]));
  if (open.length > 0) findings.push(...openFindings(open, absent.length));
  const unnoted = present.filter((pair) => !open.includes(pair) && intervals[pair].hi === Number.POSITIVE_INFINITY);
  if (unnoted.length > 0) findings.push(finding('winding-range-not-noted', 'undecided', { readings: [...unnoted] }));
  return { findings, open };
}

/** OL between two terminals of a winding of a few ohms is an open circuit on any range. */
function isOpen(reading: Reading, interval: Interval): boolean {
  if (reading.kind === 'over' && reading.atLeast === undefined) return true;
  return reading.kind !== 'missing' && interval.lo > limitValue('winding-open');
}

function openFindings(open: WindingPair[], absent: number): OpenFinding[] {
  const found: OpenFinding[] = [finding('winding-open', 'fail', { readings: [...open], limits: ['winding-open'] })];
  const terminal = sharedTerminal(open);
  if (absent > 0) return found;
  if (terminal !== undefined) found.push(finding('winding-open-phase', 'note', { terminal }));
  // Between two terminals the current also flows through the third one.
  if (open.length === 1) found.push(finding('winding-open-alone', 'caution', { readings: [...open] }));
  return found;
}
