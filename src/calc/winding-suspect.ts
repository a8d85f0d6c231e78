import { type Finding, finding } from './assessment.ts';
import type { Interval } from './interval.ts';
import {
  deltaPhases,
  oddDeltaWinding,
  oddPhase,
  type Pairs,
  starPhases,
  sumOfOthers,
  type WindingPair,
} from './winding-phases.ts';

export type SuspectCode =
  | 'winding-phases-star'
  | 'winding-phases-delta'
  | 'winding-suspect-star'
  | 'winding-suspect-delta'
  | 'winding-no-single-suspect'
  | 'winding-sum-of-others';

/** How the three windings are joined; unknown is answered for both. */
export type Connection = 'star' | 'delta' | 'unknown';

/** What each winding has by itself. Nothing where the readings fit no winding. */
export function phaseValues(lines: Pairs<number>, connection: Connection): Finding<SuspectCode>[] {
  const star = starPhases(lines);
  if (!Object.values(star).every((value) => value > 0)) return [];
  const found: Finding<SuspectCode>[] = [];
  if (connection !== 'delta') found.push(finding('winding-phases-star', 'note', { numbers: { ...star } }));
  if (connection !== 'star')
    found.push(finding('winding-phases-delta', 'note', { numbers: { ...deltaPhases(lines) } }));
  return found;
}

/** Which winding stands apart in readings that are not alike; they go through two windings each, or through all three. */
export function suspects(lines: Pairs<Interval>, connection: Connection): Finding<SuspectCode>[] {
  const sum = sumOfOthers(lines);
  if (sum !== undefined) return [sumFinding(sum, connection)];
  const star = connection === 'delta' ? undefined : oddPhase(lines);
  const delta = connection === 'star' ? undefined : oddDeltaWinding(lines);
  const found: Finding<SuspectCode>[] = [];
  if (star !== undefined) found.push(finding('winding-suspect-star', 'note', { names: { ...star } }));
  if (delta !== undefined) found.push(finding('winding-suspect-delta', 'note', { names: { ...delta } }));
  return found.length > 0 ? found : [finding('winding-no-single-suspect', 'note')];
}

function sumFinding(pair: WindingPair, connection: Connection): Finding<SuspectCode> {
  return finding('winding-sum-of-others', 'caution', { readings: [pair], names: { connection } });
}
