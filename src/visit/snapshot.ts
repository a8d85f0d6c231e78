import sources from '../../content/sources/sources.json' with { type: 'json' };
import type { Outcome } from '../kernel/form/calculator-form.ts';
import { limitLabels } from '../kernel/limit-labels.ts';
import { type LimitId, limit } from '../kernel/limits.ts';
import { formatLimit } from '../kernel/words/format-limit.ts';
import type { LimitSnapshot, Snapshot } from './record/snapshot-schema.ts';

/** The outcome of a measured step as a record stores it; undefined if there is no verdict. */
export function snapshotOf(outcome: Outcome, parts: Snapshot['parts']): Snapshot | undefined {
  if (outcome.state !== 'judged') return undefined;
  return {
    verdict: outcome.verdict,
    sentences: outcome.findings.map(({ text }) => text),
    limits: outcome.limits.map(limitSnapshot),
    ...(parts && { parts: { ...parts } }),
  };
}

function limitSnapshot(id: LimitId): LimitSnapshot {
  const { label, status, source: named, clause } = limitLabels[id];
  const source = named === null ? '' : sources[named as keyof typeof sources].short;
  return {
    id,
    label,
    value: formatLimit(limit(id)),
    status,
    source: [source, clause].filter(Boolean).join(', '),
  };
}
