import type { StepId } from '../../visit/steps/ids.ts';
import type { Unsafe } from './judge.ts';
import { type Purpose, type Void, voidPurposes } from './purpose.ts';
import type { Entry } from './session.ts';

/** What an act was worth. `first` is the act, counted from 1, in which the same had happened before. */
export type Mark =
  | { kind: 'unsafe'; code: Unsafe; first?: number }
  | { kind: 'told-nothing'; code: Void | 'again'; first?: number }
  /** It told something, but not of this case. */
  | { kind: 'not-needed'; step: StepId }
  | { kind: 'told'; step: StepId | 'bus'; settles: boolean };

export interface TimedAct {
  entry: Entry;
  /** None for what only prepares. */
  marks: Mark[];
}

/** The steps of the guide that an instrument answers. */
export const measuredSteps: readonly StepId[] = ['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'];

/**
 * The acts in their order, each with its marks. `path` are the steps of the shortest sound way, `settling` those whose
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

function isVoid(purpose: Purpose): purpose is Void {
  return voidPurposes.includes(purpose);
}

function seenBefore(mark: Mark, act: number, before: Map<string, number>): Mark {
  if (!('code' in mark)) return mark;
  const first = before.get(mark.code);
  if (first === undefined) before.set(mark.code, act);
  return first === undefined ? mark : { ...mark, first };
}

/** In how many acts there is a mark of this kind. */
export function actsWith(line: readonly TimedAct[], kind: Mark['kind']): number {
  return line.filter(({ marks }) => marks.some((mark) => mark.kind === kind)).length;
}
