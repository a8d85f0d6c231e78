import { findingMaker, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { type CorrectionMethod, correctionMethods } from '../../../kernel/electrics/correction-validity.ts';
import { limitOfClass } from '../../../kernel/electrics/machine-minimum.ts';
import { limitsOfMethod } from '../../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { CorrectedRow, NewestJudged, TrendFinding, TrendInput, TrendPayloads } from './input.ts';
import { outlookOf } from './outlook.ts';
import { boundsOf, correctRows, newestRows } from './rows.ts';

const finding = findingMaker<TrendPayloads>();

type NewestState = 'below' | 'above' | 'unknown';

/** All readings of the newest day count: the lowest decides. */
function stateOfNewest(rows: readonly CorrectedRow[], minimum: number): NewestState {
  const newest = newestRows(rows).map(boundsOf);
  if (newest.some(({ most }) => most < minimum)) return 'below';
  return newest.every(({ least }) => least >= minimum) ? 'above' : 'unknown';
}

/** The newest day against the minimum (Ω), by the chosen correction method and by the others that are valid. */
export function newestFindings(input: TrendInput, rows: readonly CorrectedRow[], minimum: number): TrendFinding[] {
  const [last] = newestRows(rows).sort((a, b) => boundsOf(a).most - boundsOf(b).most || a.corrected - b.corrected);
  if (last === undefined) return [];
  const limits: LimitId[] = [
    limitOfClass[input.machineClass],
    'reference-temperature-routine',
    ...limitsOfMethod[input.correction],
  ];
  const { kind, day } = last;
  const parts = { limits, kind, day, correctedOhms: last.corrected, minimumOhms: minimum };
  const state = stateOfNewest(rows, minimum);
  const found = [state === 'below' ? belowFinding(input, rows, minimum, parts) : stateFindings[state](parts)];
  const under = rows.filter(({ kind }) => kind === 'under').length;
  if (under === 0) return found;
  // Below a bound that is newer than the last value, nothing is known.
  const lastOf = (wanted: CorrectedRow['kind']) => rows.map(({ kind }) => kind).lastIndexOf(wanted);
  // One certainly below the minimum was a bad winding: that later readings are good does not say what mended it.
  const wasBad = rows.some((row) => row.kind === 'under' && boundsOf(row).most < minimum);
  const isKnown = !wasBad && lastOf('under') < lastOf('value') && holdsAtBounds(rows, minimum);
  const severity = isKnown ? 'caution' : 'undecided';
  return [...found, finding('trend-under-range', severity, { count: under })];
}

/**
 * Whether the line still gives a go with each upper bound as a value. Without this a reading that is worse than any
 * value, such as zero, would leave the line and take its scatter along.
 */
function holdsAtBounds(rows: readonly CorrectedRow[], minimum: number): boolean {
  const values = rows.map((row): CorrectedRow => (row.kind === 'under' ? { ...row, kind: 'value' } : row));
  return verdictOf(outlookOf(values, minimum).findings) === 'go';
}

type NewestParts = NewestJudged & { limits: LimitId[] };

const stateFindings = {
  above: (parts: NewestParts) => finding('trend-last-above', 'pass', parts),
  unknown: (parts: NewestParts) => finding('trend-last-unknown', 'undecided', parts),
};

/** The rules of correction are for unlike insulations: if the verdict depends on the choice, it is undecided. */
function belowFinding(input: TrendInput, rows: readonly CorrectedRow[], minimum: number, parts: NewestParts) {
  const newest = newestRows(rows);
  const dissenting = otherMethods(input, newest, (other) => stateOfNewest(other, minimum) !== 'below');
  return dissenting.length === 0 ? finding('trend-last-below', 'fail', parts) : methodsDiffer(dissenting);
}

/** A go by the chosen rule must also be a go by every other rule that covers all rows: with fewer rows it would judge another record. */
export function methodFindings(input: TrendInput, rows: readonly CorrectedRow[], minimum: number): TrendFinding[] {
  const isGo = (other: CorrectedRow[]) =>
    stateOfNewest(other, minimum) === 'above' &&
    verdictOf(outlookOf(other, minimum).findings) === 'go' &&
    holdsAtBounds(other, minimum);
  const dissenting = otherMethods(input, rows, (other) => !isGo(other));
  return dissenting.length === 0 ? [] : [methodsDiffer(dissenting)];
}

function otherMethods(
  { correction }: TrendInput,
  rows: readonly CorrectedRow[],
  differs: (rows: CorrectedRow[]) => boolean,
): CorrectionMethod[] {
  return correctionMethods.filter((method) => {
    if (method === correction) return false;
    const other = correctRows(rows, method, limitValue('reference-temperature-routine'));
    return other.keptOut.length === 0 && differs(other.rows);
  });
}

function methodsDiffer(methods: readonly CorrectionMethod[]): TrendFinding {
  const limits = methods.flatMap((method) => limitsOfMethod[method]);
  return finding('trend-methods-differ', 'undecided', { limits, methods: [...methods] });
}
