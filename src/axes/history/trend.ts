import { assessTrend } from '../../calculators/trend/rule/assess.ts';
import type { TrendAssessment } from '../../calculators/trend/rule/input.ts';
import { missing } from '../../kernel/reading/reading.ts';
import type { Point } from './points.ts';

/**
 * The trend of one part of an axis by the rule of the trend calculator, as for a random-wound machine, with the correction
 * of the newest reading. `today`: days from 1970-01-01.
 */
export function trendOf(points: readonly Point[], today: number): TrendAssessment {
  const rows = [...points].sort((a, b) => a.day - b.day).map((point, index) => ({ ...point, line: index + 1 }));
  return assessTrend({
    table: { rows, keptOut: [], unused: [] },
    correction: rows[rows.length - 1]?.correction ?? 'halving',
    machineClass: 'random-wound',
    ratedVoltage: missing,
    today,
  });
}
