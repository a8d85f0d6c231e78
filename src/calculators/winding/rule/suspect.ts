import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import type { Phase, Phases } from '../../../kernel/electrics/phases.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import type { WindingPair } from './pairs.ts';
import {
  deltaPhases,
  type OddOne,
  oddDeltaWinding,
  oddPhase,
  type Pairs,
  type SumOfOthers,
  starPhases,
  sumOfOthers,
} from './phases.ts';

export interface SuspectPayloads {
  'winding-phases-star': { ohms: Phases<number> };
  'winding-phases-delta': { ohms: Pairs<number> };
  'winding-suspect-star': OddOne<Phase>;
  'winding-suspect-delta': OddOne<WindingPair>;
  'winding-no-single-suspect': Nothing;
  'winding-sum-of-others': { pair: WindingPair; leftOut: Phase; connection: Connection };
  'winding-more-than-others': { pair: WindingPair };
}

type SuspectFinding = FindingOf<SuspectPayloads>;

const finding = findingMaker<SuspectPayloads>();

/** How the three windings are joined; unknown is answered for both. */
export type Connection = 'star' | 'delta' | 'unknown';

/** The resistance of each winding by itself. Undefined if the readings fit no winding. */
export function phaseValues(lines: Pairs<number>, connection: Connection): SuspectFinding[] {
  const star = starPhases(lines);
  if (!Object.values(star).every((value) => value > 0)) return [];
  const found: SuspectFinding[] = [];
  if (connection !== 'delta') found.push(finding('winding-phases-star', 'note', { ohms: star }));
  if (connection !== 'star') found.push(finding('winding-phases-delta', 'note', { ohms: deltaPhases(lines) }));
  return found;
}

/** Which winding differs in readings that are not alike; each reading covers two windings, or all three. */
export function suspects(lines: Pairs<Interval>, connection: Connection): SuspectFinding[] {
  const sum = sumOfOthers(lines);
  if (sum !== undefined) return [sumFinding(sum, connection)];
  const star = connection === 'delta' ? undefined : oddPhase(lines);
  const delta = connection === 'star' ? undefined : oddDeltaWinding(lines);
  const found: SuspectFinding[] = [];
  if (star !== undefined) found.push(finding('winding-suspect-star', 'note', star));
  if (delta !== undefined) found.push(finding('winding-suspect-delta', 'note', delta));
  return found.length > 0 ? found : [finding('winding-no-single-suspect', 'note')];
}

function sumFinding({ pair, leftOut, more }: SumOfOthers, connection: Connection): SuspectFinding {
  const readings = [pair];
  return more
    ? finding('winding-more-than-others', 'caution', { readings, pair })
    : finding('winding-sum-of-others', 'caution', { readings, pair, leftOut, connection });
}
