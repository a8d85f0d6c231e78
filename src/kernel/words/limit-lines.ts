import { limitLabels } from '../limit-labels.ts';
import { type LimitId, limit } from '../limits.ts';
import { formatLimit } from './format-limit.ts';
import { fromMemory, limitStatus } from './limit-status.ts';

/** A limit as a verdict names it. */
export interface LimitLine {
  id: LimitId;
  label: string;
  figure: string;
  /** Status, clause, and whether it was recalled: "published standard, 12.2, from memory". */
  standing: string;
}

export function limitLine(id: LimitId): LimitLine {
  const { label, status, clause, recalled } = limitLabels[id];
  const words = limitStatus[status as keyof typeof limitStatus].words.toLowerCase();
  const standing = [words, clause, recalled && fromMemory].filter(Boolean).join(', ');
  return { id, label, figure: formatLimit(limit(id)), standing };
}
