import { type CalculatorEntries, readEntries, shareEntries } from '../../calculators/frame/calculator-link.ts';
import { succeeded } from '../../kernel/link/problem.ts';
import { packShare, type ShareResult, unpackShare } from '../../kernel/link/share.ts';
import { readVisit } from './read-visit.ts';
import type { VisitRecord } from './visit-schema.ts';

/** What a link can carry: a filled calculator, or a visit without its snapshots. */
export type Shared = ({ kind: 'calculator' } & CalculatorEntries) | { kind: 'visit'; visit: VisitRecord };

/**
 * The share text. It carries what was typed in a visit and nothing that was computed from it, so that the link is short
 * and can't contain a verdict that its readings do not give.
 */
export function shareText(shared: Shared): ShareResult<string> {
  return shared.kind === 'visit' ? packShare({ visit: withoutSnapshots(shared.visit) }) : shareEntries(shared);
}

/** The content of a share text. Damaged, truncated, foreign, hostile or newer texts give a problem; never throws. */
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

/** The visit as typed, without anything that was computed from it. */
export function withoutSnapshots({ decision: _decision, ...visit }: VisitRecord): VisitRecord {
  const steps = Object.entries(visit.steps).map(([id, { snapshot: _snapshot, ...step }]) => [id, step]);
  return { ...visit, steps: Object.fromEntries(steps) };
}
