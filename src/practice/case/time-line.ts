import type { StepId } from '../../visit/steps/ids.ts';
import type { Entry } from './case-run.ts';
import { type Purpose, type VoidPurpose, voidPurposes } from './purpose.ts';
import type { Unsafe } from './unsafe-acts.ts';

/** What an act was worth. `first`: the number of the first act, from 1, with the same mark. */
export type Mark =
  | { kind: 'unsafe'; code: Unsafe; first?: number }
  | { kind: 'told-nothing'; code: VoidPurpose | 'again'; first?: number }
  /** It measured something that this case does not need. */
  | { kind: 'not-needed'; step: StepId }
  | { kind: 'told'; step: StepId | 'bus'; settles: boolean };

export interface TimedAct {
  entry: Entry;
  /** Empty for an act that only prepares. */
  marks: Mark[];
}

/** The steps of the guide that an instrument answers. */
export const measuredSteps: readonly StepId[] = ['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'];

/**
 * The acts in order, each with its marks. `path`: the steps of the shortest sound way. `settling`: the steps whose
 * readings settle the case.
 */
export function timeLine(entries: readonly Entry[], path: readonly StepId[], settling: readonly StepId[]): TimedAct[] {
  const before = new Map<string, number>();
  return entries.map((entry, position) => {
    const marks = [...new Set(entry.unsafe)].map((code): Mark => ({ kind: 'unsafe', code }));
    const worth = worthOf(entry, path, settling);
    if (worth !== undefined) marks.push(worth);
    return { entry, marks: marks.map((mark) => seenBefore(mark, position + 1, before)) };
  });
}

function worthOf(
  { purpose, again, result }: Entry,
  path: readonly StepId[],
  settling: readonly StepId[],
): Mark | undefined {
  if (purpose === undefined || result.code === 'refused') return undefined;
  if (isVoid(purpose)) return { kind: 'told-nothing', code: purpose };
  if (again) return { kind: 'told-nothing', code: 'again' };
  if (purpose === 'support-axis') return undefined;
  if (purpose === 'bus') return { kind: 'told', step: 'bus', settles: false };
  if (measuredSteps.includes(purpose) && !path.includes(purpose)) return { kind: 'not-needed', step: purpose };
  return { kind: 'told', step: purpose, settles: settling.includes(purpose) };
}

function isVoid(purpose: Purpose): purpose is VoidPurpose {
  return voidPurposes.includes(purpose);
}

function seenBefore(mark: Mark, act: number, before: Map<string, number>): Mark {
  if (!('code' in mark)) return mark;
  const first = before.get(mark.code);
  if (first === undefined) before.set(mark.code, act);
  return first === undefined ? mark : { ...mark, first };
}

/** The number of acts with a mark of this kind. */
export function actsWith(line: readonly TimedAct[], kind: Mark['kind']): number {
  return line.filter(({ marks }) => marks.some((mark) => mark.kind === kind)).length;
}
