import { type CalculatorEntries, readEntries, shareEntries } from '../../calculators/frame/calculator-link.ts';
import { succeeded } from '../../kernel/link/problem.ts';
import { packShare, type ShareResult, unpackShare } from '../../kernel/link/share.ts';
import { readVisit } from './read-visit.ts';
import type { VisitRecord } from './visit-schema.ts';
import { withoutSnapshots } from './without-snapshots.ts';

/** What a link can carry: a filled calculator, or a visit without its snapshots. */
export type Shared = ({ kind: 'calculator' } & CalculatorEntries) | { kind: 'visit'; visit: VisitRecord };

/**
 * The share text. Of a visit it carries what was typed; what was computed from it stays out, so that the link is short and
 * can't bring a verdict that its readings do not give.
 */
export function shareText(shared: Shared): ShareResult<string> {
  return shared.kind === 'visit' ? packShare({ visit: withoutSnapshots(shared.visit) }) : shareEntries(shared);
}

/** What a share text carries. Damaged, cut off, foreign, hostile or newer texts give a problem; nothing throws. */
export function readShare(share: string): ShareResult<Shared> {
  const unpacked = unpackShare(share);
  if (!unpacked.ok) return unpacked;
  const content = unpacked.value;
  if ('visit' in content) {
    const read = readVisit(content.visit);
    return read.ok ? succeeded({ kind: 'visit', visit: withoutSnapshots(read.value) }) : read;
  }
  const entries = readEntries(content);
  return entries.ok ? succeeded({ kind: 'calculator', ...entries.value }) : entries;
}
